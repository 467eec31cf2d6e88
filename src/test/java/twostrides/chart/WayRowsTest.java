package twostrides.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static twostrides.chart.Profiles.way;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twostrides.findings.ShownWay;
import twostrides.game.Strength;
import twostrides.stats.Count;

class WayRowsTest {

  @Test
  void theSevenMainWaysAreThereWithoutAnAttempt() {
    List<WayRows.Row> rows = WayRows.of(Profiles.EMPTY);
    assertEquals(
        List.of(
            "carry over center",
            "carried, released short",
            "pass",
            "chip",
            "long clearance",
            "missed pass",
            "kept in"),
        rows.stream().map(r -> r.way().label()).toList());
    assertEquals(List.of("none"), rows.stream().map(WayRows.Row::share).distinct().toList());
  }

  @Test
  void seldomWaysAreThereWhenTheyOccur() {
    List<WayRows.Row> rows =
        WayRows.of(
            Profiles.counts(
                way(ShownWay.MEANS_UNKNOWN, Strength.EVEN, 0, 1, 1),
                way(ShownWay.CARRY_OTHER, Strength.EVEN, 0, 1, 1)));
    assertEquals(Arrays.asList(ShownWay.values()), rows.stream().map(WayRows.Row::way).toList());
  }

  @Test
  void strengthsStandInTheirOrderUnderOneWay() {
    List<WayRows.Row> chips =
        WayRows.of(
                Profiles.counts(
                    way(ShownWay.CHIP, Strength.UNKNOWN, 0, 1, 1),
                    way(ShownWay.CHIP, Strength.POWER_PLAY, 0, 0, 0),
                    way(ShownWay.CHIP, Strength.SHORTHANDED, 0, 1, 1),
                    way(ShownWay.CHIP, Strength.EVEN, 0, 1, 1)))
            .stream()
            .filter(r -> r.way() == ShownWay.CHIP)
            .toList();
    assertEquals(
        List.of("even", "shorthanded", "not known"),
        chips.stream().map(WayRows.Row::strengthName).toList());
    assertEquals(List.of(true, false, false), chips.stream().map(WayRows.Row::first).toList());
  }

  @Test
  void countsOfOneWayAndStrengthAreAdded() {
    WayRows.Row pass =
        WayRows.of(
                Profiles.counts(
                    way(ShownWay.PASS, Strength.EVEN, 2, 11, 12),
                    way(ShownWay.PASS, Strength.EVEN, 1, 9, 9)))
            .get(2);
    assertEquals(
        new WayRows.Row(ShownWay.PASS, Optional.of(Strength.EVEN), new Count(3, 20), 21, true),
        pass);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "7 | 31 | 31 | 7 of 31 iced (23 %)",
        "0 | 14 | 14 | 0 of 14 iced (0 %)",
        "10 | 10 | 10 | 10 of 10 iced (100 %)",
        "1 | 300 | 300 | 1 of 300 iced (under 1 %)",
        "299 | 300 | 300 | 299 of 300 iced (over 99 %)",
        "1 | 200 | 200 | 1 of 200 iced (1 %)",
        "2 | 9 | 9 | 2 of 9, too few to say",
        "7 | 31 | 35 | 7 of 31 iced (23 %) +4 unknown",
        "0 | 0 | 3 | 3 ending not in the sheet",
      })
  void aRowSaysItsCountBeforeItsShare(int iced, int known, int attempts, String expected) {
    WayRows.Row row =
        WayRows.of(
                Profiles.counts(
                    way(ShownWay.CARRY_OVER_CENTER, Strength.EVEN, iced, known, attempts)))
            .get(0);
    assertEquals(expected, (row.share() + " " + row.rest()).strip());
  }
}
