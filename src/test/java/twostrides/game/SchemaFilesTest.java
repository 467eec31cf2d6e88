package twostrides.game;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import twostrides.exits.Settings;
import twostrides.rulebook.penalty.PenaltyKind;
import twostrides.season.Columns;
import twostrides.season.Schemas;
import twostrides.season.TableSchema;
import twostrides.sheet.ColumnSpec;
import twostrides.sheet.SheetSchema;
import twostrides.tracking.TrackForm;

/**
 * docs/schema holds a Frictionless table schema of each kind of sheet and of each table of a book's
 * data folder, made from what the program itself reads and writes by. {@code mvn test
 * -Dtest=SchemaFilesTest -Dtwostrides.writeGuides=true} writes them anew.
 */
class SchemaFilesTest {

  private static final Path FOLDER = Path.of("docs/schema");

  private static final Pattern WHOLE = Pattern.compile("a whole number from (\\d+) to (\\d+)");

  /** A few words, and nothing else: yes or no; none, light or heavy. */
  private static final Pattern WORDS = Pattern.compile("[a-z_ ]+(, [a-z_ ]+)* or [a-z_]+( play)?");

  /** A link of a Markdown page; a schema keeps its words. */
  private static final Pattern LINK = Pattern.compile("\\[([^]]*)\\]\\([^)]*\\)");

  private static final Map<String, Collection<String>> LISTS =
      Map.of(
          "action", Action.words().keySet(),
          "stoppage", StopReason.words().keySet(),
          "penalty", PenaltyKind.words().keySet(),
          "ended", TagEnd.words().keySet(),
          "outcome", outcomes(),
          "way_out",
              List.of(
                  "carry",
                  "pass",
                  "chip",
                  "long clearance",
                  "missed pass",
                  "moved, means unknown",
                  "kept in"),
          "at_center",
              List.of("gained", "released short", "lost short", "brought back", "stopped"));

  private static Collection<String> outcomes() {
    TreeSet<String> words = new TreeSet<>();
    for (Action a : Action.values()) {
      words.addAll(Outcome.wordsFor(a).keySet());
    }
    return words;
  }

  /** A field: name, type, meaning, whether it is required, least and most, words. */
  private record Field(
      String name,
      String type,
      String meaning,
      boolean required,
      Optional<int[]> range,
      Collection<String> words) {}

  private static Field of(ColumnSpec c) {
    String says = c.expects();
    Matcher whole = WHOLE.matcher(says);
    Collection<String> words = LISTS.getOrDefault(c.name(), List.of());
    Optional<int[]> range = Optional.empty();
    String type = "string";
    if (whole.matches()) {
      type = "integer";
      range =
          Optional.of(
              new int[] {Integer.parseInt(whole.group(1)), Integer.parseInt(whole.group(2))});
    } else if (c.name().matches(".*(_m|_s|_min)")) {
      type = "number";
    } else if (c.name().equals("date")) {
      type = "date";
    } else if (words.isEmpty() && WORDS.matcher(says).matches() && !says.contains("name")) {
      words = List.of(says.split(", | or ", -1));
    }
    return new Field(c.name(), type, says, c.required(), range, words);
  }

  private static Field of(TableSchema.Field f) {
    String type =
        switch (f.type()) {
          case TEXT -> "string";
          case COUNT -> "integer";
          case NUMBER -> "number";
          case FLAG -> "boolean";
        };
    if (f.words().equals("ISO 8601")) {
      return new Field(f.name(), "date", f.meaning(), false, Optional.empty(), List.of());
    }
    List<String> words = new ArrayList<>();
    if (type.equals("string") && !f.words().isEmpty()) {
      String one = f.words().replace("moved, means", "moved; means");
      Stream.of(one.split(", ", -1)).map(w -> w.replace("moved; ", "moved, ")).forEach(words::add);
    }
    String unit = type.equals("number") && !f.words().isEmpty() ? f.words() : "";
    String meaning =
        Stream.of(f.meaning(), unit)
            .filter(s -> !s.isEmpty())
            .reduce((a, b) -> a + "; " + b)
            .orElse("");
    return new Field(f.name(), type, meaning, false, Optional.empty(), words);
  }

  private static String json(String title, List<Field> fields) throws IOException {
    StringWriter text = new StringWriter();
    DefaultIndenter indent = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent);
    try (JsonGenerator json = new JsonFactory().createGenerator(text).setPrettyPrinter(printer)) {
      json.writeStartObject();
      json.writeStringField("$schema", "https://datapackage.org/profiles/2.0/tableschema.json");
      json.writeStringField("title", title);
      json.writeArrayFieldStart("missingValues");
      json.writeString("");
      json.writeEndArray();
      json.writeArrayFieldStart("fields");
      for (Field f : fields) {
        json.writeStartObject();
        json.writeStringField("name", f.name());
        json.writeStringField("type", f.type());
        if (!f.meaning().isEmpty()) {
          json.writeStringField("description", LINK.matcher(f.meaning()).replaceAll("$1"));
        }
        if (f.required() || f.range().isPresent() || !f.words().isEmpty()) {
          json.writeObjectFieldStart("constraints");
          if (f.required()) {
            json.writeBooleanField("required", true);
          }
          if (f.range().isPresent()) {
            json.writeNumberField("minimum", f.range().get()[0]);
            json.writeNumberField("maximum", f.range().get()[1]);
          }
          if (!f.words().isEmpty()) {
            json.writeArrayFieldStart("enum");
            for (String w : f.words()) {
              json.writeString(w);
            }
            json.writeEndArray();
          }
          json.writeEndObject();
        }
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    return text + "\n";
  }

  @Test
  void theFilesAreThoseOfTheProgram() throws IOException {
    Map<String, String> files = new TreeMap<>();
    for (SheetSchema s :
        List.of(
            SheetForms.PLAY,
            SheetForms.TAG,
            TrackForm.TRACKING,
            TrackForm.SYNC,
            TrackForm.PLACES)) {
      files.put(
          "sheet-" + s.name() + ".json",
          json(
              "Two Strides: " + s.name() + " sheet, as docs/sheets.md says it without a map",
              s.columns().stream().map(SchemaFilesTest::of).toList()));
    }
    Columns.Windows windows =
        new Columns.Windows(Settings.DEFAULT.window(), Settings.DEFAULT.longWindow());
    for (TableSchema<?> t : new Schemas(windows, 1).all()) {
      files.put(
          "data-" + t.name() + ".json",
          json(
              "Two Strides: data/" + t.name() + ".csv of a review book, " + t.rows(),
              t.fields().stream().map(SchemaFilesTest::of).toList()));
    }
    for (TableSchema<?> t : new Schemas(windows, 1).lines()) {
      files.put(
          "lines-" + t.name() + ".json",
          json(
              "Two Strides: data/" + t.name() + ".jsonl of a review book, " + t.rows(),
              t.fields().stream().map(SchemaFilesTest::of).toList()));
    }
    if (Boolean.getBoolean("twostrides.writeGuides")) {
      Files.createDirectories(FOLDER);
      for (Map.Entry<String, String> f : files.entrySet()) {
        Files.writeString(FOLDER.resolve(f.getKey()), f.getValue());
      }
    }
    try (Stream<Path> there = Files.list(FOLDER)) {
      assertEquals(
          files.keySet(),
          new TreeSet<>(there.map(f -> f.getFileName().toString()).toList()),
          "write them anew: see this class");
    }
    for (Map.Entry<String, String> f : files.entrySet()) {
      assertEquals(f.getValue(), Files.readString(FOLDER.resolve(f.getKey())), f.getKey());
    }
  }
}
