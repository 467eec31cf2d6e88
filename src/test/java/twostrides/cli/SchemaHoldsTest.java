package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The tables of a book, and the sheets of the sample season, are as docs/schema says. */
class SchemaHoldsTest {

  private static final Path FOLDER = Path.of("docs/schema");

  private static final Map<String, Pattern> TYPES =
      Map.of(
          "string", Pattern.compile("(?s).*"),
          "integer", Pattern.compile("-?\\d+"),
          "number", Pattern.compile("-?\\d+(\\.\\d+)?"),
          "boolean", Pattern.compile("true|false"),
          "date", Pattern.compile("\\d{4}-\\d\\d-\\d\\d"));

  @TempDir Path dir;

  private static List<String> doubts(Path csv, Path schema, boolean allColumns) throws IOException {
    JsonNode fields = new ObjectMapper().readTree(schema.toFile()).get("fields");
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    List<String> doubts = new ArrayList<>();
    try (CSVParser rows = CSVParser.parse(csv, StandardCharsets.UTF_8, format)) {
      List<String> names = new ArrayList<>();
      fields.forEach(f -> names.add(f.get("name").asText()));
      if (allColumns) {
        assertEquals(names, rows.getHeaderNames(), csv.toString());
      } else {
        assertTrue(names.containsAll(rows.getHeaderNames()), rows.getHeaderNames().toString());
      }
      for (CSVRecord row : rows) {
        for (JsonNode f : fields) {
          String name = f.get("name").asText();
          if (row.isMapped(name) && !row.get(name).isEmpty() && !fits(f, row.get(name))) {
            doubts.add(csv.getFileName() + " " + name + ": " + row.get(name));
          }
        }
      }
    }
    return doubts.stream().distinct().toList();
  }

  private static boolean fits(JsonNode field, String cell) {
    boolean known = !field.at("/constraints/enum").isArray();
    for (JsonNode word : field.at("/constraints/enum")) {
      known |= word.asText().equals(cell);
    }
    return known && TYPES.get(field.get("type").asText()).matcher(cell).matches();
  }

  @Test
  void aBookAndTheSampleSheetsAreAsTheirSchemasSay() throws IOException {
    Path sheet = Path.of("sample-data/game-01-GLA-TAR.csv");
    Path book = dir.resolve("book");
    Run run =
        Run.of("review", sheet, "--out", book, "--compare-rulebook", "nhl", "--simulations", "200");
    assertEquals(Main.DONE, run.code(), run.err());
    List<String> doubts = new ArrayList<>(doubts(sheet, FOLDER.resolve("sheet-play.json"), false));
    try (Stream<Path> schemas = Files.list(FOLDER)) {
      for (Path schema :
          schemas.filter(f -> f.getFileName().toString().startsWith("data-")).toList()) {
        String name = schema.getFileName().toString().replace("data-", "").replace("json", "csv");
        doubts.addAll(doubts(book.resolve("data").resolve(name), schema, true));
      }
    }
    assertEquals(List.of(), doubts);
  }
}
