package twostrides.tracking;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import twostrides.game.Frame;
import twostrides.game.RowReader;
import twostrides.sheet.Cell;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.Problem;
import twostrides.sheet.RowWords;
import twostrides.sheet.Sheet;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;
import twostrides.sheet.SheetReader;
import twostrides.sheet.SheetRow;

/**
 * All sync sheets of a run, read once: what they say of each game, and what became of every row.
 * Rows read = rows used + rows set aside. With several maps every row is read through each of them;
 * it counts once, and as set aside when it is doubtful through any.
 */
public final class SyncSheets {
  /** No sync sheet. */
  public static final SyncSheets NONE = new SyncSheets(Map.of(), true);

  /** A step so many times the map's, in which no numbers all stand by chance. */
  private static final double COARSER = 10;

  /** So many numbers at least. Assumed. */
  private static final int LEAST = 20;

  private static final double ROUNDING = 1e-6;

  private final Map<String, GameOutline> games;
  private final boolean tracked;
  private final Map<String, List<ClockPair>> pairs = new HashMap<>();
  private final Map<String, Map<String, List<Sync.Start>>> starts = new HashMap<>();
  private final Set<RowWords.Place> read = new HashSet<>();
  private final Map<RowWords.Place, SheetRow> rows = new LinkedHashMap<>();
  private final Map<RowWords.Place, DoubtfulRow> setAside = new LinkedHashMap<>();
  private final Map<String, Steps> steps = new LinkedHashMap<>();

  /** Numbers beside the step that the map says they have. */
  private static final class Steps {
    private int all;
    private int between;
    private int coarser;

    void add(double value, double step) {
      all++;
      between += isStep(value, step) ? 0 : 1;
      coarser += isStep(value, COARSER * step) ? 1 : 0;
    }

    private static boolean isStep(double value, double step) {
      return Math.abs(value / step - Math.rint(value / step)) < ROUNDING;
    }

    boolean wrong() {
      return between > 0 || (all >= LEAST && coarser == all);
    }
  }

  private SyncSheets(Map<String, GameOutline> games, boolean tracked) {
    this.games = games;
    this.tracked = tracked;
  }

  /**
   * Reads sync sheets.
   *
   * @param files the sheets
   * @param maps their maps; none when they are in our own columns
   * @param games the games whose sheets were read, by id; a row of another game or period is set
   *     aside
   * @param tracked whether tracking is read too, so that a row may place frames only
   * @throws SheetException when a sheet cannot be read at all, or nobody knows whose it is
   */
  public static SyncSheets read(
      List<Path> files, List<SheetMap> maps, Map<String, GameOutline> games, boolean tracked)
      throws SheetException {
    SyncSheets sheets = new SyncSheets(games, tracked);
    List<SheetMap> used = maps.isEmpty() ? List.of(SheetMap.plain(TrackForm.SYNC)) : maps;
    for (SheetMap map : used) {
      if (!map.schema().equals(TrackForm.SYNC)) {
        throw SheetException.ofFile(
            map.name(),
            "a map of " + map.schema().name() + " sheets",
            "a map that begins with sheet = \"sync\"",
            "Give the map of the sync sheets.");
      }
      for (Path file : files) {
        sheets.sheet(SheetReader.read(file, map), map);
      }
    }
    sheets.leaveContradictionsOut();
    return sheets;
  }

  private void sheet(Sheet sheet, SheetMap map) throws SheetException {
    for (DoubtfulRow row : sheet.setAside()) {
      read.add(row.row().place());
      setAside.putIfAbsent(row.row().place(), row);
    }
    for (SheetRow row : sheet.rows()) {
      read.add(row.place());
      rows.putIfAbsent(row.place(), row);
    }
    new GameOfRow(sheet, games.keySet())
        .each((row, id) -> row(row, map, games.get(id)), this::setAside);
  }

