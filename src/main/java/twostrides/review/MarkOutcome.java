package twostrides.review;

/** What came of a release short of center, as a release map shows it. */
public enum MarkOutcome {
  /** Icing. */
  ICED("iced"),
  /** The next face-off was in the own zone for another or an unknown reason. */
  OTHER_RESTART("other own-zone restart"),
  /** The opponent touched it next. */
  OPPONENT_NEXT("opponent had it next"),
  /** The own team touched it next. */
  OWN_NEXT("own team had it next"),
  /** Play stopped elsewhere, or the sheet does not say. */
  STOPPED("play stopped, or not in the sheet");

  private final String label;

  MarkOutcome(String label) {
    this.label = label;
  }

  /** The words on pages and charts. */
  public String label() {
    return label;
  }
}
