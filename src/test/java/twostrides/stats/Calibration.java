package twostrides.stats;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far stated probabilities can be trusted.
 *
 * @param bins of equal width from 0 to 1; an upper edge belongs to the next bin, 1 to the last
 * @param observed how often it happened, of all forecasts
 * @param brier mean of (probability - outcome)², 0 best. Source: AMS Glossary, Brier score
 * @param parts the Brier score taken apart
 * @param ruledOut forecasts of 0 that happened and of 1 that did not; each makes the log score
 *     infinite
 * @param logScore mean of -log(probability given to what came), natural logarithm, 0 best; empty
 *     where it is infinite
 */
public record Calibration(
    List<Bin> bins,
    Count observed,
    double brier,
    Parts parts,
    int ruledOut,
    OptionalDouble logScore) {

  /** Copies the bins. */
  public Calibration {
    bins = List.copyOf(bins);
  }

  /**
   * The forecasts between two probabilities.
   *
   * @param edges lower and upper probability
   * @param observed how often it happened, of how many; its Wilson interval is the bar to draw
   * @param meanForecast mean probability stated; empty without forecasts
   */
  public record Bin(Interval edges, Count observed, OptionalDouble meanForecast) {}

  /**
   * Brier = reliability - resolution + uncertainty + within-bin variance - within-bin covariance.
   * The first three: Murphy 1973, Journal of Applied Meteorology 12:595; they suffice where all
   * forecasts in a bin are the same. The last two: Stephenson, Coelho and Jolliffe 2008, Weather
   * and Forecasting 23:752. For bins k of n_k forecasts with mean f_k and observed share o_k:
   *
   * @param reliability (1/N) sum n_k (f_k - o_k)², 0 best
   * @param resolution (1/N) sum n_k (o_k - o)², large is good
   * @param uncertainty o (1 - o), the score of always saying the base rate
   * @param withinVariance (1/N) sum (f - f_k)²
   * @param withinCovariance (2/N) sum (outcome - o_k)(f - f_k)
   */
  public record Parts(
      double reliability,
      double resolution,
      double uncertainty,
      double withinVariance,
      double withinCovariance) {

    /** The Brier score put together again. */
    public double sum() {
      return reliability - resolution + uncertainty + withinVariance - withinCovariance;
    }
  }

  /**
   * 1 - Brier / uncertainty: 1 perfect, 0 no better than always saying the base rate; empty where
   * all came out alike.
   */
  public OptionalDouble skill() {
    return parts.uncertainty() > 0
        ? OptionalDouble.of(1 - brier / parts.uncertainty())
        : OptionalDouble.empty();
  }

  /**
   * Scores the forecasts; empty without any.
   *
   * @param bins how many bins, 1 or more
   */
  public static Optional<Calibration> of(List<Forecast> forecasts, int bins) {
    if (bins < 1) {
      throw new IllegalArgumentException("a table needs 1 bin or more, not " + bins);
    }
    if (forecasts.isEmpty()) {
      return Optional.empty();
    }
    List<List<Forecast>> members = new ArrayList<>();
    for (int k = 0; k < bins; k++) {
      members.add(new ArrayList<>());
    }
    for (Forecast forecast : forecasts) {
      members.get(Math.min(bins - 1, (int) (forecast.probability() * bins))).add(forecast);
    }
    List<Bin> table = new ArrayList<>();
    for (int k = 0; k < bins; k++) {
      Interval edges = new Interval((double) k / bins, (double) (k + 1) / bins);
      table.add(
          new Bin(
              edges,
              count(members.get(k)),
              members.get(k).stream().mapToDouble(Forecast::probability).average()));
    }
    double brier = forecasts.stream().mapToDouble(Forecast::squaredError).average().orElseThrow();
    double log = forecasts.stream().mapToDouble(Forecast::surprise).average().orElseThrow();
    int ruledOut = (int) forecasts.stream().filter(f -> Double.isInfinite(f.surprise())).count();
    return Optional.of(
        new Calibration(
            table,
            count(forecasts),
            brier,
            parts(table, members, count(forecasts)),
            ruledOut,
            ruledOut > 0 ? OptionalDouble.empty() : OptionalDouble.of(log)));
  }

  private static Count count(List<Forecast> forecasts) {
    int happened = (int) forecasts.stream().filter(Forecast::happened).count();
    return new Count(happened, forecasts.size());
  }

  private static Parts parts(List<Bin> table, List<List<Forecast>> members, Count all) {
    double n = all.trials();
    double base = all.successes() / n;
    double reliability = 0;
    double resolution = 0;
    double variance = 0;
    double covariance = 0;
    for (int k = 0; k < table.size(); k++) {
      Count observed = table.get(k).observed();
      if (observed.trials() == 0) {
        continue;
      }
      double share = observed.share().orElseThrow();
      double mean = table.get(k).meanForecast().orElseThrow();
      reliability += observed.trials() * (mean - share) * (mean - share);
      resolution += observed.trials() * (share - base) * (share - base);
      for (Forecast forecast : members.get(k)) {
        double off = forecast.probability() - mean;
        variance += off * off;
        covariance += 2 * (forecast.outcome() - share) * off;
      }
    }
    return new Parts(
        reliability / n, resolution / n, base * (1 - base), variance / n, covariance / n);
  }

  /**
   * Brier's own score over several classes: mean over forecasts of the sum over classes of
   * (probability - outcome)², 0 to 2; with two classes twice the score above. Empty without
   * forecasts. Source: Brier 1950, Monthly Weather Review 78:1.
   *
   * @param probabilities for each forecast one probability for each class
   * @param came for each forecast the number of the class that came, from 0
   */
  public static OptionalDouble brier1950(List<List<Double>> probabilities, List<Integer> came) {
    if (probabilities.size() != came.size()) {
      throw new IllegalArgumentException(
          probabilities.size() + " forecasts, but " + came.size() + " outcomes");
    }
    double sum = 0;
    for (int i = 0; i < came.size(); i++) {
      List<Double> row = probabilities.get(i);
      if (came.get(i) < 0 || came.get(i) >= row.size()) {
        throw new IllegalArgumentException(
            "class " + came.get(i) + " came, but there are " + row.size());
      }
      for (int c = 0; c < row.size(); c++) {
        sum += new Forecast(row.get(c), c == came.get(i)).squaredError();
      }
    }
    return came.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(sum / came.size());
  }
}
