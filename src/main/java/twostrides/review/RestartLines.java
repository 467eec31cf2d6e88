package twostrides.review;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;
import twostrides.exits.Columns;
import twostrides.exits.Evidence;
import twostrides.exits.FlagVerdict;
import twostrides.stats.Count;

/** Reads rows of the restarts and releases tables into the lines that pages show. */
final class RestartLines {
  private RestartLines() {}

  /**
   * A row of the restarts table.
   *
   * @param r the row
   * @param way way out of the exit that it followed
   * @param periodLength seconds of a period, by game id
   */
  static RestartLine line(
      TableRows r, Optional<ShownWay> way, ToDoubleFunction<String> periodLength) {
    double length = periodLength.applyAsDouble(r.words(Columns.GAME));
    double at =
        r.number(Columns.RESTART_ELAPSED_S).orElse(r.number(Columns.RELEASE_ELAPSED_S).orElse(0));
    return new RestartLine(
        r.words(Columns.GAME),
        period(r),
        r.number(Columns.RESTART_ELAPSED_S),
        length - at,
        r.number(Columns.RELEASE_ELAPSED_S),
        r.words(Columns.TEAM),
        r.text(Columns.OPPONENT),
        way.map(ShownWay::label),
        r.text(Columns.PLAYER),
        r.text(Columns.STRENGTH),
        r.number(Columns.RELEASE_X_M),
        r.number(Columns.RELEASE_Y_M),
        r.number(Columns.SHORT_OF_CENTER_M),
        r.words(Columns.RESTART_CAUSE),
        r.words(Columns.REASON),
        r.words(Columns.RULING),
        r.words(Columns.CLAUSE),
        r.text(Columns.WON_BY),
        r.count(Columns.ATTEMPTS_AGAINST_20S),
        r.count(Columns.GOALS_AGAINST_20S),
        r.number(Columns.VIDEO_S),
        r.words(Columns.SHEET),
        lineNumber(r));
  }

  /** A row of the restarts table that the book would not call, though the sheet says icing. */
  static AuditLine audit(TableRows r, ToDoubleFunction<String> periodLength) {
    RestartLine line = line(r, Optional.empty(), periodLength);
    return new AuditLine(line, r.words(Columns.AUDIT));
  }

  /** What followed a draw: a row of the restarts table. */
  static FlagLine.After after(TableRows r) {
    return new FlagLine.After(
        r.count(Columns.ATTEMPTS_AGAINST_20S), r.count(Columns.GOALS_AGAINST_20S));
  }

  /** A row of the flags table, and what followed its draw. */
  static FlagLine flag(TableRows r, FlagLine.After after, ToDoubleFunction<String> periodLength) {
    double elapsed = r.number(Columns.RELEASE_ELAPSED_S).orElseThrow();
    return new FlagLine(
        r.words(Columns.GAME),
        period(r),
        periodLength.applyAsDouble(r.words(Columns.GAME)) - elapsed,
        r.words(Columns.TEAM),
        r.text(Columns.PLAYER),
        r.words(Columns.STRENGTH),
        r.number(Columns.RELEASE_X_M).orElseThrow(),
        r.number(Columns.RELEASE_Y_M),
        r.number(Columns.SHORT_OF_CENTER_M).orElseThrow(),
        r.number(Columns.SECONDS_TO_CENTER).orElseThrow(),
        likely(r, Columns.P_GAIN_CENTER, Columns.P_GAIN_LOW, Columns.P_GAIN_HIGH),
        likely(r, Columns.P_AVOID, Columns.P_AVOID_LOW, Columns.P_AVOID_HIGH),
        Evidence.of(r.words(Columns.EVIDENCE)),
        r.words(Columns.KIND).replace('_', ' ') + " from the " + r.words(Columns.ZONE) + " zone",
        new Count(
            r.count(Columns.KIND_ICED).orElseThrow(), r.count(Columns.KIND_RELEASES).orElseThrow()),
        r.words(Columns.SKATERS_SEEN),
        new FlagLine.Puck(
            r.number(Columns.P_LENGTH).orElseThrow(),
            r.number(Columns.PUCK_X_M).orElseThrow(),
            r.number(Columns.PUCK_RIGHT_M).orElseThrow(),
            r.number(Columns.PUCK_MIDDLE_M).orElseThrow(),
            r.number(Columns.PUCK_LEFT_M).orElseThrow()),
        r.number(Columns.COST_ICING).orElseThrow(),
        r.number(Columns.COST_TRYING),
        FlagVerdict.of(r.words(Columns.REASON)),
        r.words(Columns.FLAG_SENTENCE),
        r.words(Columns.RULING),
        r.words(Columns.CLAUSE),
        r.number(Columns.VIDEO_S),
        after,
        r.words(Columns.SHEET),
        lineNumber(r));
  }

  private static Optional<Likely> likely(TableRows r, String p, String low, String high) {
    return r.number(p).isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Likely(
                r.number(p).getAsDouble(),
                r.number(low).orElseThrow(),
                r.number(high).orElseThrow()));
  }

  /** A row of the rulings table. */
  static OtherRuling other(TableRows r, ToDoubleFunction<String> periodLength) {
    double elapsed = r.number(Columns.RELEASE_ELAPSED_S).orElseThrow();
    return new OtherRuling(
        r.words(Columns.BOOK),
        r.words(Columns.GAME),
        period(r),
        periodLength.applyAsDouble(r.words(Columns.GAME)) - elapsed,
        r.words(Columns.TEAM),
        r.text(Columns.PLAYER),
        r.words(Columns.STRENGTH),
        r.words(Columns.PLAYED_RULING),
        r.words(Columns.RULING_REASON),
        r.number(Columns.VIDEO_S),
        r.words(Columns.SHEET),
        lineNumber(r));
  }

  static ReleaseLine release(
      TableRows r, MarkOutcome outcome, ToDoubleFunction<String> periodLength) {
    double elapsed = r.number(Columns.RELEASE_ELAPSED_S).orElseThrow();
    return new ReleaseLine(
        r.words(Columns.GAME),
        period(r),
        elapsed,
        periodLength.applyAsDouble(r.words(Columns.GAME)) - elapsed,
        r.words(Columns.KIND).replace('_', ' '),
        r.words(Columns.STRENGTH),
        r.number(Columns.RELEASE_X_M).orElseThrow(),
        r.number(Columns.RELEASE_Y_M).orElseThrow(),
        r.number(Columns.SHORT_OF_CENTER_M).orElseThrow(),
        r.text(Columns.LINE_NOTE),
        outcome,
        r.words(Columns.RESTART_CAUSE),
        r.number(Columns.VIDEO_S),
        r.words(Columns.SHEET),
        lineNumber(r));
  }

  private static int period(TableRows r) {
    return r.count(Columns.PERIOD).orElseThrow();
  }

  private static int lineNumber(TableRows r) {
    OptionalInt line = r.count(Columns.LINE);
    return line.orElseThrow();
  }
}
