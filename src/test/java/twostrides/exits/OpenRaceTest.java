package twostrides.exits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import tech.tablesaw.api.Table;
import twostrides.checks.Printed;
import twostrides.game.Game;
import twostrides.race.Delivery;
import twostrides.race.RaceModel;
import twostrides.race.Regression;
import twostrides.race.Scene;
import twostrides.race.SeededRandom;
import twostrides.race.SkaterLevel;
import twostrides.race.SkaterSet;
import twostrides.rink.Rink;
import twostrides.season.Columns;
import twostrides.season.SkatersAtRelease;
import twostrides.sheet.SheetException;
import twostrides.stats.Count;
import twostrides.stats.Forecast;

/**
 * Chances of icing in six real games (open data) against the icings that happened: what the race
 * says with nobody's place known, and what {@code whatif} makes of it.
 */
class OpenRaceTest {

  @RegisterExtension static final Printed FIGURES = new Printed();

  /** Releases of the six games short of center, not of a team that the book exempts. */
  private static final int SHARED = 732;

  private static final int DRAWS = 200;

  private static twostrides.season.Season tables;
  private static List<Sent> sent;

  /**
   * A release.
   *
   * @param race the race's own chance of icing
   */
  private record Sent(String game, boolean missed, double race, boolean iced) {}

  @BeforeAll
  static void read() throws IOException, SheetException {
    OpenData.need();
    List<Game> women = OpenData.games();
    tables =
        twostrides.season.Season.of(women, List.of(), OpenData.SETTINGS, SkatersAtRelease.NONE);
    sent = new ArrayList<>(sent(women, tables.releases()));
    List<Game> tracked = TrackedReleases.games(OpenData.FOLDER.resolve("tracked-2023/native"));
    sent.addAll(
        sent(
            tracked,
            twostrides.season.Season.of(
                    tracked, List.of(), OpenData.SETTINGS, SkatersAtRelease.NONE)
                .releases()));
  }

  private static List<Sent> sent(List<Game> games, Table t) {
    Map<String, Game> byId =
        games.stream().collect(Collectors.toMap(Game::id, Function.identity()));
    return IntStream.range(0, t.rowCount())
        .parallel()
        .filter(i -> !Cells.text(t, Columns.STRENGTH, i).orElseThrow().equals("shorthanded"))
        .mapToObj(
            i ->
                new Sent(
                    game(t, i), missed(t, i), race(t, i, byId.get(game(t, i)).rink()), icing(t, i)))
        .toList();
  }

  private static double race(Table t, int i, Rink rink) {
    SkaterLevel level =
        game(t, i).startsWith("2023-12") ? SkaterLevel.ELITE_MEN : SkaterLevel.ELITE_WOMEN;
    Scene scene =
        new Scene(
            rink,
            number(t, Columns.RELEASE_X_M, i),
            Cells.number(t, Columns.RELEASE_Y_M, i).orElse(0),
            (missed(t, i) ? Delivery.MISSED_PASS : Delivery.SENT).forLevel(level),
            OptionalDouble.empty(),
            List.of(),
            SkaterSet.of(level));
    SeededRandom draws = new SeededRandom(1, game(t, i) + "#" + count(t, Columns.RELEASE, i));
    return new RaceModel(scene, OpenData.BOOK.raceQuestion()).run(draws, DRAWS).pIcing();
  }

  private static boolean missed(Table t, int i) {
    return Cells.text(t, Columns.KIND, i).orElseThrow().equals("missed_pass");
  }

  private static String game(Table t, int i) {
    return Cells.text(t, Columns.GAME, i).orElseThrow();
  }

  private static int count(Table t, String column, int i) {
    return Cells.count(t, column, i).orElseThrow();
  }

  private static double number(Table t, String column, int i) {
    return Cells.number(t, column, i).orElseThrow();
  }

  private static boolean icing(Table t, int i) {
    return Cells.text(t, Columns.RESTART_CAUSE, i).orElse("").startsWith("icing");
  }

