package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import twostrides.checks.Printed;
import twostrides.race.Regression.Score;
import twostrides.stats.Forecast;

/**
 * Who is first to a puck that was sent away or missed: the race of the skaters whose places and
 * speeds were known when it was let go, to the place where it was reached, against who got there
 * (open data). The head start is fitted to the other games only.
 */
class OpenFirstTest {

  @RegisterExtension static final Printed FIGURES = new Printed();

  private static final SkaterSettings AGAINST_A_CARRIER = SkaterLevel.ELITE_MEN.settings();
  private static final SkaterSettings TO_THE_PUCK = AGAINST_A_CARRIER.toPuck();

  /** Pucks of the shared games: the fitted numbers are theirs. */
  private static final int SHARED = 311;

  private static List<Loose> pucks;

  /** A loose puck, and when everybody can be where it was reached, in the order of the racers. */
  private record Loose(
      String game, boolean pass, boolean ownFirst, double x, double y, List<Racer> racers) {

    double chance(SkaterSettings legs, double headStart) {
      return Arrival.teamFirst(
          arrivals(true, legs, headStart), arrivals(false, legs, 0), legs.sigma());
    }

    private double[] arrivals(boolean own, SkaterSettings legs, double behind) {
      return racers.stream()
          .filter(r -> r.chases() == own)
          .mapToDouble(r -> behind + legs.skater().timeTo(x - r.x(), y - r.y(), r.vx(), r.vy()))
          .toArray();
    }
  }

  @BeforeAll
  static void read() throws IOException {
    OpenTracked.need();
    pucks = new ArrayList<>();
    for (OpenTracked.Joined j :
        OpenTracked.joined("loose_pucks.csv", "loose_pucks_racers.csv", "puck")) {
      CSVRecord r = j.row();
      pucks.add(
          new Loose(
              r.get("game"),
              r.get("kind").equals("pass"),
              r.get("first").equals("own"),
              OpenTracked.number(r, "reached_x_m"),
              OpenTracked.number(r, "reached_y_m"),
              j.others().stream().map(s -> OpenTracked.sighting(s).racer()).toList()));
    }
  }

  private static Score score(String what, List<Loose> list, ToDoubleFunction<Loose> said) {
    return Regression.score(
        FIGURES,
        what,
        list.stream().map(p -> new Forecast(said.applyAsDouble(p), p.ownFirst())).toList(),
        1);
  }

  /** The head start that makes what happened most likely, by golden section, and its error. */
  private static double[] headStart(List<Loose> list) {
    double low = -0.5;
    double high = 1;
    double share = (Math.sqrt(5) - 1) / 2;
    while (high - low > 1e-4) {
      double a = high - share * (high - low);
      double b = low + share * (high - low);
      if (loss(list, a) < loss(list, b)) {
        high = b;
      } else {
        low = a;
      }
    }
    double best = (low + high) / 2;
    double step = 0.05;
    double bend =
        (loss(list, best + step) - 2 * loss(list, best) + loss(list, best - step)) / (step * step);
    return new double[] {best, 1 / Math.sqrt(bend)};
  }

  private static double loss(List<Loose> list, double headStart) {
    return list.stream()
        .mapToDouble(
            p -> {
              double own = p.chance(TO_THE_PUCK, headStart);
              double held = Math.max(Fitted.HOLD, Math.min(1 - Fitted.HOLD, own));
              return -Math.log(p.ownFirst() ? held : 1 - held);
            })
        .sum();
  }

  @Test
  void whoIsFirst() {
    Map<String, double[]> others = new LinkedHashMap<>();
    for (String game : pucks.stream().map(Loose::game).distinct().toList()) {
      double[] of = new double[2];
      for (boolean pass : new boolean[] {false, true}) {
        of[pass ? 1 : 0] =
            headStart(
                pucks.stream().filter(p -> !p.game().equals(game) && p.pass() == pass).toList())[0];
      }
      others.put(game, of);
    }
    FIGURES.say(
        "head start by the other games, sent and passes: %s",
        others.values().stream()
            .map(both -> String.format(Locale.ROOT, "%.2f and %.2f s", both[0], both[1]))
            .collect(Collectors.joining(", ")));
    score(
        "first, reach 1.5 m, error 0.30 s",
        pucks,
        p -> p.chance(AGAINST_A_CARRIER.withSigma(0.3), 0));
    score("first, reach 1.0 m, error 0.60 s", pucks, p -> p.chance(TO_THE_PUCK, 0));
    Score all =
        score(
            "first, with the head start of the other games",
            pucks,
            p -> p.chance(TO_THE_PUCK, others.get(p.game())[p.pass() ? 1 : 0]));
    for (boolean pass : new boolean[] {false, true}) {
      score(
          "  " + (pass ? "passes" : "sent") + ", as shipped",
          pucks.stream().filter(p -> p.pass() == pass).toList(),
          p -> p.chance(TO_THE_PUCK, shipped(p)));
    }
    assertTrue(all.worst() <= 0.05, "a bin is off by " + all.worst());
    assertTrue(all.ofBase() <= 0.8, "Brier as a share of the base rate's " + all.ofBase());
  }

  private static double shipped(Loose p) {
    return (p.pass() ? Delivery.MISSED_PASS : Delivery.SENT).headStart();
  }

  /** What is shipped is what these games give. */
  @Test
  void theShippedHeadStartIsThatOfTheSharedGames() {
    double[] sent = headStart(pucks.stream().filter(p -> !p.pass()).toList());
    double[] passes = headStart(pucks.stream().filter(Loose::pass).toList());
    FIGURES.say(
        "head start of the other team: sent %.2f s (error %.2f), passes %.2f s (error %.2f), shipped"
            + " as %.2f s",
        sent[0], sent[1], passes[0], passes[1], Fitted.HEAD_START);
    if (pucks.size() == SHARED) {
      assertEquals(passes[0], Fitted.HEAD_START, 0.0055);
      assertEquals(passes[1], Fitted.HEAD_START_ERROR, 0.005);
      assertTrue(Math.abs(sent[0]) < 2 * sent[1], "sent pucks have a head start after all");
    }
  }
}
