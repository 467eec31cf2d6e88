package twostrides.findings;

/**
 * The numbers on a player's sheet for a meeting.
 *
 * @param games games in which the player tried to leave the zone or let the puck go short of center
 * @param advice what to tell the player, tied to its numbers
 * @param ways ways out in few lines: each way, then all of them, shorthanded, on the power play
 * @param habit releasing short of center over the season
 */
public record PlayerSheet(int games, Advice advice, Grid ways, Habit habit) {}
