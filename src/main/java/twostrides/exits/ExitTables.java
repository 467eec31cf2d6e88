package twostrides.exits;

import tech.tablesaw.api.Table;

/**
 * What the pipeline makes of a season; columns as named in {@link Columns}.
 *
 * @param exits one row an exit attempt
 * @param releases one row a release short of center
 * @param restarts one row a draw in a team's own zone
 * @param rulings one row a release short of center and other book asked
 * @param flags one row a release that an own-zone restart followed, flagged or not
 * @param manpower one row for each run of sheet rows on which manpower columns and penalty rows
 *     disagree
 * @param manpowerCompared rows that have both
 * @param kills one row a stretch in which a team of a play sheet is shorthanded
 * @param costs what gaining center, restarts and lost pucks cost in the play sheets
 * @param players counts per player, way out, mark at center and strength
 */
public record ExitTables(
    Table exits,
    Table releases,
    Table restarts,
    Table rulings,
    Table flags,
    Table manpower,
    int manpowerCompared,
    Table kills,
    Costs costs,
    Table players) {}
