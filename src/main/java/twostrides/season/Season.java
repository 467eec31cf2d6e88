package twostrides.season;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import tech.tablesaw.api.Table;
import twostrides.exits.Exit;
import twostrides.exits.GameReader;
import twostrides.exits.GameRecords;
import twostrides.exits.Kill;
import twostrides.exits.ManpowerGap;
import twostrides.exits.RaceSettings;
import twostrides.exits.Release;
import twostrides.exits.Restart;
import twostrides.exits.Settings;
import twostrides.exits.TagReader;
import twostrides.game.Game;
import twostrides.game.TaggedGame;
import twostrides.rink.Rink;
import twostrides.stats.Count;

/**
 * A season: the records of all its games, what only a season knows (costs, carrying rates, flags),
 * and its tables. Games of play sheets come first, then those of tag sheets.
 */
public final class Season {

  private final List<GameRecords> games;
  private final List<Restart> restarts;
  private final List<Assessed> releases;
  private final List<Flag> flags;
  private final IdentityHashMap<Release, Flag> flagOf = new IdentityHashMap<>();
  private final CarryRates carrying;
  private final Costs costs;
  private final RaceSettings race;
  private final Columns.Windows columns;
  private final Schemas schemas;
  private final Map<String, Supplier<Table>> makers = new LinkedHashMap<>();
  private final Map<String, Table> made = new ConcurrentHashMap<>();
  private final Map<String, Rows> rows = new ConcurrentHashMap<>();

  /**
   * A season whose releases are weighed.
   *
   * @param games the records of its games
   * @param releases its releases with what came out for them
   * @param flags those that an own-zone restart followed
   * @param carrying how carriers fare
   * @param costs what gaining center, icings and lost pucks cost
   * @param settings windows and seed
   */
  Season(
      List<GameRecords> games,
      List<Assessed> releases,
      List<Flag> flags,
      CarryRates carrying,
      Costs costs,
      Settings settings) {
    this.games = List.copyOf(games);
    this.restarts = games.stream().flatMap(g -> g.restarts().stream()).toList();
    this.releases = List.copyOf(releases);
    this.flags = List.copyOf(flags);
    flags.forEach(f -> flagOf.put(f.release(), f));
    this.carrying = carrying;
    this.costs = costs;
    this.race = settings.race();
    this.columns = new Columns.Windows(settings.window(), settings.longWindow());
    this.schemas = new Schemas(columns, race.seed());
    maker(schemas.exits(), this::exitRecords);
    maker(schemas.releases(), () -> this.releases);
    maker(schemas.restarts(), () -> restarts);
    maker(schemas.kills(), this::killRecords);
    maker(schemas.rulings(), this::asked);
    maker(schemas.flags(), () -> this.flags);
    maker(schemas.manpower(), this::gaps);
    maker(schemas.players(), () -> PlayerCount.of(exitRecords()));
  }

  private <R> void maker(TableSchema<R> schema, Supplier<List<R>> records) {
    makers.put(schema.name(), () -> schema.table(records.get()));
  }

  /**
   * A season of games whose records were made one by one. What only a season knows comes from its
   * play sheets; then every release is weighed by it.
   *
   * @param played the records of games of play sheets
   * @param tagged the records of games of tag sheets
   * @param settings windows, books, race
   * @param skaters who was where at a release, besides what the play sheets say
   */
  public static Season ofRecords(
      List<GameRecords> played,
      List<GameRecords> tagged,
      Settings settings,
      SkatersAtRelease skaters) {
    List<GameRecords> games = Stream.of(played, tagged).flatMap(List::stream).toList();
    CarryRates carrying = new CarryRates(played);
    Costs costs = Costs.of(played);
    Flags weigh = new Flags(settings.race(), carrying, costs);
    List<Assessed> releases =
        weigh.assess(games.stream().flatMap(g -> g.releases().stream()).toList(), skaters);
    List<Flag> flags =
        weigh.flags(releases, games.stream().flatMap(g -> g.restarts().stream()).toList());
    return new Season(games, releases, flags, carrying, costs, settings);
  }

  /** Its exit attempts. */
  public List<Exit> exitRecords() {
    return games.stream().flatMap(g -> g.exits().stream()).toList();
  }

  private List<Schemas.Asked> asked() {
    List<Schemas.Asked> asked = new ArrayList<>();
    for (GameRecords g : games) {
      for (Release r : g.releases()) {
        r.rulings().others().forEach(o -> asked.add(new Schemas.Asked(r, o)));
      }
    }
    return asked;
  }

