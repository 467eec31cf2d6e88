package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import twostrides.browser.Browser;

/**
 * Players' sheets in a real browser: one printed page each on either paper, whatever the names, and
 * the one that the address names.
 */
class PlayerSheetsPagesTest {

  private static final double INCH = 25.4;

  /** A4 and US Letter, millimetres. */
  private static final List<double[]> PAPERS =
      List.of(new double[] {210, 297}, new double[] {8.5 * INCH, 11 * INCH});

  /** Pixels of CSS in a millimetre. */
  private static final double PIXELS = 96 / INCH;

  /** Margin at the left and the right of a sheet, millimetres: book.css. */
  private static final double MARGIN = 12;

  @TempDir private static Path dir;
  private static Path plain;
  private static Path longest;
  @AutoClose private static Browser browser;

  @BeforeAll
  static void review() throws IOException {
    browser = Browser.open(1280, 900);
    plain = SampleBook.season();
    longest = review(" of the Upper Valley by the Long Lake and its Eleven Islands, the Second");
  }

  /** The whole sample season, its names made longer: nobody's sheet is fuller. */
  private static Path review(String longer) throws IOException {
    Path sheets = Files.createDirectory(dir.resolve("sheets"));
    for (Path p : SampleBook.games()) {
      String name = p.getFileName().toString().replace(".csv", longer + ".csv");
      lengthen(p, sheets.resolve(name), longer);
    }
    return SampleBook.of(dir.resolve("book"), List.of(sheets), "--simulations", "100");
  }

  private static void lengthen(Path from, Path to, String longer) throws IOException {
    CSVFormat read = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (var rows = read.parse(Files.newBufferedReader(from, StandardCharsets.UTF_8));
        CSVPrinter out =
            new CSVPrinter(
                Files.newBufferedWriter(to, StandardCharsets.UTF_8), CSVFormat.DEFAULT)) {
      out.printRecord(rows.getHeaderNames());
      for (CSVRecord r : rows) {
        List<String> cells = new ArrayList<>();
        for (String column : rows.getHeaderNames()) {
          boolean name =
              List.of("game", "home", "away", "team", "player", "other_player").contains(column);
          cells.add(name && !r.get(column).isEmpty() ? r.get(column) + longer : r.get(column));
        }
        out.printRecord(cells);
      }
    }
  }

  private static List<String> pages(Path book) throws IOException {
    try (Stream<Path> files = Files.list(book.resolve("sheets"))) {
      return files.map(f -> "sheets/" + f.getFileName()).sorted().toList();
    }
  }

  private static void open(Path book, String page, String state) {
    browser.driver().get("about:blank");
    browser.driver().get(book.resolve(page).toUri() + state);
  }

  /** The words of each page that comes out of the printer. */
  private static List<String> printed(double[] paper) throws IOException {
    return browser.printed(paper[0], paper[1], false);
  }

  private static List<String> names() {
    return browser.driver().findElements(By.cssSelector(".one h2")).stream()
        .map(WebElement::getText)
        .toList();
  }

  @Test
  void everyPlayerIsOnePrintedPageOnEitherPaper() throws IOException {
    int sheets = 0;
    for (double[] paper : PAPERS) {
      sheets += printedOneByOne(plain, pages(plain).get(0), paper);
      sheets += printedOneByOne(longest, pages(longest).get(0), paper);
    }
    assertTrue(sheets > 70, sheets + " sheets");
  }

  private static int printedOneByOne(Path book, String page, double[] paper) throws IOException {
    open(book, page, "#theme=dark");
    List<String> names = names();
    List<String> printed = printed(paper);
    assertEquals(names.size(), printed.size(), page + " on " + paper[1] + " mm");
    for (int i = 0; i < names.size(); i++) {
      String sheet = printed.get(i);
      assertTrue(sheet.startsWith(names.get(i).substring(0, 12)), sheet);
      assertTrue(sheet.contains("Coach's notes"), sheet);
      assertTrue(sheet.contains("Arriving first is not worth"), sheet);
    }
    return names.size();
  }

