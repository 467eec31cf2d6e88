package twostrides.rulebook;

import static twostrides.rulebook.FactKey.ABSTAINED;
import static twostrides.rulebook.FactKey.COULD_PLAY;
import static twostrides.rulebook.FactKey.DEFENDER_BACK;
import static twostrides.rulebook.FactKey.GOALKEEPER;
import static twostrides.rulebook.FactKey.PASS;
import static twostrides.rulebook.FactKey.PUCK;
import static twostrides.rulebook.FactKey.RACE;
import static twostrides.rulebook.FactKey.TOUCH;

/**
 * The rules about what happens on the way: touches, opponents who could play the puck, the goal
 * line, the goalkeeper and the race. Each is a method that says why it applies.
 */
final class WayRules {

  /** Name of the rule that also moves the face-off. */
  static final String LEFT_ALONE = "left alone on purpose";

  /** Name of the rule for a puck that lies where a defender can leave it alone as well. */
  static final String SHORT = "short of the goal line";

  private WayRules() {}

  /** A touch by an opponent or the goalkeeper before the goal line. */
  static Answer touchedOnTheWay(IcingBook b, Facts f) {
    if (f.unknown(TOUCH)) {
      return Answer.unknown(
          b,
          SettingKey.TOUCH_NULLIFIES,
          TOUCH,
          "touched on the way",
          "unless an opponent or the goalkeeper touched it");
    }
    boolean opponent = f.is(Fact.TOUCH_OPPONENT_BEFORE_LINE);
    return opponent || f.is(Fact.TOUCH_GOALKEEPER_BEFORE_LINE)
        ? Answer.applies(
            b,
            SettingKey.TOUCH_NULLIFIES,
            "touched on the way",
            (opponent ? "an opponent" : "the goalkeeper")
                + " touched the puck before the goal line")
        : Answer.NO;
  }

  /**
   * A touch past the goal line, where the book counts it. Automatic icing is complete by then, and
   * under touch icing a defender's touch is what completes it.
   */
  static Answer touchedPastTheLine(IcingBook b, Facts f) {
    boolean opponent = f.is(Fact.TOUCH_OPPONENT_AFTER_LINE);
    boolean counts =
        b.says(SettingKey.TOUCH_NULLIFIES, "before-or-after")
            && !b.says(SettingKey.TYPE, "automatic")
            && !(b.says(SettingKey.TYPE, "touch") && opponent);
    return counts && (opponent || f.is(Fact.TOUCH_GOALKEEPER_AFTER_LINE))
        ? Answer.applies(
            b,
            SettingKey.TOUCH_NULLIFIES,
            "touched past the line",
            (opponent ? "an opponent" : "the goalkeeper")
                + " touched the puck, and this book counts a touch past the goal line too")
        : Answer.NO;
  }

  /** A goalkeeper digs the puck off the back of the net. */
  static Answer offTheBackOfTheNet(IcingBook b, Facts f) {
    return f.is(Fact.TOUCH_GOALKEEPER_BACK_OF_NET) && b.says(SettingKey.BACK_OF_NET, "yes")
        ? Answer.applies(
            b,
            SettingKey.BACK_OF_NET,
            "off the back of the net",
            "a goalkeeper who plays the puck off the back of the net stops the icing")
        : Answer.NO;
  }

  /** The defending side leaves the puck alone on purpose. */
  static Answer leftAlone(IcingBook b, Facts f) {
    if (f.unknown(ABSTAINED) && b.says(SettingKey.ABSTAINING, "own-end")) {
      return Answer.unknown(
          b,
          SettingKey.ABSTAINING,
          ABSTAINED,
          LEFT_ALONE,
          "unless the defending side left it alone on purpose");
    }
    return f.is(Fact.ABSTAINED_YES) && b.says(SettingKey.ABSTAINING, "own-end")
        ? Answer.applies(
            b,
            SettingKey.ABSTAINING,
            LEFT_ALONE,
            "a side that deliberately leaves the puck takes the draw in its own end")
        : Answer.NO;
  }

  /**
   * An opposing skater could have played it before the goal line, also one who lets it pass so as
   * not to have too many on the ice.
   */
  static Answer opponentCouldPlay(IcingBook b, Facts f) {
    if (b.says(SettingKey.ABLE_OPPONENT, "no")) {
      return Answer.NO;
    }
    if (f.unknown(COULD_PLAY)) {
      return Answer.unknown(
          b,
          SettingKey.ABLE_OPPONENT,
          COULD_PLAY,
          "an opponent could play it",
          "unless an opponent could have played it before the goal line");
    }
    return f.isOne(Fact.COULD_PLAY_YES, Fact.COULD_PLAY_DECLINED_FOR_CHANGE)
        ? Answer.applies(
            b,
            SettingKey.ABLE_OPPONENT,
            "an opponent could play it",
            "an opposing skater could have played the puck before the goal line")
        : Answer.NO;
  }

  /** A pass that a teammate could have received, where the book knows the exception. */
  static Answer receivablePass(IcingBook b, Facts f) {
    if (b.says(SettingKey.RECEIVABLE_PASS, "no") || f.is(Fact.PASS_NONE)) {
      return Answer.NO;
    }
    if (b.says(SettingKey.RECEIVABLE_PASS, "linesperson") || f.unknown(PASS)) {
      return Answer.unknown(
          b,
          SettingKey.RECEIVABLE_PASS,
          PASS,
          "receivable pass",
          "unless the linesperson judged that a teammate could have received the pass");
    }
    return f.is(Fact.PASS_RECEIVER_PAST_CENTER)
        ? Answer.applies(
            b,
            SettingKey.RECEIVABLE_PASS,
            "receivable pass",
            "a pass within reach of a teammate beyond the red line may be waved off, even if he"
                + " misses it")
        : Answer.NO;
  }

