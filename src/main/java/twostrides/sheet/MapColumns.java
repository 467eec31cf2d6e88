package twostrides.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;

/**
 * The part of a map that fills our columns: {@code [columns]}, {@code [values]}, {@code [[rules]]}.
 */
final class MapColumns {
  /** A column of the sheet in braces. */
  private static final Pattern BRACES = Pattern.compile("\\{([^{}]+)\\}");

  /** Numbered columns of one kind; a team's skaters, goalkeepers and bench. Assumed. */
  private static final int MOST_NUMBERED = 50;

  private final MapTable top;
  private final SheetSchema schema;

  MapColumns(MapTable top, SheetSchema schema) {
    this.top = top;
    this.schema = schema;
  }

  /** Where our columns come from: {@code [columns]}. */
  Map<String, Source> sources() throws SheetException {
    Map<String, Source> sources = new LinkedHashMap<>();
    Optional<MapTable> columns = top.table("columns");
    if (columns.isPresent()) {
      columns.get().allowOnly(schema.columnNames(), "a column of a " + schema.name() + " sheet");
      for (String column : columns.get().keys()) {
        sources.put(column, source(columns.get(), column));
      }
    }
    return sources;
  }

  private static Source source(MapTable columns, String column) throws SheetException {
    MapPlace at = columns.at(column);
    if (!columns.isTable(column)) {
      return new Source.Column(header(columns, column), Optional.empty(), Optional.of(at));
    }
    MapTable from = columns.table(column).orElseThrow();
    from.allowOnly(
        List.of("column", "take", "file_name", "constant", "text", "each", "when", "unless"),
        "a key of a column's source");
    long given =
        List.of("column", "file_name", "constant", "text").stream().filter(from::has).count();
    boolean alone =
        (from.has("take") && !from.has("column"))
            || (from.has("each") && !from.has("text"))
            || ((from.has("when") || from.has("unless")) && !from.has("each"));
    if (given != 1 || alone) {
      throw at.error(
          Wording.list(from.keys()),
          "exactly one of \"column\" (with or without \"take\"), \"file_name\", \"constant\" and"
              + " \"text\" (with or without \"each\", and \"when\" and \"unless\" with it)",
          "Keep the one that you mean.");
    }
    if (from.has("constant")) {
      return new Source.Constant(from.words("constant").orElse(""));
    }
    if (from.has("file_name")) {
      boolean whole = from.isTrue("file_name");
      return new Source.FileName(whole ? Optional.empty() : pattern(from, "file_name"), at);
    }
    if (from.has("text")) {
      return from.has("each") ? each(from) : text(from);
    }
    return new Source.Column(header(from, "column"), pattern(from, "take"), Optional.of(at));
  }

  /** The same text for each of several numbered columns; # stands for the number. */
  private static Source each(MapTable from) throws SheetException {
    OptionalDouble most = from.number("each");
    int count = (int) most.orElse(0);
    if (count != most.orElse(0) || count < 1 || count > MOST_NUMBERED) {
      throw from.at("each")
          .error(
              Cell.shown(most.orElse(0)),
              "how many numbered columns there are, 1 to " + MOST_NUMBERED,
              "Correct the number.");
    }
    return new Source.Each(
        count, text(from), conditions(from, "when"), conditions(from, "unless"), from.at("each"));
  }

  /** Text with the sheet's columns in braces. */
  private static Source.Text text(MapTable from) throws SheetException {
    String text = from.text("text").orElse("");
    MapPlace at = from.at("text");
    List<Source.Piece> pieces = new ArrayList<>();
    Matcher m = BRACES.matcher(text);
    int end = 0;
    while (m.find()) {
      Source.Column column =
          new Source.Column(m.group(1).strip(), Optional.empty(), Optional.of(at));
      pieces.add(new Source.Piece(text.substring(end, m.start()), Optional.of(column)));
      end = m.end();
    }
    if (pieces.isEmpty()) {
      throw at.error(
          Wording.quoted(text),
          "text with columns of the sheet in braces, for example \"{Date} {Away} at {Home}\"",
          "Name the columns in braces, or write { constant = \"...\" } for words alone.");
    }
    pieces.add(new Source.Piece(text.substring(end), Optional.empty()));
    return new Source.Text(pieces);
  }

  private static String header(MapTable table, String key) throws SheetException {
    String header = table.text(key).orElse("").strip();
    if (header.isEmpty()) {
      throw table
          .at(key)
          .error(
              "an empty name",
              "the name of a column of the sheet",
              "Name the column, or write { constant = \"\" } to leave ours empty.");
    }
    return header;
  }

