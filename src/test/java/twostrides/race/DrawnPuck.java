package twostrides.race;

import java.util.List;
import java.util.OptionalDouble;
import twostrides.rink.Rink;

/**
 * The puck of {@link RaceModel} without its skaters: the same draws of speed, direction, loft, ice
 * and air, and the path open to questions that the model does not answer. That the two agree is
 * held by DrawnPuckTest.
 */
public final class DrawnPuck {
  private static final int SPEED = 0;
  private static final int TARGET = 1;
  private static final int LOFT = 2;
  private static final int LOFT_ANGLE = 3;
  private static final int FRICTION = 4;
  private static final int DRAG = 5;

  private final Rink rink;
  private final double x;
  private final double y;
  private final PuckPath path;

  /**
   * A release at a place.
   *
   * @param rink the rink
   * @param x metres from center ice
   * @param y metres from the long axis
   */
  public DrawnPuck(Rink rink, double x, double y) {
    this.rink = rink;
    this.x = x;
    this.y = y;
    this.path = new PuckPath(rink);
  }

  /**
   * The scene of the release with nobody named: ten skaters are drawn.
   *
   * @param delivery how it is sent
   * @param level level of play
   */
  public Scene scene(Delivery delivery, SkaterLevel level) {
    return new Scene(rink, x, y, delivery, OptionalDouble.empty(), List.of(), level);
  }

  /**
   * Releases a drawn puck.
   *
   * @param delivery how it is sent
   * @param draws the chance
   * @param draw index of the draw
   * @return the path, good until the next release
   */
  public PuckPath release(Delivery delivery, Draws draws, int draw) {
    double speed =
        draws.triangular(draw, SPEED, delivery.slowest(), delivery.usual(), delivery.fastest());
    double aim = delivery.spread() * (2 * draws.uniform(draw, TARGET) - 1);
    double direction = Math.atan2(aim - y, rink.goalLine() - x);
    PuckSettings ice =
        PuckSettings.DEFAULT.withIce(
            draws.triangular(draw, FRICTION, 0.05, 0.10, 0.15),
            draws.triangular(draw, DRAG, 0.0038, 0.0053, 0.0076));
    if (draws.uniform(draw, LOFT) < delivery.lofted()) {
      double part = draws.uniform(draw, LOFT_ANGLE);
      double loft = Delivery.LEAST_LOFT + part * (Delivery.MOST_LOFT - Delivery.LEAST_LOFT);
      return path.flip(ice, x, y, speed, direction, loft);
    }
    return path.slide(ice, x, y, speed, direction);
  }
}
