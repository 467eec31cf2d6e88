package twostrides.game;

import static twostrides.sheet.SettingSpec.Kind.DATE_FORM;
import static twostrides.sheet.SettingSpec.Kind.TEXT;
import static twostrides.sheet.SettingSpec.Kind.WHOLE_NUMBERS;
import static twostrides.sheet.SettingSpec.number;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import twostrides.sheet.ColumnSpec;
import twostrides.sheet.SettingSpec;
import twostrides.sheet.SheetSchema;

/** The two sheet formats as declared to the sheet reader: docs/sheets.md in code. */
public final class SheetForms {

  static final String GAME = "game";
  static final String DATE = "date";
  static final String HOME = "home";
  static final String AWAY = "away";
  static final String OPPONENT = "opponent";
  static final String VENUE = "venue";
  static final String PERIOD = "period";
  static final String CLOCK = "clock";
  static final String TEAM = "team";
  static final String PLAYER = "player";
  static final String OTHER_PLAYER = "other_player";
  static final String ACTION = "action";
  static final String OUTCOME = "outcome";
  static final String X = "x_m";
  static final String Y = "y_m";
  static final String TO_X = "to_x_m";
  static final String TO_Y = "to_y_m";
  static final String ZONE = "zone";
  static final String TO_ZONE = "to_zone";
  static final String SKATERS_FOR = "skaters_for";
  static final String SKATERS_AGAINST = "skaters_against";
  static final String SKATERS_HOME = "skaters_home";
  static final String SKATERS_AWAY = "skaters_away";
  static final String OWN_SKATERS = "own_skaters";
  static final String OPPONENT_SKATERS = "opponent_skaters";
  static final String HOME_SKATERS = "home_skaters";
  static final String AWAY_SKATERS = "away_skaters";
  static final String ON_ICE = "on_ice";
  static final String OPPONENT_ON_ICE = "opponent_on_ice";
  static final String HOME_ON_ICE = "home_on_ice";
  static final String AWAY_ON_ICE = "away_on_ice";
  static final String NET_FOR = "net_for_empty";
  static final String NET_AGAINST = "net_against_empty";
  static final String NET_HOME = "net_home_empty";
  static final String NET_AWAY = "net_away_empty";
  static final String HOME_ATTACKS = "home_attacks";
  static final String STOPPAGE = "stoppage";
  static final String PENALTY = "penalty";
  static final String PENALTY_MIN = "penalty_min";
  static final String SERVED_BY = "served_by";
  static final String PRESSURE = "pressure";
  static final String VIDEO = "video_s";
  static final String NOTE = "note";

  static final String WAY_OUT = "way_out";
  static final String AT_CENTER = "at_center";
  static final String STRENGTH = "strength";
  static final String NET_EMPTY = "net_empty";
  static final String ENDED = "ended";
  static final String FACE_OFF = "faceoff";
  static final String END_X = "end_x_m";
  static final String END_Y = "end_y_m";

  /** What a column of skaters holds. */
  static final String SKATERS =
      "places such as 3.2 -5.1; 8.0 2.2 4.1 -0.5: x and y of a skater, then speed along and across"
          + " where it is known, or the speed and a vector along which it goes";

  /** What a column of players on the ice holds. */
  static final String ON_THE_ICE =
      "players on the ice, by name or by the number that begins the name, with semicolons between"
          + " them: 4; 9; 14; 21; 24";

  /**
   * Shortest and longest period of a map, s: a minute, and two hours of a running clock. Assumed.
   */
  public static final double SHORTEST_PERIOD = 60;

  /** See {@link #SHORTEST_PERIOD}. */
  public static final double LONGEST_PERIOD = 7200;

  /** Smallest and largest step of clocks and places, s or the sheet's unit. Assumed. */
  public static final double SMALLEST_STEP = 0.0001;

  /** See {@link #SMALLEST_STEP}. */
  public static final double LARGEST_STEP = 60;

  /** Largest number of a place, either sign, in the sheet's unit; farther is no place. */
  public static final double WIDE = 10_000;

  /** How a map says what a clock means. */
  public static final List<SettingSpec> CLOCK_SETTINGS =
      List.of(
          new SettingSpec(
              "clock",
              "direction",
              TEXT,
              Set.of("down", "up"),
              "whether the clock counts down or up"),
          number(
              "clock",
              "period_length_s",
              SHORTEST_PERIOD,
              LONGEST_PERIOD,
              "length of a period in seconds"),
          number(
              "clock",
              "step_s",
              SMALLEST_STEP,
              LARGEST_STEP,
              "smallest step of the clock in seconds"));

  /** How a map says what places and dates mean. */
  public static final List<SettingSpec> PLACE_SETTINGS =
      List.of(
          new SettingSpec("place", "unit", TEXT, Set.of("m", "ft"), "unit of places"),
          new SettingSpec(
              "place",
              "view",
              TEXT,
              Set.of("acting_team", "home_team", "rink_fixed"),
              "whose attack is toward +x"),
          number("place", "center_x", -WIDE, WIDE, "where the sheet puts center ice, in its unit"),
          number("place", "center_y", -WIDE, WIDE, "where the sheet puts center ice, in its unit"),
          new SettingSpec(
              "place",
              "y_left",
              TEXT,
              Set.of("up", "down"),
              "whether y grows (up) or falls (down) to the left of +x"),
          number(
              "place",
              "step",
              SMALLEST_STEP,
              LARGEST_STEP,
              "smallest step of places, in the sheet's unit"),
          new SettingSpec(
              "place",
              "home_attacks_plus_x_in",
              WHOLE_NUMBERS,
              Set.of(),
              1,
              RowReader.MOST_PERIODS,
              "periods in which the home team attacks +x, for rink_fixed"),
          new SettingSpec("rink", "name", TEXT, Set.of("nhl", "iihf"), "the rink's lengths"),
          new SettingSpec("date", "form", DATE_FORM, Set.of(), "form of dates"));

