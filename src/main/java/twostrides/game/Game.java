package twostrides.game;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import twostrides.rink.Rink;

/**
 * One game: its rows in the order of play.
 *
 * @param id id in the sheets
 * @param date day of the game, where the sheet has it
 * @param home the home team where the sheet says so, else the first of the two by name
 * @param away the other team
 * @param venueKnown whether the sheet says who is at home
 * @param rink the rink's lengths
 * @param clockStep smallest step of the clock as written, in seconds: a gap read from it is off by
 *     less than one step
 * @param placeStep smallest step of places as written, in metres
 * @param periodLength length of a regular period, in seconds
 * @param rows the rows, ordered by period and clock, in the sheet's order within one clock reading
 */
public record Game(
    String id,
    Optional<LocalDate> date,
    String home,
    String away,
    boolean venueKnown,
    Rink rink,
    double clockStep,
    double placeStep,
    double periodLength,
    List<PlayRow> rows) {

  /** Copies the rows and checks that the two teams differ. */
  public Game {
    rows = List.copyOf(rows);
    if (home.equals(away)) {
      throw new IllegalArgumentException("game " + id + " needs two teams, found only " + home);
    }
  }

  /**
   * The game with other rows of the same order.
   *
   * @param others the rows
   */
  public Game withRows(List<PlayRow> others) {
    return new Game(
        id, date, home, away, venueKnown, rink, clockStep, placeStep, periodLength, others);
  }

  /**
   * "home" or "away"; empty when the sheet does not say.
   *
   * @param team one of the two
   */
  public Optional<String> venueOf(String team) {
    return venueKnown ? Optional.of(team.equals(home) ? "home" : "away") : Optional.empty();
  }

  /**
   * The other team.
   *
   * @param team one of the two
   */
  public String opponentOf(String team) {
    return team.equals(home) ? away : home;
  }

  /** What its rows share. */
  public Fixture fixture() {
    return new Fixture(
        id, date, venueKnown ? Optional.of(home) : Optional.empty(), rink, placeStep, periodLength);
  }

  /**
   * Whether a row lets the puck go with no teammate who gets it: sent on, shot, or a pass that is
   * missed. Where the sheet does not say whether a pass was received, the next row does: any but
   * the own team's control means that it was not.
   *
   * @param i which of its rows
   */
  public boolean letsGo(int i) {
    PlayRow r = rows.get(i);
    return switch (r.action()) {
      case RELEASE, SHOT -> true;
      case PASS -> r.outcome().map(o -> o == Outcome.MISSED).orElse(!ownControlFollows(i));
      default -> false;
    };
  }

  private boolean ownControlFollows(int i) {
    return i + 1 < rows.size()
        && rows.get(i + 1).period() == rows.get(i).period()
        && rows.get(i + 1).control()
        && rows.get(i + 1).team().equals(rows.get(i).team());
  }

  /**
   * Whether a row lets the puck go short of center: what the race is about.
   *
   * @param i which of its rows
   */
  public boolean letsGoShort(int i) {
    PlayRow r = rows.get(i);
    return letsGo(i)
        && r.team().isPresent()
        && r.place().filter(p -> rink.shortOfCenter(p.x()) > 0).isPresent();
  }
}
