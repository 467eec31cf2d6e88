package twostrides.starter;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What a tag sheet has that a play sheet has not: a row is an exit, and its words say how it went.
 *
 * @param found its columns
 */
record Tags(Found found) {
  static final String WAY_OUT = "way_out";
  static final String END_X = "end_x_m";
  static final String END_Y = "end_y_m";

  private static final List<Patterns> NAMES = Patterns.read("tag-columns.txt", 1);
  private static final List<Patterns> WORDS = Patterns.read("tag-words.txt", 2);

  /** Of rows that say a way out; in a play sheet few rows leave the zone. Assumed. */
  private static final double LEAST_FILLED = 0.5;

  /** Our columns of a tag sheet, as the patterns name them. */
  static List<Patterns> names() {
    return NAMES;
  }

  /** The names of those columns. */
  static Stream<String> columns() {
    return NAMES.stream().map(p -> p.keys().get(0));
  }

  /** Whether a column's words are ways out of the zone, in most of a sheet's rows. */
  static boolean waysOut(Column c, int rows) {
    return c.filled() >= LEAST_FILLED * rows
        && !c.words().isEmpty()
        && c.words().keySet().stream().allMatch(w -> word(WAY_OUT, w).isPresent());
  }

  private static Optional<String> word(String ours, String theirs) {
    return WORDS.stream()
        .filter(p -> p.keys().get(0).equals(ours))
        .filter(p -> p.fits(theirs) || p.keys().get(1).equals(theirs))
        .map(p -> p.keys().get(1))
        .findFirst();
  }

  /** Writes what the words mean; those that are ours already need no line. */
  void write(StarterText out) {
    columns()
        .filter(c -> !Set.of(END_X, END_Y).contains(c))
        .forEach(ours -> found.get(ours).ifPresent(c -> values(ours, c, out)));
  }

  private static void values(String ours, Column c, StarterText out) {
    List<String> others =
        c.words().keySet().stream().filter(w -> !word(ours, w).equals(Optional.of(w))).toList();
    if (others.isEmpty()) {
      return;
    }
    out.heading("[values." + ours + "]");
    for (String w : others) {
      Optional<String> meant = word(ours, w);
      if (meant.isPresent()) {
        out.line(StarterText.key(w) + " = " + StarterText.quoted(meant.get()));
      } else {
        out.question(
            "What is "
                + StarterText.quoted(w)
                + " ("
                + c.words().get(w)
                + (c.words().get(w) == 1 ? " row" : " rows")
                + ")? Until somebody says, they are set aside.");
        out.note(StarterText.key(w) + " = \"\"");
      }
    }
  }
}
