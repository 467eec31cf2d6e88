package twostrides.review;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import twostrides.exits.Columns;
import twostrides.exits.ExitTables;

/**
 * Takes players' names out of the tables, before any page, picture or file is made from them: a
 * jersey number where the name begins with one, else a running code. Players may be minors.
 */
public final class Anonymous {

  private static final Pattern NUMBER = Pattern.compile("#?(\\d{1,2})\\b.*", Pattern.DOTALL);

  /** Between the players of a list. */
  private static final String BETWEEN = "; ";

  private Anonymous() {}

  /**
   * The same tables without names.
   *
   * @param tables tables with names; they are not changed
   */
  public static ExitTables of(ExitTables tables) {
    Map<String, Map<String, String>> codes = codes(tables);
    return new ExitTables(
        replace(tables.exits(), codes),
        replace(tables.releases(), codes),
        replace(tables.restarts(), codes),
        replace(tables.rulings(), codes),
        replace(tables.flags(), codes),
        tables.manpower(),
        tables.manpowerCompared(),
        tables.kills(),
        tables.costs(),
        replace(tables.players(), codes)
            .sortAscendingOn(
                Columns.TEAM,
                Columns.PLAYER,
                Columns.WAY_OUT,
                Columns.AT_CENTER,
                Columns.STRENGTH));
  }

  private static Map<String, Map<String, String>> codes(ExitTables tables) {
    Map<String, Set<String>> names = new TreeMap<>();
    for (Table t : new Table[] {tables.exits(), tables.releases(), tables.restarts()}) {
      for (String column : columns(t)) {
        TableRows.of(t)
            .forEach(
                r ->
                    r.text(column)
                        .ifPresent(
                            n ->
                                names
                                    .computeIfAbsent(r.words(Columns.TEAM), k -> new TreeSet<>())
                                    .addAll(players(column, n))));
      }
    }
    Map<String, Map<String, String>> codes = new HashMap<>();
    names.forEach((team, players) -> codes.put(team, codesOf(players)));
    return codes;
  }

  private static Map<String, String> codesOf(Set<String> players) {
    Map<String, String> codes = new HashMap<>();
    Set<String> taken = new HashSet<>();
    int running = 0;
    for (String name : players) {
      Matcher m = NUMBER.matcher(name);
      String code = m.matches() ? "No. " + m.group(1) : "player " + ++running;
      String free = code;
      for (char letter = 'b'; !taken.add(free); letter++) {
        free = code + letter;
      }
      codes.put(name, free);
    }
    return codes;
  }

  private static Table replace(Table table, Map<String, Map<String, String>> codes) {
    Table copy = table.copy();
    for (String column : columns(table)) {
      StringColumn replaced = StringColumn.create(column);
      TableRows.of(table)
          .forEach(
              r ->
                  r.text(column)
                      .ifPresentOrElse(
                          n ->
                              replaced.append(
                                  coded(players(column, n), codes.get(r.words(Columns.TEAM)))),
                          replaced::appendMissing));
      copy.replaceColumn(column, replaced);
    }
    return copy;
  }

  /** The columns of a table that name players. */
  private static List<String> columns(Table table) {
    return Stream.of(Columns.PLAYER, Columns.RELEASE_PLAYER, Columns.ON_ICE)
        .filter(table::containsColumn)
        .toList();
  }

  /** The players of a cell: one, or those of a list. */
  private static List<String> players(String column, String cell) {
    return column.equals(Columns.ON_ICE) ? List.of(cell.split(BETWEEN, -1)) : List.of(cell);
  }

  private static String coded(List<String> players, Map<String, String> codes) {
    return players.stream()
        .map(n -> codes.getOrDefault(n, "player"))
        .sorted()
        .collect(Collectors.joining(BETWEEN));
  }
}
