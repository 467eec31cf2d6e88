package twostrides.exits;

import java.util.List;
import java.util.Optional;

/**
 * How long the skaters at a draw had been on the ice and how long they stayed, from the lists of
 * players on the ice. A shift is followed row by row within its period; a row that lists nobody
 * says nothing. The times are play, not rest: a shift that began before the period counts from the
 * period's start.
 */
final class Shifts {

  private final Play play;

  Shifts(Play play) {
    this.play = play;
  }

  /**
   * Fills the mean seconds before and after the draw; nothing where the draw's row lists nobody.
   *
   * @param out the row under way
   * @param draw the draw
   * @param team whose skaters
   */
  void fill(Shape.Filler out, Move draw, String team) {
    Optional<String> listed = draw.onIce(team);
    if (listed.isEmpty()) {
      return;
    }
    List<String> skaters = List.of(listed.get().split("; ", -1));
    double before = 0;
    double after = 0;
    for (String s : skaters) {
      before += draw.elapsed() - seen(draw, team, s, -1).elapsed();
      after += seen(draw, team, s, 1).elapsed() - draw.elapsed();
    }
    out.number(Columns.SHIFT_S, before / skaters.size())
        .number(Columns.STAY_S, after / skaters.size());
  }

  /** The farthest move of the shift in one direction. */
  private Move seen(Move draw, String team, String skater, int step) {
    Move last = draw;
    for (int i = draw.index() + step; i >= 0 && i < play.moves().size(); i += step) {
      Move m = play.moves().get(i);
      if (!m.samePlay(draw)) {
        break;
      }
      Optional<String> listed = m.onIce(team);
      if (listed.isPresent()) {
        if (!List.of(listed.get().split("; ", -1)).contains(skater)) {
          break;
        }
        last = m;
      }
    }
    return last;
  }
}
