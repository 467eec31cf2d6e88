package twostrides.stats;

import java.util.List;
import java.util.OptionalDouble;

/** The share of all clusters together by drawing them again, for checks of the method. */
public final class BootstrapShare {
  private BootstrapShare() {}

  /** Each count is one cluster. */
  public static Bootstrap.Resampled of(Bootstrap bootstrap, List<Count> clusters) {
    return bootstrap.of(
        clusters,
        drawn -> {
          long successes = 0;
          long trials = 0;
          for (Count count : drawn) {
            successes += count.successes();
            trials += count.trials();
          }
          return trials == 0
              ? OptionalDouble.empty()
              : OptionalDouble.of((double) successes / trials);
        });
  }
}
