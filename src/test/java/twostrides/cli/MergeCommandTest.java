package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two people tagged two halves: one sheet, nothing lost, doubles named. */
class MergeCommandTest {

  private static final String HEADER =
      "game,home,away,period,clock,team,way_out,ended,faceoff,mine\n";

  @TempDir Path dir;

  private Path sheet(String name, String... rows) throws IOException {
    return Files.writeString(dir.resolve(name), HEADER + String.join("\n", rows) + "\n");
  }

  @Test
  void twoHalvesBecomeOneSheetWithDoublesNamed() throws Exception {
    Path first =
        sheet(
            "first.csv",
            "G1,Herons,Wolves,1,13:07,Herons,chip,opponent,,a",
            "G1,Herons,Wolves,1,12:00,Herons,,,won,",
            "G1,Herons,Wolves,2,19:00,Wolves,carry,,,");
    Path second =
        sheet(
            "second.csv",
            "G1,Herons,Wolves,2,18:00,Herons,pass,,,",
            "G1,Herons,Wolves,1,13:05,Herons,long clearance,icing,,b",
            "G1,Herons,Wolves,1,13:05,Wolves,chip,,,",
            "G1,Herons,Wolves,1,12:00,Herons,,,won,");
    // An exit that reached the journal of the second only.
    try (TagProcess p = TagProcess.start(second)) {
      p.post(
          "add",
          "{\"game\":\"G1\",\"home\":\"Herons\",\"away\":\"Wolves\",\"period\":\"2\","
              + "\"clock\":\"18:30\",\"team\":\"Herons\",\"way_out\":\"kept in\"}");
      p.kill();
    }
    Files.delete(second);
    Path out = dir.resolve("both.csv");
    Run run = Run.of("merge", first, second, "--out", out);
    assertEquals(0, run.code(), run.err());
    assertTrue(
        run.out()
            .contains(
                "One of these twice? first.csv: P1 13:07, Herons, chip, opponent and second.csv: P1"
                    + " 13:05, Herons, long clearance, icing"),
        run.out());
    assertEquals(1, run.out().split("One of these twice", -1).length - 1, run.out());
    assertTrue(
        run.out().contains("8 rows read = 7 rows written + 1 that two sheets have word for word."),
        run.out());
    List<String> lines = Files.readAllLines(out);
    assertEquals(
        List.of("1 13:07", "1 13:05", "1 13:05", "1 12:00", "2 19:00", "2 18:30", "2 18:00"),
        lines.stream().skip(1).map(l -> l.split(",", -1)).map(c -> c[4] + " " + c[5]).toList());
    assertTrue(lines.get(0).endsWith(",mine") && lines.get(1).endsWith(",a"), "own columns stay");
    Run again = Run.of("merge", first, second, "--out", out);
    assertEquals(3, again.code());
    assertTrue(again.err().contains("Name another file with --out."), again.err());
  }

  @Test
  void aSheetThatIsNotThereIsNotMade() {
    Run run =
        Run.of("merge", dir.resolve("a.csv"), dir.resolve("b.csv"), "--out", dir.resolve("c.csv"));
    assertEquals(3, run.code());
    assertTrue(run.err().contains("no such file"), run.err());
    assertTrue(Files.notExists(dir.resolve("a.csv")) && Files.notExists(dir.resolve("c.csv")));
  }
}
