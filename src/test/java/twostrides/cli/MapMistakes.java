package twostrides.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Wrong maps made from a right one: each key wrong in each plausible way. */
final class MapMistakes {

  private static final Pattern ACTION = Pattern.compile("action = \"(\\w+)\"");

  private final String right;
  private final Map<String, String> wrong = new LinkedHashMap<>();

  private MapMistakes(String right) {
    this.right = right;
  }

  /**
   * The wrong maps, by what is wrong.
   *
   * @param right a map of play sheets in TOML
   */
  static Map<String, String> of(String right) {
    MapMistakes m = new MapMistakes(right);
    m.file();
    m.clock();
    m.places();
    m.columns();
    m.manpower();
    m.words();
    m.wrong.values().removeIf(right::equals);
    return m.wrong;
  }

  /**
   * The wrong maps of places sheets, by what is wrong.
   *
   * @param right a map of places sheets that names every column
   */
  static Map<String, String> ofPlaces(String right) {
    MapMistakes m = new MapMistakes(right);
    m.clock();
    m.places();
    for (String[] two :
        new String[][] {
          {"x_m", "y_m"},
          {"later_x_m", "later_y_m"},
          {"x_m", "later_x_m"},
          {"team", "carrier"},
          {"let_go_by", "team"},
          {"period", "clock"}
        }) {
      m.exchange(two[0], two[1]);
    }
    m.wrong.put(
        "first and later place exchanged",
        exchanged(exchanged(right, "x_m", "later_x_m"), "y_m", "later_y_m"));
    m.wrong.put(
        "later place read as speed",
        right.replace("later_x_m =", "vx_m_s =").replace("later_y_m =", "vy_m_s ="));
    m.wrong.put(
        "own and opponent exchanged",
        right + "\n[values.team]\nown = \"opponent\"\nopponent = \"own\"\n");
    m.wrong.put("yes read as no", right + "\n[values.carrier]\nyes = \"no\"\n");
    for (String column :
        List.of("game", "period", "clock", "let_go_by", "team", "carrier", "x_m", "later_x_m")) {
      m.without(column);
    }
    m.wrong.values().removeIf(right::equals);
    return m.wrong;
  }

  /**
   * The wrong maps of sync sheets, by what is wrong.
   *
   * @param right a map of sync sheets that names every column; the sheets have columns Frame and
   *     Thousandths besides
   */
  static Map<String, String> ofSync(String right) {
    MapMistakes m = new MapMistakes(right);
    m.clock();
    m.set("video", "step_s", "10");
    m.exchange("period", "clock");
    m.exchange("period", "video_s");
    m.exchange("clock", "video_s");
    for (String column : List.of("Frame", "Thousandths", "Minutes")) {
      m.set("columns", "video_s", '"' + column + '"');
    }
    for (String column : List.of("game", "period", "clock", "video_s")) {
      m.without(column);
    }
    m.wrong.values().removeIf(right::equals);
    return m.wrong;
  }

  private void file() {
    wrong.put("sheet = \"tag\"", right.replace("sheet = \"play\"", "sheet = \"tag\""));
    set("file", "delimiter", "\";\"");
    set("file", "charset", "\"UTF-16\"");
    set("file", "decimal", "\",\"");
    set("date", "form", "\"dd.MM.yyyy\"");
  }

  private void clock() {
    set("clock", "direction", "\"up\"");
    for (String seconds : List.of("600", "900", "1080", "1500", "3600")) {
      set("clock", "period_length_s", seconds);
    }
    set("clock", "step_s", "10");
    set("clock", "step_s", "0.1");
  }

  private void places() {
    boolean feet = right.contains("unit = \"ft\"");
    set("place", "unit", feet ? "\"m\"" : "\"ft\"");
    for (String view : List.of("acting_team", "home_team", "rink_fixed")) {
      set("place", "view", '"' + view + '"');
    }
    for (String periods : List.of("[1, 3]", "[2]", "[2, 3]", "[1, 2, 3]")) {
      wrong.put(
          "rink_fixed, home_attacks_plus_x_in = " + periods,
          with(
              with(right, "place", "view", "\"rink_fixed\""),
              "place",
              "home_attacks_plus_x_in",
              periods));
    }
    for (String x : List.of("0", "30", "95", "100", "42.5")) {
      set("place", "center_x", x);
    }
    for (String y : List.of("0", "13", "37.5", "42.5", "100")) {
      set("place", "center_y", y);
    }
    set("place", "step", "10");
    set("place", "step", "0.01");
    set("place", "y_left", "\"down\"");
    set("rink", "name", right.contains("\"iihf\"") ? "\"nhl\"" : "\"iihf\"");
  }

