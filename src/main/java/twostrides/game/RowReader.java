package twostrides.game;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
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
import twostrides.sheet.Problem;
import twostrides.sheet.SheetRow;

/**
 * Reads the cells of one row and collects what is doubtful about them, so that a row with three bad
 * cells is reported three times and set aside once.
 */
public final class RowReader {

  private static final Pattern MINUTES = Pattern.compile("(\\d{1,3}):([0-5]\\d(?:[.,]\\d{1,3})?)");

  /**
   * Places up to this far outside the boards are a slip of the pointer and stay as they are:
   * metres, assumed.
   */
  private static final double BOARD_SLACK = 0.5;

  /** Places up to this far outside are put on the boards, farther is an error: metres, assumed. */
  private static final double MENDED_SLACK = 1;

  /** An id that a spreadsheet has made a decimal number of. */
  private static final Pattern DECIMAL_ID = Pattern.compile("(\\d+)\\.0+");

  static final int MOST_PERIODS = 20;
  private static final int LEAST_SKATERS = 3;
  private static final int MOST_SKATERS = 6;

  private static final double LEAST_PENALTY_MIN = 0.5;
  private static final double MOST_PENALTY_MIN = 20;

  /** Longest video in seconds: a day. Assumed. */
  private static final double MOST_VIDEO = 86_400;

  private static final Map<String, Boolean> YES_NO = yesNo();

  private static final Map<String, Zone> ZONES =
      Map.of("own", Zone.OWN, "neutral", Zone.NEUTRAL, "attacking", Zone.ATTACKING);

  private static final Map<String, Boolean> ATTACKS = Map.of("plus_x", true, "minus_x", false);

