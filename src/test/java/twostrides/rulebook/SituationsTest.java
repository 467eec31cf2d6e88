package twostrides.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.RegisterExtension;
import twostrides.checks.Printed;

/**
 * Worked situations of rulebooks, casebooks and bulletins, and cases derived from rule texts: each
 * row of situations.csv names its source and grade.
 */
class SituationsTest {

  @RegisterExtension static final Printed FIGURES = new Printed();

  private static List<CSVRecord> rows() throws IOException {
    try (var in = SituationsTest.class.getResourceAsStream("situations.csv")) {
      return CSVParser.parse(
              new String(in.readAllBytes(), StandardCharsets.UTF_8),
              CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get())
          .getRecords();
    }
  }

  @TestFactory
  Stream<DynamicTest> situations() throws IOException {
    return rows().stream()
        .map(
            r ->
                DynamicTest.dynamicTest(
                    r.get("id")
                        + " "
                        + r.get("situation")
                        + " ["
                        + r.get("source")
                        + ", "
                        + r.get("grade")
                        + "]",
                    () -> check(r)));
  }

  private static Facts facts(CSVRecord r) {
    Facts facts = Facts.NONE;
    for (FactKey k : FactKey.values()) {
      if (!r.get(k.column()).isEmpty()) {
        facts = facts.with(k, r.get(k.column()));
      }
    }
    return facts;
  }

  private static IcingBook book(CSVRecord r) throws BookException {
    return Bookshelf.find(r.get("rulebook"), BookSeason.of(r.get("season")));
  }

  private static void check(CSVRecord r) throws BookException {
    Ruling ruling = Judge.judge(book(r), facts(r));
    String said = RulingWords.sentence(ruling);
    assertEquals(r.get("ruling"), ruling.word(), said);
    expect(r, "rule", ruling.reason().rule(), said);
    Optional<FaceOff> faceOff = ruling.faceOff();
    expect(r, "place", faceOff.map(d -> word(d.place())).orElse("none"), said);
    expect(r, "spot", faceOff.map(d -> word(d.spot())).orElse("none"), said);
    expect(r, "change", faceOff.map(d -> word(d.change())).orElse("none"), said);
    expect(r, "time_out", faceOff.map(d -> word(d.timeOut())).orElse("none"), said);
  }

  private static void expect(CSVRecord r, String column, String found, String said) {
    if (!r.get(column).isEmpty()) {
      assertEquals(r.get(column), found, column + ": " + said);
    }
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Test
  void everyRowNamesASourceAndAGradeAndItsIdOnce() throws IOException {
    Set<String> ids = new TreeSet<>();
    Set<String> worked = new TreeSet<>();
    int derived = 0;
    for (CSVRecord r : rows()) {
      if (r.get("id").startsWith("R")) {
        derived++;
      } else {
        worked.add(r.get("id").replaceFirst("-.*", ""));
      }
      assertTrue(ids.add(r.get("id")), r.get("id"));
      assertTrue(!r.get("source").isBlank() && !r.get("grade").isBlank(), r.get("id"));
    }
    FIGURES.say(
        "%d worked situations in %d cases, %d derived cases",
        worked.size(), ids.size() - derived, derived);
  }

  /** What hangs on a setting without a source is a guess, and its grade says so. */
  @Test
  void noRowDerivesItsRulingFromAnAssumedSetting() throws IOException, BookException {
    List<String> guesses = new ArrayList<>();
    for (CSVRecord r : rows()) {
      boolean sure = List.of("P", "S", "D", "rule text").contains(r.get("grade"));
      IcingBook book = book(r);
      String ruling = Judge.judge(book, facts(r)).word();
      for (Setting assumed : book.assumed()) {
        for (String other : assumed.key().words()) {
          Setting changed =
              new Setting(assumed.key(), other, assumed.seasons(), "", "", assumed.grade());
          Ruling then = Judge.judge(book.with(List.of(changed)), facts(r));
          if (sure && !then.word().equals(ruling)) {
            guesses.add(r.get("id") + ": with " + assumed.key().word() + " = " + other);
          }
        }
      }
    }
    assertEquals(List.of(), guesses);
  }

  /** One line between the two: what makes an icing is missing, or the book takes it back. */
  @Test
  void onlyAPuckWithNothingMissingIsWavedOff() {
    Random dice = new Random(81);
    int wavedOff = 0;
    for (int i = 0; i < 5_000; i++) {
      IcingBook book = Bookshelf.book(Bookshelf.ids().get(i % Bookshelf.ids().size()));
      Facts facts = Facts.NONE;
      for (FactKey k : FactKey.values()) {
        String word =
            dice.nextBoolean() ? k.unsaid().word() : k.words().get(dice.nextInt(k.words().size()));
        facts = facts.with(k, word);
      }
      Facts situation = facts;
      if (Judge.judge(book, situation) instanceof Ruling.WavedOff) {
        wavedOff++;
        assertTrue(
            IcingRules.IN_ORDER.stream()
                .filter(rule -> rule.effect() == Rule.Effect.NO_ICING)
                .noneMatch(r -> r.ask().apply(book, situation) instanceof Answer.Applies),
            book.id() + " " + situation);
      }
    }
    assertTrue(wavedOff > 500, wavedOff + " waved off");
  }

  /** Every exception decides at least one row, and some row under the same book is icing. */
  @Test
  void everyExceptionIsSeenFromBothSides() throws IOException, BookException {
    Set<String> decided = new TreeSet<>();
    Set<String> iced = new TreeSet<>();
    Set<String> deciding = new TreeSet<>();
    for (CSVRecord r : rows()) {
      Ruling ruling = Judge.judge(book(r), facts(r));
      if (ruling instanceof Ruling.Icing) {
        iced.add(r.get("rulebook"));
      } else if (!(ruling instanceof Ruling.NotYetDecided)) {
        decided.add(ruling.reason().rule());
        deciding.add(r.get("rulebook"));
      }
    }
    List<String> expected =
        new ArrayList<>(
            List.of(
                "no legal goal",
                "in the net",
                "offside first",
                "gained the line",
                "kicked",
                "shorthanded",
                "straight from a face-off",
                "rebound",
                "teammate past center",
                "touched on the way",
                "touched past the line",
                "off the back of the net",
                "left alone on purpose",
                "an opponent could play it",
                "receivable pass",
                "short of the goal line",
                "out of play",
                "goalkeeper",
                "the race"));
    expected.removeAll(decided);
    assertEquals(List.of(), expected, "exceptions that no row shows");
    for (String book : List.of("nhl", "iihf", "usah-adult", "hc-hybrid", "hc-automatic", "ncaa")) {
      assertTrue(iced.contains(book) && deciding.contains(book), book);
    }
  }
}
