package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import twostrides.browser.Browser;

/** The team's book of the sample season as one file, away from its folder as a mail takes it. */
class OneFileTest {

  /** Bytes that a mail takes with ease. */
  private static final long MOST = 5_000_000;

  @TempDir private static Path dir;
  private static Path file;
  private static Document read;
  @AutoClose private static Browser browser;

  @BeforeAll
  static void review() throws IOException {
    browser = Browser.open(820, 1180);
    file = Files.copy(SampleBook.season().resolve(SampleBook.ONE_FILE), dir.resolve("book.html"));
    read = Jsoup.parse(file.toFile(), "UTF-8");
  }

  private static void open(String address) {
    browser.driver().get("about:blank");
    browser.driver().get(file.toUri() + address);
  }

  private static String heading() {
    return browser.ask(
        "return Array.from(document.querySelectorAll('h1')).filter(h => h.offsetParent)"
            + ".map(h => h.innerText).join(' | ')");
  }

  @Test
  void itHoldsEveryPageOfTheTeamAndIsSmallEnoughForAMail() throws IOException {
    assertTrue(Files.size(file) < MOST, Files.size(file) + " bytes");
    List<String> pages = read.select(".page").eachAttr("id");
    for (String p :
        List.of("index", "kill", "icings", "players", "opponents", "flags", "slices", "costs")) {
      assertTrue(pages.contains(p + ".html"), p);
    }
    assertEquals(7, pages.stream().filter(p -> p.startsWith("teams/")).count());
    assertEquals(1, pages.stream().filter(p -> p.startsWith("sheets/")).count());
    long players = pages.stream().filter(p -> p.startsWith("players/")).count();
    assertEquals(read.select("[id='players.html'] details[open] tbody tr").size(), players);
  }

  @Test
  void everyLinkHasItsPlaceAndNoIdIsThereTwice() {
    Set<String> ids = new HashSet<>();
    for (Element e : read.select("[id]")) {
      assertTrue(ids.add(e.id()), e.id() + " stands twice");
    }
    List<String> lost = new ArrayList<>();
    for (Element a : read.select("[href], [src]")) {
      String href = a.attr("href");
      // What stands after a page's name may say what is shown of it.
      boolean there =
          href.startsWith("#clip=")
              || (href.startsWith("#")
                  && (ids.contains(href.substring(1))
                      || ids.contains(href.replaceAll("^#|:.*=.*", ""))));
      if (!there) {
        lost.add(a.outerHtml());
      }
    }
    for (String by : List.of("aria-labelledby", "aria-describedby")) {
      for (Element e : read.select("[" + by + "]")) {
        if (!ids.contains(e.attr(by))) {
          lost.add(e.attr(by));
        }
      }
    }
    assertEquals(List.of(), lost);
    assertTrue(read.select("a[href]").size() > 1000);
  }

  @Test
  void oneTurnsItsPagesAsThoseOfAFolder() throws InterruptedException {
    open("");
    assertEquals("Glasswater Herons", heading());
    browser.driver().findElement(By.linkText("Penalty kill")).click();
    assertEquals("Penalty kill", heading());
    assertEquals("Penalty kill", browser.driver().getTitle());
    browser.driver().findElement(By.linkText("Who gets it out")).click();
    double top =
        Double.parseDouble(
            browser.ask(
                "return document.getElementById('kill.html:kill-who').getBoundingClientRect().top"));
    assertTrue(Math.abs(top) < 5, "the answer stands at " + top);
    browser.driver().findElement(By.cssSelector("[id$=':kill-who'] svg.wide a")).click();
    browser.await("return String(document.body.innerText.includes(' of 138 rows'))");
    browser.driver().navigate().back();
    browser.driver().navigate().back();
    assertEquals("Penalty kill", heading());
    browser.driver().navigate().back();
    assertEquals("Glasswater Herons", heading());
    browser.driver().findElement(By.linkText("Icings")).click();
    browser.driver().findElement(By.linkText("Every icing, with its clip")).click();
    assertEquals("Every defensive-zone face-off", heading());
    List<String> causes = BookPagesTest.cells(browser, "Defensive-zone face-offs", 8);
    assertTrue(browser.text().contains(" of 190 rows"), "rows are picked");
    assertFalse(causes.isEmpty());
    open("#compare.html:of=teams&a=Glasswater+Herons&b=Tarn+Wolves");
    assertEquals("Two sides compared", heading());
    assertTrue(browser.text().contains("of B, Tarn Wolves"));
    open("#" + read.select(".one").get(3).id());
    assertEquals("1", browser.ask("return document.querySelectorAll('.one:not([hidden])').length"));
    open("#index.html");
    browser.driver().findElement(By.cssSelector("a[href^='#clip=']"));
  }

  @Test
  void itAsksForNothingAndKeepsItsPolicy() throws IOException {
    int before = browser.requests().size();
    for (String page : List.of("index.html", "kill.html", "icings.html", "compare.html")) {
      open("#" + page + ":theme=dark");
      assertEquals(
          "rgb(20, 25, 30)", browser.ask("return getComputedStyle(document.body).backgroundColor"));
    }
    List<String> asked =
        browser.requests().subList(before, browser.requests().size()).stream()
            .filter(r -> !r.equals("about:blank") && !r.startsWith(file.toUri().toString()))
            .toList();
    assertEquals(List.of(), asked);
    assertEquals(
        "refused",
        browser.ask(
            "const s = document.createElement('script'); s.textContent = 'window.ran = 1';"
                + " document.body.append(s); return window.ran ? 'ran' : 'refused'"));
    assertEquals(
        List.of(),
        browser.consoleErrors().stream().filter(e -> !e.contains("inline script")).toList());
  }

  @Test
  void aPagePrintsAsThatOfTheFolder() throws IOException {
    open("#kill.html");
    List<String> sheets = browser.printed(210, 297, true);
    assertTrue(sheets.size() <= 3, sheets.size() + " sheets");
    assertTrue(sheets.get(0).contains("Penalty kill"), sheets.get(0));
  }

  /** As a mail's preview may show it. */
  @Test
  void withoutScriptsAllPagesStandUnderEachOther() {
    browser
        .driver()
        .executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", true));
    try {
      open("#costs.html");
      assertEquals(
          read.select(".page").size(), browser.driver().findElements(By.tagName("h1")).size());
      assertTrue(browser.driver().findElement(By.id("costs.html")).isDisplayed());
      assertTrue(browser.driver().findElement(By.id("index.html")).isDisplayed());
    } finally {
      browser
          .driver()
          .executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", false));
    }
  }
}
