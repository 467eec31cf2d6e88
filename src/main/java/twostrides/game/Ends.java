package twostrides.game;

import java.util.List;
import java.util.Optional;
import twostrides.rink.Zone;

/**
 * Which way a game's sheet runs when its places are fixed to the rink and its map does not say
 * which end is whose: teams change ends each period, and shots are taken at the end that a team
 * attacks. Rows are read as if the home team attacked +x in odd periods; where the shots say the
 * opposite, the whole game is turned.
 */
final class Ends {

  /** Shots that it takes to tell. Assumed. */
  private static final int LEAST_SHOTS = 10;

  /** Least share of the shots taken at one end. Assumed; in real games it is above 0.9. */
  private static final double LEAST_SHARE = 0.75;

  private Ends() {}

  /** What the shots say. */
  enum Finding {
    AS_READ,
    TURNED,
    UNKNOWN
  }

  /**
   * Looks at the shots of a game.
   *
   * @param rows its rows, read with the home team attacking +x in odd periods
   */
  static Finding of(List<PlayRow> rows) {
    if (rows.stream().allMatch(r -> far(r).isEmpty())) {
      return Finding.AS_READ;
    }
    int shots = 0;
    int ahead = 0;
    for (PlayRow r : rows) {
      if (r.action() == Action.SHOT && far(r).isPresent()) {
        shots++;
        ahead += far(r).get() ? 1 : 0;
      }
    }
    if (shots < LEAST_SHOTS || Math.max(ahead, shots - ahead) < LEAST_SHARE * shots) {
      return Finding.UNKNOWN;
    }
    return 2 * ahead >= shots ? Finding.AS_READ : Finding.TURNED;
  }

  /** Whether a row's place or zone lies in the half that its team attacks; empty without. */
  private static Optional<Boolean> far(PlayRow r) {
    return r.place()
        .map(p -> p.x() > 0)
        .or(() -> r.zone().filter(z -> z != Zone.NEUTRAL).map(z -> z == Zone.ATTACKING));
  }
}
