package twostrides.book;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;
import twostrides.exits.Against;
import twostrides.exits.Restart;
import twostrides.exits.RestartCause;
import twostrides.findings.Habit;
import twostrides.findings.Likeliest;
import twostrides.findings.Names;
import twostrides.findings.PlayerReview;
import twostrides.findings.Profile;
import twostrides.findings.SeasonReview;
import twostrides.findings.ShownWay;
import twostrides.findings.TeamReview;
import twostrides.findings.WayCount;
import twostrides.game.Strength;
import twostrides.stats.AdjustedRates;
import twostrides.stats.Clustered;
import twostrides.stats.Count;
import twostrides.stats.Trend;

/**
 * What the season says in five sentences, each with its numbers and how many they come from. They
 * speak of our team where one team plays every game, else of all teams together.
 */
public final class Sentences {

  /**
   * How near the red line an icing must be let go to count as one that center was in reach of:
   * metres. Assumed.
   */
  private static final double NEAR = 5.0;

  private final SeasonReview review;
  private final List<TeamReview> teams;
  private final List<PlayerReview> players;
  private final List<Restart> restarts;

  private Sentences(SeasonReview review) {
    this.review = review;
    this.teams = review.teams().stream().filter(t -> counts(t.team())).toList();
    this.players = review.players().stream().filter(p -> counts(p.team())).toList();
    this.restarts = review.restarts().stream().filter(r -> counts(r.at().team())).toList();
  }

  private boolean counts(String team) {
    return review.ourTeam().isEmpty() || review.ourTeam().get().equals(team);
  }

  private String who() {
    return review.ourTeam().map(Names::shown).orElse("the teams");
  }

  /**
   * The sentences.
   *
   * @param review the season
   */
  public static List<String> of(SeasonReview review) {
    return new Sentences(review).all();
  }

  private static boolean iced(Restart r) {
    return r.faceOff().cause().icing();
  }

  private List<String> all() {
    return List.of(attempts(), changed(), where(), player(), cost());
  }

  private String attempts() {
    int attempts = teams.stream().mapToInt(t -> t.profile().attempts()).sum();
    List<Restart> iced = restarts.stream().filter(Sentences::iced).toList();
    Clustered byGame =
        new Clustered(
            teams.stream().flatMap(t -> t.profile().byGame().clusters().stream()).toList());
    return "In "
        + Format.count(review.games(), "game")
        + " "
        + who()
        + " tried to leave the own zone "
        + Format.count(attempts, "time")
        + ", with "
        + Format.count(iced.size(), "icing")
        + (review.games() == 0
            ? ""
            : " (" + Format.decimals((double) iced.size() / review.games(), 1) + " a game)")
        + inferred(iced)
        + ". Of the tries, "
        + Format.withInterval(byGame)
        + " ended in icing, "
        + sum(Profile::penalties)
        + " in a face-off after a penalty and "
        + sum(Profile::others)
        + " in another defensive-zone face-off.";
  }

  private int sum(ToIntFunction<Profile> what) {
    return teams.stream().map(TeamReview::profile).mapToInt(what).sum();
  }

  /** Which of the icings the sheets do not write: all of them, in most real sheets. */
  private static String inferred(List<Restart> iced) {
    long n = iced.stream().filter(r -> r.faceOff().cause() == RestartCause.ICING_INFERRED).count();
    return n == 0
        ? ""
        : n == iced.size() ? ", all of them inferred" : ", " + n + " of them inferred";
  }

  /** The first third of the games against the last, and what the games between them say too. */
  private String changed() {
    if (review.icingsByGame().size() < Trend.FEWEST_STEPS) {
      return "Fewer than three games with exit attempts: too few to say what changed.";
    }
    Habit icings = Habit.of(review.icingsByGame());
    Habit.Stretch first = icings.stretches().get(0);
    Habit.Stretch last = icings.stretches().get(icings.stretches().size() - 1);
    return "Icing followed "
        + brief(first.count())
        + " in "
        + first.label()
        + " and "
        + brief(last.count())
        + " in "
        + last.label()
        + ": "
        + switch (icings.trend().direction()) {
          case RISING -> "over all games the share rises, beyond chance.";
          case FALLING -> "over all games the share falls, beyond chance.";
          case FLAT_OR_UNCLEAR -> "over all games there is no clear change.";
          case TOO_FEW -> "too few to say whether it moves.";
        };
  }

