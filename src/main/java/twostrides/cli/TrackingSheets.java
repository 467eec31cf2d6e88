package twostrides.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import twostrides.sheet.FilesRead;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetFiles;
import twostrides.sheet.SheetMap;
import twostrides.sheet.ShippedMaps;
import twostrides.tracking.GameOutline;
import twostrides.tracking.GamesNamed;
import twostrides.tracking.Sync;
import twostrides.tracking.SyncSheets;
import twostrides.tracking.TrackForm;
import twostrides.tracking.TrackedGame;
import twostrides.tracking.Tracks;

/** The tracking and sync sheets of a review: which files, through which maps, what they say. */
final class TrackingSheets {

  /** Longest period that a sheet can have, in seconds: a clock has at most three digits. */
  private static final int LONGEST_REACH = 60_000;

  /** The maps, sorted by what they are for. */
  record Maps(Optional<SheetMap> tracking, List<SheetMap> sync) {}

  @Option(
      names = "--tracking",
      paramLabel = "SHEET",
      description =
          "Tracking sheets with skaters' places (docs/sheets.md): files, folders, or a pattern in"
              + " quotes; may be given several times.")
  List<String> names = new ArrayList<>();

  @Option(
      names = {"--tracking-map", "--sync-map"},
      paramLabel = "MAP",
      description =
          "Map of the tracking sheets, or of the sync sheets, as its first line says: a file or a"
              + " shipped map's name; may be given several times.")
  List<String> maps = new ArrayList<>();

  @Option(
      names = "--sync",
      paramLabel = "SHEET",
      description =
          "Sync sheets: which game clock belongs to which second of the video, for sheets without"
              + " video seconds (docs/sheets.md): files, folders, or a pattern in quotes; may be"
              + " given several times.")
  List<String> syncNames = new ArrayList<>();

  @Option(
      names = "--sync-reach",
      paramLabel = "S",
      defaultValue = "1200",
      description =
          "Seconds of play before the first and after the last pair of a period in which a row still"
              + " gets a video second (${DEFAULT-VALUE}, assumed).")
  double syncReach;

  /** What stands in an option that cannot do anything, as a sentence; empty when all can. */
  Optional<String> wrong() {
    if (!(syncReach >= 0 && syncReach <= LONGEST_REACH)) {
      return Optional.of(
          "--sync-reach: found "
              + syncReach
              + ", expected seconds from 0 to "
              + LONGEST_REACH
              + ".");
    }
    return !maps.isEmpty() && names.isEmpty() && syncNames.isEmpty()
        ? Optional.of(
            "--tracking-map, --sync-map: found neither --tracking nor --sync, expected the sheets"
                + " that the map is for.")
        : Optional.empty();
  }

  /** Everything that is read. */
  List<Path> inputs() throws SheetException {
    return Stream.of(tracking(), mapFiles(), sync()).flatMap(List::stream).toList();
  }

  private List<Path> mapFiles() {
    return maps.stream().map(ShippedMaps::file).flatMap(Optional::stream).toList();
  }

  List<Path> tracking() throws SheetException {
    return names.isEmpty() ? List.of() : SheetFiles.find(names);
  }

  private List<Path> sync() throws SheetException {
    return syncNames.isEmpty() ? List.of() : SheetFiles.find(syncNames);
  }

  /**
   * Reads the maps.
   *
   * @throws SheetException when one cannot be read, or there are two of the tracking sheets
   */
  Maps maps() throws SheetException {
    List<SheetMap> sync = new ArrayList<>();
    Optional<SheetMap> map = Optional.empty();
    for (String name : maps) {
      SheetMap m = ShippedMaps.find(name, TrackForm.ALL);
      if (m.schema().equals(TrackForm.SYNC)) {
        sync.add(m);
      } else if (names.isEmpty()) {
        throw SheetException.ofFile(
            name,
            "a map of tracking sheets, and no --tracking",
            "a map of the sync sheets, or tracking sheets",
            "Give the tracking sheets, or leave the map out.");
      } else if (map.isPresent()) {
        throw SheetException.ofFile(
            name,
            "a second map of tracking sheets",
            "one map of tracking sheets, and as many of sync sheets as needed",
            "Review the games of the two kinds of sheet one after the other.");
      } else {
        map = Optional.of(m);
      }
    }
    return new Maps(map, sync);
  }

