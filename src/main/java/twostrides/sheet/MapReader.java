package twostrides.sheet;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import org.tomlj.TomlTable;
import twostrides.toml.TomlException;
import twostrides.toml.TomlText;

/** Reads a sheet map from TOML and refuses everything in it that means nothing. */
final class MapReader {
  private final MapTable top;
  private final SheetSchema schema;

  private MapReader(MapTable top, SheetSchema schema) {
    this.top = top;
    this.schema = schema;
  }

  static SheetMap read(Path toml, List<SheetSchema> schemas) throws SheetException {
    Path name = toml.getFileName();
    SheetText text = SheetText.read(toml, Optional.of(StandardCharsets.UTF_8));
    return read(text, name == null ? text.file() : name.toString(), schemas);
  }

  /**
   * Reads the text of a map.
   *
   * @param text the text
   * @param name what the map is called
   * @param schemas the kinds of sheet that it may map
   */
  static SheetMap read(SheetText text, String name, List<SheetSchema> schemas)
      throws SheetException {
    MapTable top = new MapTable(text.file(), "", parse(text));
    MapReader reader = new MapReader(top, schema(text.file(), top, schemas));
    reader.checkTables();
    MapColumns columns = new MapColumns(top, reader.schema);
    return new SheetMap(
        reader.schema,
        name,
        reader.fileSettings(),
        columns.sources(),
        columns.words(),
        columns.rules(),
        reader.settings());
  }

  private static TomlTable parse(SheetText text) throws SheetException {
    try {
      return TomlText.parse(Records.composed(text.text()));
    } catch (TomlException e) {
      String message = e.getMessage();
      throw new SheetException(
          text.file(),
          OptionalLong.of(e.line()),
          "character " + e.character(),
          "something that is not TOML (" + message.replaceAll(", expected .*", "") + ")",
          "lines such as key = \"words\", under headings such as [columns]",
          message.startsWith("Invalid escape")
              ? "Put a pattern with backslashes in single quotes, '^(\\d)', or double each"
                  + " backslash."
              : "Correct the line; words stand in quotes, and no key stands twice.");
    }
  }

  private static SheetSchema schema(String file, MapTable top, List<SheetSchema> schemas)
      throws SheetException {
    List<String> names = schemas.stream().map(SheetSchema::name).toList();
    String expected = "one of: " + Wording.list(names);
    Optional<String> name = top.text("sheet");
    if (name.isEmpty()) {
      throw SheetException.ofFile(
          file,
          "no line that says which kind of sheet it maps",
          "sheet = " + expected,
          "Write it as the first line of the map, before any [heading].");
    }
    for (SheetSchema candidate : schemas) {
      if (candidate.name().equals(name.get())) {
        return candidate;
      }
    }
    throw top.at("sheet").error(Wording.quoted(name.get()), expected, "Correct the word.");
  }

  private void checkTables() throws SheetException {
    Set<String> known = new TreeSet<>(SheetSchema.RESERVED);
    schema.settings().forEach(s -> known.add(s.table()));
    top.allowOnly(known, "a heading of a map");
  }

  private FileSettings fileSettings() throws SheetException {
    Optional<MapTable> found = top.table("file");
    if (found.isEmpty()) {
      return FileSettings.PLAIN;
    }
    MapTable file = found.get();
    file.allowOnly(List.of("delimiter", "charset", "decimal", "rows"), "a key of [file]");
    Optional<Character> delimiter = Optional.empty();
    if (file.has("delimiter")) {
      delimiter = Optional.of(oneOf(file, "delimiter", List.of(",", ";", "\t")).charAt(0));
    }
    char decimal = file.has("decimal") ? oneOf(file, "decimal", List.of(".", ",")).charAt(0) : '.';
    return new FileSettings(
        delimiter, charset(file), decimal, file.text("rows").map(String::strip));
  }

