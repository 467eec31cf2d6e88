package twostrides.exits;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import twostrides.game.Strength;

/**
 * How a game stands at every move: goals so far, and the stretches in which a team is shorthanded.
 *
 * <p>A stretch, or kill, runs from the first row that shows the team shorthanded to the first later
 * one of the game that shows it at another known strength; where none follows, to the last row. The
 * edges are therefore as sharp as the rows are dense. A second penalty in a stretch does not begin
 * another one.
 */
final class Standing {

  private final Play play;
  private final int[] homeGoals;
  private final int[] awayGoals;
  private final int[] homeKill;
  private final int[] awayKill;
  private final List<Kill> kills = new ArrayList<>();

  /**
   * A stretch in which a team is shorthanded.
   *
   * @param number number in its game, from 1
   * @param team who is shorthanded
   * @param first index of the first move of it
   * @param end index of the move that ends it: the first one after it, or the game's last
   */
  record Kill(int number, String team, int first, int end) {}

  Standing(Play play) {
    this.play = play;
    int n = play.moves().size();
    homeGoals = new int[n];
    awayGoals = new int[n];
    homeKill = new int[n];
    awayKill = new int[n];
    Map<String, Integer> numbers = new HashMap<>();
    int from = 0;
    for (int i = 1; i <= n; i++) {
      if (i == n || !play.moves().get(i).game().equals(play.moves().get(from).game())) {
        score(from, i);
        kills(from, i, true, homeKill, numbers);
        kills(from, i, false, awayKill, numbers);
        from = i;
      }
    }
  }

  private void score(int from, int to) {
    int home = 0;
    int away = 0;
    for (int i = from; i < to; i++) {
      Move m = play.moves().get(i);
      homeGoals[i] = home;
      awayGoals[i] = away;
      if (m.goal()) {
        boolean byHome = m.by(play.game(m).home());
        home += byHome ? 1 : 0;
        away += byHome ? 0 : 1;
      }
    }
  }

  private void kills(int from, int to, boolean home, int[] into, Map<String, Integer> numbers) {
    String game = play.moves().get(from).game();
    String team =
        home ? play.game(play.moves().get(from)).home() : play.game(play.moves().get(from)).away();
    int first = -1;
    for (int i = from; i < to; i++) {
      Optional<Boolean> shorthanded = shorthanded(play.moves().get(i), team);
      if (first < 0 && shorthanded.orElse(false)) {
        first = i;
      }
      boolean over = first >= 0 && (!shorthanded.orElse(true) || i == to - 1);
      if (over) {
        int number = numbers.merge(game, 1, Integer::sum);
        kills.add(new Kill(number, team, first, i));
        boolean last = shorthanded.orElse(true);
        for (int k = first; k < (last ? i + 1 : i); k++) {
          into[k] = number;
        }
        first = -1;
      }
    }
  }

  /** Whether a move shows a team shorthanded; empty when it does not say. */
  private static Optional<Boolean> shorthanded(Move m, String team) {
    if (m.team().isEmpty() || m.strength().equals(Strength.UNKNOWN.label())) {
      return Optional.empty();
    }
    String word = m.by(team) ? Strength.SHORTHANDED.label() : Strength.POWER_PLAY.label();
    return Optional.of(m.strength().equals(word));
  }

  /** Kills in the order of games; within one the home team's first. */
  List<Kill> kills() {
    return List.copyOf(kills);
  }

  /** Goals a team is ahead by before a move; empty where the game's sheet writes no shots. */
  OptionalInt goalsAhead(Move m, String team) {
    if (!play.writesShots(m)) {
      return OptionalInt.empty();
    }
    int home = homeGoals[m.index()] - awayGoals[m.index()];
    return OptionalInt.of(team.equals(play.game(m).home()) ? home : -home);
  }

  /** The kill of a team that a move lies in; empty when it is not shorthanded. */
  OptionalInt kill(Move m, String team) {
    int number = (team.equals(play.game(m).home()) ? homeKill : awayKill)[m.index()];
    return number == 0 ? OptionalInt.empty() : OptionalInt.of(number);
  }

  /** Seconds since the last row that shows the team shorthanded, in the same period. */
  OptionalDouble sinceShorthanded(Move m, String team) {
    int[] kill = team.equals(play.game(m).home()) ? homeKill : awayKill;
    for (int i = m.index(); i >= 0 && play.moves().get(i).samePlay(m); i--) {
      if (kill[i] > 0) {
        return OptionalDouble.of(m.elapsed() - play.moves().get(i).elapsed());
      }
    }
    return OptionalDouble.empty();
  }
}
