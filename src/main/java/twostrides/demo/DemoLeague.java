package twostrides.demo;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import twostrides.demo.Chance.Telling;
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
  /** Most games of one season, so that file names sort by number. */
  public static final int MOST_GAMES = 99;

  private static final LocalDate FIRST_GAME = LocalDate.of(2031, 10, 4);
  private static final int DAYS_BETWEEN = 4;

  private DemoLeague() {}

  /**
   * Simulates a season of one team, at home in every other game.
   *
   * @param games 1 to 99
   * @param seed any number; it decides the games, the people of the league are always the same
   * @throws IllegalArgumentException if there are too few or too many games
   */
  public static DemoSeason simulate(int games, long seed) {
    return simulate(games, seed, Telling.RELEASED);
  }

  /** The same games with more or less of the truth. */
  static DemoSeason simulate(int games, long seed, Telling telling) {
    if (games < 1 || games > MOST_GAMES) {
      throw new IllegalArgumentException(
          "A demo season has 1 to " + MOST_GAMES + " games, not " + games + ".");
    }
    League league = League.found();
    List<DemoGame> played = new ArrayList<>();
    for (int number = 1; number <= games; number++) {
      played.add(game(league, number, seed, telling));
    }
    return new DemoSeason(league.own().name(), seed, played);
  }

  /**
   * Simulates a season and writes it: {@code out/<game>.csv} and, in {@code out/truth/}, {@code
   * <game>.truth.csv} with a row an exit attempt, {@code <game>.releases.truth.csv} with a row a
   * release short of center, and {@code players.truth.csv}; in {@code out/places/} the clicked
   * places of some icings. Folders are made; files of the same names are replaced.
   *
   * @param out folder to write to
   * @param games 1 to 99
   * @param seed any number
   * @throws IOException if a folder or file cannot be written
   * @throws IllegalArgumentException if there are too few or too many games
   */
  public static void write(Path out, int games, long seed) throws IOException {
    DemoSeason season = simulate(games, seed);
    Path truth = out.resolve("truth");
    Path places = out.resolve("places");
    Files.createDirectories(truth);
    Files.createDirectories(places);
    for (DemoGame game : season.games()) {
      put(out.resolve(game.fileStem() + ".csv"), game.sheetCsv());
      put(truth.resolve(game.fileStem() + ".truth.csv"), game.exitTruthCsv());
      put(truth.resolve(game.fileStem() + ".releases.truth.csv"), game.releaseTruthCsv());
    }
    put(truth.resolve("players.truth.csv"), season.playersTruthCsv());
    put(places.resolve("places.csv"), season.placesCsv());
  }

  private static DemoGame game(League league, int number, long seed, Telling telling) {
    Team opponent = league.opponents().get((number - 1) % league.opponents().size());
    boolean atHome = number % 2 == 1;
    Team home = atHome ? league.own() : opponent;
    Team away = atHome ? opponent : league.own();
    LocalDate date = FIRST_GAME.plusDays((long) (number - 1) * DAYS_BETWEEN);
    Chance chance = Chance.of(seed, number, telling);
    Match played = GameSimulation.play(Rink.NORTH_AMERICAN, home, away, chance);
    return new DemoGame(number, date, home, away, played);
  }

  private static void put(Path file, String text) throws IOException {
    Files.writeString(file, text, StandardCharsets.UTF_8);
  }
}
