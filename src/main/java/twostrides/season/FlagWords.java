package twostrides.season;

import java.util.Locale;
import java.util.Optional;
import twostrides.exits.PositionsSeen;
import twostrides.exits.Release;
import twostrides.game.Pressure;
import twostrides.race.Chance;
import twostrides.race.LossRate;
import twostrides.race.SheetChance;
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
   * @param r the release
   * @param said what came out
   */
  String sentence(Release r, Assessment said) {
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
            r.shortOfCenter(),
            Units.FOOT.fromMetres(r.shortOfCenter()));
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
        + ground(r, gain)
        + "."
        + (verdict == FlagVerdict.LOOK ? " Clicks on the video at the release settle it." : "");
  }

  /** On what a chance rests. */
  private static String ground(Release r, GainEvidence gain) {
    Optional<String> seen = gain.seen().map(PositionsSeen::words);
    String few = seen.map(s -> "; " + s).orElse("");
    return switch (gain.evidence()) {
      case MEASURED -> "Measured: " + seen.orElseThrow();
      case CLICKED -> "Clicked on the video: " + seen.orElseThrow();
      case PLACES_ONLY -> "Places without speeds, a lower grade: " + seen.orElseThrow();
      case TAGGED ->
          tagged(r.at().state().pressure().orElseThrow(), gain.losses().orElseThrow()) + few;
      case UNKNOWN -> unknown(gain.chance().isPresent()) + few;
    };
  }

  private static String tagged(Pressure pressure, LossRate losses) {
    return String.format(
        Locale.ROOT,
        "By the tag alone, a lower grade: %s pressure, %.2f losses a second (%d in %.0f s of"
            + " carrying), and who lets go is pressed more than who carries",
        pressure == Pressure.NONE ? "no" : pressure.word(),
        losses.perSecond(),
        losses.losses(),
        losses.seconds());
  }

  private static String unknown(boolean guessed) {
    return guessed
        ? "Like it means as short of center, carried as far, as far off the middle, a pass or not:"
            + " good for the order of a list, not for a verdict"
        : String.format(
            Locale.ROOT,
            "Farther than %.0f m from center nothing in the sheet tells",
            SheetChance.FARTHEST);
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
