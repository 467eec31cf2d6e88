package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import twostrides.browser.Browser;
import twostrides.clips.ClipFiles;

/** What the lists over the restarts leave are the rows of the data that are so, and no others. */
class RestartListTest {

  private static final String REGION = "Defensive-zone face-offs";
  private static final String OURS = "Glasswater Herons";

  @TempDir private static Path dir;
  private static Path book;
  private static List<Map<String, String>> restarts;
  @AutoClose private static Browser browser;

  @BeforeAll
  static void review() throws IOException {
    browser = Browser.open(1280, 900);
    book = SampleBook.season();
    restarts =
        ClipFiles.csv(Files.readString(book.resolve("data/restarts.csv"))).stream()
            .filter(r -> r.get("own_last").equals("true"))
            .toList();
  }

  @BeforeEach
  void open() {
    browser.driver().get("about:blank");
    browser.driver().get(book.resolve("restarts.html").toUri().toString());
  }

  private static void pick(String list, String option) {
    BookPagesTest.pick(browser, REGION, list, option);
  }

  /** Sheet and line of the rows that are shown. */
  private static List<String> shown() {
    return BookPagesTest.cells(browser, REGION, 15);
  }

  private static List<String> wanted(Predicate<Map<String, String>> which) {
    return restarts.stream()
        .filter(which)
        .map(r -> r.get("sheet") + ", line " + r.get("line"))
        .toList();
  }

  private static boolean iced(Map<String, String> r) {
    return r.get("team").equals(OURS) && r.get("restart_cause").startsWith("icing");
  }

  @Test
  void icingsOfTheHeronsAtEvenStrength() {
    pick("Team", OURS);
    pick("Cause", "icing, written");
    pick("Strength", "even");
    List<String> wanted = wanted(r -> iced(r) && r.get("strength").equals("even"));
    assertEquals(wanted, shown());
    System.out.println(wanted.size() + " of " + restarts.size() + " restarts: Herons, icing, even");
    assertTrue(wanted.size() > 30, wanted.size() + " rows");
    // None of them was shorthanded, where every restart is "no icing" by the book.
    pick("Strength", "shorthanded");
    assertEquals(List.of(), wanted(r -> iced(r) && r.get("strength").equals("shorthanded")));
    assertEquals(List.of(), shown());
    assertTrue(browser.text().contains("0 of " + restarts.size() + " rows"));
  }

  @Test
  void everyListPicksByItsOwnColumn() throws IOException {
    Set<String> keptIn =
        ClipFiles.csv(Files.readString(book.resolve("data/exits.csv"))).stream()
            .filter(e -> e.get("way_out").equals("kept in"))
            .map(e -> e.get("game") + " " + e.get("exit"))
            .collect(Collectors.toSet());
    pick("Opponent", "Tarn Wolves");
    pick("Way out", "failed clear");
    assertEquals(
        wanted(
            r ->
                r.get("opponent").equals("Tarn Wolves")
                    && keptIn.contains(r.get("game") + " " + r.get("exit"))),
        shown());
    assertTrue(shown().size() > 2, shown().toString());
    pick("Way out", "all");
    pick("Face-off won by", "own");
    pick("By the book", "no icing");
    pick("Period", "3");
    assertEquals(
        wanted(
            r ->
                r.get("opponent").equals("Tarn Wolves")
                    && r.get("won_by").equals("own")
                    && r.get("ruling").equals("no icing")
                    && r.get("period").equals("3")),
        shown());
    pick("Face-off won by", "all");
    pick("By the book", "all");
    pick("Period", "all");
    pick("Game", restarts.get(0).get("game"));
    assertEquals(
        wanted(
            r ->
                r.get("opponent").equals("Tarn Wolves")
                    && r.get("game").equals(restarts.get(0).get("game"))),
        shown());
  }

  /** A number or a word of a name is whole, and no clock, line or team is a name. */
  @Test
  void aPlayerIsFoundByNumberAndNameAlone() {
    WebElement search = BookPagesTest.search(browser, REGION, "Had it last");
    search.sendKeys("10 ilse");
    List<String> wanted = wanted(r -> r.get("player").equals("10 Ilse Orrinsund"));
    assertEquals(wanted, shown());
    assertTrue(wanted.size() > 3, wanted.size() + " rows");
    search.clear();
    search.sendKeys("1");
    assertEquals(wanted(r -> r.get("player").startsWith("1 ")), shown());
    search.clear();
    search.sendKeys("orrin");
    assertEquals(List.of(), shown(), "half a word is no word");
    search.clear();
    search.sendKeys("Orrinsund, Ilse");
    assertEquals(wanted, shown());
  }

  /**
   * A season's list of twice as many rows: the first are there at once, what is picked counts all.
   */
  @Test
  void aLongListBeginsWithItsFirstRows() throws IOException {
    String page = Files.readString(book.resolve("restarts.html"));
    int from = page.indexOf("<tbody>") + "<tbody>".length();
    int to = page.indexOf("</tbody>");
    for (String beside : List.of("book.css", "chart.css", "book.js", "icon.svg")) {
      Files.copy(book.resolve(beside), dir.resolve(beside));
    }
    Path twice = dir.resolve("twice.html");
    Files.writeString(twice, page.substring(0, to) + page.substring(from));
    browser.driver().get(twice.toUri().toString());
    int all = 2 * restarts.size();
    assertEquals(200, seen());
    WebElement rest = browser.driver().findElement(By.cssSelector("button.rest"));
    assertEquals("Show " + (all - 200) + " more rows", rest.getText());
    pick("Team", OURS);
    int ours = 2 * wanted(r -> r.get("team").equals(OURS)).size();
    assertTrue(ours > 200 && browser.text().contains(ours + " of " + all + " rows"), ours + "");
    assertEquals(200, seen());
    rest.click();
    assertEquals(ours, seen());
    assertFalse(rest.isDisplayed());
  }

