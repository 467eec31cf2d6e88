package twostrides.rulebook;

import static twostrides.rulebook.FactKey.ABSTAINED;
import static twostrides.rulebook.FactKey.CONTACT;
import static twostrides.rulebook.FactKey.COULD_PLAY;
import static twostrides.rulebook.FactKey.DEFENDER_BACK;
import static twostrides.rulebook.FactKey.FACE_OFF;
import static twostrides.rulebook.FactKey.FROM;
import static twostrides.rulebook.FactKey.GOALKEEPER;
import static twostrides.rulebook.FactKey.OFFSIDE;
import static twostrides.rulebook.FactKey.PASS;
import static twostrides.rulebook.FactKey.PUCK;
import static twostrides.rulebook.FactKey.RACE;
import static twostrides.rulebook.FactKey.STRENGTH;
import static twostrides.rulebook.FactKey.TOUCH;

import java.util.List;
import twostrides.rulebook.Rule.Effect;

/**
 * The rules that keep a puck sent the length of the ice from being an icing, each a method that
 * says why it applies. Whatever passes them all is one.
 */
final class IcingRules {

  /**
   * Every rule in the order in which it is asked. The order decides which reason is given where two
   * apply, never whether it is an icing.
   */
  static final List<Rule> IN_ORDER =
      List.of(
          new Rule(Effect.NO_ICING, IcingRules::offsideFirst),
          new Rule(Effect.NO_ICING, IcingRules::noLegalGoal),
          new Rule(Effect.GOAL, IcingRules::inTheNet),
          new Rule(Effect.NO_ICING, IcingRules::neverCalled),
          new Rule(Effect.NO_ICING, IcingRules::gainedTheLine),
          new Rule(Effect.NO_ICING, IcingRules::kicked),
          new Rule(Effect.NO_ICING, IcingRules::shorthanded),
          new Rule(Effect.NO_ICING, IcingRules::straightFromFaceOff),
          new Rule(Effect.NO_ICING, IcingRules::reboundOffThisTeam),
          new Rule(Effect.NO_ICING, IcingRules::teammatePastCenter),
          new Rule(Effect.NO_ICING, IcingRules::offAnOfficial),
          new Rule(Effect.NO_ICING, IcingRules::touchedOnTheWay),
          new Rule(Effect.WAVED_OFF, IcingRules::touchedPastTheLine),
          new Rule(Effect.WAVED_OFF, IcingRules::offTheBackOfTheNet),
          new Rule(Effect.WAVED_OFF, IcingRules::leftAlone),
          new Rule(Effect.WAVED_OFF, IcingRules::opponentCouldPlay),
          new Rule(Effect.WAVED_OFF, IcingRules::receivablePass),
          new Rule(Effect.NO_ICING, IcingRules::diedBeforeTheLine),
          new Rule(Effect.WAVED_OFF, IcingRules::goalkeeperCame),
          new Rule(Effect.NOT_YET, IcingRules::nobodyChased),
          new Rule(Effect.WAVED_OFF, IcingRules::attackerFirst));

  /** Name of the rule that also moves the draw. */
  static final String LEFT_ALONE = "left alone on purpose";

  private IcingRules() {}

  private static Answer applies(IcingBook b, SettingKey key, String rule, String text) {
    return new Answer.Applies(Reason.of(rule, text, b.setting(key)));
  }

  private static Answer unknown(
      IcingBook b, SettingKey key, FactKey fact, String rule, String settles) {
    return new Answer.Unknown(
        new Ruling.Open(fact, settles, Reason.of(rule, settles, b.setting(key))));
  }

  /** Batted by hand or kicked the length of the ice into the net: no goal, and no icing. */
  static Answer noLegalGoal(IcingBook b, Facts f) {
    return f.is(PUCK, "in-net")
            && f.isOne(CONTACT, "hand", "kick")
            && b.says(SettingKey.HAND_OR_KICK_IN, "no-goal")
        ? applies(
            b,
            SettingKey.HAND_OR_KICK_IN,
            "no legal goal",
            "a puck batted by hand or kicked into the net is no goal, and no icing")
        : Answer.NO;
  }

  /** In the net is a goal: the goal line is crossed between the posts. */
  static Answer inTheNet(IcingBook b, Facts f) {
    return f.is(PUCK, "in-net")
        ? new Answer.Applies(Reason.common("in the net", "a puck that goes in the net is a goal"))
        : Answer.NO;
  }

