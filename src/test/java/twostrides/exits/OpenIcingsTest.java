package twostrides.exits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tech.tablesaw.api.Table;
import twostrides.checks.Printed;
import twostrides.game.Game;
import twostrides.game.PlayRow;
import twostrides.game.SheetsRead;
import twostrides.game.StopReason;
import twostrides.race.TravelBound;
import twostrides.season.Columns;
import twostrides.season.SkatersAtRelease;
import twostrides.sheet.SheetException;

/**
 * Icings of open games against readings made independently of this program, and against the icings
 * that tracked games write down. Every disagreement is printed with what the sheet shows; they are
 * listed in docs/checks.md.
 */
class OpenIcingsTest {

  private static final double ALL_SETS = 0.97;
  private static final double EACH_SET = 0.92;
  private static final double HIDDEN_PRECISION = 0.95;
  private static final double HIDDEN_RECALL = 0.9;

  @RegisterExtension static final Printed FIGURES = new Printed();

  private static final Path TRACKED = OpenData.FOLDER.resolve("tracked-2023");

  /** Icings that the other source has, those found of them, and those found beside them. */
  private static final class Score {
    private int icings;
    private int found;
    private int wrong;
    private final List<String> disagree = new ArrayList<>();

    void count(boolean there, boolean here, String what) {
      icings += there ? 1 : 0;
      found += there && here ? 1 : 0;
      wrong += !there && here ? 1 : 0;
      if (there != here) {
        disagree.add(what);
      }
    }

    void add(Score other) {
      icings += other.icings;
      found += other.found;
      wrong += other.wrong;
    }

    double recall() {
      return (double) found / icings;
    }

    double precision() {
      return (double) found / (found + wrong);
    }

    Score say(String what) throws IOException {
      FIGURES.say(
          "%s: %d icings, %d of them found, %d beside them: recall %.3f, precision %.3f",
          what, icings, found, wrong, recall(), precision());
      disagree.forEach(d -> FIGURES.say("  %s", d));
      assertEquals(List.of(), OpenSet.unlisted(disagree), "not in docs/checks.md");
      return this;
    }
  }

  @ParameterizedTest
  @EnumSource(OpenSet.class)
  void icingsOfASetAgreeWithTheReading(OpenSet set) throws IOException, SheetException {
    set.need();
    Score score = score(set).say(set.toString());
    assertTrue(score.recall() >= EACH_SET, "recall " + score.recall());
    assertTrue(score.precision() >= EACH_SET, "precision " + score.precision());
  }

  @Test
  void icingsOfAllSetsAgreeWithTheReadings() throws IOException, SheetException {
    Score all = new Score();
    for (OpenSet set : OpenSet.values()) {
      set.need();
      all.add(score(set));
    }
    all.say("all sets");
    assertTrue(all.recall() >= ALL_SETS, "recall " + all.recall());
    assertTrue(all.precision() >= ALL_SETS, "precision " + all.precision());
  }

  /** Own-zone restarts by the reading and by us; what it calls unclear does not count. */
  private static Score score(OpenSet set) throws IOException, SheetException {
    Table t = set.tables().restarts();
    Map<String, Integer> ours = byDraw(t);
    Score score = new Score();
    for (CSVRecord r : set.restarts()) {
      int drawn = 1200 - Integer.parseInt(r.get("restart_clock_s"));
      String key = key(r.get("game"), r.get("period"), drawn, r.get("team"));
      Optional<Integer> i = Optional.ofNullable(ours.remove(key));
      assertTrue(i.isPresent(), "no restart at " + key);
      if (!r.get("reading").equals("unclear")) {
        score.count(
            r.get("reading").equals("icing"),
            icing(t, i.get()),
            key
                + " reads "
                + r.get("reading")
                + ", "
                + r.get("why")
                + "; here "
                + words(t, i.get()));
      }
    }
    ours.forEach((key, i) -> score.count(false, icing(t, i), key + " not read; " + words(t, i)));
    return score;
  }

  /** Written icings are taken as written, each with the release that was iced and its player. */
  @Test
  void writtenIcingsHaveTheirRelease() throws IOException, SheetException {
    OpenData.need();
    Table t = tables(TRACKED.resolve("native")).restarts();
    Map<String, Integer> ours = byDraw(t);
    Score score = new Score();
    int released = 0;
    for (CSVRecord r : OpenSet.csv(TRACKED.resolve("end_zone_draws.csv"))) {
      String key = drawn(r);
      Optional<Integer> i = Optional.ofNullable(ours.get(key));
      boolean icing = i.isPresent() && icing(t, i.get());
      score.count(
          r.get("cause_written").equals("icing"), icing, key + " " + r.get("cause_written"));
      released += icing && Cells.count(t, Columns.RELEASE, i.get()).isPresent() ? 1 : 0;
    }
    score.say("written, tracked games");
    FIGURES.say("  %d with a release", released);
    assertEquals(1, score.recall());
    assertEquals(1, score.precision());
    assertTrue(released >= 0.9 * score.found, released + " with a release");
  }

