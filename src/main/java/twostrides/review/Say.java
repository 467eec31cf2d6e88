package twostrides.review;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import twostrides.stats.AdjustedRate;
import twostrides.stats.Clustered;
import twostrides.stats.Count;
import twostrides.stats.Interval;

/** Numbers in words: one way of writing counts, shares and clocks on every page. */
public final class Say {

  /** Metres in a foot. */
  public static final double FOOT = 0.3048;

  private Say() {}

  /**
   * A share with its counts and interval: "7 of 31 (23 %, 95 % interval 11 to 40 %)"; below ten
   * trials the counts and "too few to say".
   *
   * @param c the counts
   */
  public static String share(Count c) {
    return share(new Clustered(c));
  }

  /**
   * The same of a share over a team's games, whose rows may hang together.
   *
   * @param games the counts game by game
   */
  public static String share(Clustered games) {
    Count c = games.total();
    String counts = c.successes() + " of " + c.trials();
    if (c.trials() == 0) {
      return counts;
    }
    if (c.tooFew()) {
      return counts + " (too few to say)";
    }
    return counts
        + " ("
        + percent(c.share().orElseThrow())
        + " %, 95 % interval "
        + interval(games)
        + " %)";
  }

  /**
   * A share in whole percent, or what stands for it.
   *
   * @param c the counts
   */
  public static String shortShare(Count c) {
    if (c.trials() == 0) {
      return "none";
    }
    return c.tooFew() ? "too few to say" : percent(c.share().orElseThrow()) + " %";
  }

  /**
   * An adjusted rate with its interval: "22 % (11 to 36 %)".
   *
   * @param rate the rate
   */
  public static String adjusted(AdjustedRate rate) {
    return percent(rate.share())
        + " % ("
        + percent(rate.interval().low())
        + " to "
        + percent(rate.interval().high())
        + " %)";
  }

  /**
   * Counts with their adjusted rate: "12 of 41 (adjusted rate 22 %, 95 % interval 11 to 36 %)";
   * with the plain share where there is no adjusted one.
   *
   * @param c the counts
   * @param adjusted the rate
   */
  public static String share(Count c, Optional<AdjustedRate> adjusted) {
    return adjusted
        .map(
            r ->
                c.successes()
                    + " of "
                    + c.trials()
                    + " (adjusted rate "
                    + percent(r.share())
                    + " %, 95 % interval "
                    + percent(r.interval().low())
                    + " to "
                    + percent(r.interval().high())
                    + " %)")
        .orElseGet(() -> share(c));
  }

  /**
   * A chance in whole percent, never 0 or 100 for what is not.
   *
   * @param p 0 to 1
   */
  public static String chance(double p) {
    return p < 0.005 ? "under 1 %" : p > 0.995 ? "over 99 %" : Math.round(100 * p) + " %";
  }

  /**
   * The 95 % interval in whole percent: "11 to 40"; empty text below ten trials.
   *
   * @param c the counts
   */
  public static String interval(Count c) {
    return interval(new Clustered(c));
  }

  /**
   * The same of a share over a team's games, whose rows may hang together.
   *
   * @param games the counts game by game
   */
  public static String interval(Clustered games) {
    if (games.total().tooFew()) {
      return "";
    }
    Interval i = games.interval().orElseThrow();
    return percent(i.low()) + " to " + percent(i.high());
  }

  /**
   * A share in whole percent, a half up: 23 of 40 is 58, though 0.575 times 100 falls below 57.5 in
   * binary.
   *
   * @param share 0 to 1
   */
  public static String percent(double share) {
    return BigDecimal.valueOf(share)
        .movePointRight(2)
        .setScale(0, RoundingMode.HALF_UP)
        .toPlainString();
  }

  /**
   * A number with one decimal.
   *
   * @param x the number
   */
  public static String oneDecimal(double x) {
    return BigDecimal.valueOf(x).setScale(1, RoundingMode.HALF_EVEN).toPlainString();
  }

  /**
   * Metres and feet of a distance: "4.8 m (16 ft)".
   *
   * @param metres the distance
   */
  public static String metresAndFeet(double metres) {
    return oneDecimal(metres) + " m (" + Math.round(metres / FOOT) + " ft)";
  }

  /**
   * A clock of elapsed play, "7:05".
   *
   * @param seconds seconds of play since the period began
   */
  public static String clock(double seconds) {
    long whole = (long) Math.floor(seconds);
    return String.format(Locale.ROOT, "%d:%02d", whole / 60, whole % 60);
  }

  /**
   * Games that follow each other: "game 3", "games 1 to 4".
   *
   * @param from number of the first one
   * @param to number of the last one
   */
  public static String games(int from, int to) {
    return from == to ? "game " + from : "games " + from + " to " + to;
  }

  /**
   * A name inside a sentence. A name that runs right to left, or holds marks that turn the
   * direction, is set apart (Unicode FSI and PDI), so that the numbers after it stay where they
   * belong.
   *
   * @param name untrusted text
   */
  public static String name(String name) {
    boolean turns =
        name.codePoints()
            .map(Character::getDirectionality)
            .anyMatch(
                d ->
                    d != Character.DIRECTIONALITY_LEFT_TO_RIGHT
                        && d != Character.DIRECTIONALITY_WHITESPACE
                        && d != Character.DIRECTIONALITY_OTHER_NEUTRALS
                        && d != Character.DIRECTIONALITY_EUROPEAN_NUMBER
                        && d != Character.DIRECTIONALITY_EUROPEAN_NUMBER_SEPARATOR
                        && d != Character.DIRECTIONALITY_EUROPEAN_NUMBER_TERMINATOR
                        && d != Character.DIRECTIONALITY_COMMON_NUMBER_SEPARATOR);
    return turns ? "\u2068" + name + "\u2069" : name;
  }

  /**
   * A player in a sentence: a number on the jersey that begins the name must not read as a count,
   * so "4 Brandt" becomes "No. 4 Brandt".
   *
   * @param player a name from a sheet, untrusted text
   */
  public static String player(String player) {
    boolean numbered = !player.isEmpty() && player.charAt(0) >= '0' && player.charAt(0) <= '9';
    return (numbered ? "No. " : "") + name(player);
  }

  /**
   * A number with its noun, in the singular for one.
   *
   * @param n the number
   * @param noun the noun
   */
  public static String count(int n, String noun) {
    return n + " " + noun + (n == 1 ? "" : "s");
  }
}
