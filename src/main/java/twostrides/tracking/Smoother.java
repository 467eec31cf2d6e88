package twostrides.tracking;

import java.util.Locale;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import twostrides.rink.Place;
import twostrides.sheet.Problem;

/**
 * Velocity at an instant by a local least-squares fit: over the rows within half a window of the
 * instant t, x(s) = a + b (s - t) + c (s - t)^2, and the same for y; b is the velocity and a the
 * place at t. Savitzky and Golay 1964, Analytical Chemistry 36:1627, for rows at any spacing (from
 * memory).
 *
 * <p>In the middle of evenly spaced rows a straight line would give the same velocity, and its
 * standard error for rows that err by e, n of them at f a second, is about e f sqrt(12 / n^3). At
 * the ends of a track a line would err by half the window times half the acceleration; this fit
 * scatters four times as much. A velocity that changes inside the window is averaged: the longer
 * window hides turns and short bursts.
 *
 * <p>No fit reaches across a gap. Outside a track, inside a gap, or with too few rows there is no
 * speed.
 *
 * @param window length of the window in seconds
 * @param longestGap seconds between rows across which no fit reaches
 * @param fastest metres a second above which a track is taken to be wrong
 */
public record Smoother(double window, double longestGap, double fastest) {
  /** The usual window, 0.5 s: assumed. */
  public static final double WINDOW = 0.5;

  /** The longest gap that a fit reaches across, 0.5 s: assumed. */
  public static final double LONGEST_GAP = 0.5;

  /**
   * The fastest a skater can be, 12 m/s: assumed, above the fastest skaters reported (24.5 miles an
   * hour = 10.95 m/s, press reports of a league's own tracking, 2024-25).
   */
  public static final double FASTEST = 12;

  /** Coefficients of the parabola, each way. */
  private static final int UNKNOWNS = 3;

  /** Part of the window that rows must span: at a track's end nearly half is left. Assumed. */
  private static final double LEAST_FILLED = 0.4;

  /** What is asked for without a word about it. */
  public static final Smoother USUAL = new Smoother(WINDOW, LONGEST_GAP, FASTEST);

  /**
   * Checks that the lengths are positive.
   *
   * @throws IllegalArgumentException when one is not
   */
  public Smoother {
    if (!(window > 0) || !(longestGap > 0) || !(fastest > 0)) {
      throw new IllegalArgumentException(
          "window, gap and fastest are more than 0: "
              + window
              + ", "
              + longestGap
              + ", "
              + fastest);
    }
  }

  /**
   * The usual smoother with another window.
   *
   * @param window length of the window in seconds
   */
  public static Smoother over(double window) {
    return new Smoother(window, LONGEST_GAP, FASTEST);
  }

  /**
   * How a skater moves.
   *
   * @param track the skater
   * @param second second of the video
   */
  public Motion motion(Track track, double second) {
    int at = track.rowAt(second);
    boolean exact = at >= 0 && track.second(at) == second;
    if (at < 0 || (at == track.rows() - 1 && !exact)) {
      return new Motion.NoSpeed(at < 0 ? "before the track begins" : "after the track ends");
    }
    if (!exact && track.second(at + 1) - track.second(at) > longestGap) {
      return new Motion.NoSpeed("the skater was not seen");
    }
    int first = at;
    while (first > 0 && joins(track, first - 1, first) && inWindow(track, first - 1, second)) {
      first--;
    }
    int last = at;
    while (last < track.rows() - 1
        && joins(track, last, last + 1)
        && inWindow(track, last + 1, second)) {
      last++;
    }
    if (!inWindow(track, first, second)) {
      first++;
    }
    int n = last - first + 1;
    // One row more than unknowns, or the scatter could not be told.
    if (n <= UNKNOWNS || track.second(last) - track.second(first) < LEAST_FILLED * window) {
      return new Motion.NoSpeed("too few rows without a gap in the window");
    }
    return fit(track, first, last, second);
  }

  private boolean inWindow(Track track, int row, double second) {
    return Math.abs(track.second(row) - second) <= window / 2 + 1e-9;
  }

  private boolean joins(Track track, int row, int next) {
    return track.second(next) - track.second(row) <= longestGap;
  }

  private Motion fit(Track track, int first, int last, double second) {
    int n = last - first + 1;
    RealMatrix powers = MatrixUtils.createRealMatrix(n, UNKNOWNS);
    RealMatrix places = MatrixUtils.createRealMatrix(n, 2);
    // Places relative to the first row, so that the sums lose no digits.
    double x0 = track.x(first);
    double y0 = track.y(first);
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < UNKNOWNS; k++) {
        powers.setEntry(i, k, Math.pow(track.second(first + i) - second, k));
      }
      places.setRow(i, new double[] {track.x(first + i) - x0, track.y(first + i) - y0});
    }
    RealMatrix inverse = MatrixUtils.inverse(powers.transposeMultiply(powers));
    RealMatrix fitted = inverse.multiply(powers.transposeMultiply(places));
    double scatter = places.subtract(powers.multiply(fitted)).getFrobeniusNorm();
    double error = scatter * Math.sqrt(inverse.getEntry(1, 1) / (2.0 * (n - UNKNOWNS)));
    Place place = new Place(x0 + fitted.getEntry(0, 0), y0 + fitted.getEntry(0, 1));
    Motion.Moving moving =
        new Motion.Moving(place, fitted.getEntry(1, 0), fitted.getEntry(1, 1), error, n);
    return moving.speed() > fastest ? tooFast(track, first, last, moving) : moving;
  }

  private Motion tooFast(Track track, int first, int last, Motion.Moving moving) {
    return new Motion.TooFast(
        moving.speed(),
        new Problem(
            track.file(),
            track.line((first + last) / 2),
            TrackForm.X + ", " + TrackForm.Y,
            String.format(
                Locale.ROOT,
                "track %s, %.1f m/s over %.2f s",
                track.id(),
                moving.speed(),
                track.second(last) - track.second(first)),
            String.format(Locale.ROOT, "a skater, no faster than %.0f m/s", fastest),
            "Look whether the track jumps from one skater to another; it is not used here."));
  }
}
