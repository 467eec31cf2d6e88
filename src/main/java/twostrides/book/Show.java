package twostrides.book;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.book.chart.ZoneCell;
import twostrides.exits.Against;
import twostrides.exits.Exit;
import twostrides.exits.Release;
import twostrides.exits.Restart;
import twostrides.exits.Situation;
import twostrides.exits.WayOut;
import twostrides.exits.When;
import twostrides.findings.MarkOutcome;
import twostrides.findings.Moment;
import twostrides.findings.Names;
import twostrides.findings.Score;
import twostrides.findings.SeasonReview;
import twostrides.findings.ShownWay;
import twostrides.findings.TeamReview;
import twostrides.rink.Lane;
import twostrides.rink.Place;
import twostrides.rink.Units;
import twostrides.season.Evidence;
import twostrides.season.Flag;

/** Words of pages about records: flags, releases, face-offs, moments. */
public final class Show {

  private Show() {}

  /** Where on the rink: before or past center, and how far from the middle. */
  public static String place(Optional<Place> place) {
    return place.map(Show::place).orElse(Format.NONE);
  }

  private static String place(Place p) {
    String along =
        Format.metresAndFeet(Math.abs(p.x())) + (p.x() < 0 ? " before center" : " past center");
    long across = Math.round(Units.FOOT.fromMetres(Math.abs(p.y())));
    return along
        + (across == 0
            ? ", middle"
            : ", " + Format.metresAndFeet(Math.abs(p.y())) + (p.y() > 0 ? " left" : " right"));
  }

  /** Period and time left, as the scoreboard shows it. */
  public static String clock(When when) {
    return Format.clock(when.period(), when.clockLeft());
  }

  /** The same at a face-off; of a tag sheet at the tag. */
  public static String clock(Restart r) {
    When when = r.faceOff().when();
    OptionalDouble at = r.faceOff().elapsed();
    return Format.clock(when.period(), when.game().periodLength() - at.orElse(when.elapsed()));
  }

  /** Where it stands in the sheets. */
  public static String source(When when) {
    return source(when.sheet(), when.line());
  }

  /** A line of a sheet. */
  public static String source(String sheet, long line) {
    return sheet + ", line " + line;
  }

  /** What a flag's card is headed by. */
  public static String heading(Flag f) {
    Situation at = f.release().at();
    return clock(at.when())
        + ", "
        + at.when().game().id()
        + ": "
        + Format.word(at.player())
        + ", "
        + at.team();
  }

  /** What followed a flag's face-off. */
  public static String after(Flag f, double window) {
    return f.restart()
        .flatMap(r -> r.faceOff().against())
        .map(
            a ->
                Format.count(a.attempts(), "attempt")
                    + goals(a)
                    + " against within "
                    + Math.round(window)
                    + " s")
        .orElse(Format.NONE);
  }

  private static String goals(Against a) {
    return a.goals() == 0 ? "" : ", " + Format.count(a.goals(), "goal");
  }

  /** What followed a face-off. */
  public static String against(Restart r) {
    return r.faceOff().against().map(a -> a.attempts() + goals(a)).orElse(Format.NONE);
  }

  /** Chance of gaining center; what only orders is said to be unknown. */
  public static String gain(Flag f) {
    var chance = f.assessment().gain().chance();
    if (f.assessment().gain().evidence() != Evidence.UNKNOWN) {
      return Format.withInterval(chance);
    }
    return chance.isEmpty() ? "unknown" : "unknown; like it " + Format.withInterval(chance);
  }

  /** Attempts against that something costs. */
  public static String attempts(double a) {
    return Format.decimals(a, 2) + " attempts against";
  }

  /** How many icings of the book's team are flagged. */
  public static String flagged(SeasonReview review) {
    int flags = review.ours(review.flagged()).size();
    int open = review.ours(review.toLookAt()).size();
    String icings =
        Format.count(review.ours(review.icingsLetGo()).size(), "icing")
            + " let go before the red line ";
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
            : " For "
                + open
                + " of them these sheets cannot say; they stand in the order in which to look.");
  }

  /** The same of all teams, beside the book's. */
  public static String flaggedOfAll(SeasonReview review) {
    return "All teams: "
        + review.flagged().size()
        + " of "
        + Format.count(review.icingsLetGo().size(), "icing")
        + " flagged, "
        + review.toLookAt().size()
        + " to look at.";
  }

  /** Icings among the own-zone restarts. */
  public static long icings(SeasonReview review) {
    return review.restarts().stream().filter(r -> r.faceOff().cause().icing()).count();
  }

  /** What came of a release. */
  public static String outcome(Release r) {
    return r.iced() ? Format.cause(r.outcome().cause()) : MarkOutcome.of(r.outcome()).label();
  }

  /** The way out behind a face-off, for the list's filter. */
  public static String way(Restart r) {
    return r.behind()
        .flatMap(b -> b.exit())
        .map(e -> ShownWay.of(e.way(), e.mark()).label())
        .orElse("no exit before it");
  }

  /** Leading, tied or trailing, for a list's filter; empty where the sheet writes no shots. */
  public static Optional<String> score(Situation at) {
    return at.state().goalsAhead().stream().mapToObj(Score::word).findFirst();
  }

  /** Third of the rink's width from which a puck came, for a list's filter. */
  public static Optional<String> side(Situation at) {
    return at.where().lane(at.when().game().rink()).map(Lane::word);
  }

  /** How far up ice a puck came from, for a list's filter. */
  public static Optional<String> from(Situation at) {
    return at.where()
        .place()
        .map(
            p ->
                at.where().shortOfCenter().isPresent()
                    ? ZoneCell.of(p, at.when().game().rink()).depth().words()
                    : "at the red line or past it");
  }

  /** How somebody got it out, or lost it inside. */
  public static String way(Exit e) {
    return ShownWay.of(e.way(), e.mark()).label();
  }

  /** Whether a try to clear got out. */
  public static String result(Exit e) {
    return e.way() == WayOut.KEPT_IN ? way(e) : "cleared";
  }

  /** Seconds that a clear bought. */
  public static String bought(Exit e) {
    return e.way() == WayOut.KEPT_IN
        ? Format.NONE
        : e.outcome()
            .reentry()
            .map(t -> Format.decimals(t.seconds(), 0) + " s")
            .orElse(Format.NONE);
  }

  /** What the book is about: a team, or both teams of one game. */
  public static String about(SeasonReview review) {
    return review
        .ourTeam()
        .map(Names::shown)
        .orElseGet(
            () ->
                review.teams().size() == 2
                    ? Names.shown(review.teams().get(0).team())
                        + " and "
                        + Names.shown(review.teams().get(1).team())
                    : "All teams");
  }

  /** Icings a game of a team. */
  public static String perGame(TeamReview t) {
    return t.games() == 0 ? Format.NONE : Format.decimals((double) t.icings() / t.games(), 1);
  }

  /** Own-zone restarts of a team. */
  public static List<Restart> restartsOf(SeasonReview review, String team) {
    return review.restarts().stream().filter(r -> r.at().team().equals(team)).toList();
  }

  /** Whether one of some moments can be watched. */
  public static boolean video(List<Moment> moments) {
    return moments.stream().anyMatch(m -> m.at().when().video().isPresent());
  }

  /** "One to talk about, no more in these sheets". */
  public static String some(List<Moment> moments, String what, int most) {
    String there = List.of("None ", "One ", "Two ").get(moments.size()) + what;
    return moments.size() == most
        ? there
        : there + (moments.isEmpty() ? " in these sheets" : ", no more in these sheets");
  }
}
