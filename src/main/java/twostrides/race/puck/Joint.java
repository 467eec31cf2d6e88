package twostrides.race.puck;

/** What happens where one piece of a puck's path ends. */
public enum Joint {
  /** The puck hits boards or glass and comes off them. */
  REBOUND,
  /** The puck hits the curve of a corner at a small angle and follows it. */
  RIM_ENTERED,
  /** The puck comes out of a corner, along the straight boards. */
  RIM_LEFT,
  /** A puck in the air touches the ice. */
  LANDED,
  /** The puck lies still: the path ends. */
  STOPPED,
  /** The puck is wholly past a goal line between the posts, under the bar: the path ends. */
  IN_NET,
  /** The puck meets the boards above the glass and leaves the rink: the path ends. */
  OVER_GLASS,
  /**
   * Too many rebounds to follow: the path ends while the puck still moves. Not reached with the
   * default settings.
   */
  GIVEN_UP;

  /** Whether the path ends here. */
  public boolean ends() {
    return switch (this) {
      case REBOUND, RIM_ENTERED, RIM_LEFT, LANDED -> false;
      case STOPPED, IN_NET, OVER_GLASS, GIVEN_UP -> true;
    };
  }
}
