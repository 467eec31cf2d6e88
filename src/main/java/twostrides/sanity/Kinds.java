package twostrides.sanity;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import twostrides.game.Action;
import twostrides.game.Game;
import twostrides.game.Outcome;
import twostrides.game.PlayRow;

/** Kinds of rows that every whole game has, and goals: a word that a map lost takes them away. */
final class Kinds {

  /** Rows of sheets that hold whole games. Assumed. */
  private static final int LEAST_ROWS = 300;

  /** Face-offs at center inside periods that cannot all be something else than goals. Assumed. */
  private static final int LEAST_CENTER = 3;

  /** Goals that it takes to tell. Assumed. */
  private static final int LEAST_GOALS = 5;

  private static final double HALF = 0.5;

  /** Metres within which a face-off is at center ice. Assumed. */
  private static final double AT_CENTER = 1.5;

  private static final Map<Action, String> COSTS = costs();

  private Kinds() {}

  private static Map<Action, String> costs() {
    Map<Action, String> costs = new LinkedHashMap<>();
    costs.put(Action.FACEOFF, "no restart and no icing can be found");
    costs.put(Action.PASS, "no exit by a pass can be found");
    costs.put(Action.RELEASE, "no chip, no clearance and no icing can be found");
    costs.put(
        Action.SHOT, "no shot and no goal counts, and nothing shows which end a team attacks");
    return costs;
  }

  static List<Doubt> of(List<Game> games) {
    int rows = games.stream().mapToInt(g -> g.rows().size()).sum();
    if (rows < LEAST_ROWS) {
      return List.of();
    }
    String where = games.get(0).rows().get(0).sheet();
    Map<Action, Integer> seen = new EnumMap<>(Action.class);
    games.forEach(g -> g.rows().forEach(r -> seen.merge(r.action(), 1, Integer::sum)));
    List<Doubt> doubts = new ArrayList<>();
    COSTS.forEach(
        (action, cost) -> {
          if (!seen.containsKey(action)) {
            doubts.add(
                Doubt.warn(
                    where,
                    "no row with action " + action.word() + " in " + rows + " rows",
                    "some in every game",
                    "Check the words of action in the sheet map; until then " + cost + "."));
          }
        });
    goals(games, where, doubts);
    return doubts;
  }

  private static void goals(List<Game> games, String where, List<Doubt> doubts) {
    Share center = new Share();
    int afterNoGoal = 0;
    for (Game g : games) {
      Optional<PlayRow> goal = Optional.empty();
      int period = 0;
      for (PlayRow r : g.rows()) {
        boolean opens = r.period() != period;
        period = r.period();
        if (opens) {
          goal = Optional.empty();
        }
        if (r.outcome().equals(Optional.of(Outcome.GOAL))) {
          goal.ifPresent(g2 -> center.add(false));
          goal = Optional.of(r);
        } else if (r.action() == Action.FACEOFF && r.place().isPresent()) {
          boolean atCenter = Math.hypot(r.place().get().x(), r.place().get().y()) < AT_CENTER;
          if (goal.isPresent()) {
            center.add(atCenter);
          } else if (atCenter && !opens) {
            afterNoGoal++;
          }
          goal = Optional.empty();
        }
      }
    }
    if (center.all() == 0 && afterNoGoal >= LEAST_CENTER) {
      doubts.add(
          Doubt.warn(
              where,
              afterNoGoal + " face-offs at center inside periods, and no goal",
              "a goal before most of them",
              "Check the words of action and outcome in the sheet map: goals are not read, and what they"
                  + " cost is not counted."));
    } else if (center.below(HALF, LEAST_GOALS)) {
      doubts.add(
          Doubt.stop(
              where,
              center + " goals followed by a face-off at center",
              "a face-off at center after every goal",
              "Check the words of outcome in the sheet map: other shots are read as goals."));
    }
  }
}
