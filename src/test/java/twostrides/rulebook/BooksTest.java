package twostrides.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import twostrides.rink.Rink;
import twostrides.rulebook.penalty.PenaltyRules;
import twostrides.rulebook.penalty.PenaltyRules.AtExpiry;
import twostrides.rulebook.penalty.PenaltyRules.CoincidentalMinors;
import twostrides.rulebook.penalty.PenaltyRules.Lengths;

/** What a book hands on: manpower, rink, seasons, words and numbers at their ends. */
class BooksTest {

  @TempDir Path dir;

  private IcingBook book(String settings) throws IOException, BookException {
    Path file =
        Files.writeString(
            dir.resolve("ours.toml"), "starts-from = \"nhl\"\n[settings]\n" + settings);
    return Bookshelf.find(file.toString(), Optional.empty());
  }

  @Test
  void manpowerGoesByTheBook() throws Exception {
    OptionalDouble match = OptionalDouble.of(300);
    assertEquals(
        new PenaltyRules(
            new Lengths(120, 300, match),
            3,
            OptionalInt.of(3),
            CoincidentalMinors.FOUR_ON_FOUR,
            false,
            false,
            AtExpiry.OVER),
        Bookshelf.book("nhl").penaltyRules());
    assertEquals(
        new PenaltyRules(
            new Lengths(90, 240, match),
            4,
            OptionalInt.of(5),
            CoincidentalMinors.CANCEL,
            true,
            true,
            AtExpiry.STILL_SERVED),
        book("minor-minutes = 1.5\nmajor-minutes = 4\nfewest-skaters = 4\novertime-skaters = 5\n"
                + "coincidental-minors = \"cancel\"\nshorthanded-goal-frees = \"yes\"\n"
                + "expired-major-exempt = \"yes\"\nat-expiry = \"still-served\"\n")
            .penaltyRules());
  }

  @Test
  void aBookKnowsItsRinkAndItsRace() throws Exception {
    assertEquals(Rink.NORTH_AMERICAN, Bookshelf.book("nhl").rink());
    assertEquals(Rink.INTERNATIONAL, Bookshelf.book("iihf").rink());
    assertEquals(
        Optional.of(new RaceQuestion(RaceQuestion.Deadline.END_ZONE_SPOTS, true)),
        Bookshelf.book("hybrid").raceQuestion());
    assertEquals(
        Optional.of(new RaceQuestion(RaceQuestion.Deadline.END_ZONE_SPOTS, false)),
        book("tie = \"waved-off\"").raceQuestion());
    assertEquals(
        RaceQuestion.Deadline.TOUCH,
        Bookshelf.book("touch").raceQuestion().orElseThrow().deadline());
    assertEquals(Optional.empty(), Bookshelf.book("automatic").raceQuestion());
  }

  @Test
  void whatIsPlayedStandsBeforeTheBookAndLeavesItAsItIs() {
    IcingBook nhl = Bookshelf.book("nhl");
    IcingBook played = nhl.played(SettingKey.PERIOD_MINUTES, "15", "the sheet's clock");
    assertEquals(15, played.number(SettingKey.PERIOD_MINUTES));
    assertEquals("the sheet's clock", played.setting(SettingKey.PERIOD_MINUTES).source());
    assertEquals(Grade.CHOSEN, played.setting(SettingKey.PERIOD_MINUTES).grade());
    assertEquals(20, nhl.number(SettingKey.PERIOD_MINUTES));
    nhl.settings().clear();
    assertEquals(SettingKey.values().length, nhl.settings().size());
    assertThrows(
        IllegalArgumentException.class,
        () -> nhl.played(SettingKey.PERIOD_MINUTES, "31", "nobody"));
  }

