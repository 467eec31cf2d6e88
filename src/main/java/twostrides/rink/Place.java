package twostrides.rink;

/**
 * A place on the ice in the frame of one team.
 *
 * @param x metres from center ice, positive toward the goal that team attacks
 * @param y metres from the long axis, positive to the left of that attack
 */
public record Place(double x, double y) {

  /**
   * Rejects places that are no numbers: a missing place is an empty {@code Optional}, never NaN.
   */
  public Place {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("a place needs two finite numbers, not " + x + ", " + y);
    }
  }

  /** The same spot of ice in the frame of the other team: half a turn about center ice. */
  public Place seenByOpponent() {
    return new Place(-x, -y);
  }

  /**
   * Straight distance to another place of the same frame, in metres.
   *
   * @param other the other place
   */
  public double distanceTo(Place other) {
    return Math.hypot(other.x - x, other.y - y);
  }
}
