package twostrides.starter;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;

/**
 * The two numbers of a cell such as 5 on 4.
 *
 * @param column the column
 * @param sameText how often the cell stays where the puck changes teams at uneven strength
 * @param turnedText how often its numbers change places there
 */
record Manpower(Column column, int sameText, int turnedText) {
  private static final double LEAST_SHARE = 0.75;

  /** Rows that must be turned, and their share, before a word is taken for turned. Assumed. */
  private static final int LEAST_TURNED = 5;

  private static final double LEAST_TURNED_SHARE = 0.9;

  static Manpower of(UnknownSheet sheet, Found found, Column column) {
    int same = 0;
    int turned = 0;
    List<String> before = List.of();
    for (List<String> row : sheet.rows()) {
      Matcher now = Found.MANPOWER.matcher(column.cell(row));
      boolean uneven = now.matches() && !now.group(1).equals(now.group(2));
      if (uneven
          && !before.isEmpty()
          && found.game(row).equals(found.game(before))
          && !found.cell("team", row).equals(found.cell("team", before))) {
        Matcher then = Found.MANPOWER.matcher(column.cell(before));
        if (then.matches()) {
          same += then.group(1).equals(now.group(1)) && then.group(2).equals(now.group(2)) ? 1 : 0;
          turned +=
              then.group(1).equals(now.group(2)) && then.group(2).equals(now.group(1)) ? 1 : 0;
        }
      }
      before = row;
    }
    return new Manpower(column, same, turned);
  }

  boolean homeFirst() {
    return sameText > turnedText;
  }

  boolean sure() {
    int all = sameText + turnedText;
    return all > 0 && Math.max(sameText, turnedText) >= LEAST_SHARE * all;
  }

  String says() {
    return "Where the puck changes teams at uneven strength it stays "
        + sameText
        + " times (home first) and turns "
        + turnedText
        + " times (acting team first).";
  }

  /** What fills our columns, the numbers turned or as they stand. */
  Map<String, String> cells(boolean turned) {
    List<String> ours =
        homeFirst()
            ? List.of("skaters_home", "skaters_away")
            : List.of("skaters_for", "skaters_against");
    Map<String, String> cells = new LinkedHashMap<>();
    cells.put(ours.get(0), source(turned ? "^\\d\\D+(\\d)$" : "^(\\d)\\D+\\d$"));
    cells.put(ours.get(1), source(turned ? "^(\\d)\\D+\\d$" : "^\\d\\D+(\\d)$"));
    return cells;
  }

  private String source(String take) {
    return "{ column = " + StarterText.quoted(column.header()) + ", take = '" + take + "' }";
  }

  /** Words of rows whose numbers stand the other way round than in the rows before them. */
  static Set<String> turnedWords(UnknownSheet sheet, Found found, Words words) {
    Set<String> turned = new TreeSet<>();
    if (found.manpower().isEmpty() || words.action().isEmpty()) {
      return turned;
    }
    Column column = found.manpower().get();
    boolean homeFirst = of(sheet, found, column).homeFirst();
    Map<String, int[]> counts = new TreeMap<>();
    List<String> before = List.of();
    for (List<String> row : sheet.rows()) {
      String word = words.action().get().cell(row);
      Matcher now = Found.MANPOWER.matcher(column.cell(row));
      if (!before.isEmpty() && now.matches() && !now.group(1).equals(now.group(2))) {
        Matcher then = Found.MANPOWER.matcher(column.cell(before));
        boolean other = !found.cell("team", row).equals(found.cell("team", before));
        if (then.matches() && !words.action().get().cell(before).equals(word)) {
          boolean same = then.group(1).equals(now.group(1)) && then.group(2).equals(now.group(2));
          boolean opposite =
              then.group(1).equals(now.group(2)) && then.group(2).equals(now.group(1));
          int[] n = counts.computeIfAbsent(word, w -> new int[2]);
          boolean swap = other && !homeFirst;
          n[0] += (swap ? opposite : same) ? 1 : 0;
          n[1] += (swap ? same : opposite) ? 1 : 0;
        }
      }
      before = row;
    }
    counts.forEach(
        (word, n) -> {
          if (n[1] >= LEAST_TURNED && n[1] >= LEAST_TURNED_SHARE * (n[0] + n[1])) {
            turned.add(word);
          }
        });
    return turned;
  }
}