  /**
   * Without a season asked for: the newest that a book was read for, or the last that it covers.
   */
  @Test
  void aBookStandsInItsNewestSeason() throws Exception {
    assertEquals(Bookshelf.NEWEST, Bookshelf.book("nhl").season());
    String ended = "starts-from = \"nhl\"\nseasons = \"2013-14 to 2020-21\"\n";
    Path file = Files.writeString(dir.resolve("ended.toml"), ended);
    assertEquals(new BookSeason(2020), Bookshelf.find(file.toString(), Optional.empty()).season());
    assertEquals("ended", Bookshelf.find(file.toString(), Optional.empty()).name());
    assertTrue(Bookshelf.book("iihf").grades().matches("\\d+ P, .*\\d+ \\?.*"));
  }

  /** A setting's word is one of its own, and every word of a setting has a constant. */
  @Test
  void everyWordIsAConstantOfItsKey() {
    Set<String> words = new HashSet<>();
    for (Choice c : Choice.values()) {
      assertEquals(c.key().name() + "_" + c.word().toUpperCase(Locale.ROOT), named(c));
      assertTrue(c.key().allows(c.word()));
      assertTrue(words.add(c.key().word() + " = " + c.word()), c.toString());
    }
    for (SettingKey k : SettingKey.values()) {
      assertEquals(k.choices().map(Choice::word).toList(), k.words());
      assertNotEquals(1, k.words().size(), "a setting with one word is none: " + k);
    }
    for (String id : Bookshelf.ids()) {
      for (SettingKey k : SettingKey.values()) {
        if (!k.words().isEmpty()) {
          Choice said = Bookshelf.book(id).choice(k);
          assertEquals(Bookshelf.book(id).setting(k).value(), said.word());
          assertTrue(Bookshelf.book(id).says(said));
        }
      }
    }
  }

  private static String named(Choice c) {
    return c.key().name() + "_" + c.name().substring(c.key().name().length() + 1).replace('_', '-');
  }

  @ParameterizedTest
  @CsvSource({
    "TYPE, hybrid, true",
    "TYPE, yes, false",
    "TYPE, '', false",
    "MINOR_MINUTES, 0.5, true",
    "MINOR_MINUTES, 0.49, false",
    "MINOR_MINUTES, 5, true",
    "MINOR_MINUTES, 5.01, false",
    "MINOR_MINUTES, two, false",
    "MINOR_MINUTES, NaN, false"
  })
  void aSettingAllowsItsWordsAndItsRange(SettingKey key, String value, boolean allowed) {
    assertEquals(allowed, key.allows(value));
  }

  @Test
  void whatIsAllowedIsSaid() {
    assertEquals("hybrid, touch, automatic, none", SettingKey.TYPE.allowed());
    assertEquals("a number from 0.5 to 5", SettingKey.MINOR_MINUTES.allowed());
  }

  @ParameterizedTest
  @CsvSource({
    "2025-26, 2025",
    "' 2025-2026 ', 2025",
    "1999-00, 1999",
    "1900-01, 1900",
    "2998-99, 2998",
    "1899-00, ",
    "2999-00, ",
    "2025-27, ",
    "2025-2027, ",
    "2025, ",
    "soon, "
  })
  void aSeasonIsReadByItsTwoYears(String text, Integer start) {
    assertEquals(Optional.ofNullable(start).map(BookSeason::new), BookSeason.of(text));
  }

  @Test
  void aSeasonIsOneThatLeaguesPlay() {
    assertEquals("1900-01", new BookSeason(1900).toString());
    assertEquals("2998-99", new BookSeason(2998).toString());
    assertThrows(IllegalArgumentException.class, () -> new BookSeason(1899));
    assertThrows(IllegalArgumentException.class, () -> new BookSeason(2999));
  }

