package twostrides.season;

import java.util.ArrayList;
import java.util.List;
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
  private final CarryRates carrying;
  private final Costs costs;
  private final RaceSettings race;
  private final Columns.Windows columns;
  private final Tables tables;

  /** The tables, each made once. */
  private record Tables(
      Table exits,
      Table releases,
      Table restarts,
      Table kills,
      Table rulings,
      Table flags,
      Table manpower,
      Table players) {}

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
    this.carrying = carrying;
    this.costs = costs;
    this.race = settings.race();
    this.columns = new Columns.Windows(settings.window(), settings.longWindow());
    Schemas schemas = new Schemas(columns, settings.race().seed());
    Table exits = schemas.exits().table(exits(games));
    this.tables =
        new Tables(
            exits,
            schemas.releases().table(releases),
            schemas.restarts().table(restarts),
            schemas.kills().table(games.stream().flatMap(g -> g.kills().stream()).toList()),
            schemas.rulings().table(asked(games)),
            schemas.flags().table(flags),
            schemas.manpower().table(games.stream().flatMap(g -> g.gaps().stream()).toList()),
            schemas.players().table(PlayerCount.of(new Rows(exits))));
  }

  /** What only a season knows, from its play sheets; then every release is weighed by it. */
  private static Season weigh(
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

  private static List<Exit> exits(List<GameRecords> games) {
    return games.stream().flatMap(g -> g.exits().stream()).toList();
  }

  private static List<Schemas.Asked> asked(List<GameRecords> games) {
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
    return weigh(
        games.parallelStream().map(g -> GameReader.read(g, settings)).toList(),
        tagged.stream().map(g -> TagReader.read(g, settings.bookOn(g.date()))).toList(),
        settings,
        skaters);
  }

  /** The records of its games. */
  public List<GameRecords> games() {
    return games;
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

  /** One row an exit attempt. */
  public Table exits() {
    return tables.exits();
  }

  /** One row a release short of center. */
  public Table releases() {
    return tables.releases();
  }

  /** One row a face-off in a team's own zone. */
  public Table restarts() {
    return tables.restarts();
  }

  /** One row a stretch in which a team is shorthanded. */
  public Table kills() {
    return tables.kills();
  }

  /** One row a release short of center and other book asked. */
  public Table rulings() {
    return tables.rulings();
  }

  /** One row a release that an own-zone restart followed. */
  public Table flags() {
    return tables.flags();
  }

  /** One row a run of rows on which manpower columns and penalty rows disagree. */
  public Table manpower() {
    return tables.manpower();
  }

  /** Counts per player, way out, mark at center and strength. */
  public Table players() {
    return tables.players();
  }

  /** Its penalty kills. */
  public List<Kill> killRecords() {
    return games.stream().flatMap(g -> g.kills().stream()).toList();
  }

  /** Exits and releases with the keys that JSON Lines have besides the columns of their tables. */
  public List<Table> lines() {
    Schemas schemas = new Schemas(columns, race.seed());
    return List.of(schemas.exitLines().table(exits(games)), schemas.releaseLines().table(releases));
  }

  /** Every table, in the order of docs/tables.md. */
  public List<Table> tables() {
    return List.of(
        exits(), releases(), restarts(), kills(), rulings(), flags(), manpower(), players());
  }
}
