package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import twostrides.browser.Browser;

/** The book in a real browser: every kind of page, its tables, its address, its print. */
class BookPagesTest {

  @TempDir private static Path dir;
  private static Path book;
  @AutoClose private static Browser browser;

  @BeforeAll
  static void review() throws IOException {
    browser = Browser.open(1280, 900);
    book =
        SampleBook.of(
            dir.resolve("book"), SampleBook.games().subList(0, 4), "--simulations", "200");
  }

  private static String address(String page) {
    return book.resolve(page).toUri().toString();
  }

  private static void open(String page, String state) {
    browser.driver().get("about:blank");
    browser.driver().get(address(page) + state);
  }

  /** Opens every fold of the page, as a reader would who wants to count. */
  static void unfold(Browser browser) {
    browser.ask("document.querySelectorAll('main details').forEach(d => d.open = true); return ''");
    browser.drawn();
  }

  /** One page of each kind. */
  private static List<String> kinds() throws IOException {
    List<String> pages = new ArrayList<>();
    for (String folder : List.of("", "teams", "players", "sheets")) {
      try (Stream<Path> files = Files.list(book.resolve(folder))) {
        List<String> html =
            files
                .filter(f -> f.toString().endsWith(".html"))
                .map(f -> book.relativize(f).toString().replace('\\', '/'))
                .sorted()
                .toList();
        pages.addAll(folder.isEmpty() ? html : html.subList(0, 1));
      }
    }
    return pages;
  }

  @Test
  void everyKindOfPageOpensWithoutErrorsAndAsksForNothing() throws IOException {
    int before = browser.requests().size();
    for (String page : kinds()) {
      open(page, "");
      assertFalse(browser.text().isBlank(), page);
    }
    assertEquals(List.of(), browser.consoleErrors());
    List<String> asked =
        browser.requests().subList(before, browser.requests().size()).stream()
            .filter(r -> !r.startsWith("file:") && !r.startsWith("about:"))
            .toList();
    assertEquals(List.of(), asked, "requests that leave the folder");
    assertTrue(kinds().size() >= 10, kinds().toString());
  }

  @Test
  void noPageHasAnAccessibilityViolationInEitherTheme() throws IOException {
    List<String> found = new ArrayList<>();
    // The sheets of players have a test of their own, in PlayerSheetsPagesTest.
    for (String page : kinds().stream().filter(k -> !k.startsWith("sheets/")).toList()) {
      for (String theme : List.of("light", "dark")) {
        open(page, "#theme=" + theme);
        String violations =
            theme.equals("light") ? browser.violations() : browser.violationsOfColours();
        if (!violations.isEmpty()) {
          found.add(page + ", " + theme + "\n" + violations);
        }
      }
    }
    assertEquals("", String.join("\n", found));
  }

  /** What the rows shown begin with. */
  static List<String> firstCells(Browser browser, String region) {
    return cells(browser, region, 1);
  }

  /** What the rows shown, without their sum, say in a column, from 1. */
  static List<String> cells(Browser browser, String region, int column) {
    return browser
        .ask(
            "return Array.from(document.querySelectorAll('[aria-label=\"' + arguments[0] + '\"]"
                + " tbody tr:not([hidden]) > :nth-child(' + arguments[1] + ')'))"
                + ".map(c => c.textContent.replace(/\\s+/g, ' ').trim()).join('\\n')",
            region,
            column)
        .lines()
        .toList();
  }

  private static final String BAR =
      "//*[@aria-label='%s']/preceding-sibling::*[1]//label[starts-with(normalize-space(), '%s')]/%s";

  /** The list by which a table's rows are picked. */
  static WebElement list(Browser browser, String region, String label) {
    return browser.driver().findElement(By.xpath(BAR.formatted(region, label, "select")));
  }

  /** Picks what a list offers. */
  static void pick(Browser browser, String region, String label, String option) {
    list(browser, region, label).findElements(By.tagName("option")).stream()
        .filter(o -> o.getText().equals(option))
        .findFirst()
        .orElseThrow()
        .click();
  }

  /** The search in the names of a table. */
  static WebElement search(Browser browser, String region, String label) {
    return browser.driver().findElement(By.xpath(BAR.formatted(region, label, "input")));
  }

