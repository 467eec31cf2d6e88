package twostrides.rulebook.penalty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.RegisterExtension;
import twostrides.checks.Printed;

/**
 * Every line of {@code cases.csv}; each names its own source and grade. Validation where the grade
 * is P, S or D, a record of the choice made where it is M, C or own.
 */
class ManpowerCasesTest {

  @RegisterExtension static final Printed FIGURES = new Printed();

  private static final Set<String> GRADES = Set.of("P", "S", "D", "M", "C", "own");

  private static List<CSVRecord> cases() throws IOException {
    try (Reader in =
        new InputStreamReader(
            ManpowerCasesTest.class.getResourceAsStream("cases.csv"), StandardCharsets.UTF_8)) {
      return CSVFormat.DEFAULT
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .get()
          .parse(in)
          .getRecords();
    }
  }

  @TestFactory
  Stream<DynamicTest> everyCase() throws IOException {
    return cases().stream().map(r -> DynamicTest.dynamicTest(r.get("case"), () -> check(r)));
  }

  private static void check(CSVRecord r) {
    BoxTimeline timeline =
        BoxTimeline.of(
            CaseEvents.rules(r.get("rules")), 1200, 300, 3, CaseEvents.events(r.get("events")));
    GameInstant at = CaseEvents.instant(r.get("at"));
    OnIce ice = timeline.at(at);
    String shorthanded = "none";
    for (Side side : Side.values()) {
      if (ice.shorthanded(side)) {
        shorthanded = side.text();
      }
    }
    assertEquals(
        r.get("home") + " on " + r.get("away") + ", shorthanded " + r.get("shorthanded"),
        ice.skaters(Side.HOME) + " on " + ice.skaters(Side.AWAY) + ", shorthanded " + shorthanded,
        () -> timeline.why(at, Side.HOME) + " / " + timeline.why(at, Side.AWAY));
  }

  @Test
  void everyCaseHasItsOwnNameAndAGrade() throws IOException {
    Set<String> names = new HashSet<>();
    for (CSVRecord r : cases()) {
      assertTrue(r.isConsistent(), () -> "cells missing or too many: " + r);
      assertTrue(names.add(r.get("case")), () -> "twice: " + r.get("case"));
      assertTrue(GRADES.contains(r.get("grade")), () -> r.get("case") + ": " + r.get("grade"));
    }
    FIGURES.say("%d cases by hand", names.size());
    assertTrue(names.size() >= 45, () -> names.size() + " cases");
  }
}
