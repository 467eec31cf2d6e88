package twostrides.race;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import twostrides.race.SeededRandom.Simulation;
import twostrides.race.puck.PuckPath;
import twostrides.rink.Rink;
import twostrides.stats.Count;
import twostrides.stats.Interval;

/** One comparison of ways out. For one thread. */
final class WaysOutRun {

  private final WhatIf what;
  private final SeededRandom random;
  private final int n;
  private final Scene scene;
  private final Rink rink;
  private final double seconds;
  private final Chance gain;
  private final List<WayOutcome> outcomes = new ArrayList<>();

  /** What each simulation of releasing now brings. */
  private List<Brought> now = List.of();

  WaysOutRun(WhatIf what, SeededRandom random, int n) {
    this.what = what;
    this.random = random;
    this.n = n;
    scene = what.scene();
    rink = scene.rink();
    seconds = Math.max(0, what.shortOfCenter()) / Assumptions.PACE.value();
    gain = what.losses().keepsWhoLetGo(seconds, scene.delivery().missedPass());
  }

  WaysOut run() {
    Launch launch = Launch.of(scene, what.loft());
    RaceChances release = new RaceModel(scene, what.question(), launch).run(random, n);
    Chance icing = icing(release);
    releaseNow(launch, release.icing() > 0 ? icing.p() / release.pIcing() : 0);
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
        release, icing, seconds, gain, speeds, outcomes, PuckSpread.of(scene, launch, random, n));
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

  /**
   * The release as it is.
   *
   * @param carried share of the race's icings that counts
   */
  private void releaseNow(Launch launch, double carried) {
    simulate(
        Way.RELEASE_NOW,
        scene,
        launch,
        f -> {
          boolean well = !f.iced && !f.lost && f.path.pastFarBlueLine().isPresent();
          return new Brought(is(well), f.iced ? carried : 0, is(f.lost), is(f.goal));
        });
  }

  /** Carried to the red line and let go there; nobody knows where the skaters will be by then. */
  private void afterGaining(Way way, Scene center, Launch launch) {
    double gained = gain.p();
    simulate(
        way,
        center,
        launch,
        f -> {
          double goal = f.goal ? gained : 0;
          double restart = (gained - goal) * Assumptions.RESTART_AFTER_GAINING.value();
          double lost = 1 - gained + (f.lost ? gained : 0);
          return new Brought(way.shot() ? goal : gained, restart, lost, goal);
        });
  }

  private void softer(SoftSpeeds soft) {
    WaysOut.between(SoftSpeeds.slides(soft.farBlueLine()), SoftSpeeds.slides(soft.goalLine()))
        .ifPresent(d -> laid(Way.SOFTER, d, Fate::diesBeyondFarBlueLine));
  }

  private void chip(SoftSpeeds soft) {
    double least = SoftSpeeds.slides(soft.leavesZone().orElse(0));
    WaysOut.between(Math.max(FirstThere.FREE, least), SoftSpeeds.slides(soft.redLine()))
        .ifPresent(d -> laid(Way.CHIP, d, Fate::ownFirst));
  }

  private void laid(Way way, double slides, Predicate<Fate> meant) {
    simulate(
        way,
        scene,
        Launch.laid(scene, slides, Assumptions.SPEED_ERROR.value(), direction()),
        f -> new Brought(is(meant.test(f)), is(f.iced), is(f.lost), 0));
  }

  private void shots() {
    Delivery hard = Delivery.SHOT.forLevel(scene.level());
    Scene here = scene.sent(hard);
    simulate(
        Way.SHOOT_NOW,
        here,
        Launch.shot(here, Assumptions.SHOT_ERROR.value()),
        f -> new Brought(is(f.goal), is(f.iced), is(f.lost), is(f.goal)));
    if (what.shortOfCenter() > 0) {
      Scene center = atCenter(hard);
      afterGaining(
          Way.CENTER_THEN_SHOOT, center, Launch.shot(center, Assumptions.SHOT_ERROR.value()));
    }
  }

