package twostrides.rulebook;

import static twostrides.rulebook.FactKey.CONTACT;
import static twostrides.rulebook.FactKey.FACE_OFF;
import static twostrides.rulebook.FactKey.FROM;
import static twostrides.rulebook.FactKey.OFFSIDE;
import static twostrides.rulebook.FactKey.OVER_CENTER;
import static twostrides.rulebook.FactKey.STRENGTH;

/**
 * The rules about the release itself: where, with what, by whom, and whether the net or an offside
 * comes first. Each is a method that says why it applies.
 */
final class ReleaseRules {

  private ReleaseRules() {}

  /** Batted by hand or kicked the length of the ice into the net: no goal, and no icing. */
  static Answer noLegalGoal(IcingBook b, Facts f) {
    return f.is(Fact.PUCK_IN_NET)
            && f.isOne(Fact.CONTACT_HAND, Fact.CONTACT_KICK)
            && b.says(SettingKey.HAND_OR_KICK_IN, "no-goal")
        ? Answer.applies(
            b,
            SettingKey.HAND_OR_KICK_IN,
            "no legal goal",
            "a puck batted by hand or kicked into the net is no goal, and no icing")
        : Answer.NO;
  }

  /** In the net is a goal: the goal line is crossed between the posts. */
  static Answer inTheNet(IcingBook b, Facts f) {
    return f.is(Fact.PUCK_IN_NET)
        ? new Answer.Applies(Reason.common("in the net", "a puck that goes in the net is a goal"))
        : Answer.NO;
  }

