package twostrides.rink;

/**
 * The two units of length that sheets and rink descriptions are written in; everything inside is
 * metres.
 */
public enum Units {
  /** Metre, the unit of every length inside the program. */
  METRE("m", 1.0),
  /** International foot: exactly 0.3048 m (international yard and pound agreement, 1959). */
  FOOT("ft", 0.3048);

  private final String symbol;
  private final double metres;

  Units(String symbol, double metres) {
    this.symbol = symbol;
    this.metres = metres;
  }

  /** The symbol used in sheet maps and on pages, {@code m} or {@code ft}. */
  public String symbol() {
    return symbol;
  }

  /**
   * A length written in this unit, in metres.
   *
   * @param value length in this unit
   */
  public double toMetres(double value) {
    return value * metres;
  }

  /**
   * A length in metres, in this unit.
   *
   * @param metresValue length in metres
   */
  public double fromMetres(double metresValue) {
    return metresValue / metres;
  }
}
