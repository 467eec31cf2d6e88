package twostrides.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import twostrides.book.BookNote;
import twostrides.book.BookOptions;
import twostrides.book.Format;
import twostrides.book.Imprint;
import twostrides.book.ReviewBook;
import twostrides.book.Videos;
import twostrides.season.Columns;
import twostrides.season.Season;
import twostrides.season.SeasonTables;

/**
 * Seasons at the edge: nothing, one of everything, none of all, all of all. Every page is written,
 * no number on it is none, and no share stands on fewer than ten.
 */
class EdgeSeasonsTest {

  private static final Pattern NO_NUMBER =
      Pattern.compile("\\b(NaN|Infinity|null|Optional(\\[|\\.empty|Double|Int))|\uFFFD|∞");

  private static final Pattern COUNTS = Pattern.compile("(\\d+) of (\\d+)");

  @TempDir Path dir;

  private static Object[] row(Object... cells) {
    Object[] shared = {
      Columns.GAME,
      "one",
      Columns.PERIOD,
      1,
      Columns.RELEASE_ELAPSED_S,
      30.0,
      Columns.TEAM,
      "Herons",
      Columns.OPPONENT,
      "Wolves",
      Columns.PLAYER,
      "8 Brandt",
      Columns.RELEASE_X_M,
      -4.0,
      Columns.RELEASE_Y_M,
      2.0,
      Columns.SHEET,
      "one.csv",
      Columns.LINE,
      7
    };
    Object[] all = Arrays.copyOf(shared, shared.length + cells.length);
    System.arraycopy(cells, 0, all, shared.length, cells.length);
    return all;
  }

  /** Chips, releases and restarts, n of each, of which all or none were iced. */
  private static SeasonTables alike(int n, boolean iced, String strength, Object... more) {
    SeasonTables t = new SeasonTables();
    for (int i = 0; i < n; i++) {
      Object[] same = {
        Columns.STRENGTH, strength,
        Columns.OWN_ZONE_RESTART, iced,
        Columns.RESTART_CAUSE, iced ? "icing_written" : "none"
      };
      Object[] cells = Stream.concat(Stream.of(same), Stream.of(more)).toArray();
      t.exit(with(row(Columns.WAY_OUT, "chip"), cells));
      t.release(
          with(
              row(Columns.KIND, "sent", Columns.SHORT_OF_CENTER_M, 3.81),
              Stream.concat(Stream.of(cells), Stream.of("next_touch", "none")).toArray()));
      if (iced) {
        t.restart(
            with(
                row(Columns.OWN_LAST, true, Columns.REASON, "the sheet says icing"),
                Stream.concat(
                        Stream.of(cells),
                        Stream.of(Columns.WON_BY, i % 2 == 0 ? "own" : "opponent"))
                    .toArray()));
      }
    }
    return t;
  }

  private static Object[] with(Object[] row, Object... more) {
    return Stream.concat(Stream.of(row), Stream.of(more)).toArray();
  }

  private static Object[] shots(int attempts, int goals) {
    return new Object[] {
      "attempts_against_20s", attempts,
      "goals_against_20s", goals,
      "attempts_against_30s", attempts,
      "goals_against_30s", goals,
      "goals_for_20s", 0
    };
  }

  /** What a tag sheet gives at most: no clock of a draw, no shots, no relief, no kills. */
  private static SeasonTables tagged() {
    SeasonTables t = new SeasonTables();
    for (int i = 0; i < 12; i++) {
      Object[] end = {
        Columns.STRENGTH,
        i % 2 == 0 ? "even" : "shorthanded",
        Columns.VENUE,
        "home",
        Columns.OWN_ZONE_RESTART,
        i < 4,
        Columns.RESTART_CAUSE,
        i < 2 ? "icing_written" : i < 4 ? "unknown" : "none"
      };
      t.exit(with(row(Columns.WAY_OUT, i < 6 ? "chip" : "kept in"), end));
      if (i < 6) {
        t.release(
            with(
                row(Columns.KIND, "sent", Columns.SHORT_OF_CENTER_M, 3.81),
                with(end, "next_touch", "none")));
      }
      if (i < 4) {
        t.restart(with(row(Columns.OWN_LAST, true, Columns.REASON, "tagged as icing"), end));
      }
    }
    return t;
  }

