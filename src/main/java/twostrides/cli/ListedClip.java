package twostrides.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetRow;

/**
 * A clip of a written list.
 *
 * @param line its line
 * @param game game id
 * @param start second of the video
 * @param end second of the video, after the start
 * @param title what is to be seen
 */
record ListedClip(long line, String game, double start, double end, String title) {

  /**
   * Reads a list.
   *
   * @throws SheetException when it holds no clip, or a row that cannot be cut
   */
  static List<ListedClip> read(Path list) throws SheetException {
    List<ListedClip> clips = new ArrayList<>();
    for (SheetRow row : SmallSheet.read(list, "clips", "game", "start_s", "end_s", "title")) {
      double start = SmallSheet.number(row, "start_s");
      double end = SmallSheet.number(row, "end_s");
      if (end <= start) {
        throw SheetException.atLine(
            row.file(),
            row.line(),
            "start_s " + start + ", end_s " + end,
            "an end after the start",
            "Correct the row.");
      }
      clips.add(
          new ListedClip(
              row.line(),
              SmallSheet.words(row, "game"),
              start,
              end,
              SmallSheet.words(row, "title")));
    }
    if (clips.isEmpty()) {
      throw SheetException.ofFile(
          list.toString(), "no clip", "a row a clip", "Save a list with clips.");
    }
    return clips;
  }
}
