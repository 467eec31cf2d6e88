package twostrides.book;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import twostrides.exits.Evidence;
import twostrides.review.FlagLine;
import twostrides.review.Likely;
import twostrides.review.Moment;
import twostrides.review.OtherRuling;
import twostrides.review.PlayerReview;
import twostrides.review.ReleaseLine;
import twostrides.review.RestartLine;
import twostrides.review.Say;
import twostrides.review.SeasonReview;
import twostrides.review.TeamReview;
import twostrides.stats.AdjustedRate;
import twostrides.stats.Clustered;
import twostrides.stats.Count;

/** Words of single table cells; the pages call these and nothing else does any formatting. */
public final class Show {

  private static final String NOT_THERE = "–";

  private Show() {}

  /** Metres and feet of a distance: "4.8 m (16 ft)". */
  public static String metresAndFeet(OptionalDouble metres) {
    return metres.isPresent() ? metresAndFeet(metres.getAsDouble()) : NOT_THERE;
  }

  /** Metres and feet of a distance: "4.8 m (16 ft)". */
  public static String metresAndFeet(double metres) {
    return Say.metresAndFeet(metres);
  }

  /** A place: metres from center toward the own goal, and the side of the attack. */
  public static String place(OptionalDouble x, OptionalDouble y) {
    return x.isPresent() && y.isPresent() ? place(x.getAsDouble(), y.getAsDouble()) : NOT_THERE;
  }

  /** A place in words: "12.0 m (39 ft) from center, 5.0 m (16 ft) left". */
  public static String place(double x, double y) {
    String along = metresAndFeet(Math.abs(x)) + (x < 0 ? " before center" : " past center");
    long across = Math.round(Math.abs(y) / Say.FOOT);
    return along
        + (across == 0
            ? ", middle"
            : ", " + metresAndFeet(Math.abs(y)) + (y > 0 ? " left" : " right"));
  }

  /** "P3 6:20, 2031-10-04 GLA-TAR: 10 Sundby, Herons": which release a card is about. */
  public static String heading(FlagLine f) {
    return clock(f.period(), f.clockLeft())
        + ", "
        + f.game()
        + ": "
        + word(f.player())
        + ", "
        + f.team();
  }

  /** What followed a draw: "2 attempts, 1 goal against within 20 s". */
  public static String after(FlagLine.After after, double window) {
    if (after.attempts().isEmpty()) {
      return NOT_THERE;
    }
    int goals = after.goals().orElse(0);
    return Say.count(after.attempts().getAsInt(), "attempt")
        + (goals == 0 ? "" : ", " + Say.count(goals, "goal"))
        + " against within "
        + Math.round(window)
        + " s";
  }

  /** "P2 13:07" as a scoreboard shows it: period and time left. */
  public static String clock(int period, double left) {
    return "P" + period + " " + Say.clock(left);
  }

  /** Seconds of video as minutes and seconds, or a dash. */
  public static String video(OptionalDouble seconds) {
    if (seconds.isEmpty()) {
      return NOT_THERE;
    }
    long s = (long) Math.floor(seconds.getAsDouble());
    return String.format(Locale.ROOT, "%d:%02d:%02d", s / 3600, s / 60 % 60, s % 60);
  }

  /** A word that may be missing. */
  public static String word(Optional<String> w) {
    return w.orElse(NOT_THERE);
  }

  /** A count that may be missing. */
  public static String count(OptionalInt n) {
    return n.isPresent() ? String.valueOf(n.getAsInt()) : NOT_THERE;
  }

  /** A cause in a coach's words. */
  public static String cause(String cause) {
    return switch (cause) {
      case "icing_written" -> "icing, written";
      case "icing_inferred" -> "icing, inferred";
      case "none" -> NOT_THERE;
      default -> cause;
    };
  }

  /** Share in percent or why there is none. */
  public static String share(Count c) {
    return Say.shortShare(c);
  }