  /** Some categories play without icing. */
  static Answer neverCalled(IcingBook b, Facts f) {
    return b.says(SettingKey.TYPE, "none")
        ? applies(b, SettingKey.TYPE, "no icing in this book", "this book never calls icing")
        : Answer.NO;
  }

  /**
   * Offside comes first only when the offside player would get the puck or make contact; else the
   * icing is let finish.
   */
  static Answer offsideFirst(IcingBook b, Facts f) {
    if (b.says(SettingKey.OFFSIDE, "no-rule")) {
      return Answer.NO;
    }
    if (f.unknown(OFFSIDE)) {
      return unknown(
          b,
          SettingKey.OFFSIDE,
          OFFSIDE,
          "offside first",
          "unless an offside player would have reached it first or made contact");
    }
    return f.is(OFFSIDE, "first-or-contact")
        ? applies(
            b,
            SettingKey.OFFSIDE,
            "offside first",
            "an offside player who would reach the puck first or make contact stops play for"
                + " offside at once")
        : Answer.NO;
  }

  /**
   * Gained: the puck touched the line, or was past it, when it was last played; where the book
   * speaks of the stick, a puck on the line off a skate, a hand or the body gains nothing.
   */
  static Answer gainedTheLine(IcingBook b, Facts f) {
    boolean blue = b.says(SettingKey.ORIGIN, "own-blue-line");
    if (f.unknown(FROM)) {
      return unknown(
          b,
          SettingKey.ORIGIN,
          FROM,
          "gained the line",
          blue
              ? "if it was last played behind the own blue line"
              : "if it was last played short of the red line");
    }
    if (blue) {
      return f.is(FROM, "own-zone")
          ? Answer.NO
          : applies(
              b,
              SettingKey.ORIGIN,
              "gained the line",
              "only a puck sent from behind the own blue line is iced");
    }
    if (f.is(FROM, "past-the-line")) {
      return applies(
          b,
          SettingKey.ORIGIN,
          "gained the line",
          "the puck was past the red line when it was last played");
    }
    boolean stickOnly = b.says(SettingKey.GAINED_BY, "stick");
    if (f.is(FROM, "on-the-line") && stickOnly && f.unknown(CONTACT)) {
      return unknown(
          b,
          SettingKey.GAINED_BY,
          CONTACT,
          "gained the line",
          "unless it was on a stick when it touched the red line");
    }
    boolean offTheStick = f.isOne(CONTACT, "skate", "kick") || f.isOne(CONTACT, "hand", "body");
    if (f.is(FROM, "on-the-line") && !(offTheStick && stickOnly)) {
      return applies(
          b,
          SettingKey.GAINED_BY,
          "gained the line",
          "the puck touched the red line when it was last played");
    }
    return Answer.NO;
  }

  /** A kick is a way to ice the puck only where the book lists it. */
  static Answer kicked(IcingBook b, Facts f) {
    if (f.unknown(CONTACT) && b.says(SettingKey.KICK_COUNTS, "no")) {
      return unknown(b, SettingKey.KICK_COUNTS, CONTACT, "kicked", "unless it was kicked");
    }
    return f.is(CONTACT, "kick") && b.says(SettingKey.KICK_COUNTS, "no")
        ? applies(
            b,
            SettingKey.KICK_COUNTS,
            "kicked",
            "a kick is not among the ways to ice the puck that this book lists")
        : Answer.NO;
  }

  /**
   * Below strength at the instant of release because of penalties being served. A penalty that ends
   * after the release changes nothing; one that ended before it does, even with the player still in
   * the box; the exact instant follows the book's convention.
   */
  static Answer shorthanded(IcingBook b, Facts f) {
    if (b.says(SettingKey.SHORTHANDED_EXEMPT, "no")) {
      return Answer.NO;
    }
    if (f.unknown(STRENGTH)) {
      return unknown(
          b,
          SettingKey.SHORTHANDED_EXEMPT,
          STRENGTH,
          "shorthanded",
          "unless the team was shorthanded");
    }
    return switch (f.word(STRENGTH)) {
      case "shorthanded", "one-of-two-ended", "ended-after-release" ->
          exempt(
              b,
              SettingKey.SHORTHANDED_EXEMPT,
              "a team shorthanded at the instant of release may ice the puck");
      case "ended-at-release" ->
          b.says(SettingKey.AT_EXPIRY, "still-served")
              ? exempt(
                  b,
                  SettingKey.AT_EXPIRY,
                  "a penalty counts as served at the very instant of its expiry")
              : Answer.NO;
      case "short-no-penalty" ->
          b.says(SettingKey.SHORT_NEEDS_PENALTY, "no")
              ? exempt(
                  b,
                  SettingKey.SHORT_NEEDS_PENALTY,
                  "a team with fewer skaters for any reason may ice the puck")
              : Answer.NO;
      case "expired-major-empty-box" ->
          b.says(SettingKey.EXPIRED_MAJOR_EXEMPT, "yes")
              ? exempt(
                  b,
                  SettingKey.EXPIRED_MAJOR_EXEMPT,
                  "a team still a skater down after an expired major may ice the puck")
              : Answer.NO;
      default -> Answer.NO;
    };
  }

