package twostrides.rulebook.penalty;

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

  /** The kind of each word that a sheet may write. */
  public static Map<String, PenaltyKind> words() {
    Map<String, PenaltyKind> words = new LinkedHashMap<>();
    for (PenaltyKind k : values()) {
      words.put(k.name().toLowerCase(Locale.ROOT), k);
    }
    return words;
  }

  /** The kind in running text: {@code double minor}. */
  String text() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /**
   * Whether a skater is missing while it is served. A misconduct and a game misconduct are replaced
   * at once (NHL 22.3 and 23.1, IIHF 22 and 23, grade S); a minor or major called with one counts
   * by itself.
   */
  boolean costsSkater() {
    return this != MISCONDUCT && this != GAME_MISCONDUCT;
  }

  /** Whether it is a minor of any form, which a goal can end. */
  boolean isMinor() {
    return this == MINOR || this == DOUBLE_MINOR || this == BENCH_MINOR;
  }
}
