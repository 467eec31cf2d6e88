package twostrides.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import twostrides.exits.RestartCause;
import twostrides.stats.AdjustedRates;
import twostrides.stats.Clustered;
import twostrides.stats.Count;
import twostrides.stats.Trend;

/**
 * What the season says in five sentences, each with its numbers and how many they come from. They
 * speak of our team where one team plays every game, else of all teams together.
 */
final class Sentences {

  /**
   * How near the red line an icing must be let go to count as one that center was in reach of:
   * metres. Assumed.
   */
  private static final double NEAR = 5.0;

  private final int games;
  private final Optional<String> ours;
  private final double window;
  private final List<TeamReview> teams;
  private final List<PlayerReview> players;
  private final AdjustedRates iced;
  private final List<RestartLine> restarts;
  private final List<Count> byGame;

  Sentences(
      int games,
      Optional<String> ours,
      double window,
      List<TeamReview> teams,
      List<PlayerReview> players,
      AdjustedRates iced,
      List<RestartLine> restarts,
      List<Count> byGame) {
    this.games = games;
    this.ours = ours;
    this.window = window;
    this.teams = teams.stream().filter(t -> counts(t.team())).toList();
    this.players = players.stream().filter(p -> counts(p.team())).toList();
    this.iced = iced;
    this.restarts = restarts.stream().filter(r -> counts(r.team())).toList();
    this.byGame = List.copyOf(byGame);
  }

  private boolean counts(String team) {
    return ours.isEmpty() || ours.get().equals(team);
  }

  private String who() {
    return ours.map(Say::name).orElse("the teams");
  }

  List<String> all() {
    return List.of(attempts(), changed(), where(), player(), cost());
  }

  private String attempts() {
    int attempts = teams.stream().mapToInt(t -> t.profile().attempts()).sum();
    List<RestartLine> iced = restarts.stream().filter(RestartLine::icing).toList();
    Clustered byGame =
        new Clustered(
            teams.stream().flatMap(t -> t.profile().byGame().clusters().stream()).toList());
    return "In "
        + Say.count(games, "game")
        + " "
        + who()
        + " tried to leave the own zone "
        + Say.count(attempts, "time")
        + ", with "
        + Say.count(iced.size(), "icing")
        + (games == 0 ? "" : " (" + Say.oneDecimal((double) iced.size() / games) + " a game)")
        + inferred(iced)
        + ". Of the tries, "
        + Say.share(byGame)
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
  private static String inferred(List<RestartLine> iced) {
    long n =
        iced.stream().filter(r -> r.cause().equals(RestartCause.ICING_INFERRED.label())).count();
    return n == 0
        ? ""
        : n == iced.size() ? ", all of them inferred" : ", " + n + " of them inferred";
  }

  /** The first third of the games against the last, and what the games between them say too. */
  private String changed() {
    if (byGame.size() < Trend.FEWEST_STEPS) {
      return "Fewer than three games with exit attempts: too few to say what changed.";
    }
    Habit icings = Habit.of(byGame);
    Habit.Stretch first = icings.stretches().get(0);
    Habit.Stretch last = icings.stretches().get(icings.stretches().size() - 1);
    return "Icing followed "
        + brief(first.count())
        + " in "
        + Say.games(first.from(), first.to())
        + " and "
        + brief(last.count())
        + " in "
        + Say.games(last.from(), last.to())
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
        + Say.count(c.trials(), "attempt")
        + (c.trials() == 0 ? "" : " (" + Say.shortShare(c) + ")");
  }

  private String where() {
    return near() + " " + ways();
  }

  private String near() {
    List<RestartLine> iced = restarts.stream().filter(RestartLine::icing).toList();
    if (iced.isEmpty()) {
      return "No icing is written or can be inferred in these sheets.";
    }
    List<RestartLine> placed = iced.stream().filter(r -> r.shortOfCenter().isPresent()).toList();
    int near = (int) placed.stream().filter(r -> r.shortOfCenter().getAsDouble() <= NEAR).count();
    return "Of "
        + Say.count(placed.size(), "icing")
        + " with a known release, "
        + near
        + " "
        + (near == 1 ? "was" : "were")
        + " let go within "
        + Say.metresAndFeet(NEAR)
        + " of the red line.";
  }

  private record Way(ShownWay way, ShownStrength strength, Count icings) {}

  /** By way out and strength; only those with attempts whose ending the sheet tells. */
  private List<Way> icingsByWay() {
    List<Way> ways = new ArrayList<>();
    for (ShownWay w : ShownWay.values()) {
      for (ShownStrength s : ShownStrength.values()) {
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
                    + (most.one().strength() == ShownStrength.UNKNOWN
                        ? ""
                        : ", " + most.one().strength().phrase())
                    + ", "
                    + most.said(rates)
                    + most.highestOf("ways out"))
        .orElse("Too few attempts or icings to say which way out leads to icings.");
  }

  private String player() {
    return Likeliest.of(players, p -> p.profile().releases(), iced)
        .map(
            most ->
                "Whose releases short of center are iced most often? Most likely those of "
                    + Say.player(most.one().player())
                    + (ours.isPresent() ? "" : " (" + Say.name(most.one().team()) + ")")
                    + ": "
                    + most.said(iced)
                    + most.highestOf("players"))
        .orElse("Too few releases or icings to say whose are iced most often.");
  }

  private String cost() {
    List<RestartLine> counted =
        restarts.stream().filter(r -> r.attemptsAgainst().isPresent()).toList();
    if (counted.isEmpty()) {
      return "What icings cost is not in these sheets: no shots are written.";
    }
    List<RestartLine> iced = counted.stream().filter(RestartLine::icing).toList();
    List<RestartLine> others = counted.stream().filter(r -> !r.icing()).toList();
    return "In the "
        + Math.round(window)
        + " s after "
        + Say.count(iced.size(), "icing")
        + " the opponents had "
        + against(iced)
        + "; after "
        + Say.count(others.size(), "other defensive-zone face-off")
        + ", "
        + against(others)
        + ".";
  }

  private static String against(List<RestartLine> faceOffs) {
    return Say.count(
            faceOffs.stream().mapToInt(r -> r.attemptsAgainst().getAsInt()).sum(), "shot attempt")
        + " and "
        + Say.count(faceOffs.stream().mapToInt(r -> r.goalsAgainst().orElse(0)).sum(), "goal");
  }
}
