package twostrides.numbers;

import java.util.List;

/**
 * A row of a grid.
 *
 * @param cells one text a column; the first one names the row
 * @param sum whether the row adds up those above it
 */
public record Line(List<String> cells, boolean sum) {

  /** Copies the cells. */
  public Line {
    cells = List.copyOf(cells);
  }

  static Line of(String... cells) {
    return new Line(List.of(cells), false);
  }

  static Line sum(String... cells) {
    return new Line(List.of(cells), true);
  }
}
