package twostrides.tracking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import twostrides.sheet.Problem;

/**
 * Game clock to video and back, from pairs of both.
 *
 * <p>Between two pairs the video advances by the play time and by the time the clock stood, so the
 * second v of a clock c between (c1, v1) and (c2, v2) lies in
 *
 * <pre>  v1 + (c - c1)  &lt;=  v  &lt;=  v2 - (c2 - c)</pre>
 *
 * Where both ends agree within the pairs' own errors the clock ran, and the answer is the straight
 * line between the pairs; otherwise it is the middle of that interval, with half its length in the
 * bound. Both rise with the clock. Outside the first and last pair of a period nothing is covered.
 * Assumed: the video is not slowed down, nothing is cut out of it while the clock runs, and a pair
 * stands on the right side of every stoppage: at a clock at which play stopped, give both ends.
 *
 * <p>Pairs that no running clock can join (the video passes more slowly than the play between them)
 * are left out, the fewest that mend it, and reported.
 */
public final class VideoClock {
  /** Rounding of sums of decimals, in seconds; a thousandth of a frame at any usual rate. */
  private static final double ROUNDING = 1e-5;

  private final TreeMap<Integer, List<ClockPair>> periods = new TreeMap<>();
  private final List<Problem> doubts = new ArrayList<>();

  private VideoClock() {}

  /**
   * A clock from pairs, in any order.
   *
   * @param pairs the pairs; of equal clocks several may be given, as when a stoppage begins and
   *     ends
   */
  public static VideoClock of(List<ClockPair> pairs) {
    VideoClock clock = new VideoClock();
    TreeMap<Integer, List<ClockPair>> byPeriod = new TreeMap<>();
    pairs.forEach(p -> byPeriod.computeIfAbsent(p.period(), k -> new ArrayList<>()).add(p));
    byPeriod.forEach((period, list) -> clock.periods.put(period, clock.joined(list)));
    return clock;
  }

  /** The longest row of pairs in which time stood never falls by more than the pairs' errors. */
  private List<ClockPair> joined(List<ClockPair> list) {
    List<ClockPair> sorted = new ArrayList<>(list);
    sorted.sort(
        Comparator.comparingDouble(ClockPair::elapsed).thenComparingDouble(ClockPair::video));
    int n = sorted.size();
    int[] length = new int[n];
    int[] before = new int[n];
    int best = 0;
    for (int i = 0; i < n; i++) {
      before[i] = -1;
      length[i] = 1;
      for (int j = i - 1; j >= 0; j--) {
        if (length[j] >= length[i] && follows(sorted.get(j), sorted.get(i))) {
          length[i] = length[j] + 1;
          before[i] = j;
        }
      }
      best = length[i] > length[best] ? i : best;
    }
    List<ClockPair> kept = new ArrayList<>();
    boolean[] used = new boolean[n];
    for (int i = best; i >= 0; i = before[i]) {
      kept.add(0, sorted.get(i));
      used[i] = true;
    }
    for (int i = 0; i < n; i++) {
      if (!used[i]) {
        doubts.add(against(sorted.get(i)));
      }
    }
    return kept;
  }

  private static boolean follows(ClockPair a, ClockPair b) {
    return b.video() >= a.video() && slack(a, b) >= -errors(a, b);
  }

  /** Seconds that the clock stood between two pairs, as far as they say. */
  static double slack(ClockPair a, ClockPair b) {
    return b.stood() - a.stood();
  }

  /** How far off that may be. */
  static double errors(ClockPair a, ClockPair b) {
    return a.plusMinus() + b.plusMinus() + ROUNDING;
  }

  private static Problem against(ClockPair pair) {
    return new Problem(
        pair.file(),
        pair.line(),
        TrackForm.PERIOD + ", " + TrackForm.CLOCK + ", " + TrackForm.VIDEO,
        String.format(
            Locale.ROOT,
            "period %d, %.1f s played, video %.1f s",
            pair.period(),
            pair.elapsed(),
            pair.video()),
        "a video that passes at least as fast as the clock, as the other pairs of the period say",
        "Correct the clock or the video's second; until then the pair is not used.");
  }

  /** Pairs that were left out. */
  public List<Problem> doubts() {
    return List.copyOf(doubts);
  }

  /**
   * The pairs in use of a period, by clock, then by second of the video.
   *
   * @param period period, from 1
   */
  List<ClockPair> pairsOf(int period) {
    return periods.getOrDefault(period, List.of());
  }

  /** How many pairs are in use. */
  public int pairs() {
    return periods.values().stream().mapToInt(List::size).sum();
  }

  /**
   * The second of the video at which a clock stood.
   *
   * @param period period, from 1
   * @param elapsed seconds of play since the period began
   * @param clockStep smallest step of that clock in seconds; half of it goes into the bound
   */
  public ClockMatch videoAt(int period, double elapsed, double clockStep) {
    return match(period, elapsed, clockStep, ClockPair::elapsed, ClockPair::video, true);
  }

  /**
   * The clock at a second of the video, as seconds of play since the period began.
   *
   * @param period period, from 1
   * @param video second of the video
   */
  public ClockMatch clockAt(int period, double video) {
    return match(period, video, 0, ClockPair::video, ClockPair::elapsed, false);
  }

  private ClockMatch match(
      int period,
      double asked,
      double step,
      ToDoubleFunction<ClockPair> from,
      ToDoubleFunction<ClockPair> to,
      boolean toVideo) {
    List<ClockPair> pairs = pairsOf(period);
    if (pairs.isEmpty()) {
      return new ClockMatch.NotCovered("no pair of clock and video in period " + period);
    }
    int a = -1;
    int b = -1;
    for (int i = 0; i < pairs.size(); i++) {
      double here = from.applyAsDouble(pairs.get(i));
      boolean found = a >= 0 && from.applyAsDouble(pairs.get(a)) == asked;
      a = here < asked || (here == asked && !found) ? i : a;
      b = here == asked || (here > asked && b < 0) ? i : b;
    }
    if (a < 0 || b < 0) {
      return new ClockMatch.NotCovered(
          a < 0 ? "before the first pair of clock and video" : "after the last pair");
    }
    ClockPair first = pairs.get(a);
    ClockPair last = pairs.get(b);
    double error = Math.max(first.plusMinus(), last.plusMinus()) + step / 2;
    double low = to.applyAsDouble(first);
    double high = to.applyAsDouble(last);
    double width = from.applyAsDouble(last) - from.applyAsDouble(first);
    double slack = slack(first, last);
    if (slack <= errors(first, last)) {
      double part = width > 0 ? (asked - from.applyAsDouble(first)) / width : 0.5;
      double stood = Math.max(part, 1 - part) * Math.max(slack, 0);
      return new ClockMatch.At(low + part * (high - low), error + stood, true);
    }
    double since = asked - from.applyAsDouble(first);
    double until = from.applyAsDouble(last) - asked;
    double least = toVideo ? low + since : Math.max(low, high - until);
    double most = toVideo ? high - until : Math.min(high, low + since);
    return new ClockMatch.At((least + most) / 2, error + (most - least) / 2, false);
  }
}
