package twostrides.tracking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import twostrides.checks.Printed;
import twostrides.game.Action;
import twostrides.game.Game;
import twostrides.game.PlayRow;
import twostrides.game.SeasonReader;
import twostrides.game.SheetsRead;
import twostrides.sheet.SheetException;

/**
 * The video seconds of the sample season, found again from sync sheets made of a few of them. The
 * clock shows whole seconds, so a row may be a second off however well the sync sheet is made.
 */
class DemoVideoTest {

  @RegisterExtension static final Printed FIGURES = new Printed();

  @TempDir private static Path dir;
  private static SheetsRead season;

  @BeforeAll
  static void read() throws SheetException {
    season = SeasonReader.at("sample-data");
  }

  /** How far off the seconds are, against the seconds in the sheets. */
  private record Off(double median, double most, int rows, int inferred, int drift) {}

  private interface Timed {
    boolean is(PlayRow row);
  }

  private static String pair(Game game, PlayRow row) {
    int left = (int) Math.round(game.periodLength() - row.elapsed());
    return String.format(
        Locale.ROOT,
        "%s,%d,%d:%02d,%.1f%n",
        game.id(),
        row.period(),
        left / 60,
        left % 60,
        row.video().getAsDouble());
  }

  private static Off off(String name, String pairs) throws IOException, SheetException {
    Path file = dir.resolve(name + ".csv");
    Files.writeString(file, "game,period,clock,video_s\n" + pairs);
    SyncSheets sync = SyncSheets.read(List.of(file), List.of(), Outlines.of(season), false);
    assertEquals(List.of(), sync.setAside());
    List<VideoSeconds.Row> rows =
        VideoSeconds.of(season.games(), season.tagged(), sync, 1200).rows();
    int inferred = 0;
    int drift = 0;
    double[] apart = new double[rows.size()];
    for (int i = 0; i < apart.length; i++) {
      VideoSeconds.Row r = rows.get(i);
      double second = VideoSeconds.second(r.match()).orElseThrow();
      apart[i] = Math.abs(second - r.own().orElseThrow());
      if (r.match() instanceof ClockMatch.At at) {
        assertTrue(apart[i] <= at.plusMinus() + 1e-6, r.toString());
        inferred += at.clockRan() ? 0 : 1;
      } else {
        drift++;
      }
    }
    Arrays.sort(apart);
    Off off =
        new Off(apart[apart.length / 2], apart[apart.length - 1], apart.length, inferred, drift);
    FIGURES.say(
        "%s: %d rows of the sync sheet, %d seconds found again, off by %.1f s in the median and %.1f s"
            + " at most, %d inferred, %d drift",
        name,
        pairs.lines().count(),
        off.rows(),
        off.median(),
        off.most(),
        off.inferred(),
        off.drift());
    return off;
  }

  private static String pairs(Timed timed) {
    StringBuilder text = new StringBuilder();
    for (Game game : season.games()) {
      game.rows().stream().filter(timed::is).forEach(r -> text.append(pair(game, r)));
    }
    return text.toString();
  }

  @Test
  void whistleAndFaceOffOfEachStoppage() throws Exception {
    Off off =
        off("whistles", pairs(r -> r.action() == Action.FACEOFF || r.action() == Action.STOPPAGE));
    assertEquals(27138, off.rows());
    assertTrue(off.median() < 0.5 && off.most() < 1.05, off.toString());
    assertEquals(0, off.inferred() + off.drift());
  }

  @Test
  void aFaceOffAloneDoesAsWell() throws Exception {
    Off off = off("face-offs", pairs(r -> r.action() == Action.FACEOFF));
    assertTrue(off.median() < 0.5 && off.most() < 1.05, off.toString());
    assertEquals(0, off.inferred() + off.drift());
  }

  @Test
  void firstAndLastRowOfAPeriodShareTheStoppagesOut() throws Exception {
    Map<String, String> first = new LinkedHashMap<>();
    Map<String, String> last = new LinkedHashMap<>();
    for (Game game : season.games()) {
      for (PlayRow row : game.rows()) {
        String period = game.id() + row.period();
        first.putIfAbsent(period, pair(game, row));
        last.put(period, pair(game, row));
      }
    }
    Off two = off("two a period", String.join("", first.values()) + String.join("", last.values()));
    assertTrue(two.median() < 10 && two.most() < 60, two.toString());
    assertTrue(two.inferred() > 20_000 && two.drift() == 0, two.toString());
    // One row a period: exact up to the first whistle, and off by every stoppage after it.
    Off one = off("one a period", String.join("", first.values()));
    assertTrue(one.median() > 100 && one.drift() > 20_000, one.toString());
  }
}
