package twostrides.book.chart;

import java.awt.Color;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.entity.CategoryItemEntity;
import org.jfree.chart.entity.ChartEntity;
import org.jfree.chart.entity.XYItemEntity;
import org.jfree.chart.ui.HorizontalAlignment;
import org.w3c.dom.DOMImplementation;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/**
 * Makes a picture of a JFreeChart chart. Its SVG comes from Apache Batik's generator; colours
 * become the variables of {@code chart.css}. The PNG is the chart's own image.
 */
final class ChartSvg {

  /** Where a shape is; what else is said of it is how it looks. */
  private static final Set<String> PLACE =
      Set.of("x x1 x2 y y1 y2 width height cx cy r rx ry d points transform".split(" "));

  /** What a page does not need, besides hints to the renderer. */
  private static final Set<String> NEEDLESS =
      Set.of("clip-path", "color-interpolation", "font-family", "xml:space");

  private static final Map<String, Color> COLORS = read();

  /** Colours as the generator writes them, and the variables that they become. */
  private static final Map<String, String> VARIABLES =
      COLORS.entrySet().stream()
          .collect(
              Collectors.toMap(e -> rgb(e.getValue()), e -> "var(--chart-" + e.getKey() + ")"));

  private static String rgb(Color c) {
    return "rgb(" + c.getRed() + "," + c.getGreen() + "," + c.getBlue() + ")";
  }

  private ChartSvg() {}

  /**
   * Both forms of a chart and its image.
   *
   * @param chart makes the chart anew; true for the narrow form
   * @param height pixels of both forms
   * @param links of the items, in their order
   */
  static Picture picture(
      Caption caption, Function<Boolean, JFreeChart> chart, int height, List<Link> links) {
    return Picture.of(
        caption,
        form(chart.apply(false), Form.WIDE, height, links),
        form(chart.apply(true), Form.NARROW, height, links),
        () -> png(caption, chart.apply(false), height + 2 * Form.MARGIN));
  }

  private static byte[] png(Caption caption, JFreeChart chart, int height) {
    chart.setBackgroundPaint(colors().get("paper"));
    chart.setTitle(Lettering.lines(caption.title(), Type.TITLE, Form.WIDE - 20.0, 1).get(0));
    chart.getTitle().setPaint(colors().get("ink"));
    chart.getTitle().setHorizontalAlignment(HorizontalAlignment.LEFT);
    chart.getTitle().setPadding(6, 8, 16, 8);
    int wide = Raster.SCALE * Form.WIDE;
    return Raster.png(
        chart.createBufferedImage(wide, Raster.SCALE * height, Form.WIDE, height, null));
  }

  /** The colours of the light theme by their names, from the style sheet. */
  static Map<String, Color> colors() {
    return COLORS;
  }

  private static Map<String, Color> read() {
    String light = Picture.styles().substring(0, Picture.styles().indexOf('}'));
    Matcher m = Pattern.compile("--chart-([a-z]+): (#[0-9a-f]{6});").matcher(light);
    Map<String, Color> colors = new HashMap<>();
    while (m.find()) {
      colors.put(m.group(1), Color.decode(m.group(2)));
    }
    return Collections.unmodifiableMap(colors);
  }

  /** Numbers to a tenth of a pixel: less cannot be seen. */
  static SVGGeneratorContext context() {
    DOMImplementation svg = SVGDOMImplementation.getDOMImplementation();
    SVGGeneratorContext context =
        SVGGeneratorContext.createDefault(
            svg.createDocument(SVGDOMImplementation.SVG_NAMESPACE_URI, "svg", null));
    context.setPrecision(1);
    return context;
  }

  private static Form form(JFreeChart chart, int width, int height, List<Link> links) {
    ChartRenderingInfo info = new ChartRenderingInfo();
    SVGGraphics2D g = new SVGGraphics2D(context(), false);
    // JFreeChart puts back a hint that it finds unset, and fails.
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    chart.draw(g, new Rectangle2D.Double(0, 0, width, height), null, info);
    Sketch marks = new Sketch(width);
    for (Object entity : info.getEntityCollection().getEntities()) {
      int item = item((ChartEntity) entity);
      if (item >= 0) {
        Rectangle2D box = ((ChartEntity) entity).getArea().getBounds2D();
        marks.linked(
            links.get(item),
            () -> marks.rect("hit", box.getX(), box.getY(), box.getWidth(), box.getHeight()));
      }
    }
    return new Form(text(g) + marks.body(), width, height);
  }

  /** Which item of the data an entity of the chart stands for; -1 for none. */
  private static int item(ChartEntity entity) {
    if (entity instanceof XYItemEntity xy) {
      return (int) Math.round(xy.getDataset().getXValue(xy.getSeriesIndex(), xy.getItem()));
    }
    return entity instanceof CategoryItemEntity bar
        ? bar.getDataset().getColumnIndex(bar.getColumnKey())
        : -1;
  }

  /** What the generator drew, without its definitions. */
  private static String text(SVGGraphics2D g) {
    StringBuilder out = new StringBuilder();
    children(g.getRoot(), out);
    return out.toString();
  }

  private static void children(Node parent, StringBuilder out) {
    for (Node n = parent.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element e && !e.getTagName().equals("defs")) {
        element(e, out);
      } else if (n instanceof Text) {
        out.append(Lettering.escaped(n.getNodeValue()));
      }
    }
  }

  private static void element(Element e, StringBuilder out) {
    out.append('<').append(e.getTagName());
    StringBuilder style = new StringBuilder();
    NamedNodeMap all = e.getAttributes();
    for (int i = 0; i < all.getLength(); i++) {
      String name = all.item(i).getNodeName();
      String value = all.item(i).getNodeValue();
      if (PLACE.contains(name)) {
        out.append(' ').append(name).append("=\"").append(value).append('"');
      } else if (!NEEDLESS.contains(name) && !name.endsWith("-rendering")) {
        style.append(name).append(':').append(VARIABLES.getOrDefault(value, value)).append(';');
      }
    }
    if (!style.isEmpty()) {
      out.append(" style=\"").append(style).append('"');
    }
    if (e.hasChildNodes()) {
      out.append('>');
      children(e, out);
      out.append("</").append(e.getTagName()).append('>');
    } else {
      out.append("/>");
    }
  }
}
