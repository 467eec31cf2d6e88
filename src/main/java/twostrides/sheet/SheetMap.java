package twostrides.sheet;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Where a provider's sheet keeps our columns, what its words mean, and how it is written. Read from
 * a TOML file; {@code docs/maps/README.md} teaches how to write one.
 *
 * <p>What fills one of our columns, first that applies: a rule that fits the row and sets it; the
 * map's {@code [columns]}; a column of the sheet that carries our own name, unless a rule of the
 * map sets that column.
 */
public final class SheetMap {
  private static final String NONE = "(none)";

  private final SheetSchema schema;
  private final String name;
  private final FileSettings file;
  private final Map<String, Source> columns;
  private final Map<String, Map<String, String>> words;
  private final List<Rule> rules;
  private final Map<String, Setting> settings;

  SheetMap(
      SheetSchema schema,
      String name,
      FileSettings file,
      Map<String, Source> columns,
      Map<String, Map<String, String>> words,
      List<Rule> rules,
      Map<String, Setting> settings) {
    this.schema = schema;
    this.name = name;
    this.file = file;
    this.columns = Map.copyOf(columns);
    this.words = Map.copyOf(words);
    this.rules = List.copyOf(rules);
    this.settings = Map.copyOf(settings);
  }

  /**
   * No map: columns carry their own names, words are ours, UTF-8, decimal point.
   *
   * @param schema what the sheet holds
   */
  public static SheetMap plain(SheetSchema schema) {
    return new SheetMap(schema, NONE, FileSettings.PLAIN, Map.of(), Map.of(), List.of(), Map.of());
  }

  /**
   * Reads a map.
   *
   * @param toml the map, a TOML file in UTF-8
   * @param schemas the kinds of sheet that it may map; its line {@code sheet = "..."} names one
   * @throws SheetException when it cannot be read or holds something that means nothing; the
   *     message names file, line and key, and lists what is known
   */
  public static SheetMap read(Path toml, List<SheetSchema> schemas) throws SheetException {
    return MapReader.read(toml, schemas);
  }

  /** What a sheet of this map holds. */
  public SheetSchema schema() {
    return schema;
  }

  /** File name of the map, or {@code (none)}. */
  public String name() {
    return name;
  }

  /** Whether there is no map. */
  boolean isPlain() {
    return name.equals(NONE);
  }

  /**
   * A setting of kind TEXT, empty when the map does not give it.
   *
   * @param table its TOML table
   * @param key its key
   * @throws IllegalArgumentException when the schema declares no such setting of that kind
   */
  public Optional<String> text(String table, String key) {
    return setting(table, key, SettingSpec.Kind.TEXT, Setting.Text.class).map(Setting.Text::value);
  }

  /**
   * A setting of kind NUMBER, empty when the map does not give it; always finite.
   *
   * @param table its TOML table
   * @param key its key
   * @throws IllegalArgumentException when the schema declares no such setting of that kind
   */
  public OptionalDouble number(String table, String key) {
    return setting(table, key, SettingSpec.Kind.NUMBER, Setting.Decimal.class)
        .map(n -> OptionalDouble.of(n.value()))
        .orElse(OptionalDouble.empty());
  }

  /**
   * A setting of kind DATE_FORM, empty when the map does not give it.
   *
   * @param table its TOML table
   * @param key its key
   * @throws IllegalArgumentException when the schema declares no such setting of that kind
   */
  public Optional<DateForm> dateForm(String table, String key) {
    return setting(table, key, SettingSpec.Kind.DATE_FORM, Setting.Dates.class)
        .map(Setting.Dates::value);
  }

  /**
   * A setting of kind WHOLE_NUMBERS, empty when the map does not give it.
   *
   * @param table its TOML table
   * @param key its key
   * @throws IllegalArgumentException when the schema declares no such setting of that kind
   */
  public Optional<List<Integer>> wholeNumbers(String table, String key) {
    return setting(table, key, SettingSpec.Kind.WHOLE_NUMBERS, Setting.WholeNumbers.class)
        .map(Setting.WholeNumbers::value);
  }

  /**
   * A setting of kind FLAG, empty when the map does not give it.
   *
   * @param table its TOML table
   * @param key its key
   * @throws IllegalArgumentException when the schema declares no such setting of that kind
   */
  public Optional<Boolean> flag(String table, String key) {
    return setting(table, key, SettingSpec.Kind.FLAG, Setting.Flag.class).map(Setting.Flag::value);
  }

