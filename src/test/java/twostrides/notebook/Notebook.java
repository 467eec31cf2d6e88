package twostrides.notebook;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A notebook file: JSON in, JSON out, as notebook programs write it (keys in order of the alphabet,
 * one blank for each level, a line feed at the end), so that opening and saving changes nothing.
 */
final class Notebook {

  private final Map<String, Object> root;

  private Notebook(Map<String, Object> root) {
    this.root = root;
  }

  /**
   * Reads a notebook.
   *
   * @param file ending in .ipynb
   */
  static Notebook read(Path file) throws IOException {
    try (JsonParser json = new JsonFactory().createParser(Files.readString(file))) {
      json.nextToken();
      return new Notebook(object(value(json)));
    }
  }

  /** The value of a key at the top: nbformat, nbformat_minor, metadata. */
  Object top(String key) {
    return root.get(key);
  }

  /** The cells in order. */
  List<Cell> cells() {
    return list(root.get("cells")).stream().map(c -> new Cell(object(c))).toList();
  }

  /** The cells that hold code, in order. */
  List<Cell> code() {
    return cells().stream().filter(c -> c.kind().equals("code")).toList();
  }

  /** The whole file as text. */
  String text() throws IOException {
    StringWriter out = new StringWriter();
    DefaultPrettyPrinter form =
        new DefaultPrettyPrinter(
            Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                .withObjectEmptySeparator("")
                .withArrayEmptySeparator(""));
    DefaultIndenter oneBlank = new DefaultIndenter(" ", "\n");
    form.indentObjectsWith(oneBlank);
    form.indentArraysWith(oneBlank);
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.setPrettyPrinter(form);
      put(json, root);
    }
    return out + "\n";
  }

  /** A cell; what is set here is set in the notebook. */
  record Cell(Map<String, Object> json) {

    /** Which kind: code or markdown. */
    String kind() {
      return String.valueOf(json.get("cell_type"));
    }

    /** Its id, unique in the notebook. */
    String id() {
      return String.valueOf(json.get("id"));
    }

    /** What it says. */
    String source() {
      return joined(json.get("source"));
    }

    /** What it printed, as stored. */
    String printed() {
      StringBuilder all = new StringBuilder();
      list(json.get("outputs")).forEach(o -> all.append(joined(object(o).get("text"))));
      return all.toString();
    }

    /**
     * Stores a run.
     *
     * @param number which run of the notebook it is, from 1
     * @param printed what it printed
     */
    void store(int number, String printed) {
      json.put("execution_count", number);
      List<Object> outputs = new ArrayList<>();
      if (!printed.isEmpty()) {
        Map<String, Object> stream = new TreeMap<>();
        stream.put("name", "stdout");
        stream.put("output_type", "stream");
        stream.put(
            "text", Stream.of(printed.split("(?<=\n)", -1)).filter(l -> !l.isEmpty()).toList());
        outputs.add(stream);
      }
      json.put("outputs", outputs);
    }
  }

  private static String joined(Object text) {
    StringBuilder all = new StringBuilder();
    list(text).forEach(all::append);
    return all.toString();
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> object(Object value) {
    return (Map<String, Object>) value;
  }

  @SuppressWarnings("unchecked")
  private static List<Object> list(Object value) {
    return (List<Object>) value;
  }

  private static Object value(JsonParser json) throws IOException {
    JsonToken token = json.currentToken();
    if (token == JsonToken.START_OBJECT) {
      Map<String, Object> object = new TreeMap<>();
      while (json.nextToken() != JsonToken.END_OBJECT) {
        String key = json.currentName();
        json.nextToken();
        object.put(key, value(json));
      }
      return object;
    }
    if (token == JsonToken.START_ARRAY) {
      List<Object> array = new ArrayList<>();
      while (json.nextToken() != JsonToken.END_ARRAY) {
        array.add(value(json));
      }
      return array;
    }
    return switch (token) {
      case VALUE_STRING -> json.getText();
      case VALUE_NUMBER_INT -> json.getIntValue();
      case VALUE_TRUE, VALUE_FALSE -> json.getBooleanValue();
      case VALUE_NULL -> null;
      default -> throw new IOException("no notebook: " + token + " at " + json.currentLocation());
    };
  }

  private static void put(JsonGenerator json, Object value) throws IOException {
    if (value instanceof Map<?, ?> object) {
      json.writeStartObject();
      for (Map.Entry<?, ?> e : object.entrySet()) {
        json.writeFieldName(String.valueOf(e.getKey()));
        put(json, e.getValue());
      }
      json.writeEndObject();
    } else if (value instanceof List<?> array) {
      json.writeStartArray();
      for (Object item : array) {
        put(json, item);
      }
      json.writeEndArray();
    } else if (value instanceof Integer n) {
      json.writeNumber(n);
    } else if (value instanceof Boolean b) {
      json.writeBoolean(b);
    } else if (value instanceof String s) {
      json.writeString(s);
    } else {
      json.writeNull();
    }
  }
}
