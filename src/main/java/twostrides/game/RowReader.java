package twostrides.game;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.rink.Units;
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

  /** A skater faster than this is a slip, m/s: above the fastest reported, 10.95. Assumed. */
  static final double FASTEST = 12;

  /** Most skaters of a team in a row: six and a goalkeeper. */
  private static final int MOST_IN_A_ROW = 7;

  static final int MOST_PERIODS = 20;
  private static final int LEAST_SKATERS = 3;
  private static final int MOST_SKATERS = 6;

  /** Players listed on the ice: six skaters and, in some sheets, the goalkeeper. */
  private static final int MOST_ON_ICE = 7;

  /** Numbers of a skater: place alone, or place and speed along and across. */
  private static final int PLACE = 2;

  private static final int PLACE_AND_SPEED = 4;

  /** The same with the speed and a vector along which it goes. */
  private static final int PLACE_SPEED_DIRECTION = 5;

  private static final Set<Integer> LENGTHS = Set.of(PLACE, PLACE_AND_SPEED, PLACE_SPEED_DIRECTION);
  private static final double LEAST_PENALTY_MIN = 0.5;
  private static final double MOST_PENALTY_MIN = 20;

  /** Longest video in seconds: a day. Assumed. */
  private static final double MOST_VIDEO = 86_400;

  private static final Map<String, Boolean> YES_NO = yesNo();

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

  private String withoutDecimal(String id) {
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
  private interface Reading<T> {
    T of(Cell cell) throws DoubtfulCellException;
  }

  private <T> Optional<T> read(String column, Reading<T> reading) {
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
   * Players in one cell, in the sheet's order; none when the cell is blank.
   *
   * @param column our column
   */
  List<String> names(String column) {
    Optional<Cell> cell = row.cell(column);
    if (cell.isEmpty()) {
      return List.of();
    }
    List<String> names =
        Arrays.stream(cell.get().text().split(";", -1))
            .map(String::strip)
            .filter(n -> !n.isEmpty())
            .map(this::withoutDecimal)
            .toList();
    Set<String> different = new LinkedHashSet<>(names);
    if (different.size() < names.size() || names.size() > MOST_ON_ICE) {
      problems.add(
          cell.get()
              .problem(
                  SheetForms.ON_THE_ICE + "; each once, and no more than " + MOST_ON_ICE,
                  "correct the list, or empty the cell"));
      return List.of();
    }
    return names;
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
    Place inside =
        new Place(onTheBoards(p.x(), rink.length() / 2), onTheBoards(p.y(), rink.width() / 2));
    if (!inside.equals(p)) {
      mends.add(Mend.PLACE);
    }
    return Optional.of(inside);
  }

  private Place framed(double x, double y, boolean actingIsHome, int period) {
    return homePlusX.isPresent()
        ? frame.place(x, y, actingIsHome, homePlusX.get())
        : frame.place(x, y, actingIsHome, period);
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

  /** Speed along and across in the sheet's unit a second: written so, or as speed and direction. */
  private static double[] velocity(double[] g) {
    if (g.length == PLACE) {
      return new double[2];
    }
    if (g.length == PLACE_AND_SPEED) {
      return new double[] {g[2], g[3]};
    }
    double length = Math.hypot(g[3], g[4]);
    double share = length > 0 ? g[2] / length : 0;
    return new double[] {share * g[3], share * g[4]};
  }

  /**
   * The skaters of a column; none when it is blank or doubtful.
   *
   * @param column our column
   * @param own whether they play for the acting team
   * @param actingIsHome whether the acting team is the home team
   * @param period period of the row
   */
  List<OnIce> skaters(String column, boolean own, boolean actingIsHome, int period) {
    Optional<Cell> cell = row.cell(column);
    Optional<List<double[]>> groups =
        read(column, c -> c.groups(SheetForms.SKATERS, LENGTHS, SheetForms.WIDE));
    List<OnIce> skaters = new ArrayList<>();
    for (double[] g : groups.orElse(List.of())) {
      Place at = framed(g[0], g[1], actingIsHome, period);
      double[] v = velocity(g);
      boolean moving = g.length > PLACE;
      Place after = framed(g[0] + v[0], g[1] + v[1], actingIsHome, period);
      OnIce skater = new OnIce(own, at, moving, after.x() - at.x(), after.y() - at.y());
      outside(cell.get(), at.x(), frame.rink().length() / 2, BOARD_SLACK, "along the rink");
      outside(cell.get(), at.y(), frame.rink().width() / 2, BOARD_SLACK, "across the rink");
      double speed = Math.hypot(skater.vx(), skater.vy());
      if (speed > FASTEST) {
        problems.add(
            cell.get()
                .problem(
                    String.format(
                        Locale.ROOT,
                        "skaters no faster than %.0f m/s, not one at %.1f m/s (%.1f ft/s)",
                        FASTEST,
                        speed,
                        Units.FOOT.fromMetres(speed)),
                    "correct the speed, or leave it out and keep the place"));
      }
      skaters.add(skater);
    }
    if (skaters.size() > MOST_IN_A_ROW) {
      problems.add(
          cell.get()
              .problem(
                  "at most " + MOST_IN_A_ROW + " skaters of a team, not " + skaters.size(),
                  "take out who was not on the ice"));
    }
    return skaters;
  }

  /** A place that is too far out to stay as it is, on the boards. */
  private static double onTheBoards(double metres, double most) {
    return Math.abs(metres) > most + BOARD_SLACK ? Math.copySign(most, metres) : metres;
  }

  private void outside(Cell cell, double metres, double most, double slack, String direction) {
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
