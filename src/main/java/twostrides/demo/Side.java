package twostrides.demo;

import twostrides.rink.Place;

/** One of the two teams of a game. */
enum Side {
  HOME,
  AWAY;

  Side other() {
    return this == HOME ? AWAY : HOME;
  }

  /**
   * A place of this side's frame in the home team's frame, or the other way round: half a turn is
   * its own inverse.
   */
  Place homeFrame(Place at) {
    return this == HOME ? at : at.seenByOpponent();
  }
}
