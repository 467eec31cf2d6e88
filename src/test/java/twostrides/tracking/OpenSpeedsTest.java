package twostrides.tracking;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import twostrides.checks.Printed;
import twostrides.game.Usual;
import twostrides.race.Skater;
import twostrides.race.SkaterLevel;
import twostrides.race.SkaterSettings;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetFiles;
import twostrides.sheet.SheetMap;

/**
 * Speeds of the open tracking sheets, where they are present, against the race's skaters of elite
 * women. The picture's own motion is taken for skating when the camera turns, so every figure is
 * given by how fast the skaters seen move as one.
 */
class OpenSpeedsTest {

  @RegisterExtension static final Printed FIGURES = new Printed();

  private static final Path FOLDER =
      Path.of(System.getProperty("twostrides.openData", "../shared/open-data"));
  private static final Path MAPS = Path.of("docs/maps");
  private static final String ABSENT =
      "SKIPPED: no open tracking sheets at " + FOLDER + " (set -Dtwostrides.openData)";
  private static final List<TrackedGame> GAMES =
      List.of(
          new TrackedGame("2022-02-08-A-at-B", "Team B", "Team A", Usual.DEFAULT),
          new TrackedGame("2022-02-12-E-at-D", "Team D", "Team E", Usual.DEFAULT),
          new TrackedGame("2022-02-16-E-at-C", "Team C", "Team E", Usual.DEFAULT));

  /**
   * 90 % of the sprint speed of 28.3 km/h of university women, who skate at that or more in under 1
   * % of their time on the ice: Gamble et al. 2024, IJSPP 19:496 (abstract).
   */
  private static final double NEARLY_SPRINTING = 0.9 * 28.3 / 3.6;

  /** Top speed of the same women in games, m/s, by the same source. */
  private static final double PUBLISHED_TOP = 8.19;

  /** The fast end of the level's own range: times its top speed, and its time constant in s. */
  private static final double FAST = 1.1;

  private static final double FAST_TAU = 1.2;

  private static final double[] COMMON = {1, 2, 5, Double.POSITIVE_INFINITY};
  private static final SkaterSettings WOMEN = SkaterLevel.ELITE_WOMEN.settings();

  @BeforeAll
  static void needsTheFolder() {
    if (!Files.isDirectory(FOLDER)) {
      System.err.println(ABSENT);
    }
    Assumptions.assumeTrue(Files.isDirectory(FOLDER), ABSENT);
  }

  /** What was seen while the skaters moved as one at a speed between two bounds. */
  private static final class Seen {
    private final List<Double> speeds = new ArrayList<>();
    private final List<Double> outside = new ArrayList<>();
    private int outsideFastest;

    void speed(double v) {
      speeds.add(v);
    }

    /** A second later: metres outside the disc that the race's skater can be in, below 0 inside. */
    void later(SeenSkater then, SeenSkater now, Motion.Moving m) {
      outside.add(-slack(then, now, m, WOMEN.topSpeed(), WOMEN.tau()));
      outsideFastest += slack(then, now, m, FAST * WOMEN.topSpeed(), FAST_TAU) < 0 ? 1 : 0;
    }

    private static double slack(
        SeenSkater then, SeenSkater now, Motion.Moving m, double topSpeed, double tau) {
      double dx = then.place().x() - now.place().x();
      double dy = then.place().y() - now.place().y();
      return new Skater(topSpeed, tau, 0, 0).slack(1, dx, dy, m.vx(), m.vy());
    }

    double above(double v) {
      return speeds.stream().filter(s -> s > v).count() / (double) speeds.size();
    }

    double outside() {
      return outside.stream().filter(o -> o > 0).count() / (double) outside.size();
    }

    String words() {
      return String.format(
          Locale.ROOT,
          "%d speeds, median %.1f, 95 %% %.1f, 99 %% %.1f, most %.1f m/s; above 7 m/s %.2f %%, above"
              + " %.2f %.2f %%, above %.1f %.2f %%; %d places a second later, %.1f %% outside the"
              + " disc, 99 %% of them by less than %.1f m, %.1f %% at the fast end of the range",
          speeds.size(),
          quantile(speeds, 0.5),
          quantile(speeds, 0.95),
          quantile(speeds, 0.99),
          quantile(speeds, 1),
          100 * above(7),
          NEARLY_SPRINTING,
          100 * above(NEARLY_SPRINTING),
          WOMEN.topSpeed(),
          100 * above(WOMEN.topSpeed()),
          outside.size(),
          100 * outside(),
          quantile(outside, 0.99),
          100.0 * outsideFastest / outside.size());
    }

