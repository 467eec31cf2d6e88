package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import twostrides.browser.Browser;

/**
 * Every kind of page of the sample season's book as wide as a laptop, a tablet held upright and a
 * telephone show it: how large the words in pictures are, that none is cut off or lies on another,
 * that nothing has to be scrolled sideways, how soon it is there. Of the pages about teams, players
 * and sheets those with the least and the most on them, and one between. How many bytes a page has
 * is looked at on all.
 */
class EveryPageTest {

  /** Pixels; with every fold open. */
  private static final List<Integer> WIDTHS = List.of(1280, 820, 390);

  /** Bytes of HTML. */
  private static final int MOST_BYTES = 300_000;

  /**
   * Milliseconds in which a page is loaded: 500 where a machine is free. A test may run beside many
   * others, so only what is far from it fails.
   */
  private static final double LONGEST = 5_000;

  /**
   * What is wrong with the pictures shown: a line each. Boxes of text are as high as the font's
   * tallest letters and as deep as its lowest; words may come as near as lines of a text do.
   */
  private static final String LOOK =
      """
      const wrong = [];
      const page = document.documentElement;
      if (page.scrollWidth > page.clientWidth) {
        wrong.push('the page is ' + page.scrollWidth + ' px wide');
      }
      document.querySelectorAll('main .scroll, main .draw').forEach(place => {
        if (place.scrollWidth > place.clientWidth + 1) {
          wrong.push('to be scrolled: ' + (place.getAttribute('aria-label') || place.id) + ', '
            + place.scrollWidth + ' px in ' + place.clientWidth);
        }
      });
      let seen = 0;
      document.querySelectorAll('main svg').forEach(svg => {
        const frame = svg.getBoundingClientRect();
        if (frame.width === 0) { return; }
        const all = Array.from(svg.querySelectorAll('text')).map(t => {
          const box = t.getBoundingClientRect();
          const px = parseFloat(getComputedStyle(t).fontSize) * t.getScreenCTM().a;
          return { words: t.textContent, px, left: box.left, right: box.right,
            top: box.top + px * 0.12, bottom: box.bottom - px * 0.12 };
        });
        seen += all.length;
        const where = (svg.closest('[id]') || svg).id + ' ' + svg.getAttribute('class') + ': ';
        all.forEach((t, i) => {
          if (t.px < 10.95) { wrong.push(where + t.px.toFixed(1) + ' px: ' + t.words); }
          if (t.left < frame.left - 1 || t.right > frame.right + 1 || t.top < frame.top - 1
              || t.bottom > frame.bottom + 1 || t.right > page.clientWidth || t.left < 0) {
            wrong.push(where + 'cut off: ' + t.words);
          }
          all.slice(i + 1).forEach(u => {
            if (Math.min(t.right, u.right) - Math.max(t.left, u.left) > 0.5
                && Math.min(t.bottom, u.bottom) - Math.max(t.top, u.top) > 0.5) {
              wrong.push(where + t.words + ' lies on ' + u.words);
            }
          });
        });
      });
      return seen + '\\n' + wrong.join('\\n');
      """;

  private static Path book;
  @AutoClose private static Browser browser;

  @BeforeAll
  static void review() throws IOException {
    browser = Browser.open(1280, 900);
    book = SampleBook.season();
  }

  /** All but the team's book as one file, which is {@link OneFileTest}'s. */
  private static List<Path> pages() throws IOException {
    try (Stream<Path> all = Files.walk(book)) {
      return all.filter(f -> f.toString().endsWith(".html") && !f.endsWith(SampleBook.ONE_FILE))
          .sorted()
          .toList();
    }
  }

  /** Those of the book's own folder; of every other the smallest, the largest and one between. */
  private static List<Path> looked() throws IOException {
    Map<Path, List<Path>> folders =
        pages().stream()
            .sorted(Comparator.comparing(p -> p.toFile().length()))
            .collect(Collectors.groupingBy(Path::getParent, TreeMap::new, Collectors.toList()));
    List<Path> looked = new ArrayList<>(folders.remove(book));
    folders
        .values()
        .forEach(f -> looked.addAll(List.of(f.get(0), f.get(f.size() / 2), f.get(f.size() - 1))));
    return looked;
  }

  @Test
  void everyPageIsSmall() throws IOException {
    for (Path page : pages()) {
      long bytes = Files.size(page);
      assertTrue(bytes <= MOST_BYTES, book.relativize(page) + " has " + bytes + " bytes");
    }
  }

  @Test
  void wordsInPicturesAreLargeWholeAndApartAtEveryWidth() throws IOException {
    List<String> wrong = new ArrayList<>();
    List<Double> loaded = new ArrayList<>();
    long seen = 0;
    for (Path page : looked()) {
      String name = book.relativize(page).toString();
      browser.size(WIDTHS.get(0), 900);
      browser.driver().get(page.toUri().toString());
      double took =
          Double.parseDouble(
              browser.ask("return performance.getEntriesByType('navigation')[0].loadEventEnd"));
      loaded.add(took);
      if (took > LONGEST) {
        wrong.add(name + " is loaded after " + Math.round(took) + " ms");
      }
      BookPagesTest.unfold(browser);
      for (int width : WIDTHS) {
        browser.size(width, 900);
        browser.drawn();
        List<String> said = browser.ask(LOOK).lines().toList();
        seen += Long.parseLong(said.get(0));
        said.stream().skip(1).map(s -> name + " at " + width + ": " + s).forEach(wrong::add);
      }
    }
    loaded.sort(null);
    System.out.printf(
        "%d pages, %d words in pictures; loaded in %.0f ms (half of them), %.0f ms at most.%n",
        loaded.size(), seen, loaded.get(loaded.size() / 2), loaded.get(loaded.size() - 1));
    assertTrue(seen > 2_800, seen + " words");
    assertEquals(List.of(), wrong.stream().limit(60).toList(), wrong.size() + " in all");
  }
}
