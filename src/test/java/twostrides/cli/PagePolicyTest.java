package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.logging.LogType;
import twostrides.browser.Browser;

/** Every page says what it may load: its own style, script and pictures, and nothing else. */
class PagePolicyTest {

  @TempDir Path dir;

  private static List<Path> pages(Path book) throws IOException {
    try (Stream<Path> all = Files.walk(book)) {
      return all.filter(f -> f.toString().endsWith(".html")).sorted().toList();
    }
  }

  private static String policy(String html) {
    return Jsoup.parse(html).select("meta[http-equiv=Content-Security-Policy]").attr("content");
  }

  @Test
  void everyPageHasAPolicy() throws IOException {
    List<Path> pages = pages(SampleBook.ofGames(dir, List.of("G1", "G2")));
    assertTrue(pages.size() > 10, pages.size() + " pages");
    for (Path page : pages) {
      String policy = policy(Files.readString(page));
      assertTrue(policy.startsWith("default-src 'none'; script-src 'self'; "), page + policy);
      assertTrue(
          policy.indexOf("unsafe") == policy.indexOf("unsafe-inline'; img-src"), page + policy);
      assertFalse(policy.contains("http") || policy.contains("unsafe-eval"), page + policy);
    }
  }

  /** From disk, where a page has no address of its own: what the pages need is let in. */
  @Test
  void nothingThatThePagesNeedIsKeptOut() throws Exception {
    try (Browser b = Browser.open(1280, 900)) {
      Path book = SampleBook.ofGames(dir, List.of("G1", "constructor", "__proto__"), "--png");
      for (Path page : pages(book)) {
        b.driver().get(page.toUri().toString());
        assertEquals("true", b.ask("return document.styleSheets.length > 0"), page.toString());
        assertEquals(
            "false",
            b.ask("return [...document.images].some(i => i.complete && i.naturalWidth === 0)"),
            page.toString());
      }
      b.driver().get(book.resolve("index.html").toUri().toString());
      assertEquals(
          "refused",
          b.ask(
              "const s = document.createElement('script'); s.textContent = 'window.ran = 1';"
                  + " document.body.append(s); return window.ran ? 'ran' : 'refused'"));
      List<String> said =
          b.driver().manage().logs().get(LogType.BROWSER).getAll().stream()
              .map(e -> e.getMessage())
              .filter(m -> !m.contains("inline script"))
              .toList();
      assertEquals(List.of(), said);
    }
  }
}
