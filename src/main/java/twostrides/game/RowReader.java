package twostrides.game;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.rink.Units;
import twostrides.rink.Zone;
import twostrides.sheet.Cell;
import twostrides.sheet.DoubtfulCellException;
import twostrides.sheet.SheetRow;

/** Reads what a row says of a game: clock, places, zones, skaters, in the program's frame. */
public final class RowReader extends CellReader {

  private static final Pattern MINUTES = Pattern.compile("(\\d{1,3}):([0-5]\\d(?:[.,]\\d{1,3})?)");

  /**
   * Places up to this far outside the boards are a slip of the pointer and stay as they are:
   * metres, assumed.
   */
  private static final double BOARD_SLACK = 0.5;

  /** Places up to this far outside are put on the boards, farther is an error: metres, assumed. */
  private static final double MENDED_SLACK = 1;

  static final int MOST_PERIODS = 20;
  private static final int LEAST_SKATERS = 3;
  private static final int MOST_SKATERS = 6;

  private static final double LEAST_PENALTY_MIN = 0.5;
  private static final double MOST_PENALTY_MIN = 20;

  /** Longest video in seconds: a day. Assumed. */
  private static final double MOST_VIDEO = 86_400;

  private static final Map<String, Zone> ZONES =
      Map.of("own", Zone.OWN, "neutral", Zone.NEUTRAL, "attacking", Zone.ATTACKING);

  private static final Map<String, Boolean> ATTACKS = Map.of("plus_x", true, "minus_x", false);

  private final Frame frame;
  private int clockDecimals;
  private int placeDecimals;
  private Optional<Boolean> homePlusX = Optional.empty();
  private double slack = BOARD_SLACK;

  /**
   * A reader of one row.
   *
   * @param row the row
   * @param frame how the sheet writes clock and places
   */
  public RowReader(SheetRow row, Frame frame) {
    super(row);
    this.frame = frame;
  }

  /** A reader of a row whose small slips are put right, and counted by who asks for them. */
  static RowReader mending(SheetRow row, Frame frame) {
    RowReader reader = new RowReader(row, frame);
    reader.slack = MENDED_SLACK;
    return reader;
  }

  /** Decimals written in the clock. */
  public int clockDecimals() {
    return clockDecimals;
  }

  /** Most decimals written in a place. */
  int placeDecimals() {
    return placeDecimals;
  }

  private static int decimals(String written) {
    int mark = Math.max(written.lastIndexOf('.'), written.lastIndexOf(','));
    return mark < 0 ? 0 : written.length() - mark - 1;
  }

  /** The period, from 1; a blank cell is a problem. */
  public Optional<Integer> period() {
    if (cell(SheetForms.PERIOD).isEmpty()) {
      missing(SheetForms.PERIOD, "a whole number from 1 to " + MOST_PERIODS);
    }
    return read(SheetForms.PERIOD, c -> c.wholeNumber(1, MOST_PERIODS));
  }

  /** Seconds of play since the period began. */
  public Optional<Double> elapsed() {
    if (cell(SheetForms.CLOCK).isEmpty()) {
      missing(SheetForms.CLOCK, "a clock such as 13:07, or seconds");
    }
    return read(SheetForms.CLOCK, this::clock).map(frame::elapsed);
  }

  private double clock(Cell cell) throws DoubtfulCellException {
    clockDecimals = decimals(cell.text());
    Matcher m = MINUTES.matcher(cell.text());
    if (!m.matches()) {
      return cell.number(0, frame.periodLength());
    }
    double seconds =
        60.0 * Integer.parseInt(m.group(1)) + Double.parseDouble(m.group(2).replace(',', '.'));
    if (seconds > frame.periodLength()) {
      throw new DoubtfulCellException(
          cell.problem(
              "a clock from 0:00 to " + minutes(frame.periodLength()),
              "correct the clock, or set clock.period_length_s in the sheet map"));
    }
    return seconds;
  }

  private static String minutes(double seconds) {
    long s = Math.round(seconds);
    return s / 60 + ":" + String.format(Locale.ROOT, "%02d", s % 60);
  }

  OptionalInt skaters(String column) {
    return read(column, c -> c.wholeNumber(LEAST_SKATERS, MOST_SKATERS))
        .map(OptionalInt::of)
        .orElse(OptionalInt.empty());
  }

  OptionalDouble penaltyMinutes() {
    return read(SheetForms.PENALTY_MIN, c -> c.number(LEAST_PENALTY_MIN, MOST_PENALTY_MIN))
        .map(OptionalDouble::of)
        .orElse(OptionalDouble.empty());
  }

  /** The second of the video; a blank cell is none. */
  public OptionalDouble video() {
    return read(SheetForms.VIDEO, c -> c.number(0, MOST_VIDEO))
        .map(OptionalDouble::of)
        .orElse(OptionalDouble.empty());
  }

  Optional<LocalDate> date() {
    return read(
        SheetForms.DATE,
        c -> {
          try {
            return frame.dateForm().read(c.text());
          } catch (DateTimeException e) {
            throw new DoubtfulCellException(
                c.problem(
                    "a date such as " + frame.dateForm().example(),
                    "correct the date, or set date.form in the sheet map"));
          }
        });
  }

