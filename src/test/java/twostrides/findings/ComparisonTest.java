package twostrides.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import twostrides.exits.ExitTables;
import twostrides.season.Columns;
import twostrides.season.SeasonTables;
import twostrides.stats.Clustered;
import twostrides.stats.Count;
import twostrides.stats.Difference;

/** Who can be compared, with what the page opens, and how counts of games add up. */
class ComparisonTest {

  private static Comparison of(SeasonTables tables) {
    ExitTables t = tables.tables();
    return Sides.of(Reviewer.review(t, 20, game -> 1200), t);
  }

  /** So many chips of a player in each of some games, the first ones of each with a restart. */
  private static SeasonTables chips(
      SeasonTables t, String team, String player, int games, int each, int restarts) {
    for (int i = 0; i < games * each; i++) {
      t.exit(
          Columns.GAME,
          "game " + (1 + i / each),
          Columns.PERIOD,
          1,
          Columns.RELEASE_ELAPSED_S,
          30.0,
          Columns.TEAM,
          team,
          Columns.OPPONENT,
          "Wolves",
          Columns.PLAYER,
          player,
          Columns.STRENGTH,
          i % 2 == 0 ? "even" : "shorthanded",
          Columns.WAY_OUT,
          "chip",
          Columns.OWN_ZONE_RESTART,
          i % each < restarts,
          Columns.RESTART_CAUSE,
          i % each < restarts ? "icing_written" : "none",
          Columns.SHEET,
          "one.csv",
          Columns.LINE,
          i + 2);
    }
    return t;
  }

  @Test
  void playersUnderTenAttemptsAreLeftOutAndCounted() {
    Comparison c =
        of(chips(chips(new SeasonTables(), "Herons", "8", 2, 5, 1), "Herons", "9", 3, 3, 1));
    assertEquals(
        List.of("8, Herons"),
        c.sides().get(Comparison.Kind.PLAYERS).stream().map(Side::label).toList());
    assertEquals(List.of("1 of 2 players"), c.leftOut());
  }

  @Test
  void thePageOpensWithTheFirstKindThatHasTwoSides() {
    Comparison players =
        of(chips(chips(new SeasonTables(), "Herons", "8", 2, 6, 1), "Herons", "9", 2, 5, 1));
    assertEquals(Optional.of(Comparison.Kind.PLAYERS), players.first());
    assertEquals("8, Herons", players.opening().orElseThrow().a().words());
    Comparison teams =
        of(chips(chips(new SeasonTables(), "Herons", "8", 1, 6, 1), "Otters", "9", 1, 5, 1));
    assertEquals(Optional.of(Comparison.Kind.TEAMS), teams.first());
    // Nobody else's rows: a team alone against itself, first half and second.
    Comparison alone = of(chips(new SeasonTables(), "Wolves", "8", 5, 1, 1));
    assertEquals(Optional.of(Comparison.Kind.STRETCHES), alone.first());
    assertEquals("Wolves, games 1 to 2", alone.opening().orElseThrow().a().words());
    assertEquals("Wolves, games 3 to 5", alone.opening().orElseThrow().b().words());
    assertEquals(Optional.empty(), of(chips(new SeasonTables(), "Wolves", "8", 1, 1, 1)).first());
    assertEquals(Optional.empty(), of(new SeasonTables()).opening());
  }

  @Test
  void namesThatReadAlikeAreToldApart() {
    SeasonTables t = chips(new SeasonTables(), "Herons", "8, Otters", 1, 11, 1);
    Comparison c = of(chips(t, "Otters, Herons", "8", 1, 10, 1));
    assertEquals(
        List.of("8, Otters, Herons", "8, Otters, Herons (2)"),
        c.sides().get(Comparison.Kind.PLAYERS).stream().map(Side::label).toList());
  }

  @Test
  void stretchesAddUpToTheSeason() {
    Side side =
        of(chips(new SeasonTables(), "Herons", "8", 4, 7, 3))
            .sides()
            .get(Comparison.Kind.TEAMS)
            .get(0);
    CompareRow.Shown all = CompareRow.atAllStrengths(CompareRow.ICINGS);
    Stretch whole = Stretch.whole(side);
    assertEquals(new Count(12, 28), new Count(all.hits(whole), all.cases(whole)));
    Stretch one = new Stretch(side, 1, 1);
    Stretch rest = new Stretch(side, 2, 4);
    assertEquals(new Count(3, 7), new Count(all.hits(one), all.cases(one)));
    assertEquals(new Count(9, 21), new Count(all.hits(rest), all.cases(rest)));
    assertEquals("Herons, game 1", one.words());
    SideBySide sides = new SideBySide(one, rest, "20 s");
    assertEquals(new Count(3, 7), sides.icings().first().total());
    assertEquals(new Count(9, 21), sides.icings().second().total());
    assertEquals(
        List.of(
            "icing, of attempts", "icing, of attempts, even", "icing, of attempts, shorthanded"),
        CompareRow.shown(List.of(CompareRow.ICINGS), one, rest).stream()
            .map(CompareRow.Shown::label)
            .toList());
  }

  @Test
  void aTeamGoesOverItsGamesAndAPlayerDoesNot() {
    Comparison c = of(chips(new SeasonTables(), "Herons", "8", 3, 7, 2));
    Count game = new Count(2, 7);
    CompareRow.Shown all = CompareRow.atAllStrengths(CompareRow.ICINGS);
    assertEquals(
        new Clustered(List.of(game, game, game)),
        all.count(Stretch.whole(c.sides().get(Comparison.Kind.STRETCHES).get(0))));
    assertEquals(
        new Clustered(new Count(6, 21)),
        all.count(Stretch.whole(c.sides().get(Comparison.Kind.PLAYERS).get(0))));
  }

  @Test
  void gamesThatAreNotThereAreRejected() {
    Side side =
        of(chips(new SeasonTables(), "Herons", "8", 3, 4, 1))
            .sides()
            .get(Comparison.Kind.TEAMS)
            .get(0);
    for (int[] games : new int[][] {{0, 2}, {2, 1}, {1, 4}}) {
      assertThrows(IllegalArgumentException.class, () -> new Stretch(side, games[0], games[1]));
    }
  }

  /** Each verdict in words, and none twice: the page tells them apart by their words. */
  @Test
  void everyVerdictHasWordsOfItsOwn() {
    Map<String, Difference.Verdict> words = new HashMap<>();
    for (Difference.Verdict v : Difference.Verdict.values()) {
      assertTrue(words.put(SideBySide.words(v), v) == null, v.name());
    }
  }
}
