package twostrides.rulebook;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The points on which rulebooks differ: the words that a book may give for each, or the range of a
 * number. A user's own book changes any of them.
 */
public enum SettingKey {
  /** Who or what completes an icing. */
  TYPE(
      "how an icing is completed: by the puck touched by a defender (touch), by who would touch it"
          + " first (hybrid), by the goal line alone (automatic), or never called (none)"),
  /** From behind which line a puck must come. */
  ORIGIN("the line from behind which the puck must come"),
  /** With what the red line is gained. */
  GAINED_BY("what the puck must be on when it touches the line to have gained it"),
  /** Whether a kick can be an icing. */
  KICK_COUNTS("whether a kicked puck can be iced"),
  /** Whether a team below strength may send the puck the length freely. */
  SHORTHANDED_EXEMPT("whether a shorthanded team may ice the puck"),
  /** Whether only penalties make a team short. */
  SHORT_NEEDS_PENALTY("whether only penalties being served make a team shorthanded"),
  /** A major has run out, nobody was in the box to come back. */
  EXPIRED_MAJOR_EXEMPT(
      "whether a team a skater down only because nobody served an expired major is exempt"),
  /** Straight from a face-off. */
  FACE_OFF_EXEMPT("whether a puck sent straight from a face-off is exempt"),
  /** What a goalkeeper must do to stop an icing. */
  GOALKEEPER(
      "what a goalkeeper who does not touch the puck must do to stop an icing: nothing does"
          + " (touch-only), feign, try for or skate toward it (moves-toward), leave the crease with"
          + " both skates toward it (both-skates-out)"),
  /** A goalkeeper who goes for the attacker instead of the puck. */
  GOALKEEPER_PREVENTS(
      "whether a goalkeeper who keeps an attacker from playing the puck, without touching it, stops"
          + " an icing"),
  /** Until when a touch by the other side counts. */
  TOUCH_NULLIFIES("when a touch by an opponent or goalkeeper stops an icing"),
  /** A goalkeeper plays the puck off the back of the net. */
  BACK_OF_NET("whether a goalkeeper who plays the puck off the back of the net stops an icing"),
  /** An opponent who could play the puck before the goal line. */
  ABLE_OPPONENT("whether an opponent able to play the puck stops an icing"),
  /** A pass that a teammate could have received. */
  RECEIVABLE_PASS(
      "a pass that a teammate could have received: is iced all the same (no), is not when the"
          + " receiver is beyond the red line (past-center), or the linesperson decides"
          + " (linesperson)"),
  /** Level at the spots. */
  TIE("what it is when the race is too close to call"),
  /** Nobody chases. */
  NO_RACE(
      "what it takes where nobody chases: no more than the goal line (nothing), or a defending"
          + " skater past the own blue line too (defender-back)"),
  /** The other team's shot comes back off this team. */
  REBOUND(
      "a shot that rebounds off an opponent over the shooter's own goal line: no icing, or no rule"),
  /** Offside while an icing is developing. */
  OFFSIDE(
      "an offside player about to reach the puck first or make contact: play stops for the offside"
          + " at once, or no rule"),
  /** The puck glances off an official. */
  OFFICIAL("what a deflection off an official does"),
  /** The defending side leaves the puck alone on purpose. */
  ABSTAINING(
      "what follows when the defending side deliberately leaves the puck: the face-off goes to its own"
          + " end (own-end), or no rule (no-rule)"),
  /** Batted or kicked the length into the net. */
  HAND_OR_KICK_IN("a puck batted by hand, or kicked, the length of the ice into the net"),
  /** Which end-zone spot. */
  SPOT(
      "which of the two end-zone spots: the attacking team picks, the side from which the puck was"
          + " shot, or no rule known"),
  /** Whether the icing team may change. */
  LINE_CHANGE("whether the icing team may change before the face-off"),
  /** What a penalty at the same stoppage does to the bar. */
  CHANGE_WITH_PENALTY(
      "with a penalty at the same stoppage: only for the penalized player (penalized-only), freely"
          + " when the penalty changes strength (strength-changing), freely with any penalty (any)"),
  /** Whether a goalkeeper who was off may come back. */
  GOALKEEPER_RETURNS("whether a pulled goalkeeper may come back for the face-off"),
  /** Whether an injured player may be replaced. */
  INJURED_REPLACED("whether an injured player may be replaced"),
  /** Whether a broken skate lets a player change. */
  BROKEN_SKATE("whether a player with a broken skate may be replaced"),
  /** Time-outs. */
  TIME_OUT("whether the icing team may take its time-out"),
  /** The whistle was a mistake. */
  BY_MISTAKE("where the face-off is when icing was whistled by mistake"),
  /** The non-offending team ices during a delayed penalty. */
  SIGNALLED_PENALTY(
      "where the face-off is when a team ices while a penalty on the other is signalled"),
  /** Coincidental minors. */
  COINCIDENTAL_MINORS(
      "one minor each at the same stoppage, nothing else running: 4-on-4, or they cancel and it"
          + " stays 5-on-5"),
  /** A shorthanded goal ends the scoring team's own minor. */
  SHORTHANDED_GOAL_FREES("whether a shorthanded goal ends the scoring team's own minor"),
  /** The instant at which a penalty ends. */
  AT_EXPIRY(
      "a puck let go at the very instant of expiry: the penalty is over, or still being served"),
  /** Skaters in overtime. */
  OVERTIME_SKATERS("skaters a side in overtime, goalkeepers not counted", 3, 5),
  /** The floor. */
  FEWEST_SKATERS("skaters below which penalties take no team", 3, 4),
  /** Length of a period. */
  PERIOD_MINUTES("minutes of a period", 5, 30),
  /** Length of a minor. */
  MINOR_MINUTES("minutes of a minor penalty", 0.5, 5),
  /** Length of a major. */
  MAJOR_MINUTES("minutes of a major penalty", 1, 10),
  /** The rink. */
  RINK("the rink where nothing else says which");

  private final String meaning;

  /** The ends of what a number may be; 0 where the key takes a word. */
  private final double low;

  private final double high;

  SettingKey(String meaning) {
    this(meaning, 0, 0);
  }

  SettingKey(String meaning, double low, double high) {
    this.meaning = meaning;
    this.low = low;
    this.high = high;
  }

  /** The name in a book's file: {@code shorthanded-exempt}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What the point is, a phrase. */
  public String meaning() {
    return meaning;
  }

  /** The words that a book may give, in a fixed order; empty for a number. */
  public List<String> words() {
    return choices().map(Choice::word).toList();
  }

  /** The words as constants, in the same order. */
  Stream<Choice> choices() {
    return Arrays.stream(Choice.values()).filter(c -> c.key() == this);
  }

  /** What a book may give, as messages say it. */
  public String allowed() {
    return high > 0
        ? "a number from " + plain(low) + " to " + plain(high)
        : String.join(", ", words());
  }

  /**
   * Whether a book may give this value.
   *
   * @param value as written
   */
  public boolean allows(String value) {
    if (high == 0) {
      return words().contains(value);
    }
    try {
      double v = Double.parseDouble(value);
      return v >= low && v <= high;
    } catch (NumberFormatException e) {
      return false;
    }
  }

  /**
   * The key of a name.
   *
   * @param word as a book writes it
   */
  static Optional<SettingKey> of(String word) {
    return Arrays.stream(values()).filter(k -> k.word().equals(word)).findFirst();
  }

  private static String plain(double v) {
    return v == Math.rint(v) ? Integer.toString((int) v) : Double.toString(v);
  }
}
