package twostrides.exits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tech.tablesaw.api.Table;
import twostrides.demo.DemoGame;
import twostrides.demo.DemoLeague;
import twostrides.game.Season;
import twostrides.game.SeasonReader;
import twostrides.rates.Calibration;
import twostrides.rates.Forecast;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetFiles;

/**
 * The chances and flags against simulated games whose truth is known. The simulator decides with
 * losses a second and a speed of its own, which the pipeline must find in the sheets.
 */
class ChancesTruthTest {

  private static final int GAMES = 24;
  private static final long SEED = 20311004;

  /**
   * Truly avoidable: a chance of gaining center that clears the threshold with the restarts that
   * follow gaining it taken off.
   */
  private static final double AVOIDABLE = 0.65;

  @TempDir static Path dir;

  private static final List<Release> RELEASES = new ArrayList<>();

  /** What the pipeline says of a release and what was so. */
  private record Release(
      double pIcing,
      double pGain,
      boolean flagged,
      double shortOfCenter,
      boolean iced,
      double trueGain) {
    boolean avoidable() {
      return iced && trueGain >= AVOIDABLE;
    }
  }

  @BeforeAll
  static void simulate() throws IOException, SheetException {
    RELEASES.clear();
    Map<String, Deque<CSVRecord>> truth = new HashMap<>();
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    for (DemoGame g : DemoLeague.simulate(GAMES, SEED).games()) {
      Files.writeString(dir.resolve(g.fileStem() + ".csv"), g.sheetCsv());
      try (CSVParser csv = CSVParser.parse(new StringReader(g.releaseTruthCsv()), format)) {
        for (CSVRecord r : csv) {
          String key =
              String.join("|", r.get("game"), r.get("period"), r.get("team"))
                  + "|"
                  + r.get("release_elapsed_s")
                  + "|"
                  + r.get("player");
          truth.computeIfAbsent(key, k -> new ArrayDeque<>()).add(r);
        }
      }
    }
    Season season =
        SeasonReader.read(
            SheetFiles.find(List.of(dir.toString())), Optional.empty(), false, n -> {});
    Table t = Pipeline.run(season.games(), season.tagged(), Settings.DEFAULT).releases();
    for (int i = 0; i < t.rowCount(); i++) {
      String key =
          String.join(
                  "|",
                  t.stringColumn(Columns.GAME).get(i),
                  String.valueOf(t.intColumn(Columns.PERIOD).getInt(i)),
                  t.stringColumn(Columns.TEAM).get(i))
              + "|"
              + (long) t.doubleColumn(Columns.RELEASE_ELAPSED_S).getDouble(i)
              + "|"
              + t.stringColumn(Columns.PLAYER).get(i);
      CSVRecord r = truth.get(key).remove();
      RELEASES.add(
          new Release(
              t.doubleColumn(Columns.P_ICING).getDouble(i),
              t.doubleColumn(Columns.P_GAIN_CENTER).getDouble(i),
              t.booleanColumn(Columns.FLAGGED).get(i),
              t.doubleColumn(Columns.SHORT_OF_CENTER_M).getDouble(i),
              r.get("cause").equals("icing"),
              Double.parseDouble(r.get("p_gain_center"))));
    }
  }

  @Test
  void theChanceOfGainingCenterIsTheTrueOneInEveryBin() {
    double squares = 0;
    for (int bin = 0; bin < 10; bin++) {
      int low = bin;
      List<Release> in =
          RELEASES.stream().filter(r -> Math.min(9, (int) (10 * r.pGain())) == low).toList();
      if (in.isEmpty()) {
        continue;
      }
      double said = in.stream().mapToDouble(Release::pGain).average().orElseThrow();
      double was = in.stream().mapToDouble(Release::trueGain).average().orElseThrow();
      say("gain center %.1f: n %d, said %.3f, true %.3f", bin / 10.0, in.size(), said, was);
      assertEquals(was, said, 0.10, "bin " + bin);
    }
    for (Release r : RELEASES) {
      squares += (r.pGain() - r.trueGain()) * (r.pGain() - r.trueGain());
    }
    double error = Math.sqrt(squares / RELEASES.size());
    say("gain center: root mean square error %.3f over %d releases", error, RELEASES.size());
    assertTrue(error < 0.08, "root mean square error " + error);
  }