  private <S extends Setting> Optional<S> setting(
      String table, String key, SettingSpec.Kind kind, Class<S> type) {
    if (schema.setting(table, key).filter(s -> s.kind() == kind).isEmpty()) {
      throw new IllegalArgumentException(
          schema.name() + " sheets declare no setting " + table + "." + key + " of kind " + kind);
    }
    return Optional.ofNullable(settings.get(table + "." + key)).map(type::cast);
  }

  /**
   * The sheet's columns that neither the map nor our own names use, in the sheet's order.
   *
   * @param headers the sheet's column names
   */
  public List<String> notUsed(List<String> headers) {
    Set<String> used = new LinkedHashSet<>();
    sources(headers).values().forEach(s -> looksAt(s).forEach(h -> used.add(key(h))));
    lookedAt().forEach(h -> used.add(key(h)));
    List.copyOf(used).forEach(h -> used.add(Around.header(h)));
    return headers.stream().filter(h -> !h.isEmpty() && !used.contains(key(h))).toList();
  }

  /** What the rules look at. */
  private List<String> lookedAt() {
    List<String> headers = new ArrayList<>();
    for (Rule r : rules) {
      r.when().forEach(c -> headers.add(c.header()));
      r.set().values().forEach(s -> headers.addAll(looksAt(s)));
      r.second().ifPresent(t -> t.set().values().forEach(s -> headers.addAll(looksAt(s))));
    }
    return headers;
  }

  /** Whether a row takes something from the rows around it. */
  boolean looksAround() {
    return Stream.concat(
            lookedAt().stream(), columns.values().stream().flatMap(s -> looksAt(s).stream()))
        .anyMatch(h -> !Around.header(key(h)).equals(key(h)));
  }

  /** The sheet's columns that a source looks at. */
  private static List<String> looksAt(Source source) {
    if (source instanceof Source.Column c) {
      return List.of(c.header());
    }
    if (source instanceof Source.Text t) {
      return t.pieces().stream()
          .flatMap(p -> p.column().stream())
          .map(Source.Column::header)
          .toList();
    }
    return source instanceof Source.Each e ? e.headers() : List.of();
  }

  FileSettings file() {
    return file;
  }

  List<Rule> rules() {
    return rules;
  }

  /** Our words for the sheet's words in one of our columns. */
  Map<String, String> words(String column) {
    return words.getOrDefault(column, Map.of());
  }

  /**
   * What words of the sheet are read as in one of our columns: words under {@code [values]}, and
   * those of the columns that every rule for our column looks at.
   *
   * @param column our column
   * @return our words by the sheet's
   */
  public Map<String, Set<String>> readAs(String column) {
    Map<String, Set<String>> read = new TreeMap<>();
    words(column).forEach((word, as) -> read.computeIfAbsent(word, w -> new TreeSet<>()).add(as));
    List<Rule> setting =
        rules.stream().filter(r -> r.set().get(column) instanceof Source.Constant).toList();
    for (Rule r : setting) {
      r.when().stream()
          .filter(c -> setting.stream().allMatch(o -> o.looksAt(c.header())))
          .flatMap(c -> c.words().stream())
          .forEach(
              w ->
                  read.computeIfAbsent(w, k -> new TreeSet<>())
                      .add(((Source.Constant) r.set().get(column)).text()));
    }
    return read;
  }

  /** Whether a rule of the map sets this column of ours. */
  boolean isSetByRule(String column) {
    return rules.stream()
        .anyMatch(
            r ->
                r.set().containsKey(column)
                    || r.second().filter(t -> t.set().containsKey(column)).isPresent());
  }

  /** Where each of our columns comes from in a sheet with these headers, in declared order. */
  Map<String, Source> sources(List<String> headers) {
    Set<String> present = new LinkedHashSet<>();
    headers.forEach(h -> present.add(key(h)));
    Map<String, Source> sources = new LinkedHashMap<>();
    for (String column : schema.columnNames()) {
      Source mapped = columns.get(column);
      if (mapped != null) {
        sources.put(column, mapped);
      } else if (present.contains(column)
          && rules.stream().noneMatch(r -> r.set().containsKey(column))) {
        sources.put(column, new Source.Column(column, Optional.empty(), Optional.empty()));
      }
    }
    return Collections.unmodifiableMap(sources);
  }

  /** Headers are compared trimmed and in lower case. */
  static String key(String header) {
    return header.strip().toLowerCase(Locale.ROOT);
  }
}
