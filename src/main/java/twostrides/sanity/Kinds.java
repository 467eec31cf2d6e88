package twostrides.sanity;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
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

  /** Share of rows in which somebody gets the puck, in true sheets a third or more. Assumed. */
  private static final double LEAST_GOT = 0.1;

  /** Rows without an outcome, where most have one, that are no slips; and their share. Assumed. */
  private static final int LEAST_WITHOUT = 20;

  private static final double LEAST_WITHOUT_SHARE = 0.02;

  /** Rows of an action that cannot all have gone alike. Assumed. */
  private static final int LEAST_ALIKE = 100;

  /** Metres within which a face-off is at center ice. Assumed. */
  private static final double AT_CENTER = 1.5;

  private static final Map<Action, String> COSTS = costs();

  /** Rows by action and outcome. */
  private final Map<Action, Map<Optional<Outcome>, Integer>> outcomes = new TreeMap<>();

  /** Goals, and how many a face-off at center followed. */
  private final Share center = new Share();

  private int afterNoGoal;

  private static Map<Action, String> costs() {
    Map<Action, String> costs = new LinkedHashMap<>();
    costs.put(Action.FACEOFF, "no restart and no icing can be found");
    costs.put(Action.PASS, "no exit by a pass can be found");
    costs.put(Action.RELEASE, "no chip, no clearance and no icing can be found");
    costs.put(
        Action.SHOT, "no shot and no goal counts, and nothing shows which end a team attacks");
    return costs;
  }

  /** Nothing counted yet. */
  private Kinds() {}

  /** Counts a game. */
  Kinds(Game g) {
    for (PlayRow r : g.rows()) {
      of(r.action()).merge(r.outcome(), 1, Integer::sum);
    }
    goals(g);
  }

  private Map<Optional<Outcome>, Integer> of(Action action) {
    return outcomes.computeIfAbsent(action, a -> new HashMap<>());
  }

  private void add(Kinds game) {
    game.outcomes.forEach(
        (action, counts) -> counts.forEach((o, n) -> of(action).merge(o, n, Integer::sum)));
    center.add(game.center);
    afterNoGoal += game.afterNoGoal;
  }

  private int rows(Action action) {
    return outcomes.getOrDefault(action, Map.of()).values().stream().mapToInt(n -> n).sum();
  }

  static List<Doubt> of(List<GameSigns> games) {
    Kinds kinds = new Kinds();
    games.forEach(g -> kinds.add(g.kinds()));
    return kinds.doubts(games.get(0).sheet());
  }

  private List<Doubt> doubts(String where) {
    int rows = Stream.of(Action.values()).mapToInt(this::rows).sum();
    if (rows < LEAST_ROWS) {
      return List.of();
    }
    List<Doubt> doubts = new ArrayList<>();
    COSTS.forEach(
        (action, cost) -> {
          if (rows(action) == 0) {
            doubts.add(
                Doubt.warn(
                    where,
                    "no row with action " + action.word() + " in " + rows + " rows",
                    "some in every game",
                    "Check the words of action in the sheet map; until then " + cost + "."));
          }
        });
    int got = Stream.of(Action.RECOVERY, Action.TAKEAWAY, Action.TOUCH).mapToInt(this::rows).sum();
    if (got < LEAST_GOT * rows) {
      doubts.add(
          Doubt.warn(
              where,
              got + " recoveries, takeaways and touches in " + rows + " rows",
              "a third of the rows or more",
              "Check the words of action in the sheet map; until then loose pucks are won by nobody."));
    }
    for (Action action : List.of(Action.PASS, Action.RELEASE, Action.SHOT)) {
      outcomes(action).ifPresent(words -> doubts.add(outcomeDoubt(where, words)));
    }
    goals(where, doubts);
    return doubts;
  }

  private static Doubt outcomeDoubt(String where, String words) {
    return Doubt.warn(
        where,
        words,
        "an outcome in every such row, and not always the same",
        "Check the words of action and outcome in the sheet map: another action may be read as this"
            + " one, or one outcome as another.");
  }

  /** What is odd about the outcomes of an action: some without, or all alike. */
  private Optional<String> outcomes(Action action) {
    Map<Optional<Outcome>, Integer> seen = of(action);
    int all = rows(action);
    int without = seen.getOrDefault(Optional.<Outcome>empty(), 0);
    Set<Optional<Outcome>> said = new HashSet<>(seen.keySet());
    said.remove(Optional.<Outcome>empty());
    boolean onlyGoals = action == Action.SHOT && said.equals(Set.of(Optional.of(Outcome.GOAL)));
    if (said.isEmpty() || onlyGoals) {
      return Optional.empty();
    }
    if (without >= LEAST_WITHOUT && without >= LEAST_WITHOUT_SHARE * all && without < all) {
      return Optional.of(
          without + " of " + all + " rows with action " + action.word() + " without an outcome");
    }
    return said.size() == 1 && without == 0 && all >= LEAST_ALIKE
        ? Optional.of(
            all
                + " rows with action "
                + action.word()
                + ", all with outcome "
                + said.iterator().next().orElseThrow().word())
        : Optional.empty();
  }

  private void goals(Game g) {
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

  private void goals(String where, List<Doubt> doubts) {
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
