package twostrides.book.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import twostrides.rink.Lane;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.stats.Clustered;
import twostrides.stats.Count;

/** Marks stand where the data says, in both forms. */
class PlacesTest {

  private static final Link ROW = Link.to("rows.html", "row");

  private static List<SvgPage> forms(Picture p) throws Exception {
    return List.of(new SvgPage(p.wide()), new SvgPage(p.narrow()));
  }

  private static double n(Element e, String attribute) {
    return SvgPage.number(e, attribute);
  }

  @Test
  void barsOfAKillAreAsLongAsTheirSeconds() throws Exception {
    KillStrips.Kill longKill =
        new KillStrips.Kill(
            "P1 3:32",
            120,
            List.of(
                KillStrips.Event.clear(30, 72, ROW),
                KillStrips.Event.at(KillMark.ATTEMPT, 90, ROW),
                KillStrips.Event.at(KillMark.GOAL, 120, ROW)),
            ROW);
    KillStrips.Kill shortKill = new KillStrips.Kill("P2 1:00", 48, List.of(), ROW);
    KillStrips strips =
        new KillStrips(
            "Kills", List.of(new KillStrips.Game("Tarn Wolves", List.of(longKill, shortKill))));
    for (SvgPage page : forms(strips.picture("k"))) {
      Element whole = page.all("rect", "ground").get(0);
      double from = n(whole, "x");
      double second = n(whole, "width") / 120;
      assertEquals(48 * second, n(page.all("rect", "ground").get(1), "width"), 0.2);
      Element bar = page.all("rect", "bought").get(0);
      assertEquals(from + 30 * second, n(bar, "x"), 0.2);
      assertEquals(42 * second, n(bar, "width"), 0.2);
      assertEquals(from + 90 * second, n(page.all("line", "tick").get(0), "x1"), 0.2);
      assertEquals(from + 120 * second, n(page.all("circle", "trouble").get(0), "cx"), 0.2);
      double minute =
          page.texts().stream()
              .filter(t -> t.words().equals("1:00"))
              .findFirst()
              .orElseThrow()
              .box()
              .getCenterX();
      assertEquals(from + 60 * second, minute, 0.3);
    }
  }

  @Test
  void aKillLongerThanAMinorStretchesTheScale() throws Exception {
    KillStrips.Kill major = new KillStrips.Kill("P1 3:32", 300, List.of(), ROW);
    KillStrips strips =
        new KillStrips("Kills", List.of(new KillStrips.Game("Tarn Wolves", List.of(major))));
    SvgPage page = new SvgPage(strips.picture("k").narrow());
    Element whole = page.all("rect", "ground").get(0);
    assertTrue(n(whole, "x") + n(whole, "width") <= Form.NARROW);
    assertTrue(page.texts().stream().anyMatch(t -> t.words().equals("5:00")));
  }

  private static DotLines lines(Dot... dots) {
    List<DotLines.Row> rows = new ArrayList<>();
    for (Dot d : dots) {
      rows.add(new DotLines.Row("row " + rows.size(), List.of(d), "", ROW));
    }
    return new DotLines(
        "Lines",
        List.of(new DotLines.Group("", rows)),
        Optional.of(new Reference("team", 0.5, "5 of 10")),
        List.of(),
        true);
  }

  /** Pixels of a share, from the printed scale. */
  private static double at(SvgPage page, double share) {
    List<SvgPage.Text> ticks =
        page.texts().stream()
            .filter(
                t -> t.words().matches("\\d+ %") && t.box().getMinY() > page.box().getMaxY() - 25)
            .toList();
    SvgPage.Text first = ticks.get(0);
    SvgPage.Text last = ticks.get(ticks.size() - 1);
    double low = Integer.parseInt(first.words().replace(" %", "")) / 100.0;
    double high = Integer.parseInt(last.words().replace(" %", "")) / 100.0;
    double left = first.box().getCenterX();
    return left + (share - low) / (high - low) * (last.box().getCenterX() - left);
  }

