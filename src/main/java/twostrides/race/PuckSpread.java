package twostrides.race;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import twostrides.race.puck.PuckPath;
import twostrides.rink.Rink;
import twostrides.stats.Range;

/**
 * Where the puck goes over many simulations: how wide it is spread at places up ice, and how far it
 * gets.
 *
 * @param rows the spread across the rink, from the release up ice, as far as half the simulations
 *     get
 * @param reach how far up ice it gets
 * @param simulations how many
 * @param past share of the simulations in which it is wholly past the far goal line, 0 to 1
 * @param whistle seconds from the release to an icing's whistle, of the middle 90 % of those; empty
 *     where there are none
 */
public record PuckSpread(
    List<Row> rows, Reached reach, int simulations, double past, Optional<Range> whistle) {

  /** Simulations at most: enough for a diagram. */
  private static final int MOST = 2000;

  /** Copies the rows. */
  public PuckSpread {
    rows = List.copyOf(rows);
  }

  /**
   * The spread across the rink at one place.
   *
   * @param x metres from center ice
   * @param low 10 % of the simulations pass at or below it, metres from the long axis
   * @param middle half of them
   * @param high 90 % of them
   */
  public record Row(double x, double low, double middle, double high) {}

  /**
   * How far up ice the puck gets, the far goal line at most, metres from center ice.
   *
   * @param low 10 % of the simulations get no farther
   * @param middle half of them
   * @param high 90 % of them
   */
  public record Reached(double low, double middle, double high) {}

  /**
   * Follows the puck of a scene with nobody in its way.
   *
   * @param scene the release
   * @param random the random numbers of this release
   * @param n number of simulations, 1 or more
   */
  public static PuckSpread of(Scene scene, SeededRandom random, int n) {
    return of(scene, Launch.of(scene), random, n);
  }

  /**
   * What a list of releases says of their pucks.
   *
   * @param row the spread across the rink at the farthest place that half the simulations reach
   * @param simulations how many
   * @param past share of the simulations in which it is wholly past the far goal line, 0 to 1
   */
  public record Farthest(Row row, int simulations, double past) {}

  /**
   * The same simulations, asked only how far half of them get: a season has thousands of releases.
   *
   * @param scene the release
   * @param random the random numbers of this release
   * @param n number of simulations, 1 or more
   */
  public static Farthest farthest(Scene scene, SeededRandom random, int n) {
    List<PuckPath> paths = paths(Launch.of(scene), random, n);
    // Who reaches a metre has reached those before it.
    int reached = 0;
    int beyond = 1 + (int) (scene.rink().goalLine() - scene.x());
    while (beyond - reached > 1) {
      int metre = (reached + beyond) / 2;
      double x = scene.x() + metre;
      long there = paths.stream().filter(p -> p.reaches(x).isPresent()).count();
      if (2 * there >= paths.size()) {
        reached = metre;
      } else {
        beyond = metre;
      }
    }
    double past = paths.stream().filter(p -> p.pastFarGoalLine().isPresent()).count();
    double x = scene.x() + reached;
    return new Farthest(
        reached == 0 ? start(scene) : row(x, across(paths, x)), paths.size(), past / paths.size());
  }

  /** Follows the puck with nobody in its way. */
  static PuckSpread of(Scene scene, Launch launch, SeededRandom random, int n) {
    List<PuckPath> paths = paths(launch, random, n);
    double[] far = paths.stream().mapToDouble(p -> farthest(p, scene.rink())).sorted().toArray();
    double[] whistles =
        paths.stream()
            .map(PuckPath::pastFarGoalLine)
            .flatMapToDouble(OptionalDouble::stream)
            .map(line -> line + Fitted.WHISTLE)
            .sorted()
            .toArray();
    return new PuckSpread(
        rows(scene, paths),
        new Reached(at(far, 0.1), at(far, 0.5), at(far, 0.9)),
        paths.size(),
        (double) whistles.length / paths.size(),
        whistles.length > 0
            ? Optional.of(new Range(at(whistles, 0.05), at(whistles, 0.95)))
            : Optional.empty());
  }

  private static List<PuckPath> paths(Launch launch, SeededRandom random, int n) {
    return IntStream.range(0, Math.min(n, MOST))
        .mapToObj(i -> launch.release(random.simulation(i)))
        .toList();
  }

  private static double farthest(PuckPath path, Rink rink) {
    return path.pastFarGoalLine().isPresent()
        ? rink.goalLine()
        : Math.min(rink.goalLine(), path.endPlace().x());
  }

  /** The spread at every metre up ice that at least half the paths reach. */
  private static List<Row> rows(Scene scene, List<PuckPath> paths) {
    List<Row> rows = new ArrayList<>();
    rows.add(start(scene));
    for (int metre = 1; metre <= scene.rink().goalLine() - scene.x(); metre++) {
      double x = scene.x() + metre;
      double[] there = across(paths, x);
      if (2 * there.length < paths.size()) {
        break;
      }
      rows.add(row(x, there));
    }
    return rows;
  }

  private static Row start(Scene scene) {
    return new Row(scene.x(), scene.y(), scene.y(), scene.y());
  }

  private static Row row(double x, double[] there) {
    return new Row(x, at(there, 0.1), at(there, 0.5), at(there, 0.9));
  }

  /** Where the paths that reach a plane cross it, metres from the long axis, in order. */
  private static double[] across(List<PuckPath> paths, double x) {
    return paths.stream()
        .flatMapToDouble(p -> p.reaches(x).stream().map(t -> p.placeAt(t).y()))
        .sorted()
        .toArray();
  }

  private static double at(double[] sorted, double share) {
    return sorted[(int) Math.floor(share * (sorted.length - 1))];
  }
}
