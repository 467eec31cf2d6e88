package twostrides.review;

import twostrides.exits.Columns;

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

  /** Whether a row says that icing followed, written or inferred. */
  static boolean iced(TableRows r) {
    return r.words(Columns.RESTART_CAUSE).startsWith("icing");
  }

  /** What came of the release of a row. */
  static MarkOutcome of(TableRows r) {
    if (iced(r)) {
      return ICED;
    }
    if (r.flag(Columns.OWN_ZONE_RESTART).orElse(false)) {
      return OTHER_RESTART;
    }
    return switch (r.words(Columns.NEXT_TOUCH)) {
      case "own" -> OWN_NEXT;
      case "opponent" -> OPPONENT_NEXT;
      default -> STOPPED;
    };
  }
}
