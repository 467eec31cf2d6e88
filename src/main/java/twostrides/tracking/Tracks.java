package twostrides.tracking;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;
import twostrides.sheet.SheetStream;

/**
 * The tracks of one game. Sheets are read row by row into arrays of 22 bytes a row; a game of 60
 * minutes at 30 frames a second with 12 skaters in every frame, 1.3 million rows, takes about 30
 * MB.
 *
 * <p>Every row read is used, set aside, or of another game.
 */
public final class Tracks {
  /** Rows set aside that are kept in their own words; further ones are counted only. Assumed. */
  public static final int MOST_KEPT = 10_000;

  /** Rounding of times, in seconds. */
  private static final double ROUNDING = 1e-6;

  private final TrackedGame game;
  private final List<Track> tracks;
  private final TrackRows rows;
  private final double frameStep;

  private Tracks(TrackedGame game, TrackRows rows) {
    this.game = game;
    this.rows = rows;
    this.tracks = rows.tracks();
    this.frameStep =
        rows.framesPerSecond.isPresent()
            ? 1 / rows.framesPerSecond.getAsDouble()
            : medianStep(tracks);
  }

  /**
   * Reads the tracking of one game.
   *
   * @param files its sheets; a track does not go on from one into the next
   * @param map the map, if they need one
   * @param game the game
   * @param sync what its sync sheets say, or {@link Sync#NONE}
   * @throws SheetException when a sheet cannot be read at all, or nothing says when rows were seen
   */
  public static Tracks read(List<Path> files, Optional<SheetMap> map, TrackedGame game, Sync sync)
      throws SheetException {
    SheetMap used = map.orElseGet(() -> SheetMap.plain(TrackForm.TRACKING));
    if (!used.schema().equals(TrackForm.TRACKING)) {
      throw SheetException.ofFile(
          used.name(),
          "a map of " + used.schema().name() + " sheets",
          "a map that begins with sheet = \"tracking\"",
          "Give the map of the tracking sheets.");
    }
    TrackRows rows = new TrackRows(used, game, sync);
    for (Path file : files) {
      rows.begin(file.toString().replace('\\', '/'));
      SheetStream.read(file, used, rows);
    }
    return new Tracks(game, rows);
  }

  /** In one array of the right length: a stream would hold the steps of a long game three times. */
  private static double medianStep(List<Track> tracks) {
    double[] steps = new double[tracks.stream().mapToInt(t -> t.rows() - 1).sum()];
    int n = 0;
    for (Track t : tracks) {
      for (int i = 1; i < t.rows(); i++) {
        steps[n++] = t.second(i) - t.second(i - 1);
      }
    }
    Arrays.sort(steps);
    return n == 0 ? 0 : steps[n / 2];
  }

  /**
   * The skaters seen at an instant, in the home team's frame. A skater is seen when the instant
   * lies between two of its rows at most {@link Skaters#LONGEST_BETWEEN} apart, or within half a
   * frame step of one.
   *
   * @param period period, from 1; counts only where video seconds restart each period
   * @param second second of the video
   * @param smoother what gives velocities
   */
  public Skaters at(int period, double second, Smoother smoother) {
    List<Track> here =
        tracks.stream()
            .filter(t -> !rows.restarts || t.period().equals(Optional.of(period)))
            .filter(t -> t.second(0) <= second + frameStep)
            .filter(t -> t.second(t.rows() - 1) >= second - frameStep)
            .toList();
    return Skaters.of(here, second, frameStep / 2 + ROUNDING, smoother);
  }

  /**
   * The clock of the video, from the rows that have both and the sync sheets.
   *
   * @param sync what the sync sheets say, or {@link Sync#NONE}
   */
  public VideoClock clock(Sync sync) {
    List<ClockPair> pairs = new ArrayList<>(sync.pairs());
    pairs.addAll(rows.pairs());
    return VideoClock.of(pairs);
  }

  /** The game. */
  public TrackedGame game() {
    return game;
  }

  /** The tracks, in the order in which they begin in the sheets. */
  public List<Track> tracks() {
    return tracks;
  }

  /** Seconds from a frame to the next: the map's, or the usual step of the tracks. */
  public OptionalDouble frameStep() {
    return frameStep > 0 ? OptionalDouble.of(frameStep) : OptionalDouble.empty();
  }

  /** Rows of the sheets. */
  public int rowsRead() {
    return rows.used + rows.setAside + rows.ofOtherGames;
  }

  /** Rows that became part of a track. */
  public int rowsUsed() {
    return rows.used;
  }

  /** Rows that could not be used. */
  public int rowsSetAside() {
    return rows.setAside;
  }

  /** Rows that name another game. */
  public int rowsOfOtherGames() {
    return rows.ofOtherGames;
  }

  /** Rows set aside in their own words and why, at most {@link #MOST_KEPT} of them. */
  public List<DoubtfulRow> setAside() {
    return List.copyOf(rows.doubtful);
  }
}
