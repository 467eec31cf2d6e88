package twostrides.book.chart;

import java.util.function.ToDoubleFunction;

/**
 * One form of a picture: what is drawn, without the element around it.
 *
 * @param body SVG shapes and texts
 * @param width pixels of the view box
 * @param height pixels of the view box
 */
record Form(String body, int width, int height) {

  /**
   * Pixels of a wide form. Its smallest text is 12 pixels, so that it is 11 where the form is shown
   * at 690 pixels; a tablet held upright and a printed page have more.
   */
  static final int WIDE = 740;

  /** Pixels of a narrow form: a telephone of 390 pixels less the page's margins. */
  static final int NARROW = 366;

  /** Pixels of a form for paper. */
  static final int PAPER = 240;

  /** Pixels of a mark that stands alone. */
  static final int MARK = 18;

  /** Pixels around a picture that stands alone. */
  static final int MARGIN = 20;

  /** Draws one form; the drawing gives the pixels of its height. */
  static Form of(int width, ToDoubleFunction<Sketch> drawing) {
    Sketch sketch = new Sketch(width);
    int height = (int) Math.ceil(drawing.applyAsDouble(sketch));
    return new Form(sketch.body(), width, height);
  }

  /** Whether a mark leads somewhere. */
  private boolean leads() {
    return body.contains("<a href");
  }

  /**
   * The element for a page. A picture whose marks lead somewhere is a group, because what is inside
   * an image cannot be reached by keyboard or screen reader.
   *
   * @param caption what it says
   * @param name of the form, a class of the style sheet and part of its ids
   */
  String inline(Caption caption, String name) {
    String id = caption.id() + "-" + name;
    return element(leads() ? "group" : "img", "chart " + name, "0 0 " + width + " " + height, id)
        + said(caption, id)
        + body
        + "</svg>\n";
  }

  /** The element with its title, to stand in a figure of a page to be printed: leads nowhere. */
  String paper(Caption caption) {
    return "<div class=\"paper\">"
        + new Form(still(body), width, height).inline(caption, "paper")
        + "</div>\n";
  }

  /** A mark beside words of the page, which say what it is. */
  String sign() {
    return ("<svg class=\"chart sign\" aria-hidden=\"true\" viewBox=\"0 0 " + width + " " + height)
        + ("\">" + still(body) + "</svg>");
  }

  /**
   * The text of a file of its own: with its title, on paper, with its styles, leading nowhere.
   *
   * @param caption what it says
   * @param styles text of the style sheet
   */
  String standAlone(Caption caption, String styles) {
    Sketch head = new Sketch(width);
    double next =
        head.lines(Type.TITLE, Lettering.lines(caption.title(), Type.TITLE, width, 2), 0, 0);
    double top = next + MARGIN;
    double wide = width + 2.0 * MARGIN;
    double tall = height + top + 1.5 * MARGIN;
    String box = -MARGIN + " " + Sketch.number(-top - MARGIN / 2.0) + " " + size(wide, tall, " ");
    Sketch paper = new Sketch(WIDE);
    paper.rect("paper", -MARGIN, -top - MARGIN, wide, tall + MARGIN);
    String sized = box + "\" width=\"" + size(wide, tall, "\" height=\"");
    return element("img", "chart", sized, caption.id())
        + said(caption, caption.id())
        + ("<style>" + styles + "</style>")
        + paper.body()
        + ("<g transform=\"translate(0," + Sketch.number(-next) + ")\">" + head.body() + "</g>\n")
        + still(body)
        + "</svg>\n";
  }

  /** A drawing whose marks lead nowhere and say nothing: for paper and for a file of its own. */
  private static String still(String drawn) {
    return drawn.replaceAll(
        "<a href=\"[^\"]*\"><title>[^<]*</title>|</a>|<rect class=\"hit\"[^>]*/>", "");
  }

  private static String size(double width, double height, String between) {
    return Sketch.number(width) + between + Sketch.number(height);
  }

  private static String element(String role, String css, String box, String id) {
    return ("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"" + css + "\" viewBox=\"" + box)
        + ("\" role=\"" + role + "\" aria-labelledby=\"" + id + "-t\" aria-describedby=\"")
        + (id + "-d\">");
  }

  private static String said(Caption caption, String id) {
    return ("<title id=\"" + id + "-t\">" + Lettering.escaped(caption.title()) + "</title>")
        + ("<desc id=\"" + id + "-d\">" + Lettering.escaped(caption.description()))
        + "</desc>\n";
  }
}
