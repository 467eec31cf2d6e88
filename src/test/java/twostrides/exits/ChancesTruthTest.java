package twostrides.exits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import tech.tablesaw.api.Table;
import twostrides.checks.Printed;
import twostrides.demo.DemoGame;
import twostrides.demo.DemoLeague;
import twostrides.game.SeasonReader;
import twostrides.game.SheetsRead;
import twostrides.season.Columns;
import twostrides.season.FlagVerdict;
import twostrides.season.SkatersAtRelease;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetFiles;

/** Flags, and the order to look in, against simulated games whose truth is known. */
class ChancesTruthTest {

  private static final int GAMES = 24;
  private static final long SEED = 20311004;

  /**
   * Truly avoidable: a chance of gaining center that clears the threshold with the restarts that
   * follow gaining it taken off.
   */
  private static final double AVOIDABLE = 0.65;

  @RegisterExtension static final Printed FIGURES = new Printed();

  @TempDir static Path dir;

  private static final List<Release> RELEASES = new ArrayList<>();

  /** What the pipeline says of a release and what was so. */
  private record Release(
      double pGain,
      boolean flagged,
      String evidence,
      String reason,
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
    SheetsRead season =
        SeasonReader.read(
            SheetFiles.find(List.of(dir.toString())), Optional.empty(), false, n -> {});
    Table t =
        twostrides.season.Season.of(
                season.games(), season.tagged(), Settings.DEFAULT, SkatersAtRelease.NONE)
            .releases();
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
              t.doubleColumn(Columns.P_GAIN_CENTER).getDouble(i),
              t.booleanColumn(Columns.FLAGGED).get(i),
              t.stringColumn(Columns.EVIDENCE).get(i),
              t.stringColumn(Columns.REASON).get(i),
              t.doubleColumn(Columns.SHORT_OF_CENTER_M).getDouble(i),
              r.get("cause").equals("icing"),
              Double.parseDouble(r.get("p_gain_center"))));
    }
  }

  /** Pressure tags say where to look first, and never more. */
  @Test
  void withoutPlacesNothingIsFlaggedAndTheOrderToLookInBeatsDistanceAlone() {
    List<Release> without = RELEASES.stream().filter(r -> r.evidence().equals("tagged")).toList();
    List<Release> look =
        without.stream().filter(r -> r.reason().equals(FlagVerdict.LOOK.words())).toList();
    assertEquals(0, without.stream().filter(Release::flagged).count());
    assertEquals(without.stream().filter(Release::iced).toList(), look);
    double order = area(look, Comparator.comparingDouble(Release::pGain), Release::avoidable);
    double near =
        area(look, Comparator.comparingDouble(r -> -r.shortOfCenter()), Release::avoidable);
    FIGURES.say(
        "order to look in: area %.3f by the tags, %.3f by distance, %d icings",
        order, near, look.size());
    assertTrue(order > near + 0.05, "tags " + order + ", distance " + near);
  }

  /** How often one that gains center comes before one that does not, of all pairs; ties half. */
  private static double area(
      List<Release> all, Comparator<Release> likelier, Predicate<Release> gained) {
    double before = 0;
    long pairs = 0;
    for (Release a : all) {
      for (Release b : all) {
        if (gained.test(a) && !gained.test(b)) {
          int c = likelier.compare(a, b);
          before += c > 0 ? 1 : c == 0 ? 0.5 : 0;
          pairs++;
        }
      }
    }
    return before / pairs;
  }

  /**
   * Measured from places and speeds, and what 40 futures of the simulated world say: put right by
   * real carriers, the chance need not be that of this world, but it has to order its releases.
   */
  @Test
  void measuredChancesOrderWhatWouldHaveBeen() {
    List<Release> seen = RELEASES.stream().filter(r -> r.evidence().equals("measured")).toList();
    for (int fifth = 0; fifth < 5; fifth++) {
      int at = fifth;
      List<Release> in =
          seen.stream().filter(r -> Math.min(4, (int) (5 * r.pGain())) == at).toList();
      FIGURES.say(
          "measured, fifth %d: n %d, said %.2f, true %.2f",
          fifth + 1,
          in.size(),
          in.stream().mapToDouble(Release::pGain).average().orElse(Double.NaN),
          in.stream().mapToDouble(Release::trueGain).average().orElse(Double.NaN));
    }
    List<Release> flagged = seen.stream().filter(Release::flagged).toList();
    FIGURES.say(
        "flagged: %d, of them %d truly more likely than not to have gained center",
        flagged.size(), flagged.stream().filter(r -> r.trueGain() > 0.5).count());
    Predicate<Release> likely = r -> r.trueGain() > 0.5;
    double order = area(seen, Comparator.comparingDouble(Release::pGain), likely);
    double near = area(seen, Comparator.comparingDouble(r -> -r.shortOfCenter()), likely);
    FIGURES.say("measured: n %d, area %.3f, by distance %.3f", seen.size(), order, near);
    assertTrue(order > near + 0.05, "measured " + order + ", distance " + near);
  }
}