  /** The puck must be wholly past the goal line, outside the posts; its plane has no upper end. */
  static Answer diedBeforeTheLine(IcingBook b, Facts f) {
    if (f.unknown(PUCK)) {
      return Answer.unknown(
          b,
          SettingKey.TYPE,
          PUCK,
          "over the goal line",
          "if the puck wholly crossed the goal line");
    }
    if (f.is(Fact.PUCK_SHORT_OF_GOAL_LINE)) {
      return Answer.applies(b, SettingKey.TYPE, SHORT, "the puck never crossed the goal line");
    }
    return f.is(Fact.PUCK_OUT_BEFORE_GOAL_LINE)
        ? new Answer.Applies(
            Reason.common("out of play", "the puck left the rink before it crossed the goal line"))
        : Answer.NO;
  }

  /**
   * A goalkeeper who does not touch the puck: who goes for it, or keeps an attacker from playing
   * it, where the book counts that.
   */
  static Answer goalkeeperCame(IcingBook b, Facts f) {
    boolean toward = b.says(SettingKey.GOALKEEPER, "moves-toward");
    boolean skates = b.says(SettingKey.GOALKEEPER, "both-skates-out");
    boolean prevents = b.says(SettingKey.GOALKEEPER_PREVENTS, "yes");
    if (f.is(Fact.GOALKEEPER_PREVENTS_ATTACKER)) {
      return prevents
          ? Answer.applies(
              b,
              SettingKey.GOALKEEPER_PREVENTS,
              "goalkeeper",
              "a goalkeeper who keeps an attacker from playing the puck stops the icing")
          : Answer.NO;
    }
    if (!toward && !skates && !prevents) {
      return Answer.NO;
    }
    if (f.unknown(GOALKEEPER)) {
      return Answer.unknown(
          b,
          toward || skates ? SettingKey.GOALKEEPER : SettingKey.GOALKEEPER_PREVENTS,
          GOALKEEPER,
          "goalkeeper",
          toward
              ? "unless the goalkeeper moved toward the puck"
              : skates
                  ? "unless the goalkeeper left the crease toward the puck with both skates"
                  : "unless the goalkeeper kept an attacker from playing the puck");
    }
    boolean came =
        f.is(Fact.GOALKEEPER_BOTH_SKATES_TOWARD)
            ? toward || skates
            : toward && f.is(Fact.GOALKEEPER_MOVED_TOWARD);
    return came
        ? Answer.applies(
            b,
            SettingKey.GOALKEEPER,
            "goalkeeper",
            skates
                ? "a goalkeeper who leaves the crease toward the puck with both skates stops the"
                    + " icing"
                : "a goalkeeper who feigns, tries or skates toward the puck stops the icing")
        : Answer.NO;
  }

  /**
   * Nobody chases. Hybrid by some books: no call before a defending skater is past the own blue
   * line. Touch: no call before a defender touches the puck.
   */
  static Answer nobodyChased(IcingBook b, Facts f) {
    if (!f.is(Fact.RACE_NOBODY)) {
      return Answer.NO;
    }
    if (b.says(SettingKey.TYPE, "touch")) {
      return Answer.applies(
          b,
          SettingKey.TYPE,
          "nobody touched it yet",
          "under touch icing play goes on until somebody touches the puck");
    }
    if (!b.says(SettingKey.TYPE, "hybrid") || b.says(SettingKey.NO_RACE, "nothing")) {
      return Answer.NO;
    }
    if (f.unknown(DEFENDER_BACK)) {
      return Answer.unknown(
          b,
          SettingKey.NO_RACE,
          DEFENDER_BACK,
          "nobody chased",
          "once a defending skater is past the own blue line");
    }
    return f.is(Fact.DEFENDER_BACK_NO)
        ? Answer.applies(
            b,
            SettingKey.NO_RACE,
            "nobody chased",
            "icing is not called before a defending skater is past the own blue line")
        : Answer.NO;
  }

  /**
   * The race: touch by the puck touched, hybrid by who would touch it first, decided no later than
   * the first skate at the end-zone spots. Level is what the book says. Automatic knows no race.
   */
  static Answer attackerFirst(IcingBook b, Facts f) {
    if (b.raceQuestion().isEmpty()) {
      return Answer.NO;
    }
    boolean touch = b.says(SettingKey.TYPE, "touch");
    if (touch && f.is(Fact.TOUCH_OPPONENT_AFTER_LINE)) {
      return Answer.NO;
    }
    if (f.unknown(RACE)) {
      return Answer.unknown(
          b,
          SettingKey.TYPE,
          RACE,
          "the race",
          touch
              ? "if a defender touched the puck first"
              : "unless a teammate would have touched it first");
    }
    if (f.is(Fact.RACE_LEVEL)) {
      return b.says(SettingKey.TIE, "waved-off")
          ? Answer.applies(b, SettingKey.TIE, "the race", "a race too close to call is waved off")
          : Answer.NO;
    }
    return f.is(Fact.RACE_ATTACKER)
        ? Answer.applies(
            b,
            SettingKey.TYPE,
            "the race",
            touch
                ? "a teammate touched the puck first"
                : "a teammate would have touched the puck first")
        : Answer.NO;
  }
}
