package twostrides.sheet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** How every message of this package is put, so that they all read alike. */
final class Wording {
  /** Longest value shown in a message, in characters; a longer one is cut. Assumed. */
  private static final int LONGEST = 80;

  private Wording() {}

  /**
   * The one form of a message.
   *
   * @param location file, line and column, already joined
   * @param found what stands there
   * @param expected what should
   * @param toDo what the reader can do about it, a sentence
   */
  static String sentence(String location, String found, String expected, String toDo) {
    return location + ": found " + found + ", expected " + expected + ". What to do: " + toDo;
  }

  /** A value in quotes, cut when long, with line breaks and tabs made visible. */
  static String quoted(String value) {
    if (value.isEmpty()) {
      return "an empty cell";
    }
    String shown = value.replace("\r\n", "\n");
    StringBuilder out = new StringBuilder("\"");
    int count = 0;
    for (int code : shown.codePoints().toArray()) {
      if (count++ == LONGEST) {
        return out.append("…\"").toString();
      }
      if (code == '\n' || code == '\r') {
        out.append('↵');
      } else if (Character.isISOControl(code)) {
        out.append(code == '\t' ? "⇥" : String.format(Locale.ROOT, "\\u%04x", code));
      } else {
        out.appendCodePoint(code);
      }
    }
    return out.append('"').toString();
  }

  /** Names in quotes with commas between them, or "none". */
  static String list(Collection<String> names) {
    return names.isEmpty()
        ? "none"
        : names.stream().map(n -> "\"" + n + "\"").collect(Collectors.joining(", "));
  }

  /** Known names with the most similar first; equally similar ones stay in their order. */
  static String nearestFirst(String wanted, Collection<String> known) {
    String key = wanted.strip().toLowerCase(Locale.ROOT);
    List<String> sorted = new ArrayList<>(known);
    sorted.sort(Comparator.comparingInt(k -> distance(key, k.toLowerCase(Locale.ROOT))));
    return list(sorted);
  }

  /** Levenshtein distance: letters to change, add or drop to get from one word to the other. */
  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int changed = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(changed, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }
}
