package twostrides.book;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A book's data folder and run.json, read as an analyst would: text, by docs/tables.md. */
final class BookData {

  /**
   * A row of a table.
   *
   * @param columns where each column of the table stands
   * @param cells its cells, without the apostrophe that keeps a spreadsheet from running text
   */
  record Row(Map<String, Integer> columns, List<String> cells) {

    private static final Pattern RUNS = Pattern.compile("^'(?=[=+@\\t\\r-])");
    private static final Pattern WINDOW = Pattern.compile("(.+_)\\d+s");

    /**
     * Where each column stands. Columns named after a window are known as at 20 and 30 s too, in
     * the order of the run's own.
     */
    private static Map<String, Integer> columns(List<String> header) {
      Map<String, Integer> columns = new HashMap<>();
      Map<String, Integer> windows = new HashMap<>();
      for (int i = 0; i < header.size(); i++) {
        columns.put(header.get(i), i);
        Matcher m = WINDOW.matcher(header.get(i));
        if (m.matches()) {
          windows.putIfAbsent(m.group(1) + "20s", i);
          windows.put(m.group(1) + "30s", i);
        }
      }
      windows.forEach(columns::putIfAbsent);
      return columns;
    }

    private static Row of(Map<String, Integer> columns, CSVRecord record) {
      // One object for equal words, which are compared millions of times.
      return new Row(
          columns,
          record.stream()
              .map(c -> (c.startsWith("'") ? RUNS.matcher(c).replaceFirst("") : c).intern())
              .toList());
    }

    String get(String column) {
      Integer at = columns.get(column);
      if (at == null) {
        throw new IllegalArgumentException("no column " + column + " among " + columns.keySet());
      }
      return cells.get(at);
    }

    boolean has(String column) {
      return !get(column).isEmpty();
    }

    boolean is(String column, String word) {
      return get(column).equals(word);
    }

    double number(String column) {
      return Double.parseDouble(get(column));
    }

    int count(String column) {
      return Integer.parseInt(get(column));
    }

    boolean icing() {
      return get("restart_cause").startsWith("icing");
    }
  }

  /** A player of a team. */
  record Player(String team, String name) {}

  final List<Row> exits;
  final List<Row> releases;
  final List<Row> restarts;
  final List<Row> kills;
  final List<Row> flags;
  final List<Row> rulings;
  final List<Row> manpower;
  final List<Row> audits;
  final Map<String, String> run;
  final Set<String> games = new TreeSet<>();
  final Map<String, Set<String>> gamesOfTeam = new TreeMap<>();

  BookData(Path book) throws IOException {
    exits = read(book, "exits");
    releases = read(book, "releases");
    List<Row> draws = read(book, "restarts");
    restarts = rows(draws, r -> r.is("own_last", "true"));
    audits = rows(draws, r -> r.has("audit"));
    kills = read(book, "kills");
    flags = read(book, "flags");
    rulings = read(book, "rulings");
    manpower = read(book, "manpower");
    run = json(book.resolve("run.json"));
    for (List<Row> table : List.of(exits, releases)) {
      for (Row r : table) {
        games.add(r.get("game"));
        for (String side : List.of("team", "opponent")) {
          if (r.has(side)) {
            gamesOfTeam.computeIfAbsent(r.get(side), t -> new TreeSet<>()).add(r.get("game"));
          }
        }
      }
    }
  }

  private static List<Row> read(Path book, String table) throws IOException {
    try (CSVParser rows =
        CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .get()
            .parse(
                Files.newBufferedReader(
                    book.resolve("data").resolve(table + ".csv"), StandardCharsets.UTF_8))) {
      Map<String, Integer> columns = Row.columns(rows.getHeaderNames());
      return rows.getRecords().stream().map(r -> Row.of(columns, r)).toList();
    }
  }

  /** Values by name; those of the book's settings with the group's name before a dot. */
  private static Map<String, String> json(Path file) throws IOException {
    Map<String, String> values = new LinkedHashMap<>();
    try (JsonParser p = new JsonFactory().createParser(file.toFile())) {
      while (p.nextToken() != null) {
        if (p.currentToken().isScalarValue() && p.currentName() != null) {
          String group = p.getParsingContext().getParent().getCurrentName();
          values.put(
              (group != null && group.equals("rulebook_settings") ? "book." : "") + p.currentName(),
              p.currentToken() == JsonToken.VALUE_STRING ? p.getText() : p.getValueAsString());
        }
      }
    }
    return values;
  }

  static List<Row> rows(List<Row> rows, Predicate<Row> what) {
    return rows.stream().filter(what).toList();
  }