  private static SeasonTables oneKill() {
    return alike(
            12,
            false,
            "shorthanded",
            with(
                shots(1, 0),
                Columns.SECONDS_UNTIL_REENTRY,
                9.0,
                Columns.RELIEF_CUT_SHORT,
                true,
                "kill",
                1))
        .kill(
            Columns.GAME,
            "one",
            "kill",
            1,
            Columns.TEAM,
            "Herons",
            Columns.OPPONENT,
            "Wolves",
            Columns.PERIOD,
            1,
            Columns.ELAPSED_S,
            20.0,
            Columns.SECONDS,
            0.0,
            "attempts_against",
            12,
            Columns.GOALS_AGAINST,
            0);
  }

  private static Map<String, SeasonTables> seasons() {
    Map<String, SeasonTables> all = new LinkedHashMap<>();
    all.put("no rows", new SeasonTables());
    all.put("one exit", alike(1, false, "even"));
    all.put("one icing", alike(1, true, "even", shots(0, 0)));
    all.put(
        "one game", SeasonTables.drawn(5, 1, "Herons", List.of("Wolves"), List.of("8", "9"), 60));
    all.put(
        "one player",
        SeasonTables.drawn(6, 12, "Herons", List.of("Wolves", "Otters"), List.of("8"), 200));
    all.put("nine of a kind", alike(9, true, "even", shots(1, 0)));
    all.put("0 of n", alike(30, false, "even", shots(0, 0)));
    all.put("n of n", alike(30, true, "power play", shots(3, 1)));
    all.put("all relief cut short", oneKill());
    all.put(
        "all relief over at once",
        alike(
            12,
            false,
            "shorthanded",
            Columns.SECONDS_UNTIL_REENTRY,
            0.0,
            Columns.RELIEF_CUT_SHORT,
            false));
    all.put("no shots in the sheets", alike(15, true, "even"));
    all.put(
        "nothing but an empty net",
        alike(
            15,
            true,
            "even",
            Columns.NET_EMPTY,
            "opponent",
            Columns.SHOT,
            true,
            Columns.SCORED,
            false));
    all.put("tags only", tagged());
    SeasonTables nameless = new SeasonTables();
    for (int i = 0; i < 12; i++) {
      nameless.exit(
          with(row(Columns.WAY_OUT, "kept in", Columns.RESTART_CAUSE, ""), Columns.PLAYER, ""));
    }
    all.put("no names, no strength, no endings", nameless);
    return all;
  }

