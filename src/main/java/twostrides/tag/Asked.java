package twostrides.tag;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a page asks for, put against the rows as they are: a page that was left behind by another
 * one may not change what it does not show, and nobody takes back another page's step.
 */
final class Asked {

  private static final String GONE = "an exit that was taken out";

  private Asked() {}

  /**
   * The row of a number, if it is the one that the page shows.
   *
   * @param history the rows
   * @param id the exit
   * @param version the exit's version that the page shows
   * @param toDo how to go on from the row as it is now, a sentence
   */
  static TagRow row(History history, int id, int version, String toDo) throws TagRefusedException {
    TagRow row =
        history
            .row(id)
            .orElseThrow(
                () ->
                    stale(
                        GONE,
                        "an exit that is tagged",
                        "Another page deleted this exit. Nothing was saved; log it anew if it belongs"
                            + " in the list."));
    if (row.version() != version) {
      throw stale(
          words(row),
          "the exit as this page showed it",
          "Another page changed this exit: it is now "
              + words(row)
              + ". Nothing was saved. "
              + toDo);
    }
    return row;
  }

  /**
   * The step that undo of a page takes back, by its number.
   *
   * @param history the rows
   * @param page the page
   */
  static int lastOf(History history, String page) throws TagRefusedException {
    OptionalInt last = history.lastOf(page);
    if (last.isEmpty()) {
      throw new TagRefusedException(
          List.of(
              new FieldProblem(
                  "",
                  "nothing to undo",
                  "a step that was taken on this page",
                  "Edit and Delete change any exit.")));
    }
    int number = last.getAsInt();
    if (!history.untouchedSince(number)) {
      TagRow left = history.change(number).row();
      Optional<TagRow> now = history.row(left.id());
      throw stale(
          now.map(Asked::words).orElse(GONE),
          words(left) + ", as this page left it",
          now.map(
                  r ->
                      "Another page changed that exit since: it is now "
                          + words(r)
                          + ". Nothing was undone; Edit or Delete it in the list.")
              .orElse("Another page deleted that exit since. Nothing was undone."));
    }
    return number;
  }

  /** What was taken back, a sentence. */
  static String undone(History.Change done) {
    Map<String, String> cells = done.row().cells();
    return "Undone: "
        + (cells.containsKey(TagSheet.WAY_OUT) ? "the exit at " : "what was at ")
        + cells.getOrDefault(TagSheet.CLOCK, "?")
        + (done.was().isEmpty()
            ? " is out again."
            : done.is().isEmpty() ? " is back." : " stands as it did before.");
  }

  private static TagRefusedException stale(String found, String expected, String toDo) {
    return TagRefusedException.stale(new FieldProblem("", found, expected, toDo));
  }

  /** A row in a few words: "P2 13:07, Herons, 8 Brandt, carry, opponent". */
  static String words(TagRow row) {
    Map<String, String> c = row.cells();
    String clock =
        "P" + c.getOrDefault(TagSheet.PERIOD, "?") + " " + c.getOrDefault(TagSheet.CLOCK, "?");
    return Stream.of(
            clock, c.get(TagSheet.TEAM), c.get("player"), c.get(TagSheet.WAY_OUT), c.get("ended"))
        .filter(Objects::nonNull)
        .collect(Collectors.joining(", "));
  }
}
