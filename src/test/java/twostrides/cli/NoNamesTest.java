package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Players may be minors: with --no-names no file of the book holds a player's name. */
class NoNamesTest {

  @TempDir Path dir;

  @Test
  void noFileHoldsAName() throws IOException {
    Path sheet;
    try (Stream<Path> files = Files.list(Path.of("sample-data"))) {
      sheet = files.filter(f -> f.toString().contains("game-03")).findFirst().orElseThrow();
    }
    Set<String> names = new TreeSet<>();
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser csv = CSVParser.parse(sheet, StandardCharsets.UTF_8, format)) {
      for (CSVRecord r : csv) {
        for (String column : new String[] {"player", "other_player"}) {
          if (!r.get(column).isBlank()) {
            // The name without its number, which stays.
            names.add(r.get(column).replaceFirst("^\\d+ ", ""));
          }
        }
      }
    }
    assertTrue(names.size() > 30, names.toString());
    Path out = dir.resolve("book");
    StringWriter err = new StringWriter();
    int code =
        Main.run(
            new PrintWriter(new StringWriter()),
            new PrintWriter(err, true),
            "review",
            sheet.toString(),
            "--no-names",
            "--compare-rulebook",
            "usah-girls-14u",
            "--out",
            out.toString());
    assertEquals(Main.DONE, code, err.toString());
    // This game has disagreements about manpower, whose reasons speak of penalized players.
    assertTrue(Files.readString(out.resolve("data/manpower.csv")).contains("minor until"));
    int read = 0;
    try (Stream<Path> files = Files.walk(out)) {
      for (Path p : files.filter(Files::isRegularFile).toList()) {
        if (p.toString().endsWith(".png")) {
          continue;
        }
        read++;
        String text = Files.readString(p);
        for (String name : names) {
          assertFalse(text.contains(name), p.getFileName() + " holds " + name);
        }
      }
    }
    assertTrue(read > 40, read + " files");
  }
}
