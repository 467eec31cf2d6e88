package twostrides.exits;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How long the skaters at a draw or release had been on the ice, and how long they stayed, from the
 * lists of players on the ice. A shift is followed row by row within its period; a row that lists
 * nobody says nothing. The times are play, not rest: a shift that began before the period counts
 * from the period's start.
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
    out.number(Columns.SHIFT_S, seconds(draw, team, -1))
        .number(Columns.STAY_S, seconds(draw, team, 1));
  }

  /**
   * Fills the mean seconds before a release only.
   *
   * @param out the row under way
   * @param release the release
   * @param team whose skaters
   */
  void fillBefore(Shape.Filler out, Move release, String team) {
    out.number(Columns.SHIFT_S, seconds(release, team, -1));
  }

  private OptionalDouble seconds(Move at, String team, int step) {
    Optional<String> listed = at.onIce(team);
    if (listed.isEmpty()) {
      return OptionalDouble.empty();
    }
    return List.of(listed.get().split("; ", -1)).stream()
        .mapToDouble(s -> Math.abs(at.elapsed() - seen(at, team, s, step).elapsed()))
        .average();
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
