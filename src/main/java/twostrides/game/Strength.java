package twostrides.game;

/** Manpower of the acting team at an instant; only penalties being served make a difference. */
public enum Strength {
  /** As many skaters as the opponent, or the sheet shows no penalty that differs. */
  EVEN("even"),
  /** Fewer skaters because of penalties being served. */
  SHORTHANDED("shorthanded"),
  /** More skaters because the opponent serves penalties. */
  POWER_PLAY("power play"),
  /** The sheet does not say. */
  UNKNOWN("unknown");

  private final String label;

  Strength(String label) {
    this.label = label;
  }

  /** The same manpower as the other team has it. */
  public Strength ofOpponent() {
    return switch (this) {
      case SHORTHANDED -> POWER_PLAY;
      case POWER_PLAY -> SHORTHANDED;
      case EVEN, UNKNOWN -> this;
    };
  }

  /** The word written in tables and on pages. */
  public String label() {
    return label;
  }
}