  private static int seen() {
    return Integer.parseInt(
        browser.ask(
            "return String(Array.from(document.querySelectorAll('tbody tr'))"
                + ".filter(r => r.getClientRects().length > 0).length)"));
  }

  /** The same mechanism serves every list: teams' restarts, kills, units, releases, flags. */
  @Test
  void everyTableHasTheListsThatTellItsRowsApart() {
    assertEquals(
        "Had it last; Team; Opponent; Venue; Game; Period; Score; Strength; Way out; Pressure; From; Side; Cause; By the book; Face-off won by",
        lists("restarts.html", REGION));
    assertEquals(
        "Had it last; Opponent; Venue; Game; Period; Score; Strength; Way out; Pressure; From; Side; Cause; By the book; Face-off won by",
        lists("teams/01-glasswater-herons.html", REGION));
    assertEquals("Game; Period", lists("kill.html", "Every kill, Glasswater Herons"));
    assertEquals(
        "Player; Opponent; Game; Period; Way out; Result",
        lists("kill.html", "Every try to clear"));
    assertEquals(
        "Let go by; Team; Game; Period; Strength", lists("flags.html", "Not flagged, because"));
    assertEquals("Strength; Way out", lists("index.html", "Ways out of Glasswater Herons"));
    assertEquals("Point", lists("rulings.html", "What this book says"));
    assertEquals("", lists("costs.html", "After a defensive-zone face-off"));
  }

  /** A zone of the icings' rink leads to as many rows as it counts. */
  @Test
  void everyZoneLeadsToItsIcings() {
    Map<String, Integer> zones = links("icings.html", "icings-zones");
    assertEquals(12, zones.size());
    assertEquals(
        wanted(RestartListTest::iced).size(),
        zones.values().stream().mapToInt(Integer::intValue).sum());
    zones.forEach(
        (href, icings) -> {
          browser.driver().get("about:blank");
          browser.driver().get(href);
          assertEquals(icings, shown().size(), href);
        });
  }

  /** A situation leads to the icings that are so in the data. */
  @Test
  void everySituationLeadsToItsIcings() {
    Map<String, Predicate<Map<String, String>>> asked =
        Map.of(
            "f0-score=trailing", r -> r.get("goals_ahead").startsWith("-"),
            "f0-score=tied", r -> r.get("goals_ahead").equals("0"),
            "f0-venue=away", r -> r.get("venue").equals("away"),
            "f0-side=left", r -> r.get("side").equals("left"),
            "f0-pressure=not%20known", r -> r.get("pressure").isEmpty(),
            "f0-period=2", r -> r.get("period").equals("2"));
    Set<String> links = links("slices.html", "situations").keySet();
    asked.forEach(
        (pick, which) -> {
          browser.driver().get("about:blank");
          browser
              .driver()
              .get(links.stream().filter(l -> l.contains(pick)).findFirst().orElseThrow());
          List<String> wanted = wanted(r -> iced(r) && which.test(r));
          assertEquals(wanted, shown(), pick);
          assertTrue(wanted.size() > 4, pick + ": " + wanted.size());
        });
  }

  /** Where the marks of a picture lead, and how many of how many each counts. */
  private static Map<String, Integer> links(String page, String picture) {
    browser.driver().get(book.resolve(page).toUri().toString());
    Pattern counted = Pattern.compile("([\\d,]+) of [\\d,]+");
    Map<String, Integer> links = new LinkedHashMap<>();
    for (WebElement a :
        browser.driver().findElements(By.cssSelector("#" + picture + " svg.wide a"))) {
      String href = a.getDomAttribute("href");
      Matcher said = counted.matcher(a.getDomProperty("textContent"));
      if (href.startsWith("restarts.html") && said.find()) {
        links.put(
            book.resolve(page).toUri().resolve(href).toString(),
            Integer.parseInt(said.group(1).replace(",", "")));
      }
    }
    return links;
  }

  private static String lists(String page, String region) {
    browser.driver().get(book.resolve(page).toUri().toString());
    BookPagesTest.unfold(browser);
    assertFalse(BookPagesTest.firstCells(browser, region).isEmpty(), region);
    List<String> labels =
        browser
            .driver()
            .findElements(
                By.xpath(
                    "//*[@aria-label='%s']/preceding-sibling::*[1][@role='group']//label"
                        .formatted(region)))
            .stream()
            .map(l -> l.getText().lines().findFirst().orElse("").strip())
            .toList();
    return String.join("; ", labels);
  }

  /** One player of a unit is looked for in one name, not across two. */
  @Test
  void aUnitIsFoundByOneOfItsPlayers() {
    browser.driver().get(book.resolve("kill.html").toUri().toString());
    BookPagesTest.unfold(browser);
    String region = "Units while shorthanded, " + OURS;
    List<String> all = BookPagesTest.cells(browser, region, 1);
    BookPagesTest.search(browser, region, "Unit").sendKeys("11 ilse");
    assertEquals(List.of(), BookPagesTest.cells(browser, region, 1));
    WebElement search = BookPagesTest.search(browser, region, "Unit");
    search.clear();
    search.sendKeys("18 ilse");
    List<String> wanted = all.stream().filter(u -> u.contains("18 Ilse Tarvodahn")).toList();
    assertTrue(wanted.size() > 3, wanted.toString());
    assertEquals(wanted, BookPagesTest.cells(browser, region, 1));
  }
}
