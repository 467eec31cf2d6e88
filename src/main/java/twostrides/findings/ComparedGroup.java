package twostrides.findings;

import java.util.List;
import java.util.Map;

/**
 * A player, unit or team that can be compared with another.
 *
 * @param label its name on the page, unlike any other's
 * @param team number of its team, from 0
 * @param games what it did in each game of its team, in order
 */
public record ComparedGroup(String label, int team, List<Map<Cell, Tally>> games) {

  /** Copies the games. */
  public ComparedGroup {
    games = games.stream().map(Map::copyOf).toList();
  }

  /** What is counted, of how many. */
  public enum Measure {
    /** Icings of the attempts on one way out; each way has its own. */
    ICED_BY_WAY,
    /** Carries and passes released short of center, of those whose end there is known. */
    RELEASED_SHORT,
    /** Releases short of center that were iced. */
    ICED_RELEASES,
    /** Exit attempts that were kept in. */
    KEPT_IN,
    /** Shot attempts against, over the exit attempts for which they are known. */
    AGAINST
  }

  /** Strengths that stand apart. */
  public enum Apart {
    EVEN,
    SHORTHANDED,
    /** Power play and unknown. */
    OTHER
  }

  /**
   * One count.
   *
   * @param measure what is counted
   * @param way the way out, of icings; kept in for all other measures, which know no way
   * @param strength strength at the release
   */
  public record Cell(Measure measure, ShownWay way, Apart strength) {}

  /**
   * How many of how many; shots may be more than the attempts that they followed.
   *
   * @param hits how many
   * @param cases of how many
   */
  public record Tally(int hits, int cases) {

    Tally plus(Tally other) {
      return new Tally(hits + other.hits, cases + other.cases);
    }
  }

  int attempts() {
    return games.stream()
        .flatMap(g -> g.entrySet().stream())
        .filter(e -> e.getKey().measure() == Measure.KEPT_IN)
        .mapToInt(e -> e.getValue().cases())
        .sum();
  }
}
