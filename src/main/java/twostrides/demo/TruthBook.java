package twostrides.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import twostrides.demo.ExitTruth.Cause;
import twostrides.demo.ExitTruth.CenterMark;
import twostrides.demo.ExitTruth.Way;
import twostrides.demo.PenaltyBox.Manpower;

/**
 * Keeps what the simulator decides, while it decides it. It never looks at a row.
 *
 * <p>An attempt is <em>open</em> while the puck is in the zone, <em>beyond</em> after a carry or a
 * pass until center decides, and <em>waiting</em> until the opponent has control or play stops:
 * only then is it known whether an own-zone restart followed.
 */
final class TruthBook {
  /**
   * A player who kept the puck short of center and went for it.
   *
   * @param shortOfCenter metres that he had to go
   * @param chance in how many of the futures before it he gained center
   * @param gained whether he did
   */
  record Kept(double shortOfCenter, double chance, boolean gained) {}

  private final boolean watches;
  private final List<Kept> kept = new ArrayList<>();
  private final List<ExitTruth> exits = new ArrayList<>();
  private final List<ReleaseTruth> releases = new ArrayList<>();
  private final List<ExitTruth> waiting = new ArrayList<>();
  private Optional<ExitTruth> open = Optional.empty();
  private Optional<ExitTruth> beyond = Optional.empty();
  private Optional<Side> spellOf = Optional.empty();
  private Optional<ReleaseTruth> underWay = Optional.empty();

  /** Of a game; whether it is to watch those who kept the puck, which costs time. */
  TruthBook(boolean watches) {
    this.watches = watches;
  }

  boolean watches() {
    return watches;
  }

  /** Somebody kept the puck and went for center. */
  void kept(double shortOfCenter, double chance, boolean gained) {
    if (watches) {
      kept.add(new Kept(shortOfCenter, chance, gained));
    }
  }

  List<Kept> kept() {
    return List.copyOf(kept);
  }

  /** A side has control. */
  void controls(Side side, GameClock clock, boolean inOwnZone) {
    landed(Cause.NONE);
    if (spellOf.isEmpty() || spellOf.get() != side) {
      settle(Cause.NONE, OptionalInt.empty());
      spellOf = Optional.of(side);
    }
    if (inOwnZone && open.isEmpty()) {
      if (beyond.isPresent()) {
        throw new IllegalStateException("a new attempt begins while center is undecided");
      }
      open = Optional.of(new ExitTruth(clock, side));
    }
  }

  /** Whether an attempt is open in the zone. */
  boolean attemptOpen() {
    return open.isPresent();
  }

  /** The open attempt left the zone, or was lost inside. */
  void left(Way way, Carrier by, GameClock clock, Manpower manpower) {
    ExitTruth attempt = open.orElseThrow(() -> new IllegalStateException("no attempt is open"));
    attempt.left(way, by.skater(), clock, manpower);
    open = Optional.empty();
    waiting.add(attempt);
    if (way == Way.CARRY || way == Way.PASS) {
      beyond = Optional.of(attempt);
    }
  }

  /** The chance of gaining center, for the puck that was just sent out of the zone. */
  void leftWithChance(double chance) {
    waiting.get(waiting.size() - 1).chance = OptionalDouble.of(chance);
  }

  /** Center decides about a carry or a pass; nothing to mark when the spell began elsewhere. */
  void center(CenterMark mark) {
    beyond.ifPresent(attempt -> attempt.center = Optional.of(mark));
    beyond = Optional.empty();
  }

  /** The puck was sent on short of center after a carry or a pass. */
  void centerReleased(GameClock clock, Manpower manpower, double chance) {
    beyond.ifPresent(
        attempt -> {
          attempt.left(attempt.way, attempt.skater, clock, manpower);
          attempt.chance = OptionalDouble.of(chance);
        });
    center(CenterMark.RELEASED_SHORT);
  }

  /** A release short of center is under way. */
  void released(ReleaseTruth release) {
    landed(Cause.NONE);
    underWay = Optional.of(release);
    releases.add(release);
  }

  /** Play stopped; the puck is dropped in this side's own zone next, or in nobody's. */
  void stopped(Optional<Side> zoneOf, Cause why, GameClock clock) {
    if (open.isPresent() || beyond.isPresent()) {
      throw new IllegalStateException("play stops while an attempt is undecided");
    }
    boolean own = zoneOf.isPresent() && zoneOf.equals(spellOf);
    landed(own ? why : Cause.NONE);
    if (own) {
      settle(why, OptionalInt.of(clock.shown()));
    } else {
      settle(Cause.NONE, OptionalInt.empty());
    }
    spellOf = Optional.empty();
  }

  List<ExitTruth> exits() {
    return List.copyOf(exits);
  }

  List<ReleaseTruth> releases() {
    return List.copyOf(releases);
  }

  private void landed(Cause brought) {
    underWay.ifPresent(release -> release.cause = brought);
    underWay = Optional.empty();
  }

  private void settle(Cause cause, OptionalInt restart) {
    if (spellOf.isPresent() && open.isPresent()) {
      throw new IllegalStateException("the opponent has control while an attempt is open");
    }
    waiting.forEach(attempt -> attempt.settled(cause, restart));
    exits.addAll(waiting);
    waiting.clear();
  }
}
