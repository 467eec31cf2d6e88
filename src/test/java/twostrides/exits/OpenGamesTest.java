package twostrides.exits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tech.tablesaw.api.Table;
import twostrides.game.Season;
import twostrides.sheet.SheetException;

/**
 * The pipeline against open games and the readings of their exit attempts made independently of it.
 * Skipped, and said so, where the folder is not present: its files never enter the project. Icings:
 * {@link OpenIcingsTest}.
 *
 * <p>The disagreements are listed with their reasons in docs/checks.md.
 */
class OpenGamesTest {

  private static final double EXITS = 0.97;

  /** Rows of each set, counted without this program. */
  private static final Map<OpenSet, Integer> ROWS =
      new EnumMap<>(
          Map.of(
              OpenSet.WOMEN_2022, 5295,
              OpenSet.WOMEN_2018_19, 7112,
              OpenSet.WOMEN_2023, 3710,
              OpenSet.MEN_2024, 3756,
              OpenSet.WOMEN_LEAGUE_2021, 8759));

  @ParameterizedTest
  @EnumSource(OpenSet.class)
  void everyRowIsAccountedFor(OpenSet set) throws IOException, SheetException {
    set.need();
    Season season = set.season();
    assertEquals(ROWS.get(set), season.rowsRead());
    assertEquals(season.rowsRead(), season.rowsUsed() + season.setAside().size());
    assertEquals(List.of(), season.setAside());
  }

  /** Two writings of the same thing in one sheet: manpower beside each row, and penalty rows. */
  @Test
  void manpowerColumnsAgreeWithThePenaltyRows() throws IOException, SheetException {
    OpenSet.WOMEN_2022.need();
    ExitTables tables = OpenSet.WOMEN_2022.tables();
    Table m = tables.manpower();
    int disagree = 0;
    int turned = 0;
    for (int i = 0; i < m.rowCount(); i++) {
      int rows = m.intColumn(Columns.ROWS).getInt(i);
      disagree += rows;
      String columns = m.stringColumn(Columns.BY_COLUMNS).get(i);
      String[] skaters = m.stringColumn(Columns.BY_PENALTIES).get(i).split(" on ", -1);
      turned += columns.equals(skaters[1] + " on " + skaters[0]) ? rows : 0;
    }
    System.err.println(
        "manpower: "
            + disagree
            + " of "
            + tables.manpowerCompared()
            + " rows disagree, "
            + turned
            + " of them the other way round");
    assertTrue(tables.manpowerCompared() > 5000);
    assertTrue(disagree <= 0.02 * tables.manpowerCompared(), disagree + " rows");
  }

  /** Every icing released within 5 m of center is in the flags table, flagged or with a reason. */
  @ParameterizedTest
  @EnumSource(OpenSet.class)
  void everyIcingNearCenterIsFlaggedOrHasItsReason(OpenSet set) throws IOException, SheetException {
    set.need();
    Table f = set.tables().flags();
    int near = 0;
    for (CSVRecord r : set.restarts()) {
      double shortBy = (100 - Double.parseDouble(r.get("x_ft"))) * 0.3048;
      if (!r.get("reading").equals("icing") || shortBy > 5) {
        continue;
      }
      near++;
      int elapsed = 1200 - Integer.parseInt(r.get("release_clock_s"));
      boolean found = false;
      for (int i = 0; i < f.rowCount(); i++) {
        found |=
            OpenSet.game(f.stringColumn(Columns.GAME).get(i)).equals(r.get("game"))
                && f.intColumn(Columns.PERIOD).getInt(i) == Integer.parseInt(r.get("period"))
                && Math.round(f.doubleColumn(Columns.RELEASE_ELAPSED_S).getDouble(i)) == elapsed
                && !f.stringColumn(Columns.FLAG_SENTENCE).get(i).isEmpty();
      }
      assertTrue(found, "no flag or reason for " + r);
    }
    System.err.println(
        set + ": icings released within 5 m of center: " + near + ", all in the flags table");
    assertTrue(near > 0);
  }

