package twostrides.numbers;

import java.util.List;
import java.util.stream.Stream;
import twostrides.review.Say;
import twostrides.stats.Clustered;
import twostrides.stats.Count;

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
    return side.label() + ", " + Say.games(from, to);
  }

  /** How many of how many, over the games where they may hang together. */
  Clustered count(List<Integer> slots, List<Integer> strengths) {
    return side.byGame()
        ? new Clustered(games().map(g -> count(Stream.of(g), slots, strengths)).toList())
        : new Clustered(count(games(), slots, strengths));
  }

  private static Count count(
      Stream<SideTally> games, List<Integer> slots, List<Integer> strengths) {
    return games
        .map(g -> new Count(g.hits(slots, strengths), g.cases(slots, strengths)))
        .reduce(new Count(0, 0), Count::plus);
  }

  /** How many in all games; a case may have more than one. */
  int hits(List<Integer> slots, List<Integer> strengths) {
    return games().mapToInt(g -> g.hits(slots, strengths)).sum();
  }

  /** Of how many in all games. */
  int cases(List<Integer> slots, List<Integer> strengths) {
    return games().mapToInt(g -> g.cases(slots, strengths)).sum();
  }

  private Stream<SideTally> games() {
    return side.tallies().subList(from - 1, to).stream();
  }
}
