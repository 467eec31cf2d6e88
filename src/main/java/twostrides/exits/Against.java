package twostrides.exits;

/**
 * Shots and goals after a release or face-off, in games whose sheet writes shots.
 *
 * @param attempts shot attempts of the opponent within the window
 * @param goals goals of the opponent within the window
 * @param attemptsLong attempts within the longer window
 * @param goalsLong goals within the longer window
 * @param goalsFor own goals within the window
 */
public record Against(int attempts, int goals, int attemptsLong, int goalsLong, int goalsFor) {}