    private static double quantile(List<Double> list, double q) {
      double[] sorted = list.stream().mapToDouble(v -> v).sorted().toArray();
      return sorted[(int) (q * (sorted.length - 1))];
    }
  }

  @Test
  void speedsByTheCommonSpeed() throws SheetException {
    FIGURES.say(
        "the disc: %.1f m/s, %.2f s; at the fast end of the range %.2f m/s, %.1f s; published: at"
            + " most %.2f m/s in games",
        WOMEN.topSpeed(), WOMEN.tau(), FAST * WOMEN.topSpeed(), FAST_TAU, PUBLISHED_TOP);
    for (double window : new double[] {0.3, 0.5, 1.0}) {
      List<Seen> seen = new ArrayList<>();
      for (int i = 0; i < COMMON.length; i++) {
        seen.add(new Seen());
      }
      for (TrackedGame game : GAMES) {
        look(game, Smoother.over(window), seen);
      }
      for (int i = 0; i < COMMON.length; i++) {
        FIGURES.say(
            "open speeds: window %.1f s, together below %.0f m/s: %s",
            window, COMMON[i], seen.get(i).words());
      }
      double calm =
          (seen.get(0).above(NEARLY_SPRINTING) * seen.get(0).speeds.size()
                  + seen.get(1).above(NEARLY_SPRINTING) * seen.get(1).speeds.size())
              / (seen.get(0).speeds.size() + seen.get(1).speeds.size());
      double all = 0;
      int n = 0;
      for (Seen s : seen) {
        all += s.above(NEARLY_SPRINTING) * s.speeds.size();
        n += s.speeds.size();
      }
      FIGURES.say(
          "open speeds: window %.1f s, above %.2f m/s: %.2f %% of all, %.2f %% with a calm picture",
          window, NEARLY_SPRINTING, 100 * all / n, 100 * calm);
      assertTrue(calm < 0.01, "published: under 1 % of the time; here " + calm);
      assertTrue(all / n > 0.03, "the camera no longer decides the fast speeds: " + all / n);
      assertTrue(seen.get(0).outside() < 0.1, "skaters leave the disc: " + seen.get(0).outside());
      assertTrue(seen.get(3).outside() > 0.25, "the camera's turn no longer shows");
    }
  }

  private static void look(TrackedGame game, Smoother smoother, List<Seen> seen)
      throws SheetException {
    Sync starts =
        TrackSheets.powerPlays(FOLDER, MAPS, game.id(), "womens-2022-power-play-starts.toml");
    Tracks tracks =
        Tracks.read(
            SheetFiles.find(List.of(FOLDER + "/" + game.id() + "*.tracking.csv")),
            map("womens-2022-tracking.toml"),
            game,
            starts);
    for (ClockPair start : starts.pairs()) {
      for (double s = 0; s < 180; s += 0.25) {
        Skaters now = tracks.at(start.period(), start.video() + s, smoother);
        Skaters then = tracks.at(start.period(), start.video() + s + 1, smoother);
        if (now.commonSpeed().isEmpty()) {
          continue;
        }
        double common = now.commonSpeed().getAsDouble();
        double worse = Math.max(common, then.commonSpeed().orElse(common));
        for (SeenSkater k : now.seen()) {
          if (k.motion() instanceof Motion.Moving m) {
            seen.get(bin(common)).speed(m.speed());
            then.seen().stream()
                .filter(t -> t.track().equals(k.track()) && t.home() == k.home())
                .forEach(t -> seen.get(bin(worse)).later(t, k, m));
          }
        }
      }
    }
  }

  private static int bin(double common) {
    int i = 0;
    while (common >= COMMON[i]) {
      i++;
    }
    return i;
  }

  private static Optional<SheetMap> map(String name) throws SheetException {
    return Optional.of(SheetMap.read(MAPS.resolve(name), TrackForm.ALL));
  }
}
