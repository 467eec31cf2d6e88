package twostrides.demo;

import java.time.LocalDate;
import java.util.List;
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
  /** Games of each team in a season: as many as there are rounds. */
  static final int ROUNDS = 82;

  private static final LocalDate FIRST_GAME = LocalDate.of(2031, 10, 4);

  /** The first rounds are four days apart, the others two. */
  private static final int SLOW_ROUNDS = 12;

  private static final int SLOW_DAYS = 4;
  private static final int DAYS = 2;

  /** A team meets so many rivals so often, and then everybody else in turn. */
  private static final int RIVALS = 6;

  private static final int RIVAL_ROUNDS = 36;
  private static final int FEWEST_DIGITS = 2;

  /** Who meets whom, and where. */
  private record Pair(Team home, Team away) {}

  /**
   * A game of the league. The first 82 numbers are the games of the team whose season is shown, at
   * home in every other; the rest are the games of the other teams, round by round, on the same
   * days. So whose season it is has all its games however few are asked for, and a number is the
   * same game however many are.
   *
   * @param number of the game, from 1 to {@link #most}
   * @param games of the season; numbers in file names have as many digits
   */
  static Fixture of(League league, int number, int games) {
    int others = (league.opponents().size() - 1) / 2;
    boolean shown = number <= ROUNDS;
    int round = shown ? number : (number - ROUNDS - 1) / others + 1;
    Pair pair =
        shown ? own(league, round) : pair(league, round, (number - ROUNDS - 1) % others + 1);
    int digits = Math.max(FEWEST_DIGITS, Integer.toString(games).length());
    String stem =
        String.format(
            Locale.ROOT,
            "game-%0" + digits + "d-%s-%s",
            number,
            pair.home.code(),
            pair.away.code());
    int slow = Math.min(round, SLOW_ROUNDS) - 1;
    LocalDate date = FIRST_GAME.plusDays(slow * SLOW_DAYS + (round - 1 - slow) * DAYS);
    return new Fixture(number, stem, date, pair.home, pair.away);
  }

  /** Games of a whole season of a league. */
  static int most(League league) {
    return ROUNDS * (league.opponents().size() + 1) / 2;
  }

  private static Pair own(League league, int round) {
    Team opponent = league.opponents().get(opponent(league, round));
    return round % 2 == 1 ? new Pair(league.own(), opponent) : new Pair(opponent, league.own());
  }

  /** Whom the team whose season is shown meets. */
  private static int opponent(League league, int round) {
    return round <= RIVAL_ROUNDS
        ? (round - 1) % RIVALS
        : RIVALS + (round - RIVAL_ROUNDS - 1) % (league.opponents().size() - RIVALS);
  }

  /**
   * A pair of the other teams: they stand in a circle, and those who stand equally far to the left
   * and to the right of the one who meets the shown team meet each other.
   *
   * @param steps how far, from 1
   */
  private static Pair pair(League league, int round, int steps) {
    List<Team> circle = league.opponents();
    int middle = opponent(league, round);
    Team right = circle.get((middle + steps) % circle.size());
    Team left = circle.get((middle - steps + circle.size()) % circle.size());
    return (round / RIVALS + steps) % 2 == 0 ? new Pair(right, left) : new Pair(left, right);
  }
}
