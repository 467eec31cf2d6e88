package twostrides.exits;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import tech.tablesaw.api.Table;

/**
 * Fifth stage: every draw in a team's own zone with its cause and the release behind it, if any. A
 * draw that followed the opponent's play is listed too; {@link Columns#OWN_LAST} tells them apart.
 */
final class RestartsStage {

  private RestartsStage() {}

  /** The restarts table's columns, in the order in which they are written out. */
  static Shape shape() {
    return Circumstances.declare(
            RulingsStage.declare(
                    new Shape("restarts")
                        .text(Columns.GAME, Columns.DATE)
                        .count(Columns.PERIOD)
                        .number(Columns.RESTART_ELAPSED_S)
                        .text(Columns.TEAM, Columns.OPPONENT)
                        .flag(Columns.OWN_LAST)
                        .text(Columns.RESTART_CAUSE, Columns.REASON))
                .count(Columns.RELEASE, Columns.EXIT)
                .number(Columns.RELEASE_ELAPSED_S)
                .text(Columns.PLAYER, Columns.STRENGTH)
                .number(Columns.RELEASE_X_M, Columns.RELEASE_Y_M, Columns.SHORT_OF_CENTER_M)
                .text(Columns.LINE_NOTE)
                .number(Columns.SECONDS_TO_NEXT_TOUCH)
                .text(Columns.WON_BY, Columns.FACEOFF_STRENGTH)
                .count(Endings.AGAINST)
                .number(Columns.SHIFT_S, Columns.STAY_S))
        .number(Columns.VIDEO_S)
        .text(Columns.SHEET)
        .count(Columns.LINE);
  }

  /**
   * Builds the restarts table.
   *
   * @param attempts the attempts table
   * @param releases the releases table, to name the release behind a restart
   * @param play the moves
   * @param circumstances what pages slice by
   */
  static Table run(Table attempts, Table releases, Play play, Circumstances circumstances) {
    StopFinder stops = new StopFinder(play);
    Endings endings = new Endings(play);
    RulingsStage rulings = new RulingsStage(play);
    Shifts shifts = new Shifts(play);
    int[] exitOfMove = ReleasesStage.exitOfMove(attempts, play);
    Map<String, Integer> releaseNumbers = releaseNumbers(releases);
    Shape.Filler out = shape().filler();
    for (Move draw : play.moves()) {
      if (draw.kind() != Move.Kind.FACEOFF || draw.x().isEmpty()) {
        continue;
      }
      String winner = draw.team().orElseThrow();
      String loser = play.opponent(draw);
      Optional<String> zone =
          play.surelyInOwnZone(draw, winner)
              ? Optional.of(winner)
              : play.surelyInOwnZone(draw, loser) ? Optional.of(loser) : Optional.empty();
      if (zone.isEmpty()) {
        continue;
      }
      String team = zone.get();
      OptionalInt lastIndex = play.lastControlBefore(draw);
      Optional<Move> last =
          lastIndex.isPresent()
              ? Optional.of(play.moves().get(lastIndex.getAsInt()))
              : Optional.empty();
      Optional<Move> own = last.filter(m -> m.by(team));
      StopFinder.Finding finding = stops.cause(team, draw);
      out.row()
          .text(Columns.GAME, draw.game())
          .text(Columns.DATE, play.game(draw).date().map(LocalDate::toString))
          .count(Columns.PERIOD, draw.period())
          .number(Columns.RESTART_ELAPSED_S, draw.elapsed())
          .text(Columns.TEAM, team)
          .text(Columns.OPPONENT, play.game(draw).opponentOf(team))
          .flag(Columns.OWN_LAST, last.map(m -> m.by(team)))
          .text(Columns.RESTART_CAUSE, finding.cause().label())
          .text(Columns.REASON, finding.reason());
      if (own.isPresent()) {
        Move m = own.get();
        behind(out, m, draw, play, exitOfMove, releaseNumbers);
        if (m.release()) {
          rulings.fill(out, m);
        } else {
          RulingsStage.fillWithoutRelease(out);
        }
      }
      out.text(Columns.WON_BY, winner.equals(team) ? "own" : "opponent")
          .text(Columns.FACEOFF_STRENGTH, draw.strength(team));
      endings.against(out, draw, team);
      shifts.fill(out, draw, team);
      circumstances.fill(out, own.orElse(draw), team);
      out.number(Columns.VIDEO_S, own.map(Move::video).orElse(draw.video()))
          .text(Columns.SHEET, draw.sheet())
          .count(Columns.LINE, draw.line());
    }
    return out.table();
  }

  private static void behind(
      Shape.Filler out,
      Move m,
      Move draw,
      Play play,
      int[] exitOfMove,
      Map<String, Integer> releaseNumbers) {
    int exit = exitOfMove[m.index()];
    Integer release = releaseNumbers.get(m.sheet() + "\n" + m.line());
    play.fillPlace(out, m);
    out.count(Columns.RELEASE, release == null ? OptionalInt.empty() : OptionalInt.of(release))
        .count(Columns.EXIT, exit > 0 ? OptionalInt.of(exit) : OptionalInt.empty())
        .number(Columns.RELEASE_ELAPSED_S, m.elapsed())
        .text(Columns.PLAYER, m.player())
        .number(Columns.SECONDS_TO_NEXT_TOUCH, draw.elapsed() - m.elapsed());
  }

  private static Map<String, Integer> releaseNumbers(Table releases) {
    Map<String, Integer> numbers = new HashMap<>();
    for (int i = 0; i < releases.rowCount(); i++) {
      numbers.put(
          releases.stringColumn(Columns.SHEET).get(i)
              + "\n"
              + releases.intColumn(Columns.LINE).getInt(i),
          releases.intColumn(Columns.RELEASE).getInt(i));
    }
    return numbers;
  }
}
