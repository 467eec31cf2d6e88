package twostrides.sheet;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;

/**
 * Rows of JSON: a list of objects, one object after another (JSON Lines), or one object that holds
 * the list; what stands beside the list is then said of every row. An object inside a row gives
 * columns such as {@code place.x}, a list inside it {@code place.1}, {@code place.2}.
 */
final class JsonRecords {
  private static final JsonFactory FACTORY =
      JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

  private final String file;
  private final List<Row> rows = new ArrayList<>();

  private JsonRecords(String file) {
    this.file = file;
  }

  /** A row: its line, and its cells by the names of their columns. */
  private record Row(long line, Map<String, String> cells) {}

  /** A value: text, a map of values or a list of them; null is empty text. */
  private record Node(long line, Object value) {
    boolean isRows() {
      return value instanceof List<?> list
          && !list.isEmpty()
          && list.stream().allMatch(n -> n instanceof Node o && o.value() instanceof Map);
    }
  }

  /**
   * Reads the rows of a text.
   *
   * @param text the text
   * @param list the list whose objects are the rows, where an object holds several
   * @param lines whether every object of the file is a row, also where there is only one
   * @throws SheetException when it is not JSON, or holds no rows
   */
  static Records read(SheetText text, Optional<String> list, boolean lines) throws SheetException {
    List<Node> top = new ArrayList<>();
    try (JsonParser in = FACTORY.createParser(new StringReader(text.text()))) {
      while (in.nextToken() != null) {
        top.add(node(in));
      }
    } catch (JacksonException e) {
      throw SheetException.atLine(
          text.file(),
          e.getLocation() == null ? 1 : e.getLocation().getLineNr(),
          "something that is not JSON (" + e.getOriginalMessage() + ")",
          "a list of objects, or an object on each line",
          "Save the sheet again; the file may have been cut off.");
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    JsonRecords records = new JsonRecords(text.file());
    records.take(top, list, lines);
    return records.records();
  }

  private static Node node(JsonParser in) throws IOException {
    long line = in.currentTokenLocation().getLineNr();
    if (in.currentToken() == JsonToken.START_OBJECT) {
      Map<String, Node> fields = new LinkedHashMap<>();
      while (in.nextToken() != JsonToken.END_OBJECT) {
        String name = in.currentName();
        in.nextToken();
        fields.put(name, node(in));
      }
      return new Node(line, fields);
    }
    if (in.currentToken() == JsonToken.START_ARRAY) {
      List<Node> items = new ArrayList<>();
      while (in.nextToken() != JsonToken.END_ARRAY) {
        items.add(node(in));
      }
      return new Node(line, items);
    }
    return new Node(line, in.currentToken() == JsonToken.VALUE_NULL ? "" : in.getText());
  }

  private void take(List<Node> top, Optional<String> list, boolean lines) throws SheetException {
    if (top.size() == 1 && top.get(0).isRows()) {
      each(top.get(0), Map.of());
      return;
    }
    boolean objects = top.stream().allMatch(n -> n.value() instanceof Map);
    if (top.isEmpty() || !objects) {
      throw noRows("no list of objects");
    }
    if (top.size() > 1 || lines) {
      top.forEach(n -> row(n, Map.of()));
      return;
    }
    Map<String, Node> lists = new LinkedHashMap<>();
    Map<String, String> beside = new LinkedHashMap<>();
    findLists("", top.get(0), lists, beside);
    list.ifPresent(l -> lists.keySet().retainAll(Set.of(l)));
    if (lists.isEmpty()) {
      throw noRows(
          list.map(l -> "no list of objects called " + Wording.quoted(l))
              .orElse("no list of objects"));
    }
    if (lists.size() > 1) {
      throw SheetException.ofFile(
          file,
          "several lists of objects: " + Wording.list(lists.keySet()),
          "one whose objects are the rows",
          "Name it in a sheet map, under [file]: rows = \""
              + lists.keySet().iterator().next()
              + "\".");
    }
    each(lists.values().iterator().next(), beside);
  }

  private SheetException noRows(String found) {
    return SheetException.ofFile(
        file, found, "a list of objects, one for each row", "Look whether it is the right file.");
  }

  /** Lists of objects by the way to them, and what stands beside them. */
  private static void findLists(
      String way, Node node, Map<String, Node> lists, Map<String, String> beside) {
    if (node.isRows()) {
      lists.put(way, node);
    } else if (node.value() instanceof Map<?, ?> fields) {
      fields.forEach((name, n) -> findLists(below(way, name), (Node) n, lists, beside));
    } else {
      flatten(way, node, beside);
    }
  }

  private static String below(String way, Object name) {
    return way.isEmpty() ? name.toString() : way + "." + name;
  }

  private void each(Node list, Map<String, String> beside) {
    ((List<?>) list.value()).forEach(n -> row((Node) n, beside));
  }

  private void row(Node node, Map<String, String> beside) {
    Map<String, String> cells = new LinkedHashMap<>(beside);
    flatten("", node, cells);
    rows.add(new Row(node.line(), cells));
  }

  private static void flatten(String way, Node node, Map<String, String> cells) {
    if (node.value() instanceof Map<?, ?> fields) {
      fields.forEach((name, n) -> flatten(below(way, name), (Node) n, cells));
    } else if (node.value() instanceof List<?> items) {
      for (int i = 0; i < items.size(); i++) {
        flatten(below(way, i + 1), (Node) items.get(i), cells);
      }
    } else {
      cells.put(way, node.value().toString());
    }
  }

  private Records records() {
    Set<String> names = new LinkedHashSet<>();
    rows.forEach(r -> names.addAll(r.cells().keySet()));
    List<Records.Entry> entries = new ArrayList<>();
    entries.add(entry(1, List.copyOf(names)));
    for (Row row : rows) {
      List<String> cells = names.stream().map(n -> row.cells().getOrDefault(n, "")).toList();
      if (cells.stream().anyMatch(c -> !c.isBlank())) {
        entries.add(entry(row.line(), cells));
      }
    }
    return new Records(file, entries);
  }

  private static Records.Entry entry(long line, List<String> cells) {
    return new Records.Entry(line, CSVFormat.DEFAULT.format(cells.toArray()), cells);
  }
}
