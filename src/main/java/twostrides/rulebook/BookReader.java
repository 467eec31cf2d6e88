package twostrides.rulebook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;
import twostrides.toml.TomlException;
import twostrides.toml.TomlText;

/** Reads a book's TOML; every complaint names file, line, key and what is allowed. */
final class BookReader {

  private static final List<String> TOP =
      List.of("id", "name", "starts-from", "edition", "seasons", "season", "settings");
  private static final List<String> PARTS =
      List.of("value", "clause", "source", "grade", "seasons");

  private static final String CORRECT = "Correct the value.";

  private final String file;
  private final boolean ours;

  private BookReader(String file, boolean ours) {
    this.file = file;
    this.ours = ours;
  }

  /**
   * Reads a book.
   *
   * @param file name for messages
   * @param text its TOML
   * @param stem the id where the file gives none
   * @param ours whether it is one of the books of this program, whose settings all carry a grade
   * @throws BookException when it cannot be used
   */
  static BookFile read(String file, String text, String stem, boolean ours) throws BookException {
    try {
      return new BookReader(file, ours).book(TomlText.parse(text), stem);
    } catch (TomlException e) {
      String found = "text that is not TOML (" + e.getMessage() + ")";
      String expected = "lines such as type = \"automatic\"";
      throw new BookException(
          file, OptionalInt.of(e.line()), "", found, expected, "Correct the line.");
    }
  }

  private BookFile book(TomlTable toml, String stem) throws BookException {
    allowOnly(toml, TOP, "");
    Map<SettingKey, List<BookFile.Entry>> entries = new EnumMap<>(SettingKey.class);
    Object settings = toml.get(List.of("settings"));
    if (settings != null && !(settings instanceof TomlTable)) {
      throw wrong(toml, "settings", settings, "a table, [settings]");
    }
    Optional<String> startsFrom = text(toml, "starts-from");
    if (settings instanceof TomlTable table) {
      for (String key : inOrder(table)) {
        SettingKey known = key(table, key);
        entries.put(known, entries(table, key, known));
      }
    }
    if (!ours && startsFrom.isEmpty()) {
      String expected = "the book that this one starts from: " + String.join(", ", Bookshelf.ids());
      String toDo = "Add a line such as starts-from = \"nhl\".";
      throw new BookException(file, OptionalInt.empty(), "starts-from", "nothing", expected, toDo);
    }
    return new BookFile(
        file,
        text(toml, "id").orElse(stem),
        text(toml, "name").orElse(stem),
        text(toml, "edition").orElse("your own book"),
        seasons(toml, "seasons", "seasons"),
        season(toml),
        startsFrom,
        entries);
  }

  private SettingKey key(TomlTable table, String key) throws BookException {
    Optional<SettingKey> known = SettingKey.of(key);
    List<String> all = Arrays.stream(SettingKey.values()).map(SettingKey::word).toList();
    return known.orElseThrow(() -> unknown(table, key, "settings." + key, all));
  }

  private List<BookFile.Entry> entries(TomlTable table, String key, SettingKey known)
      throws BookException {
    Object value = table.get(List.of(key));
    List<BookFile.Entry> out = new ArrayList<>();
    if (value instanceof TomlArray array) {
      if (array.isEmpty()) {
        throw wrong(table, key, value, "at least one { value = ..., seasons = ... }");
      }
      for (int i = 0; i < array.size(); i++) {
        if (!(array.get(i) instanceof TomlTable part)) {
          throw wrong(table, key, array.get(i), "a list of { value = ..., seasons = ... }");
        }
        out.add(entry(known, part, array.inputPositionOf(i).line()));
      }
      return out;
    }
    int line = line(table, key);
    if (value instanceof TomlTable part) {
      out.add(entry(known, part, line));
    } else {
      out.add(new BookFile.Entry(chosen(known, word(table, key, known), line), line));
    }
    return out;
  }

  private Setting chosen(SettingKey key, String value, int line) {
    return new Setting(
        key, value, Seasons.ALL, "", "chosen in " + name() + ", line " + line, Grade.CHOSEN);
  }

  /** The file's name without its place on this machine, which pages do not show. */
  private String name() {
    return file.replaceFirst(".*[/\\\\]", "");
  }

