package twostrides.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import twostrides.cache.CacheFolder;
import twostrides.cache.RecordBytes;
import twostrides.game.SheetKept;
import twostrides.output.OutputException;
import twostrides.tracking.GamesNamed;

/** The folder in which a review keeps what each game gave, and what it found there. */
final class ReviewCache {

  /** What is kept of a play sheet. */
  @SuppressWarnings("unchecked")
  private static final RecordBytes<SheetKept<Sheets.Looked<ReviewGames.Kept>>> SHEETS =
      new RecordBytes<>(
          (Class<SheetKept<Sheets.Looked<ReviewGames.Kept>>>) (Class<?>) SheetKept.class,
          Sheets.Looked.class,
          ReviewGames.Kept.class);

  private static final RecordBytes<GamesNamed> NAMED = new RecordBytes<>(GamesNamed.class);

  private static final RecordBytes<TrackedGameKept> TRACKED =
      new RecordBytes<>(TrackedGameKept.class);

  @Spec(Spec.Target.MIXEE)
  CommandSpec spec;

  @Option(
      names = "--cache",
      paramLabel = "DIR",
      description =
          "Keeps what each game gave in this folder, so that the next run reads only sheets that are new"
              + " or changed. It holds players' names; delete it whenever you like.")
  Path dir;

  /**
   * What is on the shelves.
   *
   * @param sheets play sheets
   * @param named which games tracking sheets name
   * @param tracked the tracking of games
   */
  record Shelves(
      CacheShelf<SheetKept<Sheets.Looked<ReviewGames.Kept>>> sheets,
      CacheShelf<GamesNamed> named,
      CacheShelf<TrackedGameKept> tracked) {

    /** What they were good for, a sentence; empty without a cache. */
    Optional<String> line() {
      if (!sheets.open()) {
        return Optional.empty();
      }
      String ofSheets =
          sheets.wasAsked()
              ? sheets.count("sheet")
              : "no sheet, as with --no-names or --sync all are read";
      return Optional.of(
          "Cache: known from an earlier run "
              + ofSheets
              + (tracked.wasAsked() ? ", tracking of " + tracked.count("game") : "")
              + ".");
    }
  }

  /**
   * Opens it.
   *
   * @param book the book's folder, which holds the book alone
   * @param ofSheets what decides, besides its sheet, what a game gives
   * @param ofTracking what decides, besides the game and its tracking, what that gives
   */
  Shelves open(Path book, List<String> ofSheets, List<String> ofTracking) {
    if (dir != null
        && dir.toAbsolutePath().normalize().startsWith(book.toAbsolutePath().normalize())) {
      throw new ParameterException(
          spec.commandLine(),
          "--cache: found " + dir + ", inside the book " + book + ", expected a folder beside it.");
    }
    Optional<CacheFolder> folder = folder();
    String program = folder.map(f -> ProgramHash.get()).orElse("");
    return new Shelves(
        new CacheShelf<>(folder, words(program, "sheet", ofSheets), SHEETS),
        new CacheShelf<>(folder, words(program, "games named", ofTracking), NAMED),
        new CacheShelf<>(folder, words(program, "tracking", ofTracking), TRACKED));
  }

  private static List<String> words(String program, String kind, List<String> more) {
    return Stream.concat(Stream.of(program, kind), more.stream()).toList();
  }

  private Optional<CacheFolder> folder() {
    try {
      return dir == null ? Optional.empty() : Optional.of(new CacheFolder(dir));
    } catch (IOException e) {
      throw new ParameterException(
          spec.commandLine(),
          "--cache: found "
              + dir
              + ", where nothing can be written ("
              + OutputException.reason(e)
              + "), expected a folder.");
    }
  }
}
