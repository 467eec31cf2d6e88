package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One source for the rink and for the length of a period, written as they were used. */
class IceTest {

  /** The recovery lies 14.5 m from the long axis: outside 85 ft, inside 30 m. */
  private static final String WIDE =
      """
      period,clock,team,player,action,outcome,x_m,y_m,skaters_for,skaters_against
      1,19:00,Herons,4 Berg,recovery,,-25,14.5,5,5
      1,18:56,Herons,4 Berg,release,lost,-5,6,5,5
      1,18:50,Wolves,9 Vik,recovery,,3,3,5,5
      """;

  /** Two periods of a quarter of an hour, by their face-offs. */
  private static final String QUARTERS =
      """
      period,clock,team,player,action,outcome,x_m,y_m,skaters_for,skaters_against
      1,15:00,Herons,4 Berg,faceoff,,0,0,5,5
      1,14:56,Herons,4 Berg,recovery,,-25,5,5,5
      1,0:12,Wolves,9 Vik,recovery,,3,3,5,5
      2,15:00,Wolves,9 Vik,faceoff,,0,0,5,5
      2,0:30,Wolves,9 Vik,recovery,,3,3,5,5
      """;

  @TempDir Path dir;

  private Path write(String name, String text) throws IOException {
    return Files.writeString(dir.resolve(name), text);
  }

  private String run() throws IOException {
    return Files.readString(dir.resolve("book/run.json"));
  }

  private void holds(String key, String value) throws IOException {
    assertTrue(run().contains("\"" + key + "\" : " + value + ","), key + " in " + run());
  }

  @Test
  void aRulebookImpliesItsRink() throws IOException {
    Path sheet = write("g.csv", WIDE);
    Run r = Run.of("review", sheet, "--rulebook", "iihf", "--out", dir.resolve("book"));
    assertEquals(0, r.code(), r.err());
    assertTrue(r.out().contains("3 rows read = 3 rows used"), r.out());
    assertTrue(r.out().contains("Rink: iihf, 60.00 x 30.00 m, by rulebook iihf."), r.out());
    holds("rink", "\"iihf\"");
    holds("rink_width_m", "30.0");
    holds("rink_from", "\"rulebook iihf\"");
    Run narrow = Run.of("check", sheet, "--rulebook", "nhl");
    assertTrue(narrow.out().contains("Rink: nhl, 60.96 x 25.91 m, by rulebook nhl."), narrow.out());
    assertTrue(narrow.out().contains("2 rows used + 1 rows set aside"), narrow.out());
  }

  @Test
  void aMapWinsAndTheDifferenceIsSaid() throws IOException {
    Path map = write("m.toml", "sheet = \"play\"\n[rink]\nname = \"nhl\"\n");
    Path sheet = write("g.csv", WIDE);
    Run r =
        Run.of("review", sheet, "--map", map, "--rulebook", "iihf", "--out", dir.resolve("book"));
    assertEquals(0, r.code(), r.err());
    assertTrue(
        r.out().contains("Rink: nhl, 60.96 x 25.91 m, by sheet map; the rulebook's is iihf."),
        r.out());
    assertTrue(run().split("\"rink\" : \"nhl\"", -1).length == 3, "twice the same: " + run());
    holds("rink_from", "\"sheet map\"");
    String rulings = Files.readString(dir.resolve("book/rulings.html"));
    assertTrue(rulings.contains("sheet map (chosen by you)"), rulings);
  }

  @Test
  void anOptionSaysWhichAndMayNotContradictTheMap() throws IOException {
    Path sheet = write("g.csv", WIDE);
    Run r = Run.of("review", sheet, "--rink", "iihf", "--out", dir.resolve("book"));
    assertEquals(0, r.code(), r.err());
    holds("rink", "\"iihf\"");
    holds("rink_from", "\"--rink\"");
    Path map =
        write(
            "m.toml",
            "sheet = \"play\"\n[rink]\nname = \"nhl\"\n[clock]\nperiod_length_s = 1200\n");
    Run differs = Run.of("check", sheet, "--map", map, "--rink", "iihf");
    assertEquals(Main.USAGE, differs.code());
    assertTrue(
        differs.err().contains("--rink: found iihf, expected rink.name of the sheet map, nhl"));
    Run longer = Run.of("check", sheet, "--map", map, "--period-length", "15");
    assertEquals(Main.USAGE, longer.code());
    assertTrue(longer.err().contains("--period-length: found 15.0, expected"), longer.err());
    Run unknown = Run.of("check", sheet, "--rink", "pond");
    assertEquals(Main.USAGE, unknown.code());
    assertTrue(unknown.err().contains("--rink: found pond, expected nhl or iihf."), unknown.err());
    Run none = Run.of("check", sheet, "--period-length", "0");
    assertTrue(none.err().contains("expected a number from 5 to 30"), none.err());
  }

  @Test
  void shortPeriodsAreAskedAbout() throws IOException {
    Path sheet = write("g.csv", QUARTERS);
    for (String command : new String[] {"check", "review"}) {
      Run asked =
          command.equals("check")
              ? Run.of("check", sheet)
              : Run.of("review", sheet, "--out", dir.resolve("book"));
      assertEquals(Main.UNREADABLE, asked.code(), asked.out());
      assertTrue(asked.err().contains("no clock above 15:00"), asked.err());
      assertTrue(asked.err().contains("--period-length 15 (or 20)"), asked.err());
      assertTrue(asked.err().contains("clock.period_length_s = 900"), asked.err());
    }
    assertTrue(Files.notExists(dir.resolve("book")));
    Run said = Run.of("review", sheet, "--period-length", "15", "--out", dir.resolve("book"));
    assertEquals(0, said.code(), said.err());
    holds("period_length_s", "900.0");
    holds("period_length_from", "\"--period-length\"");
    holds("period-minutes", "\"15\"");
    assertEquals(0, Run.of("check", sheet, "--period-length", "20").code());
    Path map = write("m.toml", "sheet = \"play\"\n[clock]\nperiod_length_s = 900\n");
    assertEquals(0, Run.of("check", sheet, "--map", map).code());
    Path book = write("own.toml", "starts-from = \"hybrid\"\n[settings]\nperiod-minutes = 15\n");
    assertEquals(0, Run.of("check", sheet, "--rulebook", book).code());
  }
}
