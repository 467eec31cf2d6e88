package twostrides.race.puck;

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
public record Boards(double halfLength, double halfWidth, double corner) {

  /** Normal restitution off the boards: 0.30, range 0.2 to 0.5 (assumed, softer than a wall). */
  static final double BOUNCE = 0.30;

  /**
   * Normal restitution off the glass: 0.35, range 0.25 to 0.45, frozen puck on a rigid surface,
   * derived from drop and cannon tests in Anderson 2008 (MSc thesis, Washington State University,
   * abstract).
   */
  static final double GLASS_BOUNCE = 0.35;

  /** Friction coefficient of an impact on boards or glass: 0.20, range 0.15 to 0.3 (assumed). */
  static final double GRIP = 0.20;

  /**
   * Incidence against the curve of a corner, radians, below which the many small rebounds are one
   * run along the boards: 0.17, 10 degrees (assumed).
   */
  static final double RIM_ANGLE = 0.17;

  /**
   * Share of its speed that a puck keeps over a quarter turn of the boards, apart from what the ice
   * and the air take: 0.80, range 0.65 to 0.95 (assumed, best fitted from one's own video).
   */
  static final double RIM_KEEP = 0.80;

  /** Top of the boards, metres: 1.07, IIHF Official Rule Book 2023/24 rule 1. */
  static final double HEIGHT = 1.07;

  /**
   * Top of the glass above the ice, metres: 2.87, boards and 1.8 m of glass along the sides (from
   * memory); taken all round, although glass behind the goals is higher.
   */
  static final double GLASS_HEIGHT = 2.87;

  /**
   * Rejects outlines without a corner, or with corners that do not fit.
   *
   * @throws IllegalArgumentException for these
   */
  public Boards {
    if (!(corner > 0 && corner < halfWidth && corner < halfLength)) {
      throw new IllegalArgumentException(
          ("boards need a corner radius above that of the puck and below half a width, "
                  + "not %s m beside %s m and %s m")
              .formatted(corner, halfLength, halfWidth));
    }
  }

  /**
   * The outline for the center of a puck.
   *
   * @param rink the rink
   */
  public static Boards of(Rink rink) {
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
  public double outside(double x, double y) {
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
   * A straight way from a place inside the outline to the boards. A path that leaves the rectangle
   * round the outline in a corner leaves the outline through that corner's curve.
   *
   * @param from where it begins
   * @param ux direction along the rink, of a unit vector
   * @param uy direction across the rink, of a unit vector
   */
  Track.Straight ahead(Place from, double ux, double uy) {
    double s = Math.min(toWall(from.x(), ux, halfLength), toWall(from.y(), uy, halfWidth));
    double hitX = from.x() + ux * s;
    double hitY = from.y() + uy * s;
    boolean curve = inCorner(hitX, hitY);
    double length = curve ? toCurve(from, ux, uy, hitX, hitY) : s;
    return new Track.Straight(this, from, ux, uy, length, curve);
  }

  private static double toWall(double at, double u, double wall) {
    if (u == 0) {
      return Double.POSITIVE_INFINITY;
    }
    return Math.max(0, ((u > 0 ? wall : -wall) - at) / u);
  }

  private double toCurve(Place from, double ux, double uy, double hitX, double hitY) {
    double dx = from.x() - Math.copySign(cornerX(), hitX);
    double dy = from.y() - Math.copySign(cornerY(), hitY);
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
   */
  static double alongAfter(double along, double into, double bounce) {
    double lost = Math.min(GRIP * (1 + bounce) * into, Math.abs(along) / 3);
    return along - Math.copySign(lost, along);
  }

  /**
   * The drag, per metre, that a run along the curve adds to that of the air: a wall that takes
   * speed in proportion to the force that holds the puck on the curve, m v^2 / r, acts like
   * quadratic drag, exp(-k r pi/2) = {@link #RIM_KEEP}.
   */
  double rimDrag() {
    return -Math.log(RIM_KEEP) / (corner * (Math.PI / 2));
  }
}
