package twostrides.book.chart;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Reads an SVG text back: what a browser would find in it, and where its words stand. */
final class SvgPage {

  private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

  private final Element root;

  SvgPage(String svg) throws Exception {
    root =
        DocumentBuilderFactory.newDefaultNSInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(svg)))
            .getDocumentElement();
  }

  /** Words and the box that their letters take. */
  record Text(String words, int size, Rectangle2D box) {}

  Element root() {
    return root;
  }

  /** The view box. */
  Rectangle2D box() {
    String[] n = root.getAttribute("viewBox").split(" ", -1);
    return new Rectangle2D.Double(
        Double.parseDouble(n[0]),
        Double.parseDouble(n[1]),
        Double.parseDouble(n[2]),
        Double.parseDouble(n[3]));
  }

  List<Element> all(String name) {
    NodeList found = root.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      elements.add((Element) found.item(i));
    }
    return elements;
  }

  /** Elements of a name whose class begins with a word. */
  List<Element> all(String name, String css) {
    return all(name).stream()
        .filter(e -> e.getAttribute("class").split(" ", -1)[0].equals(css))
        .toList();
  }

  static double number(Element e, String attribute) {
    return Double.parseDouble(e.getAttribute(attribute));
  }

  List<Text> texts() {
    return all("text").stream().map(SvgPage::text).toList();
  }

  private static Text text(Element e) {
    int size = Integer.parseInt(inherited(e, "font-size", "12"));
    boolean bold = inherited(e, "font-weight", "normal").equals("bold");
    for (Type type : Type.values()) {
      if (e.getAttribute("class").equals(type.css())) {
        size = type.size();
        bold = type.font().isBold();
      }
    }
    Font font = new Font("DejaVu Sans", bold ? Font.BOLD : Font.PLAIN, size);
    double width =
        Lettering.able(font, e.getTextContent())
            .getStringBounds(e.getTextContent(), EXACT)
            .getWidth();
    double x = number(e, "x");
    String anchor = e.getAttribute("text-anchor");
    double left = anchor.equals("end") ? x - width : anchor.equals("middle") ? x - width / 2 : x;
    double up = 0.75 * size;
    double y = number(e, "y") + down(e);
    return new Text(
        e.getTextContent(), size, new Rectangle2D.Double(left, y - up, width, up + 0.2 * size));
  }

  private static double down(Element e) {
    Matcher m =
        Pattern.compile("translate\\(0,(.*)\\)")
            .matcher(((Element) e.getParentNode()).getAttribute("transform"));
    return m.matches() ? Double.parseDouble(m.group(1)) : 0;
  }

  private static String inherited(Element e, String property, String otherwise) {
    for (Node n = e; n instanceof Element at; n = n.getParentNode()) {
      Matcher m =
          Pattern.compile("(?:^|; ?)" + property + ": ?([a-z0-9]+)")
              .matcher(at.getAttribute("style"));
      if (m.find()) {
        return m.group(1).replace("px", "");
      }
    }
    return otherwise;
  }
}
