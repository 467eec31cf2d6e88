package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README tells somebody who starts does what it says. */
class StartHereTest {

  private static final Pattern FIVE_ROWS =
      Pattern.compile("<!-- example: five rows -->\\n```csv\\n(.*?)```", Pattern.DOTALL);

  private static final Pattern COMMAND = Pattern.compile("(?m)^two-strides (\\S+)");

  @TempDir Path dir;

  private static String readme() throws IOException {
    return Files.readString(Path.of("README.md"));
  }

  @Test
  void theFiveRowsAreCheckedAndHoldAnIcing() throws IOException {
    Matcher example = FIVE_ROWS.matcher(readme());
    assertTrue(example.find());
    Path sheet = Files.writeString(dir.resolve("five.csv"), example.group(1));
    Run check = Run.of("check", sheet);
    assertEquals(Main.DONE, check.code(), check.err());
    assertTrue(check.out().contains("5 rows read = 5 rows used + 0 rows set aside."), check.out());
    Path book = dir.resolve("book");
    Run review = Run.of("review", sheet, "--out", book);
    assertEquals(Main.DONE, review.code(), review.err());
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser restarts =
        CSVParser.parse(book.resolve("data/restarts.csv"), StandardCharsets.UTF_8, format)) {
      List<CSVRecord> rows = restarts.getRecords();
      assertEquals(1, rows.size());
      assertEquals("icing_inferred", rows.get(0).get("restart_cause"));
      assertEquals("3 Lind", rows.get(0).get("player"));
    }
  }

  @Test
  void everyCommandOfTheReadmeIsOne() throws IOException {
    TreeSet<String> named = new TreeSet<>();
    Matcher m = COMMAND.matcher(readme());
    while (m.find()) {
      named.add(m.group(1));
    }
    assertTrue(named.contains("map"), named.toString());
    for (String command : named) {
      assertEquals(Main.DONE, Run.of(command, "--help").code(), command);
    }
  }
}
