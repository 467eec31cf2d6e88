package twostrides.race;

import java.util.OptionalDouble;
import twostrides.race.SeededRandom.Simulation;
import twostrides.race.puck.Ice;
import twostrides.race.puck.PuckPath;
import twostrides.race.puck.PuckRelease;
import twostrides.race.puck.Slide;
import twostrides.rink.Rink;

/**
 * Puts a puck on its way in one simulation. Every launch takes the same random numbers for the same
 * thing, so that two ways of letting the puck go meet the same ice and the same luck.
 */
@FunctionalInterface
interface Launch {

  /** Variable: release speed, or how far it is from the speed that was meant. */
  int SPEED = 0;

  /** Variable: where it is aimed, or how far off. */
  int TARGET = 1;

  /** Variable: whether it leaves the ice. */
  int LOFT = 2;

  /** Variable: how steeply. */
  int LOFT_ANGLE = 3;

  /** Variable: friction of the puck on the ice. */
  int FRICTION = 4;

  /** Variable: air drag. */
  int DRAG = 5;

  /**
   * Releases the puck.
   *
   * @param luck the random numbers of the simulation
   */
  PuckPath release(Simulation luck);

  /**
   * Speed, direction and loft from the scene's delivery.
   *
   * @param scene the release
   */
  static Launch of(Scene scene) {
    return of(scene, OptionalDouble.empty());
  }

  /**
   * Speed and direction from the scene's delivery.
   *
   * @param scene the release
   * @param loft known loft, radians, 0 along the ice to under pi/2; empty to simulate it
   */
  static Launch of(Scene scene, OptionalDouble loft) {
    double ahead = scene.rink().goalLine() - scene.x();
    double spread = scene.delivery().spread();
    return luck -> {
      double aim = scene.targetY().orElse(spread * (2 * luck.uniform(TARGET) - 1));
      double direction = Math.atan2(aim - scene.y(), ahead);
      double angle = loft.orElseGet(() -> loft(scene.delivery(), luck));
      return path(scene, ice(luck), speed(scene.delivery(), luck), direction, angle);
    };
  }

  /**
   * A puck laid along the ice to die after a distance: the player is taken to know the ice of the
   * night and to miss the speed that it asks for by a normal error.
   *
   * @param scene where from
   * @param distance metres that it is meant to slide
   * @param error standard deviation of the speed, as a share of it
   * @param direction radians, 0 straight up ice
   */
  static Launch laid(Scene scene, double distance, double error, double direction) {
    return luck -> {
      Ice ice = ice(luck);
      double meant = Slide.speedBeforeStop(ice.deceleration(), ice.drag(), distance);
      double speed = meant * Math.max(0, 1 + error * luck.normal(SPEED));
      return path(scene, ice, speed, direction, 0);
    };
  }

  /**
   * A shot along the ice at the middle of the far net, off by a normal angle.
   *
   * @param scene where from, and the spread of speeds
   * @param error standard deviation of the direction, radians
   */
  static Launch shot(Scene scene, double error) {
    double meant = Math.atan2(-scene.y(), scene.rink().goalLine() - scene.x());
    return luck ->
        path(
            scene,
            ice(luck),
            speed(scene.delivery(), luck),
            meant + error * luck.normal(TARGET),
            0);
  }

  private static PuckPath path(Scene scene, Ice ice, double speed, double direction, double loft) {
    return PuckPath.of(
        scene.rink(), ice, new PuckRelease(scene.x(), scene.y(), speed, direction, loft));
  }

  private static double speed(Delivery d, Simulation luck) {
    return luck.triangular(SPEED, d.slowest(), d.usual(), d.fastest());
  }

  private static double loft(Delivery d, Simulation luck) {
    double u = luck.uniform(LOFT_ANGLE);
    return luck.uniform(LOFT) < d.lofted()
        ? Delivery.LEAST_LOFT + u * (Delivery.MOST_LOFT - Delivery.LEAST_LOFT)
        : 0;
  }

  /** Ice and air: friction 0.04 to 0.24, drag 0.0030 to 0.0058 a metre, {@link Ice}. */
  private static Ice ice(Simulation luck) {
    return new Ice(
        luck.triangular(FRICTION, 0.04, 0.16, 0.24), luck.triangular(DRAG, 0.0030, 0.0044, 0.0058));
  }

  /**
   * Where a puck that touches the near edge of the red line lies, metres from center ice.
   *
   * @param rink the rink
   */
  static double atCenter(Rink rink) {
    return -rink.redLineHalfWidth() - Rink.PUCK_RADIUS;
  }
}