  private static Count iced(Predicate<Sent> of) {
    List<Sent> some = sent.stream().filter(of).toList();
    return new Count((int) some.stream().filter(Sent::iced).count(), some.size());
  }

  /** What is said of a release: at most the share of the other games' releases of its kind. */
  private static Forecast carried(Sent s) {
    Count others = iced(o -> o.missed() == s.missed() && !o.game().equals(s.game()));
    return new Forecast(Math.min(s.race(), others.share().orElseThrow()), s.iced());
  }

  @Test
  void everyIcingNearCenterStandsInTheFlagsTable() throws IOException {
    Table t = tables.flags();
    int near = 0;
    List<String> why = new ArrayList<>();
    for (CSVRecord r : OpenData.icings()) {
      double shortOfCenter = Rink.NORTH_AMERICAN.shortOfCenter(OpenData.x(r));
      if (shortOfCenter > 5) {
        continue;
      }
      near++;
      int[] found =
          IntStream.range(0, t.rowCount())
              .filter(i -> game(t, i).equals(r.get("game")))
              .filter(i -> count(t, Columns.PERIOD, i) == Integer.parseInt(r.get("period")))
              .filter(
                  i ->
                      number(t, Columns.RELEASE_ELAPSED_S, i)
                          == 1200 - Integer.parseInt(r.get("release_clock_s")))
              .filter(i -> Cells.text(t, Columns.TEAM, i).orElseThrow().equals(r.get("team")))
              .toArray();
      assertEquals(1, found.length, "rows of the flags table for " + r);
      int i = found[0];
      boolean flag = Cells.flag(t, Columns.FLAGGED, i).orElseThrow();
      String sentence = Cells.text(t, "sentence", i).orElse("");
      assertEquals(shortOfCenter, number(t, Columns.SHORT_OF_CENTER_M, i), 0.01, r.toString());
      assertTrue(icing(t, i), "not taken for icing: " + r);
      assertTrue(
          sentence.startsWith("No verdict without skaters' places and speeds: "),
          "no order without places for " + r + ": " + sentence);
      assertTrue(!flag, "flagged without places: " + r);
      why.add(sentence);
    }
    FIGURES.say("icings let go within 5 m of center: %d, all to look at", near);
    why.forEach(System.err::println);
    assertEquals(8, near);
  }

  @Test
  void chancesOfIcing() {
    List<Forecast> race = sent.stream().map(s -> new Forecast(s.race(), s.iced())).toList();
    List<Forecast> carried = sent.stream().map(OpenRaceTest::carried).toList();
    Regression.score(FIGURES, "icing, the race alone", race, 1);
    Regression.Score held = Regression.score(FIGURES, "icing, held to the other games", carried, 1);
    int came = iced(s -> true).successes();
    double expected = carried.stream().mapToDouble(Forecast::probability).sum();
    FIGURES.say(
        "icings: %d of %d, the race expects %.1f, held to the other games %.1f",
        came, sent.size(), race.stream().mapToDouble(Forecast::probability).sum(), expected);
    for (boolean missed : new boolean[] {false, true}) {
      List<Forecast> kind =
          sent.stream()
              .filter(s -> s.missed() == missed)
              .map(s -> new Forecast(s.race(), s.iced()))
              .toList();
      Count shipped = (missed ? Delivery.MISSED_PASS : Delivery.SENT).iced();
      Count here = iced(s -> s.missed() == missed);
      FIGURES.say(
          "  %s: iced %d of %d = %.1f %% (shipped %d of %d), the race expects %.1f, area %.2f",
          missed ? "missed passes" : "sent",
          here.successes(),
          here.trials(),
          100 * here.share().orElseThrow(),
          shipped.successes(),
          shipped.trials(),
          kind.stream().mapToDouble(Forecast::probability).sum(),
          Regression.area(kind));
      if (sent.size() == SHARED) {
        assertEquals(here, shipped, "what is shipped is what was counted");
      }
    }
    // A coin expects half of all, the base rate orders nothing.
    assertEquals(came, expected, 0.25 * came, "icings expected");
    assertTrue(held.area() >= 0.55, "orders no better than a coin: area " + held.area());
  }
}
