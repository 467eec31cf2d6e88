package twostrides.tracking;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import twostrides.sheet.Cell;
import twostrides.sheet.Problem;
import twostrides.sheet.Sheet;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetRow;

/** Which of the games that were read the rows of a sheet beside them speak of. */
final class GameOfRow {

  private final Sheet sheet;
  private final Set<String> games;
  private final Set<String> named;

  /**
   * For the rows of one sheet.
   *
   * @param sheet the sheet
   * @param games ids of the games that were read
   */
  GameOfRow(Sheet sheet, Set<String> games) {
    this.sheet = sheet;
    this.games = games;
    this.named =
        sheet.rows().stream()
            .flatMap(r -> r.cell(TrackForm.GAME).stream())
            .map(Cell::text)
            .collect(Collectors.toCollection(TreeSet::new));
  }

  /**
   * The id of a row's game; it may be that of a game that was not read.
   *
   * @param row a row of the sheet
   * @throws SheetException when the row names none and nothing else tells
   */
  String of(SheetRow row) throws SheetException {
    Optional<Cell> cell = row.cell(TrackForm.GAME);
    if (cell.isPresent()) {
      return cell.get().text();
    }
    Optional<String> fit =
        named.isEmpty()
            ? GamesNamed.ofNameless(sheet.file(), games)
            : named.stream().filter(n -> named.size() == 1).findFirst();
    if (fit.isEmpty()) {
      throw SheetException.atLine(
          row.file(),
          row.line(),
          "a row that names no game, "
              + (named.isEmpty()
                  ? "beside " + games.size() + " games"
                  : "in a sheet that names " + named.size() + " games"),
          "a game in every row, or a file name that begins with the id of one game",
          "Fill in the game, or give each game a sheet of its own.");
    }
    return fit.get();
  }

  /**
   * What is wrong about the id of a game that was not read.
   *
   * @param row a row of the sheet
   * @param id what it names
   */
  Problem unknown(SheetRow row, String id) {
    return new Problem(
        row.file(),
        row.line(),
        TrackForm.GAME,
        id,
        "the id of a game whose sheet is read, such as " + String.join(", ", like(id)),
        "Correct the game, or give the sheet of that game as well.");
  }

  /** Up to three ids to compare a wrong one with: those that begin like it longest. */
  private List<String> like(String id) {
    return games.stream()
        .sorted((a, b) -> Integer.compare(common(b, id), common(a, id)))
        .limit(3)
        .toList();
  }

  private static int common(String a, String b) {
    int n = 0;
    while (n < a.length() && n < b.length() && a.charAt(n) == b.charAt(n)) {
      n++;
    }
    return n;
  }
}
