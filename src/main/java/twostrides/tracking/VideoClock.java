package twostrides.tracking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import twostrides.sheet.Problem;

/**
 * Game clock to video, from pairs of both.
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
    List<ClockPair> pairs = pairsOf(period);
    if (pairs.isEmpty()) {
      return new ClockMatch.NotCovered("no pair of clock and video in period " + period);
    }
    // Of several pairs at that very clock the first and the last.
    boolean given = pairs.stream().anyMatch(p -> p.elapsed() == elapsed);
    List<ClockPair> upTo =
        pairs.stream().filter(p -> given ? p.elapsed() == elapsed : p.elapsed() < elapsed).toList();
    List<ClockPair> from =
        pairs.stream().filter(p -> given ? p.elapsed() == elapsed : p.elapsed() > elapsed).toList();
    if (upTo.isEmpty() || from.isEmpty()) {
      return new ClockMatch.NotCovered(
          upTo.isEmpty() ? "before the first pair of clock and video" : "after the last pair");
    }
    ClockPair a = given ? upTo.get(0) : upTo.get(upTo.size() - 1);
    ClockPair b = given ? from.get(from.size() - 1) : from.get(0);
    double error = Math.max(a.plusMinus(), b.plusMinus()) + clockStep / 2;
    if (ran(a, b)) {
      return onLine(a, b, elapsed, error);
    }
    double least = a.video() + elapsed - a.elapsed();
    double most = b.video() - (b.elapsed() - elapsed);
    return new ClockMatch.At((least + most) / 2, error + (most - least) / 2, false);
  }

  /** Whether the clock ran all the way between two pairs. */
  static boolean ran(ClockPair a, ClockPair b) {
    return slack(a, b) <= errors(a, b);
  }

  /**
   * The second of a clock between two pairs between which it ran.
   *
   * @param error how far off the pairs and the clock may be, s
   */
  static ClockMatch.At onLine(ClockPair a, ClockPair b, double elapsed, double error) {
    double width = b.elapsed() - a.elapsed();
    double part = width > 0 ? (elapsed - a.elapsed()) / width : 0.5;
    double off = Math.max(part, 1 - part) * Math.max(slack(a, b), 0);
    return new ClockMatch.At(a.video() + part * (b.video() - a.video()), error + off, true);
  }
}
