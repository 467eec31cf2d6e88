package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import tech.tablesaw.api.Table;
import twostrides.checks.Printed;
import twostrides.exits.Settings;
import twostrides.game.SeasonReader;
import twostrides.game.SheetForms;
import twostrides.game.SheetsRead;
import twostrides.season.Columns;
import twostrides.sheet.SheetFiles;
import twostrides.sheet.SheetMap;
import twostrides.tracking.GameOutline;
import twostrides.tracking.Outlines;

/**
 * Measured evidence in three real games with open tracking of their power plays, where the folder
 * is present; else skipped, and said so.
 */
class OpenMeasuredTest {

  @RegisterExtension static final Printed FIGURES = new Printed();

  private static final Path FOLDER =
      Path.of(System.getProperty("twostrides.openData", "../shared/open-data"));

  @Test
  void releasesInTrackedPowerPlaysAreMeasured() throws Exception {
    String absent = "SKIPPED: no open tracking at " + FOLDER + " (set -Dtwostrides.openData)";
    if (!Files.isDirectory(FOLDER)) {
      System.err.println(absent);
    }
    Assumptions.assumeTrue(Files.isDirectory(FOLDER), absent);
    Path maps = Path.of("docs/maps");
    SheetMap map = SheetMap.read(maps.resolve("womens-2022-open-data.toml"), SheetForms.ALL);
    SheetsRead season =
        SeasonReader.read(
            SheetFiles.find(List.of(FOLDER + "/*.events.csv")), Optional.of(map), false, n -> {});
    TrackingSheets sheets = new TrackingSheets();
    sheets.names = List.of(FOLDER + "/*.tracking.csv");
    sheets.maps =
        List.of(
            "womens-2022-tracking", "womens-2022-power-play-starts", "womens-2022-power-play-ends");
    sheets.syncNames = List.of(FOLDER + "/power_plays.csv");
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    TrackedSkaters tracked =
        sheets.read(
            season.games().stream().map(GameOutline::of).toList(),
            sheets.maps(),
            sheets.sync(Outlines.of(season), sheets.maps()),
            new Progress(err, false),
            new ReviewCache().open(Path.of("book"), List.of(), List.of()));
    twostrides.season.Season tables =
        twostrides.season.Season.of(season.games(), season.tagged(), Settings.DEFAULT, tracked);
    tracked.report(err, 3, Path.of("set-aside"));
    Table r = tables.releases();
    DoubleSummaryStatistics metres = new DoubleSummaryStatistics();
    int shorthanded = 0;
    for (int i = 0; i < r.rowCount(); i++) {
      if (r.stringColumn(Columns.EVIDENCE).get(i).equals("measured")) {
        metres.accept(r.doubleColumn(Columns.SHORT_OF_CENTER_M).getDouble(i));
        shorthanded += r.stringColumn(Columns.STRENGTH).get(i).equals("shorthanded") ? 1 : 0;
        double p = r.doubleColumn(Columns.P_GAIN_CENTER).getDouble(i);
        assertTrue(p >= 0 && p <= 1, "" + p);
        err.printf(
            Locale.ROOT,
            "measured: %s period %d %.0f s %s %s %s, %.1f m short, %.1f s, %.2f to gain%n",
            r.stringColumn(Columns.GAME).get(i),
            r.intColumn(Columns.PERIOD).getInt(i),
            r.doubleColumn(Columns.RELEASE_ELAPSED_S).getDouble(i),
            r.stringColumn(Columns.TEAM).get(i),
            r.stringColumn(Columns.STRENGTH).get(i),
            r.stringColumn("next_touch").get(i),
            r.doubleColumn(Columns.SHORT_OF_CENTER_M).getDouble(i),
            r.doubleColumn("seconds_to_center").getDouble(i),
            p);
      }
    }
    Table f = tables.flags();
    for (int i = 0; i < f.rowCount(); i++) {
      if (!f.intColumn("opponents_seen").isMissing(i)) {
        err.println("flags row: " + f.stringColumn("sentence").get(i));
      }
    }
    FIGURES.say(
        "skaters found at %d releases; measured: %d of %d releases short of center, %d of a"
            + " shorthanded team, %.0f to %.0f m short",
        r.stringColumn(Columns.EVIDENCE).countOccurrences("places only") + metres.getCount(),
        metres.getCount(),
        r.rowCount(),
        shorthanded,
        metres.getMin(),
        metres.getMax());
    // Counted by OpenTrackingTest one sheet at a time.
    assertEquals(
        Optional.of("Tracking: 309889 rows read = 286454 used + 23435 set aside."), tracked.sum());
    assertTrue(metres.getCount() > 0);
  }
}
