package twostrides.game;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** What was called, where a sheet says so. */
public enum PenaltyKind {
  /** Two minutes. */
  MINOR,
  /** Two minutes twice. */
  DOUBLE_MINOR,
  /** Two minutes against the bench. */
  BENCH_MINOR,
  /** Five minutes. */
  MAJOR,
  /** Match penalty. */
  MATCH,
  /** Ten minutes, no skater missing. */
  MISCONDUCT,
  /** For the rest of the game, no skater missing. */
  GAME_MISCONDUCT;

  static Map<String, PenaltyKind> words() {
    Map<String, PenaltyKind> words = new LinkedHashMap<>();
    for (PenaltyKind k : values()) {
      words.put(k.name().toLowerCase(Locale.ROOT), k);
    }
    return words;
  }
}
