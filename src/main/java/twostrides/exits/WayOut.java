package twostrides.exits;

/** How an exit attempt left the own zone: every attempt has exactly one. */
public enum WayOut {
  /** Under control across the own blue line on one player's stick. */
  CARRY("carry"),
  /** On a pass that a teammate received beyond the own blue line. */
  PASS("pass"),
  /** Sent out with no receiver, next touched short of the far blue line. */
  CHIP("chip"),
  /** Sent out with no receiver, next touched past the far blue line or the goal line, or iced. */
  LONG_CLEARANCE("long clearance"),
  /** Meant for a teammate beyond the zone, not received, and it left the zone. */
  MISSED_PASS("missed pass"),
  /**
   * It left the zone, and the sheet does not say how: a teammate's next touch with no pass written
   * down.
   */
  MEANS_UNKNOWN("moved, means unknown"),
  /** Never left: lost inside the zone, or play stopped there. */
  KEPT_IN("kept in");

  private final String label;

  WayOut(String label) {
    this.label = label;
  }

  /** The word written in tables and on pages. */
  public String label() {
    return label;
  }
}
