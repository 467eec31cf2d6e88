package twostrides.chart;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/**
 * Writes what the generator drew as a short SVG text: shapes in the order drawn, each style once
 * for a run of shapes, a fill and an outline of the same shape as one element, defaults left out.
 * The generator's clips are dropped: nothing here is drawn outside its place.
 */
final class SvgText {

  /** Initial values of the SVG properties, source: SVG 1.1 (second edition), appendix N. */
  private static final Map<String, String> INITIAL =
      Map.ofEntries(
          Map.entry("fill", "black"),
          Map.entry("fill-opacity", "1"),
          Map.entry("fill-rule", "nonzero"),
          Map.entry("stroke", "none"),
          Map.entry("stroke-opacity", "1"),
          Map.entry("stroke-width", "1"),
          Map.entry("stroke-linecap", "butt"),
          Map.entry("stroke-linejoin", "miter"),
          Map.entry("stroke-miterlimit", "4"),
          Map.entry("stroke-dasharray", "none"),
          Map.entry("stroke-dashoffset", "0"),
          Map.entry("font-weight", "normal"),
          Map.entry("font-style", "normal"),
          Map.entry("font-size", "medium"));

  private static final Set<String> STROKE_ONLY =
      Set.of(
          "stroke-opacity",
          "stroke-width",
          "stroke-linecap",
          "stroke-linejoin",
          "stroke-miterlimit",
          "stroke-dasharray",
          "stroke-dashoffset");

  /** What an element itself says; everything else is either a style or of no use. */
  private static final Set<String> GEOMETRY =
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
          "transform");

  private final List<Leaf> leaves = new ArrayList<>();

  /** One shape or text with its whole style. */
  private record Leaf(
      String name, Map<String, String> place, String words, Map<String, String> style) {

    boolean onlyFilled() {
      return !style.containsKey("stroke");
    }

    boolean onlyDrawn() {
      return "none".equals(style.get("fill"));
    }

    /** This fill with the outline that was drawn over it. */
    Leaf outlinedBy(Leaf outline) {
      Map<String, String> both = new TreeMap<>(style);
      outline.style.forEach(
          (k, v) -> {
            if (!k.startsWith("fill")) {
              both.put(k, v);
            }
          });
      return new Leaf(name, place, words, both);
    }
  }

  /**
   * Reads a generator's drawing.
   *
   * @param root its root element
   * @throws IllegalStateException when the drawing refers to a definition, which would need an id
   */
  SvgText(Element root) {
    read(root, new TreeMap<>(INITIAL));
  }

  String document(Easel.TextAlternative words, Easel.Size size) {
    StringBuilder body = new StringBuilder();
    writeLeaves(body);
    String title = escaped(words.title());
    String description = escaped(words.description());
    String id = "ts" + fingerprint(title + description + body);
    return String.format(
            Locale.ROOT,
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" width=\"100%%\""
                + " role=\"img\" aria-labelledby=\"%s-t\" aria-describedby=\"%s-d\""
                + " font-family=\"%s\"><title id=\"%s-t\">%s</title><desc id=\"%s-d\">%s</desc>\n",
            size.width(),
            size.height(),
            id,
            id,
            Lettering.FAMILIES,
            id,
            title,
            id,
            description)
        + body
        + "</svg>\n";
  }

  private void read(Element element, Map<String, String> inherited) {
    Map<String, String> style = new TreeMap<>(inherited);
    Map<String, String> place = new TreeMap<>();
    NamedNodeMap attributes = element.getAttributes();
    for (int i = 0; i < attributes.getLength(); i++) {
      String name = attributes.item(i).getNodeName();
      String value = attributes.item(i).getNodeValue();
      if (INITIAL.containsKey(name)) {
        style.put(name, hex(value));
      } else if (GEOMETRY.contains(name)) {
        place.put(name, value);
      }
      if (value.contains("url(") && !name.equals("clip-path")) {
        throw new IllegalStateException("a picture may not refer to a definition: " + value);
      }
    }
    switch (element.getNodeName()) {
      case "svg", "g" -> {
        if (place.containsKey("transform")) {
          throw new IllegalStateException("draw at the place instead of moving the canvas");
        }
        for (Node n = element.getFirstChild(); n != null; n = n.getNextSibling()) {
          if (n instanceof Element child) {
            read(child, style);
          }
        }
      }
      case "defs" -> {}
      default ->
          add(
              new Leaf(
                  element.getNodeName(), place, element.getTextContent(), shown(element, style)));
    }
  }

  private void add(Leaf leaf) {
    int last = leaves.size() - 1;
    if (last >= 0) {
      Leaf before = leaves.get(last);
      if (before.onlyFilled()
          && leaf.onlyDrawn()
          && before.name.equals(leaf.name)
          && before.place.equals(leaf.place)) {
        leaves.set(last, before.outlinedBy(leaf));
        return;
      }
    }
    leaves.add(leaf);
  }

  /** The properties that say something about this element. */
  private static Map<String, String> shown(Element element, Map<String, String> style) {
    boolean text = element.getNodeName().equals("text");
    boolean stroked = !"none".equals(style.get("stroke"));
    boolean filled = !"none".equals(style.get("fill"));
    Map<String, String> shown = new TreeMap<>(style);
    shown.entrySet().removeIf(e -> e.getValue().equals(INITIAL.get(e.getKey())));
    shown.keySet().removeIf(k -> !text && k.startsWith("font-"));
    shown.keySet().removeIf(k -> !stroked && STROKE_ONLY.contains(k));
    shown.keySet().removeIf(k -> !filled && k.startsWith("fill-"));
    boolean line = element.getNodeName().equals("line");
    if (line) {
      shown.remove("fill"); // it has no inside
    }
    if (line || "round".equals(shown.get("stroke-linejoin"))) {
      shown.remove("stroke-miterlimit"); // no pointed corner that it could cut
    }
    return shown;
  }

  private void writeLeaves(StringBuilder out) {
    for (int from = 0; from < leaves.size(); ) {
      Map<String, String> style = leaves.get(from).style;
      int to = from + 1;
      while (to < leaves.size() && leaves.get(to).style.equals(style)) {
        to++;
      }
      boolean run = to - from > 1;
      if (run) {
        out.append("<g");
        attributes(out, style);
        out.append(">");
      }
      for (Leaf leaf : leaves.subList(from, to)) {
        out.append('<').append(leaf.name);
        attributes(out, leaf.place);
        attributes(out, run ? Map.of() : style);
        if (leaf.words.isEmpty()) {
          out.append("/>");
        } else {
          out.append('>').append(escaped(leaf.words)).append("</").append(leaf.name).append(">");
        }
      }
      out.append(run ? "</g>" : "");
      from = to;
    }
  }

  private static void attributes(StringBuilder out, Map<String, String> values) {
    values.forEach(
        (k, v) -> out.append(' ').append(k).append("=\"").append(escaped(v)).append('"'));
  }

  /** The generator's {@code rgb(31,42,51)} as {@code #1f2a33}; any other value as it is. */
  private static String hex(String value) {
    if (!value.startsWith("rgb(")) {
      return value;
    }
    StringBuilder hex = new StringBuilder("#");
    for (String part : value.substring(4, value.length() - 1).split(",", -1)) {
      hex.append(HexFormat.of().toHexDigits((byte) Integer.parseInt(part)));
    }
    return hex.toString();
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }

  /** Ids come from the content, so that pictures on one page differ and the same input repeats. */
  private static String fingerprint(String content) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(content.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest, 0, 5);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
