package twostrides.race;

/**
 * A mean over simulations.
 *
 * @param value the mean
 * @param error its simulation error: the standard error over the simulations
 */
public record Estimate(double value, double error) {

  /**
   * Rejects what no simulations give.
   *
   * @throws IllegalArgumentException for a mean that is no number or an error below 0
   */
  public Estimate {
    if (!Double.isFinite(value) || !(error >= 0)) {
      throw new IllegalArgumentException(
          "an estimate needs a finite value and an error of 0 or more, not %s and %s"
              .formatted(value, error));
    }
  }

  /**
   * The mean of what simulations gave.
   *
   * @param values one of each, at least one
   */
  static Estimate of(double... values) {
    double sum = 0;
    double squares = 0;
    for (double value : values) {
      sum += value;
      squares += value * value;
    }
    int n = values.length;
    double mean = sum / n;
    return new Estimate(mean, Math.sqrt(Math.max(0, squares / n - mean * mean) / n));
  }
}
