package twostrides.tracking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import twostrides.game.Game;
import twostrides.game.PlayRow;
import twostrides.game.SeasonReader;
import twostrides.game.SheetForms;
import twostrides.game.Usual;
import twostrides.rink.Place;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetFiles;
import twostrides.sheet.SheetMap;

/**
 * Open tracking sheets of 18 power plays, where they are present. Validation: counts of lines made
 * without this program, and the places that the event sheets give for the same players.
 */
class OpenTrackingTest {
  private static final Path FOLDER =
      Path.of(System.getProperty("twostrides.openData", "../shared/open-data"));
  private static final Path MAPS = Path.of("docs/maps");
  private static final String ABSENT =
      "Not checked: the open tracking sheets are not in "
          + FOLDER
          + ". Set -Dtwostrides.openData=FOLDER to check against them.";
  private static final List<TrackedGame> GAMES =
      List.of(
          new TrackedGame("2022-02-08-A-at-B", "Team B", "Team A", Usual.DEFAULT),
          new TrackedGame("2022-02-12-E-at-D", "Team D", "Team E", Usual.DEFAULT),
          new TrackedGame("2022-02-16-E-at-C", "Team C", "Team E", Usual.DEFAULT));

  @BeforeAll
  static void saysThatTheFolderIsAbsent() {
    if (!Files.isDirectory(FOLDER)) {
      // The build's console counts skipped tests but does not say why.
      System.err.println(ABSENT);
    }
  }

  @BeforeEach
  void needsTheFolder() {
    Assumptions.assumeTrue(Files.isDirectory(FOLDER), ABSENT);
  }

  private static Optional<SheetMap> map(String name) throws SheetException {
    return Optional.of(SheetMap.read(MAPS.resolve(name), TrackForm.ALL));
  }

  private static Sync sync(TrackedGame game) throws SheetException {
    return TrackSheets.powerPlays(
        FOLDER,
        MAPS,
        game.id(),
        "womens-2022-power-play-starts.toml",
        "womens-2022-power-play-ends.toml");
  }

  private static Tracks tracks(TrackedGame game, String files) throws SheetException {
    return Tracks.read(
        SheetFiles.find(List.of(FOLDER + "/" + game.id() + files + ".tracking.csv")),
        map("womens-2022-tracking.toml"),
        game,
        sync(game));
  }

  @Test
  void everyRowIsUsedOrSetAside() throws Exception {
    int read = 0;
    int used = 0;
    Map<String, Integer> why = new TreeMap<>();
    for (TrackedGame game : GAMES) {
      for (Path file : SheetFiles.find(List.of(FOLDER + "/" + game.id() + "*.tracking.csv"))) {
        String name = file.getFileName().toString();
        Tracks tracks =
            Tracks.read(List.of(file), map("womens-2022-tracking.toml"), game, sync(game));
        try (var lines = Files.lines(file)) {
          assertEquals(lines.count() - 1, tracks.rowsRead(), name);
        }
        read += tracks.rowsRead();
        used += tracks.rowsUsed();
        tracks.setAside().forEach(r -> why.merge(r.problems().get(0).column(), 1, Integer::sum));
        say(figures(name, tracks));
      }
    }
    say("rows read " + read + ", used " + used + ", set aside by column (first 10,000) " + why);
    assertEquals(309_889, read);
    assertEquals(286_454, used);
    // One sheet says period 2 for frames that begin in period 1: all its 17,529 rows are set aside.
    assertEquals(10_000, why.get("period"));
    assertEquals(List.of("period", "x_ft", "y_ft"), List.copyOf(why.keySet()));
  }

  /** One line of figures: speeds of every fifth row, over three windows. */
  private static String figures(String name, Tracks tracks) {
    TreeSet<Double> frames = new TreeSet<>();
    tracks.tracks().forEach(t -> rows(t).forEach(i -> frames.add(t.second(i))));
    StringBuilder line =
        new StringBuilder(
            String.format(
                Locale.ROOT,
                "| %s | %d | %d | %d | %d | %.1f ",
                name.replace(".tracking.csv", ""),
                tracks.rowsRead(),
                tracks.rowsSetAside(),
                frames.size(),
                tracks.tracks().size(),
                tracks.rowsUsed() / (double) Math.max(1, frames.size())));
    for (double window : new double[] {0.3, 0.5, 1.0}) {
      Smoother smoother = Smoother.over(window);
      List<Double> speeds = new ArrayList<>();
      int tooFast = 0;
      double errors = 0;
      for (Track track : tracks.tracks()) {
        for (int i : rows(track)) {
          Motion motion = i % 5 == 0 ? smoother.motion(track, track.second(i)) : null;
          if (motion instanceof Motion.Moving m) {
            speeds.add(m.speed());
            errors += m.standardError();
          } else if (motion instanceof Motion.TooFast) {
            tooFast++;
          }
        }
      }
      double[] sorted = speeds.stream().mapToDouble(v -> v).sorted().toArray();
      int n = sorted.length;
      if (n > 0) {
        line.append(
            String.format(
                Locale.ROOT,
                "| %.1f %% / %.1f / %.1f / %d (se %.2f) ",
                100.0 * Arrays.stream(sorted).filter(v -> v > 7).count() / n,
                sorted[(int) (0.99 * (n - 1))],
                sorted[n - 1],
                tooFast,
                errors / n));
      }
    }
    return line.append('|').toString();
  }

