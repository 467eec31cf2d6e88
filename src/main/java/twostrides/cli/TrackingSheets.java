package twostrides.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import twostrides.game.Game;
import twostrides.game.Season;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetFiles;
import twostrides.sheet.SheetMap;
import twostrides.tracking.GamesNamed;
import twostrides.tracking.Sync;
import twostrides.tracking.TrackForm;
import twostrides.tracking.TrackedGame;
import twostrides.tracking.Tracks;

/** The tracking sheets of a review: which files, through which maps, and what they say. */
final class TrackingSheets {

  @Option(
      names = "--tracking",
      paramLabel = "SHEET",
      description =
          "Tracking sheets with skaters' places (docs/sheets.md): files, folders, or a pattern in"
              + " quotes; may be given several times.")
  List<String> names = new ArrayList<>();

  @Option(
      names = "--tracking-map",
      paramLabel = "MAP.toml",
      description =
          "Map of the tracking sheets, or of the sync sheets, as its first line says; may be given"
              + " several times.")
  List<Path> maps = new ArrayList<>();

  @Option(
      names = "--sync",
      paramLabel = "SHEET",
      description =
          "Sync sheets: which game clock belongs to which second of the video; may be given several"
              + " times.")
  List<String> syncNames = new ArrayList<>();

  /** The option that has nothing to do, when a map or a sync sheet is given without tracking. */
  Optional<String> idle() {
    if (!names.isEmpty()) {
      return Optional.empty();
    }
    return !maps.isEmpty()
        ? Optional.of("--tracking-map")
        : syncNames.isEmpty() ? Optional.empty() : Optional.of("--sync");
  }

  /** Everything that is read. */
  List<Path> inputs() throws SheetException {
    return Stream.of(tracking(), maps, sync()).flatMap(List::stream).toList();
  }

  private List<Path> tracking() throws SheetException {
    return names.isEmpty() ? List.of() : SheetFiles.find(names);
  }

  private List<Path> sync() throws SheetException {
    return syncNames.isEmpty() ? List.of() : SheetFiles.find(syncNames);
  }

  /**
   * Reads one game after the other and keeps the skaters at its releases, not the tracks.
   *
   * @param season the play sheets
   * @param progress where to tell how far it is
   * @throws SheetException when a sheet cannot be read at all, or nobody knows whose it is
   */
  TrackedSkaters read(Season season, Progress progress) throws SheetException {
    TrackedSkaters tracked = new TrackedSkaters(!names.isEmpty());
    if (names.isEmpty()) {
      return tracked;
    }
    List<SheetMap> syncMaps = new ArrayList<>();
    Optional<SheetMap> map = Optional.empty();
    for (Path p : maps) {
      SheetMap m = SheetMap.read(p, TrackForm.ALL);
      if (m.schema().equals(TrackForm.SYNC)) {
        syncMaps.add(m);
      } else if (map.isPresent()) {
        throw SheetException.ofFile(
            p.toString(),
            "a second map of tracking sheets",
            "one map of tracking sheets, and as many of sync sheets as needed",
            "Review the games of the two kinds of sheet one after the other.");
      } else {
        map = Optional.of(m);
      }
    }
    Map<String, List<Path>> files = byGame(season.games(), map, tracked);
    int done = 0;
    for (Game game : season.games()) {
      List<Path> own = files.getOrDefault(game.id(), List.of());
      if (!own.isEmpty()) {
        Sync sync = sync(syncMaps, game.id());
        tracked.take(
            game,
            Tracks.read(own, map, new TrackedGame(game.id(), game.home(), game.away()), sync),
            sync);
      }
      progress.step("reading tracking", ++done, season.games().size());
    }
    progress.done();
    return tracked;
  }

  private Sync sync(List<SheetMap> syncMaps, String game) throws SheetException {
    List<Path> sheets = sync();
    if (sheets.isEmpty()) {
      return Sync.NONE;
    }
    Sync sync = Sync.NONE;
    for (SheetMap m : syncMaps) {
      sync = sync.and(sheets, Optional.of(m), game);
    }
    return syncMaps.isEmpty() ? Sync.read(sheets, Optional.empty(), game) : sync;
  }

  /** Which sheets have rows of which game; a game of which no play sheet was read is counted. */
  private Map<String, List<Path>> byGame(
      List<Game> games, Optional<SheetMap> map, TrackedSkaters tracked) throws SheetException {
    Map<String, List<Path>> files = new TreeMap<>();
    for (Path file : tracking()) {
      GamesNamed named = GamesNamed.in(file, map);
      if (named.unnamed() > 0 && named.rows().size() > 1) {
        throw SheetException.atLine(
            file.toString(),
            named.firstUnnamed(),
            "a row that names no game, in a sheet that names " + named.rows().size() + " games",
            "a game in every row of a sheet of several games",
            "Fill in the game, or give each game a sheet of its own.");
      }
      List<String> ids =
          games.stream()
              .map(Game::id)
              .filter(g -> named.rows().containsKey(g) || unnamedOf(file, g, named, games))
              .toList();
      if (ids.isEmpty() && named.rows().isEmpty() && named.unnamed() > 0) {
        throw SheetException.ofFile(
            file.toString(),
            "a tracking sheet that names no game, beside " + games.size() + " games",
            "a column game, or a file name that begins with a game's id",
            "Add the column, or rename the file.");
      }
      ids.forEach(g -> files.computeIfAbsent(g, k -> new ArrayList<>()).add(file));
      tracked.count(named, ids);
    }
    return files;
  }

  private static boolean unnamedOf(Path file, String game, GamesNamed named, List<Game> games) {
    String name = String.valueOf(file.getFileName());
    return named.rows().isEmpty() && (games.size() == 1 || name.startsWith(game));
  }
}
