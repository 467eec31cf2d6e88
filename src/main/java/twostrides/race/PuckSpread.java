package twostrides.race;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import twostrides.rink.Rink;
import twostrides.stats.Range;

/**
 * Where the puck goes over many draws: how wide it is spread at places up ice, and how far it gets.
 *
 * @param rows the spread across the rink, from the release up ice, as far as half the draws get
 * @param reach how far up ice it gets
 * @param past share of the draws in which it is wholly past the far goal line, 0 to 1
 * @param whistle seconds from the release to an icing's whistle, of the middle 90 % of those draws;
 *     empty where there are none
 */
public record PuckSpread(List<Row> rows, Reached reach, double past, Optional<Range> whistle) {

  /** Draws at most: enough for a drawing. */
  private static final int MOST = 2000;

  /** Copies the rows. */
  public PuckSpread {
    rows = List.copyOf(rows);
  }

  /**
   * The spread across the rink at one place.
   *
   * @param x metres from center ice
   * @param low 10 % of the draws pass at or below it, metres from the long axis
   * @param middle half of them
   * @param high 90 % of them
   */
  public record Row(double x, double low, double middle, double high) {}

  /**
   * How far up ice the puck gets, the far goal line at most, metres from center ice.
   *
   * @param low 10 % of the draws get no farther
   * @param middle half of them
   * @param high 90 % of them
   */
  public record Reached(double low, double middle, double high) {}

  /**
   * Follows the puck of a scene with nobody in its way.
   *
   * @param scene the release
   * @param draws the chance of this release
   * @param n number of draws, 1 or more
   */
  public static PuckSpread of(Scene scene, Draws draws, int n) {
    return of(scene, Launch.of(scene), draws, n);
  }

  /** The spread across the rink at the farthest place that half the draws reach. */
  public Row farthest() {
    return rows.get(rows.size() - 1);
  }

  /** Follows the puck with nobody in its way. */
  static PuckSpread of(Scene scene, Launch launch, Draws draws, int n) {
    int used = Math.min(n, MOST);
    Rink rink = scene.rink();
    PuckPath path = new PuckPath(rink);
    int planes = Math.max(0, (int) Math.floor(rink.goalLine() - scene.x()));
    double[][] y = new double[planes][used];
    double[] far = new double[used];
    double[] whistles = new double[used];
    int past = 0;
    for (int i = 0; i < used; i++) {
      launch.put(path, draws.start(i));
      for (int k = 0; k < planes; k++) {
        double t = path.reaches(scene.x() + k + 1);
        y[k][i] = t >= 0 ? path.yAt(t) : Double.NaN;
      }
      double line = path.pastFarGoalLine();
      boolean over = line >= 0;
      if (over) {
        whistles[past++] = line + Fitted.WHISTLE;
      }
      far[i] = over ? rink.goalLine() : Math.min(rink.goalLine(), path.endPlace().x());
    }
    List<Row> rows = new ArrayList<>();
    rows.add(new Row(scene.x(), scene.y(), scene.y(), scene.y()));
    for (int k = 0; k < planes; k++) {
      double[] there = Arrays.stream(y[k]).filter(v -> !Double.isNaN(v)).sorted().toArray();
      if (2 * there.length < used) {
        break;
      }
      rows.add(new Row(scene.x() + k + 1, at(there, 0.1), at(there, 0.5), at(there, 0.9)));
    }
    Arrays.sort(far);
    double[] gone = Arrays.copyOf(whistles, past);
    Arrays.sort(gone);
    return new PuckSpread(
        rows,
        new Reached(at(far, 0.1), at(far, 0.5), at(far, 0.9)),
        (double) past / used,
        past > 0 ? Optional.of(new Range(at(gone, 0.05), at(gone, 0.95))) : Optional.empty());
  }

  private static double at(double[] sorted, double share) {
    return sorted[(int) Math.floor(share * (sorted.length - 1))];
  }
}
