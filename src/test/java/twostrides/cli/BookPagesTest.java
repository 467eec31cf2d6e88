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
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
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
  private static Browser browser;

  @BeforeAll
  static void review() throws IOException {
    browser = Browser.open(1280, 900);
    book = SampleBook.of(dir.resolve("book"), SampleBook.games().subList(0, 4), "--draws", "200");
  }

  @AfterAll
  static void close() throws IOException {
    if (browser != null) {
      browser.close();
    }
  }

  private static String address(String page) {
    return book.resolve(page).toUri().toString();
  }

  private static void open(String page, String state) {
    browser.driver().get("about:blank");
    browser.driver().get(address(page) + state);
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
    for (String page : kinds()) {
      for (String theme : List.of("light", "dark")) {
        open(page, "#theme=" + theme);
        String violations = browser.violations();
        if (!violations.isEmpty()) {
          found.add(page + ", " + theme + "\n" + violations);
        }
      }
    }
    assertEquals("", String.join("\n", found));
  }

  private static List<String> firstCells(String region) {
    List<String> cells = new ArrayList<>();
    for (WebElement e :
        browser
            .driver()
            .findElements(
                By.cssSelector(
                    "[aria-label='" + region + "'] tbody tr:not([hidden]) > :first-child"))) {
      cells.add(e.getText());
    }
    return cells;
  }

  @Test
  void aTableIsFilteredAndSortedAndTheAddressKeepsIt() {
    open("kill.html", "");
    String region = "Teams";
    List<String> all = firstCells(region);
    WebElement query =
        browser
            .driver()
            .findElement(
                By.xpath(
                    "//*[@aria-label='Teams']/preceding-sibling::*[1]//input[@type='search']"));
    query.sendKeys("herons");
    assertEquals(List.of("Glasswater Herons"), firstCells(region));
    String shown = browser.driver().getCurrentUrl();
    assertTrue(shown.contains("#q0=herons"), shown);
    query.sendKeys(Keys.ESCAPE);
    assertEquals(all, firstCells(region), "Escape shows every row again");
    WebElement sort =
        browser
            .driver()
            .findElement(
                By.cssSelector("[aria-label='Teams'] button[aria-label='Sort by Attempts']"));
    sort.sendKeys(Keys.ENTER);
    List<Integer> up = numbers(region, 4);
    assertEquals(up.stream().sorted().toList(), up);
    sort.sendKeys(Keys.ENTER);
    String sorted = browser.driver().getCurrentUrl();
    List<String> down = firstCells(region);
    open("kill.html", sorted.substring(sorted.indexOf('#')));
    assertEquals(down, firstCells(region), "the address alone gives the same view");
    assertEquals(
        "descending",
        browser.ask(
            "return document.querySelector(\"[aria-label='Teams']"
                + " th:nth-child(4)\").getAttribute('aria-sort')"));
    assertEquals("all teams", down.get(down.size() - 1), "the sum stays last");
  }

  private static List<Integer> numbers(String region, int column) {
    List<Integer> numbers = new ArrayList<>();
    for (WebElement e :
        browser
            .driver()
            .findElements(
                By.cssSelector(
                    "[aria-label='"
                        + region
                        + "'] tbody tr:not(.sum):not([hidden]) > :nth-child("
                        + column
                        + ")"))) {
      numbers.add(Integer.valueOf(e.getText()));
    }
    return numbers;
  }

  @Test
  void slashGoesToTheFirstFilterAndLengthsFollowTheChosenUnit() {
    open("flags.html", "#u=ft");
    String main = browser.ask("return document.querySelector('main').innerText");
    assertFalse(Pattern.compile("\\d m \\(").matcher(main).find(), "no metres are left");
    assertTrue(Pattern.compile("\\d ft").matcher(main).find());
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
