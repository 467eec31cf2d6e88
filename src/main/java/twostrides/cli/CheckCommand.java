package twostrides.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import twostrides.book.Format;
import twostrides.game.Coverage;
import twostrides.game.Game;
import twostrides.game.PlayRow;
import twostrides.game.SeasonReader;
import twostrides.game.SheetMemory;
import twostrides.game.SheetsRead;
import twostrides.rulebook.BookException;
import twostrides.rulebook.IcingBook;
import twostrides.sheet.Sheet;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetFiles;
import twostrides.sheet.SheetMap;
import twostrides.sheet.SheetMaps;
import twostrides.sheet.SheetReader;

/** Reads sheets and says what is there, what is missing and what that costs. Writes nothing. */
@Command(
    name = "check",
    description = "Reads sheets only: what is there, what is missing, and what that costs.",
    mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {

  private static final int MOST_PROBLEMS = 50;

  @Spec CommandSpec spec;

  @Mixin Sheets sheets;

  @Mixin Books books;

  @Mixin Ice ice;

  @Override
  public Integer call() throws SheetException, BookException {
    PrintWriter out = spec.commandLine().getOut();
    List<Path> files = sheets.files();
    SheetMaps maps = sheets.sheetMaps();
    IcingBook book = books.book();
    Ice.Played played = ice.of(book, maps);
    Progress progress = new Progress(spec.commandLine().getErr());
    SheetsRead season =
        SheetsRead.of(
            sheets.read(files, maps, played, progress, Function.identity(), SheetMemory.none()));
    out.println("Map: " + (maps.names().isEmpty() ? "none, our own columns" : maps.names()));
    out.println(played.rinkLine(book));
    Set<String> columns = new TreeSet<>();
    boolean tags = false;
    for (Path f : files) {
      if (season.unreadable().stream().noneMatch(e -> e.file().equals(SheetFiles.display(f)))) {
        Optional<SheetMap> map = maps.of(f);
        SheetMap used = map.isPresent() ? map.get() : SeasonReader.plainMapFor(f);
        Sheet sheet = SheetReader.read(f, used);
        columns.addAll(sheet.columnsPresent());
        tags |= used.schema().name().equals("tag");
        List<String> unused = used.notUsed(sheet.headers());
        out.println(
            sheet.name()
                + ": "
                + used.schema().name()
                + " sheet, "
                + Format.count(sheet.rowsRead(), "row")
                + (unused.isEmpty() ? "" : "; columns not used: " + String.join(", ", unused)));
      }
    }
    Coverage coverage = Coverage.of(season, columns, tags);
    out.println();
    out.println("There:");
    coverage.present().forEach(line -> out.println("  " + line));
    out.println("Missing, and what that costs:");
    if (coverage.costs().isEmpty()) {
      out.println("  nothing");
    }
    for (Map.Entry<String, String> cost : coverage.costs().entrySet()) {
      out.println("  " + cost.getKey() + ": " + cost.getValue());
    }
    side(season).forEach(out::println);
    out.println();
    sheets.report(season, out, MOST_PROBLEMS, "; correct these first and check again.");
    sheets.refuseContradictions(spec.commandLine().getErr());
    return Main.DONE;
  }

  /**
   * What only the video can prove: left and right exchanged for everybody is the same game in a
   * mirror.
   */
  private static List<String> side(SheetsRead season) {
    return season.games().stream()
        .flatMap(g -> nearestToTheBoards(g).map(r -> side(g, r)).stream())
        .findFirst()
        .orElse(List.of());
  }

  private static Optional<PlayRow> nearestToTheBoards(Game game) {
    return game.rows().stream()
        .filter(r -> r.place().isPresent() && r.team().isPresent() && r.place().get().y() != 0)
        .max(Comparator.comparingDouble(r -> Math.abs(r.place().orElseThrow().y())));
  }

  private static List<String> side(Game game, PlayRow row) {
    return List.of(
        "Left or right, which no sheet can prove; look at this one on the video:",
        String.format(
            Locale.ROOT,
            "  %s, line %d: %s, %s, %s: %s by the boards on the %s of the attack; else left and"
                + " right are exchanged (y_m, or place.y_left of the map).",
            row.sheet(),
            row.line(),
            Format.clock(row.period(), game.periodLength() - row.elapsed()),
            Format.word(row.player()),
            row.team().orElseThrow(),
            row.action().word(),
            row.place().orElseThrow().y() > 0 ? "left" : "right"));
  }
}
