package twostrides.exits;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tech.tablesaw.api.Table;
import twostrides.game.Season;

class OpenIcingsTest {

  @ParameterizedTest
  @EnumSource(OpenSet.class)
  void icings(OpenSet set) throws Exception {
    set.need();
    Season season = set.season();
    System.err.println(set + " rows " + season.rowsRead() + " aside " + season.setAside().size());
    season.setAside().stream().limit(5).forEach(a -> System.err.println(a.problems()));
    Table t = Pipeline.run(season.games(), season.tagged(), OpenData.SETTINGS).restarts();
    Map<String, Integer> ours = new HashMap<>();
    for (int i = 0; i < t.rowCount(); i++) {
      ours.put(
          OpenSet.game(t.stringColumn(Columns.GAME).get(i))
              + " P"
              + t.intColumn(Columns.PERIOD).getInt(i)
              + " "
              + t.stringColumn(Columns.TEAM).get(i)
              + " "
              + (1200 - Math.round(t.doubleColumn(Columns.RESTART_ELAPSED_S).getDouble(i))),
          i);
    }
    int icing = 0;
    int found = 0;
    int wrong = 0;
    List<String> out = new ArrayList<>();
    for (CSVRecord r : set.restarts()) {
      String key =
          r.get("game") + " P" + r.get("period") + " " + r.get("team") + " " + r.get("restart_clock_s");
      Integer i = ours.remove(key);
      String cause = i == null ? "no restart" : t.stringColumn(Columns.RESTART_CAUSE).get(i);
      boolean here = cause.startsWith("icing");
      String reading = r.get("reading");
      if (reading.equals("unclear")) {
        out.add("  unclear " + key + " here " + cause + (i == null ? "" : " " + t.stringColumn(Columns.REASON).get(i)) + " | " + r.get("why")+" v "+r.get("mean_speed_m_s"));
        continue;
      }
      boolean there = reading.equals("icing");
      icing += there ? 1 : 0;
      found += there && here ? 1 : 0;
      wrong += !there && here ? 1 : 0;
      if (there != here || i == null) {
        out.add(
            key + " reads " + reading + " here " + cause
                + (i == null ? "" : " (" + t.stringColumn(Columns.REASON).get(i) + ")")
                + " | " + r.get("action") + " " + r.get("why") + " touch " + r.get("whistle_touch"));
      }
    }
    for (Map.Entry<String, Integer> e : ours.entrySet()) {
      String cause = t.stringColumn(Columns.RESTART_CAUSE).get(e.getValue());
      if (cause.startsWith("icing")) {
        wrong++;
        out.add(e.getKey() + " not in the reading, here " + cause);
      }
    }
    System.err.printf(
        "RESULT %s: icings %d, found %d, wrong %d: recall %.3f precision %.3f%n",
        set, icing, found, wrong, found / (double) icing, found / (double) (found + wrong));
    out.forEach(System.err::println);
    assertEquals(0, 0);
  }
}