  /** Nothing of a sheet is cut off on paper, and there is room to write and to see the map. */
  @Test
  void everythingFitsOnItsPage() throws IOException {
    browser.driver().executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
    List<String> wrong = new ArrayList<>();
    for (double[] paper : PAPERS) {
      browser.size((int) Math.floor((paper[0] - 2 * MARGIN) * PIXELS), 900);
      for (Path book : List.of(plain, longest)) {
        for (String page : pages(book)) {
          open(book, page, "");
          String found =
              browser.ask(
                  """
                  return Array.from(document.querySelectorAll('.one')).flatMap(one => {
                    const name = one.querySelector('h2').textContent.slice(0, 20);
                    const box = e => one.querySelector(e).getBoundingClientRect();
                    const cut = [];
                    if (one.scrollHeight > one.clientHeight + 1) { cut.push('sheet'); }
                    const advice = one.querySelector('.advice');
                    if (advice.scrollHeight > advice.clientHeight + 1) { cut.push('advice'); }
                    if (box('table').bottom > box('.last').top) { cut.push('table'); }
                    const small = Array.from(one.querySelectorAll('*')).filter(e => e.getClientRects().length > 0
                      && Array.from(e.childNodes).some(n => n.nodeType === 3 && n.data.trim())
                      && parseFloat(getComputedStyle(e).fontSize) < 11 * 96 / 72 - 0.01);
                    small.forEach(e => cut.push('small letters: ' + e.textContent));
                    if (box('.fine').bottom > one.getBoundingClientRect().bottom) { cut.push('foot'); }
                    if (box('.notes').bottom > box('.fine').top) { cut.push('foot under the notes'); }
                    if (box('.notes').height < 25 * 96 / 25.4) { cut.push('notes'); }
                    if (box('.last figcaption').bottom > box('.last').bottom + 1) { cut.push('what the marks mean'); }
                    if (box('.last svg').height < 25 * 96 / 25.4) { cut.push('map'); }
                    for (const li of one.querySelectorAll('li')) {
                      if (li.getBoundingClientRect().right > one.getBoundingClientRect().right) { cut.push('clip'); }
                    }
                    return cut.map(c => name + ': ' + c);
                  }).join('; ')
                  """);
          if (!found.isEmpty()) {
            wrong.add(page + " on " + paper[0] + " mm: " + found);
          }
        }
      }
    }
    browser.driver().executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", ""));
    browser.size(1280, 900);
    assertEquals("", String.join("\n", wrong));
  }

  private static List<String> shown() {
    return browser.driver().findElements(By.cssSelector(".one")).stream()
        .filter(WebElement::isDisplayed)
        .map(e -> e.getAttribute("id"))
        .toList();
  }

  @Test
  void theAddressShowsAndPrintsOnePlayer() throws IOException {
    String page = pages(plain).get(0);
    open(plain, page, "");
    List<String> all = shown();
    assertTrue(all.size() > 10, all.toString());
    open(plain, page, "#" + all.get(3));
    assertEquals(List.of(all.get(3)), shown());
    List<String> printed = printed(PAPERS.get(1));
    assertEquals(1, printed.size());
    assertTrue(printed.get(0).startsWith(names().get(3)), printed.get(0));
    choose(1);
    assertEquals(List.of(all.get(0)), shown());
    String address = browser.driver().getCurrentUrl();
    assertTrue(address.endsWith("#" + all.get(0)), address);
    choose(0);
    assertEquals(all, shown());
    open(plain, page, "#player=99999");
    assertEquals(all, shown(), "a player of no sheet here hides nobody");
    open(plain, page, "#theme=dark&" + all.get(5));
    assertEquals(List.of(all.get(5)), shown());
  }

  private static void choose(int option) {
    browser
        .driver()
        .findElements(By.cssSelector(".page-tools label:first-child option"))
        .get(option)
        .click();
  }

  @Test
  void aPlayersPageLeadsToTheSheet() throws IOException {
    try (Stream<Path> files = Files.list(plain.resolve("players"))) {
      Path player = files.sorted().toList().get(12);
      open(plain, "players/" + player.getFileName(), "");
    }
    String name = browser.ask("return document.querySelector('h1').textContent");
    browser.driver().findElement(By.linkText("Sheet for a meeting")).click();
    assertEquals(1, shown().size());
    assertEquals(
        name, browser.ask("return document.querySelector('.one:not([hidden]) h2').textContent"));
  }

  @Test
  void withoutScriptsEverySheetIsShown() throws IOException {
    browser
        .driver()
        .executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", true));
    open(plain, pages(plain).get(0), "#player=3");
    int sheets = browser.driver().findElements(By.cssSelector(".one")).size();
    browser
        .driver()
        .executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", false));
    assertTrue(sheets > 10 && shown().size() == sheets, sheets + " sheets");
  }

  @Test
  void aClipPlaysTheVideoOfItsOwnGame() throws IOException {
    open(plain, pages(plain).get(0), "");
    Path one = Files.writeString(dir.resolve("one.mp4"), "");
    Path other = Files.writeString(dir.resolve("other.mp4"), "");
    browser.driver().findElement(By.cssSelector("input[type=file]")).sendKeys(one + "\n" + other);
    WebElement item = browser.driver().findElement(By.cssSelector(".one li"));
    browser
        .driver()
        .executeScript("arguments[0].click()", item.findElement(By.cssSelector("button.at")));
    String game = item.findElement(By.tagName("i")).getText();
    assertTrue(
        browser.ask("return document.querySelector('.player p').textContent").contains(game),
        "the page asks for the file of " + game);
  }

  @Test
  void noSheetHasAnAccessibilityViolation() throws IOException {
    for (String state : List.of("#theme=light", "#theme=dark", "#player=4&theme=dark")) {
      open(plain, pages(plain).get(0), state);
      assertEquals("", browser.violations(), state);
    }
  }

  @Test
  void sheetsFitAPhoneAndStaySmall() throws IOException {
    long bytes = 0;
    browser.size(360, 740);
    for (String page : pages(plain)) {
      bytes += Files.size(plain.resolve(page));
      open(plain, page, "");
      assertEquals("true", browser.ask("return document.documentElement.scrollWidth <= 360"), page);
    }
    browser.size(1280, 900);
    assertTrue(bytes < 2_000_000, bytes + " bytes of sheets in the sample season");
  }
}
