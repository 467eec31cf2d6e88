package twostrides.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import twostrides.book.BookNote;
import twostrides.book.BookOptions;
import twostrides.book.Imprint;
import twostrides.book.ReviewBook;
import twostrides.book.Videos;
import twostrides.browser.Browser;
import twostrides.findings.SideBySide.Stretch;
import twostrides.season.Columns;
import twostrides.season.SeasonTables;
import twostrides.stats.Count;

/**
 * The compare page in a real browser: what its script shows of any two sides is what the program's
 * own counts and differences say; the address, the keyboard and hostile names.
 */
class ComparePageTest {

  private static final int GAMES = 9;

  private static final String MARKUP = "<script>alert(1)</script>\"><img src=x onerror=alert(2)>";

  private static final String TURNED = "\u05d3\u05e0\u05d9 \u202eabc";

  @TempDir static Path dir;

  private static Comparison comparison;
  @AutoClose private static Browser browser;

  /**
   * Players who always, never and seldom see a restart, with nine, ten, a hundred cases and more,
   * and two who never leave the zone in the same way; on the ice as three units.
   */
  private static SeasonTables season() {
    SeasonTables t = new SeasonTables();
    Random dice = new Random(4);
    List<String> players =
        List.of(
            "8 Brandt", "9 Vance", MARKUP, TURNED, "11 Always", "12 Never", "13 Ten", "14 Nine");
    int[] cases = {260, 190, 120, 60, 40, 40, 10, 9};
    for (int p = 0; p < players.size(); p++) {
      double often = p == 4 ? 1 : p == 5 ? 0 : 0.05 + 0.08 * p;
      for (int i = 0; i < cases[p]; i++) {
        String game = "game " + (1 + i % GAMES);
        String team = i % 5 == 4 ? "Wolves" : "Herons";
        String strength = List.of("even", "even", "shorthanded", "power play", "").get(i % 11 % 5);
        boolean restart = dice.nextDouble() < often;
        Object[] shared = {
          Columns.GAME,
          game,
          Columns.PERIOD,
          1 + i % 3,
          Columns.RELEASE_ELAPSED_S,
          i * 3.0,
          Columns.TEAM,
          team,
          Columns.OPPONENT,
          team.equals("Herons") ? "Wolves" : "Herons",
          Columns.PLAYER,
          players.get(p),
          Columns.STRENGTH,
          strength,
          Columns.ON_ICE,
          p % 3 == 2 ? "" : "unit " + p % 3,
          Columns.RELEASE_X_M,
          -4.0,
          Columns.RELEASE_Y_M,
          2.0,
          Columns.RESTART_CAUSE,
          restart ? "icing_written" : "none",
          Columns.SHEET,
          "one.csv",
          Columns.LINE,
          i + 2
        };
        List<String> way =
            List.of(
                    List.of("carry", "gained"),
                    List.of("carry", "released short"),
                    List.of("pass", "released short"),
                    List.of("pass", "lost short"),
                    List.of("chip", ""),
                    List.of("kept in", ""),
                    List.of("long clearance", ""))
                .get(dice.nextInt(7));
        t.exit(
            with(
                shared,
                Columns.WAY_OUT,
                way.get(0),
                Columns.AT_CENTER,
                way.get(1),
                Columns.OWN_ZONE_RESTART,
                dice.nextInt(12) == 0 ? "" : (Object) restart,
                "attempts_against_20s",
                dice.nextInt(9) == 0 ? "" : (Object) dice.nextInt(4)));
        if (!way.get(0).equals("kept in") && !way.get(1).equals("gained")) {
          t.release(with(shared, Columns.KIND, "sent", Columns.SHORT_OF_CENTER_M, 3.81));
        }
      }
    }
    return t;
  }

  private static Object[] with(Object[] shared, Object... more) {
    Object[] all = Arrays.copyOf(shared, shared.length + more.length);
    System.arraycopy(more, 0, all, shared.length, more.length);
    return all;
  }

  @BeforeAll
  static void write() throws IOException {
    browser = Browser.open(1280, 900);
    SeasonReview review = Reviewer.review(season().season());
    comparison = Comparison.of(review);
    ReviewBook.write(
        Files.createDirectories(dir.resolve("book")),
        review,
        new NumberSettings(20, 1, 0),
        new Imprint(
            "0.0",
            new BookNote("hybrid", "", List.of(), List.of()),
            "",
            new BookOptions(Videos.named("{game}.mp4"), false, false)),
        List.of(),
        (n, all) -> {});
  }

  private static void open(String state) {
    browser.driver().get("about:blank");
    browser.driver().get(dir.resolve("book/compare.html").toUri() + state);
  }