  private final SheetRow row;
  private final Frame frame;
  private final List<Problem> problems = new ArrayList<>();
  private final List<Mend> mends = new ArrayList<>();
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
    this.row = row;
    this.frame = frame;
  }

  /** A reader of a row whose small slips are put right, and counted by who asks for them. */
  static RowReader mending(SheetRow row, Frame frame) {
    RowReader reader = new RowReader(row, frame);
    reader.slack = MENDED_SLACK;
    return reader;
  }

  /** What is doubtful about the cells read so far; the list grows with the reading. */
  public List<Problem> problems() {
    return problems;
  }

  /** What was put right in the cells read so far; the list grows with the reading. */
  List<Mend> mends() {
    return mends;
  }

  /**
   * An id or a name: 26.0, which a spreadsheet makes of 26, is 26.
   *
   * @param column our column
   */
  Optional<String> id(String column) {
    return text(column).map(this::withoutDecimal);
  }

  /** 26 for 26.0, counted. */
  String withoutDecimal(String id) {
    if (id.indexOf('.') < 0) {
      return id;
    }
    Matcher m = DECIMAL_ID.matcher(id);
    if (!m.matches()) {
      return id;
    }
    mends.add(Mend.ID);
    return m.group(1);
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

  private static Map<String, Boolean> yesNo() {
    Map<String, Boolean> words = new LinkedHashMap<>();
    words.put("yes", true);
    words.put("no", false);
    return words;
  }

  /** What a cell is read as. */
  interface Reading<T> {
    T of(Cell cell) throws DoubtfulCellException;
  }

  <T> Optional<T> read(String column, Reading<T> reading) {
    Optional<Cell> cell = row.cell(column);
    if (cell.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(reading.of(cell.get()));
    } catch (DoubtfulCellException e) {
      problems.add(e.problem());
      return Optional.empty();
    }
  }

  private void missing(String column, String expected) {
    problems.add(empty(column, expected, "fill in the cell; until then the row is set aside"));
  }

  private Problem empty(String column, String expected, String toDo) {
    return new Problem(row.file(), row.line(), column, "", expected, toDo);
  }

  /**
   * Says that a cell is doubtful, also one that is empty.
   *
   * @param column our column
   * @param expected what should stand there
   * @param toDo what to do about it
   */
  public void doubt(String column, String expected, String toDo) {
    problems.add(
        row.cell(column)
            .map(c -> c.problem(expected, toDo))
            .orElseGet(() -> empty(column, expected, toDo)));
  }

  /**
   * Says that a team plays itself, where it does.
   *
   * @param one a team, where the row says it
   * @param other the team that plays against it
   * @param column our column of the other
   */
  void differ(Optional<String> one, Optional<String> other, String column) {
    if (one.isPresent() && one.equals(other)) {
      doubt(column, "another team than " + one.get(), "correct the name of one of the two teams");
    }
  }

  /**
   * Says that one of two cells that need each other is empty.
   *
   * @param one our column
   * @param other our other column
   * @param expected what should stand there
   */
  public void missingOneOf(String one, String other, String expected) {
    missing(row.cell(one).isEmpty() ? one : other, expected);
  }

  /**
   * A cell's text.
   *
   * @param column our column
   */
  public Optional<String> text(String column) {
    return row.cell(column).map(Cell::text);
  }

  /**
   * A cell's text; a blank cell is a problem.
   *
   * @param column our column
   * @param expected what should stand there
   */
  public Optional<String> requiredText(String column, String expected) {
    Optional<String> t = text(column);
    if (t.isEmpty()) {
      missing(column, expected);
    }
    return t;
  }

  /**
   * A cell as one of several words.
   *
   * @param column our column
   * @param words the words and what each means
   */
  public <T> Optional<T> word(String column, Map<String, T> words) {
    return read(column, c -> c.oneOf(words));
  }

  <T> Optional<T> requiredWord(String column, Map<String, T> words) {
    if (row.cell(column).isEmpty()) {
      missing(column, "one of " + String.join(", ", words.keySet()));
    }
    return word(column, words);
  }

  /**
   * A cell as a whole number; a blank cell is none.
   *
   * @param column our column
   * @param min smallest that fits
   * @param max largest that fits
   */
  public Optional<Integer> wholeNumber(String column, int min, int max) {
    return read(column, c -> c.wholeNumber(min, max));
  }

  /**
   * A cell as a number; a blank cell is none.
   *
   * @param column our column
   * @param min smallest that fits
   * @param max largest that fits
   */
  public Optional<Double> number(String column, double min, double max) {
    return read(column, c -> c.number(min, max));
  }

  /** The period, from 1; a blank cell is a problem. */
  public Optional<Integer> period() {
    if (row.cell(SheetForms.PERIOD).isEmpty()) {
      missing(SheetForms.PERIOD, "a whole number from 1 to " + MOST_PERIODS);
    }
    return read(SheetForms.PERIOD, c -> c.wholeNumber(1, MOST_PERIODS));
  }

  /** Seconds of play since the period began. */
  public Optional<Double> elapsed() {
    if (row.cell(SheetForms.CLOCK).isEmpty()) {
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

  /**
   * A cell as yes or no; a blank cell is neither.
   *
   * @param column our column
   */
  public Optional<Boolean> yesOrNo(String column) {
    return word(column, YES_NO);
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
    Optional<Cell> x = row.cell(xColumn);
    Optional<Cell> y = row.cell(yColumn);
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
            && Stream.of(places).anyMatch(c -> row.cell(c).isPresent());
    if (missing) {
      doubt(
          SheetForms.HOME,
          "the home team: the sheet map says that places are seen by the home team or fixed to the rink",
          "map a home column, or in a play sheet a venue column");
    }
    return missing;
  }

  /** The row's cell of one of our columns. */
  Optional<Cell> cell(String column) {
    return row.cell(column);
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
      mends.add(what);
    }
    return inside;
  }

  private static double onTheBoards(double metres, double most) {
    return Math.abs(metres) > most + BOARD_SLACK ? Math.copySign(most, metres) : metres;
  }

  /** Says that a place is farther outside the boards than a slip would be. */
  void outside(Cell cell, double metres, double most, double slack, String direction) {
    if (!(Math.abs(metres) <= most + slack)) {
      problems.add(
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
