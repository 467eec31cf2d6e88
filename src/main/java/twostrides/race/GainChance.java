package twostrides.race;

/**
 * The chance of bringing the puck to the red line before a checker is there.
 *
 * @param chance mean over the draws, 0 to 1
 * @param error its simulation error: one standard error
 * @param seconds time that the straightest way with about this chance takes, mean over the draws, s
 * @param degrees direction of that way, from straight up ice, positive to the left
 */
public record GainChance(double chance, double error, double seconds, double degrees) {}
