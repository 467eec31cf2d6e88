package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import twostrides.checks.Printed;
import twostrides.rink.Rink;
import twostrides.rink.Units;
import twostrides.stats.Range;

/**
 * Release to whistle of real icings (open data) against the model's band: the time to the far goal
 * line of those drawn pucks that go the length, nobody in their way, and the whistle after it.
 * Written icings of tracked games are timed to the hundredth; those of event sheets are readings
 * with clocks in whole seconds, so that a gap of g means a true time within a second of g, with
 * triangular chance.
 */
class OpenWhistleTest {

  @RegisterExtension static final Printed FIGURES = new Printed();

  private static final int DRAWS = 1000;

  private static final List<String> SETS =
      List.of("women-2022", "women-2018-19", "women-2023", "men-2024", "women-league-2021");

  private static List<Icing> icings;

  /**
   * An icing.
   *
   * @param id what it is, for its draws
   * @param timed whether the gap is exact
   * @param missed whether a pass that was not received
   * @param gap seconds from the release to the whistle
   */
  private record Icing(
      String id,
      Rink rink,
      SkaterLevel level,
      double x,
      double y,
      boolean timed,
      boolean missed,
      double gap) {

    /** The model's 90 % band. */
    Range band() {
      Delivery d = (missed ? Delivery.MISSED_PASS : Delivery.SENT).forLevel(level);
      Scene scene =
          new Scene(rink, x, y, d, OptionalDouble.empty(), List.of(), SkaterSet.of(level));
      return PuckSpread.of(scene, new SeededRandom(1, id), DRAWS).whistle().orElseThrow();
    }

    /** Chance that the true time lies below another. */
    double below(double t) {
      if (timed) {
        return gap < t ? 1 : 0;
      }
      // Triangular about the gap, a second either way.
      double off = Math.max(-1, Math.min(1, t - gap));
      return off < 0 ? (1 + off) * (1 + off) / 2 : 1 - (1 - off) * (1 - off) / 2;
    }
  }

  @BeforeAll
  static void read() throws IOException {
    OpenTracked.need();
    icings = new ArrayList<>();
    for (Path folder : OpenTracked.folders()) {
      try (var files = Files.list(folder.resolve("native"))) {
        for (Path f : files.sorted().toList()) {
          written(OpenTracked.csv(folder.resolve("native"), f.getFileName().toString()));
        }
      }
    }
    for (String set : SETS) {
      Path folder = OpenTracked.FOLDER.resolve(set);
      for (CSVRecord r : OpenTracked.csv(folder, "own_zone_restarts.csv")) {
        if (r.get("reading").equals("icing")) {
          icings.add(
              new Icing(
                  set + r.get("game") + r.get("period") + r.get("release_clock_s"),
                  Rink.NORTH_AMERICAN,
                  set.startsWith("men") ? SkaterLevel.ELITE_MEN : SkaterLevel.ELITE_WOMEN,
                  Units.FOOT.toMetres(OpenTracked.number(r, "x_ft") - 100),
                  Units.FOOT.toMetres(OpenTracked.number(r, "y_ft") - 42.5),
                  false,
                  r.get("action").equals("Play:f"),
                  OpenTracked.number(r, "gap_s")));
        }
      }
    }
  }

  /** Icings that a native sheet of a tracked game writes, with the release before each. */
  private static void written(List<CSVRecord> rows) {
    for (int i = 0; i < rows.size(); i++) {
      if (!rows.get(i).get("stoppage").equals("icing")) {
        continue;
      }
      int draw = i;
      while (draw < rows.size() && !rows.get(draw).get("action").equals("faceoff")) {
        draw++;
      }
      if (draw == rows.size()) {
        continue;
      }
      CSVRecord at = rows.get(draw);
      boolean winners = OpenTracked.number(at, "x_m") < 0;
      for (int j = i - 1; j >= 0 && j > i - 4; j--) {
        CSVRecord r = rows.get(j);
        boolean theirs = r.get("team").equals(at.get("team")) == winners;
        boolean missed = r.get("action").equals("pass") && r.get("outcome").equals("missed");
        if (theirs && (missed || r.get("action").equals("release"))) {
          double x = OpenTracked.number(r, "x_m");
          double gap =
              OpenTracked.number(rows.get(i), "video_s") - OpenTracked.number(r, "video_s");
          if (x < 0) {
            boolean women = r.get("game").startsWith("2024-02-25");
            icings.add(
                new Icing(
                    r.get("game") + r.get("video_s"),
                    Rink.INTERNATIONAL,
                    women ? SkaterLevel.ELITE_WOMEN : SkaterLevel.ELITE_MEN,
                    x,
                    OpenTracked.number(r, "y_m"),
                    true,
                    missed,
                    gap));
          }
          break;
        }
      }
    }
  }

  @Test
  void theBandHoldsNineInTen() {
    List<Range> bands = icings.parallelStream().map(Icing::band).toList();
    held("timed to the hundredth", bands, Icing::timed);
    held("read from clocks in whole seconds", bands, i -> !i.timed());
    double sent = held("sent", bands, i -> !i.missed());
    double missed = held("missed passes", bands, Icing::missed);
    double all = held("all", bands, i -> true);
    // A band from 0 s to infinity would hold all, one of no width none.
    assertEquals(0.9, all, 0.06, "all");
    assertEquals(0.9, sent, 0.08, "sent");
    assertEquals(0.9, missed, 0.08, "missed passes");
  }

  private static double held(String what, List<Range> bands, Predicate<Icing> of) {
    int n = 0;
    double sooner = 0;
    double later = 0;
    double width = 0;
    double gap = 0;
    for (int i = 0; i < icings.size(); i++) {
      Icing icing = icings.get(i);
      if (of.test(icing)) {
        n++;
        sooner += icing.below(bands.get(i).low());
        later += 1 - icing.below(bands.get(i).high());
        width += bands.get(i).high() - bands.get(i).low();
        gap += icing.gap();
      }
    }
    double held = 1 - (sooner + later) / n;
    FIGURES.say(
        "release to whistle, %s: n %d, mean %.1f s; the 90 %% band, %.1f s wide on the mean, holds"
            + " %.2f, sooner %.2f, later %.2f",
        what, n, gap / n, width / n, held, sooner / n, later / n);
    return held;
  }
}
