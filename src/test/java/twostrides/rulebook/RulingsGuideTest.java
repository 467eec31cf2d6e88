package twostrides.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The tables of docs/rulings.md are made from the books themselves. To write them anew: {@code mvn
 * test -Dtest=RulingsGuideTest -Dtwostrides.writeGuides=true}.
 */
class RulingsGuideTest {

  private static final Path GUIDE = Path.of("docs/rulings.md");

  private static Map<String, String> tables() {
    Map<String, String> tables = new LinkedHashMap<>();
    tables.put("list", BookTable.list());
    tables.put("facts", BookTable.facts());
    tables.put("keys", BookTable.keys());
    tables.put("world", comparison("nhl", "iihf", "pwhl", "ncaa", "nfhs"));
    tables.put("america", comparison("usah-adult", "hc-automatic", "hc-hybrid", "carha"));
    tables.put("plain", comparison("hybrid", "touch", "automatic"));
    tables.put(
        "exemption",
        BookTable.history(
            SettingKey.SHORTHANDED_EXEMPT,
            Bookshelf.ids().stream().filter(id -> id.startsWith("usah")).toList(),
            Stream.of(2016, 2017, 2020, 2021, 2024, 2025).map(BookSeason::new).toList()));
    StringBuilder sources = new StringBuilder();
    for (String id :
        List.of("nhl", "iihf", "pwhl", "ncaa", "nfhs", "usah-adult", "hc-automatic", "carha")) {
      sources
          .append("### ")
          .append(id)
          .append("\n\n")
          .append(BookTable.sources(Bookshelf.book(id)))
          .append('\n');
    }
    tables.put("sources", sources.toString().strip() + "\n");
    return tables;
  }

  private static String comparison(String... ids) {
    return BookTable.comparison(Stream.of(ids).map(Bookshelf::book).toList());
  }

  @Test
  void theGuideShowsTheBooksAsTheyAre() throws IOException {
    String guide = Files.readString(GUIDE);
    String made = guide;
    for (Map.Entry<String, String> t : tables().entrySet()) {
      String start = "<!-- table " + t.getKey() + " -->\n";
      int from = made.indexOf(start);
      assertTrue(from >= 0, t.getKey());
      int to = made.indexOf("<!-- end -->", from);
      made = made.substring(0, from + start.length()) + t.getValue() + made.substring(to);
    }
    if (Boolean.getBoolean("twostrides.writeGuides")) {
      Files.writeString(GUIDE, made);
      return;
    }
    assertEquals(made, guide, "docs/rulings.md differs from the books; see this test's comment");
  }
}
