package twostrides.game;

import java.util.LinkedHashMap;
import java.util.Map;

/** What came of a tagged exit. */
public enum TagEnd {
  /** Icing was called. */
  ICING("icing"),
  /** The next face-off was in the own zone for another or unknown reason. */
  OWN_ZONE_RESTART("own-zone restart"),
  /** The opponent had it next. */
  OPPONENT("opponent"),
  /** The team kept or regained it. */
  OWN("own"),
  /** The opponent scored. */
  GOAL_AGAINST("goal against"),
  /** Play stopped otherwise. */
  STOPPED("stopped");

  private final String word;

  TagEnd(String word) {
    this.word = word;
  }

  /** The word that tag sheets write. */
  public String word() {
    return word;
  }

  static Map<String, TagEnd> words() {
    Map<String, TagEnd> words = new LinkedHashMap<>();
    for (TagEnd e : values()) {
      words.put(e.word, e);
    }
    return words;
  }
}
