package twostrides.race;

/**
 * What became of a release in so many simulations. The counts add up to them.
 *
 * @param simulations how many
 * @param icing icing by the book's question
 * @param wavedOff the releasing team would have been first
 * @param stoppedShort the puck died before the far goal line
 * @param touched an opponent could play it before the goal line
 * @param other in the net, or over the glass
 */
public record RaceChances(
    int simulations, int icing, int wavedOff, int stoppedShort, int touched, int other) {

  /**
   * Checks the sum.
   *
   * @throws IllegalArgumentException where the counts do not add up
   */
  public RaceChances {
    if (simulations < 1 || icing + wavedOff + stoppedShort + touched + other != simulations) {
      throw new IllegalArgumentException(
          "the counts of a race add up to its simulations, 1 or more");
    }
  }

  /** Chance of icing, 0 to 1. */
  public double pIcing() {
    return (double) icing / simulations;
  }

  /**
   * Simulation error of a chance: the standard error of a share of so many simulations.
   *
   * @param count one of the counts
   */
  public double error(int count) {
    double p = (double) count / simulations;
    return Math.sqrt(p * (1 - p) / simulations);
  }
}
