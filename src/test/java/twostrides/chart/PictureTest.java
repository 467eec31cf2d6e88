package twostrides.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import twostrides.findings.Profile;
import twostrides.rink.Rink;

/** What holds for every picture, whatever the counts and names. */
class PictureTest {

  private static final List<String> TITLES =
      List.of(
          "14 Ida Falk",
          "",
          "</title></svg><script>alert(\"1\")</script> & 'O''Brandt'",
          "\u05E9\u05DC\u05D5\u05DD \u202E\u0645\u0631\u062D\u0628\u0627 \uD83C\uDFD2 \uD83C",
          "Glasswater-on-the-Long-Lake Herons of the Upper Valley ".repeat(12),
          "x".repeat(5000),
          "]]> <!-- url(http://tarn.example/a.png) --> \u0000\u0008\uFFFF");

  private static final List<Profile> PROFILES =
      List.of(
          Profiles.EMPTY, Profiles.one(), Profiles.player(), Profiles.team(10), Profiles.team(200));

  private static final List<Picture> EVERY_PICTURE =
      Stream.concat(
              TITLES.stream().map(t -> pictures(t, Profiles.player())),
              PROFILES.stream().map(p -> pictures("14 Ida Falk", p)))
          .flatMap(List::stream)
          .toList();

  static List<Picture> everyPicture() {
    return EVERY_PICTURE;
  }

  private static List<Picture> pictures(String title, Profile profile) {
    return List.of(
        WayOutChart.of(title, profile),
        HabitChart.of(title, Profiles.habit(profile.attempts())),
        ReleaseMap.of(title, profile, Rink.NORTH_AMERICAN),
        ReleaseMap.of(title, profile, Rink.INTERNATIONAL),
        ReleaseMap.ofWholeRink(title, profile, Rink.INTERNATIONAL));
  }

  @ParameterizedTest
  @MethodSource("everyPicture")
  void isAWellFormedElementThatScalesAndSpeaks(Picture picture) throws Exception {
    assertTrue(picture.svg().startsWith("<svg "));
    SvgReader svg = new SvgReader(picture);
    Element root = svg.root();
    assertEquals("0 0 " + picture.width() + " " + picture.height(), root.getAttribute("viewBox"));
    assertEquals("100%", root.getAttribute("width"));
    assertEquals("img", root.getAttribute("role"));
    Element title = svg.all("title").get(0);
    Element description = svg.all("desc").get(0);
    assertFalse(title.getTextContent().isBlank());
    assertFalse(description.getTextContent().isBlank());
    assertEquals(root.getAttribute("aria-labelledby"), title.getAttribute("id"));
    assertEquals(root.getAttribute("aria-describedby"), description.getAttribute("id"));
  }

  @ParameterizedTest
  @MethodSource("everyPicture")
  void hasNothingThatRunsOrLoads(Picture picture) throws Exception {
    SvgReader svg = new SvgReader(picture);
    assertEquals(
        0,
        svg.count(
            "//*[not(contains(' svg title desc g rect path circle polygon line text ellipse ',"
                + " concat(' ', local-name(), ' ')))]"));
    assertEquals(0, svg.count("//@*[starts-with(name(), 'on') or contains(name(), 'href')]"));
    assertEquals(0, svg.count("//@*[contains(., 'url(') or contains(., 'http')]"));
    assertEquals(2, svg.count("//@id"));
    assertFalse(picture.svg().contains("<!--"));
    assertFalse(picture.svg().contains("NaN"));
  }

  @ParameterizedTest
  @MethodSource("everyPicture")
  void keepsEveryTextInsideTheCard(Picture picture) throws Exception {
    for (Element text : new SvgReader(picture).all("text")) {
      String size = SvgReader.style(text, "font-size").replace("px", "");
      int points = Integer.parseInt(size);
      boolean bold = SvgReader.style(text, "font-weight").equals("bold");
      String words = text.getTextContent();
      double width =
          Lettering.width(bold ? Lettering.bold(points) : Lettering.plain(points), words);
      double left = Double.parseDouble(text.getAttribute("x"));
      assertTrue(left >= 10, words);
      assertTrue(left + width <= picture.width() - 4, words + " ends at " + (left + width));
      assertTrue(Double.parseDouble(text.getAttribute("y")) <= picture.height() - 6, words);
    }
  }

  @Test
  void pngIsTheSamePictureTwiceAsLarge() throws Exception {
    for (Picture picture : pictures("14 Ida Falk", Profiles.player())) {
      BufferedImage png = SvgReader.png(picture);
      assertEquals(Easel.pixels(picture.width()), png.getWidth());
      assertEquals(Easel.pixels(picture.height()), png.getHeight());
      int white = 0;
      for (int x = 0; x < png.getWidth(); x++) {
        white += (png.getRGB(x, 90) & 0xFFFFFF) == 0xFFFFFF ? 1 : 0;
      }
      assertTrue(white < png.getWidth() && white > png.getWidth() / 2, "title on a white card");
    }
  }

  @Test
  void sameInputGivesTheSameBytesInEveryCountry() {
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    List<Picture> here = pictures("14 Ida Falk", Profiles.team(200));
    try {
      for (String tag : List.of("tr-TR", "ar-EG-u-nu-arab", "de-DE")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Apia"));
        List<Picture> there = pictures("14 Ida Falk", Profiles.team(200));
        for (int i = 0; i < here.size(); i++) {
          assertEquals(here.get(i).svg(), there.get(i).svg());
        }
        assertArrayEquals(here.get(0).png().get(), there.get(0).png().get());
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  @Test
  void manyThreadsDrawTheSame() {
    String alone = WayOutChart.of("14 Ida Falk", Profiles.team(200)).svg();
    List<String> together =
        Stream.generate(() -> "14 Ida Falk")
            .limit(16)
            .parallel()
            .map(t -> WayOutChart.of(t, Profiles.team(200)).svg())
            .toList();
    assertEquals(List.of(alone), together.stream().distinct().toList());
  }

  @Test
  void picturesOnOnePageHaveIdsOfTheirOwn() throws Exception {
    List<Picture> page = pictures("14 Ida Falk", Profiles.player());
    assertNotEquals(id(page.get(0)), id(page.get(1)));
    assertNotEquals(id(page.get(1)), id(page.get(2)));
    assertNotEquals(
        id(WayOutChart.of("A", Profiles.EMPTY)), id(WayOutChart.of("B", Profiles.EMPTY)));
  }

  private static String id(Picture picture) throws Exception {
    return new SvgReader(picture).all("title").get(0).getAttribute("id");
  }

  @Test
  void aPlayersPicturesStaySmall() {
    for (Picture picture : pictures("14 Ida Falk, Glasswater Herons", Profiles.player())) {
      assertTrue(picture.svg().length() < 25_000, picture.svg().length() + " characters");
    }
  }

  @Test
  void whatAPageCannotInlineIsRejected() {
    assertThrows(
        IllegalArgumentException.class,
        () -> new Picture("", "<?xml version=\"1.0\"?><svg/>", 8, 8, () -> new byte[0]));
    assertThrows(
        IllegalArgumentException.class, () -> new Picture("", "<svg/>", 0, 8, () -> new byte[0]));
  }
}
