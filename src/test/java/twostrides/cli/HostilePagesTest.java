package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twostrides.browser.Browser;

/** Every page of a book of hostile names, opened in a real browser: names are text and no more. */
class HostilePagesTest {

  private static final List<String> LOOKS = List.of("light", "dark");

  @TempDir Path dir;

  @Test
  void everyPageShowsNamesAsText() throws IOException {
    try (Browser b = Browser.open(360, 740)) {
      Path book = HostileNames.review(dir);
      int pages = 0;
      try (Stream<Path> files = Files.walk(book)) {
        for (Path p : files.filter(f -> f.toString().endsWith(".html")).sorted().toList()) {
          String page = book.relativize(p).toString();
          b.driver().get(p.toUri() + "#theme=" + LOOKS.get(pages % 2));
          // An alert would make the next question fail.
          assertEquals(
              "0",
              b.ask(
                  "return document.querySelectorAll('main script:not([type=\"application/json\"]), body img').length"),
              page);
          assertEquals(
              "true",
              b.ask("return document.documentElement.scrollWidth <= 360"),
              page + " is wider than 360 px");
          assertEquals("", b.violations(), page);
          pages++;
        }
      }
      b.driver().get(book.resolve("teams/01-herons-script-alert-1-script.html").toUri().toString());
      BookPagesTest.unfold(b);
      String text = b.text();
      for (String name : HostileNames.ALL) {
        assertTrue(text.contains(name), name);
      }
      assertEquals(List.of(), b.consoleErrors());
      assertTrue(pages > 15, pages + " pages");
    }
  }
}
