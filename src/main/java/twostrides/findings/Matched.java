package twostrides.findings;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import twostrides.season.Columns;
import twostrides.season.Rows;
import twostrides.stats.Bootstrap;
import twostrides.stats.Count;
import twostrides.stats.Range;

/**
 * Attempts against after defensive-zone face-offs, set against exits that left the zone without
 * one.
 *
 * <p>Strata are team, score state and strength: of a face-off at the face-off, of an exit at the
 * release. With n face-offs of mean a in a stratum, and m exits of mean b: after a face-off sum(n
 * a) / sum(n), after a matched exit sum(n b) / sum(n), both over strata with m > 0. Face-offs of a
 * stratum without exits are left out and counted. The interval resamples whole games, since the
 * rows of a game are not independent.
 *
 * @param faceOffs face-offs with a match
 * @param unmatched face-offs left out
 * @param afterFaceOff attempts a face-off
 * @param exits exits of the strata used
 * @param afterExit attempts an exit, weighted as the face-offs are
 * @param interval 95 % interval of the difference; empty below ten games
 * @param games games with a face-off or an exit
 */
public record Matched(
    int faceOffs,
    int unmatched,
    Mean afterFaceOff,
    int exits,
    Mean afterExit,
    Optional<Range> interval,
    int games) {

  /**
   * A mean.
   *
   * @param value the mean; not a number where there is no case
   * @param interval its 95 % interval; empty below ten games
   */
  public record Mean(double value, Optional<Range> interval) {}

  /** Of a stratum: face-offs, their attempts, exits, their attempts. */
  private static final int SUMS = 4;

  /** What one game adds; only strata that it has, as games are added thousands of times. */
  private static final class Game {
    /** Which sums of all strata, laid end to end. */
    private final int[] at;

    private final int[] sums;

    Game(Map<Integer, Integer> sums) {
      this.at = sums.keySet().stream().mapToInt(Integer::intValue).toArray();
      this.sums = sums.values().stream().mapToInt(Integer::intValue).toArray();
    }
  }

  /** Whether there are too few on either side to say a mean. */
  public boolean tooFew() {
    return faceOffs < Count.FEWEST_TO_SAY || exits < Count.FEWEST_TO_SAY;
  }

  /**
   * Compares.
   *
   * @param restarts own-zone restarts
   * @param exits exit attempts of the same teams
   * @param column the attempts column to compare
   * @param seed seed of the resampled games
   */
  static Matched of(Rows restarts, Rows exits, String column, long seed) {
    Map<List<String>, Integer> names = new HashMap<>();
    Map<String, Map<Integer, Integer>> games = new TreeMap<>();
    add(games, names, restarts.known(column), Columns.FACEOFF_STRENGTH, column, 0);
    Rows without = exits.isFalse(Columns.OWN_ZONE_RESTART);
    add(games, names, Shares.out(without).known(column), Columns.STRENGTH, column, 2);
    List<Game> clusters = games.values().stream().map(Game::new).toList();
    int strata = names.size();
    int[] all = sums(clusters, strata);
    int faceOffs = 0;
    int unmatched = 0;
    int used = 0;
    for (int i = 0; i < all.length; i += SUMS) {
      if (all[i + 2] > 0) {
        faceOffs += all[i];
        used += all[i] > 0 ? all[i + 2] : 0;
      } else {
        unmatched += all[i];
      }
    }
    double[] means = means(all);
    List<Optional<Range>> intervals =
        new Bootstrap(seed, NumberSettings.RESAMPLES)
                .ofSeveral(
                    clusters,
                    some -> {
                      double[] m = means(sums(some, strata));
                      return new double[] {m[0], m[1], m[0] - m[1]};
                    })
                .stream()
                .map(Bootstrap.Resampled::interval)
                .toList();
    return new Matched(
        faceOffs,
        unmatched,
        new Mean(means[0], intervals.get(0)),
        used,
        new Mean(means[1], intervals.get(1)),
        intervals.get(2),
        clusters.size());
  }

  private static void add(
      Map<String, Map<Integer, Integer>> games,
      Map<List<String>, Integer> names,
      Rows rows,
      String strengthColumn,
      String column,
      int at) {
    StringColumn game = rows.words(Columns.GAME);
    StringColumn team = rows.words(Columns.TEAM);
    StringColumn strength = rows.words(strengthColumn);
    StringColumn score = Score.words(rows);
    IntColumn attempts = (IntColumn) rows.column(column);
    for (int i = 0; i < rows.n(); i++) {
      List<String> stratum = List.of(team.get(i), strength.get(i), score.get(i));
      int first = SUMS * names.computeIfAbsent(stratum, k -> names.size()) + at;
      Map<Integer, Integer> sums = games.computeIfAbsent(game.get(i), k -> new TreeMap<>());
      sums.merge(first, 1, Integer::sum);
      sums.merge(first + 1, attempts.getInt(i), Integer::sum);
    }
  }

  private static int[] sums(List<Game> games, int strata) {
    int[] all = new int[SUMS * strata];
    for (Game g : games) {
      for (int i = 0; i < g.at.length; i++) {
        all[g.at[i]] += g.sums[i];
      }
    }
    return all;
  }

  /** Attempts after a face-off and after a matched exit; NaN without a match. */
  private static double[] means(int[] all) {
    double n = 0;
    double afterFaceOff = 0;
    double afterExit = 0;
    for (int i = 0; i < all.length; i += SUMS) {
      int faceOffs = all[i];
      if (all[i + 2] > 0 && faceOffs > 0) {
        n += faceOffs;
        afterFaceOff += all[i + 1];
        afterExit += faceOffs * ((double) all[i + 3] / all[i + 2]);
      }
    }
    return n == 0
        ? new double[] {Double.NaN, Double.NaN}
        : new double[] {afterFaceOff / n, afterExit / n};
  }
}
