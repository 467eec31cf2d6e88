package twostrides.stats;

/**
 * A stated probability and what came of it.
 *
 * @param probability that it would happen, 0 to 1
 * @param happened whether it did
 */
public record Forecast(double probability, boolean happened) {

  /** Rejects a probability outside 0 to 1. */
  public Forecast {
    if (!(0 <= probability && probability <= 1)) {
      throw new IllegalArgumentException("a probability lies in 0 to 1, not " + probability);
    }
  }

  /** 1 where it happened, else 0. */
  int outcome() {
    return happened ? 1 : 0;
  }

  /** (probability - outcome)², 0 best, 1 worst. */
  double squaredError() {
    double error = probability - outcome();
    return error * error;
  }

  /** -log of the probability given to what came, 0 best; infinite where that had been ruled out. */
  double surprise() {
    return -Math.log(happened ? probability : 1 - probability);
  }
}