  private static SheetException unreadable(MapPlace at, String pattern, String why) {
    return at.error(
        "a pattern that cannot be read, " + Wording.quoted(pattern) + " (" + why + ")",
        "a regular expression",
        "Correct the pattern.");
  }

  private static Optional<Pattern> pattern(MapTable from, String key) throws SheetException {
    Optional<String> text = from.text(key);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Pattern pattern;
    try {
      pattern = Pattern.compile(text.get());
    } catch (PatternSyntaxException e) {
      throw unreadable(from.at(key), text.get(), e.getDescription());
    } catch (StackOverflowError e) {
      throw unreadable(from.at(key), text.get(), "brackets in brackets, too deep");
    }
    if (pattern.matcher("").groupCount() == 0) {
      throw from.at(key)
          .error(
              "a pattern without a group, " + Wording.quoted(text.get()),
              "round brackets around the part to take",
              "Put the part in round brackets, for example '^(\\d) on \\d$'.");
    }
    return Optional.of(pattern);
  }

  /** Our words for the sheet's, by our column: {@code [values]}. */
  Map<String, Map<String, String>> words() throws SheetException {
    Map<String, Map<String, String>> words = new LinkedHashMap<>();
    Optional<MapTable> values = top.table("values");
    if (values.isPresent()) {
      values.get().allowOnly(schema.columnNames(), "a column of a " + schema.name() + " sheet");
      for (String column : values.get().keys()) {
        MapTable table = values.get().table(column).orElseThrow();
        Map<String, String> ours = new LinkedHashMap<>();
        for (String word : table.keys()) {
          ours.put(word.strip(), table.words(word).orElseThrow());
        }
        words.put(column, Map.copyOf(ours));
      }
    }
    return words;
  }

  /** The rules in their order: {@code [[rules]]}. */
  List<Rule> rules() throws SheetException {
    List<Rule> rules = new ArrayList<>();
    for (MapTable table : top.tables("rules")) {
      rules.add(rule(table, top.at("rules", rules.size())));
    }
    return rules;
  }

  private Rule rule(MapTable table, MapPlace at) throws SheetException {
    table.allowOnly(List.of("when", "set", "then", "skip"), "a key of a rule");
    List<Rule.Condition> when = conditions(table, "when");
    Map<String, Source> set = sets(table, "set");
    Map<String, Source> then = sets(table, "then");
    Optional<String> skip = table.text("skip").map(String::strip).filter(s -> !s.isEmpty());
    if (skip.isPresent() != set.isEmpty()) {
      throw at.error(
          skip.isPresent() ? "both set and skip" : "neither cells to set nor a reason to skip",
          "set = { our_column = \"our word\" } or skip = \"reason\"",
          "Keep the one that you mean.");
    }
    if (skip.isPresent() && !then.isEmpty()) {
      throw at.error(
          "both skip and then",
          "then = { our_column = \"our word\" } beside set, for a second event in the same row",
          "Keep the one that you mean.");
    }
    if (!then.isEmpty() && !schema.name().equals("play")) {
      throw at.error(
          "then in a map of a " + schema.name() + " sheet",
          "one event in each row, but for play sheets",
          "Take then out.");
    }
    Optional<Rule> second =
        then.isEmpty()
            ? Optional.empty()
            : Optional.of(new Rule(when, then, Optional.empty(), Optional.empty(), at));
    return new Rule(when, set, skip, second, at);
  }

  private Map<String, Source> sets(MapTable table, String key) throws SheetException {
    Map<String, Source> set = new LinkedHashMap<>();
    Optional<MapTable> cells = table.table(key);
    if (cells.isPresent()) {
      cells.get().allowOnly(schema.columnNames(), "a column of a " + schema.name() + " sheet");
      for (String column : cells.get().keys()) {
        set.put(column, set(cells.get(), column));
      }
    }
    return set;
  }

  private static List<Rule.Condition> conditions(MapTable table, String key) throws SheetException {
    List<Rule.Condition> conditions = new ArrayList<>();
    Optional<MapTable> given = table.table(key);
    if (given.isPresent()) {
      for (String header : given.get().keys()) {
        Set<String> words = Set.copyOf(given.get().wordList(header));
        conditions.add(new Rule.Condition(header.strip(), words, given.get().at(header)));
      }
    }
    return conditions;
  }

  /** What a rule puts into a column: words, or a source as in {@code [columns]}. */
  private static Source set(MapTable cells, String column) throws SheetException {
    return cells.isTable(column)
        ? source(cells, column)
        : new Source.Constant(cells.words(column).orElseThrow());
  }
}
