package twostrides.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import twostrides.exits.GameReader;
import twostrides.exits.GameRecords;
import twostrides.exits.Settings;
import twostrides.exits.TagReader;
import twostrides.game.Anonymous;
import twostrides.game.Game;
import twostrides.game.GamesRead;
import twostrides.game.RowAccount;
import twostrides.game.SheetMemory;
import twostrides.game.TaggedGame;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMaps;
import twostrides.tracking.GameOutline;
import twostrides.tracking.SyncSheets;
import twostrides.tracking.VideoSeconds;

/**
 * The games of a review. A game's rows are forgotten once its records are made, but where these
 * wait for what only all sheets together say: seconds of a sync sheet, or a code for each name.
 */
final class ReviewGames {

  /** What is kept of a game of play sheets once its rows are forgotten. */
  record Kept(GameOutline outline, Optional<LocalDate> date, Optional<GameRecords> records) {
    static Kept of(Game g, Optional<GameRecords> records) {
      return new Kept(GameOutline.of(g), g.date(), records);
    }
  }

  private final GamesRead<Kept> read;
  private final List<Game> waiting;
  private final List<GameOutline> outlines;
  private final Map<String, GameOutline> byId;

  private ReviewGames(GamesRead<Kept> read, List<Game> waiting) {
    this.read = read;
    this.waiting = waiting;
    this.outlines = read.played().stream().map(Kept::outline).toList();
    this.byId = GameOutline.byId(outlines, read.tagged().stream().map(GameOutline::of).toList());
  }

  /**
   * Reads them.
   *
   * @param sheets how sheets are read
   * @param files the sheets
   * @param maps their maps
   * @param ice rink and period where the map does not say
   * @param progress told of each file
   * @param records makes the records of a game, on any thread; none where its book cannot be used
   * @param memory what play sheets gave in earlier runs
   * @throws SheetException when a sheet cannot be read
   */
  static ReviewGames read(
      Sheets sheets,
      List<Path> files,
      SheetMaps maps,
      Ice.Played ice,
      Progress progress,
      Function<Game, Optional<GameRecords>> records,
      SheetMemory<Sheets.Looked<Kept>> memory)
      throws SheetException {
    return new ReviewGames(
        sheets.read(files, maps, ice, progress, g -> Kept.of(g, records.apply(g)), memory),
        List.of());
  }

  /**
   * Reads them; their records wait until all sheets are read.
   *
   * @param sheets how sheets are read
   * @param files the sheets
   * @param maps their maps
   * @param ice rink and period where the map does not say
   * @param progress told of each file
   * @throws SheetException when a sheet cannot be read
   */
  static ReviewGames readAndWait(
      Sheets sheets, List<Path> files, SheetMaps maps, Ice.Played ice, Progress progress)
      throws SheetException {
    GamesRead<Game> read =
        sheets.read(files, maps, ice, progress, Function.identity(), SheetMemory.none());
    return new ReviewGames(
        read.with(read.played().stream().map(g -> Kept.of(g, Optional.empty())).toList()),
        read.played());
  }

  /** What became of every row. */
  RowAccount rows() {
    return read;
  }

  /** The days of the games, in their order. */
  Set<Optional<LocalDate>> days() {
    return Stream.concat(
            read.played().stream().map(Kept::date), read.tagged().stream().map(TaggedGame::date))
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** The games of play sheets, in their order. */
  List<GameOutline> played() {
    return outlines;
  }

  /** All games. */
  Map<String, GameOutline> byId() {
    return byId;
  }

  /**
   * The seconds of the video that sync sheets give.
   *
   * @param sync the sync sheets
   * @param reach how far outside the pairs of a period a clock may be, in seconds of play
   */
  VideoSeconds seconds(SyncSheets sync, double reach) {
    return VideoSeconds.of(waiting, read.tagged(), sync, reach);
  }

  /**
   * The records of the games of play sheets.
   *
   * @param seconds the games that waited, with their seconds
   * @param noNames whether players' names are taken out
   * @param settings windows, books, race
   */
  List<GameRecords> records(VideoSeconds seconds, boolean noNames, Settings settings) {
    List<Game> waited = noNames ? Anonymous.games(seconds.played()) : seconds.played();
    return Stream.concat(
            read.played().stream().flatMap(g -> g.records().stream()),
            waited.parallelStream().map(g -> GameReader.read(g, settings)).toList().stream())
        .toList();
  }

  /** The same of the games of tag sheets. */
  static List<GameRecords> tagged(VideoSeconds seconds, boolean noNames, Settings settings) {
    List<TaggedGame> games = noNames ? Anonymous.tagged(seconds.tagged()) : seconds.tagged();
    return games.stream().map(g -> TagReader.read(g, settings)).toList();
  }
}
