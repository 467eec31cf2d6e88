package twostrides.sanity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import twostrides.game.Action;
import twostrides.game.Frame;
import twostrides.game.Game;
import twostrides.game.PlayRow;

/** Steps and lengths that the map says and the numbers do not keep to. */
final class Steps {

  /** Numbers that it takes to tell. Assumed. */
  private static final int LEAST = 100;

  /** Share of numbers that a step must explain. Assumed. */
  private static final double MOST = 0.98;

  /** How far a number may be off a step, in steps: rounding. */
  private static final double ROUNDING = 1e-3;

  private static final int REGULAR_PERIODS = 3;

  private Steps() {}

  static List<Doubt> of(List<Game> games, Frame frame) {
    List<Doubt> doubts = new ArrayList<>();
    if (games.isEmpty()) {
      return doubts;
    }
    String where = games.get(0).rows().get(0).sheet();
    List<Double> clocks =
        games.stream().flatMap(g -> g.rows().stream()).map(PlayRow::elapsed).toList();
    frame
        .clockStep()
        .ifPresent(
            step -> step(doubts, where, "clock.step_s", step, clocks.stream().mapToDouble(c -> c)));
    frame
        .placeStep()
        .ifPresent(
            step ->
                step(
                    doubts,
                    where,
                    "place.step",
                    step,
                    games.stream()
                        .flatMap(g -> g.rows().stream())
                        .flatMap(r -> r.place().stream())
                        .mapToDouble(
                            p -> frame.unit().fromMetres(Math.abs(p.x())) + frame.centerX())));
    games.stream()
        .filter(g -> endsEarly(g, frame))
        .findFirst()
        .ifPresent(g -> doubts.add(length(g, frame)));
    return doubts;
  }

  private static void step(
      List<Doubt> doubts, String where, String key, double step, DoubleStream written) {
    double[] numbers = written.toArray();
    if (numbers.length < LEAST) {
      return;
    }
    for (double other : new double[] {step, 10, 5, 1, 0.5, 0.1, 0.01}) {
      if (other == step ? share(numbers, step) < MOST : other > step && fits(numbers, other)) {
        doubts.add(
            Doubt.warn(
                where,
                String.format(
                    Locale.ROOT,
                    other == step
                        ? "numbers between the steps of %s = %s"
                        : "numbers in coarser steps than %s = %s",
                    key,
                    plain(step)),
                "the step in which the sheet writes them",
                "Correct "
                    + key
                    + " in the sheet map, or leave it out: how sure a place or an instant is rests on"
                    + " it."));
        return;
      }
    }
  }

  private static boolean fits(double[] numbers, double step) {
    return share(numbers, step) == 1;
  }

  private static double share(double[] numbers, double step) {
    int on = 0;
    for (double n : numbers) {
      on += Math.abs(n / step - Math.rint(n / step)) < ROUNDING ? 1 : 0;
    }
    return (double) on / numbers.length;
  }

  private static String plain(double n) {
    return java.math.BigDecimal.valueOf(n).stripTrailingZeros().toPlainString();
  }

  /** Seconds that periods last by their rows, to the minute above; a game has at least two. */
  private static boolean endsEarly(Game g, Frame frame) {
    double length = seen(g, frame);
    List<Integer> periods =
        g.rows().stream()
            .map(PlayRow::period)
            .filter(p -> p <= REGULAR_PERIODS)
            .distinct()
            .toList();
    return periods.size() > 1
        && length <= frame.periodLength() - 60
        && periods.stream().allMatch(p -> full(g, frame, p, length));
  }

  private static double clock(PlayRow r, Frame frame) {
    return frame.countsDown() ? frame.periodLength() - r.elapsed() : r.elapsed();
  }

  /** The highest clock, up to the next whole minute. */
  private static double seen(Game g, Frame frame) {
    double highest =
        g.rows().stream()
            .filter(r -> r.period() <= REGULAR_PERIODS)
            .mapToDouble(r -> clock(r, frame))
            .max()
            .orElse(0);
    return Math.ceil(highest / 60) * 60;
  }

  /** Whether a period's clocks go from one end to the other, to a minute, or it opens there. */
  private static boolean full(Game g, Frame frame, int period, double length) {
    double[] clocks =
        g.rows().stream()
            .filter(r -> r.period() == period)
            .mapToDouble(r -> clock(r, frame))
            .sorted()
            .toArray();
    boolean opens =
        frame.countsDown()
            && g.rows().stream()
                .anyMatch(
                    r ->
                        r.period() == period
                            && r.action() == Action.FACEOFF
                            && clock(r, frame) == length);
    return opens || (clocks[0] <= 60 && clocks[clocks.length - 1] > length - 60);
  }

  private static Doubt length(Game g, Frame frame) {
    long seconds = Math.round(seen(g, frame));
    return Doubt.warn(
        g.rows().get(0).sheet(),
        "no clock above " + seconds / 60 + ":00 in the periods of game " + g.id(),
        "periods of " + plain(frame.periodLength() / 60) + " minutes",
        "Write in the sheet map, under [clock]: period_length_s = "
            + seconds
            + ". Until then every instant of a period is said to be later than it was.");
  }
}
