package twostrides.game;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.SheetException;

/**
 * The rows of games until all of a game are there. A game is settled when a round of reading
 * brought nothing more of it: it is put together, what is kept of it is taken, and its rows are
 * forgotten. Should a later sheet have more of it after all, its earlier sheets are read again.
 *
 * @param <R> play row or tagged exit
 * @param <K> what is kept of a game
 */
final class GamesUnread<R, K> {

  /** Refuses rows of one game that are several. */
  interface Check<R> {
    void of(String id, List<ReadRow<R>> rows) throws SheetException;
  }

  /** Reads the rows of a sheet again. */
  interface Again<R> {
    List<ReadRow<R>> read(Path file) throws SheetException;
  }

  /** Puts a game together; empty where its rows make none. */
  interface Build<R, K> {
    Optional<Kept<K>> of(GameBuilder builder, Frame frame, List<ReadRow<R>> rows);
  }

  /**
   * What is kept.
   *
   * @param date day of the game, where the sheet has it
   * @param rowsUsed rows of the sheets that it rests on
   * @param what what is kept of it
   */
  record Kept<K>(Optional<LocalDate> date, int rowsUsed, K what) {}

  /**
   * What came of the rows of a game.
   *
   * @param id the game's id
   * @param kept what is kept of it; empty where its rows make none
   * @param setAside rows that do not fit it
   * @param mended what was put right
   */
  record Settled<K>(
      String id, Optional<Kept<K>> kept, List<DoubtfulRow> setAside, List<Mend> mended) {}

  private static final class OneGame<R, K> {
    private final Frame frame;
    private final Set<Path> files = new LinkedHashSet<>();

    /** Its rows in the order of the sheets; empty once it is settled. */
    private List<ReadRow<R>> rows = List.of();

    private boolean more;
    private Optional<Settled<K>> settled = Optional.empty();

    OneGame(Frame frame) {
      this.frame = frame;
    }
  }

  private final Check<R> check;
  private final Again<R> again;
  private final Build<R, K> build;
  private final Map<String, OneGame<R, K>> games = new LinkedHashMap<>();

  GamesUnread(Check<R> check, Again<R> again, Build<R, K> build) {
    this.check = check;
    this.again = again;
    this.build = build;
  }

  /**
   * Adds the rows of a sheet, or none.
   *
   * @param file the sheet
   * @param frame how it writes clock and places
   * @param rows its rows by game
   * @throws SheetException when the rows of a game are several games, or a sheet read again is not
   *     what it was
   */
  void add(Path file, Frame frame, Map<String, List<ReadRow<R>>> rows) throws SheetException {
    Map<String, List<ReadRow<R>>> all = new LinkedHashMap<>();
    for (Map.Entry<String, List<ReadRow<R>>> one : rows.entrySet()) {
      List<ReadRow<R>> of = new ArrayList<>(before(one.getKey()));
      of.addAll(one.getValue());
      check.of(one.getKey(), of);
      all.put(one.getKey(), of);
    }
    all.forEach(
        (id, of) -> {
          OneGame<R, K> game = games.computeIfAbsent(id, g -> new OneGame<>(frame));
          game.files.add(file);
          game.rows = of;
          game.more = true;
          game.settled = Optional.empty();
        });
  }

  /**
   * Whether rows of a game were read before.
   *
   * @param id the game's id
   */
  boolean has(String id) {
    return games.containsKey(id);
  }

  /**
   * Adds a game whose rows need not be read.
   *
   * @param file its sheet
   * @param frame how it writes clock and places
   * @param settled what came of its rows
   */
  void add(Path file, Frame frame, Settled<K> settled) {
    OneGame<R, K> game = new OneGame<>(frame);
    game.files.add(file);
    game.settled = Optional.of(settled);
    games.put(settled.id(), game);
  }

  /**
   * What came of a game of one sheet; empty where other sheets have rows of it too.
   *
   * @param id the game's id
   * @param file the sheet
   */
  Optional<Settled<K>> alone(String id, Path file) {
    OneGame<R, K> game = games.get(id);
    return game.files.equals(Set.of(file)) ? game.settled : Optional.empty();
  }

  private List<ReadRow<R>> before(String id) throws SheetException {
    OneGame<R, K> game = games.get(id);
    if (game == null) {
      return List.of();
    }
    if (game.settled.isEmpty()) {
      return game.rows;
    }
    List<ReadRow<R>> rows = new ArrayList<>();
    for (Path file : game.files) {
      again.read(file).stream().filter(r -> r.gameId().equals(id)).forEach(rows::add);
    }
    return rows;
  }

  /**
   * Settles games, on all threads.
   *
   * @param all whether nothing more is read; else those that the last round brought rows of wait
   */
  void settle(boolean all) {
    List<Map.Entry<String, OneGame<R, K>>> ready =
        games.entrySet().stream()
            .filter(g -> g.getValue().settled.isEmpty() && (all || !g.getValue().more))
            .toList();
    ready.parallelStream().forEach(g -> settle(g.getKey(), g.getValue()));
    games.values().forEach(g -> g.more = false);
  }

  private void settle(String id, OneGame<R, K> game) {
    List<DoubtfulRow> setAside = new ArrayList<>();
    List<Mend> mended = new ArrayList<>();
    GameBuilder builder = new GameBuilder(id, game.frame, setAside, mended);
    Optional<Kept<K>> kept = build.of(builder, game.frame, game.rows);
    game.settled =
        Optional.of(
            new Settled<>(
                id, kept, setAside.stream().map(DoubtfulRow::withoutCells).toList(), mended));
    game.rows = List.of();
  }

  private Stream<Settled<K>> settled() {
    return games.values().stream().flatMap(g -> g.settled.stream());
  }

  /** What is kept of the games, by date, then id. */
  List<K> kept() {
    Comparator<Settled<K>> byDate =
        Comparator.comparing(s -> s.kept().orElseThrow().date().orElse(LocalDate.MIN));
    return settled()
        .filter(s -> s.kept().isPresent())
        .sorted(byDate.thenComparing(Settled::id))
        .map(s -> s.kept().orElseThrow().what())
        .toList();
  }

  /** Rows of the sheets that the games rest on. */
  int rowsUsed() {
    return settled().flatMap(s -> s.kept().stream()).mapToInt(Kept::rowsUsed).sum();
  }

  /** Rows that do not fit their games. */
  Stream<DoubtfulRow> setAside() {
    return settled().flatMap(s -> s.setAside().stream());
  }

  /** What was put right in them. */
  Stream<Mend> mended() {
    return settled().flatMap(s -> s.mended().stream());
  }
}
