package twostrides.tracking;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.game.Frame;
import twostrides.game.RowReader;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.Sheet;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;
import twostrides.sheet.SheetReader;
import twostrides.sheet.SheetRow;

/**
 * What the sync sheets of one game say: pairs of game clock and second of the video, and where the
 * frames of each segment begin.
 */
public final class Sync {
  /** Nothing known: rows that count frames begin where the tracking sheet's map says. */
  public static final Sync NONE = new Sync();

  private final List<ClockPair> pairs = new ArrayList<>();
  private final Map<String, List<Start>> starts = new LinkedHashMap<>();
  private final List<DoubtfulRow> setAside = new ArrayList<>();
  private int rowsRead;
  private int rowsOfOtherGames;

  /**
   * From this frame on, a segment's frames count from this second.
   *
   * @param frame the frame
   * @param period period of the video at that frame, from 1
   * @param video second of the video
   */
  record Start(int frame, int period, double video) {}

  private Sync() {}

  /**
   * Reads sync sheets.
   *
   * @param files the sheets
   * @param map the map, if they need one
   * @param gameId the game; rows of other games are passed over, rows that name none count
   * @throws SheetException when a sheet cannot be read at all
   */
  public static Sync read(List<Path> files, Optional<SheetMap> map, String gameId)
      throws SheetException {
    return NONE.and(files, map, gameId);
  }

  /**
   * This and further sync sheets, which may need another map.
   *
   * @param files the sheets
   * @param map the map, if they need one
   * @param gameId the game
   * @throws SheetException when a sheet cannot be read at all
   */
  public Sync and(List<Path> files, Optional<SheetMap> map, String gameId) throws SheetException {
    Sync sync = new Sync();
    sync.pairs.addAll(pairs);
    starts.forEach((segment, list) -> sync.starts.put(segment, new ArrayList<>(list)));
    sync.setAside.addAll(setAside);
    sync.rowsRead = rowsRead;
    sync.rowsOfOtherGames = rowsOfOtherGames;
    SheetMap used = map.orElseGet(() -> SheetMap.plain(TrackForm.SYNC));
    if (!used.schema().equals(TrackForm.SYNC)) {
      throw SheetException.ofFile(
          used.name(),
          "a map of " + used.schema().name() + " sheets",
          "a map that begins with sheet = \"sync\"",
          "Give the map of the sync sheets.");
    }
    Frame frame = Frame.ofClock(used);
    for (Path file : files) {
      Sheet sheet = SheetReader.read(file, used);
      sync.rowsRead += sheet.rowsRead();
      sync.setAside.addAll(sheet.setAside());
      sheet.rows().forEach(row -> sync.row(row, used, frame, gameId));
    }
    sync.starts.values().forEach(s -> s.sort(Comparator.comparingInt(Start::frame)));
    return sync;
  }

  private void row(SheetRow row, SheetMap map, Frame frame, String gameId) {
    RowReader in = new RowReader(row, frame);
    if (in.text(TrackForm.GAME).filter(g -> !g.equals(gameId)).isPresent()) {
      rowsOfOtherGames++;
      return;
    }
    Optional<Integer> period = in.period();
    OptionalDouble video = in.video();
    if (row.cell(TrackForm.VIDEO).isEmpty()) {
      in.requiredText(TrackForm.VIDEO, "seconds of video, 0 or more");
    }
    Optional<Integer> first = in.wholeNumber(TrackForm.FRAME, 0, TrackForm.LAST_FRAME);
    boolean hasClock = row.cell(TrackForm.CLOCK).isPresent();
    Optional<Double> elapsed = hasClock ? in.elapsed() : Optional.empty();
    if (!hasClock && row.cell(TrackForm.FRAME).isEmpty()) {
      in.requiredText(TrackForm.CLOCK, "a clock, or a frame, that belongs to the video's second");
    }
    if (!in.problems().isEmpty() || period.isEmpty() || video.isEmpty()) {
      setAside.add(new DoubtfulRow(row, in.problems()));
      return;
    }
    if (first.isPresent()) {
      starts
          .computeIfAbsent(in.text(TrackForm.SEGMENT).orElse(""), s -> new ArrayList<>())
          .add(new Start(first.get(), period.get(), video.getAsDouble()));
    }
    elapsed.ifPresent(
        e ->
            pairs.add(
                new ClockPair(
                    period.get(),
                    e,
                    video.getAsDouble(),
                    (frame.clockStep(in.clockDecimals()) + videoStep(map, row)) / 2,
                    row.file(),
                    row.line())));
  }

  private static double videoStep(SheetMap map, SheetRow row) {
    String written = row.cell(TrackForm.VIDEO).map(c -> c.text()).orElse("");
    int mark = Math.max(written.lastIndexOf('.'), written.lastIndexOf(','));
    int decimals = mark < 0 ? 0 : written.length() - mark - 1;
    return map.number("video", "step_s").orElse(Math.pow(10, -decimals));
  }

  /** The pairs of clock and video, in the order of the sheets. */
  public List<ClockPair> pairs() {
    return List.copyOf(pairs);
  }

  /** Rows set aside, and why. */
  public List<DoubtfulRow> setAside() {
    return List.copyOf(setAside);
  }

  /** Rows of the sheets: used, set aside, or of other games. */
  public int rowsRead() {
    return rowsRead;
  }

  /** Rows that name another game. */
  public int rowsOfOtherGames() {
    return rowsOfOtherGames;
  }

  /** Whether any segment's frames are placed. */
  boolean placesFrames() {
    return !starts.isEmpty();
  }

  /**
   * Where a frame's count begins: the last start at or before it, or the segment's first.
   *
   * @param segment the segment, empty when the sheet has none
   * @param frame the frame
   */
  Optional<Start> startOf(String segment, int frame) {
    List<Start> list = starts.getOrDefault(segment, List.of());
    Optional<Start> found = list.stream().findFirst();
    for (Start start : list) {
      found = start.frame() <= frame ? Optional.of(start) : found;
    }
    return found;
  }
}
