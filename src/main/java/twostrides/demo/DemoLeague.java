package twostrides.demo;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import twostrides.demo.Chance.Telling;
import twostrides.output.OutputException;
import twostrides.rink.Rink;

/**
 * An invented hockey league, simulated touch by touch: play sheets in the format of docs/sheets.md,
 * and beside them what was really so. The simulator decides what happens and then writes the rows
 * that a careful person would log; it never works anything out from its own rows.
 *
 * <p>The same number and seed give the same bytes on every machine, and game k is the same however
 * many games are asked for.
 */
public final class DemoLeague {
  /** Most games of one season: 32 teams, 82 games each. */
  public static final int MOST_GAMES = Fixture.most(League.found());

  /** Most games of the team whose season is shown; the games beyond are those of the others. */
  public static final int MOST_OF_A_TEAM = Fixture.ROUNDS;

  /** The team whose season is shown. */
  public static final String TEAM = League.found().own().name();

  private DemoLeague() {}

  /**
   * Simulates a season: up to 82 games of one team, then the games of the rest of the league.
   *
   * @param games 1 to 1312
   * @param seed any number; it decides the games, the people of the league are always the same
   * @throws IllegalArgumentException if there are too few or too many games
   */
  public static DemoSeason simulate(int games, long seed) {
    return simulate(games, seed, Telling.RELEASED);
  }

  /** The same games with more or less of the truth. */
  static DemoSeason simulate(int games, long seed, Telling telling) {
    List<DemoGame> played = new ArrayList<>();
    for (Fixture fixture : fixtures(games)) {
      played.add(play(fixture, seed, telling));
    }
    return new DemoSeason(TEAM, seed, played);
  }

  /**
   * Simulates a season and writes it, one game after the other: {@code out/<game>.csv} and, in
   * {@code out/truth/}, {@code <game>.truth.csv} with a row an exit attempt, {@code
   * <game>.releases.truth.csv} with a row a release short of center, and {@code players.truth.csv};
   * in {@code out/places/} the clicked places of some icings. Folders are made; files of the same
   * names that an earlier demo wrote are replaced.
   *
   * @param out folder to write to
   * @param games 1 to 1312
   * @param seed any number
   * @throws OutputException if a file is in the way that no demo wrote, or that has changed since;
   *     nothing is written then
   * @throws IOException if a folder or file cannot be written
   * @throws IllegalArgumentException if there are too few or too many games
   */
  public static void write(Path out, int games, long seed) throws OutputException, IOException {
    String players = "truth/players.truth.csv";
    String clicked = "places/places.csv";
    List<Fixture> fixtures = fixtures(games);
    List<String> planned = new ArrayList<>(List.of(players, clicked));
    for (Fixture fixture : fixtures) {
      planned.addAll(List.of(sheet(fixture), exits(fixture), releases(fixture)));
    }
    DemoFolder folder = DemoFolder.at(out, planned);
    PlayersCsv sums = new PlayersCsv();
    PlacesCsv places = new PlacesCsv(TEAM, seed);
    for (Fixture fixture : fixtures) {
      DemoGame game = play(fixture, seed, Telling.RELEASED);
      folder.put(sheet(fixture), game.sheetCsv());
      folder.put(exits(fixture), game.exitTruthCsv());
      folder.put(releases(fixture), game.releaseTruthCsv());
      sums.add(game);
      places.add(game);
    }
    folder.put(players, sums.text());
    folder.put(clicked, places.text());
    folder.writeList();
  }

  private static String sheet(Fixture fixture) {
    return fixture.fileStem() + ".csv";
  }

  private static String exits(Fixture fixture) {
    return "truth/" + fixture.fileStem() + ".truth.csv";
  }

  private static String releases(Fixture fixture) {
    return "truth/" + fixture.fileStem() + ".releases.truth.csv";
  }

  private static List<Fixture> fixtures(int games) {
    if (games < 1 || games > MOST_GAMES) {
      throw new IllegalArgumentException(
          "A demo season has 1 to " + MOST_GAMES + " games, not " + games + ".");
    }
    League league = League.found();
    return IntStream.rangeClosed(1, games).mapToObj(n -> Fixture.of(league, n, games)).toList();
  }

  private static DemoGame play(Fixture fixture, long seed, Telling telling) {
    Chance chance = Chance.of(seed, fixture.number(), telling);
    Match played = GameSimulation.play(Rink.NORTH_AMERICAN, fixture.home(), fixture.away(), chance);
    return DemoGame.of(fixture, played);
  }
}
