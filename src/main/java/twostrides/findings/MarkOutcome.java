package twostrides.findings;

import twostrides.exits.ExitOutcome;
import twostrides.exits.NextTouch;

/** What came of a release short of center, as a release map shows it. */
public enum MarkOutcome {
  /** Icing. */
  ICED("iced"),
  /** The next face-off was in the own zone for another or an unknown reason. */
  OTHER_RESTART("other defensive-zone face-off"),
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

  /**
   * What came of a release.
   *
   * @param outcome what followed it
   */
  public static MarkOutcome of(ExitOutcome outcome) {
    if (outcome.cause().icing()) {
      return ICED;
    }
    if (outcome.restarted().orElse(false)) {
      return OTHER_RESTART;
    }
    return switch (outcome.next().map(NextTouch::by).orElse(NextTouch.By.NONE)) {
      case OWN -> OWN_NEXT;
      case OPPONENT -> OPPONENT_NEXT;
      case NONE -> STOPPED;
    };
  }
}
