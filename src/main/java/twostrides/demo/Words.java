package twostrides.demo;

import java.util.Locale;

/** The words of a play sheet, as docs/sheets.md lists them; a missing word is empty text. */
final class Words {

  /** What was done. */
  enum Action {
    FACEOFF,
    RECOVERY,
    TAKEAWAY,
    TOUCH,
    PASS,
    RELEASE,
    ENTRY,
    SHOT,
    DEFLECTION,
    BLOCK,
    PENALTY,
    STOPPAGE
  }

  /** How it went. */
  enum Outcome {
    COMPLETE,
    MISSED,
    LOST,
    REGAINED,
    CARRIED,
    DUMPED,
    GOAL,
    ON_NET,
    BLOCKED
  }

  /** What stopped play. */
  enum Stoppage {
    ICING,
    OFFSIDE,
    OUT_OF_PLAY,
    GOALKEEPER,
    GOAL,
    PENALTY,
    NET_OFF,
    INJURY,
    PERIOD_END
  }

  private Words() {}

  /** A constant as a sheet writes it: {@code OUT_OF_PLAY} is {@code out_of_play}. */
  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  /** A constant as the review writes it: {@code KEPT_IN} is {@code kept in}. */
  static String spaced(Enum<?> constant) {
    return word(constant).replace('_', ' ');
  }
}