  private static String state(Map<String, String> values) {
    StringBuilder state = new StringBuilder();
    values.forEach(
        (k, v) ->
            state
                .append(state.isEmpty() ? '#' : '&')
                .append(k)
                .append('=')
                .append(URLEncoder.encode(v, StandardCharsets.UTF_8)));
    return state.toString();
  }

  /** The first two players: with them the page opens. */
  private static SideBySide opening() {
    List<ComparedGroup> players = comparison.groups().get(Comparison.Kind.PLAYERS);
    return new SideBySide(
        Comparison.Kind.PLAYERS, Stretch.whole(players.get(0)), Stretch.whole(players.get(1)));
  }

  /** Sentence and cells of the page. */
  private static List<String> shown(Document page) {
    List<String> shown = new ArrayList<>();
    for (String key :
        List.of(
            "a",
            "a-counts",
            "a-share",
            "b",
            "b-counts",
            "b-share",
            "verdict",
            "told",
            "differing")) {
      shown.add(page.selectFirst("[data-say=" + key + "]").wholeText());
    }
    for (Element cell : page.select("table[data-own] tbody tr > *")) {
      shown.add(cell.wholeText());
    }
    return shown;
  }

  private static Document page() {
    return Jsoup.parse(browser.ask("return document.documentElement.outerHTML"));
  }

  @Test
  void thePageOpensWithTwoPlayers() {
    assertEquals("8 Brandt, Herons", opening().a().words());
    assertEquals("9 Vance, Herons", opening().b().words());
    open("");
    assertEquals(opening().said(), shown(page()));
    assertTrue(browser.driver().getCurrentUrl().endsWith("compare.html"), "no state by itself");
  }

  /** Names of rows, numbers and words are told apart as in the tables of other pages. */
  @Test
  void cellsAreSetAsWordsAsNumbersAndAsNamesOfRows() {
    open("");
    for (Element tr : page().select("table[data-own] tbody tr")) {
      List<String> heads =
          tr.closest("table").select("thead th").stream().map(Element::className).toList();
      assertEquals("row", tr.child(0).attr("scope"));
      assertEquals("th", tr.child(0).tagName());
      for (int i = 1; i < tr.childrenSize(); i++) {
        assertEquals("td", tr.child(i).tagName());
        assertEquals(heads.get(i).equals("n") ? "" : "t", tr.child(i).className(), tr.text());
      }
      assertEquals(tr.childrenSize(), heads.size());
    }
  }

  /** Without its script the page has the tables' heads and says what is missing. */
  @Test
  void withoutItsScriptThePageSaysWhyItIsEmpty() throws IOException {
    Document written = Jsoup.parse(dir.resolve("book/compare.html").toFile(), "UTF-8");
    assertTrue(written.select("noscript").text().contains("this browser runs none"));
    assertEquals(3, written.select("table[data-own] thead").size());
    assertEquals(List.of(), written.select("table[data-own] tbody tr"));
  }

  @Test
  void anyTwoSidesInAnyGamesSayWhatTheProgramSays() {
    Random dice = new Random(11);
    List<Comparison.Kind> kinds = List.copyOf(comparison.groups().keySet());
    Set<String> edges = new TreeSet<>();
    int rows = 0;
    for (int i = 0; i < 120; i++) {
      Comparison.Kind kind = kinds.get(dice.nextInt(kinds.size()));
      List<ComparedGroup> sides = comparison.groups().get(kind);
      ComparedGroup a = sides.get(dice.nextInt(sides.size()));
      ComparedGroup b =
          kind == Comparison.Kind.STRETCHES ? a : sides.get(dice.nextInt(sides.size()));
      // Short stretches have few cases, whole seasons have many.
      Stretch first = i % 3 == 0 ? Stretch.whole(a) : stretch(a, dice);
      Stretch second = i % 2 == 0 ? Stretch.whole(b) : stretch(b, dice);
      SideBySide wanted = new SideBySide(kind, first, second);
      open(state(address(kind, first, second)));
      assertEquals(wanted.said(), shown(page()), first.words() + " / " + second.words());
      boolean shared =
          a.equals(b) && Math.max(first.from(), second.from()) <= Math.min(first.to(), second.to());
      assertEquals(
          String.valueOf(!shared), browser.ask("return document.getElementById('shared').hidden"));
      for (List<String> cells : wanted.shares()) {
        edges.add(edge(cells.get(1)) + cells.get(6));
        rows++;
      }
    }
    System.out.println(rows + " rows of 120 picks are alike in the page and in the program.");
    assertTrue(rows > 1500, rows + " rows");
    for (String edge :
        List.of(
            "all of n: A more often",
            "0 of n: B more often",
            "0 of n: no clear difference",
            "some: A more often",
            "some: B more often",
            "some: no clear difference",
            "few: too few to say")) {
      assertTrue(edges.contains(edge), edge + " is not among " + edges);
    }
  }

