package twostrides.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.function.Consumer;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;

/** Makes a picture from a painting: the same strokes go to the SVG and, when asked, to the PNG. */
final class Easel {

  /** PNG pixels per pixel of the view box: sharp on a slide; at 2 a book takes a third longer. */
  static final double PNG_SCALE = 1.5;

  /** Decimals kept in the SVG: a tenth of a pixel cannot be seen. */
  private static final int SVG_DECIMALS = 1;

  /** Rounding of the card's corners, pixels, assumed. */
  private static final double CARD_ROUNDING = 20;

  private Easel() {}

  /**
   * A picture on a white card, so that it looks the same on light and dark pages.
   *
   * @param words the title and description read out in place of the picture
   * @param size of the view box
   * @param edge colour of the card's edge
   * @param painting draws in pixels at scale 1; called once for the SVG and once for every PNG
   */
  static Picture picture(
      TextAlternative words, Size size, Color edge, Consumer<Graphics2D> painting) {
    Consumer<Graphics2D> onCard =
        g -> {
          card(g, size, edge);
          painting.accept(g);
        };
    Consumer<Graphics2D> onPaper =
        g -> {
          edge(g, size, edge);
          painting.accept(g);
        };
    return new Picture(
        words.title() + ": " + words.description(),
        svg(words, size, onCard),
        size.width(),
        size.height(),
        () -> png(size, onPaper));
  }

  /** Width and height of a view box, in pixels at scale 1. */
  record Size(int width, int height) {}

  /** What a picture says to those who do not see it. */
  record TextAlternative(String title, String description) {}

  private static void card(Graphics2D g, Size size, Color edge) {
    g.setColor(Color.WHITE);
    g.fill(outline(size));
    edge(g, size, edge);
  }

  private static void edge(Graphics2D g, Size size, Color edge) {
    g.setStroke(Strokes.even(1));
    g.setColor(edge);
    g.draw(outline(size));
  }

  private static RoundRectangle2D outline(Size size) {
    return new RoundRectangle2D.Double(
        0.5, 0.5, size.width() - 1.0, size.height() - 1.0, CARD_ROUNDING, CARD_ROUNDING);
  }

  private static String svg(TextAlternative words, Size size, Consumer<Graphics2D> painting) {
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document());
    context.setPrecision(SVG_DECIMALS);
    context.setComment(null);
    SVGGraphics2D g = new SVGGraphics2D(context, false);
    hints(g);
    painting.accept(g);
    return new SvgText(g.getRoot()).document(words, size);
  }

  private static Document document() {
    try {
      return DocumentBuilderFactory.newDefaultInstance()
          .newDocumentBuilder()
          .getDOMImplementation()
          .createDocument("http://www.w3.org/2000/svg", "svg", null);
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("Java's own XML parts are missing", e);
    }
  }

  /** Length of a side of the PNG in pixels. */
  static int pixels(int side) {
    return (int) Math.round(side * PNG_SCALE);
  }

  private static byte[] png(Size size, Consumer<Graphics2D> painting) {
    BufferedImage image =
        new BufferedImage(pixels(size.width()), pixels(size.height()), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    try {
      hints(g);
      g.setColor(Color.WHITE);
      g.fillRect(0, 0, image.getWidth(), image.getHeight());
      g.scale(PNG_SCALE, PNG_SCALE);
      painting.accept(g);
    } finally {
      g.dispose();
    }
    return PngFile.of(image);
  }

  /** The SVG needs them as well: JFreeChart puts back a hint that it finds unset, and fails. */
  private static void hints(Graphics2D g) {
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
  }
}
