package twostrides.exits;

/**
 * The name of every column of the pipeline's tables, in one place; a quantity carries its unit in
 * its name.
 *
 * <p>Units: {@code _s} seconds of play (elapsed times count from the start of the period; {@code
 * video_s} is the video's own clock), {@code _m} metres in the acting team's frame (origin at
 * center ice, +x the attack, +y to its left), no suffix for words and counts. A missing value is an
 * empty cell, never zero.
 */
public final class Columns {
  /** Game id, as in the sheet. */
  public static final String GAME = "game";

  /** Game date, ISO 8601, where the sheet has it. */
  public static final String DATE = "date";

  /** Number of the exit attempt in its game, from 1. */
  public static final String EXIT = "exit";

  /** Number of the release in its game, from 1. */
  public static final String RELEASE = "release";

  /** Period, from 1; overtime goes on counting. */
  public static final String PERIOD = "period";

  /** Seconds of play since the period began. */
  public static final String ELAPSED_S = "elapsed_s";

  /**
   * Seconds of play since the period began, at the release or at the crossing of the own blue line.
   */
  public static final String RELEASE_ELAPSED_S = "release_elapsed_s";

  /** The team that leaves its zone. */
  public static final String TEAM = "team";

  /** The other team. */
  public static final String OPPONENT = "opponent";

  /** The player who carried, passed or sent the puck out, or lost it inside. */
  public static final String PLAYER = "player";

  /**
   * Who let the puck go at {@link #RELEASE_X_M}: the same player but after a pass that a teammate
   * released short.
   */
  public static final String RELEASE_PLAYER = "release_player";

  /** {@link WayOut} label. */
  public static final String WAY_OUT = "way_out";

  /** {@link AtCenter} label, empty for ways out that have none. */
  public static final String AT_CENTER = "at_center";

  /** {@link twostrides.game.Strength} label at the instant of release. */
  public static final String STRENGTH = "strength";

  /**
   * Whose net was empty at the release: none, own, opponent, both; empty when the sheet does not
   * say.
   */
  public static final String NET_EMPTY = "net_empty";

  /** Place of the release (or last touch inside, when kept in). */
  public static final String RELEASE_X_M = "release_x_m";

  /** Place of the release across the rink. */
  public static final String RELEASE_Y_M = "release_y_m";

  /**
   * Metres from the puck to the near edge of the red line at the release; empty when center was
   * gained.
   */
  public static final String SHORT_OF_CENTER_M = "short_of_center_m";

  /**
   * "on the line" when the sheet's step cannot tell on which side of the red line the release was.
   */
  public static final String LINE_NOTE = "line_note";

  /** Who touched the puck next: own, opponent, none. */
  public static final String NEXT_TOUCH = "next_touch";

  /** Where it was touched next. */
  public static final String NEXT_TOUCH_X_M = "next_touch_x_m";

  /** Seconds until it was touched next. */
  public static final String SECONDS_TO_NEXT_TOUCH = "seconds_to_next_touch";

  /** Whether the next face-off was in the own zone with no control by the opponent in between. */
  public static final String OWN_ZONE_RESTART = "own_zone_restart";

  /** {@link RestartCause} label. */
  public static final String RESTART_CAUSE = "restart_cause";

  /** Seconds of play since the period began, at the restart. */
  public static final String RESTART_ELAPSED_S = "restart_elapsed_s";

  /** Whether any own-zone face-off of the team came within the window. */
  public static final String RESTART_WITHIN_20S = "restart_within_20s";

  /** Seconds of play until the opponent controlled the puck in the team's zone again. */
  public static final String RELIEF_S = "relief_s";

  /** Whether a stoppage or the period's end cut the relief short. */
  public static final String RELIEF_CUT_SHORT = "relief_cut_short";

  /** Shot attempts of the opponent within the window. */
  public static final String ATTEMPTS_AGAINST_20S = "attempts_against_20s";

  /** Goals of the opponent within the window. */
  public static final String GOALS_AGAINST_20S = "goals_against_20s";

  /** Second of the video at the release. */
  public static final String VIDEO_S = "video_s";

  /** Sheet file name. */
  public static final String SHEET = "sheet";

  /** Line of the sheet, from 1, the header included. */
  public static final String LINE = "line";

  /** Kind of a release: sent or missed_pass. */
  public static final String KIND = "kind";

  /** Why the cause was found so, in words. */
  public static final String REASON = "reason";

  /** Who won the face-off: own or opponent. */
  public static final String WON_BY = "won_by";

  /** Strength of the team of the zone at the face-off: after a penalty not that of the release. */
  public static final String FACEOFF_STRENGTH = "faceoff_strength";

  /**
   * Whether the team of the zone had the puck last: its own restart, not one that followed the
   * opponent's play.
   */
  public static final String OWN_LAST = "own_last";

  /** Attempts counted. */
  public static final String ATTEMPTS = "attempts";

  /** Own-zone restarts counted. */
  public static final String RESTARTS = "restarts";

  /** What the book says: icing, no icing, waved off, goal, not yet decided. */
  public static final String RULING = "ruling";

  /** The ruling as a sentence with its reason. */
  public static final String RULING_REASON = "ruling_reason";

  /** Clause of the book and how sure it is; or that it is common practice, or assumed. */
  public static final String CLAUSE = "clause";

  /** What the sheet says and the book would not call; empty when they agree. */
  public static final String AUDIT = "audit";

  /** Id of another book that was asked. */
  public static final String BOOK = "book";

  /** What the book that the game was played by says. */
  public static final String PLAYED_RULING = "played_ruling";

