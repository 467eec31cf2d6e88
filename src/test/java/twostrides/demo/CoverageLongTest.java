package twostrides.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twostrides.checks.Printed;
import twostrides.demo.SeasonTally.Player;
import twostrides.stats.AdjustedRate;
import twostrides.stats.AdjustedRates;
import twostrides.stats.Bootstrap;
import twostrides.stats.BootstrapShare;
import twostrides.stats.Clustered;
import twostrides.stats.Count;
import twostrides.stats.Difference;
import twostrides.stats.Interval;
import twostrides.stats.KaplanMeier;
import twostrides.stats.Range;

/**
 * How often 95 % intervals hold the truth: 2,000 seasons of twelve games of the invented league,
 * against the long run of 2,000 other seasons. Takes some minutes and is left out of the usual run:
 * {@code mvn -Plong test}. What lies below 93 %, and not for whole numbers alone, is named here,
 * and why in docs/checks.md; a figure that moves across the bound, either way, fails. {@code
 * AdjustedCoverageTest} is the quick part, on invented groups.
 */
@Tag("long")
class CoverageLongTest {
  private static final int SEASONS = 2000;
  private static final long TRUTH_SEED = 20_260_701;
  private static final long SEED = 20_260_702;
  private static final String TEAM = "GLA";
  private static final ShownOut[] WAYS = ShownOut.values();
  private static final Bootstrap BOOTSTRAP = new Bootstrap(1, 2000);

  /** A wait that no period holds: what is "not reached" counts as that long. */
  private static final double NEVER = 1201;

  @RegisterExtension static final Printed FIGURES = new Printed();

  private static final Held HELD = new Held();

  /** Below 93 %: the one or two skaters with most carries, whose shares lie far from the rest. */
  private static final Set<String> NARROW = Set.of("c short of carries, n 30 to 99");

  private static LongRun truth;

  @BeforeAll
  static void play() {
    truth = new LongRun(TEAM);
    for (long seed : SeasonTally.seeds(SEASONS, TRUTH_SEED)) {
      truth.add(SeasonTally.play(seed));
    }
    for (long seed : SeasonTally.seeds(SEASONS, SEED)) {
      SeasonTally season = SeasonTally.play(seed);
      for (ShownOut way : WAYS) {
        team(", " + way.word, season.team(way), truth.team(way));
        team(" even, " + way.word, season.even(way), truth.even(way));
        relief(season, way);
        byGame(season, way);
      }
      differences(season);
      players(season);
      for (ShownOut way : WAYS) {
        adjusted("c restarts, " + way.word, p -> season.player(p, way), p -> truth.player(p, way));
      }
      adjusted("c short of carries", season::shortOfCarries, truth::shortOfCarries);
    }
    HELD.print(FIGURES);
    for (ShownOut way : WAYS) {
      FIGURES.say(
          "long run: %s: share %.4f, %d trials a season; at even strength %.4f, %d; median relief"
              + " %d s",
          way.word,
          truth.team(way),
          truth.trials(way, true),
          truth.even(way),
          truth.trials(way, false),
          truth.medianRelief(way));
      wholeNumbers(way, truth.trials(way, true));
      wholeNumbers(way, 40);
    }
  }

  /** How far apart the chances lie that an interval made from counts can hold the share with. */
  private static void wholeNumbers(ShownOut way, int trials) {
    BinomialDistribution counts = new BinomialDistribution(trials, truth.team(way));
    FIGURES.say(
        "whole numbers: %s, %d trials: none %.1f %%, up to one %.1f %%, up to two %.1f %%",
        way.word,
        trials,
        100 * counts.cumulativeProbability(0),
        100 * counts.cumulativeProbability(1),
        100 * counts.cumulativeProbability(2));
  }

  @Test
  void onlyTheNamedOnesAreBelow() {
    assertEquals(new TreeSet<>(NARROW), HELD.below());
  }

  /** Every sort of interval as a whole, whole numbers or not. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "a team",
        "a team even",
        "a player, n 10 to 29",
        "a player, n 30 to 99",
        "b team",
        "b team even",
        "b slice even less the rest",
        "c restarts",
        "c short of carries"
      })
  void everySortAsAWholeIsHeld(String sort) {
    assertTrue(HELD.percent(sort) >= Held.LEAST, sort + " " + HELD.percent(sort));
  }

  private static void wilson(String kind, Count count, double share) {
    Optional<Interval> interval = count.wilson();
    if (interval.isPresent()) {
      HELD.add(kind, interval.get().low(), interval.get().high(), share);
      HELD.expect(kind, Independent.share(count.trials(), share));
    }
  }

  /** As the book shows it, over games; and with all attempts taken as independent. */
  private static void team(String kind, Clustered games, double share) {
    String sort = "a team" + kind.substring(0, kind.indexOf(','));
    Interval i = games.interval().orElseThrow();
    HELD.add(sort, i.low(), i.high(), share);
    HELD.add("a team" + kind, i.low(), i.high(), share);
    HELD.expect("a team" + kind, Independent.share(games.total().trials(), share));
    wilson("as if independent, team" + kind, games.total(), share);
  }

