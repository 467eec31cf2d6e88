package twostrides.race;

/** When a skater can be where a puck is: looks along its path and narrows the first success. */
final class Interception {

  /** An interception is narrowed to this, seconds (assumed: far below a video frame of 0.02 s). */
  private static final double SHARP = 1e-4;

  private final PuckPieces pieces;
  private final SlideSteps steps = new SlideSteps();

  /**
   * Interceptions of one puck's path.
   *
   * @param pieces the path, released anew as often as one likes
   */
  Interception(PuckPieces pieces) {
    this.pieces = pieces;
  }

  /** As {@link PuckPath#earliest} says. */
  double earliest(Reach reach, double step, double playable) {
    if (!(step > 0)) {
      throw new IllegalArgumentException("a step must be above 0 s, not " + step);
    }
    double before = 0;
    double lateBefore = Double.POSITIVE_INFINITY;
    int i = 0;
    int stepped = -1;
    pieces.finish(i);
    for (int look = 0; ; look++) {
      double t = look * step;
      while (t > pieces.end(i) && pieces.has(i + 1)) {
        i++;
      }
      double s;
      boolean over = t >= pieces.end(i) && !pieces.has(i + 1);
      if (over) {
        t = pieces.end(i);
        s = pieces.length(i);
      } else {
        s = stepped == i ? steps.next() : pieces.step(steps, i, t, step);
        stepped = i;
      }
      double late = late(reach, i, s, t, playable);
      if (late <= 0) {
        return look == 0 ? t : narrow(reach, before, lateBefore, t, late, playable);
      }
      if (over) {
        return pieces.joint(i) == Joint.STOPPED ? t + late : Double.POSITIVE_INFINITY;
      }
      before = t;
      lateBefore = late;
    }
  }

  /** Seconds by which a skater is late for the puck at a time; infinite while it is too high. */
  private double late(Reach reach, int i, double s, double t, double playable) {
    if (pieces.heightAt(i, t) > playable) {
      return Double.POSITIVE_INFINITY;
    }
    double seconds = reach.secondsTo(pieces.xAfter(i, s), pieces.yAfter(i, s)) - t;
    return Double.isNaN(seconds) ? Double.POSITIVE_INFINITY : seconds;
  }

  /** The Illinois form of the false position, halving while the puck is too high at one end. */
  private double narrow(
      Reach reach, double tooLate, double lateBy, double inTime, double earlyBy, double playable) {
    double lo = tooLate;
    double fLo = lateBy;
    double hi = inTime;
    double fHi = earlyBy;
    int side = 0;
    while (hi - lo > SHARP && fHi < 0) {
      double mid =
          fLo < Double.POSITIVE_INFINITY ? hi - fHi * (hi - lo) / (fHi - fLo) : 0.5 * (lo + hi);
      if (!(mid > lo && mid < hi)) {
        mid = 0.5 * (lo + hi);
      }
      int i = pieces.at(mid);
      double f = late(reach, i, pieces.along(i, mid), mid, playable);
      if (Math.abs(f) <= SHARP) {
        return mid;
      }
      if (f > 0) {
        fHi = side > 0 ? 0.5 * fHi : fHi;
        side = 1;
        lo = mid;
        fLo = f;
      } else {
        fLo = side < 0 ? 0.5 * fLo : fLo;
        side = -1;
        hi = mid;
        fHi = f;
      }
    }
    return hi;
  }
}
