package twostrides.sheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A rule of a map: rows that hold certain words get certain cells, or are not used.
 *
 * @param when the conditions, all of which must hold; none means that every row fits
 * @param set our columns and what then fills them
 * @param skip why such a row is not used; empty when it is
 * @param second what fills our columns for a second event in the same row; empty when it is one
 * @param at where the rule stands in the map
 */
record Rule(
    List<Condition> when,
    Map<String, Source> set,
    Optional<String> skip,
    Optional<Rule> second,
    MapPlace at) {

  /**
   * A condition on one cell.
   *
   * @param header the sheet's own column
   * @param words the words, any of which fits, compared exactly after trimming
   * @param at where the condition stands in the map
   */
  record Condition(String header, Set<String> words, MapPlace at) {
    Condition {
      words = Set.copyOf(words);
    }
  }

  Rule {
    when = List.copyOf(when);
    set = Map.copyOf(set);
    if (skip.isPresent() != set.isEmpty()) {
      throw new IllegalArgumentException("a rule either sets cells or skips the row: " + at);
    }
  }

  /** Whether a condition is on this column of the sheet. */
  boolean looksAt(String header) {
    return when.stream().anyMatch(c -> c.header().equals(header));
  }
}
