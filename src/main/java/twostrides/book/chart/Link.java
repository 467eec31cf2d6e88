package twostrides.book.chart;

import java.util.Locale;
import java.util.Optional;

/**
 * What a mark says when it is pointed at or read out, and where it leads.
 *
 * @param href address the mark leads to, of a page, a row or a clip; empty for words only
 * @param title what the mark is, in words; any text
 */
public record Link(Optional<String> href, String title) {

  /**
   * Rejects an address that would run something.
   *
   * @throws IllegalArgumentException for a scheme that browsers run
   */
  public Link {
    String scheme = href.orElse("").strip().toLowerCase(Locale.ROOT);
    if (scheme.startsWith("javascript:") || scheme.startsWith("data:")) {
      throw new IllegalArgumentException("a mark leads to a page or a clip, not " + scheme);
    }
  }

  /**
   * A mark that leads somewhere.
   *
   * @param href address
   * @param title in words
   */
  public static Link to(String href, String title) {
    return new Link(Optional.of(href), title);
  }

  /**
   * A mark that only says what it is.
   *
   * @param title in words
   */
  public static Link words(String title) {
    return new Link(Optional.empty(), title);
  }
}
