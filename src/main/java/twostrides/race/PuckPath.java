package twostrides.race;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import twostrides.rink.Place;
import twostrides.rink.Rink;

/**
 * The whole path of a released puck: slides, flights, rebounds off the boards and runs round the
 * corners, until it lies still, is in a net or over the glass.
 *
 * <p>Made once for a rink and released again and again: nothing is allocated for a release, and the
 * path is followed only as far as a question needs. Not for use by two threads at once. Before the
 * first release the puck lies at center ice. Places are in the frame of the team that releases,
 * metres from center ice; times are seconds since the release. Times that do not exist are NaN, so
 * that a comparison with them is false; {@link #crossing} says the same with an {@code Optional}.
 *
 * <p>Nobody touches the puck, and it meets nothing but ice, boards, glass and the mouths of the
 * nets: posts, the outside of the nets and skaters are left out.
 */
public final class PuckPath {

  /** An interception is narrowed to this, seconds (assumed: far below a video frame of 0.02 s). */
  private static final double SHARP = 1e-4;

  /** Fastest release taken, m/s (assumed: a third above the hardest slap shot read of, 45 m/s). */
  private static final double FASTEST = 60;

  private final Rink rink;
  private final PuckPieces pieces;
  private final SlideSteps steps = new SlideSteps();

  /**
   * A path on a rink, ready for a first release.
   *
   * @param rink the rink
   */
  public PuckPath(Rink rink) {
    this.rink = rink;
    this.pieces = new PuckPieces(rink);
  }

  /**
   * Releases a puck along the ice.
   *
   * @param settings ice, air and boards
   * @param x place of the release, metres from center ice; outside the boards counts as at them
   * @param y place of the release, metres from the long axis
   * @param speed speed, m/s, 0 to 60
   * @param direction radians, 0 straight up ice, positive to the left
   */
  public PuckPath slide(PuckSettings settings, double x, double y, double speed, double direction) {
    return release(settings, x, y, speed, direction, 0);
  }

  /**
   * Releases a puck into the air.
   *
   * @param settings ice, air and boards
   * @param x place of the release, metres from center ice; outside the boards counts as at them
   * @param y place of the release, metres from the long axis
   * @param speed speed, m/s, 0 to 60
   * @param direction radians, 0 straight up ice, positive to the left
   * @param loft angle above the ice, radians, 0 to under pi/2
   */
  public PuckPath flip(
      PuckSettings settings, double x, double y, double speed, double direction, double loft) {
    if (!(loft >= 0 && loft < Math.PI / 2)) {
      throw new IllegalArgumentException("a loft lies from 0 to under pi/2, not " + loft);
    }
    return release(settings, x, y, speed * Math.cos(loft), direction, speed * Math.sin(loft));
  }

  private PuckPath release(
      PuckSettings settings, double x, double y, double forward, double direction, double upward) {
    double squared = forward * forward + upward * upward;
    if (!(squared <= FASTEST * FASTEST * (1 + 1e-12) && forward >= 0 && upward >= 0)
        || !Double.isFinite(direction)) {
      throw new IllegalArgumentException(
          "a release needs a speed from 0 to 60 m/s and a finite direction, not "
              + Math.sqrt(squared)
              + " and "
              + direction);
    }
    pieces.release(settings, x, y, forward, direction, upward);
    return this;
  }

  /** Seconds until the puck touches the near edge of the red line; 0 when released there. */
  public double touchesRedLine() {
    return reaches(-rink.redLineHalfWidth() - Rink.PUCK_RADIUS);
  }

  /** Seconds until the puck is wholly past the neutral-side edge of the own blue line. */
  public double pastOwnBlueLine() {
    return reaches(-rink.blueLineNeutralEdge() + Rink.PUCK_RADIUS);
  }

  /** Seconds until the puck is wholly past the far blue line, its whole width included. */
  public double pastFarBlueLine() {
    return reaches(rink.blueLineNeutralEdge() + rink.blueLineWidth() + Rink.PUCK_RADIUS);
  }

  /**
   * Seconds until the puck is wholly past the far goal line. The rink's goal line is taken as the
   * middle of the painted line.
   */
  public double pastFarGoalLine() {
    return reaches(pieces.goalPlane());
  }

  /**
   * Seconds until a puck that was wholly past the far goal line is wholly out in front of it again.
   */
  public double backOverFarGoalLine() {
    double past = pastFarGoalLine();
    return past >= 0 ? returns(2 * rink.goalLine() - pieces.goalPlane(), past) : Double.NaN;
  }

  /** Whether the puck is wholly past a goal line between the posts and under the bar. */
  public boolean inNet() {
    return ending() == Joint.IN_NET;
  }

