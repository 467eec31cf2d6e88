package twostrides.book;

import twostrides.findings.PlayerReview;
import twostrides.findings.PlayerSheet;

/**
 * A player's sheet with its map.
 *
 * @param player the player
 * @param numbers what the sheet says
 * @param map pucks sent before the red line
 * @param better whether the habit changes, in words
 */
public record SheetCard(PlayerReview player, PlayerSheet numbers, String map, String better) {}
