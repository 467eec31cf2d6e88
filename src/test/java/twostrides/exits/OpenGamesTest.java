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
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tech.tablesaw.api.Table;
import twostrides.checks.Printed;
import twostrides.game.SheetForms;
import twostrides.game.SheetsRead;
import twostrides.season.Columns;
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

  @RegisterExtension static final Printed FIGURES = new Printed();

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
    SheetsRead season = set.season();
    FIGURES.say(
        "%s: %d games, %d rows read, %d set aside",
        set, season.games().size(), season.rowsRead(), season.setAside().size());
    assertEquals(ROWS.get(set), season.rowsRead());
    assertEquals(season.rowsRead(), season.rowsUsed() + season.setAside().size());
    assertEquals(List.of(), season.setAside());
  }

  /** The maps are read even where the sheets are not present. */
  @ParameterizedTest
  @EnumSource(OpenSet.class)
  void everySetHasAMapOfPlaySheets(OpenSet set) throws SheetException {
    assertEquals(SheetForms.PLAY, set.map().schema());
  }

  /** Two writings of the same thing in one sheet: manpower beside each row, and penalty rows. */
  @Test
  void manpowerColumnsAgreeWithThePenaltyRows() throws IOException, SheetException {
    OpenSet.WOMEN_2022.need();
    twostrides.season.Season tables = OpenSet.WOMEN_2022.tables();
    Table m = tables.manpower();
    int disagree = 0;
    int turned = 0;
    for (int i = 0; i < m.rowCount(); i++) {
      int rows = m.intColumn("rows").getInt(i);
      disagree += rows;
      String columns = m.stringColumn("by_columns").get(i);
      String[] skaters = m.stringColumn("by_penalties").get(i).split(" on ", -1);
      turned += columns.equals(skaters[1] + " on " + skaters[0]) ? rows : 0;
    }
    FIGURES.say(
        "manpower: %d of %d rows disagree, %d of them the other way round",
        disagree, tables.manpowerDisagrees().trials(), turned);
    assertTrue(tables.manpowerDisagrees().trials() > 5000);
    assertTrue(disagree <= 0.02 * tables.manpowerDisagrees().trials(), disagree + " rows");
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
                && !f.stringColumn("sentence").get(i).isEmpty();
      }
      assertTrue(found, "no flag or reason for " + r);
    }
    FIGURES.say("%s: %d icings within 5 m of center, all in the flags table", set, near);
    assertTrue(near > 0);
  }

  /**
   * Exit attempts in way out and mark at center, matched by game, period, team and the second in
   * which they begin; those found here alone count as disagreements too. Attempts of which the
   * reading rests on an unclear restart count neither way.
   */
  @ParameterizedTest
  @EnumSource(OpenSet.class)
  void exitAttemptsAgree(OpenSet set) throws IOException, SheetException {
    set.need();
    Table exits = set.tables().exits();
    Map<String, List<Integer>> ours = byStart(exits);
    List<String> disagree = new ArrayList<>();
    int strengths = 0;
    int strengthsRead = 0;
    int same = 0;
    int total = 0;
    for (CSVRecord r : set.exits()) {
      String key =
          key(r.get("game"), r.get("period"), Long.parseLong(r.get("start_s")), r.get("team"));
      List<Integer> found = ours.getOrDefault(key, List.of());
      Optional<Integer> row = found.isEmpty() ? Optional.empty() : Optional.of(found.remove(0));
      if (!r.get("doubt").isEmpty()) {
        continue;
      }
      total++;
      String reads = marks(r.get("way_out"), r.get("at_center"));
      String here = row.map(i -> marks(exits, i)).orElse("no attempt");
      if (here.equals(reads)) {
        same++;
      } else {
        disagree.add(key + " reads " + reads + ", here " + here);
      }
      if (row.isPresent() && !r.get("strength").isEmpty()) {
        strengthsRead++;
        strengths += cell(exits, Columns.STRENGTH, row.get()).equals(r.get("strength")) ? 1 : 0;
      }
    }
    List<String> surplus = new ArrayList<>();
    ours.forEach((k, v) -> v.forEach(i -> surplus.add(k + " not read, here " + marks(exits, i))));
    surplus.sort(null);
    FIGURES.say(
        "%s: %d of %d attempts agree (%.1f %%), %d only here, strength in %d of %d",
        set, same, total, 100.0 * same / total, surplus.size(), strengths, strengthsRead);
    disagree.forEach(d -> FIGURES.say("  %s", d));
    surplus.forEach(d -> FIGURES.say("  %s", d));
    assertEquals(List.of(), OpenSet.unlisted(disagree), "not in docs/checks.md");
    assertEquals(List.of(), OpenSet.unlisted(surplus), "not in docs/checks.md");
    assertTrue(same >= EXITS * (total + surplus.size()), same + " of " + total);
  }

  private static Map<String, List<Integer>> byStart(Table exits) {
    Map<String, List<Integer>> rows = new HashMap<>();
    for (int i = 0; i < exits.rowCount(); i++) {
      rows.computeIfAbsent(
              key(
                  OpenSet.game(exits.stringColumn(Columns.GAME).get(i)),
                  String.valueOf(exits.intColumn(Columns.PERIOD).getInt(i)),
                  1200 - Math.round(exits.doubleColumn(Columns.ELAPSED_S).getDouble(i)),
                  exits.stringColumn(Columns.TEAM).get(i)),
              k -> new ArrayList<>())
          .add(i);
    }
    return rows;
  }

  private static String marks(Table exits, int row) {
    return marks(cell(exits, Columns.WAY_OUT, row), cell(exits, Columns.AT_CENTER, row));
  }

  private static String marks(String wayOut, String atCenter) {
    return atCenter.isEmpty() ? wayOut : wayOut + ", " + atCenter;
  }

  private static String cell(Table t, String column, int row) {
    return CaseFilesTest.cell(t, column, row);
  }

  private static String key(String game, String period, long left, String team) {
    return String.format(
        Locale.ROOT, "%s, %s, %d:%02d, %s", game, period, left / 60, left % 60, team);
  }
}