  private void columns() {
    for (String[] two :
        new String[][] {
          {"x_m", "y_m"},
          {"to_x_m", "to_y_m"},
          {"x_m", "to_x_m"},
          {"player", "other_player"},
          {"player", "team"},
          {"home", "away"},
          {"team", "opponent"},
          {"period", "clock"},
          {"home", "team"}
        }) {
      exchange(two[0], two[1]);
    }
    wrong.put(
        "first and second place exchanged",
        exchanged(exchanged(right, "x_m", "to_x_m"), "y_m", "to_y_m"));
    for (String column :
        List.of("x_m", "y_m", "to_x_m", "period", "clock", "team", "player", "game", "date")) {
      without(column);
    }
    wrong.put("game without its date", right.replaceAll("\\{(Date|game_date)\\} ", ""));
  }

  private void manpower() {
    exchange("skaters_home", "skaters_away");
    exchange("skaters_for", "skaters_against");
    wrong.put(
        "home and away skaters taken as the acting team's and the other's",
        right
            .replace("skaters_home =", "skaters_for =")
            .replace("skaters_away =", "skaters_against ="));
    wrong.put(
        "the acting team's skaters taken as home",
        column("skaters_for").isEmpty()
            ? right
            : column("skaters_home").isPresent()
                ? right
                : right
                    .replaceAll("(?m)^skaters_for =", "skaters_home =")
                    .replaceAll("(?m)^skaters_against =", "skaters_away ="));
    without("skaters_home");
    without("skaters_for");
  }

  private void words() {
    for (String action : actions()) {
      wrong.put("no rule for " + action, withoutRules(action));
      for (String other : List.of("recovery", "release", "pass", "shot", "faceoff")) {
        if (!other.equals(action)) {
          wrong.put(
              action + " read as " + other,
              right.replaceAll(
                  "set = \\{ action = \"" + action + "\"(, outcome = \"\\w+\")?",
                  "set = { action = \"" + other + "\""));
        }
      }
    }
    for (String[] two :
        new String[][] {
          {"complete", "missed"}, {"regained", "lost"}, {"goal", "on_net"}, {"carried", "dumped"}
        }) {
      wrong.put(two[0] + " and " + two[1] + " exchanged", outcomes(two[0], two[1]));
    }
    wrong.put(
        "goals read as shots on net", right.replace("outcome = \"goal\"", "outcome = \"on_net\""));
    wrong.put(
        "shots on net read as goals", right.replace("outcome = \"on_net\"", "outcome = \"goal\""));
    wrong.put(
        "every pass complete",
        right.replace("pass\", outcome = \"missed\"", "pass\", outcome = \"complete\""));
    wrong.put("every pass missed", right.replace("outcome = \"complete\"", "outcome = \"missed\""));
  }

  private List<String> actions() {
    List<String> actions = new ArrayList<>();
    Matcher m = ACTION.matcher(right);
    while (m.find()) {
      if (!actions.contains(m.group(1))) {
        actions.add(m.group(1));
      }
    }
    return actions;
  }

  private String withoutRules(String action) {
    return right.replaceAll(
        "\\[\\[rules]]\nwhen = .*\nset = \\{ action = \"" + action + "\".*\n", "");
  }

  private String outcomes(String one, String other) {
    return right
        .replace("outcome = \"" + one + "\"", "outcome = \"?\"")
        .replace("outcome = \"" + other + "\"", "outcome = \"" + one + "\"")
        .replace("outcome = \"?\"", "outcome = \"" + other + "\"");
  }

  private void set(String table, String key, String value) {
    wrong.put(table + "." + key + " = " + value, with(right, table, key, value));
  }

  /** A map with another line in one of its tables. */
  private static String with(String map, String table, String key, String value) {
    Pattern line = Pattern.compile("(?m)^" + key + " = .*$");
    if (line.matcher(map).find()) {
      return line.matcher(map).replaceFirst(Matcher.quoteReplacement(key + " = " + value));
    }
    String header = "[" + table + "]\n";
    return map.contains(header)
        ? map.replace(header, header + key + " = " + value + "\n")
        : map + "\n" + header + key + " = " + value + "\n";
  }

  private Optional<String> column(String column) {
    return column(right, column);
  }

  /** What fills a column of ours; in a map that maps no columns the column of that name. */
  private static Optional<String> column(String map, String column) {
    Matcher m = Pattern.compile("(?m)^" + column + " = (.*)$").matcher(map);
    return m.find()
        ? Optional.of(m.group(1))
        : map.contains("[columns]") ? Optional.empty() : Optional.of('"' + column + '"');
  }

  private void exchange(String one, String other) {
    wrong.put(one + " and " + other + " exchanged", exchanged(right, one, other));
  }

  private static String exchanged(String map, String one, String other) {
    Optional<String> first = column(map, one);
    Optional<String> second = column(map, other);
    if (first.isEmpty() || second.isEmpty()) {
      return map;
    }
    boolean own = !map.contains("[columns]");
    String table = own ? map + "\n[columns]\n" : map;
    return with(with(table, "columns", one, second.get()), "columns", other, first.get());
  }

  private void without(String column) {
    wrong.put("no " + column, right.replaceAll("(?m)^" + column + " = .*\n", ""));
  }
}
