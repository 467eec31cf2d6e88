package twostrides.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import twostrides.exits.RestartCause;
import twostrides.rates.Clustered;
import twostrides.rates.Count;
import twostrides.rates.Trend;

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
  private final List<RestartLine> restarts;
  private final List<Count> byGame;

  Sentences(
      int games,
      Optional<String> ours,
      double window,
      List<TeamReview> teams,
      List<PlayerReview> players,
      List<RestartLine> restarts,
      List<Count> byGame) {
    this.games = games;
    this.ours = ours;
    this.window = window;
    this.teams = teams.stream().filter(t -> counts(t.team())).toList();
    this.players = players.stream().filter(p -> counts(p.team())).toList();
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
          case FLAT_OR_UNCLEAR -> "over all games it moves too little to be told from chance.";
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

  private record Way(ShownWay way, ShownStrength strength, Clustered byGame) {}

  private String ways() {
    List<Way> enough = new ArrayList<>();
    for (ShownWay w : ShownWay.values()) {
      for (ShownStrength s : ShownStrength.values()) {
        Clustered games =
            new Clustered(
                teams.stream()
                    .flatMap(t -> t.profile().counts().stream())
                    .filter(k -> k.way() == w && k.strength() == s)
                    .flatMap(k -> k.byGame().clusters().stream())
                    .toList());
        if (!games.total().tooFew()) {
          enough.add(new Way(w, s, games));
        }
      }
    }
    Optional<Way> worst =
        enough.stream()
            .max(
                Comparator.comparingDouble((Way w) -> w.byGame().total().share().orElseThrow())
                    .thenComparing(Way::way, Comparator.reverseOrder()));
    if (worst.isEmpty()) {
      return "No way out has ten attempts at one strength yet: too few to say which leads to icing.";
    }
    Way w = worst.get();
    return "Most often followed by icing: "
        + w.way().label()
        + (w.strength() == ShownStrength.UNKNOWN ? "" : ", " + w.strength().phrase())
        + ", "
        + Say.share(w.byGame())
        + ".";
  }

  private String player() {
    Optional<PlayerReview> most =
        players.stream()
            .filter(p -> !p.profile().releases().tooFew())
            .max(
                Comparator.comparingInt((PlayerReview p) -> p.profile().releases().successes())
                    .thenComparing(p -> -p.profile().releases().trials())
                    .thenComparing(p -> -p.number()));
    if (most.isEmpty() || most.get().profile().releases().successes() == 0) {
      return "No player has ten releases short of center with an icing among them: too few to say whose habit it is.";
    }
    PlayerReview p = most.get();
    return "Most icings by one player: "
        + Say.name(p.player())
        + (ours.isPresent() ? "" : " (" + Say.name(p.team()) + ")")
        + "; of the player's releases short of center "
        + Say.share(p.profile().releases())
        + " were iced.";
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
