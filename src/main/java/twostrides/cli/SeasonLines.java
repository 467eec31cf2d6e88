package twostrides.cli;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import twostrides.book.Format;
import twostrides.exits.ManpowerSource;
import twostrides.findings.Reviewer;
import twostrides.findings.SeasonReview;
import twostrides.season.Evidence;
import twostrides.season.Flag;
import twostrides.season.Season;
import twostrides.stats.Count;

/**
 * What the console says of a season that was reviewed.
 *
 * @param season the season
 */
record SeasonLines(Season season) {

  /** Games, exits and face-offs. */
  String counts() {
    return Format.count(Reviewer.games(season), "game")
        + ", "
        + Format.count(season.exitRecords().size(), "exit attempt")
        + ", "
        + Format.count(
            number(season.restartRecords(), SeasonReview::own), "defensive-zone face-off")
        + ".";
  }

  /**
   * How many releases are flagged.
   *
   * @param where where they stand
   */
  String flags(String where) {
    return Format.count(number(season.flagRecords(), Flag::flagged), "release")
        + " flagged, "
        + number(season.flagRecords(), Flag::toLookAt)
        + " to look at without a verdict, of "
        + season.flagRecords().size()
        + " followed by a defensive-zone face-off ("
        + where
        + ").";
  }

  private static <T> int number(List<T> records, Predicate<T> which) {
    return (int) records.stream().filter(which).count();
  }

  /**
   * On how many rows the columns and the penalty rows disagree; empty where no row has both.
   *
   * @param used which of the two was used
   */
  Optional<String> manpower(ManpowerSource used) {
    Count disagree = season.manpowerDisagrees();
    return disagree.trials() == 0
        ? Optional.empty()
        : Optional.of(
            "Manpower: columns and penalty rows disagree on "
                + disagree.successes()
                + " of "
                + Format.count(disagree.trials(), "row")
                + (disagree.successes() == 0
                    ? "."
                    : "; the " + used.word() + " were used (data/manpower.csv)."));
  }

  /** On what the chances rest, the best first; empty without a release. */
  Optional<String> evidence() {
    Map<Evidence, Long> of =
        season.releaseRecords().stream()
            .collect(
                Collectors.groupingBy(
                    a -> a.assessment().gain().evidence(),
                    () -> new EnumMap<>(Evidence.class),
                    Collectors.counting()));
    return of.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Chance of gaining center, pucks sent before the red line: "
                + of.entrySet().stream()
                    .map(e -> e.getValue() + " " + e.getKey().word())
                    .collect(Collectors.joining(", "))
                + ".");
  }
}
