package twostrides.exits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import tech.tablesaw.api.Table;
import twostrides.checks.Printed;
import twostrides.game.Game;
import twostrides.game.SeasonReader;
import twostrides.game.SheetForms;
import twostrides.rulebook.Bookshelf;
import twostrides.season.Columns;
import twostrides.season.FlagVerdict;
import twostrides.season.SkatersAtRelease;
import twostrides.sheet.SheetFiles;
import twostrides.sheet.SheetMap;

/**
 * Flags in real games whose sheets write down every skater's place and speed (open data), where
 * their folder is present; else skipped, and said so.
 */
class OpenFlagsTest {

  @RegisterExtension static final Printed FIGURES = new Printed();

  private static final Path NATIVE = OpenData.FOLDER.resolve("tracked-2023/native");
  private static final Settings SETTINGS = Settings.DEFAULT.withBook(Bookshelf.book("iihf"));

  @TempDir static Path dir;

  private static List<Game> games;

  @BeforeAll
  static void read() throws Exception {
    String absent = "no tracked games at " + NATIVE + " (set -Dtwostrides.openData)";
    if (!Files.isDirectory(NATIVE)) {
      System.err.println("SKIPPED: " + absent);
    }
    assumeTrue(Files.isDirectory(NATIVE), absent);
    String map = "sheet = \"play\"\n[rink]\nname = \"iihf\"\n[place]\nstep = 0.1\n";
    games =
        SeasonReader.read(
                SheetFiles.find(List.of(NATIVE.toString())),
                Optional.of(
                    SheetMap.read(
                        Files.writeString(dir.resolve("tracked.toml"), map), SheetForms.ALL)),
                false,
                n -> {})
            .games();
  }

  private static Table flags(List<Game> of) {
    return twostrides.season.Season.of(of, List.of(), SETTINGS, SkatersAtRelease.NONE).flags();
  }

  private static String text(Table t, String column, int i) {
    return Cells.text(t, column, i).orElse("");
  }

  /** Sums over measured icings. */
  private static final class Measured {
    private final DoubleSummaryStatistics chance = new DoubleSummaryStatistics();
    private final DoubleSummaryStatistics metres = new DoubleSummaryStatistics();

    void add(Table t, int i) {
      chance.accept(Cells.number(t, Columns.P_AVOID, i).orElseThrow());
      metres.accept(Cells.number(t, Columns.SHORT_OF_CENTER_M, i).orElseThrow());
    }

    long n() {
      return chance.getCount();
    }

    void say(String what) {
      FIGURES.say(
          "%s: %d, %.1f to %.1f m short of center, chance to gain it %.2f to %.2f, mean %.2f",
          what,
          n(),
          metres.getMin(),
          metres.getMax(),
          chance.getMin(),
          chance.getMax(),
          chance.getAverage());
    }
  }

  @Test
  void aFlagRestsOnPlacesAndSpeedsAndAnIcing() {
    Table t = flags(games);
    Measured flags = new Measured();
    Measured others = new Measured();
    int flagged = 0;
    int open = 0;
    int icings = 0;
    for (int i = 0; i < t.rowCount(); i++) {
      boolean flag = Cells.flag(t, Columns.FLAGGED, i).orElseThrow();
      boolean icing = text(t, Columns.RESTART_CAUSE, i).startsWith("icing");
      boolean measured = text(t, Columns.EVIDENCE, i).equals("measured");
      icings += icing ? 1 : 0;
      open += text(t, Columns.REASON, i).equals(FlagVerdict.LOOK.words()) ? 1 : 0;
      if (flag) {
        flagged++;
        assertTrue(measured && icing, "a flag without: " + t.row(i));
        assertTrue(Cells.number(t, Columns.P_AVOID, i).orElseThrow() >= 0.6);
      }
      if (icing && measured) {
        System.err.println("tracked icing: " + text(t, "sentence", i));
        (flag ? flags : others).add(t, i);
      }
    }
    FIGURES.say(
        "%d icings let go short of center, %d measured, %d flagged, %d without a verdict",
        icings, flags.n() + others.n(), flagged, open);
    flags.say("flagged");
    others.say("measured and not flagged");
    assertTrue(flagged > 0 && flagged < icings / 2, flagged + " flags in " + icings + " icings");
  }

  /** The same games without their skaters: not one flag, and every icing is to be looked at. */
  @Test
  void withoutPlacesNothingIsFlagged() {
    List<Game> blind =
        games.stream()
            .map(g -> g.withRows(g.rows().stream().map(SheetRows::withoutSkaters).toList()))
            .toList();
    assertNothingFlagged(flags(blind));
  }

  /** Places alone are a lower grade: not one flag either. */
  @Test
  void withoutSpeedsNothingIsFlagged() {
    List<Game> still =
        games.stream()
            .map(g -> g.withRows(g.rows().stream().map(SheetRows::withoutSpeeds).toList()))
            .toList();
    Table t = flags(still);
    assertNothingFlagged(t);
    assertTrue(t.stringColumn(Columns.EVIDENCE).countOccurrences("places only") > 10);
  }

  private static void assertNothingFlagged(Table t) {
    List<String> icings = new ArrayList<>();
    for (int i = 0; i < t.rowCount(); i++) {
      assertEquals(Optional.of(false), Cells.flag(t, Columns.FLAGGED, i));
      if (text(t, Columns.RESTART_CAUSE, i).startsWith("icing")) {
        icings.add(text(t, Columns.REASON, i));
        assertTrue(Cells.number(t, Columns.P_AVOID, i).isEmpty());
      }
    }
    assertTrue(icings.size() > 10, icings.size() + " icings");
    assertEquals(
        List.of(FlagVerdict.LOOK.words()), icings.stream().distinct().toList(), "to look at");
    FIGURES.say("%d icings, all to be looked at, none flagged", icings.size());
  }
}
