package twostrides.game;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** Which net stood empty, seen from the acting team. */
public enum NetEmpty {
  /** Both goalkeepers were in. */
  NONE,
  /** The acting team's goalkeeper was off. */
  OWN,
  /** The opponent's goalkeeper was off. */
  OPPONENT,
  /** Both were off. */
  BOTH;

  /** The word that tables and tag sheets write. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Whether the opponent's goalkeeper was off. */
  public boolean ofOpponent() {
    return this == OPPONENT || this == BOTH;
  }

  static Map<String, NetEmpty> words() {
    Map<String, NetEmpty> words = new LinkedHashMap<>();
    for (NetEmpty n : values()) {
      words.put(n.word(), n);
    }
    return words;
  }
}
