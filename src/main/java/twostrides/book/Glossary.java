package twostrides.book;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.Heading;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * The meanings of the numbers, from docs/numbers.md, which is part of the program: an id for each
 * heading, its first line for a table heading, and the whole as a page.
 */
public final class Glossary {

  private static final Node DOCUMENT =
      Parser.builder().build().parse(ReviewBook.resource("numbers.md"));

  private static final Map<String, String> BRIEF = briefs();

  private Glossary() {}

  /**
   * The id of a term on the page of numbers.
   *
   * @param term as in docs/numbers.md, small letters and hyphens
   * @throws IllegalArgumentException when docs/numbers.md does not define it
   */
  public static String id(String term) {
    brief(term);
    return term;
  }

  /**
   * The first line of a term's definition.
   *
   * @param term as in docs/numbers.md, small letters and hyphens
   */
  public static String brief(String term) {
    String brief = BRIEF.get(term);
    if (brief == null) {
      throw new IllegalArgumentException("docs/numbers.md does not define " + term);
    }
    return brief;
  }

  /** All terms, in the order of the page. */
  public static Set<String> terms() {
    return BRIEF.keySet();
  }

  /**
   * The whole as HTML, without the title. Links to other guides, which no book holds, are words.
   */
  static String html() {
    HtmlRenderer renderer =
        HtmlRenderer.builder()
            .escapeHtml(true)
            .attributeProviderFactory(
                context ->
                    (node, tag, attributes) -> {
                      if (node instanceof Heading) {
                        attributes.put("id", slug(text(node)));
                      }
                    })
            .build();
    Node copy = Parser.builder().build().parse(ReviewBook.resource("numbers.md"));
    copy.getFirstChild().unlink();
    copy.accept(
        new AbstractVisitor() {
          @Override
          public void visit(Link link) {
            Text words = new Text(text(link));
            link.insertAfter(words);
            link.unlink();
          }
        });
    return renderer.render(copy);
  }

  private static Map<String, String> briefs() {
    Map<String, String> briefs = new LinkedHashMap<>();
    for (Node n = DOCUMENT.getFirstChild(); n != null; n = n.getNext()) {
      if (n instanceof Heading h && n.getNext() instanceof Paragraph p) {
        briefs.put(slug(text(h)), List.of(text(p).split("\n", 2)).get(0));
      }
    }
    return briefs;
  }

  private static String slug(String words) {
    return words.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
  }

  private static String text(Node node) {
    StringBuilder out = new StringBuilder();
    node.accept(
        new AbstractVisitor() {
          @Override
          public void visit(Text t) {
            out.append(t.getLiteral());
          }

          @Override
          public void visit(Code c) {
            out.append(c.getLiteral());
          }

          @Override
          public void visit(SoftLineBreak b) {
            out.append('\n');
          }
        });
    return out.toString();
  }
}
