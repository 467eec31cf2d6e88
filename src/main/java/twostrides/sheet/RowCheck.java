package twostrides.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** What is doubtful about a row before anyone asks what its cells mean. */
final class RowCheck {
  private final Layout layout;

  RowCheck(Layout layout) {
    this.layout = layout;
  }

  /** The problems of a row; none when it can be used. */
  List<Problem> problems(SheetRow row) {
    if (row.cells().size() != layout.width()) {
      return List.of(
          problem(
              row,
              "",
              cells(row.cells().size()) + ": " + row.raw(),
              cells(layout.width()) + ", as in the header line",
              "Put a cell that holds the delimiter in quotes, or add the missing cells."));
    }
    Optional<String> skip = row.rule().flatMap(Rule::skip);
    if (skip.isPresent()) {
      return List.of(
          ruleProblem(
              row,
              row.rule().orElseThrow().when(),
              "a row that the map uses; its rule says: " + skip.get(),
              "Nothing, if that is meant; otherwise change the rule in the map."));
    }
    if (row.rule().isEmpty() && !layout.rules().isEmpty()) {
      return List.of(
          ruleProblem(
              row,
              layout.rules().stream().flatMap(r -> r.when().stream()).toList(),
              "a rule of the map that fits",
              "Correct the row, or add a rule for such rows to the map."));
    }
    return takeProblems(row);
  }

  private static String cells(int n) {
    return n + (n == 1 ? " cell" : " cells");
  }

  private static Problem problem(
      SheetRow row, String column, String value, String expected, String toDo) {
    return new Problem(row.file(), row.line(), column, value, expected, toDo);
  }

  private Problem ruleProblem(
      SheetRow row, List<Rule.Condition> conditions, String expected, String toDo) {
    Map<String, String> looked = new LinkedHashMap<>();
    for (Rule.Condition condition : conditions) {
      looked.put(layout.spelling(condition.header()), layout.under(condition.header(), row));
    }
    String empty = looked.size() == 1 ? "" : "(empty)";
    List<String> values = looked.values().stream().map(v -> v.isEmpty() ? empty : v).toList();
    return problem(
        row, String.join(", ", looked.keySet()), String.join(", ", values), expected, toDo);
  }

  private List<Problem> takeProblems(SheetRow row) {
    if (!layout.takes()) {
      return List.of();
    }
    List<Problem> problems = new ArrayList<>();
    layout
        .slots(row)
        .forEach(
            (column, slot) -> {
              if (slot instanceof Slot.Place p && p.take().isPresent()) {
                String value = row.around().get(p.position()).strip();
                if (!value.isEmpty() && Source.taken(p.take(), value).isEmpty()) {
                  problems.add(
                      problem(
                          row,
                          p.header(),
                          value,
                          (WatchedText.isTooHard(p.take().get(), value)
                                  ? "words of which the program can tell whether they fit the pattern "
                                  : "words that fit the pattern ")
                              + p.take().map(Pattern::pattern).orElseThrow(),
                          "Correct the cell, or change the pattern in the map."));
                }
              }
            });
    return problems;
  }
}
