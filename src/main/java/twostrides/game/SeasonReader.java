package twostrides.game;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.FilesRead;
import twostrides.sheet.RowWords;
import twostrides.sheet.Sheet;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetFiles;
import twostrides.sheet.SheetMap;
import twostrides.sheet.SheetMaps;
import twostrides.sheet.SheetReader;
import twostrides.sheet.SheetRow;

/**
 * Reads sheets into games. A file that cannot be read at all stops the reading, or is set aside
 * whole when the caller says so; a doubtful row is set aside and the reading goes on.
 */
public final class SeasonReader {

  /** Files that are read at once, and held: enough for any number of processors. Assumed. */
  private static final int AT_ONCE = 8;

  /**
   * What a run keeps of each game of play sheets. A game is taken once its sheets are read, on any
   * thread, and its rows are forgotten then. Where a later sheet has more of its rows it is taken
   * again with all of them, and what is kept then counts.
   *
   * @param <P> what is kept
   */
  public interface Keeper<P> {
    /**
     * Takes a game.
     *
     * @param game the game
     * @param frame how its sheets write clock and places
     */
    P of(Game game, Frame frame);
  }

  private final SheetMaps maps;
  private final boolean keepGoing;
  private final Usual usual;
  private final GamesTaken taken = new GamesTaken();
  private final List<DoubtfulRow> setAside = new ArrayList<>();
  private final List<SheetException> unreadable = new ArrayList<>();
  private final List<Mend> mends = new ArrayList<>();
  private final List<Fresh> fresh = new ArrayList<>();
  private int rowsRead;

  private SeasonReader(SheetMaps maps, boolean keepGoing, Usual usual) {
    this.usual = usual;
    this.maps = maps;
    this.keepGoing = keepGoing;
  }

  /**
   * Reads sheets in our own columns and words, periods of twenty minutes: for those who work in
   * Java instead of on the command line. Sheets that need a map: {@link SheetMap#read} with {@link
   * SheetForms#ALL}, and {@link #read}.
   *
   * @param sheets files, folders or patterns, as {@link SheetFiles#find} takes them
   * @throws SheetException when one of them names nothing or cannot be read
   */
  public static SheetsRead at(String... sheets) throws SheetException {
    return read(SheetFiles.find(List.of(sheets)), Optional.empty(), false, n -> {});
  }

  /**
   * Reads files in their order.
   *
   * @param files sheets
   * @param map the sheet map, if the sheets need one
   * @param keepGoing whether a file that cannot be read is set aside whole instead of stopping the
   *     run
   * @param eachFile told the number of files read so far, for a progress line
   * @throws SheetException when a file cannot be read and {@code keepGoing} is off, one period of a
   *     game or one game under two ids stands in two sheets, or several games stand in one
   */
  public static SheetsRead read(
      List<Path> files, Optional<SheetMap> map, boolean keepGoing, Consumer<Integer> eachFile)
      throws SheetException {
    return read(files, map, keepGoing, Usual.DEFAULT, eachFile);
  }

  /**
   * Reads files in their order.
   *
   * @param files sheets
   * @param map the sheet map, if the sheets need one
   * @param keepGoing whether a file that cannot be read is set aside whole instead of stopping the
   *     run
   * @param usual rink and period where the map does not say
   * @param eachFile told the number of files read so far, for a progress line
   * @throws SheetException when a file cannot be read and {@code keepGoing} is off, one period of a
   *     game or one game under two ids stands in two sheets, or several games stand in one
   */
  public static SheetsRead read(
      List<Path> files,
      Optional<SheetMap> map,
      boolean keepGoing,
      Usual usual,
      Consumer<Integer> eachFile)
      throws SheetException {
    return read(files, SheetMaps.of(map), keepGoing, usual, eachFile);
  }

  /**
   * Reads files in their order, each through its map.
   *
   * @param files sheets
   * @param maps which sheet is read through which map
   * @param keepGoing whether a file that cannot be read is set aside whole instead of stopping the
   *     run
   * @param usual rink and period where the map does not say
   * @param eachFile told the number of files read so far, for a progress line
   * @throws SheetException when a file cannot be read and {@code keepGoing} is off, or one period
   *     of a game stands in two sheets
   */
  public static SheetsRead read(
      List<Path> files, SheetMaps maps, boolean keepGoing, Usual usual, Consumer<Integer> eachFile)
      throws SheetException {
    return SheetsRead.of(
        read(files, maps, keepGoing, usual, eachFile, (game, frame) -> game, SheetMemory.none()));
  }

