package twostrides.exits;

/** Why the next face-off was in the exiting team's own zone. */
public enum RestartCause {
  /** A stoppage row says icing. */
  ICING_WRITTEN("icing_written"),
  /** Nothing is written, and release, manpower, spot and time all fit an icing. */
  ICING_INFERRED("icing_inferred"),
  /**
   * A penalty, written as the stoppage or as a penalty row between the last touch and the face-off.
   */
  PENALTY("penalty"),
  /** Written to be something else: the reason names it. */
  OTHER("other"),
  /** An own-zone restart whose cause the sheet cannot tell. */
  UNKNOWN("unknown"),
  /** No own-zone restart. */
  NONE("none");

  private final String label;

  RestartCause(String label) {
    this.label = label;
  }

  /** The word written in tables and on pages. */
  public String label() {
    return label;
  }

  /** Whether play stopped for icing. */
  public boolean icing() {
    return this == ICING_WRITTEN || this == ICING_INFERRED;
  }
}