  /** The 95 % interval in percent, or nothing. */
  public static String interval(Clustered games) {
    String i = Say.interval(games);
    return i.isEmpty() ? "" : i + " %";
  }

  /** "12 of 96". */
  public static String counts(Count c) {
    return c.successes() + " of " + c.trials();
  }

  /** Attempts against after a restart: "2, 1 goal", or a dash. */
  public static String against(RestartLine r) {
    if (r.attemptsAgainst().isEmpty()) {
      return NOT_THERE;
    }
    int goals = r.goalsAgainst().orElse(0);
    return r.attemptsAgainst().getAsInt() + (goals == 0 ? "" : ", " + Say.count(goals, "goal"));
  }

  /** Sheet and line: where the row stands. */
  public static String source(RestartLine r) {
    return r.sheet() + ", line " + r.line();
  }

  /** Sheet and line: where the row stands. */
  public static String source(ReleaseLine r) {
    return r.sheet() + ", line " + r.line();
  }

  /** Sheet and line: where the row stands. */
  public static String source(OtherRuling r) {
    return r.sheet() + ", line " + r.line();
  }

  /** Sheet and line: where the row stands. */
  public static String source(Moment m) {
    return m.sheet() + ", line " + m.line();
  }

  /** Sheet and line: where the row stands. */
  public static String source(FlagLine f) {
    return f.sheet() + ", line " + f.line();
  }

  /** An adjusted rate with its interval; a dash where there is none. */
  public static String adjusted(Optional<AdjustedRate> rate) {
    return rate.map(Say::adjusted).orElse(NOT_THERE);
  }

  /** A chance in whole per cent, never 0 or 100 for what is not. */
  public static String chance(double p) {
    return Say.chance(p);
  }

  /** A chance with its interval: "93 %, 95 % interval 71 to 98 %"; a dash where there is none. */
  public static String chance(Optional<Likely> chance) {
    return chance.map(c -> chance(c.p()) + ", 95 % interval " + interval(c)).orElse(NOT_THERE);
  }

  /** A chance with its interval, for a column: "93 %, 71 to 98 %"; a dash where there is none. */
  public static String brief(Optional<Likely> chance) {
    return chance.map(c -> chance(c.p()) + ", " + interval(c)).orElse(NOT_THERE);
  }

  /** The chance of gaining center on a card, in words where nobody knows it. */
  public static String gain(FlagLine f) {
    if (f.evidence() != Evidence.UNKNOWN) {
      return chance(f.gain());
    }
    return f.gain()
        .map(g -> "unknown; like it " + chance(g.p()) + ", 95 % interval " + interval(g))
        .orElse("unknown");
  }

  /** How many icings are flagged, and of how many nobody can say. */
  public static String flagged(SeasonReview review) {
    int flags = review.flagged().size();
    int open = review.toLookAt().size();
    String icings = Say.count((int) review.icingsLetGo(), "icing") + " let go short of center ";
    return (flags == 0
            ? "None of " + icings + "is flagged."
            : flags
                + " of "
                + icings
                + (flags == 1 ? "is" : "are")
                + " flagged: there was time to gain the red line first, and trying would have cost"
                + " less.")
        + (open == 0
            ? ""
            : " Of "
                + open
                + " nobody can say from these sheets; they stand in the order in which to look.");
  }

  private static String interval(Likely c) {
    return chance(c.low()).replace(" %", "") + " to " + chance(c.high());
  }

  /** Attempts with two decimals, or a dash. */
  public static String attempts(OptionalDouble a) {
    return a.isPresent() ? attempts(a.getAsDouble()) : NOT_THERE;
  }

  /** Attempts with two decimals. */
  public static String attempts(double a) {
    return decimals(a, 2) + " attempts against";
  }

  /** Own-zone restarts that were icings, written or inferred. */
  public static long icings(SeasonReview review) {
    return review.restarts().stream().filter(RestartLine::icing).count();
  }

  /**
   * The releases that one other book would rule otherwise.
   *
   * @param review the season
   * @param book id of the other book
   */
  public static List<OtherRuling> othersOf(SeasonReview review, String book) {
    return review.others().stream().filter(r -> r.book().equals(book)).toList();
  }

