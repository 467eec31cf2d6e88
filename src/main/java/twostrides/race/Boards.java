package twostrides.race;

import twostrides.rink.Place;
import twostrides.rink.Rink;

/**
 * The boards of a rink as the center of a puck meets them: four straight walls and four quarter
 * circles, all one puck radius inside the boards.
 *
 * <p>Rebound: the speed into the wall is turned round and multiplied by a restitution e; the speed
 * along it loses a Coulomb impulse mu (1 + e) |vn|, capped at a third of it, which is where a
 * uniform disc that arrives without spin stops sliding and rolls along the wall (standard
 * rigid-body result). Neither can raise the energy. Spin is not carried from one rebound to the
 * next. Posts, the frame of the net and benches with open doors are left out.
 *
 * @param halfLength center ice to the end wall of the puck's center, metres
 * @param halfWidth long axis to the side wall of the puck's center, metres
 * @param corner radius of the quarter circle of the puck's center, metres
 */
record Boards(double halfLength, double halfWidth, double corner) {

  /** Rejects outlines without a corner, or with corners that do not fit. */
  Boards {
    if (!(corner > 0 && corner < halfWidth && corner < halfLength)) {
      throw new IllegalArgumentException(
          "boards need a corner radius above that of the puck and below half a width, not "
              + corner
              + " m beside "
              + halfLength
              + " m and "
              + halfWidth
              + " m");
    }
  }

  /**
   * The outline for the center of a puck.
   *
   * @param rink the rink
   */
  static Boards of(Rink rink) {
    return new Boards(
        rink.length() / 2 - Rink.PUCK_RADIUS,
        rink.width() / 2 - Rink.PUCK_RADIUS,
        rink.cornerRadius() - Rink.PUCK_RADIUS);
  }

  /** Distance along the rink from center ice to the centers of the corners, metres. */
  double cornerX() {
    return halfLength - corner;
  }

  /** Distance across the rink from the long axis to the centers of the corners, metres. */
  double cornerY() {
    return halfWidth - corner;
  }

  /**
   * Whether a place on or near the outline belongs to the curve of a corner.
   *
   * @param x metres along the rink
   * @param y metres across the rink
   */
  boolean inCorner(double x, double y) {
    return Math.abs(x) > cornerX() && Math.abs(y) > cornerY();
  }

  /**
   * How far a place lies outside the outline, metres; negative inside, where it is the distance to
   * the nearest wall.
   *
   * @param x metres along the rink
   * @param y metres across the rink
   */
  double outside(double x, double y) {
    if (inCorner(x, y)) {
      return Math.hypot(Math.abs(x) - cornerX(), Math.abs(y) - cornerY()) - corner;
    }
    return Math.max(Math.abs(x) - halfLength, Math.abs(y) - halfWidth);
  }

  /**
   * The place itself, or the nearest place where a puck can lie: places in sheets are often written
   * on the boards.
   *
   * @param place a place
   */
  Place inside(Place place) {
    double x = clamp(place.x(), halfLength);
    double y = clamp(place.y(), halfWidth);
    if (outside(x, y) <= 0) {
      return new Place(x, y);
    }
    double dx = Math.abs(x) - cornerX();
    double dy = Math.abs(y) - cornerY();
    double shrink = corner / Math.sqrt(dx * dx + dy * dy);
    return new Place(
        Math.copySign(cornerX() + dx * shrink, x), Math.copySign(cornerY() + dy * shrink, y));
  }

  private static double clamp(double value, double most) {
    return Math.max(-most, Math.min(most, value));
  }

  /**
   * Metres from a place inside the outline to the boards, along a straight path.
   *
   * @param x metres along the rink
   * @param y metres across the rink
   * @param ux direction along the rink, of a unit vector
   * @param uy direction across the rink, of a unit vector
   */
  double run(double x, double y, double ux, double uy) {
    double s = toRectangle(x, y, ux, uy);
    double hitX = x + ux * s;
    double hitY = y + uy * s;
    return inCorner(hitX, hitY) ? toCurve(x, y, ux, uy, hitX, hitY) : s;
  }

  /**
   * Metres along a straight path to the rectangle round the outline. Where that point lies in a
   * corner, the path meets the curve before it; elsewhere it is the straight boards.
   *
   * @param x metres along the rink
   * @param y metres across the rink
   * @param ux direction along the rink, of a unit vector
   * @param uy direction across the rink, of a unit vector
   */
  double toRectangle(double x, double y, double ux, double uy) {
    return Math.min(toWall(x, ux, halfLength), toWall(y, uy, halfWidth));
  }

  private static double toWall(double at, double u, double wall) {
    if (u == 0) {
      return Double.POSITIVE_INFINITY;
    }
    return Math.max(0, ((u > 0 ? wall : -wall) - at) / u);
  }

  /**
   * Distance to the quarter circle of the corner in which the path would leave the rectangle. A
   * path that leaves the rectangle in a corner leaves the outline through that corner's curve.
   */
  double toCurve(double x, double y, double ux, double uy, double hitX, double hitY) {
    double dx = x - Math.copySign(cornerX(), hitX);
    double dy = y - Math.copySign(cornerY(), hitY);
    double b = dx * ux + dy * uy;
    double c = dx * dx + dy * dy - corner * corner;
    double root = Math.sqrt(Math.max(0, b * b - c));
    // Whichever form does not subtract nearly equal numbers.
    return Math.max(0, b > 0 ? -c / (b + root) : root - b);
  }

  /**
   * Speed along a wall after a rebound, with the sign it came with, m/s.
   *
   * @param along speed along the wall before it, m/s
   * @param into speed into the wall before it, m/s, 0 or more
   * @param bounce normal restitution
   * @param grip friction coefficient of the impact
   */
  static double alongAfter(double along, double into, double bounce, double grip) {
    double lost = Math.min(grip * (1 + bounce) * into, Math.abs(along) / 3);
    return along - Math.copySign(lost, along);
  }

  /**
   * The drag, per metre, that a run along the curve adds to that of the air: a wall that takes
   * speed in proportion to the force that holds the puck on the curve, m v^2 / r, acts like
   * quadratic drag, exp(-k r pi/2) = keep.
   *
   * @param keep share of its speed that a puck keeps over a quarter turn
   */
  double rimDrag(double keep) {
    return -Math.log(keep) / (corner * (Math.PI / 2));
  }
}
