package twostrides.game;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** Why play stopped, where a sheet says so. */
public enum StopReason {
  /** Icing was called. */
  ICING,
  /** Offside was called. */
  OFFSIDE,
  /** The puck left the rink. */
  OUT_OF_PLAY,
  /** A goalkeeper held the puck. */
  GOALKEEPER,
  /** A goal. */
  GOAL,
  /** A penalty was called. */
  PENALTY,
  /** A goal frame was off its pegs. */
  NET_OFF,
  /** A player was hurt. */
  INJURY,
  /** The period ended. */
  PERIOD_END,
  /** Any other reason. */
  OTHER;

  /** The word that sheets write. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  static Map<String, StopReason> words() {
    Map<String, StopReason> words = new LinkedHashMap<>();
    for (StopReason r : values()) {
      words.put(r.word(), r);
    }
    return words;
  }
}
