package twostrides.book;

import java.util.List;

/**
 * The icing book of a run as a page shows it.
 *
 * @param name name with its season
 * @param edition what was read
 * @param lines what it says, point by point
 * @param others names of the books it is compared with, by their ids
 */
public record BookNote(String name, String edition, List<Line> lines, List<Other> others) {

  /** Copies the lists. */
  public BookNote {
    lines = List.copyOf(lines);
    others = List.copyOf(others);
  }

  /** The points for which no source was found. */
  public List<Line> assumed() {
    return lines.stream().filter(Line::assumed).toList();
  }

  /**
   * One point.
   *
   * @param point what it is about
   * @param says what the book says
   * @param clause clause of the rulebook
   * @param source where it was read, and how sure that is
   * @param assumed whether no source was found
   */
  public record Line(String point, String says, String clause, String source, boolean assumed) {}

  /**
   * A book that the rulings are compared with.
   *
   * @param id its id
   * @param name its name with its season
   */
  public record Other(String id, String name) {}
}
