package twostrides.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tomlj.TomlArray;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/** A TOML table of a map that knows where each of its keys stands and builds its own errors. */
final class MapTable {
  private final String file;
  private final String path;
  private final TomlTable table;

  MapTable(String file, String path, TomlTable table) {
    this.file = file;
    this.path = path;
    this.table = table;
  }

  /** The keys in the order of their places in the file. */
  List<String> keys() {
    List<String> keys = new ArrayList<>(table.keySet());
    keys.sort(
        Comparator.comparingLong((String k) -> at(k).line())
            .thenComparingInt(k -> at(k).character()));
    return List.copyOf(keys);
  }

  boolean has(String key) {
    return table.contains(List.of(key));
  }

  /** Where a key stands. */
  MapPlace at(String key) {
    TomlPosition position = table.inputPositionOf(List.of(key));
    return place(position, path.isEmpty() ? key : path + "." + key);
  }

  private MapPlace place(TomlPosition position, String key) {
    return new MapPlace(file, position.line(), position.column(), key);
  }

  /**
   * Refuses keys that mean nothing here.
   *
   * @param known the keys that do
   * @param noun what they are, "a key of [file]"
   */
  void allowOnly(Collection<String> known, String noun) throws SheetException {
    for (String key : keys()) {
      if (!known.contains(key)) {
        throw at(key)
            .error(
                "the unknown name \"" + key + "\"",
                noun + ": " + Wording.nearestFirst(key, known),
                "Correct the name, or take it out.");
      }
    }
  }

  private SheetException wrongKind(String key, String expected) {
    return at(key).error(kind(table.get(List.of(key))), expected, "Correct the map.");
  }

  private static String kind(Object value) {
    if (value instanceof String text) {
      return "the words \"" + text + "\"";
    }
    if (value instanceof TomlTable) {
      return "a table";
    }
    if (value instanceof TomlArray) {
      return "a list";
    }
    return "the value " + value + " without quotes";
  }

  Optional<String> text(String key) throws SheetException {
    Object value = table.get(List.of(key));
    if (value == null) {
      return Optional.empty();
    }
    if (value instanceof String text) {
      return Optional.of(text);
    }
    throw wrongKind(key, SettingSpec.Kind.TEXT.expects());
  }

  /** Words, or a whole number taken as words. */
  Optional<String> words(String key) throws SheetException {
    if (table.get(List.of(key)) instanceof Long number) {
      return Optional.of(number.toString());
    }
    return text(key).map(String::strip);
  }

  /** One or several words. */
  List<String> wordList(String key) throws SheetException {
    if (!(table.get(List.of(key)) instanceof TomlArray array)) {
      return words(key).map(List::of).orElse(List.of());
    }
    List<String> words = new ArrayList<>();
    for (Object item : array.toList()) {
      if (!(item instanceof String) && !(item instanceof Long)) {
        throw at(key).error("a list with " + kind(item), "words in quotes", "Correct the map.");
      }
      words.add(item.toString().strip());
    }
    if (words.isEmpty()) {
      throw at(key).error("an empty list", "at least one word", "Correct the map.");
    }
    return words;
  }

  OptionalDouble number(String key) throws SheetException {
    Object value = table.get(List.of(key));
    if (value == null) {
      return OptionalDouble.empty();
    }
    if (value instanceof Long whole) {
      return OptionalDouble.of(whole.doubleValue());
    }
    if (value instanceof Double real && Double.isFinite(real)) {
      return OptionalDouble.of(real);
    }
    throw wrongKind(key, SettingSpec.Kind.NUMBER.expects());
  }

  Optional<List<Integer>> wholeNumbers(String key) throws SheetException {
    Object value = table.get(List.of(key));
    if (value == null) {
      return Optional.empty();
    }
    List<Integer> numbers = new ArrayList<>();
    if (value instanceof TomlArray array) {
      for (Object item : array.toList()) {
        if (item instanceof Long whole && whole == whole.intValue()) {
          numbers.add(whole.intValue());
        } else {
          throw at(key)
              .error(
                  "a list with " + kind(item),
                  SettingSpec.Kind.WHOLE_NUMBERS.expects(),
                  "Correct the map.");
        }
      }
      return Optional.of(List.copyOf(numbers));
    }
    throw wrongKind(key, SettingSpec.Kind.WHOLE_NUMBERS.expects());
  }

  Optional<Boolean> flag(String key) throws SheetException {
    Object value = table.get(List.of(key));
    if (value == null) {
      return Optional.empty();
    }
    if (value instanceof Boolean flag) {
      return Optional.of(flag);
    }
    throw wrongKind(key, SettingSpec.Kind.FLAG.expects());
  }

  boolean isTable(String key) {
    return table.get(List.of(key)) instanceof TomlTable;
  }

  boolean isTrue(String key) {
    return Boolean.TRUE.equals(table.get(List.of(key)));
  }

  Optional<MapTable> table(String key) throws SheetException {
    Object value = table.get(List.of(key));
    if (value == null) {
      return Optional.empty();
    }
    if (value instanceof TomlTable inner) {
      return Optional.of(new MapTable(file, path.isEmpty() ? key : path + "." + key, inner));
    }
    throw wrongKind(key, "a table, [" + key + "] or { ... }");
  }

  /** The tables of a list such as {@code [[rules]]}, with their places. */
  List<MapTable> tables(String key) throws SheetException {
    Object value = table.get(List.of(key));
    if (value == null) {
      return List.of();
    }
    List<MapTable> tables = new ArrayList<>();
    if (value instanceof TomlArray array) {
      for (int i = 0; i < array.size(); i++) {
        if (!(array.get(i) instanceof TomlTable inner)) {
          throw wrongKind(key, "one [[" + key + "]] or more");
        }
        tables.add(new MapTable(file, key + " " + (i + 1), inner));
      }
      return tables;
    }
    throw wrongKind(key, "one [[" + key + "]] or more");
  }

  /** Where the n-th table of a list stands, counted from 0. */
  MapPlace at(String key, int index) {
    TomlArray array = (TomlArray) table.get(List.of(key));
    return place(array.inputPositionOf(index), key + " " + (index + 1));
  }
}
