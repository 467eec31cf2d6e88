package twostrides.sanity;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import twostrides.game.Action;
import twostrides.game.Game;
import twostrides.game.PlayRow;

/**
 * Entries that are read as something else: they all lie at the far blue line, where few other rows
 * do.
 */
final class AtTheLine {

  /** Rows that it takes to tell. Assumed. */
  private static final int LEAST = 50;

  /** Where entries lie, seen from the neutral edge of the far blue line, m. Assumed. */
  private static final double BEFORE = 1;

  private static final double BEHIND = 2;

  /**
   * Share at the line that is too much. Assumed: in the open games and the sample season at most 4
   * of 100 recoveries, 7 of 100 releases and 15 of 100 shots lie there.
   */
  private static final Map<Action, Double> TOO_MANY = tooMany();

  private AtTheLine() {}

  private static Map<Action, Double> tooMany() {
    Map<Action, Double> most = new LinkedHashMap<>();
    most.put(Action.RECOVERY, 0.1);
    most.put(Action.RELEASE, 0.2);
    most.put(Action.SHOT, 0.25);
    return most;
  }

  /** How many rows of a game are at the far blue line, by action. */
  static Map<Action, Share> atTheLine(Game g) {
    Map<Action, Share> shares = new LinkedHashMap<>();
    double line = g.rink().blueLineNeutralEdge();
    for (PlayRow r : g.rows()) {
      if (TOO_MANY.containsKey(r.action()) && r.place().isPresent()) {
        double past = r.place().get().x() - line;
        shares.computeIfAbsent(r.action(), a -> new Share()).add(past > -BEFORE && past < BEHIND);
      }
    }
    return shares;
  }

  static List<Doubt> of(List<GameSigns> games) {
    Map<Action, Share> shares = Share.sums(games.stream().map(GameSigns::atTheLine).toList());
    List<Doubt> doubts = new ArrayList<>();
    shares.forEach(
        (action, share) -> {
          if (share.above(TOO_MANY.get(action), LEAST)) {
            doubts.add(
                Doubt.warn(
                    games.get(0).sheet(),
                    share + " rows with action " + action.word() + " at the far blue line",
                    "few of them there",
                    "Check the words of action in the sheet map: entries into the zone are read as this"
                        + " action, and count as such."));
          }
        });
    return doubts;
  }
}
