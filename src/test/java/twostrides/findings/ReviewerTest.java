package twostrides.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import twostrides.exits.AtCenter;
import twostrides.exits.LetGo;
import twostrides.exits.WayOut;
import twostrides.game.Strength;
import twostrides.season.Columns;
import twostrides.season.SeasonTables;
import twostrides.stats.Clustered;
import twostrides.stats.Count;

/** Reviews of small seasons that are counted by hand. */
class ReviewerTest {

  private static SeasonReview review(SeasonTables t) {
    return Reviewer.review(t.season());
  }

  private static Object[] exit(
      String game, String team, String opponent, String player, String way, String atCenter) {
    return new Object[] {
      Columns.GAME, game,
      Columns.PERIOD, 1,
      Columns.LINE, 7,
      Columns.TEAM, team,
      Columns.OPPONENT, opponent,
      Columns.PLAYER, player,
      Columns.WAY_OUT, way,
      Columns.AT_CENTER, atCenter,
      Columns.STRENGTH, "even",
      Columns.OWN_ZONE_RESTART, false,
      Columns.RESTART_CAUSE, "none"
    };
  }

  private static Object[] with(Object[] row, Object... more) {
    return Stream.concat(Stream.of(row), Stream.of(more)).toArray();
  }

  private static Object[] release(String player, double x, String cause, String next) {
    return new Object[] {
      Columns.GAME,
      "one",
      Columns.PERIOD,
      2,
      Columns.RELEASE_ELAPSED_S,
      417.5,
      Columns.TEAM,
      "Herons",
      Columns.OPPONENT,
      "Wolves",
      Columns.PLAYER,
      player,
      Columns.KIND,
      "missed_pass",
      Columns.STRENGTH,
      "even",
      Columns.RELEASE_X_M,
      x,
      Columns.RELEASE_Y_M,
      2.0,
      Columns.SHORT_OF_CENTER_M,
      -x - 0.1905,
      "next_touch",
      next,
      Columns.OWN_ZONE_RESTART,
      !cause.equals("none"),
      Columns.RESTART_CAUSE,
      cause,
      Columns.SHEET,
      "one.csv",
      Columns.LINE,
      7
    };
  }

  /** Chips in one game whose endings are all known. */
  private static WayCount chips(Strength strength, Count iced, int penalties, int others) {
    return new WayCount(
        ShownWay.CHIP, strength, new Clustered(iced), penalties, others, iced.trials());
  }

  @Test
  void countsAttemptsAndFaceOffsByCauseWayAndStrength() {
    SeasonTables t =
        new SeasonTables()
            .exit(exit("one", "Herons", "Wolves", "8", "chip", ""))
            .exit(
                with(
                    exit("one", "Herons", "Wolves", "8", "chip", ""),
                    Columns.OWN_ZONE_RESTART,
                    true,
                    Columns.RESTART_CAUSE,
                    "icing_inferred"))
            .exit(
                with(
                    exit("one", "Herons", "Wolves", "8", "chip", ""),
                    Columns.STRENGTH,
                    "shorthanded",
                    Columns.OWN_ZONE_RESTART,
                    true,
                    Columns.RESTART_CAUSE,
                    "other"))
            .exit(
                with(
                    exit("one", "Herons", "Wolves", "8", "chip", ""),
                    Columns.OWN_ZONE_RESTART,
                    true,
                    Columns.RESTART_CAUSE,
                    "penalty"))
            .exit(with(exit("one", "Herons", "Wolves", "8", "chip", ""), Columns.STRENGTH, ""));
    Profile p = review(t).teams().get(0).profile();
    assertEquals(
        List.of(
            chips(Strength.EVEN, new Count(1, 3), 1, 0),
            chips(Strength.SHORTHANDED, new Count(0, 1), 0, 1),
            chips(Strength.UNKNOWN, new Count(0, 1), 0, 0)),
        p.counts());
    assertEquals(5, p.attempts());
    assertEquals(new Count(1, 5), p.iced());
    assertEquals(1, p.penalties());
    assertEquals(1, p.others());
    assertEquals(5, p.total(ShownWay.CHIP).attempts());
    assertEquals(0, p.total(ShownWay.PASS).attempts());
  }