  /** Counts and share without the interval: the trend says what the two can carry. */
  private static String brief(Count c) {
    return c.successes()
        + " of "
        + Format.count(c.trials(), "attempt")
        + (c.trials() == 0 ? "" : " (" + Format.share(c) + ")");
  }

  private String where() {
    return near() + " " + ways();
  }

  private String near() {
    List<Restart> iced = restarts.stream().filter(Sentences::iced).toList();
    if (iced.isEmpty()) {
      return "No icing is written or can be inferred in these sheets.";
    }
    List<Restart> placed =
        iced.stream().filter(r -> r.at().where().shortOfCenter().isPresent()).toList();
    int near =
        (int)
            placed.stream()
                .filter(r -> r.at().where().shortOfCenter().getAsDouble() <= NEAR)
                .count();
    return "Of "
        + Format.count(placed.size(), "icing")
        + " with a known release, "
        + near
        + " "
        + (near == 1 ? "was" : "were")
        + " let go within "
        + Format.metresAndFeet(NEAR)
        + " of the red line.";
  }

  private record Way(ShownWay way, Strength strength, Count icings) {}

  /** By way out and strength; only those with attempts whose ending the sheet tells. */
  private List<Way> icingsByWay() {
    List<Way> ways = new ArrayList<>();
    for (ShownWay w : ShownWay.values()) {
      for (Strength s : Strength.values()) {
        Count icings =
            teams.stream()
                .flatMap(t -> t.profile().counts().stream())
                .filter(k -> k.way() == w && k.strength() == s)
                .map(WayCount::iced)
                .reduce(new Count(0, 0), Count::plus);
        if (icings.trials() > 0) {
          ways.add(new Way(w, s, icings));
        }
      }
    }
    return ways;
  }

  private String ways() {
    List<Way> ways = icingsByWay();
    AdjustedRates rates = AdjustedRates.of(ways.stream().map(Way::icings).toList());
    return Likeliest.of(ways, Way::icings, rates)
        .map(
            most ->
                "Most often followed by an icing: "
                    + most.one().way().label()
                    + (most.one().strength() == Strength.UNKNOWN
                        ? ""
                        : ", " + Format.phrase(most.one().strength()))
                    + ", "
                    + Format.withInterval(most.count(), rates.of(most.count()))
                    + highestOf(most, "ways out"))
        .orElse("Too few attempts or icings to say which way out leads to icings.");
  }

  private String player() {
    return Likeliest.of(players, p -> p.profile().releases(), review.iced())
        .map(
            most ->
                "Whose pucks sent before the red line are iced most often? Most likely those of "
                    + Names.player(most.one().player())
                    + (review.ourTeam().isPresent()
                        ? ""
                        : " (" + Names.shown(most.one().team()) + ")")
                    + ": "
                    + Format.withInterval(most.count(), review.iced().of(most.count()))
                    + highestOf(most, "players"))
        .orElse("Too few releases or icings to say whose are iced most often.");
  }

  private String cost() {
    List<Restart> counted =
        restarts.stream().filter(r -> r.faceOff().against().isPresent()).toList();
    if (counted.isEmpty()) {
      return "What icings cost is not in these sheets: no shots are written.";
    }
    List<Restart> iced = counted.stream().filter(Sentences::iced).toList();
    List<Restart> others = counted.stream().filter(r -> !iced(r)).toList();
    return "In the "
        + Math.round(review.window())
        + " s after "
        + Format.count(iced.size(), "icing")
        + " the opponents had "
        + against(iced)
        + "; after "
        + Format.count(others.size(), "other defensive-zone face-off")
        + ", "
        + against(others)
        + ".";
  }

  private static String against(List<Restart> faceOffs) {
    return Format.count(sum(faceOffs, Against::attempts), "shot attempt")
        + " and "
        + Format.count(sum(faceOffs, Against::goals), "goal");
  }

  private static int sum(List<Restart> faceOffs, ToIntFunction<Against> what) {
    return faceOffs.stream()
        .mapToInt(r -> what.applyAsInt(r.faceOff().against().orElseThrow()))
        .sum();
  }

  /** "; the chance that this is the highest rate of 18 players is 23 %: no clear difference." */
  private static String highestOf(Likeliest<?> most, String what) {
    return "; the chance that this is the highest rate of "
        + most.of()
        + " "
        + what
        + " is "
        + Format.chance(most.chance())
        + (most.clear() ? "." : ": no clear difference.");
  }
}
