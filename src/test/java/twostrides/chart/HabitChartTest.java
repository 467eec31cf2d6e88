package twostrides.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import twostrides.findings.Habit;
import twostrides.stats.Count;

class HabitChartTest {

  /** Nine games: 3 of 12, then 6 of 10, then too few. */
  private static final Habit HABIT =
      Habit.of(
          List.of(
              new Count(1, 4),
              new Count(2, 4),
              new Count(0, 4),
              new Count(3, 5),
              new Count(3, 5),
              new Count(0, 0),
              new Count(1, 3),
              new Count(0, 3),
              new Count(0, 3)));

  private static SvgReader svg(Habit habit) throws Exception {
    return new SvgReader(HabitChart.of("14 Ida Falk", habit));
  }

  @Test
  void everyThirdSaysItsGamesItsCountsAndItsShare() throws Exception {
    List<String> texts = svg(HABIT).texts();
    for (String expected :
        List.of(
            "games 1 to 3",
            "3 of 12",
            "25 %",
            "games 4 to 6",
            "6 of 10",
            "60 %",
            "games 7 to 9",
            "1 of 9",
            "too few to say")) {
      assertTrue(texts.contains(expected), expected + " in " + texts);
    }
    assertTrue(texts.get(1).startsWith("Of pucks carried or passed out: 10 of 31 (32 %);"));
  }

  /** Wilson 95 %: 3 of 12 is 8.9 to 53.2 %, 6 of 10 is 31.3 to 83.2 % (worked by hand). */
  @Test
  void dotsAndBarsStandWhereTheirSharesAre() throws Exception {
    SvgReader svg = svg(HABIT);
    List<Element> dots = svg.all("circle");
    assertEquals(2, dots.size(), "no dot where there are too few");
    List<Element> scale =
        svg.all("line").stream()
            .filter(l -> number(l, "y1") == number(l, "y2"))
            .filter(l -> number(l, "x2") - number(l, "x1") > 200)
            .toList();
    double zero = scale.stream().mapToDouble(l -> number(l, "y1")).max().orElseThrow();
    double full = scale.stream().mapToDouble(l -> number(l, "y1")).min().orElseThrow();
    double pixels = zero - full;
    assertEquals(zero - 0.25 * pixels, number(dots.get(0), "cy"), 0.2);
    assertEquals(zero - 0.60 * pixels, number(dots.get(1), "cy"), 0.2);
    List<Element> bars =
        svg.all("line").stream()
            .filter(l -> number(l, "x1") == number(l, "x2") && number(l, "x1") > 80)
            .toList();
    assertEquals(2, bars.size());
    assertEquals(zero - 0.532 * pixels, end(bars.get(0), false), 0.4);
    assertEquals(zero - 0.089 * pixels, end(bars.get(0), true), 0.4);
    assertEquals(zero - 0.832 * pixels, end(bars.get(1), false), 0.4);
    assertEquals(zero - 0.313 * pixels, end(bars.get(1), true), 0.4);
  }

  private static double number(Element e, String attribute) {
    return Double.parseDouble(e.getAttribute(attribute));
  }

  private static double end(Element line, boolean lower) {
    double one = number(line, "y1");
    double other = number(line, "y2");
    return lower ? Math.max(one, other) : Math.min(one, other);
  }

  @Test
  void theDescriptionTellsEveryThird() throws Exception {
    assertEquals(
        "Of pucks carried or passed out: 10 of 31 (32 %); over the games "
            + HABIT.trend().direction().word()
            + ". games 1 to 3: 3 of 12 (25 %, 95 % interval 9 to 53 %); games 4 to 6: 6 of 10 (60"
            + " %, 95 % interval 31 to 83 %); games 7 to 9: 1 of 9, too few to say.",
        svg(HABIT).all("desc").get(0).getTextContent());
  }

  @Test
  void oneGameAndNoneAreSaid() throws Exception {
    assertTrue(svg(Habit.of(List.of(new Count(1, 2)))).texts().contains("games 1 to 1"));
    assertTrue(svg(Habit.of(new ArrayList<>())).texts().contains("No exit attempt of the team."));
  }
}
