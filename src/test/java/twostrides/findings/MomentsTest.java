package twostrides.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import twostrides.exits.WayOut;
import twostrides.season.Columns;
import twostrides.season.FlagVerdict;
import twostrides.season.SeasonTables;

/** Which moments of a player are shown, by the rules of docs/numbers.md. */
class MomentsTest {

  private static final String HERONS = "Herons";
  private static final String FALK = "14 Falk";
  private static final Reviewer.Who WHO = new Reviewer.Who(HERONS, FALK);

  private final SeasonTables season = new SeasonTables();
  private int line = 1;

  private Object[] row(Object... cells) {
    line++;
    Object[] shared = {
      Columns.GAME,
      "one",
      Columns.EXIT,
      line,
      Columns.PERIOD,
      1,
      Columns.RELEASE_ELAPSED_S,
      (double) line,
      Columns.TEAM,
      HERONS,
      Columns.OPPONENT,
      "Wolves",
      Columns.PLAYER,
      FALK,
      Columns.STRENGTH,
      "even",
      Columns.RELEASE_X_M,
      -4.0,
      Columns.RELEASE_Y_M,
      2.0,
      Columns.SHORT_OF_CENTER_M,
      3.8,
      Columns.KIND,
      "sent",
      Columns.OWN_ZONE_RESTART,
      false,
      Columns.RESTART_CAUSE,
      "none",
      Columns.SHEET,
      "one.csv",
      Columns.LINE,
      line
    };
    return Stream.concat(Stream.of(shared), Stream.of(cells)).toArray();
  }

  /** An exit that gained center; the line it stands in. */
  private int gained(Object... cells) {
    season.exit(
        Stream.concat(
                Stream.of(row(Columns.WAY_OUT, "carry", Columns.AT_CENTER, "gained")),
                Stream.of(cells))
            .toArray());
    return line;
  }

  /** A release short of center; the line it stands in. */
  private int released(Object... cells) {
    season.release(row(cells));
    return line;
  }

  private int iced(Object... cells) {
    Object[] icing = {
      Columns.OWN_ZONE_RESTART, true, Columns.RESTART_CAUSE, "icing_written", "next_touch", "none"
    };
    return released(Stream.concat(Stream.of(icing), Stream.of(cells)).toArray());
  }

  private int flagged(double saved) {
    int at = iced();
    season.flag(row(Columns.LINE, at, "cost_icing", 0.1 + saved));
    return at;
  }

  private List<Moment> worked() {
    return new Moments(season.season()).worked(WHO).stream().limit(3).toList();
  }

  private List<Moment> talk() {
    return new Moments(season.season()).talk(WHO).stream().limit(3).toList();
  }

  @Test
  void aSheetHasOneThatWorkedAndTwoToTalkAbout() {
    gained();
    int late = gained();
    released("next_touch", "opponent", Columns.PRESSURE, "light");
    int first = iced(Columns.SHORT_OF_CENTER_M, 1.0);
    int second = iced(Columns.SHORT_OF_CENTER_M, 2.0);
    PlayerReview player = Reviewer.review(season.season()).players().get(0);
    assertEquals(List.of(late), lines(player.worked()));
    assertEquals(List.of(first, second), lines(player.talk()));
  }

  private static List<Integer> lines(List<Moment> moments) {
    return moments.stream().map(m -> m.at().when().line()).toList();
  }

  @Test
  void theHardestThatWorkedComeFirstThenTheLatest() {
    int easy = gained();
    int shorthanded = gained(Columns.STRENGTH, "shorthanded");
    int heavy = gained(Columns.PRESSURE, "heavy");
    int longShift = gained(Columns.SHIFT_S, 40.0);
    int lateEasy = gained(Columns.PRESSURE, "light", Columns.SHIFT_S, 39.9);
    assertEquals(List.of(shorthanded, heavy, longShift), lines(worked()));
    int both = gained(Columns.PRESSURE, "heavy", Columns.SHIFT_S, 51.0);
    assertEquals(List.of(both, shorthanded, heavy), lines(worked()));
    int later = gained(Columns.STRENGTH, "shorthanded");
    assertEquals(List.of(both, later, shorthanded), lines(worked()));
    assertEquals(5, lateEasy - easy + 1);
  }

  @Test
  void ofEqualOnesTheLatestComesFirst() {
    int early = gained();
    int late = gained();
    assertEquals(List.of(late, early), lines(worked()));
    assertEquals(List.of(), talk());
  }

