package twostrides.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import twostrides.findings.ComparedGroup.Apart;
import twostrides.findings.ComparedGroup.Cell;
import twostrides.findings.ComparedGroup.Measure;
import twostrides.findings.ComparedGroup.Tally;
import twostrides.season.Columns;
import twostrides.season.SeasonTables;

/** Who can be compared, with what kind the page opens, and how counts of games add up. */
class ComparisonTest {

  private static Comparison of(SeasonTables tables) {
    return Comparison.of(Reviewer.review(tables.season()));
  }

  private static List<String> labels(Comparison c, Comparison.Kind kind) {
    return c.groups().get(kind).stream().map(ComparedGroup::label).toList();
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
    assertEquals(List.of("8, Herons"), labels(c, Comparison.Kind.PLAYERS));
    assertEquals(List.of("1 of 2 players"), c.leftOut());
  }

  @Test
  void thePageOpensWithTheFirstKindThatHasTwoGroups() {
    Comparison players =
        of(chips(chips(new SeasonTables(), "Herons", "8", 2, 6, 1), "Herons", "9", 2, 5, 1));
    assertEquals(Optional.of(Comparison.Kind.PLAYERS), players.first());
    assertEquals(List.of("8, Herons", "9, Herons"), labels(players, Comparison.Kind.PLAYERS));
    Comparison teams =
        of(chips(chips(new SeasonTables(), "Herons", "8", 1, 6, 1), "Otters", "9", 1, 5, 1));
    assertEquals(Optional.of(Comparison.Kind.TEAMS), teams.first());
    // Nobody else's rows: a team alone against itself.
    Comparison alone = of(chips(new SeasonTables(), "Wolves", "8", 5, 1, 1));
    assertEquals(Optional.of(Comparison.Kind.STRETCHES), alone.first());
    assertEquals(List.of("Wolves"), labels(alone, Comparison.Kind.STRETCHES));
    assertEquals(5, alone.groups().get(Comparison.Kind.STRETCHES).get(0).games().size());
    assertEquals(Optional.empty(), of(chips(new SeasonTables(), "Wolves", "8", 1, 1, 1)).first());
    assertEquals(Optional.empty(), of(new SeasonTables()).first());
  }

  @Test
  void namesThatReadAlikeAreToldApart() {
    SeasonTables t = chips(new SeasonTables(), "Herons", "8, Otters", 1, 11, 1);
    Comparison c = of(chips(t, "Otters, Herons", "8", 1, 10, 1));
    assertEquals(
        List.of("8, Otters, Herons", "8, Otters, Herons (2)"), labels(c, Comparison.Kind.PLAYERS));
  }

  private static Tally sum(ComparedGroup group, int from, int to, Predicate<Cell> counted) {
    return group.games().subList(from - 1, to).stream()
        .flatMap(g -> g.entrySet().stream())
        .filter(e -> counted.test(e.getKey()))
        .map(Map.Entry::getValue)
        .reduce(new Tally(0, 0), Tally::plus);
  }

  private static boolean iced(Cell cell) {
    return cell.measure() == Measure.ICED_BY_WAY;
  }

  @Test
  void gamesAndStrengthsAddUpToTheSeason() {
    for (Comparison.Kind kind : List.of(Comparison.Kind.TEAMS, Comparison.Kind.PLAYERS)) {
      ComparedGroup group =
          of(chips(new SeasonTables(), "Herons", "8", 4, 7, 3)).groups().get(kind).get(0);
      assertEquals(4, group.games().size());
      assertEquals(new Tally(12, 28), sum(group, 1, 4, ComparisonTest::iced));
      assertEquals(new Tally(3, 7), sum(group, 1, 1, ComparisonTest::iced));
      assertEquals(new Tally(9, 21), sum(group, 2, 4, ComparisonTest::iced));
      // Even and shorthanded in turn, four and three of seven, then three and four.
      assertEquals(new Tally(2, 4), sum(group, 1, 1, c -> iced(c) && c.strength() == Apart.EVEN));
      assertEquals(
          new Tally(6, 14), sum(group, 1, 4, c -> iced(c) && c.strength() == Apart.SHORTHANDED));
      assertEquals(new Tally(12, 28), sum(group, 1, 4, c -> iced(c) && c.way() == ShownWay.CHIP));
      assertEquals(new Tally(0, 28), sum(group, 1, 4, c -> c.measure() == Measure.KEPT_IN));
      assertEquals(new Tally(0, 0), sum(group, 1, 4, c -> c.measure() == Measure.AGAINST));
      assertEquals(28, group.attempts());
    }
  }

  /** A player's games are those of the team, also those in which the player did nothing. */
  @Test
  void aGameWithoutThePlayerIsAGameWithNothingInIt() {
    SeasonTables t = chips(new SeasonTables(), "Herons", "8", 3, 7, 2);
    Comparison c = of(chips(t, "Herons", "9", 2, 6, 1));
    ComparedGroup nine =
        c.groups().get(Comparison.Kind.PLAYERS).stream()
            .filter(g -> g.label().equals("9, Herons"))
            .findFirst()
            .orElseThrow();
    assertEquals(3, nine.games().size());
    assertEquals(Map.of(), nine.games().get(2));
    assertEquals(List.of("game 1", "game 2", "game 3"), c.teams().get(0).games());
  }
}