  /** The same games with every stoppage row taken out. */
  @Test
  void writtenIcingsAreInferredWhenHidden(@TempDir Path dir) throws IOException, SheetException {
    OpenData.need();
    try (Stream<Path> sheets = Files.list(TRACKED.resolve("native"))) {
      for (Path sheet : sheets.toList()) {
        List<String> rows =
            Files.readAllLines(sheet).stream()
                .filter(l -> l.startsWith("game,") || !l.contains(",stoppage,"))
                .toList();
        Files.write(dir.resolve(sheet.getFileName().toString()), rows);
      }
    }
    Table t = tables(dir).restarts();
    Map<String, Integer> ours = byDraw(t);
    Score score = new Score();
    for (CSVRecord r : OpenSet.csv(TRACKED.resolve("end_zone_draws.csv"))) {
      String key = drawn(r);
      Optional<Integer> i = Optional.ofNullable(ours.remove(key));
      score.count(
          r.get("cause_written").equals("icing"),
          i.isPresent() && icing(t, i.get()),
          key
              + " "
              + r.get("cause_written")
              + "; here "
              + i.map(row -> words(t, row)).orElse("no restart"));
    }
    ours.forEach((key, i) -> score.count(false, icing(t, i), key + " not listed; " + words(t, i)));
    score.say("hidden, tracked games");
    assertTrue(score.recall() >= HIDDEN_RECALL, "recall " + score.recall());
    assertTrue(score.precision() >= HIDDEN_PRECISION, "precision " + score.precision());
  }

  /** The speeds that {@link TravelBound#DEFAULT} rests on, timed by the video. */
  @Test
  void icedPucksRunAsTheBoundSays() throws IOException, SheetException {
    OpenData.need();
    SheetsRead season = OpenSet.read(TRACKED.resolve("native"), ".csv", "tracked-2023");
    Table t =
        twostrides.season.Season.of(
                season.games(), season.tagged(), OpenData.SETTINGS, SkatersAtRelease.NONE)
            .restarts();
    List<Double> speeds = new ArrayList<>();
    for (Game g : season.games()) {
      for (PlayRow stop : g.rows()) {
        if (!stop.stop().equals(Optional.of(StopReason.ICING))) {
          continue;
        }
        for (int i = 0; i < t.rowCount(); i++) {
          boolean here =
              t.stringColumn(Columns.GAME).get(i).equals(g.id())
                  && t.intColumn(Columns.PERIOD).getInt(i) == stop.period()
                  && t.doubleColumn(Columns.RESTART_ELAPSED_S).getDouble(i) == stop.elapsed();
          OptionalDouble x = Cells.number(t, Columns.RELEASE_X_M, i);
          if (here && x.isPresent()) {
            double sent = t.doubleColumn("video_s").getDouble(i);
            double metres = g.rink().goalLine() - x.getAsDouble();
            speeds.add(metres / (stop.video().orElseThrow() - sent));
          }
        }
      }
    }
    double mean = speeds.stream().mapToDouble(Math::log).average().orElseThrow();
    double square = speeds.stream().mapToDouble(v -> Math.pow(Math.log(v) - mean, 2)).sum();
    double spread = Math.sqrt(square / (speeds.size() - 1));
    FIGURES.say(
        "%d timed icings: median %.1f m/s, spread %.2f, from %.1f to %.1f m/s",
        speeds.size(),
        Math.exp(mean),
        spread,
        speeds.stream().min(Double::compare).orElseThrow(),
        speeds.stream().max(Double::compare).orElseThrow());
    assertEquals(TravelBound.DEFAULT.usual(), Math.exp(mean), 0.05);
    assertEquals(TravelBound.DEFAULT.spread(), spread, 0.005);
  }

  private static twostrides.season.Season tables(Path dir) throws IOException, SheetException {
    SheetsRead season = OpenSet.read(dir, ".csv", "tracked-2023");
    return twostrides.season.Season.of(
        season.games(), season.tagged(), OpenData.SETTINGS, SkatersAtRelease.NONE);
  }

  private static Map<String, Integer> byDraw(Table t) {
    Map<String, Integer> rows = new HashMap<>();
    for (int i = 0; i < t.rowCount(); i++) {
      rows.put(
          key(
              OpenSet.game(t.stringColumn(Columns.GAME).get(i)),
              String.valueOf(t.intColumn(Columns.PERIOD).getInt(i)),
              Math.round(t.doubleColumn(Columns.RESTART_ELAPSED_S).getDouble(i)),
              t.stringColumn(Columns.TEAM).get(i)),
          i);
    }
    return rows;
  }

  private static String drawn(CSVRecord r) {
    return key(r.get("game"), r.get("period"), Long.parseLong(r.get("elapsed_s")), r.get("team"));
  }

  private static String key(String game, String period, long elapsed, String team) {
    long left = 1200 - elapsed;
    return String.format(
        Locale.ROOT, "%s, %s, %d:%02d, %s", game, period, left / 60, left % 60, team);
  }

  private static boolean icing(Table t, int row) {
    return t.stringColumn(Columns.RESTART_CAUSE).get(row).startsWith("icing");
  }

  private static String words(Table t, int row) {
    return t.stringColumn(Columns.RESTART_CAUSE).get(row)
        + " ("
        + t.stringColumn(Columns.REASON).get(row)
        + ")";
  }
}
