package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import twostrides.race.puck.Ice;
import twostrides.rink.Rink;
import twostrides.rulebook.Bookshelf;
import twostrides.rulebook.RaceQuestion;

/** Other ways out: closed forms where there are any, else what must hold whatever the numbers. */
class WaysOutTest {

  private static final int DRAWS = 2000;
  private static final Rink NHL = Rink.NORTH_AMERICAN;
  private static final Optional<RaceQuestion> HYBRID = Bookshelf.book("hybrid").raceQuestion();
  private static final NormalDistribution NORMAL = new NormalDistribution();

  /** An opponent who is never near a puck that dies. */
  private static final List<Racer> NOBODY_NEAR = List.of(new Racer(false, 20, -11, 0, 0));

  private static Scene scene(double x, double y, OptionalDouble target, List<Racer> racers) {
    return new Scene(NHL, x, y, Delivery.SENT, target, racers, SkaterSet.of(SkaterLevel.ELITE_MEN));
  }

  private static WhatIf what(Scene scene, String pressure, boolean canBeIcing) {
    return new WhatIf(
        scene,
        OptionalDouble.empty(),
        HYBRID,
        canBeIcing,
        Assumptions.losses(pressure, 0, 0),
        true);
  }

  private static WaysOut run(WhatIf what) {
    return WaysOut.of(what, new SeededRandom(3, "whatif"), DRAWS);
  }

  private static WayOutcome outcome(WaysOut ways, Way way) {
    return ways.outcome(way).orElseThrow();
  }

