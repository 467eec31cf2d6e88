package twostrides.rates;

import java.util.OptionalDouble;
import java.util.function.IntPredicate;

/**
 * How many trials more it takes to say something, if the share stays as it is now. The present
 * share is itself uncertain, so this is an order of magnitude.
 */
public sealed interface HowManyMore {

  /** Where the search ends: more trials than anyone will watch. Assumed. */
  int LIMIT = 1_000_000;

  /** The answer as a page writes it. */
  String word();

  /**
   * So many more, 0 where it can be said already.
   *
   * @param trials 0 to {@link #LIMIT}
   */
  record Trials(int trials) implements HowManyMore {
    @Override
    public String word() {
      return Integer.toString(trials);
    }
  }

  /** More than {@link #LIMIT}, or never: the share is what it is compared with. */
  record MoreThanLimit() implements HowManyMore {
    @Override
    public String word() {
      return "more than " + LIMIT;
    }
  }

  /** There is no share yet that could stay. */
  record NoShareYet() implements HowManyMore {
    @Override
    public String word() {
      return "no share yet";
    }
  }

  /**
   * Until the 95 % Wilson interval leaves out the reference share.
   *
   * <p>It does from the first n with (p - r)² n > z² r (1 - r) on, since the Wilson interval holds
   * the r that its score test does not reject.
   *
   * @param reference share, 0 to 1
   */
  static HowManyMore untilItExcludes(Count now, double reference) {
    if (!(0 <= reference && reference <= 1)) {
      throw new IllegalArgumentException("a reference share lies in 0 to 1, not " + reference);
    }
    OptionalDouble share = now.share();
    if (share.isEmpty()) {
      return new NoShareYet();
    }
    double gap = share.getAsDouble() - reference;
    double needed = Count.Z95 * Count.Z95 * reference * (1 - reference);
    return first(more -> gap * gap * ((double) now.trials() + more) > needed);
  }

  /**
   * Until the 95 % Wilson interval reaches less than so far to either side of its middle.
   *
   * <p>Half its width is z sqrt(z² + 4 n p (1 - p)) / (2 (n + z²)), which falls with n.
   *
   * @param halfWidth above 0, as a share
   */
  static HowManyMore untilHalfWidthBelow(Count now, double halfWidth) {
    if (!(halfWidth > 0)) {
      throw new IllegalArgumentException("a half-width is above 0, not " + halfWidth);
    }
    OptionalDouble share = now.share();
    if (share.isEmpty()) {
      return new NoShareYet();
    }
    double p = share.getAsDouble();
    double z = Count.Z95;
    return first(
        more -> {
          double n = (double) now.trials() + more;
          double half = z * Math.sqrt(z * z + 4 * n * p * (1 - p)) / (2 * (n + z * z));
          return half < halfWidth;
        });
  }

  /** The first number from 0 on that is enough; once enough, all larger ones are. */
  private static HowManyMore first(IntPredicate enough) {
    if (!enough.test(LIMIT)) {
      return new MoreThanLimit();
    }
    int low = 0;
    int high = LIMIT;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (enough.test(middle)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return new Trials(high);
  }
}
