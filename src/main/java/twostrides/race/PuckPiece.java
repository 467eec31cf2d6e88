package twostrides.race;

import twostrides.rink.Place;

/**
 * One piece of a puck's path, between two rebounds, landings or ends of a corner.
 *
 * @param kind on the ice or in the air, straight or along a corner
 * @param start seconds since the release at which it begins
 * @param end seconds since the release at which it ends
 * @param from where it begins
 * @param to where it ends
 * @param speed horizontal speed at its beginning, m/s
 * @param endSpeed horizontal speed at its end, before what happens there, m/s
 * @param joint what happens at its end
 */
public record PuckPiece(
    Kind kind,
    double start,
    double end,
    Place from,
    Place to,
    double speed,
    double endSpeed,
    Joint joint) {

  /** How the puck moves. */
  public enum Kind {
    /** Straight on the ice. */
    SLIDE,
    /** On the ice along the curve of a corner. */
    RIM,
    /** Straight through the air. */
    FLIGHT,
    /** Through the air along the curve of a corner. */
    RIM_FLIGHT
  }
}
