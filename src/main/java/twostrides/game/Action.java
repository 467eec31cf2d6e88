package twostrides.game;

import java.util.LinkedHashMap;
import java.util.Map;

/** What a row of a play sheet says was done. */
public enum Action {
  /** The acting team won a face-off: play starts, nobody controls the puck yet. */
  FACEOFF("faceoff", false, true),
  /** A loose puck taken under control. */
  RECOVERY("recovery", true, true),
  /** Taken from an opponent. */
  TAKEAWAY("takeaway", true, true),
  /** Plays or carries the puck at this place, nothing more. */
  TOUCH("touch", true, true),
  /** Passed toward a teammate. */
  PASS("pass", true, true),
  /** Sent on with no receiver. */
  RELEASE("release", true, true),
  /** A line crossed; only a carried entry is a touch of its own. */
  ENTRY("entry", false, true),
  /** At goal. */
  SHOT("shot", true, true),
  /** Touched, not controlled. */
  DEFLECTION("deflection", false, true),
  /** A shot or pass blocked, not controlled. */
  BLOCK("block", false, true),
  /** Called on the acting team; play goes on until a stoppage. */
  PENALTY("penalty", false, true),
  /** Play stops. */
  STOPPAGE("stoppage", false, false);

  private final String word;
  private final boolean control;
  private final boolean needsTeam;

  Action(String word, boolean control, boolean needsTeam) {
    this.word = word;
    this.control = control;
    this.needsTeam = needsTeam;
  }

  /** The word that sheets write. */
  public String word() {
    return word;
  }

  /** Whether the acting team controls the puck by this action alone. */
  public boolean control() {
    return control;
  }

  /** Whether a row with this action must name its team. */
  public boolean needsTeam() {
    return needsTeam;
  }

  /** Every action by its word, in the order of the documentation. */
  static Map<String, Action> words() {
    Map<String, Action> words = new LinkedHashMap<>();
    for (Action a : values()) {
      words.put(a.word, a);
    }
    return words;
  }
}