  /**
   * A place from two columns; both empty is no place, one alone is a problem.
   *
   * @param xColumn column along the rink
   * @param yColumn column across the rink
   * @param actingIsHome whether the acting team is the home team
   * @param period period of the row
   */
  public Optional<Place> place(String xColumn, String yColumn, boolean actingIsHome, int period) {
    Optional<Cell> x = cell(xColumn);
    Optional<Cell> y = cell(yColumn);
    if (x.isEmpty() && y.isEmpty()) {
      return Optional.empty();
    }
    if (x.isEmpty() || y.isEmpty()) {
      missingOneOf(xColumn, yColumn, "a place needs both its numbers");
      return Optional.empty();
    }
    Optional<Double> px = read(xColumn, c -> c.number(-SheetForms.WIDE, SheetForms.WIDE));
    Optional<Double> py = read(yColumn, c -> c.number(-SheetForms.WIDE, SheetForms.WIDE));
    if (px.isEmpty() || py.isEmpty()) {
      return Optional.empty();
    }
    placeDecimals =
        Math.max(placeDecimals, Math.max(decimals(x.get().text()), decimals(y.get().text())));
    Place p = framed(px.get(), py.get(), actingIsHome, period);
    Rink rink = frame.rink();
    outside(x.get(), p.x(), rink.length() / 2, slack, "along the rink");
    outside(y.get(), p.y(), rink.width() / 2, slack, "across the rink");
    return Optional.of(onTheBoards(p, Mend.PLACE));
  }

  /**
   * Says that the home team is missing where a place is not written as the acting team sees it.
   *
   * @param home the home team
   * @param places our columns of places
   * @return whether it is missing
   */
  boolean needHome(Optional<String> home, String... places) {
    boolean missing =
        frame.view() != Frame.View.ACTING_TEAM
            && home.isEmpty()
            && Stream.of(places).anyMatch(c -> cell(c).isPresent());
    if (missing) {
      doubt(
          SheetForms.HOME,
          "the home team: the sheet map says that places are seen by the home team or fixed to the rink",
          "map a home column, or in a play sheet a venue column");
    }
    return missing;
  }

  /** The rink on which the row was played. */
  Rink rink() {
    return frame.rink();
  }

  /**
   * A place of the sheet in the acting team's frame.
   *
   * @param x along the rink, in the sheet's unit
   * @param y across the rink
   * @param actingIsHome whether the acting team is the home team
   * @param period period of the row
   */
  Place framed(double x, double y, boolean actingIsHome, int period) {
    return homePlusX.isPresent()
        ? frame.place(x, y, actingIsHome, homePlusX.get())
        : frame.place(x, y, actingIsHome, period);
  }

  /**
   * A zone; a blank cell is none. Of a sheet that is not seen by the acting team, own is the zone
   * at smaller x.
   *
   * @param column our column
   * @param actingIsHome whether the acting team is the home team
   * @param period period of the row
   */
  Optional<Zone> zone(String column, boolean actingIsHome, int period) {
    Optional<Zone> written = word(column, ZONES);
    boolean turned = framed(frame.centerX() + 1, frame.centerY(), actingIsHome, period).x() < 0;
    return turned ? written.map(Zone::seenByOpponent) : written;
  }

  /**
   * Which way the home team attacks in this row; places that are read afterward follow it. Only a
   * sheet fixed to the rink may say so.
   *
   * @return whether the row says it
   */
  boolean readHomeAttacks() {
    homePlusX = word(SheetForms.HOME_ATTACKS, ATTACKS);
    if (homePlusX.isPresent() && frame.view() != Frame.View.RINK_FIXED) {
      doubt(
          SheetForms.HOME_ATTACKS,
          "no direction of attack, as the sheet map does not say that places are fixed to the rink",
          "write view = \"rink_fixed\" under [place], or leave home_attacks out");
    }
    return homePlusX.isPresent();
  }

  /** A place that is too far out to stay as it is, on the boards and counted. */
  Place onTheBoards(Place p, Mend what) {
    Place inside =
        new Place(
            onTheBoards(p.x(), frame.rink().length() / 2),
            onTheBoards(p.y(), frame.rink().width() / 2));
    if (!inside.equals(p)) {
      mends().add(what);
    }
    return inside;
  }

  private static double onTheBoards(double metres, double most) {
    return Math.abs(metres) > most + BOARD_SLACK ? Math.copySign(most, metres) : metres;
  }

  /** Says that a place is farther outside the boards than a slip would be. */
  void outside(Cell cell, double metres, double most, double slack, String direction) {
    if (!(Math.abs(metres) <= most + slack)) {
      problems()
          .add(
              cell.problem(
                  String.format(
                      Locale.ROOT,
                      "a place %s inside the boards, at most %.1f m (%.0f ft) from center",
                      direction,
                      most,
                      Units.FOOT.fromMetres(most)),
                  "correct the place, or check place.unit, place.center_x and place.center_y in the sheet map"));
    }
  }
}
