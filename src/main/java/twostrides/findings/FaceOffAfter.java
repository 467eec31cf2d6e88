package twostrides.findings;

import java.util.Optional;
import twostrides.exits.ExitOutcome;
import twostrides.exits.RestartCause;

/** What brought the next face-off to the own zone after an exit attempt. */
public enum FaceOffAfter {
  /** Icing, written or inferred. */
  ICING("icings"),
  /** A penalty. */
  PENALTY("after a penalty"),
  /** Another reason, known or not. */
  OTHER("other reasons"),
  /** There was none. */
  NONE("none");

  private final String words;

  FaceOffAfter(String words) {
    this.words = words;
  }

  /** What a row of such face-offs is called. */
  public String words() {
    return words;
  }

  /**
   * What followed.
   *
   * @param outcome of an exit attempt
   * @return empty where the sheet does not tell
   */
  public static Optional<FaceOffAfter> of(ExitOutcome outcome) {
    return outcome.restarted().map(there -> there ? of(outcome.cause()) : NONE);
  }

  /**
   * The group of a cause.
   *
   * @param cause why a face-off is there
   */
  public static FaceOffAfter of(RestartCause cause) {
    return cause.icing() ? ICING : cause == RestartCause.PENALTY ? PENALTY : OTHER;
  }
}
