package twostrides.exits;

import java.util.Optional;
import java.util.OptionalDouble;
import tech.tablesaw.api.Table;
import twostrides.rink.Rink;

/**
 * One row of the releases table, of a play sheet or a tag sheet, and the rink of its game.
 *
 * @param table the releases table
 * @param at row number
 * @param rink the rink
 */
record ReleaseRow(Table table, int at, Rink rink) {

  String text(String column) {
    return Cells.text(table, column, at).orElseThrow();
  }

  String game() {
    return text(Columns.GAME);
  }

  int count(String column) {
    return Cells.count(table, column, at).orElseThrow();
  }

  private double number(String column) {
    return Cells.number(table, column, at).orElseThrow();
  }

  /** Place along the rink, metres. */
  double x() {
    return number(Columns.RELEASE_X_M);
  }

  /** Place across the rink, metres. */
  double y() {
    return number(Columns.RELEASE_Y_M);
  }

  /** Metres short of center. */
  double metres() {
    return number(Columns.SHORT_OF_CENTER_M);
  }

  boolean missedPass() {
    return text(Columns.KIND).equals(ReleasesStage.MISSED_PASS);
  }

  boolean fromOwnZone() {
    return rink.inOwnZone(x());
  }

  /** Metres up ice since he got it; empty where the sheet cannot know. */
  OptionalDouble carried() {
    return Cells.number(table, Columns.CARRIED_M, at);
  }

  Optional<String> pressure() {
    return Cells.text(table, Columns.PRESSURE, at);
  }

  /** Whether an own-zone restart followed, where the sheet knows. */
  Optional<Boolean> restarted() {
    return Cells.flag(table, Columns.OWN_ZONE_RESTART, at);
  }

  /** Whether icing followed, written or inferred. */
  boolean iced() {
    return Cells.iced(table, at);
  }

  /** Whether the book may call it icing at all: not of a team that it exempts. */
  boolean mayBeIcing() {
    return Cells.flag(table, Columns.MAY_BE_ICING, at).orElseThrow();
  }
}
