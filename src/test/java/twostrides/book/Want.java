package twostrides.book;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a cell or sentence of a page has to say, worked out anew: words with holes for numbers, and
 * what stands in the holes.
 *
 * <p>A number fits where it is written with as many decimals as it should be and differs from the
 * value by no more than half of its last digit, and half a step of the table that the value was
 * read from. Whole numbers have to be equal.
 *
 * @param words words, with # for each number
 * @param numbers the numbers in order
 * @param figure whether it counts as a figure
 */
record Want(String words, List<Num> numbers, boolean figure) {

  /** For what is not there. */
  static final String NONE = "–";

  /** For what the counts are too few to say. */
  static final String FEW = "too few to say";

  /**
   * A number to expect.
   *
   * @param value its value
   * @param places decimals it is written with
   * @param step step of the table it was read from, 0 for counts
   * @param signed whether a plus stands before a number above 0
   * @param rate whether it is a rate, which is never written as 0 or 100 per cent
   */
  record Num(double value, int places, double step, boolean signed, boolean rate) {

    private Num(double value, int places, double step, boolean signed) {
      this(value, places, step, signed, false);
    }

    boolean fits(String written) {
      double near = (1 + step) / 2 + 1e-9;
      if (written.equals("under 1") || written.equals("over 99")) {
        return rate && (written.equals("under 1") ? value <= near : value >= 100 - near);
      }
      if (written.contains(" ") || (rate && (written.equals("0") || written.equals("100")))) {
        return false;
      }
      int point = written.indexOf('.');
      int decimals = point < 0 ? 0 : written.length() - point - 1;
      boolean zero = written.chars().noneMatch(c -> c >= '1' && c <= '9');
      boolean plus = written.startsWith("+");
      boolean sign = signed ? plus == (!zero && !written.startsWith("-")) : !plus;
      double reach = (Math.pow(10, -places) + step) / 2 + 1e-9;
      return decimals == places
          && sign
          && !(zero && written.startsWith("-"))
          && Math.abs(Double.parseDouble(written) - value) <= reach;
    }
  }

  /** Words that no table of the book holds; not counted. */
  static final Want ANY = new Want("\uFFFE", List.of(), false);

  /** Copies the numbers and rejects another number of holes. */
  Want {
    numbers = List.copyOf(numbers);
    long holes = words.chars().filter(c -> c == '#').count();
    if (holes != numbers.size()) {
      throw new IllegalArgumentException(holes + " holes and " + numbers.size() + " numbers");
    }
  }

  /** Words alone, such as a name. */
  static Want name(String words) {
    // A name may hold the sign for a hole.
    return new Want(words.replace('#', '\uFFFD'), List.of(), false);
  }

  /** Words that stand for a figure, or hold one that was made from whole numbers. */
  static Want text(String words) {
    return new Want(words.replace('#', '\uFFFD'), List.of(), true);
  }

  /** These words and then others. */
  Want then(Want other) {
    List<Num> all = new ArrayList<>(numbers);
    all.addAll(other.numbers);
    return new Want(words + other.words, all, figure || other.figure);
  }

  /** A whole number. */
  static Want count(long n) {
    return text(Long.toString(n));
  }

  /** "12 of 96". */
  static Want counts(Formulas.Share s) {
    return text(s.k() + " of " + s.n());
  }

  /** Words with numbers in them. */
  static Want like(String words, Num... numbers) {
    return new Want(words, List.of(numbers), true);
  }

  /** A number made from counts. */
  static Num num(double value, int places) {
    return new Num(value, places, 0, false);
  }

  /** A number read from a table with that step. */
  static Num num(double value, int places, double step) {
    return new Num(value, places, step, false);
  }

  /** A number with its sign. */
  static Num signed(double value, int places, double step) {
    return new Num(value, places, step, true);
  }

  /** A number of whole per cent that another fit may miss by one. */
  static Num fitted(double share) {
    return new Num(100 * share, 0, 2, false);
  }

  /** An adjusted rate in whole per cent that another fit may miss by one. */
  static Num rate(double share) {
    return new Num(100 * share, 0, 2, false, true);
  }

  /** Whether a page's words are these. */
  boolean fits(String written) {
    if (equals(ANY)) {
      return true;
    }
    String shown = together(written.replace('#', '\uFFFD'));
    StringBuilder pattern = new StringBuilder();
    for (String part : together(words).split("#", -1)) {
      pattern
          .append(pattern.isEmpty() ? "" : "((?:under |over |[+-])?\\d+(?:\\.\\d+)?)")
          .append(quoted(part));
    }
    Matcher m = Pattern.compile(pattern.toString()).matcher(shown);
    if (!m.matches()) {
      return false;
    }
    for (int i = 0; i < numbers.size(); i++) {
      if (!numbers.get(i).fits(m.group(i + 1))) {
        return false;
      }
    }
    return true;
  }

  /** Thousands are set apart on pages and not in tables. */
  private static String together(String words) {
    return words.strip().replaceAll("(?<=\\d),(?=\\d{3}(?!\\d))", "");
  }

  /** Never empty, so that only the first part is told from the others by length. */
  private static String quoted(String part) {
    return "(?:" + Pattern.quote(part) + ")";
  }

  @Override
  public String toString() {
    return words + (numbers.isEmpty() ? "" : " with " + numbers);
  }
}
