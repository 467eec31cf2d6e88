package twostrides.cli;

import java.util.ArrayList;
import java.util.List;
import twostrides.rink.Place;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.Problem;
import twostrides.tracking.GameOutline;
import twostrides.tracking.Sync;
import twostrides.tracking.Tracks;

/**
 * What the tracking of one game says of its releases, the tracks forgotten.
 *
 * @param rowsUsed rows of its sheets that were used
 * @param rowsSetAside rows that were not
 * @param setAside those of them that are kept in their own words
 * @param doubts clocks and skaters that are doubtful
 * @param matches the skaters at its releases, in their order
 * @param places where the players who let go were seen
 */
record TrackedGameKept(
    int rowsUsed,
    int rowsSetAside,
    List<DoubtfulRow> setAside,
    List<Problem> doubts,
    List<ReleaseMatch> matches,
    List<Seen> places) {

  /**
   * A player who lets a puck go.
   *
   * @param sheet where the play sheet has the puck
   * @param here where he was seen, in the same frame
   */
  record Seen(Place sheet, Place here) {}

  /** Copies the lists. */
  TrackedGameKept {
    setAside = List.copyOf(setAside);
    doubts = List.copyOf(doubts);
    matches = List.copyOf(matches);
    places = List.copyOf(places);
  }

  /**
   * Looks up the releases of a game.
   *
   * @param game the game
   * @param tracks its tracks
   * @param sync what its sync sheets say
   */
  static TrackedGameKept of(GameOutline game, Tracks tracks, Sync sync) {
    List<Seen> places = new ArrayList<>();
    ReleaseMatcher matcher =
        new ReleaseMatcher(
            game, tracks, tracks.clock(sync), (puck, here) -> places.add(new Seen(puck, here)));
    List<Problem> doubts = new ArrayList<>(matcher.doubts());
    List<ReleaseMatch> matches = new ArrayList<>();
    for (GameOutline.LetGo release : game.releases()) {
      ReleaseMatch match = matcher.match(release);
      matches.add(match);
      if (match instanceof ReleaseMatch.Found f) {
        doubts.addAll(f.doubts());
      }
    }
    return new TrackedGameKept(
        tracks.rowsUsed(),
        tracks.rowsSetAside(),
        tracks.setAside().stream().map(DoubtfulRow::withoutCells).toList(),
        doubts,
        matches,
        places);
  }
}
