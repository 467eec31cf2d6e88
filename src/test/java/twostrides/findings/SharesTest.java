package twostrides.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tech.tablesaw.api.Table;
import twostrides.season.Columns;
import twostrides.season.Rows;
import twostrides.season.SeasonTables;
import twostrides.stats.Count;

/** Shares of exit attempts that are counted by hand. */
class SharesTest {

  private static void add(
      SeasonTables t, int times, String player, String way, String mark, String cause) {
    for (int i = 0; i < times; i++) {
      t.exit(
          Columns.GAME,
          "one",
          Columns.TEAM,
          "Herons",
          Columns.PLAYER,
          player,
          Columns.WAY_OUT,
          way,
          Columns.AT_CENTER,
          mark,
          Columns.STRENGTH,
          "even",
          Columns.OWN_ZONE_RESTART,
          cause.isEmpty() ? null : !cause.equals("none"),
          Columns.RESTART_CAUSE,
          cause.isEmpty() ? null : cause);
    }
  }

  private static Rows exits() {
    SeasonTables t = new SeasonTables();
    add(t, 9, "8", "chip", "", "none");
    add(t, 1, "8", "chip", "", "penalty");
    add(t, 2, "8", "chip", "", "icing_written");
    add(t, 1, "8", "chip", "", "");
    add(t, 3, "21", "chip", "", "icing_inferred");
    add(t, 2, "8", "carry", "released short", "none");
    add(t, 4, "8", "carry", "gained", "none");
    return new Rows(t.season().exits());
  }

  private static List<String> row(Table t, int at) {
    return IntStream.range(0, 5).mapToObj(c -> String.valueOf(t.get(at, c))).toList();
  }

  @Test
  void countsIcingsByWayAndPlayerInTheOrderOfTheWays() {
    Table t = Shares.byWay(exits(), Columns.PLAYER);
    assertEquals(
        List.of("shown_way", "player", "attempts", "icings", "n", "share", "low", "high"),
        t.columnNames());
    assertEquals(4, t.rowCount());
    assertEquals(List.of("carry over center", "8", "4", "0", "4"), row(t, 0));
    assertEquals(List.of("carried, sent before the red line", "8", "2", "0", "2"), row(t, 1));
    assertEquals(List.of("chip", "21", "3", "3", "3"), row(t, 2));
    assertEquals(
        List.of("chip", "8", "13", "2", "12"), row(t, 3), "one ending is not in the sheet");
    Count chips = new Count(2, 12);
    assertEquals(chips.share().orElseThrow(), t.doubleColumn("share").get(3));
    assertEquals(chips.wilson().orElseThrow().low(), t.doubleColumn("low").get(3));
    assertEquals(chips.wilson().orElseThrow().high(), t.doubleColumn("high").get(3));
  }

  @Test
  void aShareOfTooFewIsMissing() {
    Table t = Shares.byWay(exits(), Columns.PLAYER);
    for (String column : List.of("share", "low", "high")) {
      assertEquals(3, t.doubleColumn(column).countMissing(), column);
      assertTrue(t.doubleColumn(column).isMissing(2), "3 of 3 are no share");
    }
  }

  @Test
  void countsByWayAlone() {
    Table t = Shares.byWay(exits());
    assertEquals(3, t.rowCount());
    assertEquals("16", String.valueOf(t.column("attempts").get(2)));
    assertEquals(new Count(5, 15).share().orElseThrow(), t.doubleColumn("share").get(2));
  }

  @Test
  void namesNoColumnThatIsNotThere() {
    assertThrows(IllegalStateException.class, () -> Shares.byWay(exits(), "shoe size"));
  }
}