  private static Answer exempt(IcingBook b, SettingKey key, String text) {
    return applies(b, key, "shorthanded", text);
  }

  /** Straight off the first contact of a face-off, whoever took it. */
  static Answer straightFromFaceOff(IcingBook b, Facts f) {
    if (b.says(SettingKey.FACE_OFF_EXEMPT, "no")) {
      return Answer.NO;
    }
    if (f.unknown(FACE_OFF)) {
      return unknown(
          b,
          SettingKey.FACE_OFF_EXEMPT,
          FACE_OFF,
          "straight from a face-off",
          "unless it came straight from a face-off");
    }
    return f.is(FACE_OFF, "straight")
        ? applies(
            b,
            SettingKey.FACE_OFF_EXEMPT,
            "straight from a face-off",
            "the first contact of a face-off that sends the puck the length is no icing")
        : Answer.NO;
  }

  /** The other team's shot came back off this team's player: nobody iced it. */
  static Answer reboundOffThisTeam(IcingBook b, Facts f) {
    return f.is(TOUCH, "shot-rebound-off-this-team") && b.says(SettingKey.REBOUND, "no-icing")
        ? applies(
            b,
            SettingKey.REBOUND,
            "rebound",
            "a puck that rebounds off an opponent over the shooter's own goal line is no icing")
        : Answer.NO;
  }

  /** Last played past the line, by a teammate: the contact that counts is his. */
  static Answer teammatePastCenter(IcingBook b, Facts f) {
    return f.is(TOUCH, "teammate-past-center")
        ? applies(
            b,
            SettingKey.GAINED_BY,
            "teammate past center",
            "a teammate touched the puck past the red line, so it was last played there")
        : Answer.NO;
  }

  /** A puck off an official plays on, unless the book says otherwise. */
  static Answer offAnOfficial(IcingBook b, Facts f) {
    return f.is(TOUCH, "official") && b.says(SettingKey.OFFICIAL, "nullifies")
        ? applies(
            b,
            SettingKey.OFFICIAL,
            "off an official",
            "a puck that glances off an official is not iced")
        : Answer.NO;
  }

