package twostrides.exits;

import java.util.List;
import twostrides.game.Fixture;

/**
 * What one game gives: records that hold each other.
 *
 * @param game the game
 * @param exits its exit attempts, in the order of play
 * @param releases its releases short of center
 * @param restarts its face-offs in a team's own zone
 * @param kills its penalty kills, the home team's first
 * @param gaps where manpower columns and penalty rows disagree
 * @param manpowerCompared rows that have both
 * @param carries how carriers behind the red line fared
 */
public record GameRecords(
    Fixture game,
    List<Exit> exits,
    List<Release> releases,
    List<Restart> restarts,
    List<Kill> kills,
    List<ManpowerGap> gaps,
    int manpowerCompared,
    Carries carries) {

  /** Copies the lists. */
  public GameRecords {
    exits = List.copyOf(exits);
    releases = List.copyOf(releases);
    restarts = List.copyOf(restarts);
    kills = List.copyOf(kills);
    gaps = List.copyOf(gaps);
  }
}
