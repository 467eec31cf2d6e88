package twostrides.review;

import java.util.ArrayList;
import java.util.List;
import twostrides.rates.Count;
import twostrides.rates.Trend;

/**
 * A habit over the season: of the pucks that a player carried or passed out, how many were released
 * short of center.
 *
 * @param stretches thirds of the team's games in order; fewer where there are fewer games
 * @param all all games
 * @param trend what the share does from game to game
 */
public record Habit(List<Stretch> stretches, Count all, Trend trend) {

  private static final int STRETCHES = 3;

  /**
   * Games that follow each other.
   *
   * @param from number of the first game, from 1
   * @param to number of the last game
   * @param releasedShort released short of center, of those carried or passed out
   */
  public record Stretch(int from, int to, Count releasedShort) {

    /** "games 1 to 4". */
    public String label() {
      return "games " + from + " to " + to;
    }
  }

  /** Copies the list. */
  public Habit {
    stretches = List.copyOf(stretches);
  }

  /**
   * The habit from what was counted game by game.
   *
   * @param byGame released short, of those carried or passed out, in the order of the team's games
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