  private BookFile.Entry entry(SettingKey known, TomlTable part, int line) throws BookException {
    allowOnly(part, PARTS, known.word() + ".");
    if (!part.contains(List.of("value"))) {
      String expected = known.word() + " = " + known.allowed();
      String toDo = "Add value = ... to it.";
      throw new BookException(file, OptionalInt.of(line), known.word(), "no value", expected, toDo);
    }
    String value = word(part, "value", known);
    Optional<String> letter = text(part, "grade");
    Optional<Grade> grade = letter.flatMap(Grade::of);
    if (letter.isPresent() && grade.isEmpty()) {
      throw wrong(part, "grade", letter.get(), "P, S, D, M, C, own or ?");
    }
    Setting plain = chosen(known, value, line);
    Seasons seasons = seasons(part, "seasons", known.word() + ".seasons").orElse(Seasons.ALL);
    Setting setting =
        new Setting(
            known,
            value,
            seasons,
            text(part, "clause").orElse(""),
            text(part, "source").orElse(ours ? "" : plain.source()),
            grade.orElse(plain.grade()));
    return new BookFile.Entry(setting, line);
  }

  /** A word or number of a key, checked against what the key allows. */
  private String word(TomlTable table, String at, SettingKey known) throws BookException {
    Object value = table.get(List.of(at));
    String text = String.valueOf(value).strip();
    boolean kind = value instanceof String || value instanceof Long || value instanceof Double;
    if (value instanceof Boolean flag && known.words().contains("yes")) {
      text = flag ? "yes" : "no";
      kind = true;
    }
    if (!kind || !known.allows(text)) {
      String found = kind ? "\"" + text + "\"" : "a table or list";
      String expected = known.allowed() + " (" + known.meaning() + ")";
      throw new BookException(
          file, OptionalInt.of(line(table, at)), known.word(), found, expected, CORRECT);
    }
    return text;
  }

  private Optional<Seasons> seasons(TomlTable table, String key, String path) throws BookException {
    Optional<String> text = text(table, key);
    Optional<Seasons> seasons = text.flatMap(Seasons::of);
    if (text.isPresent() && seasons.isEmpty()) {
      OptionalInt line = OptionalInt.of(line(table, key));
      String found = "\"" + text.get() + "\"";
      throw new BookException(file, line, path, found, Seasons.FORM, "Correct the seasons.");
    }
    return seasons;
  }

  private Optional<BookSeason> season(TomlTable table) throws BookException {
    Optional<String> text = text(table, "season");
    if (text.isPresent() && BookSeason.of(text.get()).isEmpty()) {
      throw wrong(table, "season", text.get(), BookSeason.FORM);
    }
    return text.flatMap(BookSeason::of);
  }

  private Optional<String> text(TomlTable table, String key) throws BookException {
    Object value = table.get(List.of(key));
    if (value == null) {
      return Optional.empty();
    }
    if (value instanceof String text && !text.isBlank()) {
      return Optional.of(text.strip());
    }
    throw wrong(table, key, value, "words in quotes");
  }

  private void allowOnly(TomlTable table, Collection<String> known, String path)
      throws BookException {
    for (String key : inOrder(table)) {
      if (!known.contains(key)) {
        throw unknown(table, key, path + key, known);
      }
    }
  }

  private static List<String> inOrder(TomlTable table) {
    return table.keySet().stream().sorted(Comparator.comparingInt(k -> line(table, k))).toList();
  }

  private BookException unknown(
      TomlTable table, String key, String path, Collection<String> known) {
    OptionalInt line = OptionalInt.of(line(table, key));
    String expected = "one of " + String.join(", ", known);
    String toDo = "Correct the name, or take it out.";
    return new BookException(file, line, path, "an unknown key", expected, toDo);
  }

  private BookException wrong(TomlTable table, String key, Object value, String expected) {
    boolean many = value instanceof TomlTable || value instanceof TomlArray;
    String found = many ? "a table or list" : "\"" + value + "\"";
    OptionalInt line = OptionalInt.of(line(table, key));
    return new BookException(file, line, key, found, expected, CORRECT);
  }

  private static int line(TomlTable table, String key) {
    var position = table.inputPositionOf(List.of(key));
    return position == null ? 1 : position.line();
  }
}
