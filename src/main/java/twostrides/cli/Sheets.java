package twostrides.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import twostrides.book.Format;
import twostrides.game.Game;
import twostrides.game.GamesRead;
import twostrides.game.PeriodDoubt;
import twostrides.game.RowAccount;
import twostrides.game.SeasonReader;
import twostrides.game.SheetForms;
import twostrides.game.SheetMemory;
import twostrides.sanity.Doubt;
import twostrides.sanity.GameSigns;
import twostrides.sanity.SheetDoubts;
import twostrides.sheet.FilesRead;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetFiles;
import twostrides.sheet.SheetMaps;

/** The sheets of a command: which files, through which map, and how their reading is reported. */
final class Sheets {

  @Parameters(
      arity = "1..*",
      paramLabel = "SHEET",
      description =
          "Sheets to read: files, folders, or a pattern in quotes such as 'season/*.csv'.")
  List<String> names = new ArrayList<>();

  @Option(
      names = "--map",
      paramLabel = "MAP",
      description =
          "Sheet map for sheets with other columns, words or units: a file, or the name of a shipped"
              + " map (two-strides map --list). Several maps: --map 'men-*=men-2024' is for the"
              + " sheets whose file name fits (docs/maps/README.md).")
  List<String> maps = new ArrayList<>();

  @Option(
      names = "--keep-going",
      description = "Set a file that cannot be read aside as a whole instead of stopping.")
  boolean keepGoing;

  @Option(
      names = "--trust-sheets",
      description =
          "Go on where the sheets contradict themselves, a mirrored rink for example, and only say so.")
  boolean trust;

  private List<Doubt> doubts = List.of();

  List<Path> files() throws SheetException {
    return SheetFiles.find(names);
  }

  SheetMaps sheetMaps() throws SheetException {
    return SheetMaps.read(maps, SheetForms.ALL);
  }

  /**
   * The maps as the command line names them, and what is in those that are not shipped.
   *
   * @throws SheetException when one changed since it was read
   */
  List<String> words() throws SheetException {
    List<String> words = new ArrayList<>(maps);
    words.addAll(FilesRead.hashes(mapFiles()));
    return words;
  }

  /** The files of the maps, those that are not shipped. */
  List<Path> mapFiles() {
    return SheetMaps.files(maps);
  }

  /**
   * Reads the sheets.
   *
   * @param files the files
   * @param sheetMaps their maps
   * @param played rink and period where the map does not say
   * @param progress told of each file
   * @param keep what is kept of each game of play sheets; asked on any thread
   * @param memory what play sheets gave in earlier runs
   */
  <P> GamesRead<P> read(
      List<Path> files,
      SheetMaps sheetMaps,
      Ice.Played played,
      Progress progress,
      Function<Game, P> keep,
      SheetMemory<Looked<P>> memory)
      throws SheetException {
    boolean countsDown =
        sheetMaps.maps().stream()
            .allMatch(m -> m.text("clock", "direction").orElse("down").equals("down"));
    GamesRead<Looked<P>> looked =
        SeasonReader.read(
            files,
            sheetMaps,
            keepGoing,
            played.usual(),
            n -> progress.step("reading sheets", n, files.size()),
            (game, frame) ->
                new Looked<>(
                    GameSigns.of(game, frame), PeriodDoubt.in(game, countsDown), keep.apply(game)),
            memory);
    progress.done();
    if (!played.periodSaid()) {
      Optional<PeriodDoubt> doubt =
          Stream.concat(
                  looked.played().stream().map(Looked::period),
                  looked.tagged().stream().map(g -> PeriodDoubt.in(g, countsDown)))
              .flatMap(Optional::stream)
              .findFirst();
      if (doubt.isPresent()) {
        throw doubtful(doubt.get(), Math.round(played.usual().periodLength() / 60));
      }
    }
    doubts =
        SheetDoubts.of(
            looked.played().stream().flatMap(g -> g.signs().stream()).toList(),
            looked.tagged(),
            sheetMaps);
    return looked.with(looked.played().stream().map(Looked::kept).toList());
  }

  /** What is asked of every game before its rows are forgotten, and what the command keeps. */
  record Looked<P>(Optional<GameSigns> signs, Optional<PeriodDoubt> period, P kept) {}

  /**
   * Stops where the sheets that were read contradict themselves, unless they are to be trusted. The
   * first contradiction is thrown, after the others have been said.
   *
   * @param err where messages go
   * @throws SheetException on a contradiction
   */
  void refuseContradictions(PrintWriter err) throws SheetException {
    List<Doubt> stops = doubts.stream().filter(this::stops).toList();
    if (!stops.isEmpty()) {
      stops.stream().skip(1).forEach(d -> err.println(d.message()));
      err.println(
          "The sheets contradict themselves. If they are right all the same, add --trust-sheets.");
      throw stops.get(0).refusal();
    }
  }

  private boolean stops(Doubt doubt) {
    return doubt.stops() && !trust;
  }

  private static SheetException doubtful(PeriodDoubt doubt, long usualMinutes) {
    return SheetException.ofFile(
        doubt.sheet(),
        "no clock above " + doubt.minutes() + ":00 in the periods of game " + doubt.game(),
        "periods of " + usualMinutes + " minutes, as nobody says how long they are",
        "Give --period-length "
            + doubt.minutes()
            + " (or "
            + usualMinutes
            + "), or write clock.period_length_s = "
            + doubt.minutes() * 60
            + " in the sheet map.");
  }

  /**
   * Prints what is doubtful by its causes, those with most rows first, what was mended, and the sum
   * that must hold.
   *
   * @param season what was read
   * @param out where to print
   * @param most most causes to print
   * @param where where all of them can be found
   */
  void report(RowAccount season, PrintWriter out, int most, String where) {
    doubts.stream()
        .filter(d -> !stops(d))
        .forEach(d -> out.println("Look at this: " + d.message()));
    for (SheetException e : season.unreadable()) {
      out.println("Set aside whole: " + e.getMessage());
    }
    Causes.of(season).lines(most, where).forEach(out::println);
    season.mended().forEach((what, n) -> out.println("Mended: " + n + " x " + what.words() + "."));
    out.println(
        rows(season.rowsRead(), season.setAside().size())
            + (season.unreadable().isEmpty()
                ? ""
                : " Not counted: "
                    + Format.count(season.unreadable().size(), "file")
                    + " set aside whole."));
  }

  /** Rows read, and what became of them; in plain digits, as other programs read this line. */
  static String rows(int read, int aside) {
    return rows(read, aside, Integer::toString);
  }

  /** The same for a page: thousands apart. */
  static String rowsOnPage(int read, int aside) {
    return rows(read, aside, Format::whole);
  }

  private static String rows(int read, int aside, IntFunction<String> shown) {
    return shown.apply(read)
        + " rows read = "
        + shown.apply(read - aside)
        + " rows used + "
        + shown.apply(aside)
        + " rows set aside.";
  }
}