  /** Intervals of teams allow for games; those of players do not. */
  @Test
  void aTeamsRestartsStandGameByGameAPlayersInOne() {
    SeasonTables t =
        new SeasonTables()
            .exit(exit("one", "Herons", "Wolves", "8", "chip", ""))
            .exit(exit("two", "Herons", "Wolves", "8", "pass", "gained"))
            .exit(exit("two", "Herons", "Wolves", "8", "chip", ""))
            .exit(exit("two", "Herons", "Wolves", "8", "chip", ""));
    Count none = new Count(0, 0);
    Profile team = review(t).teams().get(0).profile();
    assertEquals(
        Map.of(
            ShownWay.CHIP, new Clustered(List.of(new Count(0, 1), new Count(0, 2))),
            ShownWay.PASS, new Clustered(List.of(none, new Count(0, 1)))),
        team.counts().stream().collect(Collectors.toMap(WayCount::way, WayCount::byGame)));
    assertEquals(new Clustered(List.of(new Count(0, 1), new Count(0, 3))), team.byGame());
    assertEquals(new Clustered(new Count(0, 4)), review(t).players().get(0).profile().byGame());
  }

  @Test
  void anEndingThatTheSheetDoesNotTellIsAnAttemptButNoTrial() {
    SeasonTables t =
        new SeasonTables()
            .exit(exit("one", "Herons", "Wolves", "8", "chip", ""))
            .exit(
                with(
                    exit("one", "Herons", "Wolves", "8", "chip", ""),
                    Columns.OWN_ZONE_RESTART,
                    "",
                    Columns.RESTART_CAUSE,
                    ""));
    WayCount c = review(t).teams().get(0).profile().counts().get(0);
    assertEquals(2, c.attempts());
    assertEquals(new Count(0, 1), c.iced());
  }

  @Test
  void everyPairOfMarksHasOneShownWay() {
    for (WayOut way : WayOut.values()) {
      boolean marked = way == WayOut.CARRY || way == WayOut.PASS;
      List<Optional<AtCenter>> ends =
          marked
              ? Stream.of(AtCenter.values()).map(Optional::of).toList()
              : List.of(Optional.empty());
      for (Optional<AtCenter> end : ends) {
        String shown = ShownWay.of(way, end).label();
        if (way == WayOut.CARRY) {
          assertTrue(shown.startsWith("carr"), shown);
        } else {
          assertEquals(way == WayOut.KEPT_IN ? "failed clear" : way.label(), shown);
        }
      }
    }
    assertEquals(
        ShownWay.CARRY_OVER_CENTER, ShownWay.of(WayOut.CARRY, Optional.of(AtCenter.GAINED)));
    assertEquals(
        ShownWay.CARRY_RELEASED_SHORT,
        ShownWay.of(WayOut.CARRY, Optional.of(AtCenter.RELEASED_SHORT)));
    assertEquals(ShownWay.CARRY_OTHER, ShownWay.of(WayOut.CARRY, Optional.of(AtCenter.LOST_SHORT)));
    assertEquals(ShownWay.CARRY_OTHER, ShownWay.of(WayOut.CARRY, Optional.empty()));
  }

  @Test
  void ourTeamIsTheOneThatPlaysEveryGame() {
    SeasonTables t =
        new SeasonTables()
            .exit(exit("one", "Wolves", "Herons", "4", "chip", ""))
            .exit(exit("one", "Wolves", "Herons", "4", "chip", ""))
            .exit(exit("two", "Herons", "Otters", "8", "chip", ""));
    SeasonReview r = review(t);
    assertEquals(Optional.of("Herons"), r.ourTeam());
    assertEquals(2, r.games());
    assertEquals(
        List.of("Herons", "Wolves", "Otters"), r.teams().stream().map(TeamReview::team).toList());
    assertEquals(2, r.teams().get(0).games());
    assertEquals(1, r.teams().get(1).games());
    assertEquals(0, r.teams().get(2).profile().attempts());
  }