  /**
   * Seconds until the puck's center is at or up ice of a plane; 0 when it was released there.
   *
   * @param x the plane, metres from center ice
   */
  public double reaches(double x) {
    return first(x, 1, 0);
  }

  /**
   * Seconds until the puck's center is at or back behind a plane, not counting what was before a
   * given time.
   *
   * @param x the plane, metres from center ice
   * @param after seconds since the release
   */
  public double returns(double x, double after) {
    return first(x, -1, after);
  }

  private double first(double plane, int sense, double after) {
    for (int i = 0; pieces.has(i); i++) {
      if (pieces.end(i) < after) {
        continue;
      }
      double from = Math.max(after, pieces.start(i));
      double s0 = after > pieces.start(i) ? pieces.along(i, after) : 0;
      if (sense * (pieces.xAfter(i, s0) - plane) >= 0) {
        return from;
      }
      double s = pieces.meets(i, plane);
      if (s >= s0) {
        return pieces.timeAlong(i, s);
      }
    }
    return Double.NaN;
  }

  /**
   * Where and when the puck's center first is at or up ice of a plane; empty when never.
   *
   * @param x the plane, metres from center ice
   */
  public Optional<Crossing> crossing(double x) {
    double t = reaches(x);
    return Double.isNaN(t)
        ? Optional.empty()
        : Optional.of(new Crossing(t, placeAt(t), heightAt(t), speedAt(t)));
  }

  /** Seconds until the path ends. */
  public double endTime() {
    return pieces.end(pieces.last());
  }

  /** Where the path ends: where the puck lies still, unless {@link #ending} says otherwise. */
  public Place endPlace() {
    return placeAt(endTime());
  }

  /** Why the path ends. */
  public Joint ending() {
    return pieces.joint(pieces.last());
  }

  /** Whether the puck comes to rest without ever having been wholly past the far goal line. */
  public boolean stopsShort() {
    return ending() == Joint.STOPPED && Double.isNaN(pastFarGoalLine());
  }

  /**
   * Metres from center ice, along the rink; the end's place for times after the end.
   *
   * @param time seconds since the release, 0 or more
   */
  public double xAt(double time) {
    int i = pieces.at(time);
    return pieces.xAfter(i, pieces.along(i, time));
  }

  /**
   * Metres from the long axis; the end's place for times after the end.
   *
   * @param time seconds since the release, 0 or more
   */
  public double yAt(double time) {
    int i = pieces.at(time);
    return pieces.yAfter(i, pieces.along(i, time));
  }

  /**
   * The puck's place; the end's place for times after the end.
   *
   * @param time seconds since the release, 0 or more
   */
  public Place placeAt(double time) {
    int i = pieces.at(time);
    double s = pieces.along(i, time);
    return new Place(pieces.xAfter(i, s), pieces.yAfter(i, s));
  }

  /**
   * Metres above the ice.
   *
   * @param time seconds since the release, 0 or more
   */
  public double heightAt(double time) {
    int i = pieces.at(time);
    return pieces.heightAt(i, Math.min(time, pieces.end(i)));
  }

  /**
   * Horizontal speed, m/s; 0 for times after a stop. At a rebound, the speed before it.
   *
   * @param time seconds since the release, 0 or more
   */
  public double speedAt(double time) {
    return pieces.speedAt(pieces.at(time), time);
  }

  /**
   * Seconds until a skater can be where the puck is, with the puck no higher than he can play it:
   * the path is looked at every {@code step} seconds and the first success narrowed to a tenth of a
   * millisecond. A chance that comes and goes within one step may be missed. A puck that lies still
   * waits. Infinite when the puck never can be had.
   *
   * @param reach how soon the skater can be at a place
   * @param step seconds between two looks, above 0; 0.05 to 0.2 is sensible
   * @param playable greatest height at which the puck can be played, metres
   */
  public double earliest(Reach reach, double step, double playable) {
    if (!(step > 0)) {
      throw new IllegalArgumentException("a step must be above 0 s, not " + step);
    }
    double before = 0;
    double lateBefore = Double.POSITIVE_INFINITY;
    int i = 0;
    int stepped = -1;
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

  /** The pieces of the path in order, to the end. */
  public List<PuckPiece> pieces() {
    List<PuckPiece> list = new ArrayList<>();
    for (int i = 0; pieces.has(i); i++) {
      double s = pieces.length(i);
      list.add(
          new PuckPiece(
              pieces.kind(i),
              pieces.start(i),
              pieces.end(i),
              new Place(pieces.xAfter(i, 0), pieces.yAfter(i, 0)),
              new Place(pieces.xAfter(i, s), pieces.yAfter(i, s)),
              pieces.speed(i),
              pieces.endSpeed(i),
              pieces.joint(i)));
    }
    return List.copyOf(list);
  }
}