  /** Whether there are sync sheets. */
  boolean synced() {
    return !syncNames.isEmpty();
  }

  /**
   * Reads the sync sheets; nothing when there are none.
   *
   * @param games the games that they are for, by id
   * @param maps the maps
   * @throws SheetException when one cannot be read at all, or nobody knows whose it is
   */
  SyncSheets sync(Map<String, GameOutline> games, Maps maps) throws SheetException {
    return synced()
        ? SyncSheets.read(sync(), maps.sync(), games, !names.isEmpty())
        : SyncSheets.NONE;
  }

  /**
   * Reads one game after the other and keeps the skaters at its releases, not the tracks.
   *
   * @param games the games of the play sheets
   * @param maps the maps
   * @param sync the sync sheets
   * @param progress where to tell how far it is
   * @param shelves what earlier runs found
   * @throws SheetException when a sheet cannot be read at all, or nobody knows whose it is
   */
  TrackedSkaters read(
      List<GameOutline> games,
      Maps maps,
      SyncSheets sync,
      Progress progress,
      ReviewCache.Shelves shelves)
      throws SheetException {
    TrackedSkaters tracked = new TrackedSkaters(!names.isEmpty());
    if (names.isEmpty()) {
      return tracked;
    }
    Optional<SheetMap> map = maps.tracking();
    Map<String, List<Path>> files = byGame(games, map, tracked, shelves.named());
    int done = 0;
    for (GameOutline game : games) {
      List<Path> own = files.getOrDefault(game.id(), List.of());
      if (!own.isEmpty()) {
        Sync pairs = sync.of(game.id());
        TrackedGameKept kept =
            shelves
                .tracked()
                .get(
                    List.of(game.words(), pairs.words()),
                    own,
                    () -> {
                      Tracks tracks = Tracks.read(own, map, TrackedGame.of(game), pairs);
                      return TrackedGameKept.of(game, tracks, pairs);
                    });
        tracked.take(game, kept);
      }
      progress.step("reading tracking", ++done, games.size());
    }
    progress.done();
    return tracked;
  }

  /** The maps as the command line names them, and what is in those that are not shipped. */
  List<String> words() throws SheetException {
    List<String> words = new ArrayList<>(maps);
    words.addAll(FilesRead.hashes(mapFiles()));
    return words;
  }

  /** Which sheets have rows of which game; a game of which no play sheet was read is counted. */
  private Map<String, List<Path>> byGame(
      List<GameOutline> games,
      Optional<SheetMap> map,
      TrackedSkaters tracked,
      CacheShelf<GamesNamed> shelf)
      throws SheetException {
    Map<String, List<Path>> files = new TreeMap<>();
    for (Path file : tracking()) {
      GamesNamed named = shelf.get(List.of(), List.of(file), () -> GamesNamed.in(file, map));
      if (named.unnamed() > 0 && named.rows().size() > 1) {
        throw SheetException.atLine(
            file.toString(),
            named.firstUnnamed().orElseThrow(),
            "a row that names no game, in a sheet that names " + named.rows().size() + " games",
            "a game in every row of a sheet of several games",
            "Fill in the game, or give each game a sheet of its own.");
      }
      List<String> known = games.stream().map(GameOutline::id).toList();
      List<String> ids =
          named.rows().isEmpty()
              ? GamesNamed.ofNameless(file, known).stream().toList()
              : known.stream().filter(named.rows()::containsKey).toList();
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
}
