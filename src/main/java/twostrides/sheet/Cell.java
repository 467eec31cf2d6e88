package twostrides.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A cell that is not blank: it knows file, line and column, and builds its own errors. Numbers are
 * plain decimals with an optional sign: no exponent, no thousands separator, no unit, no NaN.
 */
public final class Cell {
  private static final MathContext SHOWN = new MathContext(15);

  private final SheetRow row;
  private final ColumnSpec spec;
  private final Origin origin;
  private final String value;
  private final String text;

  /**
   * A cell.
   *
   * @param row where it stands
   * @param spec our column
   * @param origin where the text comes from
   * @param value the sheet's own words
   * @param text what they mean to us: taken out and translated by the map
   */
  Cell(SheetRow row, ColumnSpec spec, Origin origin, String value, String text) {
    this.row = row;
    this.spec = spec;
    this.origin = origin;
    this.value = value;
    this.text = text;
  }

  /**
   * Where a cell's text comes from.
   *
   * @param column the name that messages use
   * @param byMap whether the map, not the sheet, holds the text
   */
  record Origin(String column, boolean byMap) {}

  /** The text, trimmed and never empty; the map's translation where there is one. */
  public String text() {
    return text;
  }

  /**
   * The cell as a whole number.
   *
   * @param min smallest that fits
   * @param max largest that fits
   * @throws DoubtfulCellException when it is none, or outside
   */
  public int wholeNumber(int min, int max) throws DoubtfulCellException {
    String digits = text.startsWith("+") || text.startsWith("-") ? text.substring(1) : text;
    // Eighteen digits fit a long; more are outside every range that can be asked for.
    if (isDigits(digits) && digits.length() <= 18) {
      long number = Long.parseLong(text);
      if (min <= number && number <= max) {
        return (int) number;
      }
    }
    throw doubt("a whole number" + range(min, max), toDo());
  }

  /**
   * The cell as a number.
   *
   * @param min smallest that fits; may be negative infinity
   * @param max largest that fits; may be infinity
   * @throws DoubtfulCellException when it is none, or outside
   */
  public double number(double min, double max) throws DoubtfulCellException {
    char mark = row.decimalMark();
    if (isPlain(text, mark)) {
      double number = Double.parseDouble(text.replace(mark, '.'));
      if (min <= number && number <= max) {
        return number;
      }
    }
    String expected = "a number" + range(min, max);
    char other = mark == '.' ? ',' : '.';
    if (!origin.byMap() && fits(other, min, max)) {
      throw doubt(
          expected,
          mark == '.'
              ? "Write a decimal point, or say decimal = \",\" in a sheet map, under [file]."
              : "Write a decimal comma, or say decimal = \".\" in the sheet map, under [file].");
    }
    throw doubt(expected, toDo());
  }

  /**
   * The cell as groups of numbers: blanks between the numbers of a group, semicolons between
   * groups.
   *
   * @param expected what should stand there, a phrase
   * @param lengths how many numbers a group may have
   * @param most largest size of a number, either sign
   * @throws DoubtfulCellException when a group is none
   */
  public List<double[]> groups(String expected, Set<Integer> lengths, double most)
      throws DoubtfulCellException {
    char mark = row.decimalMark();
    List<double[]> groups = new ArrayList<>();
    for (String group : text.split(";", -1)) {
      String[] words = group.strip().split("\\s+", -1);
      double[] numbers = new double[words.length];
      for (int i = 0; i < numbers.length; i++) {
        boolean plain = lengths.contains(words.length) && isPlain(words[i], mark);
        numbers[i] = plain ? Double.parseDouble(words[i].replace(mark, '.')) : Double.NaN;
        if (!(Math.abs(numbers[i]) <= most)) {
          throw new DoubtfulCellException(problem(expected, toDo()));
        }
      }
      groups.add(numbers);
    }
    return groups;
  }

  /**
   * The cell as one of several words; a word in capitals counts as well.
   *
   * @param words the words and what each means
   * @throws DoubtfulCellException when it is none of them
   */
  public <T> T oneOf(Map<String, T> words) throws DoubtfulCellException {
    T found = words.get(text);
    if (found == null) {
      found = words.get(text.toLowerCase(Locale.ROOT));
    }
    if (found == null) {
      throw new DoubtfulCellException(
          problem(
              "one of: " + Wording.nearestFirst(text, new TreeSet<>(words.keySet())),
              origin.byMap()
                  ? toDo()
                  : "Correct the word, or translate it in a sheet map, under [values."
                      + spec.name()
                      + "]."));
    }
    return found;
  }

  /**
   * A problem of this cell.
   *
   * @param expected what should stand there, a phrase
   * @param toDo what the reader can do about it, a sentence
   */
  public Problem problem(String expected, String toDo) {
    return new Problem(row.file(), row.line(), origin.column(), value, expected, toDo);
  }

  /** What to do about a cell of this column in general, a sentence. */
  public String toDo() {
    if (origin.byMap()) {
      return "Correct the sheet map, which fills this cell.";
    }
    return spec.required()
        ? "Correct the cell."
        : "Correct the cell, or leave it empty when you do not know.";
  }

  private DoubtfulCellException doubt(String expected, String toDo) {
    return new DoubtfulCellException(
        problem(spec.expects().isEmpty() ? expected : spec.expects(), toDo));
  }

  private static boolean isPlain(String text, char mark) {
    String digits = text.startsWith("+") || text.startsWith("-") ? text.substring(1) : text;
    int at = digits.indexOf(mark);
    return at < 0
        ? isDigits(digits)
        : isDigits(digits.substring(0, at)) && isDigits(digits.substring(at + 1));
  }

  private boolean fits(char mark, double min, double max) {
    if (!isPlain(text, mark)) {
      return false;
    }
    double number = Double.parseDouble(text.replace(mark, '.'));
    return min <= number && number <= max;
  }

  private static boolean isDigits(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) < '0' || text.charAt(i) > '9') {
        return false;
      }
    }
    return !text.isEmpty();
  }

  /** The range of a number, words that follow it. */
  static String range(double min, double max) {
    boolean low = min > Double.NEGATIVE_INFINITY;
    boolean high = max < Double.POSITIVE_INFINITY;
    if (low && high) {
      return " from " + shown(min) + " to " + shown(max);
    }
    if (low) {
      return ", " + shown(min) + " or more";
    }
    return high ? ", " + shown(max) + " or less" : "";
  }

  /** A number without needless decimals, rounded where it has more digits than anybody writes. */
  static String shown(double number) {
    boolean plain = Math.abs(number) < 1e15 && !(Math.abs(number) < 1e-9 && number != 0);
    return plain
        ? new BigDecimal(number, SHOWN).stripTrailingZeros().toPlainString()
        : Double.toString(number);
  }
}
