package twostrides.tracking;

import twostrides.rink.Place;
import twostrides.sheet.Problem;

/** What a {@link Smoother} says of a skater at an instant. */
public sealed interface Motion {
  /**
   * A velocity.
   *
   * @param place fitted place in metres
   * @param vx metres a second along the rink
   * @param vy metres a second across the rink
   * @param standardError standard error of either part of the velocity, and so of the speed where
   *     that is well above it, in m/s. From the scatter about the fit, as if rows erred
   *     independently: errors that last for several frames, as a camera's do, are not in it
   * @param frames rows in the fit
   */
  record Moving(Place place, double vx, double vy, double standardError, int frames)
      implements Motion {
    /** Metres a second. */
    public double speed() {
      return Math.hypot(vx, vy);
    }

    /** The same motion in the other team's frame. */
    Moving seenByOpponent() {
      return new Moving(place.seenByOpponent(), -vx + 0.0, -vy + 0.0, standardError, frames);
    }
  }

  /**
   * No speed can be told.
   *
   * @param reason why, a phrase
   */
  record NoSpeed(String reason) implements Motion {}

  /**
   * Faster than a skater can be: a wrong track. Not to be used, and never cut down to the limit.
   *
   * @param speed the speed that the fit gave, in m/s
   * @param doubt where it stands in the sheet
   */
  record TooFast(double speed, Problem doubt) implements Motion {}
}
