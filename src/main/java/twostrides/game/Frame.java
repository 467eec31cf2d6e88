package twostrides.game;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.rink.Units;
import twostrides.sheet.DateForm;
import twostrides.sheet.SheetMap;

/**
 * How a sheet writes its clock and its places, and the way from there to the program's frame:
 * seconds of play since the period began, metres from center ice with +x the acting team's attack
 * and +y to its left.
 *
 * @param countsDown whether the clock shows the time left
 * @param periodLength seconds of a regular period
 * @param clockStep smallest step of the clock in seconds, where the map says it
 * @param placeStep smallest step of places in the sheet's unit, where the map says it
 * @param unit unit of places
 * @param view whose attack is toward +x
 * @param centerX where the sheet puts center ice, in its unit
 * @param centerY where the sheet puts center ice, in its unit
 * @param yLeft whether y grows to the left of the attack
 * @param homePlusX periods in which the home team attacks +x, for a fixed view
 * @param endsGiven whether the map says so, for a fixed view
 * @param rink the rink's lengths
 * @param dateForm form of dates
 */
public record Frame(
    boolean countsDown,
    double periodLength,
    OptionalDouble clockStep,
    OptionalDouble placeStep,
    Units unit,
    View view,
    double centerX,
    double centerY,
    boolean yLeft,
    Set<Integer> homePlusX,
    boolean endsGiven,
    Rink rink,
    DateForm dateForm) {

  /** Whose attack is toward +x. */
  public enum View {
    /** The team that acts. */
    ACTING_TEAM,
    /** The home team, in every period. */
    HOME_TEAM,
    /** The team that shoots at that end in the period: teams change ends in the sheet. */
    RINK_FIXED
  }

  /** Seconds of a period, as the maps' table of the clock calls them. */
  private static final String PERIOD_LENGTH = "period_length_s";

  /**
   * Periods in which the home team attacks +x when a map for a fixed view does not say: 1, 3 and
   * on, until {@link Ends} has looked at the shots of a play sheet.
   */
  private static final List<Integer> ODD = List.of(1, 3, 5, 7, 9, 11, 13, 15, 17, 19);

  /**
   * The frame that a map describes.
   *
   * @param map a map whose schema declares the settings of clock, place, rink and date
   * @param otherwise whose attack is toward +x when the map does not say
   * @param usual rink and period where the map does not say
   */
  public static Frame of(SheetMap map, View otherwise, Usual usual) {
    return new Frame(
        map.text("clock", "direction").orElse("down").equals("down"),
        map.number("clock", PERIOD_LENGTH).orElse(usual.periodLength()),
        map.number("clock", "step_s"),
        map.number("place", "step"),
        map.text("place", "unit").orElse("m").equals("ft") ? Units.FOOT : Units.METRE,
        map.text("place", "view").map(Frame::view).orElse(otherwise),
        map.number("place", "center_x").orElse(0),
        map.number("place", "center_y").orElse(0),
        map.text("place", "y_left").orElse("up").equals("up"),
        Set.copyOf(map.wholeNumbers("place", "home_attacks_plus_x_in").orElse(ODD)),
        map.wholeNumbers("place", "home_attacks_plus_x_in").isPresent(),
        map.text("rink", "name").flatMap(Rink::named).orElse(usual.rink()),
        map.dateForm("date", "form").orElse(DateForm.ISO));
  }

  /**
   * The frame of a sheet that has a clock but no places.
   *
   * @param map a map whose schema declares the settings of the clock
   * @param usualPeriod seconds of a period where the map does not say
   */
  public static Frame ofClock(SheetMap map, double usualPeriod) {
    return new Frame(
        map.text("clock", "direction").orElse("down").equals("down"),
        map.number("clock", PERIOD_LENGTH).orElse(usualPeriod),
        map.number("clock", "step_s"),
        OptionalDouble.empty(),
        Units.METRE,
        View.ACTING_TEAM,
        0,
        0,
        true,
        Set.copyOf(ODD),
        false,
        Rink.NORTH_AMERICAN,
        DateForm.ISO);
  }

  private static View view(String word) {
    return switch (word) {
      case "home_team" -> View.HOME_TEAM;
      case "rink_fixed" -> View.RINK_FIXED;
      default -> View.ACTING_TEAM;
    };
  }

  /**
   * A place as the sheet writes it, in the acting team's frame.
   *
   * @param writtenX along the rink, in the sheet's unit
   * @param writtenY across the rink, in the sheet's unit
   * @param actingIsHome whether the acting team is the home team
   * @param period period, from 1
   */
  public Place place(double writtenX, double writtenY, boolean actingIsHome, int period) {
    return place(writtenX, writtenY, actingIsHome, homePlusX.contains(period));
  }

  /**
   * A place as the sheet writes it, in the acting team's frame.
   *
   * @param writtenX along the rink, in the sheet's unit
   * @param writtenY across the rink, in the sheet's unit
   * @param actingIsHome whether the acting team is the home team
   * @param homeAttacksPlusX whether the home team attacks +x, for a fixed view
   */
  Place place(double writtenX, double writtenY, boolean actingIsHome, boolean homeAttacksPlusX) {
    double x = unit.toMetres(writtenX - centerX);
    double y = unit.toMetres(writtenY - centerY) * (yLeft ? 1 : -1);
    boolean turned =
        switch (view) {
          case ACTING_TEAM -> false;
          case HOME_TEAM -> !actingIsHome;
          case RINK_FIXED -> actingIsHome != homeAttacksPlusX;
        };
    Place here = new Place(x + 0.0, y + 0.0);
    return turned ? here.seenByOpponent() : here;
  }

  /**
   * Seconds of play since the period began.
   *
   * @param written the clock in seconds
   */
  public double elapsed(double written) {
    return countsDown ? periodLength - written : written;
  }

  /**
   * The clock's step in seconds: the map's, or what the written decimals show.
   *
   * @param decimals most decimals written
   */
  public double clockStep(int decimals) {
    return clockStep.orElse(Math.pow(10, -decimals));
  }

  /**
   * The step of places in metres: the map's, or what the written decimals show.
   *
   * @param decimals most decimals written
   */
  public double placeStep(int decimals) {
    return unit.toMetres(placeStep.orElse(Math.pow(10, -decimals)));
  }
}
