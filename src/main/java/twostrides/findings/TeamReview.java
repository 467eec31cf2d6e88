package twostrides.findings;

/**
 * One team of the season.
 *
 * @param number running number, from 1, used for file names
 * @param team its name
 * @param games games in the sheets
 * @param icings icings against it, written and inferred
 * @param profile how it leaves its zone
 */
public record TeamReview(int number, String team, int games, int icings, Profile profile) {}
