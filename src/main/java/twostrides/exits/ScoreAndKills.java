package twostrides.exits;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import twostrides.game.Strength;

/**
 * How a game stands at every event: goals so far, and the stretches in which a team is shorthanded.
 *
 * <p>A stretch, or kill, runs from the first row that shows the team shorthanded to the first later
 * one of the game that shows it at another known strength; where none follows, to the last row. The
 * edges are therefore as sharp as the rows are dense. A second penalty in a stretch does not begin
 * another one.
 */
final class ScoreAndKills {

  private final PuckTimeline timeline;
  private final int[] homeAhead;
  private final int[] homeKill;
  private final int[] awayKill;
  private final List<Stretch> stretches = new ArrayList<>();

  /**
   * A stretch in which a team is shorthanded.
   *
   * @param number number in its game, from 1
   * @param team who is shorthanded
   * @param first the first event of it
   * @param end the event that ends it: the first one after it, or the game's last
   */
  record Stretch(int number, String team, PuckEvent first, PuckEvent end) {}

  ScoreAndKills(PuckTimeline timeline) {
    this.timeline = timeline;
    homeAhead = homeAhead();
    homeKill = kills(timeline.game().home());
    awayKill = kills(timeline.game().away());
  }

  private int[] homeAhead() {
    int[] ahead = new int[timeline.events().size()];
    int now = 0;
    for (PuckEvent e : timeline.events()) {
      ahead[e.index()] = now;
      now += !e.goal() ? 0 : e.by(timeline.game().home()) ? 1 : -1;
    }
    return ahead;
  }

  /** Number of the kill at every event, 0 outside of one. */
  private int[] kills(String team) {
    List<PuckEvent> events = timeline.events();
    int[] kill = new int[events.size()];
    Optional<PuckEvent> first = Optional.empty();
    for (PuckEvent e : events) {
      Optional<Boolean> shorthanded = shorthanded(e, team);
      if (first.isEmpty() && shorthanded.orElse(false)) {
        first = Optional.of(e);
      }
      boolean last = e.index() == events.size() - 1;
      if (first.isPresent() && (!shorthanded.orElse(true) || last)) {
        int number = stretches.size() + 1;
        stretches.add(new Stretch(number, team, first.get(), e));
        int until = shorthanded.orElse(true) ? e.index() + 1 : e.index();
        Arrays.fill(kill, first.get().index(), until, number);
        first = Optional.empty();
      }
    }
    return kill;
  }

  /** Whether an event shows a team shorthanded; empty when it does not say. */
  private static Optional<Boolean> shorthanded(PuckEvent e, String team) {
    return e.team().isEmpty() || e.strength() == Strength.UNKNOWN
        ? Optional.empty()
        : Optional.of(e.strength(team) == Strength.SHORTHANDED);
  }

  /** The home team's stretches, then the away team's. */
  List<Stretch> stretches() {
    return List.copyOf(stretches);
  }

  /** Goals a team is ahead by before an event; empty where the game's sheet writes no shots. */
  OptionalInt goalsAhead(PuckEvent e, String team) {
    if (!timeline.writesShots()) {
      return OptionalInt.empty();
    }
    int home = homeAhead[e.index()];
    return OptionalInt.of(atHome(team) ? home : -home);
  }

  private boolean atHome(String team) {
    return team.equals(timeline.game().home());
  }

  private int[] killsOf(String team) {
    return atHome(team) ? homeKill : awayKill;
  }

  /** The kill of a team that an event lies in; empty when it is not shorthanded. */
  OptionalInt kill(PuckEvent e, String team) {
    int number = killsOf(team)[e.index()];
    return number == 0 ? OptionalInt.empty() : OptionalInt.of(number);
  }

  /** Seconds since the last row that shows the team shorthanded, in the same period. */
  OptionalDouble sinceShorthanded(PuckEvent e, String team) {
    int[] kill = killsOf(team);
    int first = e.index() - timeline.before(e).size();
    for (int i = e.index(); i >= first; i--) {
      if (kill[i] > 0) {
        return OptionalDouble.of(e.elapsed() - timeline.events().get(i).elapsed());
      }
    }
    return OptionalDouble.empty();
  }
}
