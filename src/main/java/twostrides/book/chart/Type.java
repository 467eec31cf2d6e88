package twostrides.book.chart;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.List;

/**
 * The sizes and weights of text in a picture: one constant for each class of {@code chart.css}.
 * Widths are pixels of the form, measured without hinting, so that they hold at every scale.
 */
enum Type {
  /** Second-rank words: scales, counts. */
  NOTE("t-note", 12, Font.PLAIN),
  /** Words. */
  WORDS("t-words", 12, Font.PLAIN),
  /** Words that matter. */
  STRONG("t-strong", 12, Font.BOLD),
  /** The heading of a part. */
  HEAD("t-head", 13, Font.BOLD),
  /** A number in a zone. */
  NUMBER("t-number", 16, Font.BOLD),
  /** The title of a picture that stands alone. */
  TITLE("t-title", 18, Font.BOLD),
  /** A number to be seen first. */
  BIG("t-big", 34, Font.BOLD);

  private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

  private final String css;
  private final int size;
  private final int weight;

  Type(String css, int size, int weight) {
    this.css = css;
    this.size = size;
    this.weight = weight;
  }

  /** Its class in {@code chart.css}. */
  String css() {
    return css;
  }

  /** Pixels. */
  int size() {
    return size;
  }

  /** Pixels from one line to the next. */
  double leading() {
    return Math.round(size * 1.25);
  }

  Font font() {
    return new Font(Lettering.family(), weight, size);
  }

  /**
   * Pixels that a text takes.
   *
   * @param text one line
   */
  double width(String text) {
    return text.isEmpty()
        ? 0
        : Lettering.able(font(), text).getStringBounds(text, EXACT).getWidth();
  }

  /** Pixels of the widest of some texts; 0 without any. */
  double widest(List<String> texts) {
    return texts.stream().mapToDouble(this::width).max().orElse(0);
  }
}
