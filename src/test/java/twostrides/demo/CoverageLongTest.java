package twostrides.demo;

import static org.junit.jupiter.api.Assertions.assertAll;
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
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twostrides.demo.SeasonTally.Player;
import twostrides.rates.BetaBinomial;
import twostrides.rates.Bootstrap;
import twostrides.rates.Clustered;
import twostrides.rates.Count;
import twostrides.rates.Difference;
import twostrides.rates.Interval;
import twostrides.rates.KaplanMeier;
import twostrides.rates.KaplanMeier.Band;
import twostrides.rates.Range;
import twostrides.rates.Shrunk;

/**
 * How often 95 % intervals hold the truth: 2,000 seasons of twelve games of the invented league,
 * against the long run of 2,000 other seasons. Takes some minutes and is left out of the usual run:
 * {@code mvn -Plong test}. What lies outside 93 to 97 %, and not for whole numbers alone, is named
 * here, and why in docs/checks.md; a figure that moves across the bounds, either way, fails.
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

  private static final Held HELD = new Held();

  /** Below 93 %: a share so rare that one restart is too many; members far from their group. */
  private static final Set<String> NARROW =
      Set.of("a player, chip, n 10 to 29", "c short of carries, n 30 to 99");

  /**
   * Above 97 %: what a design effect never below 1 adds, most where a share is rare; members near
   * their group; a median of one whole second.
   */
  private static final Set<String> WIDE =
      Set.of(
          "a team, missed pass",
          "b team even, carry over center less kept in",
          "b team even, chip less kept in",
          "b team even, chip less missed pass",
          "b team, chip less missed pass",
          "c short of carries, n below 10",
          "d median relief, LOG, kept in",
          "d median relief, LOG_LOG, kept in",
          "d median relief, PLAIN, kept in");

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
        drawn("c restarts, " + way.word, p -> season.player(p, way), p -> truth.player(p, way));
      }
      drawn("c short of carries", season::shortOfCarries, truth::shortOfCarries);
    }
    HELD.print();
  }

  @Test
  void onlyTheNamedOnesAreOutside() {
    Set<String> narrow = new TreeSet<>();
    Set<String> wide = new TreeSet<>();
    HELD.outside().forEach((kind, percent) -> (percent < Held.LEAST ? narrow : wide).add(kind));
    assertAll(
        () -> assertEquals(new TreeSet<>(NARROW), narrow),
        () -> assertEquals(new TreeSet<>(WIDE), wide));
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
        "c common share",
        "c short of carries"
      })
  void everySortAsAWholeIsInside(String sort) {
    double percent = HELD.percent(sort);
    assertTrue(Held.LEAST <= percent && percent <= Held.MOST, sort + " " + percent);
  }

  /** Taking the fitted spread as known loses where players differ; the interval given does not. */
  @Test
  void unsureSpreadIsAllowedFor() {
    assertTrue(HELD.percent("spread known, short of carries") < 92);
    assertTrue(HELD.percent("c short of carries") >= Held.LEAST);
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

  /** The shares of the team's skaters, drawn toward each other. */
  private static void drawn(String kind, Counts counts, Truths shares) {
    List<Player> skaters = truth.skaters();
    BetaBinomial fit = BetaBinomial.fit(skaters.stream().map(counts::of).toList());
    common(kind, fit, skaters, counts, shares);
    for (Player player : skaters) {
      Count count = counts.of(player);
      Optional<Shrunk> shrunk = fit.shrink(count);
      if (shrunk.isPresent()) {
        Interval i = shrunk.get().interval();
        double share = shares.of(player);
        HELD.add(kind, i.low(), i.high(), share);
        String group = kind.startsWith("c restarts") ? "c restarts" : kind;
        HELD.add(group + ", " + size(count.trials()), i.low(), i.high(), share);
        if (!group.equals(kind)) {
          HELD.add(group, i.low(), i.high(), share);
        }
        Interval known = spreadKnown(fit, count);
        String other = kind.replaceFirst("^c ", "spread known, ");
        HELD.add(other, known.low(), known.high(), share);
        HELD.add(other + ", " + fit.word(), known.low(), known.high(), share);
        HELD.add(
            "spread allowed for, " + kind.substring(2) + ", " + fit.word(),
            i.low(),
            i.high(),
            share);
      }
    }
  }

  /** Where the groups do not differ the interval is the group's: it has to hold their one share. */
  private static void common(
      String kind, BetaBinomial fit, List<Player> skaters, Counts counts, Truths shares) {
    if (fit instanceof BetaBinomial.GroupsDoNotDiffer alike) {
      double share = 0;
      for (Player player : skaters) {
        int trials = counts.of(player).trials();
        share += trials == 0 ? 0 : shares.of(player) * trials / alike.pooled().trials();
      }
      Interval i = alike.pooled().wilson().orElseThrow();
      HELD.add("c common share", i.low(), i.high(), share);
      String one = "c common share, " + kind.substring(2);
      HELD.add(one, i.low(), i.high(), share);
      HELD.expect(one, Independent.share(alike.pooled().trials(), share));
    }
  }

  /** What the interval would be, were the best spread the true one. */
  private static Interval spreadKnown(BetaBinomial fit, Count count) {
    if (fit instanceof BetaBinomial.Fitted fitted) {
      return fitted.prior().shrink(count).interval();
    }
    return ((BetaBinomial.GroupsDoNotDiffer) fit).pooled().wilson().orElseThrow();
  }

  private interface Counts {
    Count of(Player player);
  }

  private interface Truths {
    double of(Player player);
  }

  private static void relief(SeasonTally season, ShownOut way) {
    KaplanMeier curve = KaplanMeier.of(season.relief.get(way));
    for (Band band : Band.values()) {
      KaplanMeier.Median median = curve.median(band);
      HELD.add(
          "d median relief, " + band + ", " + way.word,
          median.low().orElse(NEVER),
          median.high().orElse(NEVER),
          truth.medianRelief(way));
    }
  }

  /** Whole games drawn again: not shown for shares, since rare successes are hardly ever drawn. */
  private static void byGame(SeasonTally season, ShownOut way) {
    Optional<Range> drawn = BOOTSTRAP.share(season.team(way).clusters()).interval();
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
