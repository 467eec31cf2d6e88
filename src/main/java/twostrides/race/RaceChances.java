package twostrides.race;

/**
 * What became of a release in so many draws. The counts add up to the draws.
 *
 * @param draws draws made
 * @param icing icing by the book's question
 * @param wavedOff the releasing team would have been first
 * @param stoppedShort the puck died before the far goal line
 * @param touched an opponent could play it before the goal line
 * @param other in the net, or over the glass
 */
public record RaceChances(
    int draws, int icing, int wavedOff, int stoppedShort, int touched, int other) {

  /** Checks the sum. */
  public RaceChances {
    if (draws < 1 || icing + wavedOff + stoppedShort + touched + other != draws) {
      throw new IllegalArgumentException("the counts of a race add up to its draws, 1 or more");
    }
  }

  /** Chance of icing, 0 to 1. */
  public double pIcing() {
    return (double) icing / draws;
  }

  /**
   * Simulation error of a chance: the standard error of a share of so many draws.
   *
   * @param count one of the counts
   */
  public double error(int count) {
    double p = (double) count / draws;
    return Math.sqrt(p * (1 - p) / draws);
  }
}
