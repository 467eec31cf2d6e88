package twostrides.race.puck;

import twostrides.rink.Place;

/**
 * A puck of unit speed meets boards or glass. The outward normal is that of a wall in the quarter
 * of the rink where both coordinates are positive, so that mirrored paths stay mirrored.
 *
 * @param boards the boards
 * @param at where, exactly on the outline for the puck's center
 * @param nx outward normal along the rink, of a unit vector
 * @param ny outward normal across the rink, of a unit vector
 * @param into speed into the wall, 0 or more
 * @param along speed along it, positive toward the side boards
 */
record Impact(Boards boards, Place at, double nx, double ny, double into, double along) {

  /**
   * The impact at the end of a straight way.
   *
   * @param way the way
   */
  static Impact of(Track.Straight way) {
    Boards b = way.boards();
    Place hit = way.after(way.length());
    double signX = Math.copySign(1, hit.x());
    double signY = Math.copySign(1, hit.y());
    double nx = 0;
    double ny = 0;
    Place at;
    if (way.toCurve()) {
      double dx = Math.max(0, Math.abs(hit.x()) - b.cornerX());
      double dy = Math.max(0, Math.abs(hit.y()) - b.cornerY());
      double r = Math.sqrt(dx * dx + dy * dy);
      nx = dx / r;
      ny = dy / r;
      at =
          new Place(
              signX * (b.cornerX() + b.corner() * nx), signY * (b.cornerY() + b.corner() * ny));
    } else if (Math.abs(hit.y()) <= b.cornerY()) {
      nx = 1;
      at = new Place(signX * b.halfLength(), hit.y());
    } else {
      ny = 1;
      at = new Place(hit.x(), signY * b.halfWidth());
    }
    double wx = signX * way.ux();
    double wy = signY * way.uy();
    return new Impact(b, at, nx, ny, Math.max(0, wx * nx + wy * ny), wy * nx - wx * ny);
  }

  /** Whether a puck that meets a curve meets it so flat that it follows it. */
  boolean followsCurve() {
    return into < Math.sin(Boards.RIM_ANGLE);
  }

  /** The way along the curve. */
  Track.Curve curve() {
    return new Track.Curve(boards, signX(), signY(), Math.atan2(ny, nx), along > 0 ? 1 : -1);
  }

  /** Share of its speed that a puck keeps that follows the curve. */
  double keptOnCurve() {
    return Math.abs(Boards.alongAfter(along, into, 0));
  }

  /**
   * Share of its speed that a puck keeps that rebounds.
   *
   * @param bounce normal restitution
   */
  double kept(double bounce) {
    return Math.hypot(bounce * into, Boards.alongAfter(along, into, bounce));
  }

  /**
   * The way off the boards.
   *
   * @param bounce normal restitution
   */
  Track.Straight rebound(double bounce) {
    double kept = kept(bounce);
    double off = bounce * into / kept;
    double slides = Boards.alongAfter(along, into, bounce) / kept;
    return kept > 0
        ? boards.ahead(at, signX() * (-off * nx - slides * ny), signY() * (-off * ny + slides * nx))
        : boards.ahead(at, -signX() * nx, -signY() * ny);
  }

  private double signX() {
    return Math.copySign(1, at.x());
  }

  private double signY() {
    return Math.copySign(1, at.y());
  }
}
