package twostrides.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import twostrides.book.Format;
import twostrides.checks.Printed;
import twostrides.season.Columns;
import twostrides.season.SeasonTables;

/** Whether a player's line differs from everybody else's, all lines of his table allowed for. */
class AgainstTheOthersTest {

  @RegisterExtension static final Printed FIGURES = new Printed();

  private static final List<String> WAYS =
      List.of("pass", "chip", "long clearance", "missed pass", "kept in", "moved, means unknown");
  private static final List<String> STRENGTHS = List.of("even", "power play");
  private static final int PLAYERS = 18;
  private static final int LAST = 7;

  private final SplittableRandom random = new SplittableRandom(77);

  private static void exit(
      SeasonTables t, String player, String way, String strength, boolean restart) {
    t.exit(
        Columns.GAME, "one",
        Columns.TEAM, "Herons",
        Columns.PLAYER, player,
        Columns.WAY_OUT, way,
        Columns.STRENGTH, strength,
        Columns.OWN_ZONE_RESTART, restart,
        Columns.RESTART_CAUSE, restart ? "icing_written" : "none");
  }

  private static List<String> verdicts(SeasonTables t, String player) {
    Grid grid = new PlayerNumbers(t.season()).of("Herons", player).get(0);
    assertEquals("Against the others", grid.heads().get(LAST).label());
    return grid.lines().stream().map(l -> Format.text(l.values().get(LAST))).toList();
  }

  /** Twelve lines a page and everybody alike: at most one page in twenty says otherwise. */
  @Test
  void whereAllAreAlikeHardlyAnyPageSaysOtherwise() {
    int wrong = 0;
    int pages = 0;
    int lines = 0;
    for (int season = 0; season < 20; season++) {
      SeasonTables t = new SeasonTables();
      for (int p = 0; p < PLAYERS; p++) {
        for (String way : WAYS) {
          for (String strength : STRENGTHS) {
            int n = 10 + random.nextInt(10);
            for (int i = 0; i < n; i++) {
              exit(
                  t, "p" + p, way, strength, random.nextDouble() < 0.02 + 0.04 * WAYS.indexOf(way));
            }
          }
        }
      }
      PlayerNumbers numbers = new PlayerNumbers(t.season());
      for (int p = 0; p < PLAYERS; p++) {
        List<String> verdicts =
            numbers.of("Herons", "p" + p).get(0).lines().stream()
                .map(l -> Format.text(l.values().get(LAST)))
                .toList();
        wrong += verdicts.stream().anyMatch(v -> v.endsWith("often")) ? 1 : 0;
        lines += verdicts.size();
        pages++;
      }
    }
    FIGURES.say(
        "players alike: %d of %d pages of %d lines call a line different",
        wrong, pages, lines / pages);
    assertTrue(wrong <= 0.05 * pages, wrong + " of " + pages);
  }

  @Test
  void aLineThatDiffersIsCalledSoAndFewAreNot() {
    SeasonTables t = new SeasonTables();
    List<String> names = new ArrayList<>(List.of("a", "b", "c", "d"));
    for (String name : names) {
      for (int i = 0; i < 40; i++) {
        exit(t, name, "chip", "even", name.equals("a") ? i < 16 : i < 3);
        exit(t, name, "pass", "even", name.equals("b") ? i < 0 : i < 16);
        exit(t, name, "kept in", "even", i < 4);
      }
    }
    for (int i = 0; i < 9; i++) {
      exit(t, "a", "missed pass", "even", true);
    }
    String unclear = "no clear difference";
    assertEquals(List.of(unclear, "more often", "too few to say", unclear), verdicts(t, "a"));
    assertEquals(List.of("less often", unclear, unclear), verdicts(t, "b"));
  }
}
