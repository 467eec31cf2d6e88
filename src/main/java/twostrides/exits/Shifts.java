package twostrides.exits;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * How long a team's skaters had been on the ice at an event, and stayed after it: mean seconds of
 * play over the skaters that the row lists, within the period. A shift runs over the rows in a row
 * that list the skater; each is followed once, forward and backward.
 */
final class Shifts {

  private final Map<String, OptionalDouble[]> before = new HashMap<>();
  private final Map<String, OptionalDouble[]> after = new HashMap<>();

  Shifts(PuckTimeline timeline) {
    List<PuckEvent> backward = new ArrayList<>(timeline.events());
    Collections.reverse(backward);
    for (String team : List.of(timeline.game().home(), timeline.game().away())) {
      before.put(team, follow(timeline, timeline.events(), team));
      after.put(team, follow(timeline, backward, team));
    }
  }

  private static OptionalDouble[] follow(
      PuckTimeline timeline, List<PuckEvent> events, String team) {
    OptionalDouble[] mean = new OptionalDouble[events.size()];
    Map<String, Double> since = new HashMap<>();
    int period = -1;
    for (PuckEvent e : events) {
      if (e.period() != period) {
        since.clear();
        period = e.period();
      }
      List<String> listed = timeline.onIce(e, team);
      mean[e.index()] = OptionalDouble.empty();
      if (!listed.isEmpty()) {
        since.keySet().retainAll(listed);
        listed.forEach(s -> since.putIfAbsent(s, e.elapsed()));
        mean[e.index()] =
            listed.stream().mapToDouble(s -> Math.abs(e.elapsed() - since.get(s))).average();
      }
    }
    return mean;
  }

  /** Seconds on the ice before an event. */
  OptionalDouble before(PuckEvent e, String team) {
    return before.get(team)[e.index()];
  }

  /** Seconds on the ice after it. */
  OptionalDouble after(PuckEvent e, String team) {
    return after.get(team)[e.index()];
  }
}