  private static Optional<Charset> charset(MapTable file) throws SheetException {
    Optional<String> name = file.text("charset");
    if (name.isEmpty()) {
      return Optional.empty();
    }
    try {
      return name.map(n -> Charset.forName(n.strip()));
    } catch (IllegalArgumentException e) {
      throw file.at("charset")
          .error(
              Wording.quoted(name.get()),
              "the name of a charset, for example \"UTF-8\", \"windows-1252\", \"windows-1250\","
                  + " \"UTF-16LE\"",
              "Correct the name.");
    }
  }

  private static String oneOf(MapTable table, String key, List<String> allowed)
      throws SheetException {
    String word = table.text(key).orElse("");
    if (!allowed.contains(word)) {
      String list = Wording.list(allowed).replace("\t", "\\t");
      String found = word.isEmpty() ? "nothing between the quotes" : Wording.quoted(word);
      throw table.at(key).error(found, "one of: " + list, "Correct the word.");
    }
    return word;
  }

  private Map<String, Setting> settings() throws SheetException {
    Map<String, Setting> settings = new LinkedHashMap<>();
    Set<String> names = new TreeSet<>();
    schema.settings().forEach(s -> names.add(s.table()));
    for (String name : names) {
      Optional<MapTable> table = top.table(name);
      if (table.isPresent()) {
        List<SettingSpec> specs =
            schema.settings().stream().filter(s -> s.table().equals(name)).toList();
        table
            .get()
            .allowOnly(specs.stream().map(SettingSpec::key).toList(), "a key of [" + name + "]");
        for (SettingSpec spec : specs) {
          if (table.get().has(spec.key())) {
            settings.put(spec.fullName(), setting(table.get(), spec));
          }
        }
      }
    }
    return settings;
  }

  private static double number(MapTable table, SettingSpec spec) throws SheetException {
    double value = table.number(spec.key()).orElseThrow();
    if (!(spec.least() <= value && value <= spec.most())) {
      throw table
          .at(spec.key())
          .error(
              Cell.shown(value),
              "a number" + Cell.range(spec.least(), spec.most()) + ": " + spec.meaning(),
              "Correct the number, or take the line out.");
    }
    return value;
  }

  private static List<Integer> wholeNumbers(MapTable table, SettingSpec spec)
      throws SheetException {
    List<Integer> numbers = table.wholeNumbers(spec.key()).orElseThrow();
    for (int n : numbers) {
      if (!(spec.least() <= n && n <= spec.most())) {
        throw table
            .at(spec.key())
            .error(
                Integer.toString(n),
                "whole numbers" + Cell.range(spec.least(), spec.most()) + ": " + spec.meaning(),
                "Correct the list, or take the line out.");
      }
    }
    return numbers;
  }

  private static DateForm dates(MapTable table, String key) throws SheetException {
    String pattern = table.text(key).orElseThrow();
    Optional<DateForm> form = DateForm.of(pattern);
    if (form.isEmpty()) {
      throw table
          .at(key)
          .error(
              Wording.quoted(pattern),
              SettingSpec.Kind.DATE_FORM.expects(),
              "Correct the form: d is the day, M the month (MMM its English name), y the year; H"
                  + " and m are hour and minute.");
    }
    return form.get();
  }

  private static Setting setting(MapTable table, SettingSpec spec) throws SheetException {
    String key = spec.key();
    return switch (spec.kind()) {
      case TEXT -> {
        if (!spec.allowed().isEmpty()) {
          yield new Setting.Text(oneOf(table, key, List.copyOf(new TreeSet<>(spec.allowed()))));
        }
        yield new Setting.Text(table.text(key).orElseThrow());
      }
      case NUMBER -> new Setting.Decimal(number(table, spec));
      case DATE_FORM -> new Setting.Dates(dates(table, key));
      case WHOLE_NUMBERS -> new Setting.WholeNumbers(wholeNumbers(table, spec));
      case FLAG -> new Setting.Flag(table.flag(key).orElseThrow());
    };
  }
}
