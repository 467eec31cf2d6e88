package twostrides.review;

import java.util.List;

/**
 * One player of the season.
 *
 * @param number running number, from 1, used for file names
 * @param team the player's team
 * @param player the name as shown
 * @param profile how the player leaves the zone
 * @param releases the player's releases short of center, in the order of play
 * @param worked three moments that worked at most, the hardest first
 * @param talk three moments to talk about at most, the worst first
 */
public record PlayerReview(
    int number,
    String team,
    String player,
    Profile profile,
    List<ReleaseLine> releases,
    List<Moment> worked,
    List<Moment> talk) {

  /** Copies the lists. */
  public PlayerReview {
    releases = List.copyOf(releases);
    worked = List.copyOf(worked);
    talk = List.copyOf(talk);
  }
}
