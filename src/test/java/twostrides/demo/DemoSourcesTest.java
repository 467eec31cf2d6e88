package twostrides.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import twostrides.rink.Rink;

/** Real sources differ in what they write, and so do the sheets of a season. */
class DemoSourcesTest {
  private static final Rink RINK = Rink.NORTH_AMERICAN;
  private static final long SEED = 16;
  private static DemoSeason season;

  @BeforeAll
  static void play() {
    season = DemoLeague.simulate(12, SEED);
  }

  private static Set<Integer> gamesWith(String column) {
    return season.games().stream()
        .filter(g -> Tables.parse(g.sheetCsv()).stream().anyMatch(r -> Tables.has(r, column)))
        .map(DemoGame::number)
        .collect(Collectors.toSet());
  }

  @Test
  void someGamesHavePlacesSomePressureMostNeither() {
    assertEquals(Set.of(3, 6, 9, 12), gamesWith("own_skaters"));
    assertEquals(Set.of(3, 6, 9, 12), gamesWith("opponent_skaters"));
    assertEquals(Set.of(1, 4, 7, 10), gamesWith("pressure"));
  }

  @Test
  void skatersStandInEveryTouchShortOfCenterOfATrackedGame() {
    DemoGame game = season.games().get(2);
    int written = 0;
    for (CSVRecord row : Tables.parse(game.sheetCsv())) {
      boolean lets = Set.of("pass", "release").contains(row.get("action"));
      if (lets && RINK.shortOfCenter(Tables.number(row, "x_m")) > 0) {
        assertEquals(Tables.number(row, "skaters_for"), cells(row, "own_skaters"));
        assertEquals(Tables.number(row, "skaters_against"), cells(row, "opponent_skaters"));
        written++;
      } else if (!Tables.has(row, "x_m") || Tables.number(row, "x_m") > 0) {
        assertTrue(!Tables.has(row, "own_skaters"), row::toString);
      }
    }
    assertTrue(written > 300, "rows with skaters: " + written);
  }

  /** Skaters of a cell, each with place and speed. */
  private static double cells(CSVRecord row, String column) {
    String[] skaters = row.get(column).split("; ", -1);
    for (String skater : skaters) {
      assertEquals(4, skater.split(" ", -1).length, row::toString);
    }
    return skaters.length;
  }

  /** A row of the other team between a release and the stoppage for icing, and nothing but that. */
  @Test
  void threeSheetsHaveWhistleTouches() {
    Map<Integer, Integer> touches = new TreeMap<>();
    int icings = 0;
    for (DemoGame game : season.games()) {
      List<CSVRecord> rows = Tables.parse(game.sheetCsv());
      for (int i = 1; i < rows.size(); i++) {
        CSVRecord row = rows.get(i);
        CSVRecord before = rows.get(i - 1);
        if (!Tables.is(row, "stoppage", "icing")) {
          continue;
        }
        icings += game.source().whistleTouches() ? 1 : 0;
        if (!before.get("team").equals(row.get("team"))) {
          touches.merge(game.number(), 1, Integer::sum);
          assertEquals("recovery", before.get("action"));
          assertEquals(Tables.elapsed(row), Tables.elapsed(before));
          assertTrue(Tables.number(before, "x_m") <= -20.9, before::toString);
        }
      }
    }
    assertEquals(Set.of(2, 7, 12), touches.keySet());
    int sum = touches.values().stream().mapToInt(n -> n).sum();
    assertTrue(sum > 0.5 * icings && sum < icings, sum + " touches at " + icings + " icings");
  }

  /** Clicked are icings of the team in games that are not tracked, where the truth has them. */
  @Test
  void someIcingsHaveClickedPlaces() {
    Map<String, List<CSVRecord>> clicked =
        Tables.parse(season.placesCsv()).stream()
            .collect(
                Collectors.groupingBy(
                    r -> r.get("game") + " " + r.get("period") + " " + r.get("clock")));
    assertTrue(clicked.size() >= 5, "icings with clicks: " + clicked.size());
    Map<String, ReleaseTruth> icings = new TreeMap<>();
    Set<String> tracked = new HashSet<>();
    int all = 0;
    for (DemoGame game : season.games()) {
      for (ReleaseTruth r : game.releases()) {
        boolean ours = game.team(r.by.side()).name().equals(season.team());
        if (ours && r.cause == ExitTruth.Cause.ICING) {
          all++;
          icings.put(game.id() + " " + r.period + " " + SheetCsv.clock(r.release), r);
        }
      }
      if (game.source().places()) {
        tracked.add(game.id());
      }
    }
    assertTrue(clicked.size() < all / 2, clicked.size() + " of " + all + " icings clicked");
    List<Double> off = new ArrayList<>();
    clicked.forEach(
        (where, rows) -> {
          ReleaseTruth icing = icings.get(where);
          assertTrue(!tracked.contains(rows.get(0).get("game")), where);
          assertEquals(5, rows.size(), where);
          assertEquals("yes", rows.get(0).get("carrier"));
          assertEquals(icing.by.skater().label(), rows.get(0).get("let_go_by"));
          assertEquals(
              3, rows.stream().filter(r -> Tables.is(r, "team", "opponent")).count(), where);
          off.add(
              Math.hypot(
                  Tables.number(rows.get(0), "x_m") - icing.by.at().x(),
                  Tables.number(rows.get(0), "y_m") - icing.by.at().y()));
        });
    double mean = off.stream().mapToDouble(d -> d).average().orElseThrow();
    assertTrue(mean > 0.2 && mean < 1.2, "clicks are off by " + mean + " m on average");
  }

  /** The one habit to be found: he is iced far more often than anybody else of his team. */
  @Test
  void thePlayersTruthNamesOneWhoIsIcedMoreOften() {
    List<CSVRecord> own =
        Tables.parse(season.playersTruthCsv()).stream()
            .filter(r -> r.get("team").equals(season.team()))
            .filter(r -> Integer.parseInt(r.get("releases")) >= 40)
            .toList();
    assertTrue(own.size() >= 8, "players with 40 releases: " + own.size());
    for (CSVRecord r : own) {
      boolean hasIt = r.get("player").startsWith("4 ");
      double share = Tables.number(r, "p_icing");
      assertTrue(hasIt ? share > 0.13 : share < 0.08, r::toString);
    }
    int iced =
        Tables.parse(season.playersTruthCsv()).stream()
            .mapToInt(r -> Integer.parseInt(r.get("iced")))
            .sum();
    long stoppages =
        season.games().stream()
            .flatMap(g -> Tables.parse(g.sheetCsv()).stream())
            .filter(r -> Tables.is(r, "stoppage", "icing"))
            .count();
    assertEquals(stoppages, iced);
  }
}