  private static List<Racer> racers(Random dice) {
    List<Racer> all = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      double x = i % 2 == 0 ? -15 + 12 * dice.nextDouble() : -4 + 20 * dice.nextDouble();
      double y = -11 + 22 * dice.nextDouble();
      double vx = 6 * dice.nextDouble();
      all.add(new Racer(i % 2 == 0, x, y, vx, -3 + 6 * dice.nextDouble()));
    }
    return all;
  }

  private static List<Racer> mirrored(List<Racer> racers) {
    return racers.stream().map(r -> new Racer(r.chases(), r.x(), -r.y(), r.vx(), -r.vy())).toList();
  }

  @Test
  void releasingNowIsTheRaceHeldToWhatWasCounted() {
    for (double x : new double[] {-27, -12, -4, -0.5}) {
      Scene s = scene(x, 5, OptionalDouble.empty(), List.of());
      RaceChances race = new RaceModel(s, HYBRID).run(new SeededRandom(3, "whatif"), DRAWS);
      WaysOut ways = run(what(s, "light", true));
      assertEquals(race, ways.release());
      double share = Math.min(1, Fitted.SENT_ICED.share().orElseThrow() / race.pIcing());
      Estimate restart = outcome(ways, Way.RELEASE_NOW).restart();
      assertEquals(share * race.pIcing(), restart.value(), 1e-12);
      assertEquals(share * race.error(race.icing()), restart.error(), 1e-12);
      assertEquals(restart.value(), ways.icing().p(), 1e-12);
    }
  }

  @Test
  void theSameDrawsGiveTheSameAnswerOnAnyThread() {
    Scene s = scene(-8, -3, OptionalDouble.empty(), List.of());
    WaysOut once = run(what(s, "heavy", true));
    List<WaysOut> many =
        IntStream.range(0, 4).parallel().mapToObj(i -> run(what(s, "heavy", true))).toList();
    many.forEach(w -> assertEquals(once, w));
  }

  @Test
  void theMirroredReleaseHasTheSameChances() {
    Random dice = new Random(5);
    for (int i = 0; i < 6; i++) {
      double x = -25 + 24 * dice.nextDouble();
      double y = 10 * dice.nextDouble();
      double target = -8 + 16 * dice.nextDouble();
      List<Racer> there = racers(dice);
      WaysOut one = run(what(scene(x, y, OptionalDouble.of(target), there), "light", true));
      WaysOut other =
          run(what(scene(x, -y, OptionalDouble.of(-target), mirrored(there)), "light", true));
      assertEquals(one.release(), other.release());
      for (WayOutcome o : one.outcomes()) {
        WayOutcome m = outcome(other, o.way());
        if (o.way() == Way.CHIP || o.way() == Way.SOFTER) {
          assertEquals(o.meant().value(), m.meant().value(), 1e-12, o.way().words());
          assertEquals(o.price().value(), m.price().value(), 1e-12, o.way().words());
        }
      }
    }
    for (double y : new double[] {2, 7, 11}) {
      WaysOut one = run(what(scene(-9, y, OptionalDouble.empty(), List.of()), "light", true));
      WaysOut other = run(what(scene(-9, -y, OptionalDouble.empty(), List.of()), "light", true));
      for (WayOutcome o : one.outcomes()) {
        near(o.meant(), outcome(other, o.way()).meant(), o.way());
        near(o.restart(), outcome(other, o.way()).restart(), o.way());
        near(o.lost(), outcome(other, o.way()).lost(), o.way());
        near(o.goal(), outcome(other, o.way()).goal(), o.way());
      }
    }
  }

  /** Within three of the difference's own errors. */
  private static void near(Estimate a, Estimate b, Way way) {
    double allowed = 3 * Math.hypot(a.error(), b.error()) + 1e-9;
    assertEquals(a.value(), b.value(), allowed, way.words());
  }

  @Test
  void pricesAreTheAssumedNumbersTimesTheChances() {
    WaysOut ways = run(what(scene(-15, 4, OptionalDouble.empty(), List.of()), "light", true));
    assertEquals(6, ways.outcomes().size());
    double now = outcome(ways, Way.RELEASE_NOW).price().value();
    for (WayOutcome o : ways.outcomes()) {
      double price =
          Assumptions.ATTEMPTS_AFTER_RESTART.value() * o.restart().value()
              + Assumptions.ATTEMPTS_AFTER_LOSS.value() * o.lost().value();
      assertEquals(price, o.price().value(), 1e-9, o.way().words());
      assertEquals(now - price, o.saves().value(), 1e-9, o.way().words());
      assertTrue(ways.cheapest().price().value() <= price + 1e-12 || o.way().shot());
    }
  }

  @Test
  void morePressureNeverHelpsAndAnExemptionTakesTheIcingAway() {
    Scene s = scene(-15, 4, OptionalDouble.empty(), List.of());
    double before = 1;
    for (String pressure : List.of("none", "light", "heavy")) {
      WaysOut ways = run(what(s, pressure, true));
      assertTrue(ways.gain().p() < before, pressure);
      assertEquals(ways.gain().p(), outcome(ways, Way.CENTER_FIRST).meant().value(), 1e-9);
      before = ways.gain().p();
    }
    WaysOut exempt = run(what(s, "none", false));
    assertEquals(0, outcome(exempt, Way.RELEASE_NOW).restart().value());
    assertEquals(0, outcome(exempt, Way.SHOOT_NOW).restart().value());
    assertTrue(exempt.release().icing() > 0);
  }

  /**
   * Stopping distance D = ln(1 + k v^2 / (mu g)) / (2 k), the standard integral of dv/dt = -(mu g +
   * k v^2), with mu 0.10, k 0.0053 per metre and g 9.80665 m/s2.
   */
  @Test
  void softSpeedsStopAtTheLines() {
    SoftSpeeds s = SoftSpeeds.of(NHL, -20, 0, 0);
    double r = Rink.PUCK_RADIUS;
    double blue = NHL.blueLineNeutralEdge();
    assertEquals(20 - blue + r, stop(s.leavesZone().orElseThrow()), 1e-4);
    assertEquals(20 - NHL.redLineHalfWidth() - r, stop(s.redLine()), 1e-4);
    assertEquals(20 + blue + NHL.blueLineWidth() + r, stop(s.farBlueLine()), 1e-4);
    assertEquals(20 + NHL.goalLine() + NHL.goalLineWidth() / 2 + r, stop(s.goalLine()), 1e-4);
    assertTrue(SoftSpeeds.of(NHL, -3, 0, 0).leavesZone().isEmpty());
  }

  private static double stop(double v) {
    double k = Ice.ORDINARY.drag();
    return Math.log1p(k * v * v / Ice.ORDINARY.deceleration()) / (2 * k);
  }

  /** The aim is the middle of the distances; the chance to hit is that of a normal error. */
  @Test
  void aSofterReleaseHitsAsOftenAsTheErrorOfSpeedLets() {
    for (double x : new double[] {-24, -12, -3}) {
      SoftSpeeds s = SoftSpeeds.of(NHL, x, 9, 0);
      double k = Ice.ORDINARY.drag();
      double middle = Math.sqrt(stop(s.farBlueLine()) * stop(s.goalLine()));
      double aim = Math.sqrt(Math.expm1(2 * k * middle) * Ice.ORDINARY.deceleration() / k);
      double hit = within(s.farBlueLine() / aim - 1, s.goalLine() / aim - 1, 0.08);
      WayOutcome o =
          outcome(
              run(what(scene(x, 9, OptionalDouble.empty(), NOBODY_NEAR), "", true)), Way.SOFTER);
      assertEquals(hit, o.meant().value(), 4 * o.meant().error() + 0.01, "from " + x);
      assertTrue(o.meant().error() < 0.012);
    }
  }

  /** Half the mouth of the net seen from the release, against a normal angle of 2 degrees. */
  @Test
  void aShotHitsAsOftenAsTheErrorOfDirectionLets() {
    for (double x : new double[] {-20, -5}) {
      double half = Math.toDegrees(Math.atan(NHL.goalWidth() / 2 / (NHL.goalLine() - x)));
      List<Racer> away = List.of(new Racer(false, -28, -8, 0, 0));
      WayOutcome o =
          outcome(run(what(scene(x, 0, OptionalDouble.empty(), away), "", true)), Way.SHOOT_NOW);
      assertEquals(within(-half, half, 2), o.goal().value(), 3 * o.goal().error() + 0.01);
      assertEquals(1, o.goal().value() + o.restart().value(), 0.01, "a miss is icing");
    }
  }

  private static double within(double low, double high, double sd) {
    return NORMAL.cumulativeProbability(high / sd) - NORMAL.cumulativeProbability(low / sd);
  }

  @Test
  void aChipNearAnOpponentIsLostAndNearATeammateIsNot() {
    Racer mate = new Racer(true, -4, 2, 4, 0);
    Racer far = new Racer(false, 22, -10, 0, 0);
    Racer near = new Racer(false, -4, 2, 0, 0);
    Racer back = new Racer(true, -24, -10, 0, 0);
    WaysOut free = run(what(scene(-14, 2, OptionalDouble.empty(), List.of(mate, far)), "", true));
    WaysOut taken = run(what(scene(-14, 2, OptionalDouble.empty(), List.of(back, near)), "", true));
    assertTrue(outcome(free, Way.CHIP).meant().value() > 0.97);
    assertTrue(outcome(taken, Way.CHIP).meant().value() < 0.05);
    assertEquals(0, outcome(free, Way.CHIP).restart().value());
  }

  @Test
  void whereCenterIsGainedThereIsNothingToCompare() {
    WaysOut ways = run(what(scene(1, 4, OptionalDouble.empty(), List.of()), "", false));
    assertEquals(
        List.of(Way.RELEASE_NOW, Way.SHOOT_NOW),
        ways.outcomes().stream().map(WayOutcome::way).toList());
    assertEquals(0, ways.seconds());
    assertEquals(1, ways.gain().p());
    WaysOut close = run(what(scene(-1, 4, OptionalDouble.empty(), List.of()), "", true));
    assertTrue(close.outcome(Way.CHIP).isEmpty(), "no room for a chip");
  }

  @Test
  void theSpreadLiesInOrderAndOnTheIce() {
    Random dice = new Random(11);
    for (int i = 0; i < 5; i++) {
      double x = -28 + 27 * dice.nextDouble();
      PuckSpread s =
          run(what(
                  scene(x, -6 + 12 * dice.nextDouble(), OptionalDouble.empty(), List.of()),
                  "",
                  true))
              .spread();
      double before = Double.NEGATIVE_INFINITY;
      for (PuckSpread.Row r : s.rows()) {
        assertTrue(r.low() <= r.middle() && r.middle() <= r.high());
        assertTrue(Math.abs(r.low()) <= NHL.width() / 2 && Math.abs(r.high()) <= NHL.width() / 2);
        assertTrue(r.x() > before);
        before = r.x();
      }
      assertTrue(s.reach().low() <= s.reach().middle() && s.reach().middle() <= s.reach().high());
      assertTrue(s.past() > 0 && s.past() <= 1);
    }
  }

  @Test
  void theFarthestPlaceOfASpreadIsItsLastRow() {
    Random dice = new Random(12);
    for (int i = 0; i < 20; i++) {
      Scene scene =
          scene(
              -28 + 27 * dice.nextDouble(),
              -6 + 12 * dice.nextDouble(),
              OptionalDouble.empty(),
              List.of());
      SeededRandom luck = new SeededRandom(i, "release");
      PuckSpread whole = PuckSpread.of(scene, luck, 200);
      PuckSpread.Row last = whole.rows().get(whole.rows().size() - 1);
      assertEquals(
          new PuckSpread.Farthest(last, 200, whole.past()), PuckSpread.farthest(scene, luck, 200));
    }
  }

  @Test
  void whatNoRinkHoldsIsRefused() {
    assertTrue(WhatIf.inside(NHL, -30.48, 0) && WhatIf.inside(NHL, 0, 12.95));
    assertFalse(WhatIf.inside(NHL, -30.6, 0));
    assertFalse(WhatIf.inside(NHL, -29.9, 12.4), "outside the round corner");
    assertThrows(
        IllegalArgumentException.class,
        () -> what(scene(-29.9, 12.4, OptionalDouble.empty(), List.of()), "", true));
    assertThrows(IllegalArgumentException.class, () -> new Estimate(Double.NaN, 0));
  }

  @Test
  void everyAssumptionHasARangeAroundItsValue() {
    List<Parameter> all = Assumptions.ALL;
    assertEquals(12, all.size());
    all.forEach(p -> assertTrue(p.low() < p.high(), p.name()));
  }
}