  @Test
  void nothingThatCostSomethingWorked() {
    gained(Columns.OWN_ZONE_RESTART, true, Columns.RESTART_CAUSE, "other");
    gained("restart_within_20s", true);
    gained("attempts_against_20s", 1);
    gained("attempts_against_20s", 0, "goals_against_20s", 1);
    gained(Columns.AT_CENTER, "lost short");
    gained(Columns.SHIFT_S, 90.0);
    int clean = gained("attempts_against_20s", 0, "restart_within_20s", false);
    int unknown = gained(Columns.OWN_ZONE_RESTART, "");
    assertEquals(List.of(unknown, clean), lines(worked()));
  }

  @Test
  void whatToTalkAboutStandsInTheOrderOfItsKinds() {
    int given = released("next_touch", "opponent", Columns.PRESSURE, "light");
    int other = released(Columns.OWN_ZONE_RESTART, true, Columns.RESTART_CAUSE, "other");
    assertEquals(List.of(other, given), lines(talk()));
    int iced = iced();
    int flagged = flagged(0.2);
    assertEquals(List.of(flagged, iced, other), lines(talk()));
    assertEquals(
        List.of(Moment.Kind.FLAGGED, Moment.Kind.ICED, Moment.Kind.RESTARTED),
        talk().stream().map(Moment::kind).toList());
  }

  @Test
  void flagsStandByWhatTheyCostAndIcingsByHowNearTheyWere() {
    int far = iced(Columns.SHORT_OF_CENTER_M, 12.0);
    int near = iced(Columns.SHORT_OF_CENTER_M, 0.6);
    int little = flagged(0.1);
    assertEquals(List.of(little, near, far), lines(talk()));
    int much = flagged(0.4);
    assertEquals(List.of(much, little, near), lines(talk()));
    season.restart(
        row(
            Columns.LINE,
            900,
            Columns.OWN_LAST,
            true,
            Columns.OWN_ZONE_RESTART,
            true,
            Columns.RESTART_CAUSE,
            "icing_written",
            Columns.RELEASE,
            7,
            "goals_against_20s",
            1,
            "attempts_against_20s",
            1));
    int goal = iced(Columns.RELEASE, 7);
    season.flag(row(Columns.LINE, goal, Columns.RELEASE, 7, "cost_icing", 0.15));
    assertEquals(List.of(goal, much, little), lines(talk()), "as on the page of flags");
  }

  @Test
  void aFlagThatIsNoneIsAnIcing() {
    int at = iced();
    season.flag(
        row(Columns.LINE, at, Columns.FLAGGED, false, Columns.REASON, FlagVerdict.LOOK.words()));
    assertEquals(Moment.Kind.ICED, talk().get(0).kind());
  }

  @Test
  void onlyPucksGivenAwayUnderLittlePressureAreTalkedAbout() {
    String next = "next_touch";
    released(next, "opponent", Columns.PRESSURE, "heavy");
    released(next, "opponent");
    released(next, "own", Columns.PRESSURE, "none");
    released(next, "opponent", Columns.PRESSURE, "none", Columns.STRENGTH, "shorthanded");
    released(next, "opponent", Columns.PRESSURE, "none", Columns.SHOT, true);
    int light = released(next, "opponent", Columns.PRESSURE, "light");
    int none = released(next, "opponent", Columns.PRESSURE, "none");
    int paid = released(next, "opponent", Columns.PRESSURE, "light", "attempts_against_20s", 2);
    released(next, "opponent", Columns.PRESSURE, "light", Columns.PLAYER, "9 Vik");
    assertEquals(List.of(paid, none, light), lines(talk()));
  }

  @Test
  void aReleaseTakesItsWayOutAndShiftFromItsAttempt() {
    season.exit(row(Columns.EXIT, 77, Columns.WAY_OUT, "chip", Columns.SHIFT_S, 55.0));
    iced(Columns.EXIT, 77);
    Moment m = talk().get(0);
    assertEquals(WayOut.CHIP, m.exit().orElseThrow().way());
    assertEquals(55.0, m.shift().orElseThrow());
    assertEquals(1200 - line, m.at().when().clockLeft());
    iced(Columns.EXIT, "", Columns.SHORT_OF_CENTER_M, 0.1);
    assertEquals(Optional.empty(), talk().get(0).exit(), "the play began outside the zone");
  }
}
