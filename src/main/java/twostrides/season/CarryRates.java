package twostrides.season;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import twostrides.exits.Carries;
import twostrides.exits.GameRecords;
import twostrides.game.Pressure;
import twostrides.race.Assumptions;
import twostrides.race.LossRate;

/**
 * How carriers fare in their own half, from the sheets themselves: losses a second under each
 * pressure, and metres a second up ice.
 *
 * <p>Counted are the carries: touches under control behind the red line that the same player's next
 * touch follows (kept), or the opponent's control (lost), with the seconds between. Who passed or
 * sent it on did not carry, so his time says nothing of carrying.
 */
public final class CarryRates {

  /** Pressure where the sheet says none: a key of its own. */
  static final String UNSAID = "";

  private final Map<String, double[]> atRisk = new TreeMap<>();
  private double carriedMetres;
  private double carriedSeconds;

  /**
   * Counts a season.
   *
   * @param games its play sheets' games
   */
  public CarryRates(List<GameRecords> games) {
    for (GameRecords g : games) {
      g.carries().steps().forEach(this::count);
    }
  }

  private void count(Carries.Step step) {
    step.pressure().ifPresent(p -> add(p.word(), step.seconds(), step.lost()));
    add(UNSAID, step.seconds(), step.lost());
    if (step.metresUpIce().isPresent()) {
      carriedMetres += step.metresUpIce().getAsDouble();
      carriedSeconds += step.seconds();
    }
  }

  private void add(String pressure, double seconds, boolean lost) {
    double[] sum = atRisk.computeIfAbsent(pressure, p -> new double[2]);
    sum[0] += lost ? 1 : 0;
    sum[1] += seconds;
  }

  /**
   * Losses a second under a pressure.
   *
   * @param pressure how close the nearest checker was, or empty for touches of every kind
   */
  public LossRate losses(Optional<Pressure> pressure) {
    String key = pressure.map(Pressure::word).orElse(UNSAID);
    double[] sum = atRisk.getOrDefault(key, new double[2]);
    return Assumptions.losses(key, (int) sum[0], sum[1]);
  }

  /** Seconds of carrying up ice that {@link #pace} rests on. */
  public double secondsOfPace() {
    return carriedSeconds;
  }

  /** Metres a second up ice of those who carried on, adjusted toward 5 m/s by 20 s. */
  public double pace() {
    return (carriedMetres + Assumptions.PACE.value() * Assumptions.LOSS_SECONDS.value())
        / (carriedSeconds + Assumptions.LOSS_SECONDS.value());
  }
}
