package twostrides.race;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.rink.Rink;
import twostrides.stats.Count;
import twostrides.stats.Interval;

/** One comparison of ways out. For one thread. */
final class WaysOutRun {

  private final WhatIf what;
  private final Draws draws;
  private final int n;
  private final Scene scene;
  private final Rink rink;
  private final WayOutAssumptions assumed;
  private final double seconds;
  private final Chance gain;
  private final double[] priceNow;
  private Chance icing = Chance.SURE;
  private final List<WayOutcome> outcomes = new ArrayList<>();

  WaysOutRun(WhatIf what, Draws draws, int n) {
    this.what = what;
    this.draws = draws;
    this.n = n;
    scene = what.scene();
    rink = scene.rink();
    assumed = what.assumed();
    seconds = Math.max(0, what.shortOfCenter()) / assumed.pace();
    gain = what.losses().keepsWhoLetGo(seconds, scene.delivery().missedPass());
    priceNow = new double[n];
  }

  WaysOut run() {
    Launch launch = Launch.of(scene, what.loft());
    RaceChances release = new RaceModel(scene, what.question(), launch).run(draws, n);
    icing = icing(release);
    now(launch, release);
    Optional<SoftSpeeds> speeds = Optional.empty();
    if (what.shortOfCenter() > 0) {
      Scene center = atCenter(scene.delivery());
      afterGaining(Way.CENTER_FIRST, center, Launch.of(center, what.loft()));
      SoftSpeeds soft = SoftSpeeds.of(rink, scene.x(), scene.y(), direction());
      softer(soft);
      chip(soft);
      speeds = Optional.of(soft);
    }
    if (what.netEmpty()) {
      shots();
    }
    return new WaysOut(
        release, icing, seconds, gain, speeds, outcomes, PuckSpread.of(scene, launch, draws, n));
  }

  private void now(Launch launch, RaceChances release) {
    Trial trial = new Trial(scene, launch, what.canBeIcing());
    double carried = release.icing() > 0 ? icing.p() / release.pIcing() : 0;
    Sums sums = new Sums();
    for (int i = 0; i < n; i++) {
      trial.draw(i);
      double iced = trial.iced ? carried : 0;
      priceNow[i] = price(iced, trial.lost ? 1 : 0);
      boolean well = !trial.iced && !trial.lost && trial.past(PuckPath::pastFarBlueLine);
      sums.add(i, well ? 1 : 0, iced, trial.lost ? 1 : 0, trial.goal ? 1 : 0);
    }
    outcomes.add(sums.of(Way.RELEASE_NOW));
  }

  /** The race's chance of icing, held to what was counted where it does not know the speed. */
  private Chance icing(RaceChances release) {
    double p = what.canBeIcing() ? release.pIcing() : 0;
    double off = Chance.TWO_SIDED * release.error(release.icing());
    Count iced = scene.delivery().iced();
    Interval counted = iced.wilson().orElseThrow();
    if (p == 0 || scene.delivery().known()) {
      return new Chance(p, Math.max(0, p - off), Math.min(1, p + off));
    }
    double share = iced.share().orElseThrow();
    return p > share
        ? new Chance(share, counted.low(), counted.high())
        : new Chance(p, Math.max(0, p - off), counted.high());
  }

  /** Carried to the red line and let go there; nobody knows where the skaters will be by then. */
  private void afterGaining(Way way, Scene center, Launch launch) {
    Trial trial = new Trial(center, launch, false);
    Sums sums = new Sums();
    double gained = gain.p();
    for (int i = 0; i < n; i++) {
      trial.draw(i);
      double goal = trial.goal ? gained : 0;
      double restart = (gained - goal) * assumed.restartAfterGaining();
      double lost = 1 - gained + (trial.lost ? gained : 0);
      sums.add(i, way.shot() ? goal : gained, restart, lost, goal);
    }
    outcomes.add(sums.of(way));
  }

  private void softer(SoftSpeeds soft) {
    if (!(soft.farBlueLine() < soft.goalLine())) {
      return;
    }
    OptionalDouble slides =
        WaysOut.between(SoftSpeeds.slides(soft.farBlueLine()), SoftSpeeds.slides(soft.goalLine()));
    slides.ifPresent(
        d ->
            laid(
                Way.SOFTER,
                d,
                t -> t.path().stopsShort() && rink.pastFarBlueLine(t.path().endPlace().x())));
  }

  private void chip(SoftSpeeds soft) {
    double least = soft.leavesZone().isPresent() ? soft.leavesZone().getAsDouble() : 0;
    OptionalDouble slides =
        WaysOut.between(
            Math.max(FirstThere.FREE, SoftSpeeds.slides(least)), SoftSpeeds.slides(soft.redLine()));
    slides.ifPresent(d -> laid(Way.CHIP, d, t -> t.ownFirst));
  }

