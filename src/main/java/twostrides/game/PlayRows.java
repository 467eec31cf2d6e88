package twostrides.game;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import twostrides.rink.Place;
import twostrides.rink.Zone;
import twostrides.rulebook.penalty.PenaltyKind;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.SheetRow;

/**
 * Reads one row of a play sheet: a touch or stoppage in the program's frame, or what is doubtful
 * about it.
 */
final class PlayRows {

  private static final Map<String, Boolean> VENUE = venue();

  private static final Sides SKATERS = new Sides(SheetForms.SKATERS_HOME, SheetForms.SKATERS_AWAY);
  private static final Sides NETS = new Sides(SheetForms.NET_HOME, SheetForms.NET_AWAY);
  private static final Sides PLACES = new Sides(SheetForms.HOME_SKATERS, SheetForms.AWAY_SKATERS);
  private static final Sides ON_ICE = new Sides(SheetForms.HOME_ON_ICE, SheetForms.AWAY_ON_ICE);

  private final Frame frame;
  private final TeamWords words;
  private final String sheetName;
  private final String fallbackGame;
  private final List<DoubtfulRow> doubtful;
  private final Collection<Mend> mends;

  /** What row after row says of the game, its teams and players: kept once. */
  private final Map<Object, Object> said = new HashMap<>();

  PlayRows(
      Frame frame,
      TeamWords words,
      String sheetName,
      String fallbackGame,
      List<DoubtfulRow> doubtful,
      Collection<Mend> mends) {
    this.frame = frame;
    this.words = words;
    this.sheetName = sheetName;
    this.fallbackGame = fallbackGame;
    this.doubtful = doubtful;
    this.mends = mends;
  }

  @SuppressWarnings("unchecked")
  private <T> T once(T value) {
    return (T) said.computeIfAbsent(value, v -> v);
  }

  private static Map<String, Boolean> venue() {
    Map<String, Boolean> words = new LinkedHashMap<>();
    words.put("home", true);
    words.put("away", false);
    return words;
  }

  /** The row, or empty when it was set aside. */
  Optional<ReadRow<PlayRow>> read(SheetRow source) {
    RowReader in = RowReader.mending(source, frame);
    Optional<Integer> period = in.period();
    Optional<Double> elapsed = in.elapsed();
    Optional<Action> action = in.requiredWord(SheetForms.ACTION, Action.words());
    boolean needsTeam = action.map(Action::needsTeam).orElse(true);
    Optional<String> team = words.team(in, needsTeam);
    Optional<LocalDate> date = in.date();
    Teams teams = teams(in, team);
    in.differ(
        teams.home(),
        teams.away(),
        source.cell(SheetForms.AWAY).isPresent() ? SheetForms.AWAY : SheetForms.OPPONENT);
    boolean actingIsHome = actingIsHome(in, source, team, teams);
    int p = period.orElse(1);
    boolean endsSaid = in.readHomeAttacks();
    Optional<Place> place = in.place(SheetForms.X, SheetForms.Y, actingIsHome, p);
    Optional<Place> target = in.place(SheetForms.TO_X, SheetForms.TO_Y, actingIsHome, p);
    Optional<Zone> zone = in.zone(SheetForms.ZONE, actingIsHome, p);
    Optional<Zone> toZone = in.zone(SheetForms.TO_ZONE, actingIsHome, p);
    Optional<Outcome> outcome = action.flatMap(a -> outcome(in, source, a));
    Optional<StopReason> stop =
        action.equals(Optional.of(Action.STOPPAGE))
            ? in.requiredWord(SheetForms.STOPPAGE, StopReason.words())
            : Optional.empty();
    Optional<PenaltyKind> penalty =
        action.equals(Optional.of(Action.PENALTY))
            ? in.word(SheetForms.PENALTY, PenaltyKind.words())
            : Optional.empty();
    BySide side = new BySide(source, team, teams.home());
    Manpower manpower =
        new Manpower(
            side.own(SheetForms.SKATERS_FOR, in::skaters, SKATERS),
            side.other(SheetForms.SKATERS_AGAINST, in::skaters, SKATERS),
            side.own(SheetForms.NET_FOR, in::yesOrNo, NETS),
            side.other(SheetForms.NET_AGAINST, in::yesOrNo, NETS));
    Optional<Pressure> pressure = in.word(SheetForms.PRESSURE, Pressure.words());
    SkaterCells listed = new SkaterCells(in, actingIsHome, p);
    List<OnIce> skaters =
        new ArrayList<>(side.own(SheetForms.OWN_SKATERS, c -> listed.places(c, true), PLACES));
    skaters.addAll(side.other(SheetForms.OPPONENT_SKATERS, c -> listed.places(c, false), PLACES));
    List<String> ownOnIce = side.own(SheetForms.ON_ICE, listed::names, ON_ICE);
    List<String> opponentOnIce = side.other(SheetForms.OPPONENT_ON_ICE, listed::names, ON_ICE);
    var video = in.video();
    var minutes = in.penaltyMinutes();
    if (!in.problems().isEmpty()) {
      doubtful.add(new DoubtfulRow(source, in.problems()));
      return Optional.empty();
    }
    PlayRow row =
        new PlayRow(
            p,
            elapsed.orElseThrow(),
            once(team),
            once(in.id(SheetForms.PLAYER)),
            once(in.id(SheetForms.OTHER_PLAYER)),
            action.orElseThrow(),
            outcome,
            place,
            target,
            zone,
            toZone,
            once(manpower),
            stop,
            penalty,
            minutes,
            in.id(SheetForms.SERVED_BY),
            pressure,
            skaters,
            once(List.copyOf(ownOnIce)),
            once(List.copyOf(opponentOnIce)),
            video,
            sheetName,
            source.line(),
            source.second());
    ReadRow.AboutGame about =
        new ReadRow.AboutGame(
            date, teams.home(), teams.away(), in.clockDecimals(), in.placeDecimals(), endsSaid);
    mends.addAll(in.mends());
    String game = in.text(SheetForms.GAME).orElse(fallbackGame);
    return Optional.of(new ReadRow<>(source, once(game), once(about), row));
  }

