package twostrides.exits;

import java.util.List;
import twostrides.game.OnIce;
import twostrides.race.Racer;
import twostrides.race.Sighting;
import twostrides.rink.Place;

/**
 * The skaters seen at a release, in the frame of the team that let the puck go.
 *
 * @param carrier who let it go, at the release's place
 * @param others the others who were seen, of both teams
 * @param placeError standard error of a place along and across, metres, where places were clicked;
 *     0 otherwise
 * @param note how their places were found or what is doubtful about them, a phrase; else empty
 */
public record Around(Sighting carrier, List<Sighting> others, double placeError, String note) {
  /** Copies the skaters. */
  public Around {
    others = List.copyOf(others);
  }

  /**
   * A skater whose place was written down.
   *
   * @param s the skater
   * @param at where he is taken to be
   */
  public static Sighting sighting(OnIce s, Place at) {
    return new Sighting(new Racer(s.own(), at.x(), at.y(), s.vx(), s.vy()), s.speedKnown());
  }
}
