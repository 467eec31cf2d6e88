package twostrides.starter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * A column of an unknown sheet, as its cells show it.
 *
 * @param position cells before it
 * @param header its name in the sheet
 * @param words what stands in it and in how many rows, most often first; empty cells left out
 */
record Column(int position, String header, Map<String, Integer> words) {
  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+([.,]\\d+)?");
  private static final Pattern WHOLE = Pattern.compile("[+-]?\\d+");
  private static final Pattern CAPITALS = Pattern.compile("(?<=[a-z0-9])(?=[A-Z])");

  /** Words shown in a comment; longer ones are cut. */
  private static final int SHOWN = 6;

  private static final int LONGEST_SHOWN = 24;

  static Column of(int position, String header, List<List<String>> rows) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (List<String> row : rows) {
      String cell = row.get(position).strip();
      if (!cell.isEmpty()) {
        counts.merge(cell, 1, Integer::sum);
      }
    }
    List<Map.Entry<String, Integer>> sorted = new ArrayList<>(counts.entrySet());
    sorted.sort(Map.Entry.comparingByValue(Comparator.reverseOrder()));
    Map<String, Integer> words = new LinkedHashMap<>();
    sorted.forEach(e -> words.put(e.getKey(), e.getValue()));
    return new Column(position, header, words);
  }

  /** The name as patterns are written for it: small letters, one blank between words. */
  static String plain(String name) {
    return CAPITALS
        .matcher(name)
        .replaceAll(" ")
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^\\p{L}\\p{N}]+", " ")
        .replaceAll("(?<=\\p{L})(?=\\d)", " ")
        .strip();
  }

  String cell(List<String> row) {
    return row.get(position).strip();
  }

  int filled() {
    return words.values().stream().mapToInt(Integer::intValue).sum();
  }

  boolean all(Pattern pattern) {
    return !words.isEmpty() && words.keySet().stream().allMatch(w -> pattern.matcher(w).matches());
  }

  boolean numbers() {
    return all(NUMBER);
  }

  boolean wholeNumbers(int least, int most) {
    return all(WHOLE)
        && words.keySet().stream()
            .mapToDouble(Column::number)
            .allMatch(n -> least <= n && n <= most);
  }

  double least() {
    return words.keySet().stream().mapToDouble(Column::number).min().orElse(0);
  }

  double most() {
    return words.keySet().stream().mapToDouble(Column::number).max().orElse(0);
  }

  /** A number with a point or a comma. */
  static double number(String written) {
    return Double.parseDouble(written.replace(',', '.'));
  }

  /** The smallest step that fits all numbers: 1, 0.5, 0.1 or 0.01. */
  String step() {
    for (String step : List.of("1", "0.5", "0.1")) {
      double s = Double.parseDouble(step);
      boolean fits =
          words.keySet().stream()
              .mapToDouble(Column::number)
              .allMatch(n -> Math.abs(n / s - Math.rint(n / s)) < 1e-6);
      if (fits) {
        return step;
      }
    }
    return "0.01";
  }

  /** What stands in it, for a comment. */
  String shown() {
    if (numbers() && words.size() > SHOWN) {
      return "numbers from " + trimmed(least()) + " to " + trimmed(most());
    }
    List<String> some =
        words.keySet().stream()
            .limit(SHOWN)
            .map(w -> w.length() > LONGEST_SHOWN ? w.substring(0, LONGEST_SHOWN) + "..." : w)
            .map(w -> w.replaceAll("\\p{Cntrl}", " "))
            .toList();
    String more = words.size() > SHOWN ? " and " + (words.size() - SHOWN) + " more" : "";
    return String.join(", ", some) + more;
  }

  static String trimmed(double number) {
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }
}
