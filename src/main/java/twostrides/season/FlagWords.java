package twostrides.season;

import java.util.Locale;
import twostrides.race.Chance;
import twostrides.rink.Units;

/**
 * What is said of a release that an own-zone restart followed.
 *
 * @param threshold chance of avoiding the restart that a flag needs, 0 to 1
 * @param icing attempts against that an icing costs
 */
record FlagWords(double threshold, double icing) {

  /**
   * Why a release is flagged, or why not.
   *
   * @param metres metres short of center
   * @param said what came out
   */
  String sentence(double metres, Assessment said) {
    FlagVerdict verdict = said.verdict();
    String start =
        String.format(
            Locale.ROOT,
            "%s: let go %.1f m (%.0f ft) before the red line",
            switch (verdict) {
              case FLAGGED -> "Flagged";
              case LOOK -> "No verdict without skaters' places and speeds";
              default -> "Not flagged, " + verdict.words();
            },
            metres,
            Units.FOOT.fromMetres(metres));
    if (verdict != FlagVerdict.FLAGGED && verdict != FlagVerdict.LOOK && !verdict.fellShort()) {
      return start + ".";
    }
    GainEvidence gain = said.gain();
    return start
        + String.format(
            Locale.ROOT,
            ", %.1f s away at %s: ",
            gain.seconds(),
            gain.evidence().fromPlaces() ? "this level of play" : "the pace of these sheets")
        + (gain.evidence() == Evidence.UNKNOWN && gain.chance().isPresent()
            ? "measured releases like it have "
            : "")
        + gain.chance()
            .map(g -> percent(g.p()) + " to gain center (95 % interval " + interval(g) + ")")
            .orElse("the chance to gain center is not known")
        + said.avoid()
            .map(a -> ", " + percent(a.p()) + " to avoid the icing (" + interval(a) + ")")
            .orElse("")
        + measure(said)
        + ". "
        + gain.words()
        + "."
        + (verdict == FlagVerdict.LOOK ? " Clicks on the video at the release settle it." : "");
  }

  /** What a release that fell short was measured by. */
  private String measure(Assessment said) {
    return switch (said.verdict()) {
      case TOO_RISKY -> "; a flag needs " + percent(threshold) + " to avoid it";
      case TOO_DEAR ->
          String.format(
              Locale.ROOT,
              "; trying costs %.2f attempts against, the icing %.2f",
              said.trying().orElseThrow(),
              icing);
      default -> "";
    };
  }

  private static String interval(Chance c) {
    return whole(c.low()) + " to " + percent(c.high());
  }

  /** A chance in whole per cent, never 0 or 100 for what is not. */
  private static String percent(double p) {
    return whole(p) + " %";
  }

  private static String whole(double p) {
    return p < 0.005 ? "under 1" : p > 0.995 ? "over 99" : String.valueOf(Math.round(100 * p));
  }
}