  private record Teams(Optional<String> home, Optional<String> away) {}

  private Teams teams(RowReader in, Optional<String> team) {
    Optional<String> home = words.name(in, SheetForms.HOME);
    Optional<String> away = words.name(in, SheetForms.AWAY);
    Optional<String> opponent = words.name(in, SheetForms.OPPONENT);
    Optional<Boolean> atHome = in.word(SheetForms.VENUE, VENUE);
    if (atHome.isPresent() && team.isPresent()) {
      return atHome.get()
          ? new Teams(home.or(() -> team), away.or(() -> opponent))
          : new Teams(home.or(() -> opponent), away.or(() -> team));
    }
    return new Teams(home, away);
  }

  /** What a row says of both teams: of the acting one and the other, or of home and away. */
  private record BySide(SheetRow source, Optional<String> team, Optional<String> home) {

    <T> T own(String column, Function<String, T> reading, Sides sides) {
      return read(column, reading, sides, true);
    }

    <T> T other(String column, Function<String, T> reading, Sides sides) {
      return read(column, reading, sides, false);
    }

    private <T> T read(String column, Function<String, T> reading, Sides sides, boolean acting) {
      if (source.cell(column).isPresent() || team.isEmpty() || home.isEmpty()) {
        return reading.apply(column);
      }
      return reading.apply(team.equals(home) == acting ? sides.home() : sides.away());
    }
  }

  /** Two columns that say of home and away what two others say of the acting team and the other. */
  private record Sides(String home, String away) {}

  private boolean actingIsHome(RowReader in, SheetRow source, Optional<String> team, Teams teams) {
    boolean places =
        in.needHome(
            teams.home(),
            SheetForms.X,
            SheetForms.ZONE,
            SheetForms.OWN_SKATERS,
            SheetForms.OPPONENT_SKATERS);
    boolean skaters =
        team.isPresent()
            && Stream.of(SKATERS, NETS, PLACES, ON_ICE)
                .anyMatch(s -> present(source, s.home(), s.away()));
    if (skaters && !places && teams.home().isEmpty()) {
      in.doubt(
          SheetForms.HOME,
          "the home team: skaters are written for home and away",
          "map a home column, or in a play sheet a venue column");
    }
    return team.isPresent() && team.equals(teams.home());
  }

  private static boolean present(SheetRow source, String... columns) {
    return Stream.of(columns).anyMatch(c -> source.cell(c).isPresent());
  }

  private static Optional<Outcome> outcome(RowReader in, SheetRow source, Action action) {
    Map<String, Outcome> words = Outcome.wordsFor(action);
    if (!words.isEmpty()) {
      return in.word(SheetForms.OUTCOME, words);
    }
    source
        .cell(SheetForms.OUTCOME)
        .ifPresent(
            c ->
                in.problems()
                    .add(
                        c.problem(
                            "no outcome: the action " + action.word() + " has none",
                            "empty the cell, or correct the action")));
    return Optional.empty();
  }
}
