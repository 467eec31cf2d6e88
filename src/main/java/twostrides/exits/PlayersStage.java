package twostrides.exits;

import java.util.Comparator;
import java.util.Map;
import java.util.TreeMap;
import tech.tablesaw.api.Table;

/**
 * Last stage: the exits table becomes counts per player, way out, mark at center and strength.
 * Whole numbers only.
 */
final class PlayersStage {

  private static final Shape SHAPE =
      new Shape("players")
          .text(Columns.TEAM, Columns.PLAYER, Columns.WAY_OUT, Columns.AT_CENTER, Columns.STRENGTH)
          .count(Columns.ATTEMPTS, Columns.RESTARTS);

  private PlayersStage() {}

  private record Key(String team, String player, String way, String atCenter, String strength) {
    static final Comparator<Key> ORDER =
        Comparator.comparing(Key::team)
            .thenComparing(Key::player)
            .thenComparing(Key::way)
            .thenComparing(Key::atCenter)
            .thenComparing(Key::strength);
  }

  /**
   * Builds the players table; an attempt whose player the sheet does not name counts under an empty
   * name.
   *
   * @param exits the exits table
   */
  static Table run(Table exits) {
    Map<Key, int[]> counts = new TreeMap<>(Key.ORDER);
    for (int i = 0; i < exits.rowCount(); i++) {
      Key key =
          new Key(
              cell(exits, Columns.TEAM, i),
              cell(exits, Columns.PLAYER, i),
              cell(exits, Columns.WAY_OUT, i),
              cell(exits, Columns.AT_CENTER, i),
              cell(exits, Columns.STRENGTH, i));
      int[] c = counts.computeIfAbsent(key, k -> new int[2]);
      c[0]++;
      c[1] += Cells.flag(exits, Columns.OWN_ZONE_RESTART, i).orElse(false) ? 1 : 0;
    }
    Shape.Filler out = SHAPE.filler();
    counts.forEach(
        (k, c) -> {
          out.row().text(Columns.TEAM, k.team());
          put(out, Columns.PLAYER, k.player());
          put(out, Columns.WAY_OUT, k.way());
          put(out, Columns.AT_CENTER, k.atCenter());
          put(out, Columns.STRENGTH, k.strength());
          out.count(Columns.ATTEMPTS, c[0]).count(Columns.RESTARTS, c[1]);
        });
    return out.table();
  }

  private static void put(Shape.Filler out, String column, String value) {
    if (!value.isEmpty()) {
      out.text(column, value);
    }
  }

  private static String cell(Table t, String column, int row) {
    return Cells.text(t, column, row).orElse("");
  }
}
