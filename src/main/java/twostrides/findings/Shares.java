package twostrides.findings;

import java.util.List;
import java.util.Optional;
import twostrides.exits.AtCenter;
import twostrides.exits.WayOut;
import twostrides.game.Strength;
import twostrides.season.Columns;
import twostrides.season.Rows;
import twostrides.season.Season;
import twostrides.stats.Count;

/** The shares that the book counts, of rows of the season's tables. */
public final class Shares {

  private static final String KEPT_IN = WayOut.KEPT_IN.label();

  private Shares() {}

  /**
   * Exit attempts with the columns that shares of teams and players are counted by. A selection
   * copies its rows column by column, so that many selections of whole rows take long.
   *
   * @param season the season
   */
  static Rows exits(Season season) {
    return new Rows(
        season
            .exits()
            .selectColumns(
                Columns.GAME,
                Columns.TEAM,
                Columns.PLAYER,
                Columns.WAY_OUT,
                Columns.AT_CENTER,
                Columns.STRENGTH,
                Columns.PRESSURE,
                Columns.OWN_ZONE_RESTART,
                Columns.RESTART_CAUSE));
  }

  /** Icings among the exit attempts whose ending the sheet tells. */
  public static Count iced(Rows exits) {
    return new Count(
        after(exits, FaceOffAfter.ICING).n(), exits.known(Columns.OWN_ZONE_RESTART).n());
  }

  /** Exit attempts that an own-zone face-off of a cause followed. */
  public static Rows after(Rows exits, FaceOffAfter cause) {
    Rows restarted = exits.isTrue(Columns.OWN_ZONE_RESTART);
    return switch (cause) {
      case ICING -> restarted.iced();
      case PENALTY -> restarted.where(Columns.RESTART_CAUSE, "penalty");
      case OTHER -> restarted.where(Columns.RESTART_CAUSE, "other", "unknown", "none");
      case NONE -> exits.where(exits.table().booleanColumn(Columns.OWN_ZONE_RESTART).isFalse());
    };
  }

  /** Iced ones among releases short of center. */
  public static Count icedReleases(Rows releases) {
    return releases.share(releases.iced());
  }

  /** Exit attempts that left the zone. */
  public static Count cleared(Rows exits) {
    return exits.share(out(exits));
  }

  /** Those that left the zone. */
  static Rows out(Rows exits) {
    return exits.where(exits.table().stringColumn(Columns.WAY_OUT).isNotEqualTo(KEPT_IN));
  }

  /** Those that did not. */
  static Rows keptIn(Rows exits) {
    return exits.where(Columns.WAY_OUT, KEPT_IN);
  }

  /** Released short of center, among the exits that have a mark at center. */
  public static Count releasedShort(Rows exits) {
    Rows marked = exits.known(Columns.AT_CENTER);
    return marked.share(marked.where(Columns.AT_CENTER, AtCenter.RELEASED_SHORT.label()));
  }

  /** Kept in, among the exit attempts under no or light pressure. */
  static Count keptInUnderLittlePressure(Rows exits) {
    Rows free = exits.where(Columns.PRESSURE, "none", "light");
    return free.share(keptIn(free));
  }

  static Rows shorthanded(Rows rows) {
    return rows.where(Columns.STRENGTH, Strength.SHORTHANDED.label());
  }

  static Rows atEmptyNet(Rows rows) {
    return rows.where(Columns.NET_EMPTY, "opponent", "both");
  }

  static Rows team(Rows rows, Optional<String> team) {
    return team.isEmpty() ? rows : rows.where(Columns.TEAM, team.get());
  }

  /** Name of a group's first column. */
  static String first(List<String> key) {
    return key.get(0);
  }
}
