package twostrides.sanity;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
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

  /** Steps in which sheets write numbers, the coarsest first. */
  private static final List<Double> USUAL = List.of(10.0, 5.0, 1.0, 0.5, 0.1, 0.01);

  /** How many of a game's clock readings stand on each step, where the map says one. */
  static Map<Double, Share> clocks(Game g, Frame frame) {
    return onSteps(frame.clockStep(), g.rows().stream().mapToDouble(PlayRow::elapsed));
  }

  /** The same of its places along the rink, as the sheet writes them. */
  static Map<Double, Share> places(Game g, Frame frame) {
    return onSteps(
        frame.placeStep(),
        g.rows().stream()
            .flatMap(r -> r.place().stream())
            .mapToDouble(p -> frame.unit().fromMetres(Math.abs(p.x())) + frame.centerX()));
  }

  private static Map<Double, Share> onSteps(OptionalDouble said, DoubleStream written) {
    Map<Double, Share> on = new LinkedHashMap<>();
    if (said.isPresent()) {
      on.put(said.getAsDouble(), new Share());
      USUAL.forEach(step -> on.putIfAbsent(step, new Share()));
      written.forEach(
          n ->
              on.forEach(
                  (step, share) -> share.add(Math.abs(n / step - Math.rint(n / step)) < ROUNDING)));
    }
    return on;
  }

  static List<Doubt> of(List<GameSigns> games, Frame frame) {
    List<Doubt> doubts = new ArrayList<>();
    String where = games.get(0).sheet();
    frame
        .clockStep()
        .ifPresent(
            step -> step(doubts, where, "clock.step_s", step, games, GameSigns::clocksOnSteps));
    frame
        .placeStep()
        .ifPresent(
            step -> step(doubts, where, "place.step", step, games, GameSigns::placesOnSteps));
    games.stream().flatMap(g -> g.endsEarly().stream()).findFirst().ifPresent(doubts::add);
    return doubts;
  }

  private static void step(
      List<Doubt> doubts,
      String where,
      String key,
      double step,
      List<GameSigns> games,
      Function<GameSigns, Map<Double, Share>> which) {
    Map<Double, Share> on = Share.sums(games.stream().map(which).toList());
    for (Map.Entry<Double, Share> s : on.entrySet()) {
      boolean said = s.getKey() == step;
      Share share = s.getValue();
      if (said ? share.below(MOST, LEAST) : s.getKey() > step && share.everyOf(LEAST)) {
        doubts.add(
            Doubt.warn(
                where,
                String.format(
                    Locale.ROOT,
                    said
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

  private static String plain(double n) {
    return java.math.BigDecimal.valueOf(n).stripTrailingZeros().toPlainString();
  }

  /** A game whose periods last less by their rows, to the minute above; it has at least two. */
  static Optional<Doubt> endsEarly(Game g, Frame frame) {
    double length = seen(g, frame);
    List<Integer> periods =
        g.rows().stream()
            .map(PlayRow::period)
            .filter(p -> p <= REGULAR_PERIODS)
            .distinct()
            .toList();
    return periods.size() > 1
            && length <= frame.periodLength() - 60
            && periods.stream().allMatch(p -> full(g, frame, p, length))
        ? Optional.of(length(g, frame))
        : Optional.empty();
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