  private interface Meant {
    boolean test(Trial trial);
  }

  private void laid(Way way, double slides, Meant meant) {
    Launch launch = Launch.laid(scene, slides, assumed.speedError(), direction());
    Trial trial = new Trial(scene, launch, what.canBeIcing());
    Sums sums = new Sums();
    for (int i = 0; i < n; i++) {
      trial.draw(i);
      sums.add(i, meant.test(trial) ? 1 : 0, trial.iced ? 1 : 0, trial.lost ? 1 : 0, 0);
    }
    outcomes.add(sums.of(way));
  }

  private void shots() {
    Delivery hard = assumed.shot().forLevel(scene.level());
    Scene here = withDelivery(scene, hard);
    Trial trial = new Trial(here, Launch.shot(here, assumed.shotError()), what.canBeIcing());
    Sums sums = new Sums();
    for (int i = 0; i < n; i++) {
      trial.draw(i);
      int goal = trial.goal ? 1 : 0;
      sums.add(i, goal, trial.iced ? 1 : 0, trial.lost ? 1 : 0, goal);
    }
    outcomes.add(sums.of(Way.SHOOT_NOW));
    if (what.shortOfCenter() > 0) {
      Scene center = atCenter(hard);
      afterGaining(Way.CENTER_THEN_SHOOT, center, Launch.shot(center, assumed.shotError()));
    }
  }

  /** The known direction, or straight up ice: whoever lays a puck chooses where. */
  private double direction() {
    return scene.targetY().isPresent()
        ? Math.atan2(scene.targetY().getAsDouble() - scene.y(), rink.goalLine() - scene.x())
        : 0;
  }

  /** The release moved to the red line: the same direction, five skaters of each team drawn. */
  private Scene atCenter(Delivery delivery) {
    double x = Launch.atCenter(rink);
    OptionalDouble target =
        scene.targetY().isPresent()
            ? OptionalDouble.of(scene.y() + Math.tan(direction()) * (rink.goalLine() - x))
            : OptionalDouble.empty();
    return new Scene(rink, x, scene.y(), delivery, target, List.of(), scene.skaters());
  }

  private static Scene withDelivery(Scene s, Delivery delivery) {
    return new Scene(s.rink(), s.x(), s.y(), delivery, s.targetY(), s.racers(), s.skaters());
  }

  private double price(double restart, double lost) {
    return restart * assumed.attemptsAfterRestart() + lost * assumed.attemptsAfterLoss();
  }

  /** One way's draws added up. */
  private final class Sums {
    private final Estimate.Sum meant = new Estimate.Sum();
    private final Estimate.Sum restart = new Estimate.Sum();
    private final Estimate.Sum lost = new Estimate.Sum();
    private final Estimate.Sum goal = new Estimate.Sum();
    private final Estimate.Sum price = new Estimate.Sum();
    private final Estimate.Sum saves = new Estimate.Sum();

    void add(int draw, double asMeant, double restarted, double taken, double scored) {
      double cost = price(restarted, taken);
      meant.add(asMeant);
      restart.add(restarted);
      lost.add(taken);
      goal.add(scored);
      price.add(cost);
      saves.add(priceNow[draw] - cost);
    }

    WayOutcome of(Way way) {
      return new WayOutcome(
          way,
          meant.estimate(),
          restart.estimate(),
          lost.estimate(),
          goal.estimate(),
          price.estimate(),
          saves.estimate());
    }
  }

  private interface LineTime {
    double of(PuckPath path);
  }

  /** One draw of one launch, and what it costs. */
  private final class Trial {
    private final RaceModel model;
    private final FirstThere first;
    private final boolean canBeIcing;
    private RaceModel.End end = RaceModel.End.OTHER;
    private boolean iced;
    private boolean lost;
    private boolean goal;
    private boolean ownFirst;

    Trial(Scene from, Launch launch, boolean canBeIcing) {
      model = new RaceModel(from, what.question(), launch);
      first = new FirstThere(from);
      this.canBeIcing = canBeIcing;
    }

    PuckPath path() {
      return model.path();
    }

    boolean past(LineTime line) {
      return line.of(path()) >= 0;
    }

    void draw(int i) {
      end = model.one(draws, i);
      iced = canBeIcing && end == RaceModel.End.ICING;
      goal = what.netEmpty() && end == RaceModel.End.OTHER && path().inNet();
      lost = false;
      ownFirst = false;
      if (end == RaceModel.End.TOUCHED) {
        lost = !rink.pastFarBlueLine(path().xAt(model.touchedAt()));
      } else if (end == RaceModel.End.STOPPED_SHORT) {
        first.ask(path(), draws.start(i));
        ownFirst = first.own();
        lost = !ownFirst && !rink.pastFarBlueLine(first.x());
      }
    }
  }
}
