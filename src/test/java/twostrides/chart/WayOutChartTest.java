package twostrides.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static twostrides.chart.Profiles.way;

import java.awt.Color;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import twostrides.findings.Profile;
import twostrides.findings.ShownWay;
import twostrides.game.Strength;

class WayOutChartTest {

  /** Pixels from the upper edge: the bars lie below, the legend above. */
  private static final double BELOW_LEGEND = 90;

  @Test
  void aPlayersChartSaysCountsBesideNames() throws Exception {
    List<String> texts = texts(Profiles.player());
    assertEquals("14 Ida Falk", texts.get(0));
    assertEquals("98 exit attempts; all ways together: 12 of 96 iced (13 %).", texts.get(1));
    for (String expected :
        List.of(
            "iced",
            "not iced",
            "ending not in the sheet",
            "carried, released short",
            "7 of 31 iced (23 %)",
            "2 of 6, too few to say",
            "0 of 22 iced (0 %)",
            "+2 unknown",
            "shorthanded",
            "exit attempts")) {
      assertTrue(texts.contains(expected), expected + " in " + texts);
    }
    assertEquals(2, Collections.frequency(texts, "none"), "chip and missed pass");
  }

  @Test
  void withoutAttemptsEveryMainWaySaysNone() throws Exception {
    List<String> texts = texts(Profiles.EMPTY);
    assertEquals("No exit attempts in these sheets.", texts.get(1));
    assertEquals(7, Collections.frequency(texts, "none"));
    assertEquals(0, bars(Profiles.EMPTY, Theme.BOOK.bar()).size());
  }

  @Test
  void oneAttemptIsAShortBarOfARestart() throws Exception {
    assertEquals(
        "1 exit attempt; all ways together: 1 of 1, too few to say.", texts(Profiles.one()).get(1));
    List<Element> restarts = bars(Profiles.one(), Theme.BOOK.restart());
    assertEquals(1, restarts.size());
    assertTrue(length(restarts.get(0)) < 60, "one attempt in " + length(restarts.get(0)) + " px");
  }

  @Test
  void barsAreAsLongAsTheirCounts() throws Exception {
    Profile profile =
        Profiles.counts(
            way(ShownWay.PASS, Strength.EVEN, 50, 150, 200),
            way(ShownWay.CHIP, Strength.EVEN, 20, 40, 40));
    List<Element> restarts = bars(profile, Theme.BOOK.restart());
    List<Element> others = bars(profile, Theme.BOOK.bar());
    double pixelsEach = length(restarts.get(0)) / 50;
    assertEquals(20 * pixelsEach, length(restarts.get(1)), 0.1);
    assertEquals(100 * pixelsEach, length(others.get(0)), 0.1);
    assertEquals(20 * pixelsEach, length(others.get(1)), 0.1);
    assertEquals(50 * pixelsEach, length(bars(profile, Color.WHITE).get(0)), 0.1);
    assertEquals(left(restarts.get(0)) + length(restarts.get(0)), left(others.get(0)), 0.05);
  }

  @Test
  void oneRestartOfHundredsIsStillSeen() throws Exception {
    Profile profile = Profiles.counts(way(ShownWay.PASS, Strength.EVEN, 1, 900, 900));
    assertTrue(length(bars(profile, Theme.BOOK.restart()).get(0)) >= 3);
  }

  @Test
  void restartsAreStripedAsWell() throws Exception {
    long stripes =
        new SvgReader(WayOutChart.of("", Profiles.player()))
            .all("path").stream()
                .filter(p -> SvgReader.style(p, "stroke-width").equals("1.6"))
                .filter(p -> !p.getAttribute("d").startsWith("M18 "))
                .count();
    assertEquals(bars(Profiles.player(), Theme.BOOK.restart()).size(), stripes);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 10, 13, 47, 200, 1999})
  void ticksAreWholeAttempts(int attempts) throws Exception {
    List<Integer> ticks =
        texts(Profiles.counts(way(ShownWay.PASS, Strength.EVEN, 0, attempts, attempts))).stream()
            .filter(t -> t.matches("[0-9]+"))
            .map(Integer::valueOf)
            .toList();
    assertEquals(0, ticks.get(0));
    assertTrue(ticks.size() >= 3 && ticks.size() <= 7, ticks.toString());
    assertTrue(ticks.get(ticks.size() - 1) * 2 > attempts, ticks.toString());
  }

  @Test
  void coloursComeFromTheTheme() throws Exception {
    Theme grey =
        new Theme(
            Color.BLACK,
            Color.DARK_GRAY,
            Color.LIGHT_GRAY,
            new Color(0xEEEEEE),
            new Color(0x777777));
    String svg = WayOutChart.of("14 Ida Falk", Profiles.player(), grey).svg();
    assertTrue(svg.contains("#777777") && !svg.contains("#d55e00"));
  }

  @Test
  void theDescriptionTellsEveryRow() throws Exception {
    String description =
        new SvgReader(WayOutChart.of("14 Ida Falk", Profiles.player()))
            .all("desc")
            .get(0)
            .getTextContent();
    assertTrue(
        description.contains("long clearance, shorthanded: 0 of 11 iced (0 %); missed pass: none;"),
        description);
  }

  private static List<String> texts(Profile profile) throws Exception {
    return new SvgReader(WayOutChart.of("14 Ida Falk", profile)).texts();
  }

  private static List<Element> bars(Profile profile, Color color) throws Exception {
    String fill =
        color.equals(Color.WHITE)
            ? "white"
            : String.format(Locale.ROOT, "#%06x", color.getRGB() & 0xFFFFFF);
    return new SvgReader(WayOutChart.of("", profile))
        .all("rect").stream()
            .filter(
                r ->
                    SvgReader.style(r, "fill").equals(fill)
                        && Double.parseDouble(r.getAttribute("y")) > BELOW_LEGEND)
            .toList();
  }

  private static double left(Element bar) {
    return Double.parseDouble(bar.getAttribute("x"));
  }

  private static double length(Element bar) {
    return Double.parseDouble(bar.getAttribute("width"));
  }
}
