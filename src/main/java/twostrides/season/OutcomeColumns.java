package twostrides.season;

import java.util.OptionalDouble;
import twostrides.exits.Against;
import twostrides.exits.ExitOutcome;
import twostrides.exits.NextTouch;

/**
 * Columns of what followed an exit, a release or a face-off.
 *
 * @param windows the windows after which some are named
 */
record OutcomeColumns(Columns.Windows windows) {

  void outcome(TableSchema<ExitOutcome> s) {
    s.optPart(ExitOutcome::next, OutcomeColumns::nextTouch)
        .optFlag("own_zone_restart", "", ExitOutcome::restarted)
        .text(
            "restart_cause",
            Parts.CAUSES,
            "[exits.md](exits.md#how-it-ended)",
            o -> o.cause().label())
        .optNumber("restart_elapsed_s", "s", "when the face-off was", ExitOutcome::restartElapsed)
        .optFlag(
            windows.restartWithin(),
            "whether any own-zone face-off came within the run's window; empty in rows of tag"
                + " sheets",
            ExitOutcome::restartWithinWindow)
        .optNumber(
            "seconds_until_reentry",
            "s",
            "until the opponent had it under control in the zone again",
            o ->
                o.reentry().map(w -> OptionalDouble.of(w.seconds())).orElse(OptionalDouble.empty()))
        .optFlag(
            "relief_cut_short", "whether a stop came first", o -> o.reentry().map(w -> !w.ended()))
        .optPart(ExitOutcome::against, this::against);
  }

  static void nextTouch(TableSchema<NextTouch> s) {
    s.text(
            "next_touch",
            "own, opponent, none",
            "who touched it next before play stopped",
            n -> n.by().word())
        .optNumber(
            "next_touch_x_m",
            "m",
            "where, same frame; of a tag sheet `end_x_m`, when `ended` is opponent or own",
            NextTouch::x)
        .optNumber(
            "seconds_to_next_touch",
            "s",
            "how soon; empty where the reception of a pass has no row of its own",
            NextTouch::seconds);
  }

  void against(TableSchema<Against> s) {
    s.count(
            windows.attempts(),
            "shot attempts of the opponent within the run's window, from the release, or from the"
                + " face-off where one followed in the own zone; empty where a game's sheet writes"
                + " no shots",
            Against::attempts)
        .count(windows.goals(), "goals of the opponent, the same", Against::goals)
        .count(
            windows.attemptsLong(),
            "attempts within the longer window, 10 s more",
            Against::attemptsLong)
        .count(windows.goalsLong(), "goals within it", Against::goalsLong)
        .count(windows.goalsFor(), "own goals within the run's window", Against::goalsFor);
  }
}