  /**
   * Reads files in their order, each through its map, and forgets the rows of each game once it is
   * taken.
   *
   * @param files sheets
   * @param maps which sheet is read through which map
   * @param keepGoing whether a file that cannot be read is set aside whole instead of stopping the
   *     run
   * @param usual rink and period where the map does not say
   * @param eachFile told the number of files read so far, for a progress line
   * @param keeper what is kept of each game of play sheets; tag sheets are short and stay
   * @param memory what play sheets gave in earlier runs
   * @throws SheetException when a file cannot be read and {@code keepGoing} is off, or one period
   *     of a game stands in two sheets
   */
  public static <P> GamesRead<P> read(
      List<Path> files,
      SheetMaps maps,
      boolean keepGoing,
      Usual usual,
      Consumer<Integer> eachFile,
      Keeper<P> keeper,
      SheetMemory<P> memory)
      throws SheetException {
    SeasonReader reader = new SeasonReader(maps, keepGoing, usual);
    GamesUnread<PlayRow, P> played =
        new GamesUnread<>(
            GamesApart::check,
            file -> reader.plays(reader.open(file)).rows(),
            (builder, frame, rows) ->
                builder
                    .play(rows)
                    .map(
                        g ->
                            new GamesUnread.Kept<>(
                                g.date(),
                                (int) g.rows().stream().filter(r -> !r.second()).count(),
                                keeper.of(g, frame))));
    GamesUnread<TaggedExit, TaggedGame> tagged =
        new GamesUnread<>(
            GamesApart::checkTags,
            file -> reader.tags(reader.open(file)).rows(),
            (builder, frame, rows) -> {
              TaggedGame g = builder.tags(rows);
              return Optional.of(new GamesUnread.Kept<>(g.date(), g.exits().size(), g));
            });
    for (int i = 0; i < files.size(); i += AT_ONCE) {
      // Read on all threads, taken in order.
      List<Supplier<Reading>> some =
          files.subList(i, Math.min(files.size(), i + AT_ONCE)).stream()
              .map(f -> FilesRead.shared(() -> reader.reading(f, played, tagged, memory)))
              .toList();
      int done = i;
      for (Reading r : some.parallelStream().map(Supplier::get).toList()) {
        reader.take(r, files.size());
        eachFile.accept(++done);
      }
      played.settle(false);
      tagged.settle(false);
    }
    played.settle(true);
    tagged.settle(true);
    reader.fresh.parallelStream()
        .forEach(f -> f.kept(played).ifPresent(k -> memory.keep(f.file(), k)));
    return reader.season(played, tagged);
  }

  /** A play sheet that was read in this run. */
  private record Fresh(RowsOfSheet<?> sheet, List<SheetKept.Had> had) {

    Path file() {
      return sheet.file();
    }

    /** What it gave by itself; empty where another sheet has rows of one of its games. */
    <P> Optional<SheetKept<P>> kept(GamesUnread<PlayRow, P> played) {
      List<SheetKept.OfGame<P>> games = new ArrayList<>();
      for (SheetKept.Had h : had) {
        played.alone(h.game(), file()).ifPresent(s -> games.add(new SheetKept.OfGame<>(h, s)));
      }
      return games.size() < had.size()
          ? Optional.empty()
          : Optional.of(
              new SheetKept<>(
                  sheet.rowsRead(), sheet.frame(), sheet.doubtful(), sheet.mended(), games));
    }
  }

  /** A file on its way to be taken, in its turn. */
  private interface Reading {
    void take() throws SheetException;
  }

  private void take(Reading reading, int files) throws SheetException {
    try {
      reading.take();
    } catch (SheetException e) {
      if (!keepGoing) {
        throw files > 1 ? e.ofOneFile() : e;
      }
      unreadable.add(e);
    }
  }

  /** Reads a file; it keeps to itself what it finds until it is taken. */
  private <P> Reading reading(
      Path file,
      GamesUnread<PlayRow, P> played,
      GamesUnread<TaggedExit, ?> tagged,
      SheetMemory<P> memory) {
    try {
      Optional<SheetKept<P>> known = memory.of(file);
      return known.isPresent()
          ? () -> {
            if (!recall(file, known.get(), played)) {
              read(file, played, tagged).take();
            }
          }
          : read(file, played, tagged);
    } catch (SheetException e) {
      return () -> {
        throw e;
      };
    }
  }

  private Reading read(Path file, GamesUnread<PlayRow, ?> played, GamesUnread<TaggedExit, ?> tagged)
      throws SheetException {
    Opened opened = open(file);
    if (opened.map().schema().equals(SheetForms.TAG)) {
      RowsOfSheet<TaggedExit> rows = tags(opened);
      return () -> take(rows, GamesTaken.When::of, tagged);
    }
    RowsOfSheet<PlayRow> rows = plays(opened);
    return () -> fresh.add(new Fresh(rows.forgotten(), take(rows, GamesTaken.When::of, played)));
  }

  private <R> List<SheetKept.Had> take(
      RowsOfSheet<R> rows, Function<R, GamesTaken.When> when, GamesUnread<R, ?> into)
      throws SheetException {
    List<SheetKept.Had> had = taken.take(rows, when, into);
    rowsRead += rows.rowsRead();
    setAside.addAll(rows.doubtful());
    mends.addAll(rows.mended());
    return had;
  }

