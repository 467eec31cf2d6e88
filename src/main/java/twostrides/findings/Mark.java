package twostrides.findings;

import twostrides.exits.Release;
import twostrides.rink.Place;

/**
 * A release short of center on the rink.
 *
 * @param place where, metres, in the frame of the team that let it go
 * @param outcome what came of it
 */
public record Mark(Place place, MarkOutcome outcome) {

  static Mark of(Release r) {
    return new Mark(r.at().where().place().orElseThrow(), MarkOutcome.of(r.outcome()));
  }
}
