package twostrides.demo;

import java.util.Optional;
import twostrides.rink.Place;
import twostrides.rink.Rink;

/**
 * What lies where on this league's rink: zones, the nine face-off spots, the inside of the boards.
 * It takes the lengths of the rink, and answers by itself.
 */
final class Spots {
  /** How far from the boards a puck in play is written, m, assumed. */
  private static final double OFF_BOARDS = 0.4;

  private final Rink rink;

  Spots(Rink rink) {
    this.rink = rink;
  }

  /** Metres from the puck's near side to the near edge of the red line; 0 or less is gained. */
  double shortOfCenter(Place at) {
    return toCenter() - at.x();
  }

  /** The x in a team's frame from which its puck touches the red line, m. */
  double toCenter() {
    return -rink.redLineHalfWidth() - Rink.PUCK_RADIUS;
  }

  /** Whether the puck is not wholly past the own blue line. */
  boolean inOwnZone(Place at) {
    return at.x() <= -rink.blueLineNeutralEdge() + Rink.PUCK_RADIUS;
  }

  /** Whether a place lies beyond the far blue line. */
  boolean inAttackingZone(Place at) {
    return at.x() > rink.blueLineNeutralEdge();
  }

  Next.Drop center() {
    return new Next.Drop(new Place(0, 0), Optional.empty(), false);
  }

  /** A spot in a side's own zone; y says on which hand, in that side's frame. */
  Next.Drop ownZone(Side side, double y) {
    Place spot = new Place(-rink.endSpotX(), y < 0 ? -rink.endSpotY() : rink.endSpotY());
    return new Next.Drop(tenths(side.homeFrame(spot)), Optional.of(side), false);
  }

  /** The neutral spot nearest to a place of a side's frame. */
  Next.Drop neutral(Side side, Place at) {
    double x = at.x() < 0 ? -rink.neutralSpotX() : rink.neutralSpotX();
    double y = at.y() < 0 ? -rink.endSpotY() : rink.endSpotY();
    return new Next.Drop(tenths(side.homeFrame(new Place(x, y))), Optional.empty(), false);
  }

  /** The spot nearest to a place of a side's frame, by zone. */
  Next.Drop near(Side side, Place at) {
    if (at.x() < -rink.blueLineNeutralEdge()) {
      return ownZone(side, at.y());
    }
    if (at.x() > rink.blueLineNeutralEdge()) {
      return ownZone(side.other(), -at.y());
    }
    return neutral(side, at);
  }

  /** The nearest place inside the boards, to the tenth of a metre that a sheet writes. */
  Place inside(double x, double y) {
    double maxX = rink.length() / 2 - OFF_BOARDS;
    double maxY = rink.width() / 2 - OFF_BOARDS;
    double cx = Math.max(-maxX, Math.min(maxX, x));
    double cy = Math.max(-maxY, Math.min(maxY, y));
    double radius = rink.cornerRadius() - OFF_BOARDS;
    double dx = Math.abs(cx) - (maxX - radius);
    double dy = Math.abs(cy) - (maxY - radius);
    if (dx > 0 && dy > 0 && Math.hypot(dx, dy) > radius) {
      double shrink = radius / Math.hypot(dx, dy);
      cx = Math.copySign(maxX - radius + dx * shrink, cx);
      cy = Math.copySign(maxY - radius + dy * shrink, cy);
    }
    return tenths(new Place(cx, cy));
  }

  /** To the tenth; {@link #OFF_BOARDS} is more than what rounding adds. */
  private static Place tenths(Place at) {
    return new Place(tenths(at.x()), tenths(at.y()));
  }

  private static double tenths(double metres) {
    return Math.round(metres * 10) / 10.0;
  }
}
