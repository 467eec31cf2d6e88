package twostrides.exits;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
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

  /** Carries shorter than this say nothing about pace, s: a clock in whole seconds. */
  private static final double LEAST_CARRY_S = 1;

  private final Map<String, double[]> atRisk = new TreeMap<>();
  private double carriedMetres;
  private double carriedSeconds;

  /**
   * Counts a season.
   *
   * @param play the moves
   */
  CarryRates(Play play) {
    List<Move> moves = play.moves();
    for (int i = 0; i + 1 < moves.size(); i++) {
      Move m = moves.get(i);
      Move next = moves.get(i + 1);
      boolean carrying =
          m.kind() == Move.Kind.CONTROL
              && m.x().isPresent()
              && play.rink(m).shortOfCenter(m.x().getAsDouble()) > 0
              && next.samePlay(m);
      if (carrying) {
        count(m, next);
      }
    }
  }

  private void count(Move m, Move next) {
    double seconds = next.elapsed() - m.elapsed();
    boolean lost = next.control() && !next.team().equals(m.team());
    boolean kept =
        next.kind() == Move.Kind.CONTROL && next.team().equals(m.team()) && same(m, next);
    if (!lost && !kept) {
      return;
    }
    add(m.pressure().orElse(UNSAID), seconds, lost);
    if (m.pressure().isPresent()) {
      add(UNSAID, seconds, lost);
    }
    OptionalDouble x = next.x();
    boolean carried =
        kept && x.isPresent() && x.getAsDouble() > m.x().orElseThrow() && seconds >= LEAST_CARRY_S;
    if (carried) {
      carriedMetres += x.getAsDouble() - m.x().orElseThrow();
      carriedSeconds += seconds;
    }
  }

  private static boolean same(Move m, Move next) {
    return next.player().isPresent() && next.player().equals(m.player());
  }

  private void add(String pressure, double seconds, boolean lost) {
    double[] sum = atRisk.computeIfAbsent(pressure, p -> new double[2]);
    sum[0] += lost ? 1 : 0;
    sum[1] += seconds;
  }

  /**
   * Losses a second under a pressure.
   *
   * @param pressure a word of the sheets, or empty for touches of every kind
   */
  public LossRate losses(Optional<String> pressure) {
    String key = pressure.orElse(UNSAID);
    double[] sum = atRisk.getOrDefault(key, new double[2]);
    return Assumptions.losses(key, (int) sum[0], sum[1]);
  }

  /** Seconds of carrying up ice that {@link #pace} rests on. */
  public double secondsOfPace() {
    return carriedSeconds;
  }

  /** Metres a second up ice of those who carried on, drawn toward 5 m/s by 20 s. */
  public double pace() {
    return (carriedMetres + Assumptions.PACE.value() * Assumptions.LOSS_SECONDS.value())
        / (carriedSeconds + Assumptions.LOSS_SECONDS.value());
  }
}