  /**
   * A season of games that were read.
   *
   * @param games games of play sheets
   * @param tagged games of tag sheets
   * @param settings windows, books, race
   * @param skaters who was where at a release, besides what the play sheets say
   */
  public static Season of(
      List<Game> games, List<TaggedGame> tagged, Settings settings, SkatersAtRelease skaters) {
    return ofRecords(
        games.parallelStream().map(g -> GameReader.read(g, settings)).toList(),
        tagged.stream().map(g -> TagReader.read(g, settings)).toList(),
        settings,
        skaters);
  }

  /** The records of its games. */
  public List<GameRecords> games() {
    return games;
  }

  /** The rink to draw: that of its first game, as the sheets share one map. */
  public Rink rink() {
    return games.stream().findFirst().map(g -> g.game().rink()).orElse(Rink.NORTH_AMERICAN);
  }

  /** Its face-offs in a team's own zone. */
  public List<Restart> restartRecords() {
    return restarts;
  }

  /** Its releases short of center, each with what came out for it. */
  public List<Assessed> releaseRecords() {
    return releases;
  }

  /** Its releases that an own-zone restart followed, flagged or not. */
  public List<Flag> flagRecords() {
    return flags;
  }

  /**
   * What is said of a release; empty where no own-zone restart followed.
   *
   * @param release the release
   */
  public Optional<Flag> flag(Release release) {
    return Optional.ofNullable(flagOf.get(release));
  }

  /**
   * What is said of a release once its skaters are known, by the same reckoning.
   *
   * @param flag what is said of it without them
   * @param skaters who was where
   */
  public Flag settled(Flag flag, SkatersAtRelease skaters) {
    return new Flags(race, carrying, costs).again(flag, skaters);
  }

  /** How carriers of its play sheets fare. */
  public CarryRates carrying() {
    return carrying;
  }

  /** What gaining center, icings and lost pucks cost in its play sheets. */
  public Costs costs() {
    return costs;
  }

  /** The columns that are named after the run's windows. */
  public Columns.Windows columns() {
    return columns;
  }

  /** Rows on which manpower columns and penalty rows disagree, of those that have both. */
  public Count manpowerDisagrees() {
    return new Count(
        games.stream().flatMap(g -> g.gaps().stream()).mapToInt(ManpowerGap::rows).sum(),
        games.stream().mapToInt(GameRecords::manpowerCompared).sum());
  }

  /** Makes the tables that a book asks most, side by side; else each is made when it is asked. */
  public void makeTables() {
    List.of("exits", "releases", "restarts").parallelStream().forEach(this::kept);
  }

  private Rows rows(String name) {
    return rows.computeIfAbsent(name, n -> new Rows(kept(n)));
  }

  /** Its exit attempts, to ask. */
  public Rows exitRows() {
    return rows("exits");
  }

  /** Its releases short of center, to ask. */
  public Rows releaseRows() {
    return rows("releases");
  }

  /** Its face-offs in a team's own zone, to ask. */
  public Rows restartRows() {
    return rows("restarts");
  }

  private Table kept(String name) {
    return made.computeIfAbsent(name, n -> makers.get(n).get());
  }

  /** One row an exit attempt. */
  public Table exits() {
    return kept("exits");
  }

  /** One row a release short of center. */
  public Table releases() {
    return kept("releases");
  }

  /** One row a face-off in a team's own zone. */
  public Table restarts() {
    return kept("restarts");
  }

  /** One row a stretch in which a team is shorthanded. */
  public Table kills() {
    return kept("kills");
  }

  /** One row a release short of center and other book asked. */
  public Table rulings() {
    return kept("rulings");
  }

  /** One row a release that an own-zone restart followed. */
  public Table flags() {
    return kept("flags");
  }

  /** One row a run of rows on which manpower columns and penalty rows disagree. */
  public Table manpower() {
    return kept("manpower");
  }

  /** Counts per player, way out, mark at center and strength. */
  public Table players() {
    return kept("players");
  }

  private List<ManpowerGap> gaps() {
    return games.stream().flatMap(g -> g.gaps().stream()).toList();
  }

  /** Its penalty kills. */
  public List<Kill> killRecords() {
    return games.stream().flatMap(g -> g.kills().stream()).toList();
  }

  /** Exits and releases with the keys that JSON Lines have besides the columns of their tables. */
  public List<Table> lines() {
    return List.of(
        schemas.exitLines().table(exitRecords()), schemas.releaseLines().table(releases));
  }

  /**
   * Every table, in the order of docs/tables.md. One that nobody asked for before is made when it
   * is asked for here, and not kept: those of a league are large.
   */
  public List<Supplier<Table>> tables() {
    return makers.entrySet().stream()
        .<Supplier<Table>>map(
            m ->
                () -> {
                  Table known = made.get(m.getKey());
                  return known == null ? m.getValue().get() : known;
                })
        .toList();
  }
}
