package twostrides.game;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How an action went; each action knows its own outcomes. */
public enum Outcome {
  /** A pass that was received. */
  COMPLETE("complete"),
  /** A pass that was not received, or a shot past the goal. */
  MISSED("missed"),
  /** A release that the team did not get back. */
  LOST("lost"),
  /** A release that the team got back. */
  REGAINED("regained"),
  /** The line was crossed on a stick. */
  CARRIED("carried"),
  /** The line was crossed by a puck sent on: repeats the release. */
  DUMPED("dumped"),
  /** The line was crossed on a pass: repeats the pass. */
  PLAYED("played"),
  /** A shot that scored. */
  GOAL("goal"),
  /** A shot the goalkeeper stopped. */
  ON_NET("on_net"),
  /** A shot that a skater stopped. */
  BLOCKED("blocked");

  private final String word;

  Outcome(String word) {
    this.word = word;
  }

  /** The word that sheets write. */
  public String word() {
    return word;
  }

  /**
   * The outcomes an action may have, by their words; empty when it has none.
   *
   * @param action the action of the row
   */
  static Map<String, Outcome> wordsFor(Action action) {
    List<Outcome> outcomes =
        switch (action) {
          case PASS -> List.of(COMPLETE, MISSED);
          case RELEASE -> List.of(LOST, REGAINED);
          case ENTRY -> List.of(CARRIED, DUMPED, PLAYED);
          case SHOT -> List.of(GOAL, ON_NET, MISSED, BLOCKED);
          case FACEOFF, RECOVERY, TAKEAWAY, TOUCH, DEFLECTION, BLOCK, PENALTY, STOPPAGE ->
              List.of();
        };
    Map<String, Outcome> words = new LinkedHashMap<>();
    outcomes.forEach(o -> words.put(o.word, o));
    return words;
  }
}