  private static List<Integer> rows(Track track) {
    return IntStream.range(0, track.rows()).boxed().toList();
  }

  @Test
  void trackedPlayersAreWhereTheirEventsAre() throws Exception {
    SheetMap events = SheetMap.read(MAPS.resolve("womens-2022-open-data.toml"), SheetForms.ALL);
    Map<Double, List<Double>> byLag = new TreeMap<>();
    List<Double> mirrored = new ArrayList<>();
    int clockRan = 0;
    for (TrackedGame game : GAMES) {
      List<Path> sheet = SheetFiles.find(List.of(FOLDER + "/" + game.id() + ".events.csv"));
      Game played = SeasonReader.read(sheet, Optional.of(events), false, n -> {}).games().get(0);
      Tracks tracks = tracks(game, "*");
      VideoClock clock = tracks.clock(sync(game));
      assertEquals(List.of(), clock.doubts());
      for (PlayRow row : played.rows()) {
        boolean usable =
            row.team().isPresent() && row.player().isPresent() && row.place().isPresent();
        if (!usable
            || !(clock.videoAt(row.period(), row.elapsed(), 1) instanceof ClockMatch.At at)
            || !at.clockRan()) {
          continue;
        }
        clockRan++;
        boolean home = row.team().get().equals(game.home());
        int number = Integer.parseInt(row.player().get().substring(1));
        for (double lag = -5; lag <= 5; lag += 0.5) {
          Skaters seen = tracks.at(row.period(), at.seconds() + lag, Smoother.USUAL);
          for (SeenSkater s : (home ? seen : seen.seenByOpponent()).of(home)) {
            if (s.number().orElse(-1) == number) {
              Place event = row.place().get();
              byLag.computeIfAbsent(lag, l -> new ArrayList<>()).add(s.place().distanceTo(event));
              if (lag == 0.5) {
                mirrored.add(s.place().distanceTo(new Place(event.x(), -event.y())));
              }
            }
          }
        }
      }
    }
    Map<Double, Double> medians = new TreeMap<>();
    byLag.forEach((lag, list) -> medians.put(lag, median(list)));
    say("events with a running clock " + clockRan + ", players found " + byLag.get(0.5).size());
    say(
        medians.entrySet().stream()
            .map(e -> String.format(Locale.ROOT, "%.1f s %.1f m", e.getKey(), e.getValue()))
            .collect(Collectors.joining("; ", "median distance by lag: ", "")));
    say(String.format(Locale.ROOT, "y turned round: %.1f m", median(mirrored)));
    double best =
        medians.entrySet().stream().min(Map.Entry.comparingByValue()).orElseThrow().getKey();
    assertTrue(best >= -0.5 && best <= 1.5, "frame 0 is not the start: best at " + best);
    assertTrue(medians.get(best) < medians.get(-4.0) / 2, medians.toString());
    assertTrue(median(mirrored) > 2 * medians.get(0.5), "y runs the other way");
  }

  @Test
  void highSpeedsComeTogether() throws Exception {
    int fast = 0;
    int together = 0;
    for (TrackedGame game : GAMES) {
      Tracks tracks = tracks(game, "*");
      Sync starts =
          TrackSheets.powerPlays(FOLDER, MAPS, game.id(), "womens-2022-power-play-starts.toml");
      for (ClockPair start : starts.pairs()) {
        for (double s = 0; s < 180; s += 0.5) {
          Skaters seen = tracks.at(start.period(), start.video() + s, Smoother.USUAL);
          long here =
              seen.seen().stream()
                  .filter(k -> k.motion() instanceof Motion.Moving m && m.speed() > 7)
                  .count();
          if (seen.commonSpeed().isPresent()) {
            fast += (int) here;
            together += seen.commonSpeed().getAsDouble() > 5 ? (int) here : 0;
          }
        }
      }
    }
    say(fast + " speeds above 7 m/s, " + together + " while the common speed is above 5 m/s");
    assertTrue(together > 0.75 * fast, "high speeds are not the camera's: " + together);
  }

  private static double median(List<Double> list) {
    return list.stream().mapToDouble(v -> v).sorted().toArray()[list.size() / 2];
  }

  @Test
  void theClockOfTheVideoCoversThePowerPlays() throws Exception {
    VideoClock clock = VideoClock.of(sync(GAMES.get(0)).pairs());
    // The first: 6:26 left at video second 1278, 5:50 left at 1314, no stoppage between.
    ClockMatch.At ran = assertInstanceOf(ClockMatch.At.class, clock.videoAt(1, 1200 - 366, 1));
    assertEquals(1298, ran.seconds(), 1e-9);
    assertEquals(1.5, ran.plusMinus(), 0.01);
    // The third lasted 120 s of play and 153 s of video.
    ClockMatch.At stood = assertInstanceOf(ClockMatch.At.class, clock.videoAt(2, 1200 - 931, 1));
    assertEquals(1.5 + 33 / 2.0, stood.plusMinus(), 0.01);
    assertInstanceOf(ClockMatch.NotCovered.class, clock.videoAt(1, 10, 1));
  }

  private static void say(String line) {
    System.err.println("open tracking: " + line);
  }
}
