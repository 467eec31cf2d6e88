package twostrides.demo;

import java.util.Optional;
import java.util.function.Function;
import twostrides.rink.Place;

/** How play goes on after a decision: somebody has the puck, or the puck is dropped. */
sealed interface Next {

  /** Goes on, one way for each case. */
  Next then(Function<Carrier, Next> withPuck, Function<Drop, Next> atFaceOff);

  /** A player has the puck and decides; the row that says so is already written. */
  record Held(Carrier carrier) implements Next {
    @Override
    public Next then(Function<Carrier, Next> withPuck, Function<Drop, Next> atFaceOff) {
      return withPuck.apply(carrier);
    }
  }

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

    @Override
    public Next then(Function<Carrier, Next> withPuck, Function<Drop, Next> atFaceOff) {
      return atFaceOff.apply(this);
    }
  }
}
