package twostrides.numbers;

import java.util.List;

/**
 * A player, a unit or a team that can be compared, with its counts game by game.
 *
 * @param label the words that name it, unique among its like
 * @param team number of its team, from 0
 * @param byGame whether its cases of one game may hang together, as a whole team's do; those of
 *     players and units are taken as independent
 * @param tallies one a game of its team, in the order of play
 */
public record Side(String label, int team, boolean byGame, List<SideTally> tallies) {

  /** Copies the list. */
  public Side {
    tallies = List.copyOf(tallies);
  }

  /** Exit attempts in all games. */
  int attempts() {
    return tallies.stream().mapToInt(SideTally::attempts).sum();
  }

  /**
   * For each game of the team: cell, hits and cases of every cell that has cases, one after the
   * other. A cell is a slot of {@link CompareRow} times the strengths, plus the strength.
   */
  public List<List<Integer>> filled() {
    return tallies.stream().map(SideTally::filled).toList();
  }
}
