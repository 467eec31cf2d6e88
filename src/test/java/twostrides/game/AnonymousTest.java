package twostrides.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import tech.tablesaw.api.Table;
import twostrides.exits.ExitTables;
import twostrides.season.Columns;

/** Names leave every table, and the counts stay with the same player. */
class AnonymousTest {

  private static final List<String> NAMES =
      List.of("8 Sole Brandt", "8 Ida Falk", "#17 Noor Vance", "Ada Lowe", "Bea Marsh", "123 Long");

  private static final ExitTables NAMED =
      SeasonTables.drawn(7, 4, "Herons", List.of("Wolves", "Otters"), NAMES, 300).tables();

  @Test
  void noNameIsLeftInAnyTable() {
    ExitTables t = Anonymous.of(NAMED);
    for (Table table : List.of(t.exits(), t.releases(), t.restarts(), t.players())) {
      String all = table.printAll();
      for (String name : NAMES) {
        for (String word : name.split(" ", -1)) {
          if (word.chars().anyMatch(Character::isLetter)) {
            assertFalse(all.contains(word), word + " in " + table.name());
          }
        }
      }
    }
  }

  @Test
  void numbersStayAndTwoPlayersNeverShareACode() {
    Set<String> codes = new TreeSet<>();
    Table exits = Anonymous.of(NAMED).exits();
    Table herons = exits.where(exits.stringColumn(Columns.TEAM).isEqualTo("Herons"));
    herons.stringColumn(Columns.PLAYER).forEach(codes::add);
    assertEquals(
        new TreeSet<>(Set.of("No. 8", "No. 8b", "No. 17", "player 1", "player 2", "player 3")),
        codes);
  }

  @Test
  void aPlayerKeepsTheirOwnCountsUnderTheCode() {
    SeasonReview named = Reviewer.review(NAMED, 20, g -> 1200);
    SeasonReview hidden = Reviewer.review(Anonymous.of(NAMED), 20, g -> 1200);
    for (TeamReview team : named.teams()) {
      assertEquals(
          named.playersOf(team.team()).stream().map(p -> p.profile().attempts()).toList(),
          hidden.playersOf(team.team()).stream().map(p -> p.profile().attempts()).toList());
    }
  }

  @Test
  void theNamedTablesAreNotChanged() {
    Anonymous.of(NAMED);
    assertTrue(NAMED.exits().printAll().contains("Sole Brandt"));
  }
}
