package twostrides.demo;

import java.util.Optional;
import twostrides.rink.Place;

/**
 * How play goes on after a decision: somebody has the puck and decides, and the row that says so is
 * already written; or the puck is dropped.
 */
sealed interface Next permits Carrier, Next.Drop {

  /**
   * Play has stopped; the puck is dropped next.
   *
   * @param homeSpot the spot in the home team's frame, metres
   * @param zoneOf whose own zone the spot lies in, empty for the neutral zone
   * @param iced whether that side has iced the puck
   */
  record Drop(Place homeSpot, Optional<Side> zoneOf, boolean iced) implements Next {
    /** The same after an icing. */
    Drop afterIcing() {
      return new Drop(homeSpot, zoneOf, true);
    }
  }
}
