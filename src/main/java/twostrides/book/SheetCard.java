package twostrides.book;

import twostrides.findings.PlayerReview;
import twostrides.findings.PlayerSheet;

/**
 * A player's sheet with its drawings.
 *
 * @param player the player
 * @param numbers what the sheet says
 * @param map releases short of center
 * @param habit the habit over the season
 */
public record SheetCard(PlayerReview player, PlayerSheet numbers, String map, String habit) {}
