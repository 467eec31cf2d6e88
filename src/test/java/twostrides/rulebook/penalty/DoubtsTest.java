package twostrides.rulebook.penalty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every line of {@code doubts.csv}: what a game leaves open, and what it does not. */
class DoubtsTest {

  @TestFactory
  Stream<DynamicTest> everyCase() throws IOException {
    try (Reader in =
        new InputStreamReader(
            DoubtsTest.class.getResourceAsStream("doubts.csv"), StandardCharsets.UTF_8)) {
      return CSVFormat.DEFAULT
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .get()
          .parse(in)
          .getRecords()
          .stream()
          .map(
              r ->
                  DynamicTest.dynamicTest(
                      r.get("case"),
                      () -> check(r.get("rules"), r.get("events"), r.get("doubts"))));
    }
  }

  private static void check(String rules, String events, String doubts) {
    List<String> found =
        BoxTimeline.of(CaseEvents.rules(rules), 1200, 300, 3, CaseEvents.events(events))
            .doubts()
            .stream()
            .map(Doubt::text)
            .toList();
    List<String> expected = Stream.of(doubts.split("\\|")).filter(d -> !d.isEmpty()).toList();
    assertEquals(expected.size(), found.size(), found.toString());
    for (String part : expected) {
      assertTrue(found.stream().anyMatch(text -> text.contains(part)), found.toString());
    }
  }
}