  static int sum(List<Row> rows, String column) {
    return rows.stream().filter(r -> r.has(column)).mapToInt(r -> r.count(column)).sum();
  }

  static double total(List<Row> rows, String column) {
    return rows.stream().filter(r -> r.has(column)).mapToDouble(r -> r.number(column)).sum();
  }

  /** How many rows satisfy something. */
  static Formulas.Share share(List<Row> rows, Predicate<Row> what) {
    return new Formulas.Share(rows(rows, what).size(), rows.size());
  }

  /** Own-zone restarts of the attempts whose ending the sheet tells. */
  static Formulas.Share restarted(List<Row> exits) {
    return share(
        rows(exits, r -> r.has("own_zone_restart")), r -> r.is("own_zone_restart", "true"));
  }

  /** Icings of the attempts whose ending the sheet tells. */
  static Formulas.Share icedAfter(List<Row> exits) {
    return share(
        rows(exits, r -> r.has("own_zone_restart")),
        r -> r.is("own_zone_restart", "true") && r.icing());
  }

  /** Attempts that a face-off after a penalty followed, and those with one for another reason. */
  static List<Want> otherFaceOffs(List<Row> exits) {
    List<Row> others = rows(exits, r -> r.is("own_zone_restart", "true") && !r.icing());
    int penalties = rows(others, r -> r.is("restart_cause", "penalty")).size();
    return List.of(Want.count(penalties), Want.count(others.size() - penalties));
  }

  /** The same share with what its games say of how its cases hang together. */
  static Formulas.Share byGame(List<Row> rows, Function<List<Row>, Formulas.Share> share) {
    Map<String, List<Row>> games = new TreeMap<>();
    for (Row r : rows) {
      games.computeIfAbsent(r.get("team") + "\n" + r.get("game"), g -> new ArrayList<>()).add(r);
    }
    return Formulas.Share.over(games.values().stream().map(share).toList());
  }

  static Formulas.Share iced(List<Row> rows) {
    return share(rows, Row::icing);
  }

  static Predicate<Row> team(Optional<String> team) {
    return r -> team.isEmpty() || r.is("team", team.get());
  }

  static Predicate<Row> of(Player p) {
    return r -> r.is("team", p.team()) && r.is("player", p.name());
  }

  /** Values of a column in their own order, first ones first. */
  static List<String> values(List<Row> rows, String column) {
    Set<String> values = new LinkedHashSet<>();
    rows.forEach(r -> values.add(r.get(column)));
    return List.copyOf(values);
  }

  /** The team that plays every game, when just one does. */
  Optional<String> ours() {
    List<String> always =
        gamesOfTeam.entrySet().stream()
            .filter(e -> e.getValue().size() == games.size())
            .map(Map.Entry::getKey)
            .toList();
    return always.size() == 1 ? Optional.of(always.get(0)) : Optional.empty();
  }

  /** Ours first, then by attempts and name. */
  List<String> teams() {
    return gamesOfTeam.keySet().stream()
        .sorted(
            Comparator.comparing((String t) -> !Optional.of(t).equals(ours()))
                .thenComparing(t -> -rows(exits, team(Optional.of(t))).size())
                .thenComparing(t -> t))
        .toList();
  }

  /** By attempts, team and name. */
  List<Player> players() {
    Map<Player, Integer> attempts = new LinkedHashMap<>();
    for (Row r : rows(exits, r -> r.has("player"))) {
      attempts.merge(new Player(r.get("team"), r.get("player")), 1, Integer::sum);
    }
    for (Row r : rows(releases, r -> r.has("player"))) {
      attempts.putIfAbsent(new Player(r.get("team"), r.get("player")), 0);
    }
    List<Player> players = new ArrayList<>(attempts.keySet());
    players.sort(
        Comparator.comparing((Player p) -> -attempts.get(p))
            .thenComparing(Player::team)
            .thenComparing(Player::name));
    return players;
  }

  private AdjustedFigures iced;

  /** How often players' releases short of center were iced, all ways together. */
  AdjustedFigures icedRates() {
    if (iced == null) {
      iced = new AdjustedFigures(players().stream().map(p -> iced(rows(releases, of(p)))).toList());
    }
    return iced;
  }

  double window() {
    return Double.parseDouble(run.get("window_s"));
  }

  /** The window in words: "20 s". */
  String shortly() {
    return Math.round(window()) + " s";
  }

  /** The longer window in words: 10 s more. */
  String longer() {
    return Math.round(window() + 10) + " s";
  }

  /** Seconds of a period; all sheets of the runs here have the book's. */
  double period() {
    return 60 * Double.parseDouble(run.get("book.period-minutes"));
  }
}
