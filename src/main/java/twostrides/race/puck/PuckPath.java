package twostrides.race.puck;

import java.util.List;
import java.util.OptionalDouble;
import twostrides.rink.Place;
import twostrides.rink.Rink;

/**
 * The whole path of a released puck: slides, flights, rebounds off the boards and runs round the
 * corners, until it lies still, is in a net or over the glass.
 *
 * <p>Places are in the frame of the team that releases, metres from center ice; times are seconds
 * since the release, and empty for what does not happen.
 *
 * <p>Nobody touches the puck, and it meets nothing but ice, boards, glass and the mouths of the
 * nets: posts, the outside of the nets and skaters are left out.
 */
public final class PuckPath {

  private final Rink rink;
  private final List<PuckPiece> pieces;

  private PuckPath(Rink rink, List<PuckPiece> pieces) {
    this.rink = rink;
    this.pieces = pieces;
  }

  /**
   * Follows a puck.
   *
   * @param rink the rink
   * @param ice what slows it
   * @param release how it leaves the stick
   */
  public static PuckPath of(Rink rink, Ice ice, PuckRelease release) {
    return new PuckPath(rink, new Follower(rink, ice).follow(release));
  }

  /**
   * Center of a puck wholly past the far goal line, metres from center ice. The rink's goal line is
   * taken as the middle of the painted line.
   *
   * @param rink the rink
   */
  static double goalPlane(Rink rink) {
    return rink.goalLine() + rink.goalLineWidth() / 2 + Rink.PUCK_RADIUS;
  }

  /** Seconds until the puck touches the near edge of the red line; 0 when released there. */
  public OptionalDouble touchesRedLine() {
    return reaches(-rink.redLineHalfWidth() - Rink.PUCK_RADIUS);
  }

  /** Seconds until the puck is wholly past the neutral-side edge of the own blue line. */
  public OptionalDouble pastOwnBlueLine() {
    return reaches(-rink.blueLineNeutralEdge() + Rink.PUCK_RADIUS);
  }

  /** Seconds until the puck is wholly past the far blue line, its whole width included. */
  public OptionalDouble pastFarBlueLine() {
    return reaches(rink.blueLineNeutralEdge() + rink.blueLineWidth() + Rink.PUCK_RADIUS);
  }

  /** Seconds until the puck is wholly past the far goal line. */
  public OptionalDouble pastFarGoalLine() {
    return reaches(goalPlane(rink));
  }

  /**
   * Seconds until the puck's center is at or up ice of a plane; 0 when it was released there.
   *
   * @param x the plane, metres from center ice
   */
  public OptionalDouble reaches(double x) {
    for (PuckPiece piece : pieces) {
      OptionalDouble time = piece.reaches(x);
      if (time.isPresent()) {
        return time;
      }
    }
    return OptionalDouble.empty();
  }

  /** Whether the puck is wholly past a goal line between the posts and under the bar. */
  public boolean inNet() {
    return ending() == Joint.IN_NET;
  }

  /**
   * Whether the puck goes into a net where it is at a time, before it meets anything else.
   *
   * @param time seconds since the release, 0 or more
   */
  public boolean inNetAt(double time) {
    return at(time).joint() == Joint.IN_NET;
  }

  /** Whether the puck comes to rest without ever having been wholly past the far goal line. */
  public boolean stopsShort() {
    return ending() == Joint.STOPPED && pastFarGoalLine().isEmpty();
  }

  /** Why the path ends. */
  public Joint ending() {
    return last().joint();
  }

  /** Seconds until the path ends. */
  public double endTime() {
    return last().end();
  }

  /** Where the path ends: where the puck lies still, unless {@link #ending} says otherwise. */
  public Place endPlace() {
    return last().to();
  }

  /**
   * The puck's place; the end's place for times after the end.
   *
   * @param time seconds since the release, 0 or more
   */
  public Place placeAt(double time) {
    PuckPiece piece = at(time);
    return piece.track().after(piece.along(time));
  }

  /**
   * Metres above the ice; the end's for times after the end.
   *
   * @param time seconds since the release, 0 or more
   */
  public double heightAt(double time) {
    return at(time).heightAt(time);
  }

  /**
   * Horizontal speed, m/s; 0 for times after a stop. At a rebound, the speed before it.
   *
   * @param time seconds since the release, 0 or more
   */
  public double speedAt(double time) {
    return at(time).speedAt(time);
  }

  /** The pieces of the path in order, to the end. */
  List<PuckPiece> pieces() {
    return pieces;
  }

  private PuckPiece last() {
    return pieces.get(pieces.size() - 1);
  }

  /** The piece that holds a time; the last one for times after the end. */
  private PuckPiece at(double time) {
    for (PuckPiece piece : pieces) {
      if (time <= piece.end()) {
        return piece;
      }
    }
    return last();
  }
}
