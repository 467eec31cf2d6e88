package twostrides.spark;

import java.util.ArrayList;
import java.util.List;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;
import twostrides.cli.Main;
import twostrides.cli.ReviewParts;

/**
 * A review whose games are read on a cluster, a partition each: what each gives goes into the cache,
 * which all machines share, and the review then finds it there. Its output is that of the review on
 * one machine, to the byte.
 */
public final class SparkReview {
  private SparkReview() {}

  /**
   * Runs a review.
   *
   * @param args its command line: review SHEETS --cache DIR and other options
   * @throws Exception when the cluster or a sheet fails
   */
  public static void main(String[] args) throws Exception {
    readGames(new SparkConf().setAppName("two-strides"), List.of(args));
    Main.main(args);
  }

  /**
   * Reads the games into the cache.
   *
   * @param conf which cluster
   * @param review the command line of the review
   * @throws Exception when the cluster fails or a name stands for no sheet
   */
  static void readGames(SparkConf conf, List<String> review) throws Exception {
    List<ArrayList<String>> parts = new ArrayList<>();
    ReviewParts.of(review).forEach(p -> parts.add(new ArrayList<>(p)));
    try (JavaSparkContext spark = new JavaSparkContext(conf)) {
      spark.parallelize(parts, Math.max(1, parts.size())).foreach(ReviewParts::run);
    }
  }
}
