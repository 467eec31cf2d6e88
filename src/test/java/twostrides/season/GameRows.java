package twostrides.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import twostrides.exits.Against;
import twostrides.exits.AtCenter;
import twostrides.exits.BookRuling;
import twostrides.exits.Carries;
import twostrides.exits.Exit;
import twostrides.exits.ExitOutcome;
import twostrides.exits.GameRecords;
import twostrides.exits.GameState;
import twostrides.exits.Kill;
import twostrides.exits.LetGo;
import twostrides.exits.NextTouch;
import twostrides.exits.Onward;
import twostrides.exits.Release;
import twostrides.exits.Restart;
import twostrides.exits.RestartCause;
import twostrides.exits.Settings;
import twostrides.exits.Situation;
import twostrides.exits.WayOut;
import twostrides.exits.When;
import twostrides.exits.Where;
import twostrides.game.Fixture;
import twostrides.game.NetEmpty;
import twostrides.game.Pressure;
import twostrides.game.Strength;
import twostrides.race.PuckSpread;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.rulebook.FaceOff;
import twostrides.rulebook.Grade;
import twostrides.rulebook.Reason;
import twostrides.rulebook.Ruling;
import twostrides.stats.CensoredTime;

/** The records of one game out of rows that a test writes. */
final class GameRows {

  private static final Columns.Windows WINDOWS =
      new Columns.Windows(Settings.DEFAULT.window(), Settings.DEFAULT.longWindow());

  private final Fixture game;
  private final List<Made<Exit>> exits = new ArrayList<>();
  private final List<Made<Release>> releases = new ArrayList<>();

  /** A record and its row. */
  private record Made<R>(Cells row, R as) {}

  /**
   * A game.
   *
   * @param id its id
   * @param all all of its rows: who is at home is in any of them
   */
  GameRows(String id, List<Cells> all) {
    Optional<String> home =
        all.stream()
            .filter(r -> r.has(Columns.VENUE))
            .findFirst()
            .map(
                r ->
                    r.needed(
                        r.needed(Columns.VENUE).equals("home") ? Columns.TEAM : Columns.OPPONENT));
    game = new Fixture(id, Optional.empty(), home, Rink.NORTH_AMERICAN, 0.1, 1200);
  }

  void exit(Cells c) {
    Exit exit =
        new Exit(
            c.count(Columns.EXIT).orElse(exits.size() + 1),
            c.number(Columns.ELAPSED_S).orElse(elapsed(c)),
            at(c),
            c.text(Columns.PLAYER),
            c.one(Columns.WAY_OUT, WayOut.class, WayOut::label).orElseThrow(),
            c.one(Columns.AT_CENTER, AtCenter.class, AtCenter::label),
            outcome(c),
            c.number(Columns.SHIFT_S));
    exits.add(new Made<>(c, exit));
  }

  /** Adds a release to the game. */
  Release release(Cells c) {
    Release release = releaseAside(c);
    releases.add(new Made<>(c, release));
    return release;
  }

  /** A release that is not among those of the game. */
  Release releaseAside(Cells c) {
    return new Release(
        c.count(Columns.RELEASE).orElse(releases.size() + 1),
        of(exits, Columns.EXIT, c),
        at(c),
        new LetGo(
            c.one(Columns.KIND, LetGo.Kind.class, LetGo.Kind::word).orElse(LetGo.Kind.SENT),
            c.flag(Columns.SHOT).map(shot -> shot ? taken(c) : LetGo.Shot.NONE),
            c.number("carried_m")),
        outcome(c),
        new Release.Rulings(ruling(c), c.flag("may_be_icing").orElse(true), List.of()),
        Optional.empty(),
        c.has("puck_x_m") ? Optional.of(puck(c)) : Optional.empty());
  }

  private static PuckSpread.Farthest puck(Cells c) {
    return new PuckSpread.Farthest(
        new PuckSpread.Row(
            c.number("puck_x_m").orElseThrow(),
            c.number("puck_right_m").orElseThrow(),
            c.number("puck_middle_m").orElseThrow(),
            c.number("puck_left_m").orElseThrow()),
        400,
        c.number("p_length").orElseThrow());
  }

  private static LetGo.Shot taken(Cells c) {
    return c.flag(Columns.SCORED).orElse(false) ? LetGo.Shot.SCORED : LetGo.Shot.TAKEN;
  }

  /** The record whose number a row gives. */
  private static <R> Optional<R> of(List<Made<R>> made, String number, Cells c) {
    return made.stream().filter(m -> m.row().same(number, c)).map(Made::as).findFirst();
  }

  Restart restart(Cells c) {
    Optional<Boolean> own = c.flag(Columns.OWN_LAST);
    return new Restart(
        new Restart.FaceOff(
            when(c, c.number(Columns.RESTART_ELAPSED_S).orElse(elapsed(c))),
            c.number(Columns.RESTART_ELAPSED_S),
            cause(c),
            c.text(Columns.REASON).orElse(""),
            c.text(Columns.WON_BY).map("own"::equals),
            c.one(Columns.FACEOFF_STRENGTH, Strength.class, Strength::label),
            against(c),
            new Restart.ShiftTimes(c.number(Columns.SHIFT_S), c.number(Columns.STAY_S))),
        at(c),
        own,
        own.filter(o -> o)
            .map(
                o ->
                    new Restart.Behind(
                        of(releases, Columns.RELEASE, c),
                        of(exits, Columns.EXIT, c),
                        ruling(c),
                        c.number("seconds_to_next_touch"))));
  }

