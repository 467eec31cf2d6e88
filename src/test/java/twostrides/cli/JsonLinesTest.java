package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twostrides.sheet.CsvOut;

/** {@code review --json-lines}: exits and releases as the tables have them, and more keys. */
class JsonLinesTest {

  private static final Path SHEET = Path.of("sample-data/game-01-GLA-TAR.csv");
  private static final Set<String> MORE =
      Set.of("receiver", "received_elapsed_s", "end_x_m", "end_y_m");

  @TempDir static Path dir;

  @BeforeAll
  static void book() {
    Run run =
        Run.of(
            "review",
            SHEET,
            "--tables-only",
            "--json-lines",
            "--simulations",
            "100",
            "--out",
            dir.resolve("book"));
    assertEquals(Main.DONE, run.code(), run.err());
  }

  private static List<CSVRecord> rows(Path csv) throws IOException {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser rows = CSVParser.parse(csv, StandardCharsets.UTF_8, format)) {
      return rows.getRecords();
    }
  }

  private static List<JsonNode> lines(String table) throws IOException {
    List<JsonNode> lines = new ArrayList<>();
    for (String line : Files.readAllLines(dir.resolve("book/data").resolve(table + ".jsonl"))) {
      lines.add(new ObjectMapper().readTree(line));
    }
    return lines;
  }

  private static Map<String, String> types(String table) throws IOException {
    Path schema = Path.of("docs/schema/lines-" + table + ".json");
    Map<String, String> types = new HashMap<>();
    new ObjectMapper()
        .readTree(schema.toFile())
        .get("fields")
        .forEach(f -> types.put(f.get("name").asText(), f.get("type").asText()));
    return types;
  }

  @ParameterizedTest
  @ValueSource(strings = {"exits", "releases"})
  void everyValueOfTheTableAndItsTypeIsThere(String table) throws IOException {
    List<CSVRecord> rows = rows(dir.resolve("book/data").resolve(table + ".csv"));
    List<JsonNode> lines = lines(table);
    Map<String, String> types = types(table);
    assertEquals(rows.size(), lines.size());
    Set<String> more = new TreeSet<>();
    for (int i = 0; i < rows.size(); i++) {
      JsonNode line = lines.get(i);
      Map<String, String> cells = rows.get(i).toMap();
      cells.forEach(
          (column, cell) ->
              assertEquals(cell, line.has(column) ? cell(line.get(column), cell) : "", column));
      line.properties()
          .forEach(
              p -> {
                assertEquals(type(p.getValue()), kind(types.get(p.getKey())), p.getKey());
                if (!cells.containsKey(p.getKey())) {
                  more.add(p.getKey());
                }
              });
    }
    assertTrue(MORE.containsAll(more), more.toString());
    assertTrue(more.containsAll(Set.of("receiver", "end_x_m", "end_y_m")), more.toString());
    assertEquals(table.equals("exits"), more.contains("received_elapsed_s"));
  }

  /** A value as a cell; 3.2 and 3.20 are one number. */
  private static String cell(JsonNode value, String cell) {
    return value.isNumber() && new BigDecimal(cell).compareTo(value.decimalValue()) == 0
        ? cell
        : CsvOut.guarded(value.asText());
  }

  private static String type(JsonNode value) {
    return value.isNumber() ? "number" : value.isBoolean() ? "boolean" : "string";
  }

  private static String kind(String type) {
    return switch (type) {
      case "integer" -> "number";
      case "date" -> "string";
      default -> type;
    };
  }

  /** Receiver, time and place of the passes out are those of the sheet. */
  @Test
  void aPassKeepsItsReceiverAndItsEnd() throws IOException {
    List<CSVRecord> sheet = rows(SHEET);
    int passes = 0;
    for (JsonNode exit : lines("exits")) {
      CSVRecord row = sheet.get(exit.get("line").asInt() - 2);
      if (!row.get("action").equals("pass")) {
        assertFalse(exit.has("end_x_m"), exit.toString());
        continue;
      }
      passes++;
      assertEquals(row.get("other_player"), exit.path("receiver").asText());
      assertEquals(Double.parseDouble(row.get("to_x_m")), exit.get("end_x_m").asDouble(), 1e-9);
      assertEquals(Double.parseDouble(row.get("to_y_m")), exit.get("end_y_m").asDouble(), 1e-9);
      if (exit.has("received_elapsed_s")) {
        CSVRecord next = sheet.get(exit.get("line").asInt() - 1);
        assertEquals(exit.get("receiver").asText(), next.get("player"));
        String[] clock = next.get("clock").split(":", -1);
        assertEquals(
            1200 - 60 * Integer.parseInt(clock[0]) - Integer.parseInt(clock[1]),
            exit.get("received_elapsed_s").asDouble());
      }
    }
    assertTrue(passes > 50, passes + " passes");
  }
}
