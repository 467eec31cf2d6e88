package twostrides.game;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import twostrides.sheet.Cell;
import twostrides.sheet.DoubtfulCellException;
import twostrides.sheet.Problem;
import twostrides.sheet.SheetRow;

/**
 * Reads the cells of one row and collects what is doubtful about them, so that a row with three bad
 * cells is reported three times and set aside once.
 */
abstract class CellReader {

  /** An id that a spreadsheet has made a decimal number of. */
  private static final Pattern DECIMAL_ID = Pattern.compile("(\\d+)\\.0+");

  private static final Map<String, Boolean> YES_NO = yesNo();

  private final SheetRow row;
  private final List<Problem> problems = new ArrayList<>();
  private final List<Mend> mends = new ArrayList<>();

  CellReader(SheetRow row) {
    this.row = row;
  }

  /** What is doubtful about the cells read so far; the list grows with the reading. */
  public List<Problem> problems() {
    return problems;
  }

  /** What was put right in the cells read so far; the list grows with the reading. */
  List<Mend> mends() {
    return mends;
  }

  /** The row's cell of one of our columns. */
  Optional<Cell> cell(String column) {
    return row.cell(column);
  }

  /**
   * An id or a name: 26.0, which a spreadsheet makes of 26, is 26.
   *
   * @param column our column
   */
  Optional<String> id(String column) {
    return text(column).map(this::withoutDecimal);
  }

  /** 26 for 26.0, counted. */
  String withoutDecimal(String id) {
    if (id.indexOf('.') < 0) {
      return id;
    }
    Matcher m = DECIMAL_ID.matcher(id);
    if (!m.matches()) {
      return id;
    }
    mends.add(Mend.ID);
    return m.group(1);
  }

  private static Map<String, Boolean> yesNo() {
    Map<String, Boolean> words = new LinkedHashMap<>();
    words.put("yes", true);
    words.put("no", false);
    return words;
  }

  /** What a cell is read as. */
  interface Reading<T> {
    T of(Cell cell) throws DoubtfulCellException;
  }

  <T> Optional<T> read(String column, Reading<T> reading) {
    Optional<Cell> cell = row.cell(column);
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(reading.of(cell.get()));
    } catch (DoubtfulCellException e) {
      problems.add(e.problem());
      return Optional.empty();
    }
  }

  void missing(String column, String expected) {
    problems.add(empty(column, expected, "fill in the cell; until then the row is set aside"));
  }

  private Problem empty(String column, String expected, String toDo) {
    return new Problem(row.file(), row.line(), column, "", expected, toDo);
  }

  /**
   * Says that a cell is doubtful, also one that is empty.
   *
   * @param column our column
   * @param expected what should stand there
   * @param toDo what to do about it
   */
  public void doubt(String column, String expected, String toDo) {
    problems.add(
        row.cell(column)
            .map(c -> c.problem(expected, toDo))
            .orElseGet(() -> empty(column, expected, toDo)));
  }

  /**
   * Says that a team plays itself, where it does.
   *
   * @param one a team, where the row says it
   * @param other the team that plays against it
   * @param column our column of the other
   */
  void differ(Optional<String> one, Optional<String> other, String column) {
    if (one.isPresent() && one.equals(other)) {
      doubt(column, "another team than " + one.get(), "correct the name of one of the two teams");
    }
  }

  /**
   * Says that one of two cells that need each other is empty.
   *
   * @param one our column
   * @param other our other column
   * @param expected what should stand there
   */
  public void missingOneOf(String one, String other, String expected) {
    missing(row.cell(one).isEmpty() ? one : other, expected);
  }

  /**
   * A cell's text.
   *
   * @param column our column
   */
  public Optional<String> text(String column) {
    return row.cell(column).map(Cell::text);
  }

  /**
   * A cell's text; a blank cell is a problem.
   *
   * @param column our column
   * @param expected what should stand there
   */
  public Optional<String> requiredText(String column, String expected) {
    Optional<String> t = text(column);
    if (t.isEmpty()) {
      missing(column, expected);
    }
    return t;
  }

  /**
   * A cell as one of several words.
   *
   * @param column our column
   * @param words the words and what each means
   */
  public <T> Optional<T> word(String column, Map<String, T> words) {
    return read(column, c -> c.oneOf(words));
  }

  <T> Optional<T> requiredWord(String column, Map<String, T> words) {
    if (row.cell(column).isEmpty()) {
      missing(column, "one of " + String.join(", ", words.keySet()));
    }
    return word(column, words);
  }

  /**
   * A cell as a whole number; a blank cell is none.
   *
   * @param column our column
   * @param min smallest that fits
   * @param max largest that fits
   */
  public Optional<Integer> wholeNumber(String column, int min, int max) {
    return read(column, c -> c.wholeNumber(min, max));
  }

  /**
   * A cell as a number; a blank cell is none.
   *
   * @param column our column
   * @param min smallest that fits
   * @param max largest that fits
   */
  public Optional<Double> number(String column, double min, double max) {
    return read(column, c -> c.number(min, max));
  }

  /**
   * A cell as yes or no; a blank cell is neither.
   *
   * @param column our column
   */
  public Optional<Boolean> yesOrNo(String column) {
    return word(column, YES_NO);
  }
}