  private void row(SheetRow row, SheetMap map, GameOutline game) {
    Frame frame = Frame.ofClock(map, game.periodLength());
    RowReader in = new RowReader(row, frame);
    Optional<Integer> period = in.period();
    var video = in.video();
    if (row.cell(TrackForm.VIDEO).isEmpty()) {
      in.requiredText(TrackForm.VIDEO, "seconds of video, 0 or more");
    }
    Optional<Integer> first = in.wholeNumber(TrackForm.FRAME, 0, TrackForm.LAST_FRAME);
    boolean hasClock = row.cell(TrackForm.CLOCK).isPresent();
    Optional<Double> elapsed = hasClock ? in.elapsed() : Optional.empty();
    if (!hasClock && (!tracked || row.cell(TrackForm.FRAME).isEmpty())) {
      in.requiredText(
          TrackForm.CLOCK,
          tracked
              ? "a clock, or a frame, that belongs to the video's second"
              : "the clock that belongs to the video's second");
    }
    if (period.isPresent() && !game.periods().contains(period.get())) {
      in.doubt(
          TrackForm.PERIOD,
          "a period of which the game's sheet has rows: "
              + game.periods().stream()
                  .sorted()
                  .map(String::valueOf)
                  .collect(Collectors.joining(", ")),
          "Correct the period, or look why the game's sheet lacks it.");
    }
    if (!in.problems().isEmpty() || period.isEmpty() || video.isEmpty()) {
      setAside(row, in.problems());
      return;
    }
    double second = video.getAsDouble();
    if (first.isPresent()) {
      starts
          .computeIfAbsent(game.id(), g -> new LinkedHashMap<>())
          .computeIfAbsent(in.text(TrackForm.SEGMENT).orElse(""), s -> new ArrayList<>())
          .add(new Sync.Start(first.get(), period.get(), second));
    }
    step(map, "video", second);
    elapsed.ifPresent(e -> step(map, "clock", e));
    double both = frame.clockStep(in.clockDecimals()) + videoStep(map, row);
    elapsed.ifPresent(
        e ->
            pairs
                .computeIfAbsent(game.id(), g -> new ArrayList<>())
                .add(new ClockPair(period.get(), e, second, both / 2, row.file(), row.line())));
  }

  private void step(SheetMap map, String table, double value) {
    String key = map.name() + ": " + table + ".step_s";
    map.number(table, "step_s")
        .ifPresent(s -> steps.computeIfAbsent(key, k -> new Steps()).add(value, s));
  }

  /** What contradicts the steps that the maps say, sentences. */
  public List<String> doubts() {
    return steps.entrySet().stream()
        .filter(s -> s.getValue().wrong())
        .map(
            s ->
                s.getKey()
                    + (s.getValue().between > 0
                        ? ", found numbers between such steps"
                        : ", found all numbers in steps ten times as long")
                    + ". What to do: Write the step in which the sheet counts, or take the line out.")
        .toList();
  }

  private static double videoStep(SheetMap map, SheetRow row) {
    String written = row.cell(TrackForm.VIDEO).map(Cell::text).orElse("");
    int mark = Math.max(written.lastIndexOf('.'), written.lastIndexOf(','));
    int decimals = mark < 0 ? 0 : written.length() - mark - 1;
    return map.number("video", "step_s").orElse(Math.pow(10, -decimals));
  }

  /** Pairs that no clock can join with the others of their game are rows that were not used. */
  private void leaveContradictionsOut() {
    for (List<ClockPair> list : pairs.values()) {
      VideoClock clock = VideoClock.of(list);
      for (Problem doubt : clock.doubts()) {
        setAside(rows.get(new RowWords.Place(doubt.file(), doubt.line())), List.of(doubt));
      }
      list.removeIf(p -> !clock.pairsOf(p.period()).contains(p));
    }
  }

  private void setAside(SheetRow row, List<Problem> problems) {
    setAside.putIfAbsent(row.place(), new DoubtfulRow(row, problems));
  }

  /**
   * What they say of a game.
   *
   * @param game its id
   */
  public Sync of(String game) {
    return new Sync(pairs.getOrDefault(game, List.of()), starts.getOrDefault(game, Map.of()));
  }

  /** Rows of the sheets. */
  public int rowsRead() {
    return read.size();
  }

  /** Rows that were not used, and why, in the order of the sheets. */
  public List<DoubtfulRow> setAside() {
    return List.copyOf(setAside.values());
  }
}
