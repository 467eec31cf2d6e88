package twostrides.exits;

import java.util.Locale;
import java.util.Optional;
import twostrides.race.LossRate;

/**
 * What is said of a release that an own-zone restart followed.
 *
 * @param threshold chance of avoiding the restart that a flag needs, 0 to 1
 * @param restart attempts against that a restart costs
 */
record FlagWords(double threshold, double restart) {

  /** On what the chance rests, as words between the seconds and the chance. */
  static String ground(Move m, LossRate losses, Evidence evidence, Optional<Measured> seen) {
    if (evidence == Evidence.MEASURED) {
      return "at this level of play; measured, " + seen.orElseThrow().words();
    }
    String word =
        evidence == Evidence.TAGGED
            ? "under " + m.pressure().orElseThrow().replace("none", "no") + " pressure as tagged"
            : "by comparable touches, the sheet says nothing of pressure";
    return String.format(
        Locale.ROOT,
        "at the pace of these sheets; %s, %.2f losses a second (%d in %.0f s of carrying)%s",
        word,
        losses.perSecond(),
        losses.losses(),
        losses.seconds(),
        seen.map(s -> "; " + s.words()).orElse(""));
  }

  /** Why a release is flagged, or why not, in one sentence. */
  String sentence(
      double metres,
      double seconds,
      String ground,
      double gain,
      double avoid,
      double trying,
      FlagVerdict verdict) {
    return String.format(
        Locale.ROOT,
        "%s: let go %.1f m (%.0f ft) short of the red line, %.1f s away %s:"
            + " %s to gain center, %s to avoid the restart%s.",
        verdict == FlagVerdict.FLAGGED ? "Flagged" : "Not flagged, " + verdict.words(),
        metres,
        metres / 0.3048,
        seconds,
        ground,
        percent(gain),
        percent(avoid),
        measure(avoid, trying, verdict));
  }

  /** What a near miss was measured by. */
  private String measure(double avoid, double trying, FlagVerdict verdict) {
    String needed = percent(threshold);
    return switch (verdict) {
      case TOO_RISKY ->
          (percent(avoid).equals(needed) ? " (rounded up)" : "") + "; a flag needs " + needed;
      case TOO_DEAR ->
          String.format(
              Locale.ROOT,
              "; trying costs %.2f attempts against, the restart %.2f",
              trying,
              restart);
      case FLAGGED, NO_RESTART, OTHER_CAUSE, UNKNOWN_CAUSE -> "";
    };
  }

  /** A chance in whole per cent, never 0 or 100 for what is not. */
  private static String percent(double p) {
    return p < 0.005 ? "under 1 %" : p > 0.995 ? "over 99 %" : Math.round(100 * p) + " %";
  }
}
