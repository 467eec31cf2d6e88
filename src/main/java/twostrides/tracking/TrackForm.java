package twostrides.tracking;

import static twostrides.sheet.SettingSpec.Kind.FLAG;
import static twostrides.sheet.SettingSpec.Kind.WHOLE_NUMBERS;
import static twostrides.sheet.SettingSpec.number;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import twostrides.game.SheetForms;
import twostrides.sheet.ColumnSpec;
import twostrides.sheet.SettingSpec;
import twostrides.sheet.SheetSchema;

/**
 * The tracking sheet and its sync sheet as declared to the sheet reader: docs/sheets.md in code.
 */
public final class TrackForm {

  static final String GAME = "game";
  static final String SEGMENT = "segment";
  static final String FRAME = "frame";
  static final String VIDEO = "video_s";
  static final String PERIOD = "period";
  static final String CLOCK = "clock";
  static final String TRACK = "track";
  static final String TEAM = "team";
  static final String NUMBER_WORN = "number";
  static final String X = "x_m";
  static final String Y = "y_m";
  static final String HOME_ATTACKS = "home_attacks";
  static final String LET_GO_BY = "let_go_by";
  static final String LINE = "line";
  static final String CARRIER = "carrier";
  static final String VX = "vx_m_s";
  static final String VY = "vy_m_s";
  static final String LATER_X = "later_x_m";
  static final String LATER_Y = "later_y_m";
  static final String ERROR = "error_m";
  static final String NOTE = "note";

  /** Last frame of a file that can be read: more than ten hours at 240 frames a second. */
  static final int LAST_FRAME = 9_999_999;

  /** Most frames a second. Assumed. */
  private static final double MOST_FRAMES = 1000;

  /** Longest video, s: a day. Assumed. */
  private static final double LONGEST_VIDEO = 86_400;

  private static final List<SettingSpec> CLOCK_SETTINGS =
      with(
          SheetForms.CLOCK_SETTINGS,
          number(
              "video",
              "step_s",
              SheetForms.SMALLEST_STEP,
              SheetForms.LARGEST_STEP,
              "smallest step of video seconds"));

  private static final List<SettingSpec> PLACE_SETTINGS =
      Stream.concat(CLOCK_SETTINGS.stream(), SheetForms.PLACE_SETTINGS.stream()).toList();

  private static final List<SettingSpec> TRACK_SETTINGS =
      with(
          PLACE_SETTINGS,
          number(
              "video",
              "frames_per_second",
              1 / SheetForms.LARGEST_STEP,
              MOST_FRAMES,
              "frames a second, where rows count frames"),
          number(
              "video",
              "first_frame_s",
              -LONGEST_VIDEO,
              LONGEST_VIDEO,
              "second of the video at frame 0"),
          new SettingSpec(
              "video",
              "restarts_each_period",
              FLAG,
              Set.of(),
              "whether seconds of video begin anew with each period"),
          new SettingSpec(
              "track", "unread", WHOLE_NUMBERS, Set.of(), "numbers that mean not read"));

  /** The tracking sheet: one row a skater a frame. */
  public static final SheetSchema TRACKING =
      new SheetSchema(
          "tracking",
          List.of(
              new ColumnSpec(GAME, false, "a game's id"),
              new ColumnSpec(SEGMENT, false, "a piece of the video that counts its own frames"),
              new ColumnSpec(FRAME, false, "a whole number from 0 to " + LAST_FRAME),
              new ColumnSpec(VIDEO, false, "seconds of video, 0 or more"),
              new ColumnSpec(PERIOD, false, "a whole number from 1 to 20"),
              new ColumnSpec(CLOCK, false, "a clock such as 13:07, or seconds"),
              new ColumnSpec(TRACK, true, "a track's id"),
              new ColumnSpec(TEAM, true, "a team's name"),
              new ColumnSpec(NUMBER_WORN, false, "the number on the jersey"),
              new ColumnSpec(X, true, "a place along the rink"),
              new ColumnSpec(Y, true, "a place across the rink"),
              new ColumnSpec(HOME_ATTACKS, false, "plus_x or minus_x")),
          TRACK_SETTINGS);

  /** The sync sheet: which game clock, and which frame, belongs to which second of the video. */
  public static final SheetSchema SYNC =
      new SheetSchema(
          "sync",
          List.of(
              new ColumnSpec(GAME, false, "a game's id"),
              new ColumnSpec(SEGMENT, false, "a piece of the video that counts its own frames"),
              new ColumnSpec(FRAME, false, "a whole number from 0 to " + LAST_FRAME),
              new ColumnSpec(PERIOD, true, "a whole number from 1 to 20"),
              new ColumnSpec(CLOCK, false, "a clock such as 13:07, or seconds"),
              new ColumnSpec(VIDEO, true, "seconds of video, 0 or more")),
          CLOCK_SETTINGS);

  /** The places sheet: one row a skater at a release, clicked on the video. */
  public static final SheetSchema PLACES =
      new SheetSchema(
          "places",
          List.of(
              new ColumnSpec(GAME, false, "a game's id"),
              new ColumnSpec(PERIOD, true, "a whole number from 1 to 20"),
              new ColumnSpec(CLOCK, true, "a clock such as 13:07, or seconds"),
              new ColumnSpec(LET_GO_BY, false, "who lets the puck go, as in the play sheet"),
              new ColumnSpec(LINE, false, "the release's line in the play sheet"),
              new ColumnSpec(TEAM, true, "own, opponent, or a team's name"),
              new ColumnSpec(CARRIER, true, "yes for who lets the puck go"),
              new ColumnSpec(X, true, "a place along the rink"),
              new ColumnSpec(Y, true, "a place across the rink"),
              new ColumnSpec(VX, false, "speed along the rink, a second"),
              new ColumnSpec(VY, false, "speed across the rink, a second"),
              new ColumnSpec(LATER_X, false, "the place along the rink half a second later"),
              new ColumnSpec(LATER_Y, false, "the place across the rink half a second later"),
              new ColumnSpec(ERROR, false, "how far off his places are, standard error each way"),
              new ColumnSpec(NOTE, false, "any text")),
          PLACE_SETTINGS);

  /** What tracking is read from. */
  public static final List<SheetSchema> ALL = List.of(TRACKING, SYNC);

  private TrackForm() {}

  private static List<SettingSpec> with(List<SettingSpec> settings, SettingSpec... more) {
    return Stream.concat(settings.stream(), Stream.of(more)).toList();
  }
}
