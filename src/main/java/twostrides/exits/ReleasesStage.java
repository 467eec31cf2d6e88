package twostrides.exits;

import java.time.LocalDate;
import java.util.OptionalInt;
import tech.tablesaw.api.Table;

/**
 * Fourth stage: every release from behind the red line, also those of a spell that began in the
 * neutral zone. Exits say how a team leaves its zone; releases say what got it into the restart.
 */
final class ReleasesStage {

  /** The word for a pass that nobody received. */
  static final String MISSED_PASS = "missed_pass";

  private ReleasesStage() {}

  /** The releases table's columns, in the order in which they are written out. */
  static Shape shape() {
    return ChancesStage.declare(
            RulingsStage.declare(
                Circumstances.declare(
                    Endings.declare(
                        new Shape("releases")
                            .text(Columns.GAME, Columns.DATE)
                            .count(Columns.RELEASE, Columns.PERIOD)
                            .number(Columns.RELEASE_ELAPSED_S)
                            .text(Columns.TEAM, Columns.OPPONENT, Columns.PLAYER, Columns.KIND)
                            .count(Columns.EXIT)
                            .text(Columns.STRENGTH, Columns.NET_EMPTY)
                            .number(
                                Columns.RELEASE_X_M, Columns.RELEASE_Y_M, Columns.SHORT_OF_CENTER_M)
                            .text(Columns.LINE_NOTE)
                            .number(Columns.CARRIED_M)
                            .flag(Columns.SHOT, Columns.SCORED, Columns.MAY_BE_ICING)))))
        .number(Columns.VIDEO_S)
        .text(Columns.SHEET)
        .count(Columns.LINE);
  }

  /**
   * The word for a release's kind.
   *
   * @param release the release
   */
  static String kind(Move release) {
    return release.kind() == Move.Kind.MISSED_PASS ? MISSED_PASS : "sent";
  }

  /**
   * Builds the releases table.
   *
   * @param attempts the attempts table
   * @param play the moves
   * @param circumstances what pages slice by
   */
  static Table run(Table attempts, Play play, Circumstances circumstances) {
    Endings endings = new Endings(play);
    RulingsStage rulings = new RulingsStage(play);
    int[] exitOfMove = exitOfMove(attempts, play);
    Shape.Filler out = shape().filler();
    String game = "";
    int number = 0;
    for (Move m : play.moves()) {
      if (play.shortOfCenter(m).isEmpty()) {
        continue;
      }
      number = m.game().equals(game) ? number + 1 : 1;
      game = m.game();
      int exit = exitOfMove[m.index()];
      out.row()
          .text(Columns.GAME, game)
          .text(Columns.DATE, play.game(m).date().map(LocalDate::toString))
          .count(Columns.RELEASE, number)
          .count(Columns.PERIOD, m.period())
          .number(Columns.RELEASE_ELAPSED_S, m.elapsed())
          .text(Columns.TEAM, m.team())
          .text(Columns.OPPONENT, play.opponent(m))
          .text(Columns.PLAYER, m.player())
          .text(Columns.KIND, kind(m))
          .count(Columns.EXIT, exit > 0 ? OptionalInt.of(exit) : OptionalInt.empty())
          .text(Columns.NET_EMPTY, m.netEmpty());
      play.fillPlace(out, m);
      out.number(Columns.CARRIED_M, CarriedUpIce.metres(play, m))
          .flag(Columns.SHOT, m.shot())
          .flag(Columns.SCORED, m.goal())
          .flag(Columns.MAY_BE_ICING, rulings.mayBeIcing(m));
      endings.fill(out, m, Endings.Owner.RELEASE);
      circumstances.fill(out, m, m.team().orElseThrow());
      rulings.fill(out, m);
      out.number(Columns.VIDEO_S, m.video())
          .text(Columns.SHEET, m.sheet())
          .count(Columns.LINE, m.line());
    }
    return out.table();
  }

  /** The exit attempt that each move belongs to, 0 for none. */
  static int[] exitOfMove(Table attempts, Play play) {
    int[] exit = new int[play.moves().size()];
    for (int i = 0; i < attempts.rowCount(); i++) {
      int from = attempts.intColumn(AttemptsStage.START_MOVE).getInt(i);
      int to = attempts.intColumn(AttemptsStage.LAST_MOVE).getInt(i);
      for (int m = from; m <= to; m++) {
        exit[m] = attempts.intColumn(Columns.EXIT).getInt(i);
      }
    }
    return exit;
  }
}
