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

  /** Fastest release taken, m/s (assumed: a third above the hardest slap shot read of, 45 m/s). */
  private static final double FASTEST = 60;

  private final Rink rink;
  private final PuckPieces pieces;

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
    pieces.release(
        settings,
        settings.deceleration(),
        settings.drag(),
        x,
        y,
        forward,
        Math.cos(direction),
        Math.sin(direction),
        upward);
    return this;
  }

  /**
   * Releases a puck in one of many draws, on ice of its own and ordinary boards. Callers guarantee
   * numbers that {@link #flip} and {@link PuckSettings} would take: nothing is checked.
   *
   * @param deceleration deceleration by friction on the ice, m/s2
   * @param drag drag on the ice, per metre
   * @param x place of the release, metres from center ice
   * @param y place of the release, metres from the long axis
   * @param forward speed along the ice, m/s
   * @param ux direction up ice, of a unit vector
   * @param uy direction to the left, of a unit vector
   * @param upward rising speed, m/s
   */
  void draw(
      double deceleration,
      double drag,
      double x,
      double y,
      double forward,
      double ux,
      double uy,
      double upward) {
    pieces.release(PuckSettings.DEFAULT, deceleration, drag, x, y, forward, ux, uy, upward);
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
   * Whether the puck goes into a net at a time, without following it farther.
   *
   * @param time seconds since the release, as {@link #pastFarGoalLine} gives them
   */
  boolean inNetAt(double time) {
    int i = pieces.at(time);
    pieces.finish(i);
    return pieces.joint(i) == Joint.IN_NET;
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
    int i = 0;
    while (true) {
      double t =
          sense > 0 && after <= pieces.start(i) ? pieces.meetsOnItsWay(i, plane) : Double.NaN;
      if (t >= 0) {
        return t;
      }
      pieces.finish(i);
      t = onPiece(i, plane, sense, after);
      if (t >= 0 || !pieces.follows(i)) {
        return t;
      }
      i++;
    }
  }

  private double onPiece(int i, double plane, int sense, double after) {
    if (pieces.end(i) < after) {
      return Double.NaN;
    }
    double from = Math.max(after, pieces.start(i));
    double s0 = after > pieces.start(i) ? pieces.along(i, after) : 0;
    if (sense * (pieces.xAfter(i, s0) - plane) >= 0) {
      return from;
    }
    double s = pieces.meets(i, plane);
    return s >= s0 ? pieces.timeAlong(i, s) : Double.NaN;
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
   * Number of the piece that holds a time; the last one for times after the end.
   *
   * @param time seconds since the release, 0 or more
   * @param from a piece that begins no later
   */
  int pieceAt(double time, int from) {
    return pieces.at(time, from);
  }

  /**
   * The puck's place without an object for it, and its height above the ice, metres; the end's for
   * times after the end.
   *
   * @param piece the piece that holds the time
   * @param time seconds since the release, 0 or more
   * @param into x and y are put there
   */
  double lookAt(int piece, double time, double[] into) {
    double s = pieces.along(piece, time);
    into[0] = pieces.xAfter(piece, s);
    into[1] = pieces.yAfter(piece, s);
    return pieces.heightAt(piece, time);
  }

  /**
   * Metres above the ice.
   *
   * @param time seconds since the release, 0 or more
   */
  public double heightAt(double time) {
    int i = pieces.at(time);
    return pieces.heightAt(i, time);
  }

  /**
   * Horizontal speed, m/s; 0 for times after a stop. At a rebound, the speed before it.
   *
   * @param time seconds since the release, 0 or more
   */
  public double speedAt(double time) {
    return pieces.speedAt(pieces.at(time), time);
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
