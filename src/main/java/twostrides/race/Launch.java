package twostrides.race;

import java.util.OptionalDouble;
import twostrides.rink.Rink;

/**
 * Puts a puck on its way in one draw. Every launch takes the same variables of a draw for the same
 * thing, so that two ways of letting the puck go meet the same ice and the same luck.
 */
@FunctionalInterface
interface Launch {

  /** Variable of a draw: release speed, or how far it is from the speed that was meant. */
  int SPEED = 0;

  /** Variable of a draw: where it is aimed, or how far off. */
  int TARGET = 1;

  /** Variable of a draw: whether it leaves the ice. */
  int LOFT = 2;

  /** Variable of a draw: how steeply. */
  int LOFT_ANGLE = 3;

  /** Variable of a draw: friction of the puck on the ice. */
  int FRICTION = 4;

  /** Variable of a draw: air drag. */
  int DRAG = 5;

  /**
   * Releases the puck.
   *
   * @param path where it is put
   * @param start where the numbers of the draw start, {@link Draws#start}
   */
  void put(PuckPath path, long start);

  /**
   * Speed, direction and loft drawn from the scene's delivery.
   *
   * @param scene the release
   */
  static Launch of(Scene scene) {
    return of(scene, OptionalDouble.empty());
  }

  /**
   * Speed and direction drawn from the scene's delivery.
   *
   * @param scene the release
   * @param loft known loft, radians, 0 along the ice; empty to draw it
   */
  static Launch of(Scene scene, OptionalDouble loft) {
    if (loft.isPresent() && !(loft.getAsDouble() >= 0 && loft.getAsDouble() < Math.PI / 2)) {
      throw new IllegalArgumentException(
          "a loft lies from 0 to under pi/2, not " + loft.getAsDouble());
    }
    Delivery d = scene.delivery();
    double x = scene.x();
    double y = scene.y();
    double ahead = scene.rink().goalLine() - x;
    return (path, start) -> {
      double speed =
          Draws.triangular(Draws.uniform(start, SPEED), d.slowest(), d.usual(), d.fastest());
      double aim =
          scene.targetY().isPresent()
              ? scene.targetY().getAsDouble()
              : d.spread() * (2 * Draws.uniform(start, TARGET) - 1);
      double across = aim - y;
      // Aimed at where he stands, it goes up ice.
      double way = Math.sqrt(ahead * ahead + across * across);
      double ux = way > 0 ? ahead / way : 1;
      double uy = way > 0 ? across / way : 0;
      double angle = 0;
      if (loft.isPresent()) {
        angle = loft.getAsDouble();
      } else if (Draws.uniform(start, LOFT) < d.lofted()) {
        double u = Draws.uniform(start, LOFT_ANGLE);
        angle = Delivery.LEAST_LOFT + u * (Delivery.MOST_LOFT - Delivery.LEAST_LOFT);
      }
      double forward = angle > 0 ? speed * Math.cos(angle) : speed;
      double upward = angle > 0 ? speed * Math.sin(angle) : 0;
      path.draw(deceleration(start), drag(start), x, y, forward, ux, uy, upward);
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
    double ux = Math.cos(direction);
    double uy = Math.sin(direction);
    return (path, start) -> {
      double a = deceleration(start);
      double k = drag(start);
      double meant = Slide.speedBeforeStop(a, k, distance);
      double speed =
          meant * Math.max(0, 1 + error * NormalQuantile.of(Draws.uniform(start, SPEED)));
      path.draw(a, k, scene.x(), scene.y(), speed, ux, uy, 0);
    };
  }

  /**
   * A shot along the ice at the middle of the far net, off by a normal angle.
   *
   * @param scene where from, and the spread of speeds
   * @param error standard deviation of the direction, radians
   */
  static Launch shot(Scene scene, double error) {
    Delivery d = scene.delivery();
    double meant = Math.atan2(-scene.y(), scene.rink().goalLine() - scene.x());
    return (path, start) -> {
      double speed =
          Draws.triangular(Draws.uniform(start, SPEED), d.slowest(), d.usual(), d.fastest());
      double direction = meant + error * NormalQuantile.of(Draws.uniform(start, TARGET));
      path.draw(
          deceleration(start),
          drag(start),
          scene.x(),
          scene.y(),
          speed,
          Math.cos(direction),
          Math.sin(direction),
          0);
    };
  }

  /** Deceleration by friction in a draw, m/s2: friction 0.04 to 0.24, {@link PuckSettings}. */
  static double deceleration(long start) {
    return Slide.GRAVITY * Draws.triangular(Draws.uniform(start, FRICTION), 0.04, 0.16, 0.24);
  }

  /** Drag on the ice in a draw, per metre: 0.0030 to 0.0058, {@link PuckSettings}. */
  static double drag(long start) {
    return Draws.triangular(Draws.uniform(start, DRAG), 0.0030, 0.0044, 0.0058);
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
