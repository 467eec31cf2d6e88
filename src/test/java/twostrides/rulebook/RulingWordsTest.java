package twostrides.rulebook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every line of {@code words.csv}: what the command says of a situation, to the letter, with the
 * face-off and the assumptions on which it hangs; under a book of ours, or one changed by settings.
 */
class RulingWordsTest {

  @TempDir Path dir;

  private static List<CSVRecord> rows() throws IOException {
    try (var in = RulingWordsTest.class.getResourceAsStream("words.csv")) {
      return CSVParser.parse(
              new String(in.readAllBytes(), StandardCharsets.UTF_8),
              CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get())
          .getRecords();
    }
  }

  @TestFactory
  Stream<DynamicTest> everyCase() throws IOException {
    return rows().stream().map(r -> DynamicTest.dynamicTest(r.get("case"), () -> check(r)));
  }

  private void check(CSVRecord r) throws IOException, BookException {
    IcingBook book = book(r.get("rulebook"), r.get("settings"));
    Facts facts = Facts.NONE;
    for (String f : r.get("facts").split(" ", -1)) {
      String[] parts = f.split("=", 2);
      facts = facts.with(FactKey.of(parts[0]).orElseThrow(), parts[1]);
    }
    List<String> lines = new ArrayList<>(RulingWords.lines(Judge.judge(book, facts)));
    lines.addAll(RulingWords.assumptions(book, facts));
    assertEquals(r.get("words"), String.join("\n", lines));
  }

  private IcingBook book(String id, String settings) throws IOException, BookException {
    if (settings.isEmpty()) {
      return Bookshelf.book(id);
    }
    String toml = "starts-from = \"" + id + "\"\n[settings]\n" + settings.replace("; ", "\n");
    Path file = Files.writeString(dir.resolve("ours.toml"), toml);
    return Bookshelf.find(file.toString(), Optional.empty());
  }
}
