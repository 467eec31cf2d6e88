package twostrides.findings;

import java.util.List;

/**
 * A table of a page.
 *
 * @param id its place on the page, unique there
 * @param title heading above it
 * @param caption what is counted, in a coach's words
 * @param heads its columns
 * @param lines its rows
 * @param whenEmpty what to say when it has no rows
 */
public record Grid(
    String id, String title, String caption, List<Head> heads, List<Line> lines, String whenEmpty) {

  /** Copies the lists and rejects a row of another width. */
  public Grid {
    heads = List.copyOf(heads);
    lines = List.copyOf(lines);
    for (Line l : lines) {
      if (l.values().size() != heads.size()) {
        throw new IllegalArgumentException(
            "grid " + id + " has " + heads.size() + " columns and a row of " + l.values().size());
      }
    }
  }
}
