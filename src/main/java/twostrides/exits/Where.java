package twostrides.exits;

import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.rink.Lane;
import twostrides.rink.Place;
import twostrides.rink.Rink;

/**
 * Where a puck was let go, or last touched.
 *
 * @param place place, metres, acting team's frame, where the sheet has it
 * @param shortOfCenter metres from the puck to the near edge of the red line, for a puck let go
 *     before it touched the line
 * @param lineNote which line the sheet's step cannot put the place on one side of
 */
public record Where(
    Optional<Place> place, OptionalDouble shortOfCenter, Optional<String> lineNote) {

  /** Shares the words. */
  public Where {
    lineNote = Shared.of(lineNote);
  }

  /** Not in the sheet, or not this team's puck. */
  static final Where UNKNOWN =
      new Where(Optional.empty(), OptionalDouble.empty(), Optional.empty());

  static Where of(PuckTimeline timeline, PuckEvent e) {
    return new Where(
        e.place(),
        timeline.shortOfCenter(e),
        e.place().flatMap(p -> lineNote(p, timeline.rink(), timeline.game().placeStep())));
  }

  /** A place within half a step of the red line or of the own blue line. */
  private static Optional<String> lineNote(Place place, Rink rink, double step) {
    double x = place.x();
    double slack = step / 2 + 1e-9;
    if (Math.abs(x) <= rink.redLineHalfWidth() + slack) {
      return Optional.of("on the red line");
    }
    double outer = -rink.blueLineNeutralEdge();
    if (x <= outer + slack && x >= outer - rink.blueLineWidth() - slack) {
      return Optional.of("on the blue line");
    }
    return Optional.empty();
  }

  /**
   * In which lane.
   *
   * @param rink the rink
   */
  public Optional<Lane> lane(Rink rink) {
    return place.map(p -> rink.lane(p.y()));
  }
}
