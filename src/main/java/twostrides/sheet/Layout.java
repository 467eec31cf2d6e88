package twostrides.sheet;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What the columns of one sheet mean: a map, bound to the sheet's headers. */
final class Layout {
  private final SheetMap map;
  private final String file;
  private final String headerLine;
  private final List<String> headers;
  private final Map<String, Integer> positions = new HashMap<>();
  private final Map<String, Integer> rulePositions = new HashMap<>();
  private final Map<String, ColumnSpec> specs = new HashMap<>();
  private final Map<String, Slot> slots = new LinkedHashMap<>();
  private final IdentityHashMap<Rule, Map<String, Slot>> ruled = new IdentityHashMap<>();
  private final boolean takes;

  /**
   * Binds a map to a sheet.
   *
   * @param map the map
   * @param path the sheet
   * @param headers its column names, trimmed, no two alike
   * @param headerLine its header as it stood in the file
   * @param line the header's line
   * @throws SheetException when the sheet lacks a column that is required or that the map names
   */
  Layout(SheetMap map, Path path, List<String> headers, String headerLine, long line)
      throws SheetException {
    this.map = map;
    this.file = SheetText.display(path);
    this.headers = headers;
    this.headerLine = headerLine;
    for (int i = 0; i < headers.size(); i++) {
      if (!headers.get(i).isEmpty()) {
        positions.put(SheetMap.key(headers.get(i)), i);
      }
    }
    map.schema().columns().forEach(c -> specs.put(c.name(), c));
    for (Map.Entry<String, Source> entry : map.sources(headers).entrySet()) {
      slots.put(entry.getKey(), slot(entry.getKey(), entry.getValue(), path));
    }
    for (Rule rule : map.rules()) {
      for (Rule.Condition condition : rule.when()) {
        int position = position(condition.header(), condition.at());
        rulePositions.put(condition.header(), position);
      }
      Map<String, Slot> set = new LinkedHashMap<>();
      for (Map.Entry<String, Source> entry : rule.set().entrySet()) {
        set.put(entry.getKey(), slot(entry.getKey(), entry.getValue(), path));
      }
      ruled.put(rule, set);
      if (rule.second().isPresent()) {
        Map<String, Slot> then = new LinkedHashMap<>();
        for (Map.Entry<String, Source> entry : rule.second().get().set().entrySet()) {
          then.put(entry.getKey(), slot(entry.getKey(), entry.getValue(), path));
        }
        ruled.put(rule.second().get(), then);
      }
    }
    takes =
        Stream.concat(Stream.of(slots), ruled.values().stream())
            .flatMap(s -> s.values().stream())
            .anyMatch(s -> s instanceof Slot.Place p && p.take().isPresent());
    requireColumns(line);
  }

  private void requireColumns(long line) throws SheetException {
    Set<String> present = columnsPresent();
    List<String> required =
        map.schema().columns().stream().filter(ColumnSpec::required).map(ColumnSpec::name).toList();
    for (String column : required) {
      if (!present.contains(column)) {
        boolean emptied = slots.containsKey(column);
        throw SheetException.atLine(
            file,
            line,
            emptied
                ? "that the sheet map " + map.name() + " leaves our column \"" + column + "\" empty"
                : "no column \"" + column + "\" among " + Wording.list(headers),
            "the columns that a "
                + map.schema().name()
                + " sheet cannot do without: "
                + Wording.list(required),
            emptied
                ? "Say in the map where the column comes from."
                : "Add the column, or give a sheet map that says where it comes from: two-strides map "
                    + file
                    + " writes one to start from, and docs/sheets.md lists the columns.");
      }
    }
  }

  private Slot slot(String column, Source source, Path path) throws SheetException {
    Map<String, String> words = map.words(column);
    if (source instanceof Source.Column c) {
      int position =
          c.at().isPresent()
              ? position(c.header(), c.at().get())
              : positions.get(SheetMap.key(c.header()));
      return new Slot.Place(position, header(position), c.take(), words);
    }
    if (source instanceof Source.FileName f) {
      String stem = Sheet.stem(path);
      Optional<String> taken = Source.taken(f.take(), stem);
      if (taken.isEmpty()) {
        throw f.at()
            .error(
                "the file name \"" + stem + "\"",
                "a file name that fits the pattern " + f.take().map(Pattern::pattern).orElse(""),
                "Correct the pattern, or rename the file.");
      }
      return new Slot.Fixed(stem, words.getOrDefault(taken.get(), taken.get()));
    }
    if (source instanceof Source.Text t) {
      return joined(t, h -> h, words);
    }
    if (source instanceof Source.Each e) {
      List<Slot.Item> items = new ArrayList<>();
      for (int n = 1; n <= e.count(); n++) {
        int number = n;
        UnaryOperator<String> name = h -> Source.Each.at(h, number);
        items.add(
            new Slot.Item(
                positions(e.when(), name),
                positions(e.unless(), name),
                joined(e.text(), name, Map.of())));
      }
      return new Slot.Numbered(items, words);
    }
    String text = ((Source.Constant) source).text();
    return new Slot.Fixed(text, text);
  }

  private Slot.Joined joined(
      Source.Text text, UnaryOperator<String> name, Map<String, String> words)
      throws SheetException {
    List<Slot.Piece> pieces = new ArrayList<>();
    for (Source.Piece p : text.pieces()) {
      OptionalInt at = OptionalInt.empty();
      if (p.column().isPresent()) {
        Source.Column c = p.column().get();
        at = OptionalInt.of(position(name.apply(c.header()), c.at().orElseThrow()));
      }
      pieces.add(new Slot.Piece(p.text(), at));
    }
    return new Slot.Joined(pieces, words);
  }

