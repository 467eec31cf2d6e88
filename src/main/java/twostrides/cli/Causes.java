package twostrides.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import twostrides.book.Format;
import twostrides.game.RowAccount;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.Problem;

/**
 * Why rows were set aside, one line a cause: how many rows, the first of them, and what to do. Rows
 * that the map skips on purpose are one line.
 */
final class Causes {

  /**
   * What is alike about problems of one cause.
   *
   * @param column the column
   * @param word the cell's word, where each unknown word is a cause of its own
   * @param toDo what to do about it
   */
  private record Cause(String column, String word, String toDo) {
    static Cause of(Problem p) {
      boolean words = p.expected().startsWith("one of") || p.expected().contains("rule of the map");
      return new Cause(p.column(), words ? firstWord(p.value()) : "", p.toDo());
    }

    /** Of cells that a rule looks at together the first, which says what the row is. */
    private static String firstWord(String value) {
      int comma = value.indexOf(", ");
      return comma < 0 ? value : value.substring(0, comma);
    }
  }

  /** The rows of a cause and the first problem. */
  private static final class Rows {
    private final Problem first;
    private int count;

    Rows(Problem first) {
      this.first = first;
    }
  }

  private final Map<Cause, Rows> causes = new LinkedHashMap<>();
  private final Map<String, Integer> skipped = new LinkedHashMap<>();
  private final int rowsRead;

  private Causes(int rowsRead) {
    this.rowsRead = rowsRead;
  }

  static Causes of(RowAccount season) {
    Causes causes = new Causes(season.rowsRead());
    season.setAside().forEach(causes::add);
    return causes;
  }

  private void add(DoubtfulRow row) {
    Optional<String> skip = row.row().skipReason();
    if (skip.isPresent()) {
      skipped.merge(skip.get(), 1, Integer::sum);
      return;
    }
    row.problems().stream()
        .collect(
            LinkedHashMap<Cause, Problem>::new,
            (m, p) -> m.putIfAbsent(Cause.of(p), p),
            LinkedHashMap::putAll)
        .forEach((cause, p) -> causes.computeIfAbsent(cause, c -> new Rows(p)).count++);
  }

  /**
   * The lines.
   *
   * @param most most causes
   * @param where where all rows can be found
   */
  List<String> lines(int most, String where) {
    List<Rows> worst = new ArrayList<>(causes.values());
    worst.sort(Comparator.comparingInt((Rows r) -> r.count).reversed());
    List<String> lines = new ArrayList<>();
    worst.stream().limit(most).forEach(r -> lines.add(line(r)));
    if (worst.size() > most) {
      lines.add(
          "... and "
              + Format.count(worst.stream().skip(most).mapToInt(r -> r.count).sum(), "row")
              + " for "
              + Format.count(worst.size() - most, "other cause")
              + where);
    }
    if (!skipped.isEmpty()) {
      List<String> reasons = new ArrayList<>();
      skipped.forEach((reason, n) -> reasons.add(n + " (" + reason + ")"));
      lines.add("Skipped as the map says: " + String.join(", ", reasons) + ".");
    }
    return lines;
  }

  private String line(Rows rows) {
    if (rows.count == 1) {
      return "Set aside: " + rows.first.message();
    }
    return String.format(
        Locale.ROOT,
        "Set aside: %d rows (%.1f %%), the first: %s",
        rows.count,
        100.0 * rows.count / rowsRead,
        rows.first.message());
  }
}
