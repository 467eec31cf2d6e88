package twostrides.game;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** How close the nearest checker was, as a person tagged it. */
public enum Pressure {
  /** Nobody near. */
  NONE,
  /** A checker near, not in reach. */
  LIGHT,
  /** A checker in reach. */
  HEAVY;

  /** The word that sheets write. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  static Map<String, Pressure> words() {
    Map<String, Pressure> words = new LinkedHashMap<>();
    for (Pressure p : values()) {
      words.put(p.word(), p);
    }
    return words;
  }
}
