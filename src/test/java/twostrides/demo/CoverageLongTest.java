package twostrides.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
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
 * {@code mvn -Plong test}. What lies outside 93 to 97 % is named here, and why in docs/checks.md; a
 * figure that moves across the bounds, either way, fails.
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

  /**
   * Below 93 %: whole numbers at rare shares, where independent trials would do the same; trials
   * that hang together within a game; members far from their group; clusters drawn again that hold
   * hardly a success.
   */
  private static final Set<String> NARROW =
      Set.of(
          "a player, carried, released short, n below 10",
          "a player, carry over center, n 30 to 99",
          "a player, kept in, n below 10",
          "a player, missed pass, n below 10",
          "a player, pass, n 10 to 29",
          "a team even, chip",
          "a team, chip",
          "b team, long clearance less kept in",
          "c short of carries, n 30 to 99",
          "e bootstrap, carry over center",
          "e bootstrap, chip",
          "e bootstrap, pass");

  /**
   * What may lie above 97 %: rare shares of hardly any trials, differences of rare shares, drawn
   * shares of players who hardly differ, and a median of one whole second.
   */
  private static final List<String> WIDE =
      List.of(
          "a player, carry over center, n below 10",
          "a player, chip, n below 10",
          "a player, long clearance, n below 10",
          "b ",
          "c restarts",
          "c short of carries, n below 10",
          "d median relief");

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
        wilson("a team, " + way.word, season.team(way), truth.team(way));
        wilson("a team even, " + way.word, season.even(TEAM, way), truth.even(way));
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
  void onlyTheNamedOnesAreTooNarrow() {
    Set<String> narrow = new TreeSet<>();
    HELD.outside()
        .forEach(
            (kind, percent) -> {
              if (percent < Held.LEAST) {
                narrow.add(kind);
              }
            });
    assertEquals(new TreeSet<>(NARROW), narrow);
  }

  @Test
  void onlyTheNamedOnesAreTooWide() {
    HELD.outside()
        .forEach(
            (kind, percent) ->
                assertTrue(
                    percent < Held.MOST || WIDE.stream().anyMatch(kind::startsWith),
                    kind + " " + percent));
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
      HELD.expect(kind, independent(count.trials(), share));
    }
  }

  /** The binomial chance of a count whose Wilson interval holds the share. */
  private static double independent(int trials, double share) {
    double chance = Math.pow(1 - share, trials);
    double sum = 0;
    for (int k = 0; k <= trials; k++) {
      Interval interval = new Count(k, trials).wilson().orElseThrow();
      if (interval.low() > share) {
        break;
      }
      sum += share <= interval.high() ? chance : 0;
      chance *= (trials - k) / (k + 1.0) * share / (1 - share);
    }
    return sum;
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
        if (first.compareTo(second) >= 0) {
          continue;
        }
        String pair = first.word + " less " + second.word;
        difference(
            "b team, " + pair,
            season.team(first),
            season.team(second),
            truth.team(first) - truth.team(second));
        difference(
            "b team even, " + pair,
            season.even(TEAM, first),
            season.even(TEAM, second),
            truth.even(first) - truth.even(second));
        for (Player player : truth.skaters()) {
          Count a = season.player(player, first);
          Count b = season.player(player, second);
          difference(
              "b player, smaller " + size(Math.min(a.trials(), b.trials())),
              a,
              b,
              truth.player(player, first) - truth.player(player, second));
        }
      }
    }
  }

  private static void difference(String kind, Count first, Count second, double value) {
    new Difference(first, second)
        .interval()
        .ifPresent(range -> HELD.add(kind, range.low(), range.high(), value));
  }

  /** The shares of the team's skaters, drawn toward each other. */
  private static void drawn(String kind, Counts counts, Truths shares) {
    List<Player> skaters = truth.skaters();
    BetaBinomial fit = BetaBinomial.fit(skaters.stream().map(counts::of).toList());
    for (Player player : skaters) {
      Count count = counts.of(player);
      Optional<Shrunk> shrunk = fit.shrink(count);
      if (shrunk.isPresent()) {
        Interval i = shrunk.get().interval();
        double share = shares.of(player);
        HELD.add(kind, i.low(), i.high(), share);
        String group = kind.startsWith("c restarts") ? "c restarts" : kind;
        HELD.add(group + ", " + size(count.trials()), i.low(), i.high(), share);
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

  private static void byGame(SeasonTally season, ShownOut way) {
    List<Count> games = season.games(way);
    Optional<Range> drawn = BOOTSTRAP.share(games).interval();
    if (drawn.isPresent()) {
      HELD.add("e bootstrap, " + way.word, drawn.get().low(), drawn.get().high(), truth.team(way));
    }
    Interval clustered = new Clustered(games).interval().orElseThrow();
    HELD.add("e design effect, " + way.word, clustered.low(), clustered.high(), truth.team(way));
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
