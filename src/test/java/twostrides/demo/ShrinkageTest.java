package twostrides.demo;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import twostrides.checks.Printed;
import twostrides.demo.SeasonTally.Player;
import twostrides.stats.Count;
import twostrides.stats.OutOfSample;

/**
 * The first half of a simulated season says the second: rates adjusted by the team's skaters have
 * less error than raw ones. Efron and Morris 1975, JASA 70:311, did it with batting averages.
 */
class ShrinkageTest {

  @RegisterExtension static final Printed FIGURES = new Printed();

  private static final int SEASONS = 30;
  private static final long SEED = 20_260_703;

  private static final List<List<SeasonTally>> HALVES = new ArrayList<>();
  private static List<Player> skaters;

  @BeforeAll
  static void play() {
    for (long seed : SeasonTally.seeds(SEASONS, SEED)) {
      HALVES.add(SeasonTally.parts(seed, 2));
    }
    Team team = League.found().own();
    skaters =
        HALVES.get(0).get(0).players.keySet().stream()
            .filter(p -> p.team().equals(team.code()) && !p.goalkeeper())
            .toList();
  }

  @ParameterizedTest
  @EnumSource
  void adjustedRestartRatesSayTheSecondHalfBetter(ShownOut way) {
    OutOfSample found = of((half, player) -> half.player(player, way));
    FIGURES.say("%s", found.line("second half, restarts after " + way.word));
    assertTrue(found.adjusted() < found.raw());
  }

  /** Here players differ: adjusting has to beat one share for all as well. */
  @Test
  void adjustedRatesOfCarriesReleasedShortBeatRawAndPooled() {
    OutOfSample found = of(SeasonTally::shortOfCarries);
    FIGURES.say("%s", found.line("second half, carries released short"));
    assertTrue(found.adjusted() < found.raw());
    assertTrue(found.adjusted() < found.pooled());
  }

  private static OutOfSample of(BiFunction<SeasonTally, Player, Count> count) {
    OutOfSample found = new OutOfSample();
    for (List<SeasonTally> halves : HALVES) {
      found.add(
          skaters.stream().map(p -> count.apply(halves.get(0), p)).toList(),
          skaters.stream().map(p -> count.apply(halves.get(1), p)).toList());
    }
    return found;
  }
}
