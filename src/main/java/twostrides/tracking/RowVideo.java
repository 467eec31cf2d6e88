package twostrides.tracking;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The second of the video of a row, from pairs of clock and video and from where play stopped.
 *
 * <p>With c the clock of a row in seconds of play, (c1, v1) and (c2, v2) the pairs around it, S =
 * (v2 - v1) - (c2 - c1) the seconds that the clock stood between them, m the stoppages between them
 * and j those of them that were over at the row:
 *
 * <pre>
 *   S within the pairs' errors:  v = v1 + (c - c1) (v2 - v1) / (c2 - c1)
 *   otherwise:                   v = v1 + (c - c1) + S j / m
 * </pre>
 *
 * The second is exact but for the clock's steps where j is 0 or m; in between S was shared out
 * equally, which may be off by max(j, m - j) S / m. Where the clock stood and no stoppage is known,
 * the answer is {@link VideoClock}'s. Outside the pairs of a period the clock is taken to run on.
 *
 * <p>At a clock at which play stopped, of two pairs the first stands before the stoppage and the
 * last after it. A single pair stands after it, unless the clock ran all the way from the pair
 * before: then it was read at the whistle.
 */
final class RowVideo {

  /** A pair and how many stoppages of the period were over at it. */
  private record Fixed(ClockPair pair, int over) {}

  /** A period: its pairs, and the clocks at which play stopped, both in order. */
  private record Line(List<Fixed> pairs, List<Double> stops) {}

  private final VideoClock clock;
  private final Stoppages stoppages;
  private final double clockStep;
  private final double reach;
  private final Map<Integer, Line> periods = new HashMap<>();

  /**
   * The rows of one game.
   *
   * @param clock its pairs
   * @param stoppages where play stopped
   * @param clockStep smallest step of the rows' clock, in seconds
   * @param reach farthest from a pair that a clock may be outside the pairs, in seconds of play
   */
  RowVideo(VideoClock clock, Stoppages stoppages, double clockStep, double reach) {
    this.clock = clock;
    this.stoppages = stoppages;
    this.clockStep = clockStep;
    this.reach = reach;
  }

  /**
   * The second of a row.
   *
   * @param period period, from 1
   * @param elapsed seconds of play since the period began
   * @param overHere how many stoppages at that very clock were over
   */
  ClockMatch at(int period, double elapsed, int overHere) {
    Line line = periods.computeIfAbsent(period, this::line);
    int over = below(line.stops, elapsed) + Math.min(overHere, count(line.stops, elapsed));
    Optional<Fixed> a =
        line.pairs.stream()
            .filter(f -> f.pair.elapsed() <= elapsed && f.over <= over)
            .reduce((earlier, later) -> later);
    Optional<Fixed> b =
        line.pairs.stream().filter(f -> f.pair.elapsed() >= elapsed && f.over >= over).findFirst();
    if (a.isPresent() && b.isPresent()) {
      return between(a.get(), b.get(), period, elapsed, over);
    }
    if (a.isEmpty() && b.isEmpty()) {
      return new ClockMatch.NotCovered("in a period without a pair of clock and video");
    }
    Fixed nearest = a.or(() -> b).get();
    double away = elapsed - nearest.pair.elapsed();
    double second = nearest.pair.video() + away;
    if (Math.abs(away) > reach) {
      return new ClockMatch.NotCovered("too far from the nearest pair of clock and video");
    }
    if (second < 0) {
      return new ClockMatch.NotCovered("before the video begins");
    }
    int between = Math.abs(over - nearest.over);
    return between == 0 && stoppages.known()
        ? new ClockMatch.At(second, error(nearest.pair), true)
        : new ClockMatch.Beyond(second, between);
  }

  private ClockMatch between(Fixed a, Fixed b, int period, double elapsed, int over) {
    double error = Math.max(error(a.pair), error(b.pair));
    int known = b.over - a.over;
    int past = over - a.over;
    if (VideoClock.ran(a.pair, b.pair)) {
      return VideoClock.onLine(a.pair, b.pair, elapsed, error);
    }
    if (known == 0) {
      return clock.videoAt(period, elapsed, clockStep);
    }
    double stood = VideoClock.slack(a.pair, b.pair);
    double second = a.pair.video() + (elapsed - a.pair.elapsed()) + stood * past / known;
    double off = past == 0 || past == known ? 0 : stood * Math.max(past, known - past) / known;
    return new ClockMatch.At(second, error + off, off == 0);
  }

  private double error(ClockPair pair) {
    return pair.plusMinus() + clockStep / 2;
  }

  private Line line(int period) {
    List<ClockPair> pairs = new ArrayList<>();
    List<Double> stops = new ArrayList<>(stoppages.in(period));
    for (ClockPair p : clock.pairsOf(period)) {
      ClockPair last = pairs.isEmpty() ? null : pairs.get(pairs.size() - 1);
      boolean sameClock = last != null && last.elapsed() == p.elapsed();
      boolean sameInstant = sameClock && p.video() - last.video() <= VideoClock.errors(last, p);
      if (!sameInstant) {
        pairs.add(p);
      }
      // Two instants at one clock are a stoppage, whether the sheet knows it or not.
      if (sameClock && !sameInstant && !stops.contains(p.elapsed())) {
        stops.add(below(stops, p.elapsed()), p.elapsed());
      }
    }
    return new Line(
        IntStream.range(0, pairs.size())
            .mapToObj(i -> new Fixed(pairs.get(i), over(pairs, i, stops)))
            .toList(),
        stops);
  }

  private static int over(List<ClockPair> pairs, int i, List<Double> stops) {
    double here = pairs.get(i).elapsed();
    List<Double> clocks = pairs.stream().map(ClockPair::elapsed).toList();
    int first = clocks.indexOf(here);
    int last = clocks.lastIndexOf(here);
    int before = below(stops, here);
    int all = count(stops, here);
    if (first == last) {
      boolean atTheWhistle = i > 0 && VideoClock.ran(pairs.get(i - 1), pairs.get(i));
      return before + (atTheWhistle ? 0 : all);
    }
    // Whistle, face-off, whistle, face-off: every second pair stands after one more stoppage.
    return before + (i == last ? all : Math.min(all, (i - first + 1) / 2));
  }

  private static int below(List<Double> sorted, double value) {
    return (int) sorted.stream().filter(s -> s < value).count();
  }

  private static int count(List<Double> sorted, double value) {
    return (int) sorted.stream().filter(s -> s == value).count();
  }
}