  /** A kill; its exits are those with its number and team. */
  Kill kill(Cells c) {
    int number = c.count("kill").orElseThrow();
    String team = c.needed(Columns.TEAM);
    List<Kill.Event> events = new ArrayList<>();
    int goals = c.count(Columns.GOALS_AGAINST).orElse(0);
    for (int i = 0; i < c.count("attempts_against").orElse(0); i++) {
      events.add(
          new Kill.Event(
              i < goals ? Kill.What.GOAL_AGAINST : Kill.What.ATTEMPT_AGAINST,
              0,
              OptionalDouble.empty()));
    }
    double from = c.number(Columns.ELAPSED_S).orElseThrow();
    double seconds = c.number(Columns.SECONDS).orElseThrow();
    return new Kill(
        number,
        team,
        c.needed(Columns.OPPONENT),
        when(c, from),
        new Kill.End(c.count(Columns.PERIOD).orElse(1), from + seconds, seconds),
        exits.stream()
            .map(Made::as)
            .filter(e -> e.at().team().equals(team))
            .filter(e -> e.at().state().kill().orElse(0) == number)
            .toList(),
        events,
        true);
  }

  GameRecords records(List<Restart> restarts, List<Kill> kills) {
    return new GameRecords(
        game,
        exits.stream().map(Made::as).toList(),
        releases.stream().map(Made::as).toList(),
        restarts,
        kills,
        List.of(),
        0,
        new Carries(List.of()));
  }

  private static double elapsed(Cells c) {
    return c.number(Columns.RELEASE_ELAPSED_S).orElse(0);
  }

  private When when(Cells c, double elapsed) {
    return new When(
        game,
        c.count(Columns.PERIOD).orElse(1),
        elapsed,
        c.number("video_s"),
        c.text(Columns.SHEET).orElse("one.csv"),
        c.count(Columns.LINE).orElse(0));
  }

  private Situation at(Cells c) {
    return new Situation(
        when(c, elapsed(c)),
        c.needed(Columns.TEAM),
        c.text(Columns.OPPONENT),
        c.text(Columns.PLAYER),
        new Where(
            c.has(Columns.RELEASE_X_M)
                ? Optional.of(
                    new Place(
                        c.number(Columns.RELEASE_X_M).orElseThrow(),
                        c.number(Columns.RELEASE_Y_M).orElse(0)))
                : Optional.empty(),
            c.number(Columns.SHORT_OF_CENTER_M),
            c.text("line_note")),
        Onward.UNKNOWN,
        new GameState(
            c.one(Columns.STRENGTH, Strength.class, Strength::label).orElse(Strength.UNKNOWN),
            c.one(Columns.NET_EMPTY, NetEmpty.class, NetEmpty::word),
            c.one(Columns.PRESSURE, Pressure.class, Pressure::word),
            c.count(Columns.GOALS_AHEAD),
            c.text(Columns.ON_ICE).stream().flatMap(s -> Stream.of(s.split("; ", -1))).toList(),
            c.number(Columns.SINCE_SHORTHANDED_S),
            c.count("kill")));
  }

  private static RestartCause cause(Cells c) {
    return c.one(Columns.RESTART_CAUSE, RestartCause.class, RestartCause::label)
        .orElse(RestartCause.NONE);
  }

  private static ExitOutcome outcome(Cells c) {
    return new ExitOutcome(
        c.one("next_touch", NextTouch.By.class, NextTouch.By::word)
            .map(
                by ->
                    new NextTouch(
                        by, c.number("next_touch_x_m"), c.number("seconds_to_next_touch"))),
        c.flag(Columns.OWN_ZONE_RESTART),
        cause(c),
        c.number(Columns.RESTART_ELAPSED_S),
        c.flag(WINDOWS.restartWithin()),
        c.has(Columns.SECONDS_UNTIL_REENTRY)
            ? Optional.of(
                new CensoredTime(
                    c.number(Columns.SECONDS_UNTIL_REENTRY).orElseThrow(),
                    !c.flag(Columns.RELIEF_CUT_SHORT).orElse(false)))
            : Optional.empty(),
        against(c));
  }

  /** What followed, where the row says how many attempts; what else it does not say is 0. */
  private static Optional<Against> against(Cells c) {
    return c.has(WINDOWS.attempts())
        ? Optional.of(
            new Against(
                c.count(WINDOWS.attempts()).orElseThrow(),
                c.count(WINDOWS.goals()).orElse(0),
                c.count(WINDOWS.attemptsLong()).orElse(0),
                c.count(WINDOWS.goalsLong()).orElse(0),
                c.count(WINDOWS.goalsFor()).orElse(0)))
        : Optional.empty();
  }

  private static BookRuling ruling(Cells c) {
    Optional<String> word = c.text(Columns.RULING);
    if (word.filter(w -> !w.equals("icing")).isPresent()) {
      throw new IllegalArgumentException("only an icing can be written here, no " + word.get());
    }
    return new BookRuling(
        word.map(
            w ->
                new Ruling.Icing(
                    new Reason("", "", "", "", Grade.COMMON),
                    new FaceOff(
                        FaceOff.Place.ICING_TEAM_END,
                        FaceOff.Spot.NO_RULE,
                        FaceOff.Change.BARRED,
                        FaceOff.TimeOut.ALLOWED,
                        List.of()))),
        c.text("audit"));
  }
}