  /** How a map says which words stand for the two teams. */
  private static final List<SettingSpec> TEAM_SETTINGS =
      List.of(
          new SettingSpec("team", HOME, TEXT, Set.of(), "the word that stands for the home team"),
          new SettingSpec("team", AWAY, TEXT, Set.of(), "the word that stands for the away team"));

  private static final List<SettingSpec> SETTINGS =
      Stream.of(CLOCK_SETTINGS, TEAM_SETTINGS, PLACE_SETTINGS).flatMap(List::stream).toList();

  private static final List<ColumnSpec> GAME_COLUMNS =
      List.of(
          new ColumnSpec(GAME, false, "a game's id"),
          new ColumnSpec(DATE, false, "a date such as 2031-10-04"),
          new ColumnSpec(HOME, false, "a team's name"),
          new ColumnSpec(AWAY, false, "a team's name"),
          new ColumnSpec(OPPONENT, false, "the other team's name"),
          new ColumnSpec(PERIOD, true, "a whole number from 1 to 20"),
          new ColumnSpec(CLOCK, true, "a clock such as 13:07, or seconds"),
          new ColumnSpec(PLAYER, false, "a player"),
          new ColumnSpec(X, false, "a place along the rink"),
          new ColumnSpec(Y, false, "a place across the rink"),
          new ColumnSpec(ZONE, false, "own, neutral or attacking"),
          new ColumnSpec(HOME_ATTACKS, false, "plus_x or minus_x"),
          new ColumnSpec(PRESSURE, false, "none, light or heavy"),
          new ColumnSpec(VIDEO, false, "seconds of video, 0 or more"),
          new ColumnSpec(NOTE, false, "any text"));

  /** The play sheet: one row a touch or stoppage. */
  public static final SheetSchema PLAY =
      new SheetSchema(
          "play",
          columns(
              new ColumnSpec(VENUE, false, "home or away"),
              new ColumnSpec(TEAM, true, "the acting team's name"),
              new ColumnSpec(ACTION, true, "one of the action words"),
              new ColumnSpec(OTHER_PLAYER, false, "a player"),
              new ColumnSpec(OUTCOME, false, "one of the action's outcomes"),
              new ColumnSpec(TO_X, false, "a place along the rink"),
              new ColumnSpec(TO_Y, false, "a place across the rink"),
              new ColumnSpec(TO_ZONE, false, "own, neutral or attacking"),
              new ColumnSpec(SKATERS_FOR, false, "a whole number from 3 to 6"),
              new ColumnSpec(SKATERS_AGAINST, false, "a whole number from 3 to 6"),
              new ColumnSpec(SKATERS_HOME, false, "a whole number from 3 to 6"),
              new ColumnSpec(SKATERS_AWAY, false, "a whole number from 3 to 6"),
              new ColumnSpec(OWN_SKATERS, false, SKATERS),
              new ColumnSpec(OPPONENT_SKATERS, false, SKATERS),
              new ColumnSpec(HOME_SKATERS, false, SKATERS),
              new ColumnSpec(AWAY_SKATERS, false, SKATERS),
              new ColumnSpec(ON_ICE, false, ON_THE_ICE),
              new ColumnSpec(OPPONENT_ON_ICE, false, ON_THE_ICE),
              new ColumnSpec(HOME_ON_ICE, false, ON_THE_ICE),
              new ColumnSpec(AWAY_ON_ICE, false, ON_THE_ICE),
              new ColumnSpec(NET_FOR, false, "yes or no"),
              new ColumnSpec(NET_AGAINST, false, "yes or no"),
              new ColumnSpec(NET_HOME, false, "yes or no"),
              new ColumnSpec(NET_AWAY, false, "yes or no"),
              new ColumnSpec(STOPPAGE, false, "one of the stoppage words"),
              new ColumnSpec(PENALTY, false, "one of the penalty words"),
              new ColumnSpec(PENALTY_MIN, false, "minutes of the penalty"),
              new ColumnSpec(SERVED_BY, false, "who sits for it, or nobody")),
          SETTINGS);

  /** The tag sheet: one row an exit, or what happened without one. */
  public static final SheetSchema TAG =
      new SheetSchema(
          "tag",
          columns(
              new ColumnSpec(TEAM, true, "the team's name"),
              new ColumnSpec(WAY_OUT, true, "one of the way-out words, or nothing"),
              new ColumnSpec(AT_CENTER, false, "one of the at-center words"),
              new ColumnSpec(STRENGTH, false, "even, shorthanded or power play"),
              new ColumnSpec(NET_EMPTY, false, "none, own, opponent or both"),
              new ColumnSpec(ENDED, false, "what came of it"),
              new ColumnSpec(FACE_OFF, false, "won or lost"),
              new ColumnSpec(END_X, false, "a place along the rink"),
              new ColumnSpec(END_Y, false, "a place across the rink")),
          SETTINGS);

  /** Both formats. */
  public static final List<SheetSchema> ALL = List.of(PLAY, TAG);

  private SheetForms() {}

  private static List<ColumnSpec> columns(ColumnSpec... more) {
    List<ColumnSpec> all = new ArrayList<>(GAME_COLUMNS);
    all.addAll(List.of(more));
    return all;
  }
}
