package twostrides.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was not used is written in its own words, and can be read again once corrected. */
class SetAsideTest {
  @TempDir Path dir;

  private Sheet read(String name, String text) throws IOException, SheetException {
    Path file = dir.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
    return SheetReader.read(file, SheetMap.plain(Schemas.PLAY));
  }

  private Set<String> written(Path out) throws IOException {
    try (Stream<Path> files = Files.list(out)) {
      return new TreeSet<>(files.map(f -> f.getFileName().toString()).toList());
    }
  }

  @Test
  void keepsTheSheetsOwnWords() throws Exception {
    String header = "Period; clock ;action;note";
    String odd = " 1;\"12:00\";touch;=1+1;\"a\r\nb\"";
    Sheet sheet = read("g1.csv", header + "\r\n1;1;touch;x\r\n" + odd + "\r\n2;2\r\n");
    Path out = dir.resolve("out/set-aside");
    SetAside.write(out, sheet.setAside(), List.of());
    assertEquals(header + "\n" + odd + "\n2;2\n", Files.readString(out.resolve("g1.csv")));
    Sheet again = SheetReader.read(out.resolve("g1.csv"), SheetMap.plain(Schemas.PLAY));
    assertEquals(2, again.setAside().size());
  }

  @Test
  void writesReasonsThatASpreadsheetDoesNotRun() throws Exception {
    Sheet sheet = read("g1.csv", "period,clock,action,x_m,note\n1,1,touch,-3.2,=cmd()\n");
    SheetRow row = sheet.rows().get(0);
    List<Problem> problems = new ArrayList<>();
    for (String column : List.of("x_m", "note")) {
      problems.add(row.cell(column).orElseThrow().problem("a \"word\"", "+Correct it."));
    }
    SheetException broken =
        assertThrows(SheetException.class, () -> read("g2.csv", "period,clock,action\n1,\"1"));
    SheetException missing =
        assertThrows(SheetException.class, () -> SheetReader.headers(Path.of("-none.csv")));
    Path out = dir.resolve("out");
    SetAside.write(out, List.of(new DoubtfulRow(row, problems)), List.of(broken, missing));
    List<String> lines = Files.readString(out.resolve("problems.csv")).lines().toList();
    assertEquals("file,line,column,value,expected,what_to_do", lines.get(0));
    assertTrue(lines.get(1).startsWith("g2.csv,2,,a row whose quotes do not match,"));
    assertTrue(lines.get(2).startsWith("'-none.csv,,,no file that can be opened,a file,"));
    assertEquals("g1.csv,2,x_m,-3.2,\"a \"\"word\"\"\",'+Correct it.", lines.get(3));
    assertEquals("g1.csv,2,note,'=cmd(),\"a \"\"word\"\"\",'+Correct it.", lines.get(4));
    assertEquals(5, lines.size());
  }

  /** Only as much of the path as tells the sheets apart; the home folder stays at home. */
  @Test
  void sheetsAreNamedWithoutTheirPlaceOnThisMachine() throws Exception {
    List<DoubtfulRow> rows = new ArrayList<>();
    for (String name :
        List.of("home/a/g1.csv", "home/b/g1.csv", "home/c/b/g1.csv", "home/g2.csv")) {
      rows.addAll(read(name, "period,clock,action\n1\n").setAside());
    }
    Path out = dir.resolve("out");
    SetAside.write(out, rows, List.of());
    assertEquals(
        List.of("a/g1.csv,2", "home/b/g1.csv,2", "c/b/g1.csv,2", "g2.csv,2"),
        Files.readAllLines(out.resolve("problems.csv")).stream()
            .skip(1)
            .map(l -> l.replaceFirst(",,.*", ""))
            .toList());
  }

  @Test
  void sheetsOfTheSameNameDoNotCollide() throws Exception {
    List<DoubtfulRow> rows = new ArrayList<>();
    for (String name :
        List.of("b/g1.csv", "a/g1.csv", "c/G1.csv", "c/g1-2.csv", "a/problems.csv")) {
      rows.addAll(read(name, "period,clock,action\n" + name + "\n").setAside());
    }
    Path out = dir.resolve("out");
    SetAside.write(out, rows, List.of());
    assertEquals(
        Set.of("g1.csv", "g1-2.csv", "G1-3.csv", "g1-2-2.csv", "problems.csv", "problems-2.csv"),
        written(out));
    assertTrue(Files.readString(out.resolve("g1.csv")).contains("a/g1.csv"));
    assertTrue(Files.readString(out.resolve("g1-2.csv")).contains("b/g1.csv"));
    assertEquals(6, Files.readAllLines(out.resolve("problems.csv")).size());
  }

  @Test
  void namesAreMadeSafe() throws Exception {
    List<DoubtfulRow> rows = new ArrayList<>();
    for (String name : List.of(".csv", "a:b*?\"<>|.csv", "Šárka 1.tsv", "x".repeat(200) + ".csv")) {
      rows.addAll(read(name, "period,clock,action\n1\n").setAside());
    }
    Path out = dir.resolve("out");
    SetAside.write(out, rows, List.of());
    assertEquals(
        new TreeSet<>(
            List.of(
                "_.csv.csv",
                "a_b______.csv",
                "Šárka 1.tsv",
                "x".repeat(100) + ".csv",
                "problems.csv")),
        written(out));
  }

  @Test
  void nothingSetAsideStillSaysSo() throws Exception {
    Path out = dir.resolve("out");
    SetAside.write(out, List.of(), List.of());
    assertEquals(
        "file,line,column,value,expected,what_to_do\n",
        Files.readString(out.resolve("problems.csv")));
  }

  @Test
  void otherCharsetsAreWrittenAsUtf8() throws Exception {
    Path file = dir.resolve("g1.csv");
    Files.write(file, "period,clock,action\n1,Čeněk\n".getBytes(Charset.forName("windows-1250")));
    Path toml = dir.resolve("m.toml");
    Files.writeString(toml, "sheet = \"play\"\n[file]\ncharset = \"windows-1250\"\n");
    Sheet sheet = SheetReader.read(file, SheetMap.read(toml, Schemas.ALL));
    Path out = dir.resolve("out");
    SetAside.write(out, sheet.setAside(), List.of());
    assertEquals("period,clock,action\n1,Čeněk\n", Files.readString(out.resolve("g1.csv")));
  }
}
