package twostrides.exits;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import twostrides.game.OnIce;
import twostrides.game.PlayRow;
import twostrides.game.VideoFrame;
import twostrides.race.Racer;
import twostrides.race.Sighting;
import twostrides.rink.Place;

/**
 * The skaters seen at a release, in the frame of the team that let the puck go.
 *
 * @param carrier who let it go, at the release's place
 * @param others the others who were seen, of both teams
 * @param note how their places were found or what is doubtful about them, a phrase; else empty
 * @param frame where in tracking sheets they stand, where those count frames
 */
public record Around(
    Sighting carrier, List<Sighting> others, String note, Optional<VideoFrame> frame) {
  /**
   * An own skater this near the puck is who has it, metres. Assumed: in three tracked games (open
   * data) the nearest own skater was that near at 330 of 345 releases short of center, within 1.5 m
   * at 243.
   */
  private static final double HAS_IT = 2.5;

  /** Copies the skaters. */
  public Around {
    others = List.copyOf(others);
  }

  /** The same without the others. */
  Around carrierAlone() {
    return new Around(carrier, List.of(), note, frame);
  }

  /**
   * A skater whose place was written down.
   *
   * @param s the skater
   * @param at where he is taken to be
   * @param clickError standard error of that place each way, metres, where it was clicked; 0
   *     otherwise
   */
  public static Sighting sighting(OnIce s, Place at, double clickError) {
    Racer racer = new Racer(s.own(), at.x(), at.y(), s.vx(), s.vy());
    return new Sighting(racer, s.speedKnown(), clickError);
  }

  /** The skaters whose places the row of a play sheet itself writes down. */
  static Optional<Around> of(PlayRow row) {
    if (row.skaters().isEmpty() || row.place().isEmpty()) {
      return Optional.empty();
    }
    Place puck = row.place().get();
    Optional<OnIce> carrier = Optional.empty();
    for (OnIce s : row.skaters()) {
      double apart = s.place().distanceTo(puck);
      boolean nearer = carrier.map(c -> apart < c.place().distanceTo(puck)).orElse(apart <= HAS_IT);
      carrier = s.own() && nearer ? Optional.of(s) : carrier;
    }
    List<Sighting> others = new ArrayList<>();
    for (OnIce s : row.skaters()) {
      if (!Optional.of(s).equals(carrier)) {
        others.add(sighting(s, s.place(), 0));
      }
    }
    return Optional.of(
        new Around(
            carrier
                .map(c -> sighting(c, puck, 0))
                .orElseGet(() -> new Sighting(new Racer(true, puck.x(), puck.y(), 0, 0), false)),
            others,
            "places from the play sheet",
            Optional.empty()));
  }
}
