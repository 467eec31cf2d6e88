package twostrides.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.openqa.selenium.json.Json;

/** The counts inside the compare page, set against the book's data. */
final class EmbeddedCounts {

  private EmbeddedCounts() {}

  /**
   * Compares every side that can be picked, and in each of its games every cell that has cases.
   *
   * @return how many cells agree
   */
  static int check(BookRun book) {
    String data = book.pages.get("compare.html").selectFirst("#compared").data();
    Map<String, Object> json = new Json().toType(data, Json.MAP_TYPE);
    List<List<String>> games =
        book.data.teams().stream().map(t -> CompareFigures.games(book.data, t)).toList();
    assertEquals(games, json.get("teams"));
    Map<?, ?> sides = (Map<?, ?>) json.get("sides");
    assertEquals(Set.of("players", "units", "teams", "stretches"), sides.keySet());
    int cells = 0;
    for (Map.Entry<?, ?> kind : sides.entrySet()) {
      List<?> shown = (List<?>) kind.getValue();
      List<CompareFigures.Side> wanted =
          CompareFigures.sides(book.data, String.valueOf(kind.getKey()));
      assertEquals(wanted.size(), shown.size(), String.valueOf(kind.getKey()));
      for (int i = 0; i < wanted.size(); i++) {
        int team = book.data.teams().indexOf(wanted.get(i).team());
        cells += side(wanted.get(i), team, games.get(team), (List<?>) shown.get(i));
      }
    }
    return cells;
  }

  private static int side(CompareFigures.Side wanted, int team, List<String> games, List<?> shown) {
    assertEquals(wanted.label(), shown.get(0));
    assertEquals(team, ((Number) shown.get(1)).intValue(), wanted.label());
    assertEquals(2 + games.size(), shown.size(), wanted.label());
    int cells = 0;
    for (int g = 0; g < games.size(); g++) {
      List<Integer> want = CompareFigures.cells(wanted, games.get(g));
      List<Integer> there =
          ((List<?>) shown.get(2 + g)).stream().map(n -> ((Number) n).intValue()).toList();
      assertEquals(want, there, wanted.label() + ", " + games.get(g));
      cells += want.size() / 3;
    }
    return cells;
  }
}
