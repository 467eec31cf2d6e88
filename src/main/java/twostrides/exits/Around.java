package twostrides.exits;

import java.util.List;
import twostrides.race.Sighting;

/**
 * The skaters seen at a release, in the frame of the team that let the puck go.
 *
 * @param carrier who let it go, at the release's place
 * @param others the others who were seen, of both teams
 * @param note how their places were found or what is doubtful about them, a phrase; else empty
 */
public record Around(Sighting carrier, List<Sighting> others, String note) {
  /** Copies the skaters. */
  public Around {
    others = List.copyOf(others);
  }
}