  /** The known direction, or straight up ice: whoever lays a puck chooses where. */
  private double direction() {
    return scene.targetY().isPresent()
        ? Math.atan2(scene.targetY().getAsDouble() - scene.y(), rink.goalLine() - scene.x())
        : 0;
  }

  /** The release moved to the red line: the same direction, five skaters of each team simulated. */
  private Scene atCenter(Delivery delivery) {
    double x = Launch.atCenter(rink);
    OptionalDouble target =
        scene.targetY().isPresent()
            ? OptionalDouble.of(scene.y() + Math.tan(direction()) * (rink.goalLine() - x))
            : OptionalDouble.empty();
    return new Scene(rink, x, scene.y(), delivery, target, List.of(), scene.skaters());
  }

  /**
   * What one simulation of one way brings: 1 where it happens, or the share of it that counts.
   *
   * @param meant what the way is meant to bring
   * @param restart an own-zone restart
   * @param lost the opponent takes the puck short of his own blue line
   * @param goal a goal at an empty net
   */
  private record Brought(double meant, double restart, double lost, double goal) {}

  private static double is(boolean happens) {
    return happens ? 1 : 0;
  }

  private double price(Brought b) {
    return b.restart * Assumptions.ATTEMPTS_AFTER_RESTART.value()
        + b.lost * Assumptions.ATTEMPTS_AFTER_LOSS.value();
  }

  /** Simulates a way; the first is releasing now, with which every other is compared. */
  private void simulate(Way way, Scene from, Launch launch, Function<Fate, Brought> brings) {
    RaceModel model = new RaceModel(from, what.question(), launch);
    List<Brought> all =
        IntStream.range(0, n)
            .mapToObj(i -> brings.apply(fate(from, model, random.simulation(i))))
            .toList();
    if (now.isEmpty()) {
      now = all;
    }
    double[] saves =
        IntStream.range(0, n).mapToDouble(i -> price(now.get(i)) - price(all.get(i))).toArray();
    outcomes.add(
        new WayOutcome(
            way,
            mean(all, Brought::meant),
            mean(all, Brought::restart),
            mean(all, Brought::lost),
            mean(all, Brought::goal),
            mean(all, this::price),
            Estimate.of(saves)));
  }

  private static Estimate mean(List<Brought> all, ToDoubleFunction<Brought> what) {
    return Estimate.of(all.stream().mapToDouble(what).toArray());
  }

  /**
   * What became of one simulated puck.
   *
   * @param path its path
   * @param iced whether it is icing
   * @param lost whether the opponent takes it short of his own blue line
   * @param goal whether it goes into an empty net
   * @param ownFirst whether it dies and a teammate is first to it
   * @param diesBeyondFarBlueLine whether, left alone, it dies between the far blue and goal lines
   */
  private record Fate(
      PuckPath path,
      boolean iced,
      boolean lost,
      boolean goal,
      boolean ownFirst,
      boolean diesBeyondFarBlueLine) {}

  private Fate fate(Scene from, RaceModel model, Simulation luck) {
    RaceModel.Simulated race = model.one(luck);
    PuckPath path = race.path();
    boolean stopsShort = race.end() == RaceModel.End.STOPPED_SHORT;
    Optional<FirstThere> first =
        stopsShort ? Optional.of(FirstThere.of(from, path, luck)) : Optional.empty();
    boolean ownFirst = first.isPresent() && first.get().own();
    OptionalDouble takenAt =
        race.touchedAt().isPresent()
            ? OptionalDouble.of(path.placeAt(race.touchedAt().getAsDouble()).x())
            : first.filter(f -> !f.own()).stream().mapToDouble(FirstThere::x).findFirst();
    return new Fate(
        path,
        what.canBeIcing() && race.end() == RaceModel.End.ICING,
        takenAt.isPresent() && !rink.pastFarBlueLine(takenAt.getAsDouble()),
        what.netEmpty() && race.end() == RaceModel.End.OTHER && path.inNet(),
        ownFirst,
        path.stopsShort() && rink.pastFarBlueLine(path.endPlace().x()));
  }
}
