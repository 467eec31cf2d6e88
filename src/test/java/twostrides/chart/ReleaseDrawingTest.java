package twostrides.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import twostrides.rink.Rink;

/** The drawing of one release: what it says and shows. */
class ReleaseDrawingTest {

  private static final String GAP =
      "28.8 m (94.5 ft) short of the red line, 5.8 s away at 5.0 m/s (assumed)";
  private static final String SPREAD =
      "Band: where 10 to 90 % of the draws pass, with nobody in the way; dashed: the middle one."
          + " Bracket: how far 10 to 90 % get. 40 % pass their goal line.";

  private static ReleaseSketch sketch(List<ReleaseSketch.SketchedSkater> skaters, double high) {
    return new ReleaseSketch(
        -12,
        4,
        GAP,
        SPREAD,
        skaters,
        List.of(
            new ReleaseSketch.Row(-12, 4, 4, 4),
            new ReleaseSketch.Row(0, 1, 3, 5),
            new ReleaseSketch.Row(20, -5, 1, 7)),
        new ReleaseSketch.Reach(8, high));
  }

  private static final List<ReleaseSketch.SketchedSkater> TWO =
      List.of(
          new ReleaseSketch.SketchedSkater(true, -15, 2, 5, 0),
          new ReleaseSketch.SketchedSkater(false, 3, 5, -4, 0));

  @Test
  void hasAViewBoxAndATextAlternative() throws Exception {
    for (Rink rink : List.of(Rink.NORTH_AMERICAN, Rink.INTERNATIONAL)) {
      Picture picture = ReleaseDrawing.of(sketch(TWO, 25), rink);
      SvgReader svg = new SvgReader(picture);
      Element root = svg.root();
      assertEquals("0 0 " + picture.width() + " " + picture.height(), root.getAttribute("viewBox"));
      assertEquals("img", root.getAttribute("role"));
      Element title = svg.all("title").get(0);
      Element words = svg.all("desc").get(0);
      assertEquals(root.getAttribute("aria-labelledby"), title.getAttribute("id"));
      assertEquals(root.getAttribute("aria-describedby"), words.getAttribute("id"));
      assertTrue(words.getTextContent().startsWith(GAP), words.getTextContent());
      assertTrue(words.getTextContent().contains("10 to 90 %"));
      assertFalse(picture.svg().contains("NaN"));
      assertEquals(0, svg.count("//@*[contains(., 'url(')]"));
    }
  }

  @Test
  void keepsItsWordsOnTheCard() throws Exception {
    Picture picture = ReleaseDrawing.of(sketch(TWO, 25), Rink.INTERNATIONAL);
    List<Element> texts = new SvgReader(picture).all("text");
    assertEquals(6, texts.size());
    for (Element text : texts) {
      int points = Integer.parseInt(SvgReader.style(text, "font-size").replace("px", ""));
      boolean bold = SvgReader.style(text, "font-weight").equals("bold");
      String words = text.getTextContent();
      assertFalse(words.endsWith("\u2026"), words);
      double width =
          Lettering.width(bold ? Lettering.bold(points) : Lettering.plain(points), words);
      double left = Double.parseDouble(text.getAttribute("x"));
      assertTrue(left >= 10 && left + width <= picture.width() - 4, words);
      assertTrue(Double.parseDouble(text.getAttribute("y")) <= picture.height() - 6, words);
    }
  }

  /** Own skaters are rings and opponents crosses: shapes tell them apart, not colours. */
  @Test
  void skatersDifferInShape() throws Exception {
    SvgReader none = new SvgReader(ReleaseDrawing.of(sketch(List.of(), 25), Rink.NORTH_AMERICAN));
    SvgReader own =
        new SvgReader(ReleaseDrawing.of(sketch(TWO.subList(0, 1), 25), Rink.NORTH_AMERICAN));
    SvgReader both = new SvgReader(ReleaseDrawing.of(sketch(TWO, 25), Rink.NORTH_AMERICAN));
    assertEquals(none.all("circle").size() + 1, own.all("circle").size());
    assertEquals(own.all("circle").size(), both.all("circle").size());
    assertEquals(none.all("line").size() + 1, own.all("line").size());
    assertEquals(own.all("line").size() + 3, both.all("line").size());
    assertTrue(none.texts().stream().noneMatch(t -> t.contains("crosses")));
    assertTrue(String.join(" ", both.texts()).contains("crosses: opponents"));
  }

  /** In grey the band is darker than the ice and paler than the release. */
  @Test
  void holdsInBlackAndWhite() throws Exception {
    Picture picture = ReleaseDrawing.of(sketch(List.of(), 25), Rink.NORTH_AMERICAN);
    BufferedImage png = SvgReader.png(picture);
    double scale = (picture.width() - 2.0 * Headline.MARGIN) / Rink.NORTH_AMERICAN.length();
    double ice = grey(png, scale, 12, -9);
    double band = grey(png, scale, 12, 0);
    double dot = grey(png, scale, -12, 4);
    assertTrue(ice - band > 25, ice + " and " + band);
    assertTrue(band - dot > 60, band + " and " + dot);
  }

  private static double grey(BufferedImage png, double scale, double x, double y) {
    double px = Headline.MARGIN + (x + Rink.NORTH_AMERICAN.length() / 2) * scale;
    double py = Headline.MARGIN + 20 + (Rink.NORTH_AMERICAN.width() / 2 - y) * scale;
    int rgb =
        png.getRGB((int) Math.round(px * Easel.PNG_SCALE), (int) Math.round(py * Easel.PNG_SCALE));
    return 0.299 * (rgb >> 16 & 255) + 0.587 * (rgb >> 8 & 255) + 0.114 * (rgb & 255);
  }

  @Test
  void theBracketIsLeftOutWhereAllGetAsFar() throws Exception {
    int with =
        new SvgReader(ReleaseDrawing.of(sketch(List.of(), 25), Rink.NORTH_AMERICAN))
            .all("line")
            .size();
    int without =
        new SvgReader(ReleaseDrawing.of(sketch(List.of(), 8), Rink.NORTH_AMERICAN))
            .all("line")
            .size();
    assertEquals(with - 3, without);
  }

  @Test
  void theSameSketchGivesTheSameBytesInEveryCountry() {
    Picture here = ReleaseDrawing.of(sketch(TWO, 25), Rink.NORTH_AMERICAN);
    Locale locale = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      Picture there = ReleaseDrawing.of(sketch(TWO, 25), Rink.NORTH_AMERICAN);
      assertEquals(here.svg(), there.svg());
      assertArrayEquals(here.png().get(), there.png().get());
    } finally {
      Locale.setDefault(locale);
    }
  }
}
