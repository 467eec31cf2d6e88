package twostrides.tracking;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import twostrides.game.Usual;
import twostrides.rink.Place;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;

/** Tracking sheets and tracks made for the tests of this package; invented. */
final class TrackSheets {
  static final TrackedGame GAME =
      new TrackedGame("g1", "Glasswater Herons", "Tarn Wolves", Usual.DEFAULT);

  private TrackSheets() {}

  /** A track of constant acceleration, with normal errors of its places. */
  static Track track(
      double from,
      double to,
      double step,
      Place at0,
      double[] velocity,
      double[] acceleration,
      double error,
      Random random) {
    Track track = new Track("1", "t.csv", true, Optional.of(1), Optional.empty());
    long rows = Math.round((to - from) / step);
    for (int i = 0; i <= rows; i++) {
      double s = from + i * step;
      double x = at0.x() + velocity[0] * s + acceleration[0] * s * s / 2;
      double y = at0.y() + velocity[1] * s + acceleration[1] * s * s / 2;
      Place place = new Place(x + error * random.nextGaussian(), y + error * random.nextGaussian());
      track.add(s, place, (short) 9, i + 2L, Track.UNREAD);
    }
    return track;
  }

  static Tracks read(Path dir, String sheet, String map) throws IOException, SheetException {
    return read(dir, sheet, map, Sync.NONE);
  }

  static Tracks read(Path dir, String sheet, String map, Sync sync)
      throws IOException, SheetException {
    Path file = dir.resolve("tracks.csv");
    Files.writeString(file, sheet);
    return Tracks.read(List.of(file), map(dir, map), GAME, sync);
  }

  static SyncSheets sync(Path dir, String sheet) throws IOException, SheetException {
    Path file = dir.resolve("sync.csv");
    Files.writeString(file, sheet);
    return SyncSheets.read(List.of(file), List.of(), Outlines.byId(threePeriods(GAME.id())), true);
  }

  /** A game of three periods of twenty minutes. */
  static GameOutline threePeriods(String game) {
    return Outlines.of(game, 1200, Set.of(1, 2, 3));
  }

  /** What the open list of power plays says of a game, through one map or both. */
  static Sync powerPlays(Path folder, Path maps, String game, String... names)
      throws SheetException {
    List<SheetMap> read = new ArrayList<>();
    for (String name : names) {
      read.add(SheetMap.read(maps.resolve(name), TrackForm.ALL));
    }
    return SyncSheets.read(
            List.of(folder.resolve("power_plays.csv")),
            read,
            Outlines.byId(threePeriods(game)),
            true)
        .of(game);
  }

  private static Optional<SheetMap> map(Path dir, String map) throws IOException, SheetException {
    if (map.isEmpty()) {
      return Optional.empty();
    }
    Path toml = dir.resolve("map.toml");
    Files.writeString(toml, "sheet = \"tracking\"\n" + map);
    return Optional.of(SheetMap.read(toml, TrackForm.ALL));
  }

  /** "line: column: value" of each doubt. */
  static List<String> doubts(Tracks tracks) {
    return tracks.setAside().stream().map(TrackSheets::said).toList();
  }

  static String said(DoubtfulRow row) {
    var p = row.problems().get(0);
    return p.line() + ": " + p.column() + ": " + p.value();
  }
}