  /** Takes what a sheet gave before; not where another sheet had any of it: then its rows count. */
  private <P> boolean recall(Path file, SheetKept<P> gave, GamesUnread<PlayRow, P> played) {
    List<SheetKept.Had> had = gave.had();
    if (!taken.isNew(had) || had.stream().anyMatch(h -> played.has(h.game()))) {
      return false;
    }
    taken.add(SheetFiles.display(file), Sheet.fileName(file), had);
    gave.games().forEach(g -> played.add(file, gave.frame(), g.settled()));
    rowsRead += gave.rowsRead();
    setAside.addAll(gave.setAside());
    mends.addAll(gave.mended());
    return true;
  }

  /** A sheet in its cells, and the map it was read through. */
  private record Opened(Sheet sheet, SheetMap map) {}

  private Opened open(Path file) throws SheetException {
    Optional<SheetMap> map = maps.of(file);
    Sheet sheet =
        map.isPresent()
            ? SheetReader.read(file, map.get())
            : SheetReader.readPlain(file, SeasonReader::plainMap);
    return new Opened(sheet, map.orElseGet(() -> plainMap(sheet.headers())));
  }

  /**
   * Begins to read the rows of a sheet into one kind; doubtful ones and mends go into the lists.
   */
  private interface Begin<R> {
    Function<SheetRow, Optional<ReadRow<R>>> of(
        Frame frame, TeamWords teams, Sheet sheet, List<DoubtfulRow> doubtful, List<Mend> mended);
  }

  private RowsOfSheet<PlayRow> plays(Opened o) {
    return rows(o, (f, t, s, d, m) -> new PlayRows(f, t, s.name(), s.stem(), d, m)::read);
  }

  private RowsOfSheet<TaggedExit> tags(Opened o) {
    return rows(o, (f, t, s, d, m) -> new TagRows(f, t, s.name(), s.stem(), d, m)::read);
  }

  private <R> RowsOfSheet<R> rows(Opened o, Begin<R> begin) {
    Sheet sheet = o.sheet();
    List<DoubtfulRow> doubtful = new ArrayList<>(sheet.setAside());
    List<Mend> mended = new ArrayList<>();
    Frame frame = Frame.of(o.map(), Frame.View.ACTING_TEAM, usual);
    TeamWords teams = TeamWords.of(o.map(), new HashMap<>());
    List<ReadRow<R>> rows = all(sheet, begin.of(frame, teams, sheet, doubtful, mended));
    return new RowsOfSheet<>(
        sheet.file(),
        sheet.name(),
        sheet.rowsRead(),
        frame,
        rows,
        doubtful.stream().map(DoubtfulRow::withoutCells).toList(),
        mended);
  }

  private static <T> List<ReadRow<T>> all(
      Sheet sheet, Function<SheetRow, Optional<ReadRow<T>>> reading) {
    List<ReadRow<T>> read = new ArrayList<>();
    Set<RowWords.Place> lost = new HashSet<>();
    for (SheetRow source : sheet.rows()) {
      reading.apply(source).ifPresentOrElse(read::add, () -> lost.add(source.place()));
    }
    if (sheet.rows().size() + sheet.setAside().size() > sheet.rowsRead()) {
      // Of two events in one row neither is used without the other.
      read.removeIf(r -> lost.contains(r.source().place()));
    }
    return read;
  }

  /**
   * The map of a sheet that is written in one of our own formats: a sheet with a way_out column is
   * a tag sheet.
   *
   * @param file the sheet
   * @throws SheetException when the file has no readable header
   */
  public static SheetMap plainMapFor(Path file) throws SheetException {
    return plainMap(SheetReader.headers(file));
  }

  private static SheetMap plainMap(List<String> headers) {
    boolean tags = headers.stream().anyMatch(h -> h.strip().equalsIgnoreCase(SheetForms.WAY_OUT));
    return SheetMap.plain(tags ? SheetForms.TAG : SheetForms.PLAY);
  }

  private <P> GamesRead<P> season(
      GamesUnread<PlayRow, P> played, GamesUnread<TaggedExit, TaggedGame> tagged) {
    for (GamesUnread<?, ?> games : List.of(played, tagged)) {
      games.setAside().forEach(setAside::add);
      games.mended().forEach(mends::add);
    }
    // Two events of one row are set aside once.
    Map<RowWords.Place, DoubtfulRow> rows = new LinkedHashMap<>();
    setAside.forEach(d -> rows.merge(d.row().place(), d, DoubtfulRow::and));
    List<DoubtfulRow> ordered = new ArrayList<>(rows.values());
    ordered.sort(
        Comparator.comparing((DoubtfulRow d) -> d.row().file())
            .thenComparingLong(d -> d.row().line()));
    Map<Mend, Integer> mended = new TreeMap<>();
    mends.forEach(m -> mended.merge(m, 1, Integer::sum));
    return new GamesRead<>(
        played.kept(),
        tagged.kept(),
        rowsRead,
        played.rowsUsed() + tagged.rowsUsed(),
        ordered,
        unreadable,
        mended);
  }
}