  /** A touch by an opponent or the goalkeeper before the goal line. */
  static Answer touchedOnTheWay(IcingBook b, Facts f) {
    if (f.unknown(TOUCH)) {
      return unknown(
          b,
          SettingKey.TOUCH_NULLIFIES,
          TOUCH,
          "touched on the way",
          "unless an opponent or the goalkeeper touched it");
    }
    boolean opponent = f.is(TOUCH, "opponent-before-line");
    return opponent || f.is(TOUCH, "goalkeeper-before-line")
        ? applies(
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
    boolean opponent = f.is(TOUCH, "opponent-after-line");
    boolean counts =
        b.says(SettingKey.TOUCH_NULLIFIES, "before-or-after")
            && !b.says(SettingKey.TYPE, "automatic")
            && !(b.says(SettingKey.TYPE, "touch") && opponent);
    return counts && (opponent || f.is(TOUCH, "goalkeeper-after-line"))
        ? applies(
            b,
            SettingKey.TOUCH_NULLIFIES,
            "touched past the line",
            (opponent ? "an opponent" : "the goalkeeper")
                + " touched the puck, and this book counts a touch past the goal line too")
        : Answer.NO;
  }

  /** A goalkeeper digs the puck off the back of the net. */
  static Answer offTheBackOfTheNet(IcingBook b, Facts f) {
    return f.is(TOUCH, "goalkeeper-back-of-net") && b.says(SettingKey.BACK_OF_NET, "yes")
        ? applies(
            b,
            SettingKey.BACK_OF_NET,
            "off the back of the net",
            "a goalkeeper who plays the puck off the back of the net stops the icing")
        : Answer.NO;
  }

  /** The defending side leaves the puck alone on purpose. */
  static Answer leftAlone(IcingBook b, Facts f) {
    if (f.unknown(ABSTAINED) && b.says(SettingKey.ABSTAINING, "own-end")) {
      return unknown(
          b,
          SettingKey.ABSTAINING,
          ABSTAINED,
          LEFT_ALONE,
          "unless the defending side left it alone on purpose");
    }
    return f.is(ABSTAINED, "yes") && b.says(SettingKey.ABSTAINING, "own-end")
        ? applies(
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
      return unknown(
          b,
          SettingKey.ABLE_OPPONENT,
          COULD_PLAY,
          "an opponent could play it",
          "unless an opponent could have played it before the goal line");
    }
    return f.isOne(COULD_PLAY, "yes", "declined-for-change")
        ? applies(
            b,
            SettingKey.ABLE_OPPONENT,
            "an opponent could play it",
            "an opposing skater could have played the puck before the goal line")
        : Answer.NO;
  }

  /** A pass that a teammate could have received, where the book knows the exception. */
  static Answer receivablePass(IcingBook b, Facts f) {
    if (b.says(SettingKey.RECEIVABLE_PASS, "no") || f.is(PASS, "none")) {
      return Answer.NO;
    }
    if (b.says(SettingKey.RECEIVABLE_PASS, "linesperson") || f.unknown(PASS)) {
      return unknown(
          b,
          SettingKey.RECEIVABLE_PASS,
          PASS,
          "receivable pass",
          "unless the linesperson judged that a teammate could have received the pass");
    }
    return f.is(PASS, "receiver-past-center")
        ? applies(
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
      return unknown(
          b,
          SettingKey.TYPE,
          PUCK,
          "over the goal line",
          "if the puck wholly crossed the goal line");
    }
    if (f.is(PUCK, "short-of-goal-line")) {
      return applies(
          b, SettingKey.TYPE, "short of the goal line", "the puck never crossed the goal line");
    }
    return f.is(PUCK, "out-before-goal-line")
        ? new Answer.Applies(
            Reason.common("out of play", "the puck left the rink before it crossed the goal line"))
        : Answer.NO;
  }

  /** A goalkeeper who does not touch the puck but goes for it, where the book counts that. */
  static Answer goalkeeperCame(IcingBook b, Facts f) {
    boolean toward = b.says(SettingKey.GOALKEEPER, "moves-toward");
    boolean skates = b.says(SettingKey.GOALKEEPER, "both-skates-out");
    if (!toward && !skates) {
      return Answer.NO;
    }
    if (f.unknown(GOALKEEPER)) {
      return unknown(
          b,
          SettingKey.GOALKEEPER,
          GOALKEEPER,
          "goalkeeper",
          skates
              ? "unless the goalkeeper left the crease toward the puck with both skates"
              : "unless the goalkeeper moved toward the puck");
    }
    boolean came =
        f.is(GOALKEEPER, "both-skates-toward") || (toward && f.is(GOALKEEPER, "moved-toward"));
    return came
        ? applies(
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
    if (!f.is(RACE, "nobody")) {
      return Answer.NO;
    }
    if (b.says(SettingKey.TYPE, "touch")) {
      return applies(
          b,
          SettingKey.TYPE,
          "nobody touched it yet",
          "under touch icing play goes on until somebody touches the puck");
    }
    if (!b.says(SettingKey.TYPE, "hybrid") || b.says(SettingKey.NO_RACE, "nothing")) {
      return Answer.NO;
    }
    if (f.unknown(DEFENDER_BACK)) {
      return unknown(
          b,
          SettingKey.NO_RACE,
          DEFENDER_BACK,
          "nobody chased",
          "once a defending skater is past the own blue line");
    }
    return f.is(DEFENDER_BACK, "no")
        ? applies(
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
    if (touch && f.is(TOUCH, "opponent-after-line")) {
      return Answer.NO;
    }
    if (f.unknown(RACE)) {
      return unknown(
          b,
          SettingKey.TYPE,
          RACE,
          "the race",
          touch
              ? "if a defender touched the puck first"
              : "unless a teammate would have touched it first");
    }
    if (f.is(RACE, "level")) {
      return b.says(SettingKey.TIE, "waved-off")
          ? applies(b, SettingKey.TIE, "the race", "a race too close to call is waved off")
          : Answer.NO;
    }
    return f.is(RACE, "attacker")
        ? applies(
            b,
            SettingKey.TYPE,
            "the race",
            touch
                ? "a teammate touched the puck first"
                : "a teammate would have touched the puck first")
        : Answer.NO;
  }
}
