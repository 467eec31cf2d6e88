package twostrides.sanity;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How often something is so; small numbers say nothing. */
final class Share {
  private int yes;
  private int all;

  void add(boolean so) {
    yes += so ? 1 : 0;
    all++;
  }

  void add(Share other) {
    yes += other.yes;
    all += other.all;
  }

  /** The sums of the games' shares, by what they are of. */
  static <K> Map<K, Share> sums(List<Map<K, Share>> games) {
    Map<K, Share> sums = new LinkedHashMap<>();
    games.forEach(
        g -> g.forEach((of, share) -> sums.computeIfAbsent(of, k -> new Share()).add(share)));
    return sums;
  }

  int yes() {
    return yes;
  }

  int all() {
    return all;
  }

  /** Whether it is so in more than a share of enough cases. */
  boolean above(double share, int least) {
    return all >= least && yes > share * all;
  }

  /** Whether it is so in less than a share of enough cases. */
  boolean below(double share, int least) {
    return all >= least && yes < share * all;
  }

  /** Whether it is so in every one of enough cases. */
  boolean everyOf(int least) {
    return all >= least && yes == all;
  }

  @Override
  public String toString() {
    return yes + " of " + all;
  }
}
