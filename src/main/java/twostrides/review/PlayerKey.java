package twostrides.review;

/**
 * Players count by team and name; a row whose player the sheet does not name counts for the team
 * only.
 */
record PlayerKey(String team, String player) {}
