package twostrides.exits;

import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.rink.Rink;

/**
 * The circumstances of a release or a draw: what pages slice by. One reading for exits, releases
 * and restarts alike.
 */
final class Circumstances {

  private static final String LEFT = "left";
  private static final String MIDDLE = "middle";
  private static final String RIGHT = "right";

  private final Play play;
  private final Standing standing;

  Circumstances(Play play, Standing standing) {
    this.play = play;
    this.standing = standing;
  }

  /** The columns this class fills, in order. */
  static Shape declare(Shape shape) {
    return shape
        .text(Columns.VENUE)
        .count(Columns.GOALS_AHEAD)
        .text(Columns.PRESSURE, Columns.SIDE, Columns.ON_ICE)
        .number(Columns.SINCE_SHORTHANDED_S)
        .count(Columns.KILL);
  }

  /**
   * Fills the columns of the row under way.
   *
   * @param out the row
   * @param at the release or touch that the row is about, or the draw where there is none
   * @param team the row's team
   */
  void fill(Shape.Filler out, Move at, String team) {
    boolean acts = at.by(team);
    out.text(Columns.VENUE, play.game(at).venueOf(team))
        .count(Columns.GOALS_AHEAD, standing.goalsAhead(at, team))
        .text(Columns.PRESSURE, acts ? at.pressure() : Optional.empty())
        .text(Columns.SIDE, acts ? side(at.y(), play.rink(at)) : Optional.empty())
        .text(Columns.ON_ICE, at.onIce(team))
        .number(Columns.SINCE_SHORTHANDED_S, standing.sinceShorthanded(at, team))
        .count(Columns.KILL, standing.kill(at, team));
  }

  /**
   * The third of the rink's width, facing the attack. On the line between two thirds counts as
   * middle.
   *
   * @param y metres from the long axis, positive to the left
   * @param rink the rink
   */
  static Optional<String> side(OptionalDouble y, Rink rink) {
    if (y.isEmpty()) {
      return Optional.empty();
    }
    double third = rink.width() / 6;
    double at = y.getAsDouble();
    return Optional.of(at > third ? LEFT : at < -third ? RIGHT : MIDDLE);
  }
}