  @Test
  void theChanceOfIcingIsReliable() {
    List<Forecast> forecasts =
        RELEASES.stream().map(r -> new Forecast(r.pIcing(), r.iced())).toList();
    Calibration c = Calibration.of(forecasts, 10).orElseThrow();
    for (Calibration.Bin b : c.bins()) {
      if (b.observed().trials() > 0) {
        say(
            "icing: n %d, said %.3f, iced %d",
            b.observed().trials(), b.meanForecast().orElseThrow(), b.observed().successes());
      }
    }
    say(
        "icing: Brier %.4f = reliability %.5f - resolution %.5f + uncertainty %.4f (+ within bins)",
        c.brier(), c.parts().reliability(), c.parts().resolution(), c.parts().uncertainty());
    assertTrue(c.brier() <= c.parts().uncertainty(), "no worse than the base rate");
    assertTrue(c.parts().reliability() < 0.002, "reliability " + c.parts().reliability());
  }

  /** Twice the draws: no flag changes, and no chance by more than the two errors allow. */
  @Test
  void twiceTheDrawsChangeNoFlag() throws SheetException {
    Season season =
        SeasonReader.read(
            SheetFiles.find(List.of(dir.toString())).subList(0, 6),
            Optional.empty(),
            false,
            n -> {});
    RaceSettings race = RaceSettings.DEFAULT;
    Table once = flags(season, race);
    Table again = flags(season, race);
    Table twice =
        flags(
            season,
            new RaceSettings(race.seed(), 2 * race.draws(), race.level(), race.threshold()));
    assertTrue(once.rowCount() > 30);
    double worst = 0;
    for (int i = 0; i < once.rowCount(); i++) {
      assertEquals(
          once.booleanColumn(Columns.FLAGGED).get(i), twice.booleanColumn(Columns.FLAGGED).get(i));
      double p = once.doubleColumn(Columns.P_ICING).getDouble(i);
      assertEquals(p, again.doubleColumn(Columns.P_ICING).getDouble(i), "same seed, same chance");
      worst = Math.max(worst, Math.abs(p - twice.doubleColumn(Columns.P_ICING).getDouble(i)));
    }
    say(
        "twice the draws: %d rows, no flag changed, p_icing by %.4f at most",
        once.rowCount(), worst);
    assertTrue(worst < 0.03, "p_icing moved by " + worst);
  }

  private static Table flags(Season season, RaceSettings race) {
    return Pipeline.run(season.games(), season.tagged(), Settings.DEFAULT.withRace(race)).flags();
  }

  @Test
  void flagsFindTheAvoidableOnesBetterThanDistanceAlone() {
    List<Release> iced = RELEASES.stream().filter(Release::iced).toList();
    double flags = score("flags", RELEASES.stream().filter(Release::flagged).toList(), iced);
    double best = 0;
    for (double metres = 0.5; metres < 30; metres += 0.5) {
      double within = metres;
      best =
          Math.max(
              best,
              score(
                  String.format(Locale.ROOT, "within %.1f m", metres),
                  iced.stream().filter(r -> r.shortOfCenter() <= within).toList(),
                  iced));
    }
    say("best by distance alone: F %.3f; flags: F %.3f", best, flags);
    assertTrue(flags > best + 0.05, "flags " + flags + ", distance " + best);
  }

  /** The harmonic mean of precision and recall. */
  private static double score(String name, List<Release> chosen, List<Release> iced) {
    long right = chosen.stream().filter(Release::avoidable).count();
    long avoidable = iced.stream().filter(Release::avoidable).count();
    if (right == 0) {
      return 0;
    }
    double precision = (double) right / chosen.size();
    double recall = (double) right / avoidable;
    if (name.equals("flags")) {
      say(
          "flags: %d of %d icings; precision %d of %d = %.3f, recall %d of %d = %.3f",
          chosen.size(), iced.size(), right, chosen.size(), precision, right, avoidable, recall);
      // Some hundred flags: other games of the same league move both by 0.03 either way.
      assertTrue(precision > 0.8, "precision " + precision);
      assertTrue(recall > 0.8, "recall " + recall);
    }
    return 2 * precision * recall / (precision + recall);
  }

  private static void say(String format, Object... values) {
    System.out.println(String.format(Locale.ROOT, format, values));
  }
}