  @Test
  void rowsArePickedAndTheAddressKeepsIt() {
    open("restarts.html", "");
    String region = "Defensive-zone face-offs";
    List<String> all = cells(browser, region, 2);
    pick(browser, region, "Team", "Glasswater Herons");
    pick(browser, region, "Period", "2");
    List<String> picked = cells(browser, region, 2);
    assertTrue(picked.size() > 3 && picked.stream().allMatch(c -> c.startsWith("P2 ")));
    assertEquals(Set.of("Glasswater Herons"), Set.copyOf(cells(browser, region, 3)));
    assertTrue(browser.text().contains(picked.size() + " of " + all.size() + " rows"));
    String address = browser.driver().getCurrentUrl();
    assertTrue(address.endsWith("#f0-team=Glasswater+Herons&f0-period=2"), address);
    open("restarts.html", address.substring(address.indexOf('#')));
    assertEquals(picked, cells(browser, region, 2), "the address alone gives the same view");
    browser.driver().findElement(By.xpath("//button[.='Show all rows']")).click();
    assertEquals(all, cells(browser, region, 2));
    assertTrue(browser.driver().getCurrentUrl().endsWith("restarts.html"));
    WebElement player = search(browser, region, "Had it last");
    player.sendKeys("herons");
    assertEquals(List.of(), cells(browser, region, 2), "a team is no player");
    player.sendKeys(Keys.ESCAPE);
    assertEquals(all, cells(browser, region, 2), "Escape shows every row again");
    open("restarts.html", "#f0-team=Nobody");
    assertEquals(all, cells(browser, region, 2), "a team that is not here hides nothing");
  }

  @Test
  void aTableIsSortedAndTheAddressKeepsIt() {
    open("kill.html", "");
    unfold(browser);
    String region = "Teams";
    WebElement sort =
        browser
            .driver()
            .findElement(
                By.cssSelector("[aria-label='Teams'] button[aria-label='Sort by Attempts']"));
    sort.sendKeys(Keys.ENTER);
    List<Integer> up = numbers(region, 5);
    assertEquals(up.stream().sorted().toList(), up);
    sort.sendKeys(Keys.ENTER);
    String sorted = browser.driver().getCurrentUrl();
    List<String> down = firstCells(browser, region);
    open("kill.html", sorted.substring(sorted.indexOf('#')));
    assertEquals(down, firstCells(browser, region), "the address alone gives the same view");
    assertEquals(
        "descending",
        browser.ask(
            "return document.querySelector(\"[aria-label='Teams']"
                + " th:nth-child(5)\").getAttribute('aria-sort')"));
    assertEquals("all teams", down.get(down.size() - 1), "the sum stays last");
  }

  /** On a phone many lists would hide the table. */
  @Test
  void onAPhoneTheListsWaitBehindAButton() {
    browser.size(390, 800);
    try {
      open("restarts.html", "");
      WebElement team = list(browser, "Defensive-zone face-offs", "Team");
      assertFalse(team.isDisplayed());
      browser.driver().findElement(By.xpath("//button[.='Pick rows']")).click();
      assertTrue(team.isDisplayed());
      open("restarts.html", "#f0-period=2");
      assertTrue(
          list(browser, "Defensive-zone face-offs", "Team").isDisplayed(),
          "what is picked is seen");
    } finally {
      browser.size(1280, 900);
    }
  }

  private static List<Integer> numbers(String region, int column) {
    List<String> cells = cells(browser, region, column);
    return cells.subList(0, cells.size() - 1).stream().map(Integer::valueOf).toList();
  }

  @Test
  void slashGoesToTheFirstFilterAndLengthsFollowTheChosenUnit() {
    open("flags.html", "#u=ft");
    String main = browser.ask("return document.querySelector('main').innerText");
    assertFalse(Pattern.compile("(?U)\\d\\sm\\s\\(").matcher(main).find(), "no metres are left");
    assertTrue(Pattern.compile("(?U)\\d\\sft").matcher(main).find());
    browser.driver().findElement(By.tagName("body")).sendKeys("/");
    assertEquals("search", browser.ask("return document.activeElement.type"));
  }

  @Test
  void pagesFitAPhoneAndPrint() throws IOException {
    browser.size(360, 740);
    for (String page : kinds()) {
      open(page, "");
      assertEquals(
          "true",
          browser.ask("return document.documentElement.scrollWidth <= 360"),
          page + " is wider than 360 px");
    }
    browser.size(1280, 900);
    open("flags.html", "#theme=dark");
    Map<String, Object> pdf =
        browser.driver().executeCdpCommand("Page.printToPDF", Map.of("preferCSSPageSize", true));
    String text =
        new String(
            Base64.getDecoder().decode(String.valueOf(pdf.get("data"))),
            StandardCharsets.ISO_8859_1);
    int pages = text.split("/Type /Page\\b", -1).length - 1;
    assertTrue(pages >= 2 && pages <= 60, pages + " pages");
  }
}
