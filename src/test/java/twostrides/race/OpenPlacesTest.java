package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Predicate;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import twostrides.checks.Printed;
import twostrides.race.Regression.Case;
import twostrides.race.Regression.Score;
import twostrides.rink.Rink;
import twostrides.stats.Forecast;

/**
 * Chances of gaining center against what became of real carriers who kept on (open data): measured
 * from places and speeds, from places alone, and from places clicked twice with an error. Each
 * chance is put right by a line fitted to the other games only.
 */
class OpenPlacesTest {

  @RegisterExtension static final Printed FIGURES = new Printed();

  private static final SkaterSettings LEGS = SkaterLevel.ELITE_MEN.settings();

  /** Simulations of a race in which places or speeds are not exact. */
  private static final int DRAWS = 200;

  /** How often each carrier is clicked. */
  private static final int ROUNDS = 4;

  /** Carriers of the shared games who kept on: the fitted numbers are theirs. */
  private static final int SHARED = 296;

  private static List<Kept> kept;

  /** Who kept on, and everybody about him. */
  private record Kept(
      String id, String game, String zone, boolean gained, Sighting carrier, List<Sighting> them) {

    MeasuredGain race(double clickError) {
      return new MeasuredGain(
          Rink.INTERNATIONAL,
          off(carrier, clickError),
          them.stream().map(s -> off(s, clickError)).toList(),
          LEGS);
    }

    private static Sighting off(Sighting s, double clickError) {
      return new Sighting(s.racer(), s.speedKnown(), clickError);
    }

    GainChance chance(double clickError, LogisticLine line) {
      return race(clickError).run(new SeededRandom(1, id), DRAWS, line);
    }

    Case fitted(double clickError) {
      double raw = chance(clickError, Fitted.MEASURED).raw();
      return Case.of(game, gained ? 1 : 0, race(clickError).places(raw));
    }

    /** The same with speeds hidden. */
    Kept still() {
      return new Kept(
          id,
          game,
          zone,
          gained,
          new Sighting(carrier.racer(), false),
          them.stream().map(s -> new Sighting(s.racer(), false)).toList());
    }

    /** The same as two clicks on the video would have it. */
    Kept clicked(double error, Random random) {
      return new Kept(
          id,
          game,
          zone,
          gained,
          clicked(carrier, error, random),
          them.stream().map(s -> clicked(s, error, random)).toList());
    }

    private static Sighting clicked(Sighting s, double error, Random random) {
      Racer r = s.racer();
      double dx = error * random.nextGaussian();
      double dy = error * random.nextGaussian();
      double vx = r.vx() + (error * random.nextGaussian() - dx) / MeasuredGain.CLICKS_APART;
      double vy = r.vy() + (error * random.nextGaussian() - dy) / MeasuredGain.CLICKS_APART;
      double over = Math.max(1, Math.hypot(vx, vy) / (Racer.FASTEST - 0.1));
      return new Sighting(
          new Racer(r.chases(), r.x() + dx, r.y() + dy, vx / over, vy / over), s.speedKnown());
    }
  }

  @BeforeAll
  static void read() throws IOException {
    OpenTracked.need();
    kept = new ArrayList<>();
    for (OpenTracked.Joined j :
        OpenTracked.joined("carriers.csv", "carriers_skaters.csv", "carrier")) {
      CSVRecord r = j.row();
      String outcome = r.get("outcome");
      if (!outcome.equals("gained") && !outcome.equals("lost")) {
        continue;
      }
      double x = OpenTracked.number(r, "puck_x_m");
      double y = OpenTracked.number(r, "puck_y_m");
      Sighting carrier = new Sighting(new Racer(true, x, y, 0, 0), false);
      List<Sighting> them = new ArrayList<>();
      for (CSVRecord s : j.others()) {
        Sighting seen = OpenTracked.sighting(s);
        if (s.get("side").equals("carrier")) {
          Racer c = seen.racer();
          carrier = new Sighting(new Racer(true, x, y, c.vx(), c.vy()), seen.speedKnown());
        } else if (!seen.racer().chases()) {
          them.add(seen);
        }
      }
      kept.add(
          new Kept(
              r.get("game") + "#" + r.get("carrier"),
              r.get("game"),
              r.get("zone"),
              outcome.equals("gained"),
              carrier,
              them));
    }
    kept.sort(Comparator.comparing(Kept::game));
  }

  private static List<Kept> measurable() {
    return kept.stream()
        .filter(k -> k.chance(0, Fitted.MEASURED).grade() == GainGrade.MEASURED)
        .toList();
  }

  private record Said(Kept kept, double p) {
    Forecast forecast() {
      return new Forecast(p, kept.gained());
    }
  }

