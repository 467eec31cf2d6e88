package twostrides.findings;

import java.util.List;
import java.util.Optional;
import twostrides.exits.Release;
import twostrides.stats.AdjustedRate;

/**
 * One player of the season.
 *
 * @param number running number, from 1, used for file names
 * @param team the player's team
 * @param player the name as shown
 * @param profile how the player leaves the zone
 * @param iced how often the player's releases short of center are iced, all ways out together,
 *     adjusted by all players of the sheets; empty without a release, and with too few players
 * @param releases the player's releases short of center, in the order of play
 * @param worked the hardest moment that worked
 * @param talk two moments to talk about at most, the worst first
 */
public record PlayerReview(
    int number,
    String team,
    String player,
    Profile profile,
    Optional<AdjustedRate> iced,
    List<Release> releases,
    List<Moment> worked,
    List<Moment> talk) {

  /** Copies the lists. */
  public PlayerReview {
    releases = List.copyOf(releases);
    worked = List.copyOf(worked);
    talk = List.copyOf(talk);
  }
}
