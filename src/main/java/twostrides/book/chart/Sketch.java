package twostrides.book.chart;

import java.awt.Shape;
import java.util.List;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGPath;

/**
 * One form of a picture while it is drawn: shapes with classes of {@code chart.css}, in the order
 * drawn, and text at places. Lengths are pixels of the form.
 */
final class Sketch {

  private static final SVGGeneratorContext TENTHS = ChartSvg.context();

  private final StringBuilder body = new StringBuilder();
  private final int width;

  /** Draws in a form of so many pixels from edge to edge. */
  Sketch(int width) {
    this.width = width;
  }

  /** Whether this is a form for a hand's width. */
  boolean narrow() {
    return width < Form.WIDE;
  }

  /** One of two lengths: in the wide form, in the narrow one. */
  double either(double wide, double slim) {
    return narrow() ? slim : wide;
  }

  /** Pixels from edge to edge. */
  double width() {
    return width;
  }

  String body() {
    return body.toString();
  }

  void rect(String css, double x, double y, double width, double height) {
    open("rect", css).append(at("x", x)).append(at("y", y));
    body.append(at("width", width)).append(at("height", height)).append("/>");
  }

  /** What is drawn inside lets through what lies under it; {@code opaque} in hundredths. */
  void tinted(int opaque, Runnable inside) {
    body.append("<g fill-opacity=\"").append(opaque / 100.0).append("\">");
    inside.run();
    body.append("</g>");
  }

  void line(String css, double x1, double y1, double x2, double y2) {
    open("line", css).append(at("x1", x1)).append(at("y1", y1));
    body.append(at("x2", x2)).append(at("y2", y2)).append("/>");
  }

  void circle(String css, double x, double y, double radius) {
    open("circle", css).append(at("cx", x)).append(at("cy", y)).append(at("r", radius));
    body.append("/>");
  }

  /** A path of the SVG path language that begins with a relative step from a place. */
  void mark(String css, double x, double y, String steps) {
    path(css, "M" + number(x) + " " + number(y) + steps);
  }

  void shape(String css, Shape shape) {
    path(css, SVGPath.toSVGPathData(shape, TENTHS));
  }

  private void path(String css, String steps) {
    open("path", css).append(" d=\"").append(steps).append("\"/>");
  }

  void text(Type type, String words, double x, double baseline) {
    text(type, "start", words, x, baseline);
  }

  /** A text around {@code x}. */
  void middle(Type type, String words, double x, double baseline) {
    text(type, "middle", words, x, baseline);
  }

  /** A text that ends at {@code x}. */
  void end(Type type, String words, double x, double baseline) {
    text(type, "end", words, x, baseline);
  }

  private void text(Type type, String anchor, String words, double x, double baseline) {
    open("text", type.css()).append(at("x", x)).append(at("y", baseline));
    body.append(anchor.equals("start") ? "" : " text-anchor=\"" + anchor + "\"");
    body.append('>').append(Lettering.escaped(words)).append("</text>\n");
  }

  /** In the middle of {@code x}, or as near as the words stay between two places. */
  void inside(Type type, String words, double x, double baseline, double left, double right) {
    double half = type.width(words) / 2 + 1;
    double middle = Math.max(left + half, Math.min(right - half, x));
    middle(type, words, middle, baseline);
  }

  /**
   * Lines under each other.
   *
   * @return pixels, where the baseline of a further line would be
   */
  double lines(Type type, List<String> lines, double x, double baseline) {
    double y = baseline;
    for (String line : lines) {
      text(type, line, x, y);
      y += type.leading();
    }
    return y;
  }

  /** The same, each in the middle of {@code x}. */
  double centered(Type type, List<String> lines, double x, double baseline) {
    double y = baseline;
    for (String line : lines) {
      middle(type, line, x, y);
      y += type.leading();
    }
    return y;
  }

  /** What is drawn inside leads where the link does and says what it says. */
  void linked(Link link, Runnable inside) {
    String tag = link.href().isPresent() ? "a" : "g";
    body.append('<').append(tag);
    link.href().ifPresent(h -> body.append(" href=\"").append(Lettering.escaped(h)).append('"'));
    body.append("><title>").append(Lettering.escaped(link.title())).append("</title>");
    inside.run();
    body.append("</").append(tag).append(">\n");
  }

  private StringBuilder open(String name, String css) {
    return body.append('<').append(name).append(" class=\"").append(css).append('"');
  }

  private static String at(String name, double value) {
    return " " + name + "=\"" + number(value) + "\"";
  }

  /** A length to a tenth of a pixel: less cannot be seen. */
  static String number(double value) {
    long tenths = Math.round(value * 10);
    String sign = tenths < 0 ? "-" : "";
    long whole = Math.abs(tenths);
    return sign + whole / 10 + (whole % 10 == 0 ? "" : "." + whole % 10);
  }
}
