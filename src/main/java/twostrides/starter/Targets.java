package twostrides.starter;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a second place of a sheet is: where the puck went, or merely the place of the team's next
 * row.
 *
 * @param byRule whether it is read in some rows only
 * @param completeOnly whether a missed pass has none either
 */
record Targets(boolean byRule, boolean completeOnly) {
  private static final String PASS = "pass";
  private static final double LEAST_SHARE = 0.9;

  /** Rows that are no passes in which a second place may stand by chance. */
  private static final double MOST_OTHERS = 0.05;

  static Targets of(UnknownSheet sheet, Found found, Words words) {
    if (found.get(Found.TO_X).isEmpty() || found.get("to_y_m").isEmpty() || words.ours()) {
      return new Targets(false, false);
    }
    int filled = 0;
    int others = 0;
    int next = 0;
    Map<String, List<String>> waiting = new HashMap<>();
    for (List<String> row : sheet.rows()) {
      List<String> before = waiting.put(found.game(row) + "|" + found.cell(Found.TEAM, row), row);
      if (before != null && isPlace(found, before)) {
        filled++;
        boolean other = !words.actionIn(before).equals(Optional.of(PASS));
        others += other ? 1 : 0;
        next += other && same(found, before, row) ? 1 : 0;
      }
    }
    boolean many = others > MOST_OTHERS * filled;
    return new Targets(many, many && next >= LEAST_SHARE * others);
  }

  private static boolean isPlace(Found found, List<String> row) {
    return !found.cell(Found.TO_X, row).isEmpty();
  }

  private static boolean same(Found found, List<String> row, List<String> next) {
    return found.cell(Found.TO_X, row).equals(found.cell(Found.X, next))
        && found.cell("to_y_m", row).equals(found.cell("y_m", next));
  }

  /** Whether rows of a rule have a second place that counts. */
  boolean counts(Words.Line line) {
    boolean pass = line.action().equals(Optional.of(PASS));
    return pass && (!completeOnly || !line.outcome().equals(Optional.of("missed")));
  }
}
