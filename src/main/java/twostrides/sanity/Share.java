package twostrides.sanity;

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