  private static void players(SeasonTally season) {
    for (Player player : season.players.keySet()) {
      for (ShownOut way : WAYS) {
        Count count = season.player(player, way);
        if (count.trials() > 0) {
          String size = size(count.trials());
          wilson("a player, " + size, count, truth.player(player, way));
          wilson("a player, " + way.word + ", " + size, count, truth.player(player, way));
        }
      }
    }
  }

  private static void differences(SeasonTally season) {
    for (ShownOut first : WAYS) {
      for (ShownOut second : WAYS) {
        if (first.compareTo(second) < 0) {
          String pair = first.word + " less " + second.word;
          difference("team", pair, new Difference(season.team(first), season.team(second)));
          difference("team even", pair, new Difference(season.even(first), season.even(second)));
        }
      }
    }
    Clustered even = sum(season::even);
    Clustered all = sum(season::team);
    List<Count> rest = new ArrayList<>();
    for (int g = 0; g < SeasonTally.GAMES; g++) {
      Count every = all.clusters().get(g);
      Count at = even.clusters().get(g);
      rest.add(new Count(every.successes() - at.successes(), every.trials() - at.trials()));
    }
    Range range = new Difference(even, new Clustered(rest)).interval().orElseThrow();
    HELD.add("b slice even less the rest", range.low(), range.high(), truth.evenLessRest());
  }

  private static Clustered sum(Function<ShownOut, Clustered> games) {
    return Stream.of(WAYS).map(games).reduce(new Clustered(List.of()), Clustered::plus);
  }

  /** As the book makes them, over games; and with all attempts taken as independent. */
  private static void difference(String sort, String pair, Difference games) {
    Range range = games.interval().orElseThrow();
    Expected expected = EXPECTED.computeIfAbsent(sort + ", " + pair, k -> Expected.of(sort, pair));
    String kind = "b " + sort + ", " + pair;
    HELD.add("b " + sort, range.low(), range.high(), expected.value());
    HELD.add(kind, range.low(), range.high(), expected.value());
    HELD.expect(kind, expected.held());
    Range alone =
        new Difference(games.first().total(), games.second().total()).interval().orElseThrow();
    HELD.add("as if independent, " + kind, alone.low(), alone.high(), expected.value());
  }

  private static final Map<String, Expected> EXPECTED = new HashMap<>();

  /** The true difference, and how often it is held with independent trials, as many as usual. */
  private record Expected(double value, double held) {
    static Expected of(String sort, String pair) {
      boolean any = sort.equals("team");
      ShownOut first = way(pair.substring(0, pair.indexOf(" less ")));
      ShownOut second = way(pair.substring(pair.indexOf(" less ") + 6));
      double share1 = any ? truth.team(first) : truth.even(first);
      double share2 = any ? truth.team(second) : truth.even(second);
      return new Expected(
          share1 - share2,
          Independent.difference(
              truth.trials(first, any), share1, truth.trials(second, any), share2));
    }

    private static ShownOut way(String word) {
      return Stream.of(WAYS).filter(w -> w.word.equals(word)).findFirst().orElseThrow();
    }
  }

  /** The rates of the team's skaters, adjusted by each other; each skater's own share is wanted. */
  private static void adjusted(String kind, Counts counts, Truths shares) {
    List<Player> skaters = truth.skaters();
    AdjustedRates rates = AdjustedRates.of(skaters.stream().map(counts::of).toList());
    String group = kind.startsWith("c restarts") ? "c restarts" : kind;
    for (Player player : skaters) {
      Count count = counts.of(player);
      Optional<AdjustedRate> rate = rates.of(count);
      if (rate.isPresent()) {
        Interval i = rate.get().interval();
        double share = shares.of(player);
        HELD.add(kind, i.low(), i.high(), share);
        HELD.add(group + ", " + size(count.trials()), i.low(), i.high(), share);
        if (!group.equals(kind)) {
          HELD.add(group, i.low(), i.high(), share);
        }
      }
    }
  }

  private interface Counts {
    Count of(Player player);
  }

  private interface Truths {
    double of(Player player);
  }

  private static void relief(SeasonTally season, ShownOut way) {
    KaplanMeier curve = KaplanMeier.of(season.relief.get(way));
    KaplanMeier.Median median = curve.median();
    HELD.add(
        "d median relief, " + way.word,
        median.low().orElse(NEVER),
        median.high().orElse(NEVER),
        truth.medianRelief(way));
  }

  /** Whole games drawn again: not shown for shares, since rare successes are hardly ever drawn. */
  private static void byGame(SeasonTally season, ShownOut way) {
    Optional<Range> drawn = BootstrapShare.of(BOOTSTRAP, season.team(way).clusters()).interval();
    drawn.ifPresent(r -> HELD.add("bootstrap, " + way.word, r.low(), r.high(), truth.team(way)));
  }

  private static String size(int trials) {
    if (trials < Count.FEWEST_TO_SAY) {
      return "n below 10";
    }
    if (trials < 30) {
      return "n 10 to 29";
    }
    return trials < 100 ? "n 30 to 99" : "n 100 or more";
  }
}