  @TestFactory
  Stream<DynamicTest> everyPageOfASeasonAtTheEdgeCanBeRead() {
    return seasons().entrySet().stream()
        .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> check(e.getKey(), e.getValue())));
  }

  private void check(String name, SeasonTables tables) throws IOException {
    Map<String, Document> pages = write(dir.resolve(name.replace(' ', '-')), tables.season());
    for (String page :
        List.of(
            "index.html",
            "costs.html",
            "kill.html",
            "empty-net.html",
            "slices.html",
            "compare.html")) {
      assertTrue(pages.containsKey(page), page);
    }
    int shares = 0;
    for (Map.Entry<String, Document> page : pages.entrySet()) {
      page.getValue().select("script, style").remove();
      Matcher wrong = NO_NUMBER.matcher(page.getValue().outerHtml());
      assertFalse(
          wrong.find(), () -> name + ", " + page.getKey() + " says \"" + wrong.group() + "\"");
      for (Element table : page.getValue().select("table")) {
        shares += shares(name + ", " + page.getKey(), table);
      }
    }
    assertEquals(tables.season().exits().isEmpty(), shares == 0, name);
  }

  /** In a column "Share" stands what the counts before it allow. */
  private static int shares(String where, Element table) {
    List<String> heads = table.select("thead th").eachText();
    int seen = 0;
    for (Element tr : table.select("tbody tr:not(.zero)")) {
      // A name that reaches over several rows stands before them: count from the right.
      List<String> cells = tr.select("> th, > td").eachText();
      List<Element> all = new ArrayList<>(tr.select("> th, > td"));
      int shift = heads.size() - all.size();
      for (int c = 1; c < heads.size(); c++) {
        if (heads.get(c).equals("Share") && c - 1 >= shift) {
          Matcher counts = COUNTS.matcher(all.get(c - 1 - shift).text());
          assertTrue(counts.matches(), where + ": " + cells);
          int n = Integer.parseInt(counts.group(2));
          String share = all.get(c - shift).text();
          String want = n == 0 ? "none" : n < 10 ? "too few to say" : "\\d+ %";
          assertTrue(share.matches(want), where + ": " + share + " of " + n);
          seen++;
        }
      }
    }
    return seen;
  }

  private static Map<String, Document> write(Path out, Season season) throws IOException {
    Files.createDirectories(out);
    SeasonReview review = Reviewer.review(season);
    ReviewBook.write(
        out,
        review,
        new NumberSettings(20, 1, 0),
        new Imprint(
            "0.0",
            new BookNote("hybrid", "", List.of(), List.of()),
            "",
            new BookOptions(Videos.named("{game}.mp4"), true, true)),
        List.of(),
        (n, all) -> {});
    Map<String, Document> pages = new LinkedHashMap<>();
    try (Stream<Path> files = Files.walk(out)) {
      for (Path p : files.filter(f -> f.toString().endsWith(".html")).sorted().toList()) {
        pages.put(out.relativize(p).toString(), Jsoup.parse(p.toFile(), "UTF-8"));
      }
    }
    return pages;
  }

  private static List<String> cells(SeasonTables tables, int page, int grid, int line) {
    return NumberPage.all(tables.season(), Optional.empty(), new NumberSettings(20, 1, 400))
        .get(page)
        .get()
        .grids()
        .get(grid)
        .lines()
        .get(line)
        .values()
        .stream()
        .map(Format::text)
        .toList();
  }

  @Test
  void reliefThatNeverEndedHasNoMedian() {
    List<String> team = cells(oneKill(), 1, 0, 0);
    assertEquals("12 of 12", team.get(5));
    assertEquals("not reached", team.get(8));
    assertEquals("too few to say", team.get(9), "one kill is too few for a mean");
  }

  /** A goal after a clear, long after any window, is one of the kill all the same. */
  @Test
  void theKillPageGivesAllGoalsOfItsKillsNotThoseAfterFailedClearsAlone() {
    SeasonTables t =
        oneKill()
            .kill(
                Columns.GAME,
                "two",
                "kill",
                1,
                Columns.TEAM,
                "Herons",
                Columns.OPPONENT,
                "Wolves",
                Columns.PERIOD,
                1,
                Columns.ELAPSED_S,
                20.0,
                Columns.SECONDS,
                90.0,
                "attempts_against",
                1,
                Columns.GOALS_AGAINST,
                1);
    List<String> team = cells(t, 1, 0, 0);
    assertEquals("1 in 2", team.get(3), "goals against in the kills");
    assertEquals("–", team.get(12), "goals after pucks kept in: there were none");
  }

  @Test
  void reliefThatEndedAtOnceLastsNoTime() {
    assertEquals("0 s (0 to –)", cells(seasons().get("all relief over at once"), 1, 0, 0).get(8));
  }

  @Test
  void faceOffsWithoutShotsAreNotCounted() {
    List<String> all = cells(seasons().get("no shots in the sheets"), 0, 0, 4);
    assertEquals(List.of("all teams: other reasons", "0", "0", "–"), all.subList(0, 4));
  }
}
