package twostrides.tracking;

import java.util.OptionalInt;
import twostrides.rink.Place;

/**
 * A skater seen at an instant.
 *
 * @param home whether of the home team
 * @param number number on the jersey, where it was read
 * @param place place in metres: between the rows before and after, or the nearest row's
 * @param motion how it moves; never {@link Motion.TooFast}, such a skater is not used
 * @param track id of the track
 */
public record SeenSkater(
    boolean home, OptionalInt number, Place place, Motion motion, String track) {

  /** The same skater in the other team's frame. */
  SeenSkater seenByOpponent() {
    Motion turned = motion instanceof Motion.Moving m ? m.seenByOpponent() : motion;
    return new SeenSkater(home, number, place.seenByOpponent(), turned, track);
  }
}
