package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twostrides.browser.Browser;

/** What comes out of the printer: how many sheets, nothing torn apart, nothing almost empty. */
class BookPrintTest {

  private static final double INCH = 2.54;

  /** A4, in inches. */
  private static final double WIDTH = 21.0 / INCH;

  private static final double HEIGHT = 29.7 / INCH;

  /** Letters that a sheet holds at least; fewer would be a heading left behind by its table. */
  private static final int LEAST = 150;

  @TempDir private static Path dir;
  private static Path book;
  private static Browser browser;

  @BeforeAll
  static void review() throws IOException {
    browser = Browser.open(1280, 900);
    Path sheets = Files.createDirectory(dir.resolve("sheets"));
    try (Stream<Path> all = Files.list(Path.of("sample-data"))) {
      for (Path p : all.filter(f -> f.toString().endsWith(".csv")).sorted().limit(4).toList()) {
        Files.copy(p, sheets.resolve(p.getFileName()));
      }
    }
    book = dir.resolve("book");
    StringWriter said = new StringWriter();
    assertEquals(
        0,
        Main.run(
            new PrintWriter(said),
            new PrintWriter(said),
            "review",
            sheets.toString(),
            "--draws",
            "200",
            "--out",
            book.toString()),
        said.toString());
  }

  @AfterAll
  static void close() throws IOException {
    if (browser != null) {
      browser.close();
    }
  }

  /** The words of each sheet of a printed page of the book. */
  private static List<String> printed(String page) throws IOException {
    browser.driver().get(book.resolve(page).toUri() + "#theme=dark");
    Map<String, Object> pdf =
        browser
            .driver()
            .executeCdpCommand(
                "Page.printToPDF",
                Map.of("preferCSSPageSize", true, "paperWidth", WIDTH, "paperHeight", HEIGHT));
    List<String> sheets = new ArrayList<>();
    byte[] file = Base64.getDecoder().decode(String.valueOf(pdf.get("data")));
    try (PDDocument document = Loader.loadPDF(file)) {
      for (int i = 1; i <= document.getNumberOfPages(); i++) {
        PDFTextStripper words = new PDFTextStripper();
        words.setStartPage(i);
        words.setEndPage(i);
        sheets.add(words.getText(document).replaceAll("\\s+", " ").strip());
      }
    }
    return sheets;
  }

  private static String first(String folder) throws IOException {
    try (Stream<Path> files = Files.list(book.resolve(folder))) {
      return folder + "/" + files.map(f -> f.getFileName().toString()).sorted().findFirst().get();
    }
  }

  @Test
  void everyKindOfPageTakesTheSheetsExpected() throws IOException {
    Map<String, Integer> expected = new LinkedHashMap<>();
    expected.put("index.html", 6);
    expected.put("flags.html", 10);
    expected.put("restarts.html", 9);
    expected.put("costs.html", 3);
    expected.put("kill.html", 6);
    expected.put("empty-net.html", 2);
    expected.put("slices.html", 3);
    expected.put("rulings.html", 3);
    expected.put("numbers.html", 7);
    expected.put(first("teams"), 7);
    expected.put(first("players"), 6);
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
        Jsoup.parse(book.resolve("flags.html").toFile(), "UTF-8").select("section.flag");
    assertTrue(cards.size() > 10, cards.size() + " cards");
    for (Element card : cards) {
      String heading = card.select("h3").text();
      String sentence = card.select("> p").text();
      assertTrue(
          sheets.stream().anyMatch(s -> s.contains(heading) && s.contains(sentence)),
          heading + " and its sentence stand on one sheet");
    }
    for (String sheet : printed("restarts.html")) {
      assertTrue(sheet.contains("Short of center") || sheet.contains("Arriving first"), sheet);
    }
  }
}
