package twostrides.book.chart;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;

/**
 * A finished picture. On a page {@link #html} holds both forms, and the style sheet shows the one
 * that fits the place; {@link #svg} is a file of its own.
 *
 * @param title what it shows, in a line
 * @param description what is to be seen, in words
 * @param wide one {@code <svg>} element of {@value Form#WIDE} pixels, without colours: the page
 *     needs {@link #styles} once
 * @param narrow the same for {@value Form#NARROW} pixels
 * @param file makes the wide form as a file: with its title and its styles
 * @param png draws that file as a PNG of twice its width and height, on each call anew
 */
public record Picture(
    String title,
    String description,
    String wide,
    String narrow,
    Supplier<String> file,
    Supplier<byte[]> png) {

  static Picture of(Caption caption, ToDoubleFunction<Sketch> drawing) {
    Form wide = Form.of(Form.WIDE, drawing);
    Form narrow = Form.of(Form.NARROW, drawing);
    return of(caption, wide, narrow, () -> Raster.png(wide, caption));
  }

  static Picture of(Caption caption, Form wide, Form narrow, Supplier<byte[]> png) {
    return new Picture(
        Lettering.clean(caption.title()),
        caption.description(),
        wide.inline(caption, "wide"),
        narrow.inline(caption, "narrow"),
        () -> wide.standAlone(caption, styles()),
        png);
  }

  /** The wide form as a file. */
  public String svg() {
    return file.get();
  }

  /** Both forms, to stand in a page. */
  public String html() {
    return "<div class=\"picture\">\n" + wide + narrow + "</div>\n";
  }

  /**
   * Both forms under their title, as a part of a page that an address can name.
   *
   * @param id the part's id
   */
  public String headed(String id) {
    return "<section class=\"answer\" id=\""
        + id
        + "\">\n<h2>"
        + Lettering.escaped(title)
        + "</h2>\n"
        + html()
        + "</section>\n";
  }

  private static final String STYLES = read();

  /** The text of {@code chart.css}, which a page with pictures needs once. */
  public static String styles() {
    return STYLES;
  }

  private static String read() {
    try (InputStream in = Picture.class.getResourceAsStream("/twostrides/book/chart.css")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("chart.css belongs to the program", e);
    }
  }
}
