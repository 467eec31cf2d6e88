package twostrides.game;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;

/** Dates in the forms that sheets write. */
class SheetDatesTest {

  @TempDir Path dir;

  private SheetsRead read(String form, String... dates) throws IOException, SheetException {
    Path map = dir.resolve("map.toml");
    Files.writeString(map, "sheet = \"play\"\n[date]\nform = \"" + form + "\"\n");
    StringBuilder sheet = new StringBuilder("period,clock,date,home,away,team,action,x_m,y_m\n");
    for (String date : dates) {
      sheet.append("1,19:00,").append(date).append(",Herons,Wolves,Herons,recovery,-25,5\n");
    }
    Path file = Files.writeString(dir.resolve("g.csv"), sheet);
    return SeasonReader.read(
        List.of(file), Optional.of(SheetMap.read(map, SheetForms.ALL)), false, n -> {});
  }

  @ParameterizedTest
  @CsvSource({
    "yyyy-MM-dd HH:mm, 2031-10-04 19:30",
    "dd.MM.yyyy, 04.10.2031",
    "d MMM yyyy, 4 Oct 2031",
    "d MMMM yyyy, 4 october 2031",
    "EEE d MMM yy h:mm a, Sat 4 OCT 31 7:30 PM",
    "yyyy-MM-dd'T'HH:mm:ssX, 2031-10-04T19:30:00Z",
  })
  void formsAreReadAlikeOnEveryMachine(String form, String date) throws Exception {
    Locale locale = Locale.getDefault();
    try {
      for (String language : List.of("en", "de", "cs", "ar-EG-u-nu-arab")) {
        Locale.setDefault(Locale.forLanguageTag(language));
        SheetsRead season = read(form, date);
        assertEquals(List.of(), season.setAside(), language);
        assertEquals(Optional.of(LocalDate.of(2031, 10, 4)), season.games().get(0).date());
      }
    } finally {
      Locale.setDefault(locale);
    }
  }

  @Test
  void oneBadDateAmongTimesOfDayIsSetAside() throws Exception {
    SheetsRead season = read("yyyy-MM-dd HH:mm", "2031-10-04 19:30", "4 Oct");
    assertEquals(1, season.rowsUsed());
    assertEquals(
        dir.resolve("g.csv")
            + ", line 3, column \"date\": found \"4 Oct\", expected a date such as 2031-10-04 19:30."
            + " What to do: correct the date, or set date.form in the sheet map",
        season.setAside().get(0).problems().get(0).message());
  }
}