  private static Score score(String what, List<Said> said, Predicate<Kept> of) {
    List<Said> some = said.stream().filter(s -> of.test(s.kept())).toList();
    long cases = some.stream().map(s -> s.kept().id()).distinct().count();
    return Regression.score(
        FIGURES, what, some.stream().map(Said::forecast).toList(), (int) (some.size() / cases));
  }

  /** Holds chances to the bars, which a coin and the base rate fail. */
  private static void hold(String what, List<Said> said, double off, double most) {
    Score all = score(what, said, k -> true);
    assertTrue(all.worst() <= off, what + ": a bin is off by " + all.worst());
    for (String zone : List.of("own_zone", "neutral")) {
      Score s = score(what + ", " + zone, said, k -> k.zone().equals(zone));
      assertTrue(
          s.ofBase() <= most, what + ", " + zone + ": Brier as a share of the base " + s.ofBase());
    }
  }

  @Test
  void placesAndSpeeds() {
    List<Kept> measurable = measurable();
    Map<String, LogisticLine> lines =
        Regression.leavingOut(measurable.stream().map(k -> k.fitted(0)).toList());
    SkaterSettings sharper = LEGS.withSigma(0.3);
    score(
        "race by exact places, error 0.30 s",
        said(
            measurable,
            k ->
                new MeasuredGain(Rink.INTERNATIONAL, k.carrier(), k.them(), sharper, 0)
                    .run(new SeededRandom(1, k.id()), DRAWS)
                    .raw()),
        k -> true);
    score("race alone", said(measurable, k -> k.chance(0, Fitted.MEASURED).raw()), k -> true);
    hold(
        "measured, by the other games",
        said(measurable, k -> k.chance(0, lines.get(k.game())).chance().p()),
        0.05,
        0.8);
    score(
        "measured, as shipped",
        said(measurable, k -> k.chance(0, Fitted.MEASURED).chance().p()),
        k -> true);
    // What a flag would be: six in ten or more.
    List<Said> high =
        said(measurable, k -> k.chance(0, lines.get(k.game())).chance().p()).stream()
            .filter(s -> s.p() >= 0.6)
            .toList();
    double right = high.stream().filter(s -> s.kept().gained()).count() / (double) high.size();
    FIGURES.say("said .60 or more: n %d, gained %.2f", high.size(), right);
    assertTrue(right >= 0.8, "of chances of .60 or more only " + right + " gained");
  }

  @Test
  void placesAlone() {
    List<Kept> still = kept.stream().map(Kept::still).toList();
    Map<String, LogisticLine> lines =
        Regression.leavingOut(still.stream().map(k -> k.fitted(0)).toList());
    hold(
        "places alone, by the other games",
        said(still, k -> k.chance(0, lines.get(k.game())).chance().p()),
        0.05,
        0.9);
  }

  private static List<Kept> clicked(double error) {
    Random random = new Random(20311004);
    List<Kept> clicked = new ArrayList<>();
    for (int round = 0; round < ROUNDS; round++) {
      measurable().forEach(k -> clicked.add(k.clicked(error, random)));
    }
    return clicked;
  }

  @Test
  void clickedPlaces() {
    Map<String, LogisticLine> lines =
        Regression.leavingOut(measurable().stream().map(k -> k.fitted(0)).toList());
    for (double error : new double[] {0.5, 1}) {
      List<Kept> clicked = clicked(error);
      score(
          "clicked with an error of " + error + " m, taken for tracked",
          said(clicked, k -> k.chance(0, lines.get(k.game())).chance().p()),
          k -> true);
      hold(
          "clicked with an error of " + error + " m, four times each",
          said(clicked, k -> k.chance(error, lines.get(k.game())).chance().p()),
          0.08,
          0.8);
    }
  }

  private static List<Said> said(List<Kept> list, java.util.function.ToDoubleFunction<Kept> p) {
    return list.parallelStream().map(k -> new Said(k, p.applyAsDouble(k))).toList();
  }

  /** What is shipped is what these games give. */
  @Test
  void theShippedLinesAreThoseOfTheSharedGames() throws IOException {
    List<Case> measured = measurable().stream().map(k -> k.fitted(0)).toList();
    List<Case> still = kept.stream().map(Kept::still).map(k -> k.fitted(0)).toList();
    long gained = kept.stream().filter(Kept::gained).count();
    FIGURES.say(
        "carriers who kept on: %d, %d gained center, %d lost the puck; measurable %d",
        still.size(), gained, kept.size() - gained, measured.size());
    LogisticLine moving = Regression.fit(measured);
    LogisticLine standing = Regression.fit(still);
    if (still.size() == SHARED) {
      Regression.same(FIGURES, "measured", moving, Fitted.MEASURED, 3);
      Regression.same(FIGURES, "places only", standing, Fitted.PLACES_ONLY, 3);
    }
  }
}