  private static Stretch stretch(ComparedGroup side, Random dice) {
    int from = 1 + dice.nextInt(side.games().size());
    return new Stretch(side, from, from + dice.nextInt(side.games().size() - from + 1));
  }

  private static String edge(String counts) {
    String[] kn = counts.split(" of ", 2);
    int n = Integer.parseInt(kn[1].replace(",", ""));
    return n < Count.FEWEST_TO_SAY
        ? "few: "
        : kn[0].equals("0") ? "0 of n: " : kn[0].equals(kn[1]) ? "all of n: " : "some: ";
  }

  private static Map<String, String> address(Comparison.Kind kind, Stretch a, Stretch b) {
    Map<String, String> state = new LinkedHashMap<>();
    state.put("of", kind.word());
    state.put("a", a.group().label());
    state.put("b", b.group().label());
    state.put("ga", a.from() + "-" + a.to());
    state.put("gb", b.from() + "-" + b.to());
    return state;
  }

  private static WebElement select(String label) {
    return browser
        .driver()
        .findElement(By.xpath("//div[@id='pick']//label[starts-with(., '" + label + "')]/select"));
  }

  /** Picks as keys do: to the top, and so many down. */
  private static void pick(String label, int down) {
    WebElement list = select(label);
    list.sendKeys(Keys.HOME);
    for (int i = 0; i < down; i++) {
      list.sendKeys(Keys.ARROW_DOWN);
    }
  }

  @Test
  void keysAloneChooseAndTheAddressKeepsIt() {
    open("");
    select("Compare").sendKeys("str");
    assertEquals("stretches", select("Compare").getDomProperty("value"));
    WebElement last = browser.driver().findElements(By.cssSelector("#pick fieldset select")).get(2);
    assertEquals("to", last.findElement(By.xpath("..")).getText().split("\\s", 2)[0]);
    last.sendKeys(Keys.ARROW_DOWN);
    List<String> view = shown(page());
    assertEquals("Herons, games 1 to 5", view.get(0));
    assertEquals("Herons, games 5 to 9", view.get(3));
    assertEquals("false", browser.ask("return document.getElementById('shared').hidden"));
    String address = browser.driver().getCurrentUrl();
    assertTrue(address.endsWith("#of=stretches&a=Herons&ga=1-5&gb=5-9"), address);
    open(address.substring(address.indexOf('#')));
    assertEquals(view, shown(page()), "the address alone gives the same view");
    // Tab alone leads from the kind through every select that is shown.
    select("Compare").sendKeys(Keys.TAB);
    assertEquals("Herons", browser.ask("return document.activeElement.selectedOptions[0].text"));
  }

  @Test
  void aFirstGameAfterTheLastMovesTheLast() {
    open(state(Map.of("ga", "2-3")));
    pick("from", 6);
    assertEquals("8 Brandt, Herons, game 7", shown(page()).get(0));
    pick("to", 0);
    assertEquals("8 Brandt, Herons, game 1", shown(page()).get(0));
  }

  @Test
  void whatTheAddressAsksForAndIsNotThereIsSaid() {
    open(state(Map.of("of", "constructor", "a", MARKUP, "ga", "3-99")));
    assertEquals(opening().said(), shown(page()));
    WebElement missing = browser.at("missing");
    assertTrue(missing.isDisplayed());
    assertTrue(missing.getText().contains(MARKUP), missing.getText());
    pick("Who", 1);
    assertFalse(missing.isDisplayed(), "gone with the next choice");
  }

  /** Games that are not there, or end before they begin, are not asked for. */
  @Test
  void gamesThatAreNotThereAreAllGames() {
    for (String games : List.of("0-2", "2-1", "1-10", "x", "3")) {
      open(state(Map.of("ga", games)));
      assertEquals(opening().said(), shown(page()), games);
    }
    open(state(Map.of("ga", "1-2")));
    assertEquals("8 Brandt, Herons, games 1 to 2", shown(page()).get(0));
  }

  @Test
  void hostileNamesAreTextAndThePageIsSoundInBothLooks() throws IOException {
    browser.size(360, 740);
    try {
      for (String theme : List.of("light", "dark")) {
        for (String name : List.of(MARKUP + ", Herons", "\u2068" + TURNED + "\u2069, Herons")) {
          open(state(Map.of("of", "players", "a", name, "theme", theme)));
          assertEquals(name, shown(page()).get(0));
          assertEquals("0", browser.ask("return document.querySelectorAll('body img').length"));
          assertEquals(
              "3",
              browser.ask("return document.scripts.length"),
              "the book's, the page's and the data");
          assertEquals("", browser.violations(), name + ", " + theme);
          assertEquals(
              "true", browser.ask("return document.documentElement.scrollWidth <= 360"), name);
        }
      }
      assertEquals(List.of(), browser.consoleErrors());
    } finally {
      browser.size(1280, 900);
    }
  }
}
