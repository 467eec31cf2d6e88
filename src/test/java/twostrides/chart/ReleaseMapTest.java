package twostrides.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Point2D;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import twostrides.findings.Mark;
import twostrides.findings.MarkOutcome;
import twostrides.findings.Profile;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.stats.Count;

class ReleaseMapTest {

  private static final String VERMILLION = "#d55e00";

  @Test
  void theLegendCountsEveryOutcome() throws Exception {
    List<Mark> marks =
        List.of(
            new Mark(new Place(-3, 1), MarkOutcome.ICED),
            new Mark(new Place(-3, 2), MarkOutcome.OWN_NEXT),
            new Mark(new Place(-4, 3), MarkOutcome.ICED));
    List<String> texts = texts(new Profile(List.of(), marks, new Count(2, 3)));
    assertEquals("n = 3 releases short of center; red line at the right", texts.get(1));
    for (String expected :
        List.of("iced (2)", "other own-zone restart (0)", "own team had it next (1)")) {
      assertTrue(texts.contains(expected), expected + " in " + texts);
    }
  }

  @Test
  void releasesWithoutAPlaceAreCountedInWords() throws Exception {
    Profile profile =
        new Profile(
            List.of(), List.of(new Mark(new Place(-3, 1), MarkOutcome.ICED)), new Count(2, 6));
    assertEquals(
        "n = 6 releases short of center, 1 of them with a place in these sheets; red line at the right",
        texts(profile).get(1));
    assertTrue(
        texts(new Profile(List.of(), List.of(), new Count(2, 6)))
            .contains("these sheets do not say where"));
  }

  @Test
  void withoutReleasesTheRinkSaysSo() throws Exception {
    assertTrue(texts(Profiles.EMPTY).contains("no releases short of center in these sheets"));
    assertEquals(1, inColour(map(Profiles.EMPTY), VERMILLION).size(), "the legend's own mark");
  }

  @Test
  void icedReleasesAreDrawnLast() throws Exception {
    List<Mark> marks =
        List.of(
            new Mark(new Place(-8, 1), MarkOutcome.ICED),
            new Mark(new Place(-8, 1), MarkOutcome.STOPPED),
            new Mark(new Place(-8, 1), MarkOutcome.OPPONENT_NEXT));
    List<String> colours =
        shapes(map(new Profile(List.of(), marks, new Count(1, 3)))).stream()
            .map(e -> SvgReader.style(e, "fill"))
            .toList();
    assertEquals(List.of("#b4bbc0", "#0072b2", VERMILLION), colours.subList(0, 3));
  }

  @Test
  void everyOutcomeHasAShapeAndAColourOfItsOwn() throws Exception {
    List<Element> legend = shapes(map(Profiles.EMPTY));
    Set<String> colours = new HashSet<>();
    Set<String> forms = new HashSet<>();
    for (Element e : legend) {
      colours.add(SvgReader.style(e, "fill"));
      String points = e.getAttribute("points") + e.getAttribute("d");
      forms.add(e.getNodeName() + points.split("[ ,]+", -1).length);
    }
    assertEquals(MarkOutcome.values().length, legend.size());
    assertEquals(MarkOutcome.values().length, colours.size());
    assertEquals(MarkOutcome.values().length, forms.size(), forms.toString());
  }

  @Test
  void theRinkKeepsItsProportionsAndLiesTheRightWayRound() {
    RinkDrawing ice = new RinkDrawing(Rink.NORTH_AMERICAN, 10, 20, 12, 30.48);
    assertEquals(200.0 / 85, ice.width() / ice.height(), 1e-9);
    assertEquals(new Point2D.Double(10 + 30.48 * 12, 20 + ice.height() / 2), ice.at(0, 0));
    assertTrue(ice.at(-26, 0).getX() < ice.at(-3, 0).getX(), "attack to the right");
    assertTrue(ice.at(-3, 5).getY() < ice.at(-3, -5).getY(), "left hand is up");
  }

  @Test
  void aPlaceOutsideTheIceIsDrawnAtItsEdge() {
    RinkDrawing ice = new RinkDrawing(Rink.INTERNATIONAL, 0, 0, 10, 2);
    assertEquals(ice.at(-30, 15), ice.at(-40, 99));
    assertEquals(ice.at(2, -15), ice.at(11, -16));
  }

  @Test
  void theWholeRinkHasTwoBlueLines() throws Exception {
    assertEquals(1, blueLines(map(Profiles.EMPTY)));
    assertEquals(2, blueLines(ReleaseMap.ofWholeRink("", Profiles.EMPTY, Rink.NORTH_AMERICAN)));
  }

  private static long blueLines(Picture picture) throws Exception {
    return new SvgReader(picture)
        .all("rect").stream().filter(r -> SvgReader.style(r, "fill").equals("#bccbe2")).count();
  }

  private static Picture map(Profile profile) {
    return ReleaseMap.of("14 Ida Falk", profile, Rink.NORTH_AMERICAN);
  }

  private static List<String> texts(Profile profile) throws Exception {
    return new SvgReader(map(profile)).texts();
  }

  private static List<Element> inColour(Picture picture, String fill) throws Exception {
    return shapes(picture).stream().filter(e -> SvgReader.style(e, "fill").equals(fill)).toList();
  }

  /** The marks in the order drawn: everything that is filled and lets something through. */
  private static List<Element> shapes(Picture picture) throws Exception {
    SvgReader svg = new SvgReader(picture);
    return svg.all("*").stream()
        .filter(e -> Arrays.asList("path", "circle", "rect", "polygon").contains(e.getNodeName()))
        .filter(e -> !SvgReader.style(e, "fill-opacity").isEmpty())
        .toList();
  }
}
