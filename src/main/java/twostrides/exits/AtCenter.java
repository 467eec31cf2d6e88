package twostrides.exits;

/** What became of an exit at center, after a carry or a pass; other ways out have no such mark. */
public enum AtCenter {
  /** The team still had control when the puck touched the red line. */
  GAINED("gained"),
  /**
   * Sent on with no receiver, or on a missed pass, from between the own blue line and the red line.
   */
  RELEASED_SHORT("released short"),
  /** The opponent took it there. */
  LOST_SHORT("lost short"),
  /** Taken back into the own zone under control; a new attempt begins. */
  BROUGHT_BACK("brought back"),
  /** Play stopped there for another reason. */
  STOPPED("stopped");

  private final String label;

  AtCenter(String label) {
    this.label = label;
  }

  /** The word written in tables and on pages. */
  public String label() {
    return label;
  }
}
