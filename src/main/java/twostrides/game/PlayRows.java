package twostrides.game;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import twostrides.rink.Place;
import twostrides.rulebook.penalty.PenaltyKind;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.Problem;
import twostrides.sheet.SheetRow;

/**
 * Reads one row of a play sheet: a touch or stoppage in the program's frame, or what is doubtful
 * about it.
 */
final class PlayRows {

  private static final Map<String, Boolean> VENUE = venue();

  private final Frame frame;
  private final String sheetName;
  private final String fallbackGame;
  private final List<DoubtfulRow> doubtful;

  PlayRows(Frame frame, String sheetName, String fallbackGame, List<DoubtfulRow> doubtful) {
    this.frame = frame;
    this.sheetName = sheetName;
    this.fallbackGame = fallbackGame;
    this.doubtful = doubtful;
  }

  private static Map<String, Boolean> venue() {
    Map<String, Boolean> words = new LinkedHashMap<>();
    words.put("home", true);
    words.put("away", false);
    return words;
  }

  /** The row, or empty when it was set aside. */
  Optional<ReadRow<PlayRow>> read(SheetRow source) {
    RowReader in = new RowReader(source, frame);
    Optional<Integer> period = in.period();
    Optional<Double> elapsed = in.elapsed();
    Optional<Action> action = in.requiredWord(SheetForms.ACTION, Action.words());
    boolean needsTeam = action.map(Action::needsTeam).orElse(true);
    Optional<String> team =
        needsTeam
            ? in.requiredText(SheetForms.TEAM, "the acting team's name")
            : in.text(SheetForms.TEAM);
    Optional<LocalDate> date = in.date();
    Teams teams = teams(in, team);
    in.differ(
        teams.home(),
        teams.away(),
        source.cell(SheetForms.AWAY).isPresent() ? SheetForms.AWAY : SheetForms.OPPONENT);
    boolean actingIsHome = actingIsHome(in, source, team, teams);
    int p = period.orElse(1);
    Optional<Place> place = in.place(SheetForms.X, SheetForms.Y, actingIsHome, p);
    Optional<Place> target = in.place(SheetForms.TO_X, SheetForms.TO_Y, actingIsHome, p);
    Optional<Outcome> outcome = action.flatMap(a -> outcome(in, source, a));
    Optional<StopReason> stop =
        action.equals(Optional.of(Action.STOPPAGE))
            ? in.requiredWord(SheetForms.STOPPAGE, StopReason.words())
            : Optional.empty();
    Optional<PenaltyKind> penalty =
        action.equals(Optional.of(Action.PENALTY))
            ? in.word(SheetForms.PENALTY, PenaltyKind.words())
            : Optional.empty();
    Manpower manpower =
        new Manpower(
            skaters(in, SheetForms.SKATERS_FOR, bySide(team, teams, true)),
            skaters(in, SheetForms.SKATERS_AGAINST, bySide(team, teams, false)),
            in.yesOrNo(SheetForms.NET_FOR),
            in.yesOrNo(SheetForms.NET_AGAINST));
    Optional<Pressure> pressure = in.word(SheetForms.PRESSURE, Pressure.words());
    List<OnIce> skaters =
        new ArrayList<>(in.skaters(SheetForms.OWN_SKATERS, true, actingIsHome, p));
    skaters.addAll(in.skaters(SheetForms.OPPONENT_SKATERS, false, actingIsHome, p));
    List<String> ownOnIce = in.names(SheetForms.ON_ICE);
    List<String> opponentOnIce = in.names(SheetForms.OPPONENT_ON_ICE);
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
            team,
            in.text(SheetForms.PLAYER),
            in.text(SheetForms.OTHER_PLAYER),
            action.orElseThrow(),
            outcome,
            place,
            target,
            manpower,
            stop,
            penalty,
            minutes,
            in.text(SheetForms.SERVED_BY),
            pressure,
            skaters,
            ownOnIce,
            opponentOnIce,
            video,
            sheetName,
            source.line());
    ReadRow.AboutGame about =
        new ReadRow.AboutGame(
            date, teams.home(), teams.away(), in.clockDecimals(), in.placeDecimals());
    return Optional.of(
        new ReadRow<>(source, in.text(SheetForms.GAME).orElse(fallbackGame), about, row));
  }

  private record Teams(Optional<String> home, Optional<String> away) {}

  private static Teams teams(RowReader in, Optional<String> team) {
    Optional<String> home = in.text(SheetForms.HOME);
    Optional<String> away = in.text(SheetForms.AWAY);
    Optional<String> opponent = in.text(SheetForms.OPPONENT);
    Optional<Boolean> atHome = in.word(SheetForms.VENUE, VENUE);
    if (atHome.isPresent() && team.isPresent()) {
      return atHome.get()
          ? new Teams(home.or(() -> team), away.or(() -> opponent))
          : new Teams(home.or(() -> opponent), away.or(() -> team));
    }
    return new Teams(home, away);
  }

  /** A team's skaters from its own column, or else from the column of home or away. */
  private static OptionalInt skaters(RowReader in, String column, Optional<String> side) {
    OptionalInt own = in.skaters(column);
    return own.isEmpty() && side.isPresent() ? in.skaters(side.get()) : own;
  }

  /** Which of the columns of home and away is the acting team's, or the other's. */
  private static Optional<String> bySide(Optional<String> team, Teams teams, boolean acting) {
    if (team.isEmpty() || teams.home().isEmpty()) {
      return Optional.empty();
    }
    boolean home = team.equals(teams.home());
    return Optional.of(home == acting ? SheetForms.SKATERS_HOME : SheetForms.SKATERS_AWAY);
  }

  private boolean actingIsHome(RowReader in, SheetRow source, Optional<String> team, Teams teams) {
    boolean places =
        frame.view() != Frame.View.ACTING_TEAM
            && present(source, SheetForms.X, SheetForms.OWN_SKATERS, SheetForms.OPPONENT_SKATERS);
    boolean skaters =
        team.isPresent() && present(source, SheetForms.SKATERS_HOME, SheetForms.SKATERS_AWAY);
    if ((places || skaters) && teams.home().isEmpty()) {
      in.problems()
          .add(
              new Problem(
                  source.file(),
                  source.line(),
                  SheetForms.HOME,
                  "",
                  places
                      ? "the home team: the sheet map says that places are seen by the home team or fixed to the rink"
                      : "the home team: skaters are written for home and away",
                  "map a home or venue column"));
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