  @Test
  void dotsStandAtKOfNWithTheirIntervals() throws Exception {
    Count most = new Count(30, 40);
    Count least = new Count(9, 30);
    DotLines lines = lines(Dot.of(most, Tone.GOOD), Dot.of(least, Tone.TROUBLE));
    for (SvgPage page : forms(lines.picture("d"))) {
      List<Element> dots = page.all("circle", "ink");
      List<Element> whiskers = page.all("line", "whisker");
      List<Element> volumes = page.all("rect", "volume");
      for (int i = 0; i < 2; i++) {
        Count c = List.of(most, least).get(i);
        assertEquals(at(page, c.share().orElseThrow()), n(dots.get(i), "cx"), 0.3);
        assertEquals(at(page, c.wilson().orElseThrow().low()), n(whiskers.get(i), "x1"), 0.3);
        assertEquals(at(page, c.wilson().orElseThrow().high()), n(whiskers.get(i), "x2"), 0.3);
      }
      assertEquals(at(page, 0.5), n(page.all("line", "reference").get(0), "x1"), 0.3);
      double ratio = n(volumes.get(1), "width") / n(volumes.get(0), "width");
      assertEquals(30 / 40.0, ratio, 0.01);
      List<String> words = page.texts().stream().map(SvgPage.Text::words).toList();
      assertTrue(
          words.containsAll(List.of("75 %", "30 of 40", "30 %", "9 of 30", "team 50 %, 5 of 10")));
    }
  }

  @Test
  void tooFewAreHollowWithoutIntervalAndSaidSo() throws Exception {
    DotLines lines =
        lines(Dot.of(new Count(30, 40), Tone.GOOD), Dot.of(new Count(5, 9), Tone.GOOD));
    for (SvgPage page : forms(lines.picture("d"))) {
      assertEquals(1, page.all("circle", "ink").size());
      assertEquals(1, page.all("circle", "hollow").size());
      assertEquals(1, page.all("line", "whisker").size());
      List<String> words = page.texts().stream().map(SvgPage.Text::words).toList();
      assertTrue(words.containsAll(List.of("few", "5 of 9")), words.toString());
    }
    assertTrue(lines.picture("d").description().contains("row 1: few (5 of 9)"));
    DotLines none = lines(Dot.of(new Count(0, 0), Tone.GOOD));
    SvgPage page = new SvgPage(none.picture("d").wide());
    assertEquals(0, page.all("circle").size());
    assertTrue(page.texts().stream().anyMatch(t -> t.words().equals("none")));
  }

  @Test
  void numbersSayFewToo() throws Exception {
    BigNumbers.Value value =
        BigNumbers.Value.share(
            "kills", new Clustered(new Count(3, 4)), new Span(0, 100), Optional.empty(), ROW);
    SvgPage page = new SvgPage(new BigNumbers("PK", List.of(value)).picture("n").wide());
    assertEquals(1, page.all("circle", "hollow").size());
    assertEquals(0, page.all("line", "whisker").size());
    assertTrue(page.texts().stream().anyMatch(t -> t.words().equals("few")));
    assertTrue(page.texts().stream().anyMatch(t -> t.words().equals("kills: 3 of 4")));
  }

  @Test
  void aNumberStandsOnItsAxis() throws Exception {
    for (SvgPage page : forms(Gallery.numbers("").picture("n"))) {
      Element axis = page.all("rect", "volume").get(2);
      double second = n(axis, "width") / 35;
      Element dot = page.all("circle", "ink").get(2);
      assertEquals(n(axis, "x") + 15 * second, n(dot, "cx"), 0.2);
      Element whisker = page.all("line", "whisker").get(2);
      assertEquals(6 * second, n(whisker, "x2") - n(whisker, "x1"), 0.2);
    }
  }

  @Test
  void barsAreAsLongAsTheirValues() throws Exception {
    for (SvgPage page : forms(Gallery.cost("").picture("c"))) {
      double icing = n(page.all("rect", "trouble").get(0), "width");
      double exit = n(page.all("rect", "bought").get(0), "width");
      assertEquals(0.47 / 0.20, icing / exit, 0.01);
      assertEquals(1, page.all("rect", "doubtful").size());
    }
  }

