package twostrides.rulebook.penalty;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import twostrides.rulebook.penalty.BoxEvent.Called;

/** Skaters on the ice of both teams, as penalties are called, run out and are ended. */
final class Strengths {

  private final PenaltyRules rules;
  private final Map<Side, Bench> benches = new EnumMap<>(Side.class);
  private final Map<Side, Integer> skaters = new EnumMap<>(Side.class);
  private final Map<Side, List<Called>> ranOut = new EnumMap<>(Side.class);

  /** Both teams at full strength. */
  Strengths(PenaltyRules rules) {
    this.rules = rules;
    for (Side side : Side.values()) {
      benches.put(side, new Bench(rules.mostShort()));
      ranOut.put(side, new ArrayList<>());
      skaters.put(side, PenaltyRules.FULL_SKATERS);
    }
  }

  Bench bench(Side side) {
    return benches.get(side);
  }

  int skaters(Side side) {
    return skaters.get(side);
  }

  /** Penalties that ran out with nobody in the box since play last stopped. */
  List<Called> ranOut(Side side) {
    return List.copyOf(ranOut.get(side));
  }

  boolean nothingServed() {
    return bench(Side.HOME).empty() && bench(Side.AWAY).empty();
  }

  /**
   * Play stands still, so each team puts out what it is entitled to. In overtime with fewer skaters
   * (NHL 84.1, 84.3: S) a penalty takes nobody below the floor; it gives the other team a skater:
   * four on three, five on three. Equal numbers of penalties leave three on three.
   *
   * @param overtime whether the period is overtime
   */
  void atStoppage(boolean overtime) {
    int base = rules.skaters(overtime);
    int home = base - bench(Side.HOME).running();
    int away = base - bench(Side.AWAY).running();
    int lift = Math.max(0, rules.fewestSkaters() - Math.min(home, away));
    skaters.put(Side.HOME, Math.min(PenaltyRules.FULL_SKATERS, home + lift));
    skaters.put(Side.AWAY, Math.min(PenaltyRules.FULL_SKATERS, away + lift));
    ranOut.values().forEach(List::clear);
  }

  /**
   * Penalties run out while play goes on: who sat comes onto the ice. In overtime that makes four
   * on four until the next stoppage (NHL 84.3, from memory). Where nobody sat out a major, the team
   * stays a skater down until play stops (NHL 20.3, 81.6: S).
   *
   * @param now play since the game began, ms
   * @return what ran out
   */
  List<ServedPenalty> expire(Side side, long now) {
    Bench.Freed freed = bench(side).expire(now);
    skaters.merge(
        side,
        freed.comeBack().size(),
        (on, back) -> Math.min(PenaltyRules.FULL_SKATERS, on + back));
    ranOut.get(side).addAll(freed.emptyBox());
    return freed.ended();
  }

  /**
   * Fewer skaters because of penalties being served (IIHF glossary: S). A skater who is missing
   * only because nobody sat out an expired major does not count, unless the book says so (NHL 81.6:
   * S).
   */
  boolean shorthanded(Side side) {
    int us = skaters(side);
    int them = skaters(side.other());
    int notServed = rules.expiredMajorEmptyBoxExempt() ? 0 : ranOut.get(side).size();
    boolean penalty = bench(side).running() > 0 || !ranOut.get(side).isEmpty();
    return us + notServed < them && penalty;
  }
}
