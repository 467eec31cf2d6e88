package twostrides.demo;

import java.time.LocalDate;
import java.util.Locale;

/**
 * A game on the schedule.
 *
 * @param number of the game in the season, from 1
 * @param fileStem file name without ending: number, home and away code
 * @param date when it is played
 * @param home the home team
 * @param away the visitors
 */
record Fixture(int number, String fileStem, LocalDate date, Team home, Team away) {
  private static final LocalDate FIRST_GAME = LocalDate.of(2031, 10, 4);
  private static final int DAYS_BETWEEN = 4;
  private static final int FEWEST_DIGITS = 2;

  /**
   * A game of the team whose season is shown: at home in every other game, against its opponents in
   * turn, and from the first again.
   *
   * @param number of the game, from 1
   * @param games of the season; numbers in file names have as many digits
   */
  static Fixture of(League league, int number, int games) {
    Team opponent = league.opponents().get((number - 1) % league.opponents().size());
    boolean atHome = number % 2 == 1;
    Team home = atHome ? league.own() : opponent;
    Team away = atHome ? opponent : league.own();
    int digits = Math.max(FEWEST_DIGITS, Integer.toString(games).length());
    String stem =
        String.format(
            Locale.ROOT, "game-%0" + digits + "d-%s-%s", number, home.code(), away.code());
    LocalDate date = FIRST_GAME.plusDays((long) (number - 1) * DAYS_BETWEEN);
    return new Fixture(number, stem, date, home, away);
  }
}
