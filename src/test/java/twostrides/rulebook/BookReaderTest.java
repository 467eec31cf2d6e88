package twostrides.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Books of a user's own: what they change, and what they are refused for. */
class BookReaderTest {

  @TempDir Path dir;

  private Path file(String toml) throws IOException {
    return Files.writeString(dir.resolve("ours.toml"), toml.replace(" / ", "\n"));
  }

  private IcingBook book(String toml) throws IOException, BookException {
    return Bookshelf.find(file(toml).toString(), Optional.empty());
  }

  @Test
  void changesWhatItSaysAndKeepsTheRest() throws Exception {
    IcingBook ours =
        book(
            "starts-from = \"nhl\" / name = \"Fjord league\" / [settings] / type = \"automatic\""
                + " / touch-nullifies = \"before-goal-line\" / back-of-net = \"no\""
                + " / minor-minutes = 1.5 / shorthanded-exempt = false");
    assertEquals("ours", ours.id());
    assertEquals("Fjord league", ours.name());
    assertEquals("automatic", ours.setting(SettingKey.TYPE).value());
    assertEquals(Grade.CHOSEN, ours.setting(SettingKey.TYPE).grade());
    assertTrue(ours.setting(SettingKey.TYPE).source().endsWith("ours.toml, line 4"));
    assertEquals(1.5, ours.number(SettingKey.MINOR_MINUTES));
    assertEquals("no", ours.setting(SettingKey.SHORTHANDED_EXEMPT).value());
    assertEquals(
        Bookshelf.book("nhl").setting(SettingKey.LINE_CHANGE),
        ours.setting(SettingKey.LINE_CHANGE));
    assertTrue(ours.raceQuestion().isEmpty(), "automatic icing asks no race");
  }

  @Test
  void takesTheBookItStartsFromInItsSeason() throws Exception {
    String start = "starts-from = \"usah-youth-16u\" / season = ";
    assertEquals("no", book(start + "\"2022-23\"").setting(SettingKey.SHORTHANDED_EXEMPT).value());
    assertEquals("yes", book(start + "\"2025-26\"").setting(SettingKey.SHORTHANDED_EXEMPT).value());
  }

  @Test
  void aSettingMayChangeWithTheSeason() throws Exception {
    Path ours =
        file(
            "starts-from = \"iihf\" / [settings] / tie = [ / { value = \"waved-off\", seasons ="
                + " \"to 2024-25\", source = \"handbook\", grade = \"P\" }, / { value = \"icing\","
                + " seasons = \"2025-26 on\" }, / ]");
    Setting before =
        Bookshelf.find(ours.toString(), BookSeason.of("2024-25")).setting(SettingKey.TIE);
    assertEquals("waved-off", before.value());
    assertEquals(Grade.READ, before.grade());
    assertEquals(
        "icing",
        Bookshelf.find(ours.toString(), BookSeason.of("2025-26")).setting(SettingKey.TIE).value());
  }

  @Test
  void anAssumedSettingIsNoLongerAssumedWhenChosen() throws Exception {
    assertTrue(Bookshelf.book("iihf").setting(SettingKey.BROKEN_SKATE).assumed());
    IcingBook ours = book("starts-from = \"iihf\" / [settings] / broken-skate = \"yes\"");
    assertFalse(ours.setting(SettingKey.BROKEN_SKATE).assumed());
    assertFalse(ours.assumed().isEmpty());
  }

