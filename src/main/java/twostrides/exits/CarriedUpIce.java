package twostrides.exits;

import java.util.List;
import java.util.Optional;

/** How far the player who lets the puck go had brought it up ice since he got it. */
final class CarriedUpIce {

  private CarriedUpIce() {}

  /**
   * Metres up ice from the first of the same player's touches in a row to the release; 0 where the
   * sheet has no touch of his before it, negative where he went back.
   *
   * @param timeline the game
   * @param release a release with a place
   */
  static double metres(PuckTimeline timeline, PuckEvent release) {
    double x = release.x().orElseThrow();
    double from = x;
    List<PuckEvent> before = timeline.before(release);
    for (int i = before.size() - 1; i >= 0; i--) {
      PuckEvent e = before.get(i);
      if (!e.control() || !his(e, release)) {
        break;
      }
      from = e.x(release.team().orElseThrow()).orElse(from);
    }
    return x - from;
  }

  private static boolean his(PuckEvent e, PuckEvent release) {
    Optional<String> player = e.player();
    return player.isPresent() && player.equals(release.player()) && e.team().equals(release.team());
  }
}
