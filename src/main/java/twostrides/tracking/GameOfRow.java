package twostrides.tracking;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
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
   * Hands every row to those who know its game, or the reason why nobody does.
   *
   * @param known takes a row and the id of its game
   * @param unknown takes a row of a game that was not read, and what is wrong with it
   * @throws SheetException when a row names no game and nothing else tells
   */
  void each(BiConsumer<SheetRow, String> known, BiConsumer<SheetRow, List<Problem>> unknown)
      throws SheetException {
    for (SheetRow row : sheet.rows()) {
      String id = of(row);
      if (games.contains(id)) {
        known.accept(row, id);
      } else {
        unknown.accept(row, List.of(unknown(row, id)));
      }
    }
  }

  /**
   * The id of a row's game; it may be that of a game that was not read.
   *
   * @param row a row of the sheet
   * @throws SheetException when the row names none and nothing else tells
   */
  private String of(SheetRow row) throws SheetException {
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
  private Problem unknown(SheetRow row, String id) {
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
        .sorted(Comparator.comparingInt(game -> -common(game, id)))
        .limit(3)
        .toList();
  }

  private static int common(String a, String b) {
    int n = Arrays.mismatch(a.toCharArray(), b.toCharArray());
    return n < 0 ? a.length() : n;
  }
}