  /** Settings that no book of ours has: each changes the ruling it is about. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          type = "none"                 | no icing | FROM=own-zone STRENGTH=even PUCK=crossed
          official = "nullifies"        | no icing | FROM=own-zone STRENGTH=even PUCK=crossed TOUCH=official COULD_PLAY=no
          official = "nothing"          | icing    | FROM=own-zone STRENGTH=even PUCK=crossed TOUCH=official COULD_PLAY=no
          origin = "own-blue-line"      | no icing | FROM=own-half STRENGTH=even PUCK=crossed COULD_PLAY=no
          origin = "own-blue-line"      | icing    | FROM=own-zone STRENGTH=even PUCK=crossed COULD_PLAY=no
          short-needs-penalty = "no"    | no icing | FROM=own-zone STRENGTH=short-no-penalty PUCK=crossed COULD_PLAY=no
          short-needs-penalty = "yes"   | icing    | FROM=own-zone STRENGTH=short-no-penalty PUCK=crossed COULD_PLAY=no
          at-expiry = "still-served"    | no icing | FROM=own-zone STRENGTH=ended-at-release PUCK=crossed COULD_PLAY=no
          at-expiry = "over"            | icing    | FROM=own-zone STRENGTH=ended-at-release PUCK=crossed COULD_PLAY=no
          expired-major-exempt = "yes"  | no icing | FROM=own-zone STRENGTH=expired-major-empty-box PUCK=crossed COULD_PLAY=no
          able-opponent = "no"          | icing    | FROM=own-zone STRENGTH=even PUCK=crossed COULD_PLAY=yes
          hand-or-kick-in = "goal"      | goal     | FROM=own-zone STRENGTH=even PUCK=in-net CONTACT=hand
          offside = "no-rule"           | icing    | FROM=own-zone STRENGTH=even PUCK=crossed COULD_PLAY=no OFFSIDE=first-or-contact
          face-off-exempt = "no"        | icing    | FROM=own-zone STRENGTH=even PUCK=crossed COULD_PLAY=no FACE_OFF=straight
          """)
  void aSettingOfYourOwnChangesTheRuling(String setting, String ruling, String facts)
      throws IOException, BookException {
    Facts said = Facts.NONE;
    for (String f : facts.split(" ", -1)) {
      String[] parts = f.split("=", 2);
      said = said.with(FactKey.valueOf(parts[0]), parts[1]);
    }
    IcingBook ours = book("starts-from = \"automatic\" / [settings] / " + setting);
    assertEquals(ruling, Judge.judge(ours, said).word());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          starts-from = "nhl" / [settings] / typ = "hybrid"               | 3 | settings.typ      | an unknown key  | type, origin, gained-by
          starts-from = "nhl" / colour = "red"                            | 2 | colour            | an unknown key  | starts-from
          starts-from = "nhl" / [settings] / tie = "replay"               | 3 | tie               | "replay"        | icing, waved-off
          starts-from = "nhl" / [settings] / minor-minutes = 0            | 3 | minor-minutes     | "0"             | a number from 0.5 to 5
          starts-from = "nhl" / [settings] / tie = { valu = "icing" }     | 3 | tie.valu          | an unknown key  | value, clause, source, grade, seasons
          starts-from = "nhl" / [settings] / tie = { clause = "1" }       | 3 | tie               | no value        | icing, waved-off
          starts-from = "nhl" / [settings] / tie = { value = "icing", seasons = "2026" } | 3 | tie.seasons | "2026" | seasons such as
          starts-from = "nhl" / [settings] / tie = { value = "icing", grade = "Z" }      | 3 | grade | "Z" | P, S, D, M, C, own or ?
          starts-from = "nhl" / [settings] / type = "automatic"           | 3 | type              | together with touch-nullifies | the goal line
          starts-from = "nhl" / [settings] / shorthanded-exempt = "no" / expired-major-exempt = "yes" | 4 | expired-major-exempt | together with shorthanded-exempt | exempts no shorthanded team
          starts-from = "nhl" / [settings] / major-minutes = 1            | 3 | major-minutes     | together with minor-minutes | not shorter
          starts-from = "touch" / [settings] / no-race = "defender-back"  | 3 | no-race           | together with type | only hybrid icing
          starts-from = "nhl" / season = "soon"                           | 2 | season            | "soon"          | a season such as 2025-26
          starts-from = "nhl" / season = "1999-00"                        | 0 | season            | 1999-00         | 2013-14 on
          starts-from = "nhx"                                             | 0 | starts-from       | "nhx"           | hybrid, touch, automatic
          name = "none"                                                   | 0 | starts-from       | nothing         | the book that this one starts from
          starts-from = nhl                                               | 1 | ''                | not TOML        | lines such as
          """)
  void refusesWithFileLineKeyAndWhatIsAllowed(
      String toml, int line, String key, String found, String allowed) throws IOException {
    Path ours = file(toml);
    BookException e =
        assertThrows(BookException.class, () -> Bookshelf.find(ours.toString(), Optional.empty()));
    String where =
        ours + (line == 0 ? "" : ", line " + line) + (key.isEmpty() ? "" : ", key " + key);
    assertTrue(e.getMessage().startsWith(where + ": found "), e.getMessage());
    assertTrue(e.getMessage().contains(found), e.getMessage());
    assertTrue(e.getMessage().contains(allowed), e.getMessage());
  }

  @Test
  void aBookThatIsNotThereIsRefused() {
    BookException name =
        assertThrows(BookException.class, () -> Bookshelf.find("nhx", Optional.empty()));
    assertTrue(name.getMessage().contains("expected one of hybrid, touch, automatic, nhl"));
    BookException path =
        assertThrows(
            BookException.class,
            () -> Bookshelf.find(dir.resolve("no.toml").toString(), Optional.empty()));
    assertTrue(path.getMessage().contains("no such file"), path.getMessage());
    BookException season =
        assertThrows(BookException.class, () -> Bookshelf.find("ncaa", BookSeason.of("2009-10")));
    assertTrue(season.getMessage().contains("2010-11 on"), season.getMessage());
  }

  @Test
  void everyBookCoversItsSeasonsWithEverySetting() throws BookException {
    for (String id : Bookshelf.ids()) {
      IcingBook newest = Bookshelf.book(id);
      for (int year = 2005; year <= 2030; year++) {
        BookSeason season = new BookSeason(year);
        if (newest.seasons().covers(season)) {
          assertEquals(
              SettingKey.values().length,
              Bookshelf.find(id, Optional.of(season)).settings().size(),
              id + " " + season);
        }
      }
    }
  }
}
