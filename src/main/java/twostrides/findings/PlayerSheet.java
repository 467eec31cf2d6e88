package twostrides.findings;

/**
 * The numbers on a player's sheet for a meeting.
 *
 * @param games games in which the player tried to leave the zone or let the puck go short of center
 * @param advice what to tell the player, tied to its numbers
 * @param ways the ways out that the player used, then all of them
 */
public record PlayerSheet(int games, Advice advice, Grid ways) {}
