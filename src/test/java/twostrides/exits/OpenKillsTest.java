package twostrides.exits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import tech.tablesaw.api.Table;
import twostrides.checks.Printed;
import twostrides.season.Columns;
import twostrides.season.SkatersAtRelease;
import twostrides.sheet.SheetException;

/**
 * Penalty kills of three real games against the open data's own list of power plays, which was
 * written beside the video and not made from the sheets (validation). Two listed power plays last 0
 * s and show no row.
 */
class OpenKillsTest {

  @RegisterExtension static final Printed FIGURES = new Printed();

  private static final double PERIOD = 1200;

  private record Stretch(String game, double from, double to) {
    double overlap(Stretch other) {
      return game.equals(other.game) ? Math.min(to, other.to) - Math.max(from, other.from) : -1;
    }
  }

  private static int empty;
  private static List<Stretch> listed;
  private static List<Stretch> found;

  @BeforeAll
  static void read() throws IOException, SheetException {
    OpenData.need();
    listed = new ArrayList<>();
    for (CSVRecord r : OpenData.csv("power_plays.csv")) {
      double from = at(r, "start_period", "start_game_clock_seconds");
      double to = at(r, "end_period", "end_game_clock_seconds");
      if (to > from) {
        listed.add(new Stretch(r.get("game"), from, to));
      } else {
        empty++;
      }
    }
    Table kills =
        twostrides.season.Season.of(
                OpenData.games(), List.of(), OpenData.SETTINGS, SkatersAtRelease.NONE)
            .kills();
    found = new ArrayList<>();
    for (int i = 0; i < kills.rowCount(); i++) {
      found.add(
          new Stretch(
              Cells.text(kills, Columns.GAME, i).orElseThrow(),
              at(kills, Columns.PERIOD, Columns.ELAPSED_S, i),
              at(kills, "end_period", "end_elapsed_s", i)));
    }
  }

  private static double at(CSVRecord r, String period, String left) {
    return Integer.parseInt(r.get(period)) * PERIOD - Integer.parseInt(r.get(left));
  }

  private static double at(Table t, String period, String elapsed, int row) {
    return (Cells.count(t, period, row).orElseThrow() - 1) * PERIOD
        + Cells.number(t, elapsed, row).orElseThrow();
  }

  @Test
  void everyListedPowerPlayIsAKillWithNearlyTheSameEdges() {
    int together = 0;
    int near = 0;
    int nearer = 0;
    for (Stretch l : listed) {
      Stretch best =
          found.stream().max((a, b) -> Double.compare(a.overlap(l), b.overlap(l))).orElseThrow();
      boolean seen = best.overlap(l) > 0;
      together += seen ? 1 : 0;
      double start = best.from() - l.from();
      double end = best.to() - l.to();
      near += seen && Math.abs(start) <= 5 && Math.abs(end) <= 5 ? 1 : 0;
      nearer += seen && Math.abs(start) <= 3 && Math.abs(end) <= 3 ? 1 : 0;
      System.err.printf(
          Locale.ROOT,
          "power play %s %.0f to %.0f s: %s%n",
          l.game(),
          l.from(),
          l.to(),
          seen
              ? String.format(Locale.ROOT, "starts %+.0f s, ends %+.0f s", start, end)
              : "not found");
    }
    FIGURES.say(
        "%d power plays listed, %d of them last 0 s; of the other %d, %d are kills here, %d with both"
            + " edges within 5 s, %d within 3 s; %d kills in the sheets",
        listed.size() + empty, empty, listed.size(), together, near, nearer, found.size());
    assertEquals(listed.size(), together);
    assertTrue(near >= 0.75 * listed.size(), near + " of " + listed.size());
  }
}