  /** File of a team's page, below the book's folder. */
  public static String file(TeamReview t) {
    return String.format(Locale.ROOT, "teams/%02d-%s.html", t.number(), slug(t.team()));
  }

  /** File of the sheets of a team's players, below the book's folder. */
  public static String sheets(TeamReview t) {
    return file(t).replaceFirst("^teams/", "sheets/");
  }

  /** The sheet of one player, below the book's folder; empty where no page holds it. */
  public static Optional<String> sheet(SeasonReview review, PlayerReview p) {
    return review.teams().stream()
        .filter(t -> t.team().equals(p.team()))
        .findFirst()
        .map(t -> sheets(t) + "#" + sheetId(p));
  }

  /** The place of a player's sheet on its page, and the state that shows it alone. */
  public static String sheetId(PlayerReview p) {
    return "player=" + p.number();
  }

  /** Clip list of a player's sheet, below the book's folder, without its ending. */
  public static String sheetClips(PlayerReview p) {
    return String.format(Locale.ROOT, "clips/sheets/%03d", p.number());
  }

  /** Whether any moment has a video second. */
  public static boolean video(List<Moment> moments) {
    return moments.stream().anyMatch(m -> m.video().isPresent());
  }

  /**
   * The heading over moments: how many there are, where there are fewer than three.
   *
   * @param moments three at most
   * @param what what they are
   */
  public static String some(List<Moment> moments, String what) {
    return switch (moments.size()) {
      case 0 -> "None " + what + " in these sheets";
      case 1 -> "One " + what + ", no more in these sheets";
      case 2 -> "Two " + what + ", no more in these sheets";
      default -> "Three " + what;
    };
  }

  /** File of a player's page, below the book's folder. */
  public static String file(PlayerReview p) {
    return String.format(Locale.ROOT, "players/%03d-%s.html", p.number(), slug(p.player()));
  }

  /**
   * A piece of a file name from a name in a sheet: only a to z, 0 to 9 and hyphens, at most 40
   * characters. The running number before it makes the name unique, so nothing depends on what is
   * left of it.
   *
   * @param name untrusted text
   */
  static String slug(String name) {
    String plain =
        Normalizer.normalize(name, Normalizer.Form.NFD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}", "")
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-+|-+$", "");
    String cut = plain.length() > 40 ? plain.substring(0, 40) : plain;
    return cut.isEmpty() ? "x" : cut;
  }

  /** A number with a fixed number of decimals and a point. */
  static String decimals(double x, int places) {
    return BigDecimal.valueOf(x).setScale(places, RoundingMode.HALF_EVEN).toPlainString();
  }

  /** Icings a game with one decimal. */
  public static String perGame(TeamReview t) {
    return t.games() == 0 ? NOT_THERE : Say.oneDecimal((double) t.icings() / t.games());
  }

  /** What came of a release, with the cause of an icing. */
  public static String outcome(ReleaseLine r) {
    return r.cause().startsWith("icing") ? cause(r.cause()) : r.outcome().label();
  }

  /** The restarts of one team. */
  public static List<RestartLine> restartsOf(SeasonReview review, String team) {
    return review.restarts().stream().filter(r -> r.team().equals(team)).toList();
  }

  /** The team-mate listed before a player. */
  public static Optional<PlayerReview> before(SeasonReview review, PlayerReview p) {
    return neighbour(review, p, -1);
  }

  /** The team-mate listed after a player. */
  public static Optional<PlayerReview> after(SeasonReview review, PlayerReview p) {
    return neighbour(review, p, 1);
  }

  private static Optional<PlayerReview> neighbour(SeasonReview review, PlayerReview p, int step) {
    List<PlayerReview> mates = review.playersOf(p.team());
    int at = mates.indexOf(p) + step;
    return at >= 0 && at < mates.size() ? Optional.of(mates.get(at)) : Optional.empty();
  }
}
