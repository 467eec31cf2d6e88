package twostrides.rulebook.penalty;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Consumer;
import twostrides.rulebook.penalty.PenaltyRules.CoincidentalMinors;

/** Penalties of both teams at one stoppage: which of them offset each other. */
final class Offsetting {

  private final Map<Side, List<ServedPenalty>> left = new EnumMap<>(Side.class);
  private final List<String> doubts = new ArrayList<>();

  /**
   * Works out what counts.
   *
   * @param home penalties called on the home team
   * @param away penalties called on the visiting team
   * @param rules the book
   * @param nothingElse whether no other penalty that costs a skater is being served
   */
  Offsetting(
      List<ServedPenalty> home, List<ServedPenalty> away, PenaltyRules rules, boolean nothingElse) {
    left.put(Side.HOME, new ArrayList<>(home));
    left.put(Side.AWAY, new ArrayList<>(away));
    if (rules.coincidentalMinors() == CoincidentalMinors.FOUR_ON_FOUR) {
      if (nothingElse && oneMinorEach(home, away)) {
        return;
      }
      minorsBesideMajors(home, away, nothingElse);
    }
    cancel(false);
    cancel(true);
  }

  /** What still counts. */
  List<ServedPenalty> left(Side side) {
    return List.copyOf(left.get(side));
  }

  /** What the sheet or the book leaves open. */
  List<String> doubts() {
    return List.copyOf(doubts);
  }

  /**
   * One minor each and nothing else running: both sit, neither is replaced, four on four (NHL 19.1:
   * S). A double minor each is not that case.
   */
  private static boolean oneMinorEach(List<ServedPenalty> home, List<ServedPenalty> away) {
    return home.size() == 1
        && away.size() == 1
        && home.get(0).minor()
        && away.get(0).minor()
        && home.get(0).millis() == away.get(0).millis();
  }

  private void minorsBesideMajors(
      List<ServedPenalty> home, List<ServedPenalty> away, boolean nothingElse) {
    boolean majors =
        home.stream().anyMatch(b -> !b.minor()) && away.stream().anyMatch(b -> !b.minor());
    if (nothingElse
        && majors
        && oneMinorEach(
            home.stream().filter(ServedPenalty::minor).toList(),
            away.stream().filter(ServedPenalty::minor).toList())) {
      doubts.add(
          "one minor each beside majors on both teams at one stoppage: no rule was read for whether"
              + " that is four on four, taken: the minors cancel");
    }
  }

  /**
   * Equal penalties at one stoppage cancel and the players are replaced; of unequal numbers the
   * difference counts. Minors: IIHF 19.1 (S), USA Hockey (P), NFHS 2019 situation 3 (P), NHL 19.1
   * beyond one each (S). Majors: from memory. A major never cancels a minor (from memory). They
   * match only where they are equally long.
   */
  private void cancel(boolean minors) {
    TreeSet<Long> lengths = new TreeSet<>(Comparator.reverseOrder());
    left.get(Side.HOME).stream()
        .filter(b -> b.minor() == minors)
        .map(ServedPenalty::millis)
        .forEach(lengths::add);
    for (long length : lengths) {
      long pairs = Math.min(count(Side.HOME, minors, length), count(Side.AWAY, minors, length));
      for (Side side : Side.values()) {
        boolean some = pairs > 0 && pairs < count(side, minors, length);
        if (some && choiceMatters(left.get(side), minors, length)) {
          doubts.add(
              "of several "
                  + (minors ? "minors" : "majors")
                  + " on the "
                  + side.text()
                  + " team some offset the other team's; the sheet does not say which, taken: so"
                  + " that fewest skaters are missing");
        }
        for (long i = 0; i < pairs; i++) {
          left.get(side).remove(pick(left.get(side), minors, length).orElseThrow());
        }
      }
    }
  }

  private long count(Side side, boolean minors, long length) {
    return left.get(side).stream().filter(b -> b.minor() == minors && b.millis() == length).count();
  }

  private static boolean choiceMatters(List<ServedPenalty> penalties, boolean minors, long length) {
    return penalties.stream()
            .filter(b -> b.minor() == minors && b.millis() == length)
            .map(
                b ->
                    owned(penalties, b).stream()
                        .sorted(Comparator.comparing(ServedPenalty::millis))
                        .map(ServedPenalty::millis)
                        .toList())
            .distinct()
            .count()
        > 1;
  }

  private static List<ServedPenalty> owned(List<ServedPenalty> penalties, ServedPenalty of) {
    return penalties.stream().filter(b -> b.owner().equals(of.owner())).toList();
  }

  /**
   * The penalty to strike out so that fewest skaters are missing in the end: of a player without a
   * major that counts, who has the fewest penalties (from memory: books prefer one player short).
   */
  private static Optional<ServedPenalty> pick(
      List<ServedPenalty> penalties, boolean minors, long length) {
    return penalties.stream()
        .filter(b -> b.minor() == minors && b.millis() == length)
        .min(
            Comparator.<ServedPenalty>comparingInt(
                    b -> (int) owned(penalties, b).stream().filter(o -> !o.minor()).count())
                .thenComparingInt(b -> owned(penalties, b).size())
                .thenComparing(ServedPenalty.CANONICAL));
  }

  /**
   * Strikes out one minor: it was signalled when the other team scored (from memory: NHL 15.2; of a
   * double minor one half, from memory).
   *
   * @param penalties called on the team scored on; one is taken out
   * @param doubts takes what the sheet leaves open
   */
  static void strikeSignalled(List<ServedPenalty> penalties, Consumer<String> doubts) {
    List<ServedPenalty> minors = penalties.stream().filter(ServedPenalty::minor).toList();
    if (minors.isEmpty()) {
      return;
    }
    long shortest = minors.stream().mapToLong(ServedPenalty::millis).min().getAsLong();
    penalties.remove(pick(penalties, true, shortest).orElseThrow());
    if (minors.stream().map(ServedPenalty::owner).distinct().count() > 1) {
      doubts.accept(
          "several minors were called after a goal with a penalty signalled; the sheet does not say"
              + " which the goal cancelled, taken: the one that leaves fewest skaters missing");
    }
  }
}