  /** Whether the other book's ruling is another one. */
  public static final String DIFFERS = "differs";

  /** Rows in a row that the statement holds for. */
  public static final String ROWS = "rows";

  /** Skaters of the acting team on those of the other, by the manpower columns. */
  public static final String BY_COLUMNS = "by_columns";

  /** Skaters of the acting team on those of the other, by the penalty rows. */
  public static final String BY_PENALTIES = "by_penalties";

  /** The strength that was used. */
  public static final String STRENGTH_USED = "strength_used";

  /** Last line of the sheet that the statement holds for. */
  public static final String LAST_LINE = "last_line";

  /**
   * Seconds a carrier needs from the release to the red line: at the pace of these sheets, or
   * measured.
   */
  public static final String SECONDS_TO_CENTER = "seconds_to_center";

  /** Chance that the release is icing by the book of the run, 0 to 1. */
  public static final String P_ICING = "p_icing";

  /** Simulation error of {@link #P_ICING}: one standard error. */
  public static final String P_ICING_ERROR = "p_icing_error";

  /** Chance that the player would have brought the puck to the red line, 0 to 1. */
  public static final String P_GAIN_CENTER = "p_gain_center";

  /** Chance that trying to gain center would have avoided the restart, 0 to 1. */
  public static final String P_AVOID = "p_avoid";

  /** {@link Evidence} word. */
  public static final String EVIDENCE = "evidence";

  /** Opponents whose places at the release are known; empty when nobody looked. */
  public static final String OPPONENTS_SEEN = "opponents_seen";

  /** Metres from the puck to the nearest opponent seen. */
  public static final String NEAREST_OPPONENT_M = "nearest_opponent_m";

  /** Whether the release is flagged. */
  public static final String FLAGGED = "flagged";

  /** Why it is flagged, or why not, in one sentence. */
  public static final String FLAG_SENTENCE = "sentence";

  /** The run's seed; with the release's own id it gives every draw. */
  public static final String SEED = "seed";

  /** Attempts against within the window that a restart costs. */
  public static final String COST_RESTART = "cost_restart";

  /** Attempts against within the window that trying to gain center costs. */
  public static final String COST_TRYING = "cost_trying";

  /** Share of the draws in which the puck, left alone, goes wholly past the far goal line. */
  public static final String P_LENGTH = "p_length";

  /** How far up ice half the draws get, metres from center ice. */
  public static final String PUCK_X_M = "puck_x_m";

  /** There, 10 % of the draws pass at or to the right of this, metres from the long axis. */
  public static final String PUCK_RIGHT_M = "puck_right_m";

  /** There, the middle draw. */
  public static final String PUCK_MIDDLE_M = "puck_middle_m";

  /** There, 10 % of the draws pass at or to the left of this. */
  public static final String PUCK_LEFT_M = "puck_left_m";

  /** Skaters seen: "own x y vx vy; opponent x y vx vy", metres and metres a second. */
  public static final String SKATERS_SEEN = "skaters_seen";

  /** Attempts against within the longer window, see {@link Settings#longWindow}. */
  public static final String ATTEMPTS_AGAINST_30S = "attempts_against_30s";

  /** Goals against within the longer window. */
  public static final String GOALS_AGAINST_30S = "goals_against_30s";

  /** Own goals within the window. */
  public static final String GOALS_FOR_20S = "goals_for_20s";

  /** Whether the team plays at home or away, where the sheet says so. */
  public static final String VENUE = "venue";

  /** Goals the team is ahead by; negative when behind; empty where a sheet writes no shots. */
  public static final String GOALS_AHEAD = "goals_ahead";

  /** How close the nearest checker was: none, light, heavy; empty when not in the sheet. */
  public static final String PRESSURE = "pressure";

  /** Third of the rink's width, facing the attack: left, middle, right. */
  public static final String SIDE = "side";

  /** The team's skaters on the ice, by name, sorted, with semicolons between them. */
  public static final String ON_ICE = "on_ice";

  /** Whether the puck let go was a shot at goal. */
  public static final String SHOT = "shot";

  /** Whether the puck let go scored. */
  public static final String SCORED = "scored";

  /**
   * Seconds since the team was last seen shorthanded in this period; 0 while it is; empty when it
   * was not.
   */
  public static final String SINCE_SHORTHANDED_S = "since_shorthanded_s";

  /** Mean seconds for which the team's skaters had been on the ice at the draw, or release. */
  public static final String SHIFT_S = "shift_s";

  /** Mean seconds for which those skaters stayed on the ice after the draw. */
  public static final String STAY_S = "stay_s";

  /** Number of the penalty kill in its game, from 1. */
  public static final String KILL = "kill";

  /** Period in which a stretch ends. */
  public static final String END_PERIOD = "end_period";

  /** Seconds of play since the period began, at the end of a stretch. */
  public static final String END_ELAPSED_S = "end_elapsed_s";

  /** Seconds of play that a stretch lasted. */
  public static final String SECONDS = "seconds";

  /** Attempts that left the zone. */
  public static final String CLEARED = "cleared";

  /** Attempts that never left the zone. */
  public static final String KEPT_IN = "kept_in";

  /** Seconds of relief of all attempts of a stretch together, cut short or not. */
  public static final String RELIEF_TOTAL_S = "relief_total_s";

  /** Shot attempts against in a stretch. */
  public static final String ATTEMPTS_AGAINST = "attempts_against";

  /** Goals against in a stretch. */
  public static final String GOALS_AGAINST = "goals_against";

  private Columns() {}
}
