package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import twostrides.checks.Printed;
import twostrides.exits.TrackedReleases;
import twostrides.exits.TrackedReleases.Release;
import twostrides.race.Regression.Case;
import twostrides.sheet.SheetException;

/**
 * Chances of gaining center guessed from what any sheet says against the chances that places and
 * speeds give, for real releases near center (open data). Each guess is made by a line fitted to
 * the other games only.
 */
class OpenSheetChanceTest {

  @RegisterExtension static final Printed FIGURES = new Printed();

  /** Releases of the shared games: the fitted numbers are theirs. */
  private static final int SHARED = 123;

  private static List<Case> cases;

  @BeforeAll
  static void read() throws IOException, SheetException {
    OpenTracked.need();
    cases = new ArrayList<>();
    for (Path folder : OpenTracked.folders()) {
      for (Release r : TrackedReleases.of(folder.resolve("native"), OpenTracked::level)) {
        if (r.gain().grade() == GainGrade.MEASURED && r.metresShort() <= SheetChance.FARTHEST) {
          double carried =
              Math.max(SheetChance.LEAST_CARRIED, Math.min(SheetChance.MOST_CARRIED, r.carried()));
          cases.add(
              Case.of(
                  r.game(),
                  r.gain().chance().p(),
                  r.metresShort(),
                  carried,
                  r.offMiddle(),
                  r.missedPass() ? 1 : 0));
        }
      }
    }
  }

  /** Log odds by the line of the other games. */
  private static double[] guesses(List<Case> list) {
    Map<String, LogisticLine> lines = Regression.leavingOut(list);
    return list.stream().mapToDouble(c -> c.at(lines.get(c.game()))).toArray();
  }

  /** The area where a measured chance counts as that share of a gained center. */
  private static double area(double[] guess) {
    double higher = 0;
    double pairs = 0;
    for (int i = 0; i < guess.length; i++) {
      for (int j = 0; j < guess.length; j++) {
        if (i != j) {
          double weight = cases.get(i).happened() * (1 - cases.get(j).happened());
          pairs += weight;
          higher += guess[i] > guess[j] ? weight : guess[i] == guess[j] ? weight / 2 : 0;
        }
      }
    }
    return higher / pairs;
  }

  /** How far the measured log odds lie from the guess. */
  private static double[] off(double[] guess) {
    double[] off = new double[guess.length];
    for (int i = 0; i < off.length; i++) {
      off[i] = Math.abs(LogisticLine.logOdds(cases.get(i).happened(), 0) - guess[i]);
    }
    return off;
  }

  private static double quantile(double[] values, double share) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[(int) Math.ceil(share * sorted.length) - 1];
  }

  @Test
  void theSheetOrdersAndNoMore() {
    double[] guess = guesses(cases);
    double[] byDistance =
        guesses(
            cases.stream()
                .map(c -> new Case(c.game(), c.x().subList(0, 1), c.happened()))
                .toList());
    double four = area(guess);
    FIGURES.say(
        "chance without places, at most %.0f m short: n %d, mean measured %.2f, area %.2f, by distance alone %.2f",
        SheetChance.FARTHEST,
        cases.size(),
        cases.stream().mapToDouble(Case::happened).average().orElseThrow(),
        four,
        area(byDistance));
    assertTrue(four >= 0.65, "orders no better than a coin: area " + four);
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < guess.length; i++) {
      order.add(i);
    }
    order.sort(Comparator.comparingDouble(i -> guess[i]));
    for (int third = 0; third < 3; third++) {
      List<Integer> some = order.subList(third * order.size() / 3, (third + 1) * order.size() / 3);
      double said = mean(some, i -> LogisticLine.chance(guess[i]));
      double measured = mean(some, i -> cases.get(i).happened());
      FIGURES.say(
          "  third %d: n %d, said %.2f, measured %.2f", third + 1, some.size(), said, measured);
      assertEquals(measured, said, 0.1, "third " + (third + 1));
    }
    double[] off = off(guess);
    double likely =
        Arrays.stream(off).filter(v -> v <= Fitted.SHEET_LIKELY).count() / (double) off.length;
    double band =
        Arrays.stream(off).filter(v -> v <= Fitted.SHEET_BAND).count() / (double) off.length;
    FIGURES.say("  the 68 %% band holds %.2f, the 95 %% band %.2f", likely, band);
    double about = LogisticLine.logOdds(0.55, 0);
    FIGURES.say(
        "  about a guess of 0.55 the 95 %% band runs from %.2f to %.2f",
        LogisticLine.chance(about - Fitted.SHEET_BAND),
        LogisticLine.chance(about + Fitted.SHEET_BAND));
    assertEquals(0.68, likely, 0.1, "68 % band");
    assertEquals(0.95, band, 0.04, "95 % band");
  }

  private static double mean(List<Integer> list, java.util.function.ToDoubleFunction<Integer> of) {
    return list.stream().mapToDouble(of).average().orElseThrow();
  }

  /** What is shipped is what these games give. */
  @Test
  void theShippedLineIsThatOfTheSharedGames() {
    LogisticLine line = Regression.fit(cases);
    double[] off = off(guesses(cases));
    FIGURES.say(
        "off for 68 %% of the releases %.2f, for 95 %% %.2f",
        quantile(off, 0.68), quantile(off, 0.95));
    if (cases.size() == SHARED) {
      Regression.same(FIGURES, "sheet", line, Fitted.SHEET, 5);
      assertEquals(quantile(off, 0.68), Fitted.SHEET_LIKELY, 0.005);
      assertEquals(quantile(off, 0.95), Fitted.SHEET_BAND, 0.005);
    }
  }
}
