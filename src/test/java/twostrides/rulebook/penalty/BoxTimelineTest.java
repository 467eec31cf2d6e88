package twostrides.rulebook.penalty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Sentences, doubts and where strength changes; the numbers themselves stand in {@code cases.csv}.
 */
class BoxTimelineTest {

  private static BoxTimeline timeline(String rules, String events) {
    return BoxTimeline.of(CaseEvents.rules(rules), 1200, 300, 3, CaseEvents.events(events));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          common | | 1 5:00 | at full strength
          common | 1 12:35 home minor to 12; 1 12:40 home major to 7 | 1 13:00 | two skaters short: minor to 12 until 14:35 (event 1), major to 7 until 17:40 (event 2)
          common | 1 19:00 home minor to 12 | 1 19:30 | one skater short: minor to 12 until 1:00 of period 2 (event 1)
          common | 1 10:00 home double_minor to 12; 1 11:00 goal away | 1 11:30 | one skater short: double minor to 12 until 13:00 (event 1)
          common | 1 10:00 home double_minor to 12 | 1 11:00 | one skater short: double minor to 12 until 14:00 (event 1)
          common | 1 10:00 home minor to 12 served by 12 | 1 11:00 | one skater short: minor to 12 until 12:00 (event 1)
          common | 1 10:00 home bench_minor served by 7 | 1 10:30 | one skater short: bench minor served by 7 until 12:00 (event 1)
          common | 1 10:00 home minor to 12; 1 10:00 home minor to 12 | 1 11:00 | one skater short: minor to 12 until 12:00 (event 1), minor to 12 waits (event 2)
          common | 1 10:00 home minor to 12; 1 10:05 away minor to 9 | 1 11:00 | one skater short: minor to 12 until 12:00 (event 1); as many as the other team, so not shorthanded
          nhl | 1 10:00 home major to 12 served by nobody | 1 15:30 | one skater short: major to 12 ran out with nobody in the box (event 1); not shorthanded, since no penalty being served makes the difference
          nhl | 4 1:00 home minor to 12 | 4 1:30 | 3 on 4 in overtime: minor to 12 until 3:00 (event 1)
          common | 1 10:00 signal home; 1 10:05 net away empty | 1 10:06 | at full strength; a penalty is signalled and does not count yet
          common | 1 10:05 net home empty | 1 10:06 | at full strength; goalkeeper off for an extra attacker
          """)
  void saysWhy(String rules, String events, String at, String sentence) {
    BoxTimeline t = timeline(rules, events == null ? "" : events);
    assertEquals(sentence, t.why(CaseEvents.instant(at), Side.HOME));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          iihf | 1 10:00 home match to 12 served by 7 | no match penalty
          common | 1 10:00 home major to 12; 1 10:00 home game_misconduct to 12 | who sits
          common | 1 10:00 home minor to 12; 1 12:00 goal away | very instant
          common | 1 10:00 goal away; 1 10:00 home minor to 12 | none was signalled
          common | 1 10:00 home minor to 12; 1 10:00 home minor to 7; 1 10:00 home major to 9 | one of them waits
          common | 1 10:00 home minor to 12; 1 10:00 home double_minor to 7; 1 11:00 goal away | same time left
          common | 1 10:00 home minor to 12; 1 10:00 home double_minor to 7; 1 10:00 away minor to 3 | does not say which
          nhl | 1 10:00 home minor to 12; 1 10:00 home major to 12; 1 10:00 away minor to 3; 1 10:00 away major to 3 | beside majors
          common | 1 10:00 signal home; 1 10:10 goal away; 1 10:10 home minor to 12; 1 10:10 home minor to 7 | which the goal cancelled
          common | 1 20:05 home minor to 12 | past the end
          """)
  void saysWhatIsLeftOpen(String rules, String events, String words) {
    List<Doubt> doubts = timeline(rules, events).doubts();
    assertEquals(1, doubts.size(), doubts::toString);
    assertTrue(doubts.get(0).text().contains(words), doubts::toString);
  }

  @Test
  void hasNoDoubtsWhereNothingIsOpen() {
    BoxTimeline t =
        timeline(
            "nhl",
            "1 10:00 home minor to 12; 1 11:00 goal away; 2 3:00 home minor to 4; 2 3:00 away minor"
                + " to 5; 3 1:00 away major to 9; 3 2:00 goal home");
    assertEquals(List.of(), t.doubts());
  }

  @Test
  void strengthChangesWhereItShould() {
    BoxTimeline t =
        timeline(
            "nhl",
            "1 10:00 home minor to 12; 1 11:00 goal away; 1 13:00 net away empty; 3 19:00 home"
                + " minor to 4; 4 1:20 stop");
    List<String> changes = new ArrayList<>();
    String before = "5-5";
    for (Snapshot s : t.snapshots()) {
      String after = s.ice().skaters(Side.HOME) + "-" + s.ice().skaters(Side.AWAY);
      if (!after.equals(before)) {
        changes.add(s.at().period() + " " + s.at().elapsed() + " " + after);
      }
      before = after;
    }
    assertEquals(
        List.of(
            "1 600.0 4-5", "1 660.0 5-5", "3 1140.0 4-5", "4 0.0 3-4", "4 60.0 4-4", "4 80.0 3-3"),
        changes);
    assertFalse(t.at(CaseEvents.instant("1 13:00 before")).away().netEmpty());
    assertTrue(t.at(CaseEvents.instant("1 13:00")).away().netEmpty());
  }

  @Test
  void anExtraAttackerStandsApart() {
    OnIce ice =
        timeline("common", "1 10:00 home minor to 12; 1 10:10 net home empty")
            .at(CaseEvents.instant("1 10:20"));
    assertEquals(4, ice.skaters(Side.HOME));
    assertTrue(ice.home().netEmpty());
    assertTrue(ice.shorthanded(Side.HOME));
  }

  @Test
  void aSignalLastsUntilPlayStops() {
    BoxTimeline t = timeline("common", "1 10:00 signal home; 1 10:20 stop");
    assertTrue(t.at(CaseEvents.instant("1 10:10")).home().signalled());
    assertFalse(t.at(CaseEvents.instant("1 10:21")).home().signalled());
    BoxTimeline late = timeline("common", "1 19:50 signal home");
    assertTrue(late.at(CaseEvents.instant("1 19:59")).home().signalled());
    assertFalse(late.at(CaseEvents.instant("2 0:01")).home().signalled());
  }

  /** A clock of tenths: 600.3 + 120 s is 720.3 s, though not in binary fractions. */
  @Test
  void tenthsOfASecondEndWhereTheyShould() {
    BoxTimeline t =
        BoxTimeline.of(
            PenaltyRules.COMMON,
            1200,
            300,
            3,
            List.of(
                new BoxEvent.Called(
                    new GameInstant(1, 600.3, 1),
                    Side.HOME,
                    PenaltyKind.MINOR,
                    OptionalDouble.empty(),
                    Optional.of("12"),
                    Optional.empty(),
                    "row 1")));
    assertEquals(4, t.at(GameInstant.beforeRows(1, 720.2)).skaters(Side.HOME));
    assertEquals(5, t.at(GameInstant.beforeRows(1, 720.3)).skaters(Side.HOME));
  }
}
