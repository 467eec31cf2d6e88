package twostrides.exits;

import java.util.Optional;
import java.util.OptionalDouble;

/** How far the player who lets the puck go had brought it up ice since he got it. */
final class CarriedUpIce {

  private CarriedUpIce() {}

  /**
   * Metres up ice from the first of the same player's touches in a row to the release; 0 where the
   * sheet has no touch of his before it, negative where he went back.
   *
   * @param play the moves
   * @param release a release with a place
   */
  static double metres(Play play, Move release) {
    double x = release.x().orElseThrow();
    double from = x;
    for (int i = release.index() - 1; i >= 0; i--) {
      Move m = play.moves().get(i);
      if (!m.samePlay(release) || !m.control() || !his(m, release)) {
        break;
      }
      OptionalDouble there = m.x(release.team().orElseThrow());
      from = there.orElse(from);
    }
    return x - from;
  }

  private static boolean his(Move m, Move release) {
    Optional<String> player = m.player();
    return player.isPresent() && player.equals(release.player()) && m.team().equals(release.team());
  }
}
