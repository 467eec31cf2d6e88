package twostrides.findings;

import java.util.ArrayList;
import java.util.List;
import twostrides.stats.Count;
import twostrides.stats.Trend;

/**
 * A habit over the season, such as releasing pucks short of center that were carried or passed out:
 * how often it was done, of the times it could have been.
 *
 * @param stretches thirds of the team's games in order; fewer where there are fewer games
 * @param all all games
 * @param trend what the share does from game to game
 */
public record Habit(List<Stretch> stretches, Count all, Trend trend) {

  /** The season is told in thirds. */
  private static final int STRETCHES = 3;

  /**
   * Games that follow each other.
   *
   * @param from number of the first game, from 1
   * @param to number of the last game
   * @param count how often it was done
   */
  public record Stretch(int from, int to, Count count) {

    /** "games 1 to 4", "game 3". */
    public String label() {
      return from == to ? "game " + from : "games " + from + " to " + to;
    }
  }

  /** Copies the list. */
  public Habit {
    stretches = List.copyOf(stretches);
  }

  /**
   * The habit from what was counted game by game.
   *
   * @param byGame how often it was done, in the order of the team's games
   */
  public static Habit of(List<Count> byGame) {
    List<Stretch> stretches = new ArrayList<>();
    int parts = Math.min(STRETCHES, byGame.size());
    for (int i = 0; i < parts; i++) {
      int from = byGame.size() * i / parts;
      int to = byGame.size() * (i + 1) / parts;
      stretches.add(new Stretch(from + 1, to, sum(byGame.subList(from, to))));
    }
    return new Habit(stretches, sum(byGame), Trend.of(byGame));
  }

  private static Count sum(List<Count> counts) {
    return counts.stream().reduce(new Count(0, 0), Count::plus);
  }
}
