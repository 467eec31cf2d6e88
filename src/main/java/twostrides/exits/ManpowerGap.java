package twostrides.exits;

import twostrides.game.Strength;

/**
 * A run of rows of one team on which manpower columns and penalty rows disagree alike.
 *
 * @param from when it begins, and its first line
 * @param team the acting team
 * @param rows how many rows
 * @param lastLine its last line
 * @param byColumns skaters of the acting team on those of the other, by the manpower columns
 * @param byPenalties the same by the penalty rows
 * @param used the strength that was used
 * @param reason the penalties that count, in words
 */
public record ManpowerGap(
    When from,
    String team,
    int rows,
    int lastLine,
    String byColumns,
    String byPenalties,
    Strength used,
    String reason) {}
