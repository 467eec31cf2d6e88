package twostrides.exits;

import java.time.LocalDate;
import tech.tablesaw.api.Table;

/**
 * Third stage: attempts and moves become the exits table: each attempt with its release and how it
 * ended.
 */
final class ExitsStage {

  private ExitsStage() {}

  /** The exits table's columns, in the order in which they are written out. */
  static Shape shape() {
    return Circumstances.declare(
            Endings.declare(
                new Shape("exits")
                    .text(Columns.GAME, Columns.DATE)
                    .count(Columns.EXIT, Columns.PERIOD)
                    .number(Columns.ELAPSED_S, Columns.RELEASE_ELAPSED_S)
                    .text(Columns.TEAM, Columns.OPPONENT, Columns.PLAYER, Columns.RELEASE_PLAYER)
                    .text(Columns.WAY_OUT, Columns.AT_CENTER, Columns.STRENGTH, Columns.NET_EMPTY)
                    .number(Columns.RELEASE_X_M, Columns.RELEASE_Y_M, Columns.SHORT_OF_CENTER_M)
                    .text(Columns.LINE_NOTE)))
        .number(Columns.SHIFT_S, Columns.VIDEO_S)
        .text(Columns.SHEET)
        .count(Columns.LINE);
  }

  /**
   * Builds the exits table.
   *
   * @param attempts the attempts table
   * @param play the moves
   * @param circumstances what pages slice by
   */
  static Table run(Table attempts, Play play, Circumstances circumstances) {
    Endings endings = new Endings(play);
    Shifts shifts = new Shifts(play);
    Shape.Filler out = shape().filler();
    for (int i = 0; i < attempts.rowCount(); i++) {
      Move start = play.moves().get(attempts.intColumn(AttemptsStage.START_MOVE).getInt(i));
      Move release = play.moves().get(attempts.intColumn(AttemptsStage.RELEASE_MOVE).getInt(i));
      out.row()
          .text(Columns.GAME, start.game())
          .text(Columns.DATE, play.game(start).date().map(LocalDate::toString))
          .count(Columns.EXIT, attempts.intColumn(Columns.EXIT).getInt(i))
          .count(Columns.PERIOD, start.period())
          .number(Columns.ELAPSED_S, start.elapsed())
          .number(Columns.RELEASE_ELAPSED_S, release.elapsed())
          .text(Columns.TEAM, start.team())
          .text(Columns.OPPONENT, play.opponent(start))
          .text(Columns.PLAYER, Cells.text(attempts, Columns.PLAYER, i))
          .text(Columns.RELEASE_PLAYER, release.player())
          .text(Columns.WAY_OUT, Cells.text(attempts, Columns.WAY_OUT, i))
          .text(Columns.AT_CENTER, Cells.text(attempts, Columns.AT_CENTER, i))
          .text(Columns.NET_EMPTY, release.netEmpty());
      play.fillPlace(out, release);
      endings.fill(out, release, Endings.Owner.ATTEMPT);
      circumstances.fill(out, release, start.team().orElseThrow());
      shifts.fillBefore(out, release, start.team().orElseThrow());
      out.number(Columns.VIDEO_S, release.video())
          .text(Columns.SHEET, release.sheet())
          .count(Columns.LINE, release.line());
    }
    return out.table();
  }
}
