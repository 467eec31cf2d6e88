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
    Basis basis = b.basis("touched on the way", SettingKey.TOUCH_NULLIFIES);
    if (f.unknown(TOUCH)) {
      return basis.unknown(TOUCH, "unless an opponent or the goalkeeper touched it");
    }
    boolean opponent = f.is(Fact.TOUCH_OPPONENT_BEFORE_LINE);
    return opponent || f.is(Fact.TOUCH_GOALKEEPER_BEFORE_LINE)
        ? basis.applies(who(opponent) + " touched the puck before the goal line")
        : Answer.NO;
  }

  private static String who(boolean opponent) {
    return opponent ? "an opponent" : "the goalkeeper";
  }

  /**
   * A touch past the goal line, where the book counts it. Automatic icing is complete by then, and
   * under touch icing a defender's touch is what completes it.
   */
  static Answer touchedPastTheLine(IcingBook b, Facts f) {
    boolean opponent = f.is(Fact.TOUCH_OPPONENT_AFTER_LINE);
    boolean counts =
        b.says(Choice.TOUCH_NULLIFIES_BEFORE_OR_AFTER)
            && !b.says(Choice.TYPE_AUTOMATIC)
            && !(b.says(Choice.TYPE_TOUCH) && opponent);
    return counts && (opponent || f.is(Fact.TOUCH_GOALKEEPER_AFTER_LINE))
        ? b.basis("touched past the line", SettingKey.TOUCH_NULLIFIES)
            .applies(
                who(opponent)
                    + " touched the puck, and this book counts a touch past the goal line too")
        : Answer.NO;
  }

  /** A goalkeeper digs the puck off the back of the net. */
  static Answer offTheBackOfTheNet(IcingBook b, Facts f) {
    return f.is(Fact.TOUCH_GOALKEEPER_BACK_OF_NET) && b.says(Choice.BACK_OF_NET_YES)
        ? b.basis("off the back of the net", SettingKey.BACK_OF_NET)
            .applies("a goalkeeper who plays the puck off the back of the net stops the icing")
        : Answer.NO;
  }

  /** The defending side leaves the puck alone on purpose. */
  static Answer leftAlone(IcingBook b, Facts f) {
    if (!b.says(Choice.ABSTAINING_OWN_END)) {
      return Answer.NO;
    }
    Basis basis = b.basis(LEFT_ALONE, SettingKey.ABSTAINING);
    if (f.unknown(ABSTAINED)) {
      return basis.unknown(ABSTAINED, "unless the defending side left it alone on purpose");
    }
    return f.is(Fact.ABSTAINED_YES)
        ? basis.applies(
            "a side that deliberately leaves the puck takes the face-off in its own end")
        : Answer.NO;
  }

  /**
   * An opposing skater could have played it before the goal line, also one who lets it pass so as
   * not to have too many on the ice.
   */
  static Answer opponentCouldPlay(IcingBook b, Facts f) {
    if (b.says(Choice.ABLE_OPPONENT_NO)) {
      return Answer.NO;
    }
    Basis basis = b.basis("an opponent could play it", SettingKey.ABLE_OPPONENT);
    if (f.unknown(COULD_PLAY)) {
      return basis.unknown(
          COULD_PLAY, "unless an opponent could have played it before the goal line");
    }
    return f.is(Fact.COULD_PLAY_YES, Fact.COULD_PLAY_DECLINED_FOR_CHANGE)
        ? basis.applies("an opposing skater could have played the puck before the goal line")
        : Answer.NO;
  }

  /** A pass that a teammate could have received, where the book knows the exception. */
  static Answer receivablePass(IcingBook b, Facts f) {
    if (b.says(Choice.RECEIVABLE_PASS_NO) || f.is(Fact.PASS_NONE)) {
      return Answer.NO;
    }
    Basis basis = b.basis("receivable pass", SettingKey.RECEIVABLE_PASS);
    if (b.says(Choice.RECEIVABLE_PASS_LINESPERSON) || f.unknown(PASS)) {
      return basis.unknown(
          PASS, "unless the linesperson judged that a teammate could have received the pass");
    }
    return f.is(Fact.PASS_RECEIVER_PAST_CENTER)
        ? basis.applies(
            "a pass within reach of a teammate beyond the red line may be waved off, even if he"
                + " misses it")
        : Answer.NO;
  }

  /** The puck must be wholly past the goal line, outside the posts; its plane has no upper end. */
  static Answer diedBeforeTheLine(IcingBook b, Facts f) {
    if (f.unknown(PUCK)) {
      return b.basis("over the goal line", SettingKey.TYPE)
          .unknown(PUCK, "if the puck wholly crossed the goal line");
    }
    if (f.is(Fact.PUCK_SHORT_OF_GOAL_LINE)) {
      return b.basis(SHORT, SettingKey.TYPE).applies("the puck never crossed the goal line");
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
    boolean toward = b.says(Choice.GOALKEEPER_MOVES_TOWARD);
    boolean skates = b.says(Choice.GOALKEEPER_BOTH_SKATES_OUT);
    boolean prevents = b.says(Choice.GOALKEEPER_PREVENTS_YES);
    Basis comes = b.basis("goalkeeper", SettingKey.GOALKEEPER);
    Basis inTheWay = b.basis("goalkeeper", SettingKey.GOALKEEPER_PREVENTS);
    if (f.is(Fact.GOALKEEPER_PREVENTS_ATTACKER)) {
      return prevents
          ? inTheWay.applies(
              "a goalkeeper who keeps an attacker from playing the puck stops the icing")
          : Answer.NO;
    }
    if (f.unknown(GOALKEEPER) && toward) {
      return comes.unknown(GOALKEEPER, "unless the goalkeeper moved toward the puck");
    }
    if (f.unknown(GOALKEEPER) && skates) {
      return comes.unknown(
          GOALKEEPER, "unless the goalkeeper left the crease toward the puck with both skates");
    }
    if (f.unknown(GOALKEEPER) && prevents) {
      return inTheWay.unknown(
          GOALKEEPER, "unless the goalkeeper kept an attacker from playing the puck");
    }
    boolean bothSkates = f.is(Fact.GOALKEEPER_BOTH_SKATES_TOWARD);
    if (skates && bothSkates) {
      return comes.applies(
          "a goalkeeper who leaves the crease toward the puck with both skates stops the icing");
    }
    return toward && (bothSkates || f.is(Fact.GOALKEEPER_MOVED_TOWARD))
        ? comes.applies("a goalkeeper who feigns, tries or skates toward the puck stops the icing")
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
    if (b.says(Choice.TYPE_TOUCH)) {
      return b.basis("nobody touched it yet", SettingKey.TYPE)
          .applies("under touch icing play goes on until somebody touches the puck");
    }
    if (!b.says(Choice.TYPE_HYBRID) || b.says(Choice.NO_RACE_NOTHING)) {
      return Answer.NO;
    }
    Basis basis = b.basis("nobody chased", SettingKey.NO_RACE);
    if (f.unknown(DEFENDER_BACK)) {
      return basis.unknown(DEFENDER_BACK, "once a defending skater is past the own blue line");
    }
    return f.is(Fact.DEFENDER_BACK_NO)
        ? basis.applies("icing is not called before a defending skater is past the own blue line")
        : Answer.NO;
  }

  /**
   * The race: touch by the puck touched, hybrid by who would touch it first, decided no later than
   * the first skate at the end-zone spots. Level is what the book says. Automatic knows no race.
   */
  static Answer attackerFirst(IcingBook b, Facts f) {
    boolean touch = b.says(Choice.TYPE_TOUCH);
    if (b.raceQuestion().isEmpty() || (touch && f.is(Fact.TOUCH_OPPONENT_AFTER_LINE))) {
      return Answer.NO;
    }
    Basis basis = b.basis("the race", SettingKey.TYPE);
    if (f.unknown(RACE)) {
      return basis.unknown(
          RACE,
          touch
              ? "if a defender touched the puck first"
              : "unless a teammate would have touched it first");
    }
    if (f.is(Fact.RACE_LEVEL) && b.says(Choice.TIE_WAVED_OFF)) {
      return b.basis("the race", SettingKey.TIE).applies("a race too close to call is waved off");
    }
    return f.is(Fact.RACE_ATTACKER)
        ? basis.applies(
            touch
                ? "a teammate touched the puck first"
                : "a teammate would have touched the puck first")
        : Answer.NO;
  }
}
