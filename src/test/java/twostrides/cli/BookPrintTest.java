package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import twostrides.browser.Browser;

/** What comes out of the printer: how many sheets, nothing torn apart, nothing almost empty. */
class BookPrintTest {

  /** A4, millimetres. */
  private static final double WIDTH = 210;

  private static final double HEIGHT = 297;

  /** Letters that a sheet holds at least; fewer would be a heading left behind by its table. */
  private static final int LEAST = 150;

  private static Path book;
  @AutoClose private static Browser browser;

  @BeforeAll
  static void review() throws IOException {
    browser = Browser.open(1280, 900);
    book = SampleBook.season();
  }

  /** The words of each sheet of a printed page of the book. */
  private static List<String> printed(String page) throws IOException {
    browser.driver().get(book.resolve(page).toUri() + "#theme=dark");
    return browser.printed(WIDTH, HEIGHT, true);
  }

  private static String first(String folder) throws IOException {
    try (Stream<Path> files = Files.list(book.resolve(folder))) {
      return folder + "/" + files.map(f -> f.getFileName().toString()).sorted().findFirst().get();
    }
  }

  @Test
  void everyKindOfPageTakesTheSheetsExpected() throws IOException {
    Map<String, Integer> expected = new LinkedHashMap<>();
    // Twelve games.
    expected.put("index.html", 3);
    expected.put("flags.html", 5);
    expected.put("icings.html", 3);
    expected.put("players.html", 2);
    expected.put("opponents.html", 1);
    expected.put("restarts.html", 22);
    expected.put("costs.html", 1);
    expected.put("kill.html", 2);
    expected.put("empty-net.html", 2);
    expected.put("slices.html", 3);
    expected.put("compare.html", 2);
    expected.put("rulings.html", 3);
    expected.put("numbers.html", 9);
    expected.put(first("teams"), 3);
    expected.put(first("players"), 3);
    List<String> wrong = new ArrayList<>();
    for (Map.Entry<String, Integer> e : expected.entrySet()) {
      List<String> sheets = printed(e.getKey());
      // Other fonts than those of the test machine may take a sheet more or less.
      if (Math.abs(sheets.size() - e.getValue()) > 1) {
        wrong.add(e.getKey() + ": " + sheets.size() + " sheets, expected " + e.getValue());
      }
      for (int i = 0; i < sheets.size(); i++) {
        if (sheets.get(i).length() < LEAST) {
          wrong.add(e.getKey() + ", sheet " + (i + 1) + " holds only: " + sheets.get(i));
        }
      }
    }
    assertEquals("", String.join("\n", wrong));
  }

  @Test
  void aFlagIsNotTornApartAndALongTableKeepsItsHeads() throws IOException {
    List<String> sheets = printed("flags.html");
    List<Element> cards =
        Jsoup.parse(book.resolve("flags.html").toFile(), "UTF-8")
            .select("details.flag:not(.look):not(.near)");
    assertTrue(cards.size() >= 1, cards.size() + " cards");
    for (Element card : cards) {
      String heading = card.select("summary h3").text();
      String sentence = card.select("summary p").text();
      assertTrue(
          sheets.stream().anyMatch(s -> s.contains(heading) && s.contains(sentence)),
          heading + " and its sentence stand on one sheet");
    }
    for (String sheet : printed("restarts.html")) {
      assertTrue(sheet.contains("Before the red line") || sheet.contains("Arriving first"), sheet);
    }
  }
}