  /**
   * Exit attempts in way out and mark at center, matched by game, period, team and the second in
   * which they begin. Those that rest on an unclear restart do not count.
   */
  @ParameterizedTest
  @EnumSource(OpenSet.class)
  void exitAttemptsAgree(OpenSet set) throws IOException, SheetException {
    set.need();
    Table exits = set.tables().exits();
    Map<String, List<Integer>> ours = new HashMap<>();
    for (int i = 0; i < exits.rowCount(); i++) {
      ours.computeIfAbsent(
              key(
                  OpenSet.game(exits.stringColumn(Columns.GAME).get(i)),
                  String.valueOf(exits.intColumn(Columns.PERIOD).getInt(i)),
                  1200 - Math.round(exits.doubleColumn(Columns.ELAPSED_S).getDouble(i)),
                  exits.stringColumn(Columns.TEAM).get(i)),
              k -> new ArrayList<>())
          .add(i);
    }
    List<String> disagree = new ArrayList<>();
    Map<String, Integer> kinds = new TreeMap<>();
    int strengths = 0;
    int strengthsRead = 0;
    int same = 0;
    int total = 0;
    for (CSVRecord r : set.exits()) {
      String key = key(r.get("game"), r.get("period"), Long.parseLong(r.get("start_s")), r.get("team"));
      List<Integer> found = ours.getOrDefault(key, List.of());
      String reads = r.get("way_out") + "/" + r.get("at_center");
      boolean doubt = !r.get("doubt").isEmpty();
      total += doubt ? 0 : 1;
      if (found.isEmpty()) {
        if (!doubt) {
          disagree.add(key + " " + r.get("player") + " reads " + reads + ", here no attempt starts then");
          kinds.merge(reads + " -> none", 1, Integer::sum);
        }
        continue;
      }
      int i = found.remove(0);
      String here = cell(exits, Columns.WAY_OUT, i) + "/" + cell(exits, Columns.AT_CENTER, i);
      if (doubt) {
        continue;
      }
      if (here.equals(reads)) {
        same++;
      } else {
        disagree.add(key + " " + r.get("player") + " reads " + reads + ", here " + here);
        kinds.merge(reads + " -> " + here, 1, Integer::sum);
      }
      if (!r.get("strength").isEmpty()) {
        strengthsRead++;
        strengths += cell(exits, Columns.STRENGTH, i).equals(r.get("strength")) ? 1 : 0;
      }
    }
    List<String> surplus = new ArrayList<>();
    Map<String, Integer> surplusKinds = new TreeMap<>();
    ours.forEach(
        (k, v) ->
            v.forEach(
                i -> {
                  surplus.add(k + " " + cell(exits, Columns.PLAYER, i) + " " + cell(exits, Columns.WAY_OUT, i) + "/" + cell(exits, Columns.AT_CENTER, i)+" line "+cell(exits,Columns.LINE,i));
                  surplusKinds.merge(cell(exits, Columns.WAY_OUT, i), 1, Integer::sum);
                }));
    surplus.sort(null);
    System.err.println(
        String.format(
            Locale.ROOT,
            "%s: exit attempts: %d of %d agree (%.1f %%), strength in %d of %d; %d only here",
            set,
            same,
            total,
            100.0 * same / total,
            strengths,
            strengthsRead,
            surplus.size()));
    System.err.println("  " + kinds + " surplus " + surplusKinds);
    disagree.forEach(d -> System.err.println("  " + d));
    surplus.forEach(d -> System.err.println("  only here: " + d));
    assertTrue(same >= EXITS * total, same + " of " + total);
  }

  private static String cell(Table t, String column, int row) {
    return CaseFilesTest.cell(t, column, row);
  }

  private static String key(String game, String period, long left, String team) {
    return String.format(
        Locale.ROOT, "%s, %s, %d:%02d, %s", game, period, left / 60, left % 60, team);
  }
}
