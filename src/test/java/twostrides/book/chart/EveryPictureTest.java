package twostrides.book.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import twostrides.rink.Rink;

/** What holds for every picture of the book, whatever the names in it. */
class EveryPictureTest {

  /** Widths at which the narrowest place shows a form, pixels: a page of 390 has 368. */
  private static final double NARROWEST = 340;

  private static final double NARROWEST_WIDE = 690;

  private static final List<String> NAMES =
      List.of(
          "",
          " of the Long Upper Valley and its seven Lakes",
          "W".repeat(90),
          " </title></svg><script>alert(\"1\")</script> & 'O''Brandt'",
          " \u05E9\u05DC\u05D5\u05DD \u202E\u0645\u0631\u062D\u0628\u0627 \uD83C\uDFD2 \uD83C",
          " ]]> <!-- url(http://tarn.example/a.png) --> \u0000\u0008\uFFFF");

  private static final Map<String, Picture> USUAL = Gallery.pictures();

  static Stream<Picture> pictures() {
    return NAMES.stream().flatMap(n -> Gallery.pictures(n).values().stream());
  }

  static List<String> forms(Picture p) {
    return List.of(p.wide(), p.narrow(), p.svg());
  }

  @ParameterizedTest
  @MethodSource("pictures")
  void keepsEveryTextInsideAndApart(Picture picture) throws Exception {
    for (String form : forms(picture)) {
      SvgPage page = new SvgPage(form);
      Rectangle2D box = page.box();
      List<SvgPage.Text> texts = page.texts();
      for (SvgPage.Text t : texts) {
        Rectangle2D at = t.box();
        assertTrue(at.getMinX() >= box.getMinX() - 0.5, t + " begins left of " + box);
        assertTrue(at.getMaxX() <= box.getMaxX() + 0.5, t + " ends right of " + box);
        assertTrue(at.getMinY() >= box.getMinY() - 0.5, t + " begins above " + box);
        assertTrue(at.getMaxY() <= box.getMaxY() + 0.5, t + " ends below " + box);
      }
      for (int i = 0; i < texts.size(); i++) {
        for (int j = i + 1; j < texts.size(); j++) {
          Rectangle2D both = texts.get(i).box().createIntersection(texts.get(j).box());
          boolean overlap = both.getWidth() > 0.5 && both.getHeight() > 0.5;
          assertFalse(overlap, texts.get(i) + " lies on " + texts.get(j));
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("pictures")
  void hasTextOfElevenPixelsWhereItIsShownSmallest(Picture picture) throws Exception {
    for (SvgPage.Text t : new SvgPage(picture.wide()).texts()) {
      assertTrue(t.size() * NARROWEST_WIDE / Form.WIDE >= 11, t.words());
    }
    for (SvgPage.Text t : new SvgPage(picture.narrow()).texts()) {
      assertTrue(t.size() * NARROWEST / Form.NARROW >= 11, t.words());
    }
  }

  @ParameterizedTest
  @MethodSource("pictures")
  void isWellFormedAndSpeaks(Picture picture) throws Exception {
    for (String form : forms(picture)) {
      SvgPage page = new SvgPage(form);
      Element root = page.root();
      boolean leads = !page.all("a").isEmpty();
      assertEquals(leads ? "group" : "img", root.getAttribute("role"));
      Element title = page.all("title").get(0);
      Element words = page.all("desc").get(0);
      assertFalse(title.getTextContent().isBlank());
      assertFalse(words.getTextContent().isBlank());
      assertEquals(root.getAttribute("aria-labelledby"), title.getAttribute("id"));
      assertEquals(root.getAttribute("aria-describedby"), words.getAttribute("id"));
    }
  }

  @ParameterizedTest
  @MethodSource("pictures")
  void hasNothingThatRunsOrLoadsAndNoColour(Picture picture) throws Exception {
    for (String form : forms(picture)) {
      SvgPage page = new SvgPage(form);
      String marks = form.replaceAll("(?s)<style>.*</style>", "").replaceAll(">[^<]*<", "><");
      assertFalse(marks.contains("<script") || marks.contains("<!--"), marks);
      assertFalse(marks.contains("NaN") || marks.contains("Infinity"), marks);
      assertFalse(marks.contains("url(") || marks.contains("rgb(") || marks.contains("=\"#"));
      Set<String> known =
          Set.of(
              "svg", "title", "desc", "g", "a", "rect", "path", "circle", "line", "text", "style",
              "polygon");
      for (Element e : page.all("*")) {
        assertTrue(known.contains(e.getTagName()), e.getTagName());
        for (int i = 0; i < e.getAttributes().getLength(); i++) {
          assertFalse(e.getAttributes().item(i).getNodeName().startsWith("on"));
        }
      }
    }
    assertEquals(0, new SvgPage(picture.svg()).all("a").size(), "a file leads nowhere");
  }

  @Test
  void marksLeadSomewhereAndSayWhatTheyAre() throws Exception {
    for (Map.Entry<String, Picture> e : USUAL.entrySet()) {
      for (String form : List.of(e.getValue().wide(), e.getValue().narrow())) {
        List<Element> links = new SvgPage(form).all("a");
        assertTrue(e.getKey().equals("release") || !links.isEmpty(), e.getKey());
        for (Element a : links) {
          assertTrue(a.getAttribute("href").startsWith("clip.html#"), e.getKey());
          assertEquals("title", a.getFirstChild().getNodeName());
          assertFalse(a.getFirstChild().getTextContent().isBlank());
        }
      }
    }
    assertThrows(IllegalArgumentException.class, () -> Link.to(" JavaScript:alert(1)", "x"));
  }

  @Test
  void idsAreUniqueOnAPage() throws Exception {
    Set<String> ids = new HashSet<>();
    StringBuilder page = new StringBuilder();
    USUAL.values().forEach(p -> page.append(p.html()));
    Matcher m = Pattern.compile(" id=\"([^\"]*)\"").matcher(page);
    while (m.find()) {
      assertTrue(ids.add(m.group(1)), m.group(1));
    }
    assertEquals(4 * USUAL.size(), ids.size());
    assertThrows(
        IllegalArgumentException.class, () -> Gallery.who("").picture("\" onload=\"alert(1)"));
  }

  @Test
  void sameInputGivesTheSameBytesInEveryCountry() {
    Locale locale = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      Map<String, Picture> there = Gallery.pictures();
      for (Map.Entry<String, Picture> e : USUAL.entrySet()) {
        assertEquals(e.getValue().html(), there.get(e.getKey()).html());
        assertEquals(e.getValue().svg(), there.get(e.getKey()).svg());
      }
      for (String id : List.of("kills", "trend")) {
        assertArrayEquals(USUAL.get(id).png().get(), there.get(id).png().get());
      }
    } finally {
      Locale.setDefault(locale);
    }
  }

  @Test
  void pngIsTwiceTheFileAndNotEmpty() throws Exception {
    for (String id : List.of("kills", "release", "zones", "stack")) {
      Picture picture = USUAL.get(id);
      BufferedImage png = ImageIO.read(new ByteArrayInputStream(picture.png().get()));
      boolean chart = id.equals("stack");
      Element root = new SvgPage(picture.svg()).root();
      double width = chart ? Form.WIDE : SvgPage.number(root, "width");
      assertEquals(Raster.SCALE * width, png.getWidth(), 1);
      if (!chart) {
        assertEquals(Raster.SCALE * SvgPage.number(root, "height"), png.getHeight(), 2);
      }
      int paper = ChartSvg.colors().get("paper").getRGB();
      assertEquals(paper, png.getRGB(2, 2), id);
      long inked = 0;
      for (int x = 0; x < png.getWidth(); x += 3) {
        for (int y = 0; y < png.getHeight(); y += 3) {
          inked += png.getRGB(x, y) == paper ? 0 : 1;
        }
      }
      assertTrue(inked > 2000, id + " has " + inked);
    }
  }

  @Test
  void styleSheetHasEveryClassAndEveryColourInEveryTheme() throws Exception {
    String css = Picture.styles();
    Set<String> used = new TreeSet<>();
    for (Picture p : USUAL.values()) {
      for (Element e : new SvgPage(p.wide()).all("*")) {
        used.addAll(List.of(e.getAttribute("class").split(" ", -1)));
      }
    }
    used.remove("");
    for (String name : used) {
      assertTrue(css.matches("(?s).*\\." + name + "[ ,{.>].*"), "no look for " + name);
    }
    List<Set<String>> themes = new ArrayList<>();
    Matcher block = Pattern.compile("\\{([^{}]*--chart-ink:[^{}]*)\\}").matcher(css);
    while (block.find()) {
      Set<String> names = new TreeSet<>();
      Matcher m = Pattern.compile("(--chart-[a-z]+):").matcher(block.group(1));
      while (m.find()) {
        names.add(m.group(1));
      }
      themes.add(names);
    }
    assertEquals(4, themes.size());
    themes.forEach(t -> assertEquals(themes.get(0), t));
    assertFalse(Raster.light(css).contains("var("), "a colour without a value");
  }

  @Test
  void aThumbnailHasNoWordsAndNoLinks() throws Exception {
    SvgPage page = new SvgPage(Gallery.release(Rink.INTERNATIONAL).thumbnail("small"));
    assertEquals(0, page.all("text").size());
    assertEquals("img", page.root().getAttribute("role"));
    assertTrue(page.all("desc").get(0).getTextContent().startsWith("Let go 5.6 m"));
  }
}
