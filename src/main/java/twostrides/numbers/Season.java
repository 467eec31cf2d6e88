package twostrides.numbers;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import twostrides.exits.Columns;
import twostrides.exits.ExitTables;
import twostrides.exits.WayOut;
import twostrides.review.FaceOffAfter;
import twostrides.review.TableRows;
import twostrides.stats.Clustered;
import twostrides.stats.Count;

/** The rows of a season's tables, with the questions that several pages ask of them. */
final class Season {

  final List<TableRows> exits;
  final List<TableRows> releases;
  final List<TableRows> restarts;
  final List<TableRows> kills;
  final List<TableRows> flags;

  Season(ExitTables tables) {
    exits = TableRows.of(tables.exits()).toList();
    releases = TableRows.of(tables.releases()).toList();
    restarts =
        TableRows.of(tables.restarts())
            .filter(r -> r.flag(Columns.OWN_LAST).orElse(false))
            .toList();
    kills = TableRows.of(tables.kills()).toList();
    flags = TableRows.of(tables.flags()).toList();
  }

  static boolean is(TableRows r, String column, String word) {
    return r.words(column).equals(word);
  }

  static Predicate<TableRows> team(Optional<String> team) {
    return r -> team.isEmpty() || is(r, Columns.TEAM, team.get());
  }

  static boolean shorthanded(TableRows r) {
    return is(r, Columns.STRENGTH, "shorthanded");
  }

  static boolean keptIn(TableRows r) {
    return is(r, Columns.WAY_OUT, WayOut.KEPT_IN.label());
  }

  static boolean icing(TableRows r) {
    return r.words(Columns.RESTART_CAUSE).startsWith("icing");
  }

  /** Whether the opponent's net was empty. */
  static boolean atEmptyNet(TableRows r) {
    String net = r.words(Columns.NET_EMPTY);
    return net.equals("opponent") || net.equals("both");
  }

  /** Whether the nearest checker was not close, as far as the sheet says. */
  static boolean littlePressure(TableRows r) {
    return is(r, Columns.PRESSURE, "none") || is(r, Columns.PRESSURE, "light");
  }

  /** Rows by a key, keys in order. */
  static Map<String, List<TableRows>> by(List<TableRows> rows, Function<TableRows, String> key) {
    return rows.stream().collect(Collectors.groupingBy(key, TreeMap::new, Collectors.toList()));
  }

  /** Icings of the exits for which the sheet can say. */
  static Count iced(List<TableRows> exits) {
    List<FaceOffAfter> known = exits.stream().flatMap(r -> FaceOffAfter.of(r).stream()).toList();
    return new Count(Collections.frequency(known, FaceOffAfter.ICING), known.size());
  }

  /** How many exits a defensive-zone face-off for a cause followed, as a page writes it. */
  static String after(List<TableRows> exits, FaceOffAfter cause) {
    return String.valueOf(
        exits.stream().filter(r -> FaceOffAfter.of(r).filter(cause::equals).isPresent()).count());
  }

  /** How many rows have a word in a column, as a page writes it. */
  static String many(List<TableRows> rows, String column, String word) {
    return String.valueOf(rows.stream().filter(r -> is(r, column, word)).count());
  }

  /** The same count of each game of each team, for a share whose rows may hang together. */
  static Clustered byGame(List<TableRows> rows, Function<List<TableRows>, Count> count) {
    return new Clustered(
        by(rows, r -> r.words(Columns.TEAM) + "\n" + r.words(Columns.GAME)).values().stream()
            .map(count)
            .toList());
  }

  /** How many rows satisfy something. */
  static Count share(List<TableRows> rows, Predicate<TableRows> what) {
    return new Count((int) rows.stream().filter(what).count(), rows.size());
  }
}