  /** Which of 2015-16 to 2021-22 a run holds. */
  @ParameterizedTest
  @CsvSource({
    "all, 1111111, all",
    "2018-19 on, 0001111, 2018-19 on",
    "to 2018-19, 1111000, to 2018-19",
    "2017-18 to 2019-20, 0011100, 2017-18 to 2019-20",
    "2017-18 to 2017-18, 0010000, 2017-18",
    "2017-18, 0010000, 2017-18"
  })
  void aRunOfSeasonsHoldsBothItsEnds(String text, String held, String written) {
    Seasons run = Seasons.of(text).orElseThrow();
    StringBuilder found = new StringBuilder();
    for (int year = 2015; year <= 2021; year++) {
      found.append(run.covers(new BookSeason(year)) ? 1 : 0);
    }
    assertEquals(held, found.toString());
    assertEquals(written, run.toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2019-20 to 2017-18",
        "soon on",
        " on",
        "to soon",
        "soon to 2017-18",
        "2017-18 to soon",
        " to 2017-18 to 2018-19",
        "2017",
        ""
      })
  void whatIsNoRunOfSeasonsIsNone(String text) {
    assertEquals(Optional.empty(), Seasons.of(text));
  }

  @Test
  void aRunDoesNotEndBeforeItStarts() {
    Optional<BookSeason> first = BookSeason.of("2017-18");
    Optional<BookSeason> last = BookSeason.of("2018-19");
    assertEquals(first, new Seasons(first, first).last());
    assertThrows(IllegalArgumentException.class, () -> new Seasons(last, first));
  }

  @Test
  void aSeasonThatABookDoesNotCoverIsSaid() {
    String table =
        BookTable.history(
            SettingKey.TYPE, List.of("ncaa"), List.of(new BookSeason(2009), new BookSeason(2025)));
    assertTrue(
        table.startsWith("| book | 2009-10 | 2025-26 |\n|---|---|---|\n| `ncaa` | not covered |"));
  }

  @Test
  void aFileThatIsNoTextIsRefused() throws IOException {
    Path file =
        Files.write(
            dir.resolve("ours.toml"), "name = \"\u00c5s\"".getBytes(StandardCharsets.UTF_16));
    BookException e =
        assertThrows(BookException.class, () -> Bookshelf.find(file.toString(), Optional.empty()));
    assertTrue(e.getMessage().contains("text that is not UTF-8"), e.getMessage());
    Path folder = Files.createDirectory(dir.resolve("folder.toml"));
    BookException none =
        assertThrows(
            BookException.class, () -> Bookshelf.find(folder.toString(), Optional.empty()));
    assertTrue(none.getMessage().contains("a file that cannot be read"), none.getMessage());
  }

  /** A puck on a line is not past it: where its edge and the line's meet, it still touches. */
  @Test
  void whereAPuckWasIsAFact() {
    for (Rink rink : Rink.ALL) {
      double touches = rink.redLineHalfWidth() + Rink.PUCK_RADIUS;
      double leaves = -rink.blueLineNeutralEdge() + Rink.PUCK_RADIUS;
      assertEquals(Fact.FROM_OWN_ZONE, Facts.from(rink, leaves));
      assertEquals(Fact.FROM_OWN_HALF, Facts.from(rink, Math.nextUp(leaves)));
      assertEquals(Fact.FROM_OWN_HALF, Facts.from(rink, -touches - 1e-9));
      assertEquals(Fact.FROM_ON_THE_LINE, Facts.from(rink, -touches));
      assertEquals(Fact.FROM_ON_THE_LINE, Facts.from(rink, touches - 1e-9));
      assertEquals(Fact.FROM_PAST_THE_LINE, Facts.from(rink, touches + 1e-9));
    }
  }

  @Test
  void aWordThatIsNoFactIsRefused() {
    IllegalArgumentException e =
        assertThrows(
            IllegalArgumentException.class, () -> Facts.NONE.with(FactKey.PUCK, "in-nett"));
    assertTrue(e.getMessage().startsWith("puck is unknown, crossed"), e.getMessage());
    assertTrue(e.getMessage().endsWith("in-net, not in-nett"), e.getMessage());
    assertFalse(Facts.NONE.is(Fact.PUCK_IN_NET, Fact.PUCK_CROSSED));
    assertTrue(Facts.NONE.with(Fact.PUCK_IN_NET).is(Fact.PUCK_CROSSED, Fact.PUCK_IN_NET));
    assertTrue(Facts.NONE.toString().startsWith("[FROM_UNKNOWN, "), Facts.NONE.toString());
  }
}
