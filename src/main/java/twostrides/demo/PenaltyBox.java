package twostrides.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Who sits, until when, and what that leaves on the ice. Only minors are called in this league. */
final class PenaltyBox {
  /** A minor penalty: 2 minutes, in seconds of play. */
  static final double MINOR_S = 120;

  private static final int FULL = 5;

  /** No team plays with fewer than three skaters, so a third penalty at once is not called. */
  private static final int MOST_AT_ONCE = 2;

  private record Sitting(Side side, Skater skater, double until) {}

  private final List<Sitting> sitting = new ArrayList<>();

  /** Lets everybody out whose time is served; whether there was anybody. */
  boolean release(double gameSeconds) {
    return !sitting.isEmpty() && sitting.removeIf(s -> s.until() <= gameSeconds);
  }

  boolean hasRoom(Side side) {
    return served(side) < MOST_AT_ONCE;
  }

  void call(Side side, Skater skater, double gameSeconds) {
    sitting.add(new Sitting(side, skater, gameSeconds + MINOR_S));
  }

  /** A goal against a shorthanded team ends the penalty that would end first. */
  void goalAgainst(Side side) {
    if (skaters(side) < skaters(side.other())) {
      sitting.stream().filter(s -> s.side() == side).findFirst().ifPresent(sitting::remove);
    }
  }

  /** Skaters left by penalties alone, 3 to 5; an extra attacker is not counted here. */
  int skaters(Side side) {
    return FULL - served(side);
  }

  Set<Skater> inside(Side side) {
    return sitting.stream()
        .filter(s -> s.side() == side)
        .map(Sitting::skater)
        .collect(Collectors.toUnmodifiableSet());
  }

  /** Manpower of a side, by penalties alone. */
  Manpower manpower(Side side) {
    int difference = skaters(side) - skaters(side.other());
    if (difference == 0) {
      return Manpower.EVEN;
    }
    return difference < 0 ? Manpower.SHORTHANDED : Manpower.POWER_PLAY;
  }

  private int served(Side side) {
    return (int) sitting.stream().filter(s -> s.side() == side).count();
  }

  /** Who has more skaters because of penalties being served. */
  enum Manpower {
    EVEN,
    SHORTHANDED,
    POWER_PLAY
  }
}