  /** Some categories play without icing. */
  static Answer neverCalled(IcingBook b, Facts f) {
    return b.says(SettingKey.TYPE, "none")
        ? Answer.applies(b, SettingKey.TYPE, "no icing in this book", "this book never calls icing")
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
      return Answer.unknown(
          b,
          SettingKey.OFFSIDE,
          OFFSIDE,
          "offside first",
          "unless an offside player would have reached it first or made contact");
    }
    return f.is(Fact.OFFSIDE_FIRST_OR_CONTACT)
        ? Answer.applies(
            b,
            SettingKey.OFFSIDE,
            "offside first",
            "an offside player who would reach the puck first or make contact stops play for"
                + " offside at once")
        : Answer.NO;
  }

  /**
   * Gained: the puck touched the line, or was past it, when it was last played; where the book
   * speaks of the stick, a puck that is on the line, or came over it, off a skate, a hand or the
   * body gains nothing, from wherever it is sent on.
   */
  static Answer gainedTheLine(IcingBook b, Facts f) {
    boolean blue = b.says(SettingKey.ORIGIN, "own-blue-line");
    if (f.unknown(FROM)) {
      return Answer.unknown(
          b,
          SettingKey.ORIGIN,
          FROM,
          "gained the line",
          blue
              ? "if it was last played behind the own blue line"
              : "if it was last played short of the red line");
    }
    if (blue) {
      return f.is(Fact.FROM_OWN_ZONE)
          ? Answer.NO
          : Answer.applies(
              b,
              SettingKey.ORIGIN,
              "gained the line",
              "only a puck sent from behind the own blue line is iced");
    }
    boolean stickOnly = b.says(SettingKey.GAINED_BY, "stick");
    if (f.is(Fact.FROM_PAST_THE_LINE) && stickOnly && f.unknown(OVER_CENTER)) {
      return Answer.unknown(
          b,
          SettingKey.GAINED_BY,
          OVER_CENTER,
          "gained the line",
          "unless it was on a stick when it came over the red line");
    }
    if (f.is(Fact.FROM_PAST_THE_LINE) && (!stickOnly || f.is(Fact.OVER_CENTER_STICK))) {
      return Answer.applies(
          b,
          SettingKey.ORIGIN,
          "gained the line",
          "the puck was past the red line when it was last played");
    }
    if (f.is(Fact.FROM_ON_THE_LINE) && stickOnly && f.unknown(CONTACT)) {
      return Answer.unknown(
          b,
          SettingKey.GAINED_BY,
          CONTACT,
          "gained the line",
          "unless it was on a stick when it touched the red line");
    }
    boolean offTheStick =
        f.isOne(Fact.CONTACT_SKATE, Fact.CONTACT_KICK)
            || f.isOne(Fact.CONTACT_HAND, Fact.CONTACT_BODY);
    if (f.is(Fact.FROM_ON_THE_LINE) && !(offTheStick && stickOnly)) {
      return Answer.applies(
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
      return Answer.unknown(b, SettingKey.KICK_COUNTS, CONTACT, "kicked", "unless it was kicked");
    }
    return f.is(Fact.CONTACT_KICK) && b.says(SettingKey.KICK_COUNTS, "no")
        ? Answer.applies(
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
      return Answer.unknown(
          b,
          SettingKey.SHORTHANDED_EXEMPT,
          STRENGTH,
          "shorthanded",
          "unless the team was shorthanded");
    }
    return switch (f.get(STRENGTH)) {
      case STRENGTH_SHORTHANDED, STRENGTH_ONE_OF_TWO_ENDED, STRENGTH_ENDED_AFTER_RELEASE ->
          exempt(
              b,
              SettingKey.SHORTHANDED_EXEMPT,
              "a team shorthanded at the instant of release may ice the puck");
      case STRENGTH_ENDED_AT_RELEASE ->
          b.says(SettingKey.AT_EXPIRY, "still-served")
              ? exempt(
                  b,
                  SettingKey.AT_EXPIRY,
                  "a penalty counts as served at the very instant of its expiry")
              : Answer.NO;
      case STRENGTH_SHORT_NO_PENALTY ->
          b.says(SettingKey.SHORT_NEEDS_PENALTY, "no")
              ? exempt(
                  b,
                  SettingKey.SHORT_NEEDS_PENALTY,
                  "a team with fewer skaters for any reason may ice the puck")
              : Answer.NO;
      case STRENGTH_EXPIRED_MAJOR_EMPTY_BOX ->
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
    return Answer.applies(b, key, "shorthanded", text);
  }

  /** Straight off the first contact of a face-off, whoever took it. */
  static Answer straightFromFaceOff(IcingBook b, Facts f) {
    if (b.says(SettingKey.FACE_OFF_EXEMPT, "no")) {
      return Answer.NO;
    }
    if (f.unknown(FACE_OFF)) {
      return Answer.unknown(
          b,
          SettingKey.FACE_OFF_EXEMPT,
          FACE_OFF,
          "straight from a face-off",
          "unless it came straight from a face-off");
    }
    return f.is(Fact.FACE_OFF_STRAIGHT)
        ? Answer.applies(
            b,
            SettingKey.FACE_OFF_EXEMPT,
            "straight from a face-off",
            "the first contact of a face-off that sends the puck the length is no icing")
        : Answer.NO;
  }

  /** The other team's shot came back off this team's player: nobody iced it. */
  static Answer reboundOffThisTeam(IcingBook b, Facts f) {
    return f.is(Fact.TOUCH_SHOT_REBOUND_OFF_THIS_TEAM) && b.says(SettingKey.REBOUND, "no-icing")
        ? Answer.applies(
            b,
            SettingKey.REBOUND,
            "rebound",
            "a puck that rebounds off an opponent over the shooter's own goal line is no icing")
        : Answer.NO;
  }

  /** Last played past the line, by a teammate: the contact that counts is his. */
  static Answer teammatePastCenter(IcingBook b, Facts f) {
    return f.is(Fact.TOUCH_TEAMMATE_PAST_CENTER)
        ? Answer.applies(
            b,
            SettingKey.GAINED_BY,
            "teammate past center",
            "a teammate touched the puck past the red line, so it was last played there")
        : Answer.NO;
  }

  /** A puck off an official plays on, unless the book says otherwise. */
  static Answer offAnOfficial(IcingBook b, Facts f) {
    return f.is(Fact.TOUCH_OFFICIAL) && b.says(SettingKey.OFFICIAL, "nullifies")
        ? Answer.applies(
            b,
            SettingKey.OFFICIAL,
            "off an official",
            "a puck that glances off an official is not iced")
        : Answer.NO;
  }
}
