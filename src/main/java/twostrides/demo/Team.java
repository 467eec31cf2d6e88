package twostrides.demo;

import java.util.List;

/**
 * A team of the invented league.
 *
 * @param code three letters
 * @param name full name
 * @param forwards twelve, by line, the center first
 * @param defenders six, by pair
 * @param goalkeeper who plays in goal
 */
record Team(
    String code, String name, List<Skater> forwards, List<Skater> defenders, Skater goalkeeper) {

  static final int FORWARDS = 12;
  static final int DEFENDERS = 6;

  Team {
    forwards = List.copyOf(forwards);
    defenders = List.copyOf(defenders);
    if (forwards.size() != FORWARDS || defenders.size() != DEFENDERS) {
      throw new IllegalArgumentException("a team needs 12 forwards and 6 defenders: " + name);
    }
  }
}
