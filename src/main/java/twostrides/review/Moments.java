package twostrides.review;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;
import twostrides.exits.AtCenter;
import twostrides.exits.Columns;
import twostrides.exits.ExitTables;

/**
 * Chooses for each player the moments that worked and those to talk about, by the rules of
 * docs/numbers.md. Where fewer than three fit a rule, fewer are shown.
 */
final class Moments {

  /** Moments of either kind on a sheet: a meeting has no time for more. Assumed. */
  static final int MOST = 3;

  /**
   * Harder ones first: how many things made it hard, then a skater short before heavy pressure
   * before a long shift, then later in the season.
   */
  private static final Comparator<Moment> HARDER_FIRST =
      Comparator.comparingInt((Moment m) -> -m.hardness())
          .thenComparing(m -> m.strength() != ShownStrength.SHORTHANDED)
          .thenComparing(m -> !m.heavyPressure());

  private record Row(String game, String sheet, int line) {}

  private final ToDoubleFunction<String> periodLength;
  private final Map<Row, FlagLine> flags = new HashMap<>();
  private final List<FlagLine> dearestFirst;
  private final Map<String, TableRows> exits = new HashMap<>();
  private final Map<PlayerKey, List<Moment>> worked = new HashMap<>();
  private final Map<PlayerKey, List<Moment>> talk = new HashMap<>();

  Moments(ExitTables tables, List<FlagLine> flags, ToDoubleFunction<String> periodLength) {
    this.periodLength = periodLength;
    dearestFirst = FlagLine.dearestFirst(flags);
    dearestFirst.forEach(f -> this.flags.put(new Row(f.game(), f.sheet(), f.line()), f));
    TableRows.of(tables.exits()).forEach(this::exit);
    TableRows.of(tables.releases()).forEach(this::release);
    worked.values().forEach(Collections::reverse);
    worked.values().forEach(all -> all.sort(HARDER_FIRST));
    talk.values().forEach(Collections::reverse);
    talk.values().forEach(all -> all.sort(worseFirst()));
  }

  /**
   * By kind; flags as on their page, icings by how near the red line they were let go, pucks given
   * away by the attempts that followed. What is level: later in the season first.
   */
  private Comparator<Moment> worseFirst() {
    return Comparator.comparing(Moment::kind)
        .thenComparingDouble(
            m ->
                switch (m.kind()) {
                  case FLAGGED -> dearestFirst.indexOf(m.flag().orElseThrow());
                  case ICED -> m.shortOfCenter().orElseThrow();
                  case GIVEN_AWAY -> -m.attemptsAgainst().orElse(-1);
                  case WORKED, RESTARTED -> 0;
                });
  }

  /** What worked, the hardest first. */
  List<Moment> worked(String team, String player) {
    return first(worked, team, player);
  }

  /** What to talk about, the worst first. */
  List<Moment> talk(String team, String player) {
    return first(talk, team, player);
  }

  private static List<Moment> first(Map<PlayerKey, List<Moment>> of, String team, String player) {
    return of.getOrDefault(new PlayerKey(team, player), List.of()).stream().limit(MOST).toList();
  }

  private void exit(TableRows r) {
    exits.put(exitKey(r), r);
    boolean gained = r.words(Columns.AT_CENTER).equals(AtCenter.GAINED.label());
    boolean restart =
        r.flag(Columns.OWN_ZONE_RESTART).orElse(false)
            || r.flag(Columns.RESTART_WITHIN_20S).orElse(false);
    boolean attempt =
        r.count(Columns.ATTEMPTS_AGAINST_20S).orElse(0) > 0
            || r.count(Columns.GOALS_AGAINST_20S).orElse(0) > 0;
    if (gained && !restart && !attempt) {
      add(worked, r, moment(Moment.Kind.WORKED, r, Optional.of(r), Optional.empty()));
    }
  }

  private void release(TableRows r) {
    Optional<FlagLine> flag =
        Optional.ofNullable(
            flags.get(
                new Row(
                    r.words(Columns.GAME),
                    r.words(Columns.SHEET),
                    r.count(Columns.LINE).orElseThrow())));
    kind(r, flag.isPresent())
        .ifPresent(
            k -> add(talk, r, moment(k, r, Optional.ofNullable(exits.get(exitKey(r))), flag)));
  }

  /** Why a release is one to talk about; empty when it is not. */
  private static Optional<Moment.Kind> kind(TableRows r, boolean flagged) {
    return switch (MarkOutcome.of(r)) {
      case ICED -> Optional.of(flagged ? Moment.Kind.FLAGGED : Moment.Kind.ICED);
      case OTHER_RESTART -> Optional.of(flagged ? Moment.Kind.FLAGGED : Moment.Kind.RESTARTED);
      case OPPONENT_NEXT -> givenAway(r) ? Optional.of(Moment.Kind.GIVEN_AWAY) : Optional.empty();
      case OWN_NEXT, STOPPED -> Optional.empty();
    };
  }

  /** Shorthanded a clearance is what is wanted, and a shot is no way out. */
  private static boolean givenAway(TableRows r) {
    String pressure = r.words(Columns.PRESSURE);
    return (pressure.equals("none") || pressure.equals("light"))
        && !r.words(Columns.STRENGTH).equals(ShownStrength.SHORTHANDED.label())
        && !r.flag(Columns.SHOT).orElse(false);
  }

  private static String exitKey(TableRows r) {
    OptionalInt exit = r.count(Columns.EXIT);
    return exit.isPresent() ? exit.getAsInt() + " " + r.words(Columns.GAME) : "";
  }

  private static void add(Map<PlayerKey, List<Moment>> to, TableRows r, Moment m) {
    r.text(Columns.PLAYER)
        .ifPresent(
            p ->
                to.computeIfAbsent(new PlayerKey(r.words(Columns.TEAM), p), k -> new ArrayList<>())
                    .add(m));
  }

  private Moment moment(
      Moment.Kind kind, TableRows r, Optional<TableRows> exit, Optional<FlagLine> flag) {
    String game = r.words(Columns.GAME);
    OptionalDouble shift =
        exit.isPresent() ? exit.get().number(Columns.SHIFT_S) : OptionalDouble.empty();
    return new Moment(
        kind,
        game,
        r.count(Columns.PERIOD).orElseThrow(),
        periodLength.applyAsDouble(game) - r.number(Columns.RELEASE_ELAPSED_S).orElse(0),
        exit.map(e -> e.words(Columns.WAY_OUT)),
        r.text(Columns.STRENGTH).map(ShownStrength::of).orElse(ShownStrength.UNKNOWN),
        r.text(Columns.PRESSURE),
        shift,
        kind == Moment.Kind.WORKED ? OptionalDouble.empty() : r.number(Columns.SHORT_OF_CENTER_M),
        r.text(Columns.LINE_NOTE),
        r.flag(Columns.OWN_ZONE_RESTART).map(known -> r.words(Columns.RESTART_CAUSE)),
        r.count(Columns.ATTEMPTS_AGAINST_20S),
        r.count(Columns.GOALS_AGAINST_20S),
        flag,
        r.number(Columns.VIDEO_S),
        r.words(Columns.SHEET),
        r.count(Columns.LINE).orElseThrow());
  }
}