  @Test
  void inOneGameNoTeamIsOurs() {
    SeasonTables t =
        new SeasonTables()
            .exit(exit("one", "Wolves", "Herons", "4", "chip", ""))
            .exit(exit("one", "Herons", "Wolves", "8", "chip", ""));
    assertEquals(Optional.empty(), review(t).ourTeam());
  }

  @Test
  void releasesBecomeMarksAndLinesOfTheirPlayer() {
    SeasonTables t =
        new SeasonTables()
            .release(release("8", -4, "icing_written", "none"))
            .release(release("8", -5, "other", "none"))
            .release(release("8", -6, "none", "own"))
            .release(release("8", -7, "none", "opponent"))
            .release(release("8", -8, "none", "none"))
            .release(release("", -9, "none", "own"));
    SeasonReview r = review(t);
    assertEquals(1, r.players().size());
    PlayerReview p = r.players().get(0);
    assertEquals(
        List.of(
            MarkOutcome.ICED,
            MarkOutcome.OTHER_RESTART,
            MarkOutcome.OWN_NEXT,
            MarkOutcome.OPPONENT_NEXT,
            MarkOutcome.STOPPED),
        p.profile().marks().stream().map(Mark::outcome).toList());
    assertEquals(new Count(1, 5), p.profile().releases());
    assertEquals(new Count(1, 6), r.teams().get(0).profile().releases());
    assertEquals(782.5, p.releases().get(0).at().when().clockLeft(), 1e-9);
    assertEquals(LetGo.Kind.MISSED_PASS, p.releases().get(0).how().kind());
  }

  @Test
  void playersOfTheSameNameOnTwoTeamsAreTwoPlayersInOrderOfAttempts() {
    SeasonTables t =
        new SeasonTables()
            .exit(exit("one", "Herons", "Wolves", "8 Brandt", "chip", ""))
            .exit(exit("one", "Wolves", "Herons", "8 Brandt", "chip", ""))
            .exit(exit("one", "Wolves", "Herons", "8 Brandt", "pass", "gained"));
    List<PlayerReview> players = review(t).players();
    assertEquals(List.of("Wolves", "Herons"), players.stream().map(PlayerReview::team).toList());
    assertEquals(List.of(1, 2), players.stream().map(PlayerReview::number).toList());
  }

  @Test
  void onlyRestartsThatTheTeamItselfCausedAreListed() {
    SeasonTables t = new SeasonTables().exit(exit("one", "Herons", "Wolves", "8", "chip", ""));
    for (boolean own : new boolean[] {true, false}) {
      t.restart(
          Columns.GAME,
          "one",
          Columns.PERIOD,
          1,
          Columns.RESTART_ELAPSED_S,
          61.0,
          Columns.TEAM,
          "Herons",
          Columns.OWN_LAST,
          own,
          Columns.RESTART_CAUSE,
          "icing_written",
          Columns.SHEET,
          "one.csv",
          Columns.LINE,
          3);
    }
    SeasonReview r = review(t);
    assertEquals(1, r.restarts().size());
    assertEquals(1139, r.restarts().get(0).faceOff().when().clockLeft(), 1e-9);
    assertEquals(1, r.teams().get(0).icings());
  }

  @Test
  void emptyTablesMakeAnEmptyReview() {
    SeasonReview r = review(new SeasonTables());
    assertEquals(0, r.games());
    assertEquals(List.of(), r.teams());
    assertEquals(List.of(), r.players());
    assertEquals(List.of(), r.restarts());
    assertEquals(List.of(), r.flags());
    assertEquals(List.of(), r.icingsByGame());
  }
}
