package twostrides.race;

/**
 * A mean over draws.
 *
 * @param value the mean
 * @param error its simulation error: the standard error over the draws
 */
public record Estimate(double value, double error) {

  /** Rejects what no draws give. */
  public Estimate {
    if (!Double.isFinite(value) || !(error >= 0)) {
      throw new IllegalArgumentException(
          "an estimate needs a finite value and an error of 0 or more, not "
              + value
              + " and "
              + error);
    }
  }

  /** Adds up draws. */
  static final class Sum {
    private int n;
    private double sum;
    private double squares;

    void add(double value) {
      n++;
      sum += value;
      squares += value * value;
    }

    Estimate estimate() {
      double mean = sum / n;
      return new Estimate(mean, Math.sqrt(Math.max(0, squares / n - mean * mean) / n));
    }
  }
}