  private Map<Integer, Set<String>> positions(
      List<Rule.Condition> conditions, UnaryOperator<String> name) throws SheetException {
    Map<Integer, Set<String>> positioned = new HashMap<>();
    for (Rule.Condition c : conditions) {
      positioned.put(position(name.apply(c.header()), c.at()), c.words());
    }
    return positioned;
  }

  /** The sheet's name without its folders: this message also stands in the book. */
  private String name() {
    return file.substring(file.lastIndexOf('/') + 1);
  }

  private int position(String header, MapPlace at) throws SheetException {
    String key = SheetMap.key(header);
    Integer position = positions.get(key);
    if (position == null && positions.containsKey(Around.header(key))) {
      position = Around.rows(key) * headers.size() + positions.get(Around.header(key));
    }
    if (position == null) {
      List<String> named = headers.stream().filter(h -> !h.isEmpty()).toList();
      throw at.error(
          "a column \"" + header + "\", which the sheet " + name() + " does not have",
          "a column of the sheet: " + Wording.nearestFirst(Around.header(header), named),
          "Correct the map, or use it only for sheets that have this column.");
    }
    return position;
  }

  /** Our columns that this sheet can fill, in declared order. */
  Set<String> columnsPresent() {
    Set<String> present = new LinkedHashSet<>();
    for (String column : map.schema().columnNames()) {
      Slot slot = slots.get(column);
      boolean filled =
          slot instanceof Slot.Place
              || slot instanceof Slot.Joined
              || slot instanceof Slot.Numbered
              || (slot instanceof Slot.Fixed f && !f.text().isEmpty());
      if (filled || map.isSetByRule(column)) {
        present.add(column);
      }
    }
    return present;
  }

  String file() {
    return file;
  }

  String headerLine() {
    return headerLine;
  }

  /** The file name of the map; empty without one. */
  Optional<String> mapName() {
    return map.isPlain() ? Optional.empty() : Optional.of(map.name());
  }

  char decimalMark() {
    return map.file().decimalMark();
  }

  /** The header of a cell, also of one in a row around. */
  private String header(int position) {
    return Around.name(headers.get(position % headers.size()), position / headers.size());
  }

  /**
   * A row, with the first rule of the map that fits its cells.
   *
   * @param line its line
   * @param raw as it stands in the file
   * @param cells its cells
   * @param around the same with those of the rows around it, where the map looks at them
   */
  SheetRow row(long line, String raw, List<String> cells, List<String> around) {
    if (cells.size() != headers.size()) {
      return new SheetRow(this, line, raw, cells, cells, Optional.empty());
    }
    Optional<Rule> rule =
        map.rules().stream()
            .filter(
                r -> r.when().stream().allMatch(c -> c.words().contains(under(c.header(), around))))
            .findFirst();
    return new SheetRow(this, line, raw, cells, around, rule);
  }

  private String under(String header, List<String> cells) {
    return cells.get(rulePositions.get(header)).strip();
  }

  /** The sheet's own spelling of a header that a rule names. */
  String spelling(String header) {
    return header(rulePositions.get(header));
  }

  /** What stands under a header that a rule names, trimmed. */
  String under(String header, SheetRow row) {
    return under(header, row.around());
  }

  /** How many cells a row of this sheet has. */
  int width() {
    return headers.size();
  }

  List<Rule> rules() {
    return map.rules();
  }

  /** Where each of our columns is found, those that the sheet or the map can fill. */
  Map<String, Slot> slots() {
    return Collections.unmodifiableMap(slots);
  }

  /** Whether the map takes a part of some cell. */
  boolean takes() {
    return takes;
  }

  /** The same for a row: what its rule sets goes before. */
  Map<String, Slot> slots(SheetRow row) {
    Map<String, Slot> all = new LinkedHashMap<>(slots);
    row.rule().ifPresent(r -> all.putAll(ruled.get(r)));
    return all;
  }

  /** The cell of one of our columns in a row of this sheet. */
  Optional<Cell> cell(SheetRow row, String column) {
    ColumnSpec spec = specs.get(column);
    if (spec == null) {
      throw new IllegalArgumentException(
          "a "
              + map.schema().name()
              + " sheet declares no column \""
              + column
              + "\", only "
              + Wording.nearestFirst(column, map.schema().columnNames()));
    }
    Slot slot = row.rule().map(r -> ruled.get(r).get(column)).orElse(slots.get(column));
    if (slot instanceof Slot.Place p && p.position() < row.around().size()) {
      String value = row.around().get(p.position()).strip();
      String text = Source.taken(p.take(), value).map(t -> p.words().getOrDefault(t, t)).orElse("");
      return text.isEmpty()
          ? Optional.empty()
          : Optional.of(new Cell(row, spec, new Cell.Origin(p.header(), false), value, text));
    }
    if (slot instanceof Slot.Joined || slot instanceof Slot.Numbered) {
      String text =
          slot instanceof Slot.Joined j
              ? j.of(row.around())
              : ((Slot.Numbered) slot).of(row.around(), decimalMark());
      return text.isEmpty()
          ? Optional.empty()
          : Optional.of(new Cell(row, spec, new Cell.Origin(column, true), text, text));
    }
    if (slot instanceof Slot.Fixed f && !f.text().isEmpty()) {
      return Optional.of(new Cell(row, spec, new Cell.Origin(column, true), f.value(), f.text()));
    }
    return Optional.empty();
  }
}
