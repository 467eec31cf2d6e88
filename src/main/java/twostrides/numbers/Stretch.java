package twostrides.numbers;

import java.util.List;
import java.util.function.ToIntBiFunction;
import java.util.stream.Stream;

/**
 * A side in some of its team's games.
 *
 * @param side the side
 * @param from number of the first game, from 1
 * @param to number of the last game, which counts too
 */
public record Stretch(Side side, int from, int to) {

  /** Rejects games that are not there. */
  public Stretch {
    if (from < 1 || to < from || to > side.tallies().size()) {
      throw new IllegalArgumentException(
          "no games " + from + " to " + to + " of " + side.tallies().size());
    }
  }

  /** A side in all of its team's games. */
  static Stretch whole(Side side) {
    return new Stretch(side, 1, side.tallies().size());
  }

  /** The side's name, and the games unless they are all. */
  public String words() {
    if (from == 1 && to == side.tallies().size()) {
      return side.label();
    }
    return side.label() + (from == to ? ", game " + from : ", games " + from + " to " + to);
  }

  /** How many in all cells of these slots and strengths. */
  int hits(List<Integer> slots, List<Integer> strengths) {
    return sum(slots, strengths, (slot, s) -> games().mapToInt(t -> t.hits(slot, s)).sum());
  }

  /** Of how many in all cells of these slots and strengths. */
  int cases(List<Integer> slots, List<Integer> strengths) {
    return sum(slots, strengths, (slot, s) -> games().mapToInt(t -> t.cases(slot, s)).sum());
  }

  private Stream<SideTally> games() {
    return side.tallies().subList(from - 1, to).stream();
  }

  private static int sum(
      List<Integer> slots, List<Integer> strengths, ToIntBiFunction<Integer, Integer> cell) {
    int sum = 0;
    for (int slot : slots) {
      for (int strength : strengths) {
        sum += cell.applyAsInt(slot, strength);
      }
    }
    return sum;
  }
}