  @Test
  void marksLieWhereThePucksWereAndGoUpTheNarrowForm() throws Exception {
    Rink rink = Rink.NORTH_AMERICAN;
    HalfRink map =
        new HalfRink(
            "Map",
            rink,
            "Two pucks.",
            List.of(),
            List.of(
                new HalfRink.Mark(new Place(-10, 0), MarkKind.ICED, ROW),
                new HalfRink.Mark(new Place(-20, 6), MarkKind.ICED, ROW)));
    List<SvgPage> pages = forms(map.picture("m"));
    List<Element> wide = pages.get(0).all("circle", "trouble");
    double scale = 500 / (rink.length() / 2 + 0.8);
    assertEquals(10 * scale, n(wide.get(0), "cx") - n(wide.get(1), "cx"), 0.3);
    assertEquals(6 * scale, n(wide.get(0), "cy") - n(wide.get(1), "cy"), 0.3);
    List<Element> narrow = pages.get(1).all("circle", "trouble");
    assertTrue(n(narrow.get(0), "cy") < n(narrow.get(1), "cy"), "nearer to center is higher");
    assertTrue(n(narrow.get(1), "cx") < n(narrow.get(0), "cx"), "left of the attack is left");
  }

  @Test
  void zonesAreShadedByTheirShareAndFewAreNot() throws Exception {
    ZoneCell worst = ZoneCell.of(new Place(-25, 10), Rink.INTERNATIONAL);
    assertEquals(new ZoneCell(ZoneCell.Depth.BEHIND_THE_DOTS, Lane.LEFT), worst);
    assertEquals(
        new ZoneCell(ZoneCell.Depth.LAST_STRIDES, Lane.RIGHT),
        ZoneCell.of(new Place(0, -14), Rink.INTERNATIONAL));
    ZoneCell half = new ZoneCell(ZoneCell.Depth.DOTS_TO_BLUE_LINE, Lane.MIDDLE);
    ZoneCell few = new ZoneCell(ZoneCell.Depth.BLUE_LINE_ON, Lane.RIGHT);
    HalfRink zones =
        new HalfRink(
            "Zones",
            Rink.INTERNATIONAL,
            "Iced of sent.",
            List.of(
                new HalfRink.Zone(worst, new Count(10, 50), Optional.empty()),
                new HalfRink.Zone(half, new Count(5, 50), Optional.empty()),
                new HalfRink.Zone(few, new Count(1, 5), Optional.empty())),
            List.of(new HalfRink.Mark(new Place(-14, 0), MarkKind.FLAGGED, ROW)));
    for (SvgPage page : forms(zones.picture("z"))) {
      List<Double> shades =
          page.all("g").stream()
              .filter(g -> g.hasAttribute("fill-opacity"))
              .map(g -> n(g, "fill-opacity"))
              .toList();
      assertEquals(List.of(0.52, 0.28, 0.04), shades);
      List<String> words = page.texts().stream().map(SvgPage.Text::words).toList();
      assertTrue(words.containsAll(List.of("20 %", "10 of 50", "few", "1 of 5")), words.toString());
    }
  }

  @Test
  void aTrendStandsAtItsShares() throws Exception {
    for (SvgPage page : forms(Gallery.trend("").picture("t"))) {
      List<SvgPage.Text> texts = page.texts();
      List<Double> grid =
          page.all("line").stream()
              .filter(l -> n(l, "x2") - n(l, "x1") > 100)
              .map(l -> n(l, "y1"))
              .sorted()
              .toList();
      double top = grid.get(0);
      double bottom = grid.get(4);
      List<Double> dots =
          page.all("path").stream()
              .map(p -> Double.parseDouble(p.getAttribute("d").split(" ", -1)[1]))
              .toList();
      List<Double> shares = List.of(9 / 31.0, 5 / 36.0, 3 / 7.0);
      for (double share : shares) {
        double y = bottom + share * (top - bottom);
        assertTrue(dots.stream().anyMatch(d -> Math.abs(d - y) < 0.2), share + " is not at " + y);
      }
      assertTrue(texts.stream().anyMatch(t -> t.words().strip().equals("few")));
      assertTrue(texts.stream().anyMatch(t -> t.words().equals("3 of 7")));
    }
  }

  @Test
  void partsOfAStackAreAsLongAsTheirAttempts() throws Exception {
    SvgPage page = new SvgPage(Gallery.stack("").picture("s").wide());
    List<Double> widths =
        page.all("rect").stream()
            .filter(r -> !r.hasAttribute("class") && n(r, "height") > 20)
            .map(r -> n(r, "width"))
            .toList();
    assertTrue(widths.size() >= 6, widths.toString());
    double attempt = widths.stream().mapToDouble(w -> w).max().orElseThrow() / 41;
    for (int attempts : List.of(37, 14, 19, 12)) {
      assertTrue(
          widths.stream().anyMatch(w -> Math.abs(w - attempts * attempt) < 0.5),
          attempts + " of " + widths);
    }
  }
}
