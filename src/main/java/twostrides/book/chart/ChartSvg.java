package twostrides.book.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.entity.CategoryItemEntity;
import org.jfree.chart.entity.ChartEntity;
import org.jfree.chart.entity.XYItemEntity;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/**
 * Makes a picture of a JFreeChart chart. Its SVG comes from Apache Batik's generator; colours
 * become the classes of {@code chart.css}, clips and what says nothing are dropped. The PNG is the
 * chart's own image.
 */
final class ChartSvg {

  /** What an element says besides its colours; everything else is of no use on a page. */
  private static final Set<String> KEPT =
      Set.of(
          "x",
          "y",
          "x1",
          "y1",
          "x2",
          "y2",
          "cx",
          "cy",
          "r",
          "rx",
          "ry",
          "width",
          "height",
          "d",
          "points",
          "transform",
          "stroke-width",
          "stroke-dasharray",
          "fill-opacity",
          "font-size",
          "font-weight");

  private final Map<String, String> names = new HashMap<>();
  private final StringBuilder out = new StringBuilder();

  private ChartSvg() {
    colors().forEach((name, color) -> names.put(rgb(color), name));
    names.put("black", "ink");
    names.put("white", "paper");
  }

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
        form(chart.apply(false), false, height, links),
        form(chart.apply(true), true, height, links),
        () -> {
          JFreeChart alone = chart.apply(false);
          alone.setBackgroundPaint(colors().get("paper"));
          alone.setTitle(Lettering.lines(caption.title(), Type.TITLE, Form.WIDE - 20.0, 1).get(0));
          int width = Raster.SCALE * Form.WIDE;
          int tall = height + 2 * Form.MARGIN;
          return Raster.png(
              alone.createBufferedImage(width, Raster.SCALE * tall, Form.WIDE, tall, null));
        });
  }

  /** The colours of the light theme by their names, from the style sheet. */
  static Map<String, Color> colors() {
    String light = Picture.styles().substring(0, Picture.styles().indexOf('}'));
    Matcher m = Pattern.compile("--chart-([a-z]+): (#[0-9a-f]{6});").matcher(light);
    Map<String, Color> colors = new HashMap<>();
    while (m.find()) {
      colors.put(m.group(1), Color.decode(m.group(2)));
    }
    return colors;
  }

  private static Form form(JFreeChart chart, boolean narrow, int height, List<Link> links) {
    int width = narrow ? Form.NARROW : Form.WIDE;
    ChartRenderingInfo info = new ChartRenderingInfo();
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document());
    context.setPrecision(1);
    SVGGraphics2D g = new SVGGraphics2D(context, false);
    hints(g);
    chart.draw(g, new Rectangle2D.Double(0, 0, width, height), null, info);
    ChartSvg svg = new ChartSvg();
    svg.write(g.getRoot());
    Sketch marks = new Sketch(narrow);
    for (Object entity : info.getEntityCollection().getEntities()) {
      item((ChartEntity) entity)
          .filter(i -> i < links.size())
          .ifPresent(i -> marks.linked(links.get(i), () -> hit(marks, (ChartEntity) entity)));
    }
    return new Form(svg.out + marks.body(), width, height);
  }

  private static void hit(Sketch s, ChartEntity entity) {
    Rectangle2D box = entity.getArea().getBounds2D();
    s.rect("hit", box.getX(), box.getY(), box.getWidth(), box.getHeight());
  }

  /** Which item of the data an entity of the chart stands for. */
  private static Optional<Integer> item(ChartEntity entity) {
    if (entity instanceof XYItemEntity xy) {
      return Optional.of(
          (int) Math.round(xy.getDataset().getXValue(xy.getSeriesIndex(), xy.getItem())));
    }
    return entity instanceof CategoryItemEntity bar
        ? Optional.of(bar.getDataset().getColumnIndex(bar.getColumnKey()))
        : Optional.empty();
  }

  /** JFreeChart puts back a hint that it finds unset, and fails. */
  private static void hints(Graphics2D g) {
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
  }

  private static org.w3c.dom.Document document() {
    try {
      return DocumentBuilderFactory.newDefaultInstance()
          .newDocumentBuilder()
          .getDOMImplementation()
          .createDocument("http://www.w3.org/2000/svg", "svg", null);
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("Java's own XML parts are missing", e);
    }
  }

  private void write(Element element) {
    String name = element.getNodeName();
    if (name.equals("defs") || (name.equals("g") && !element.hasChildNodes())) {
      return;
    }
    String tag = name.equals("svg") ? "g" : name;
    out.append('<').append(tag).append(attributes(element)).append('>');
    for (Node n = element.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element child) {
        write(child);
      } else if (tag.equals("text")) {
        out.append(Lettering.escaped(n.getNodeValue()));
      }
    }
    out.append("</").append(tag).append(">");
  }

  private String attributes(Element element) {
    StringBuilder kept = new StringBuilder();
    StringBuilder css = new StringBuilder();
    NamedNodeMap attributes = element.getAttributes();
    for (int i = 0; i < attributes.getLength(); i++) {
      String name = attributes.item(i).getNodeName();
      String value = attributes.item(i).getNodeValue();
      if (name.equals("fill") || name.equals("stroke")) {
        String color = names.getOrDefault(value, value.equals("none") ? "none" : "ink");
        css.append(css.isEmpty() ? "" : " ").append(name).append('-').append(color);
      } else if (KEPT.contains(name)) {
        kept.append(' ').append(name).append("=\"").append(Lettering.escaped(value)).append('"');
      }
    }
    return (css.isEmpty() ? "" : " class=\"" + css + "\"") + kept;
  }

  private static String rgb(Color c) {
    return "rgb(" + c.getRed() + "," + c.getGreen() + "," + c.getBlue() + ")";
  }
}
