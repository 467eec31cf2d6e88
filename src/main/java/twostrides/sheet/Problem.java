package twostrides.sheet;

/**
 * Something in a sheet that cannot be used as it stands, and where it is.
 *
 * @param file the sheet, as the user named it
 * @param line line of the file on which the row begins; the header is usually line 1
 * @param column the sheet's name of the column, or our name when a map fills the cell; several
 *     names with commas between them when the cells are doubtful together; empty when it is the row
 *     as a whole
 * @param value the cell's own words, empty when the cell is
 * @param expected what should stand there
 * @param toDo what the reader can do about it, a sentence
 */
public record Problem(
    String file, long line, String column, String value, String expected, String toDo) {
  /** Checks that the problem has a place. */
  public Problem {
    if (line < 1) {
      throw new IllegalArgumentException("lines count from 1, not " + line);
    }
  }

  /** The problem as one sentence for a person, followed by what to do. */
  public String message() {
    String where = file + ", line " + line + (column.isEmpty() ? "" : ", column " + names());
    return Wording.sentence(where, Wording.quoted(value), expected, toDo);
  }

  /** The same problem, the sheet named otherwise. */
  public Problem in(String otherFile) {
    return new Problem(otherFile, line, column, value, expected, toDo);
  }

  private String names() {
    return "\"" + column + "\"";
  }
}
