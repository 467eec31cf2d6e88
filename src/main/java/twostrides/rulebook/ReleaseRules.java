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

  private static final String SHORTHANDED = "shorthanded";

  private ReleaseRules() {}

  /** Batted by hand or kicked the length of the ice into the net: no goal, and no icing. */
  static Answer noLegalGoal(IcingBook b, Facts f) {
    return f.is(Fact.PUCK_IN_NET)
            && f.is(Fact.CONTACT_HAND, Fact.CONTACT_KICK)
            && b.says(Choice.HAND_OR_KICK_IN_NO_GOAL)
        ? b.basis("no legal goal", SettingKey.HAND_OR_KICK_IN)
            .applies("a puck batted by hand or kicked into the net is no goal, and no icing")
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
    return b.says(Choice.TYPE_NONE)
        ? b.basis("no icing in this book", SettingKey.TYPE).applies("this book never calls icing")
        : Answer.NO;
  }

  /**
   * Offside comes first only when the offside player would get the puck or make contact; else the
   * icing is let finish.
   */
  static Answer offsideFirst(IcingBook b, Facts f) {
    if (b.says(Choice.OFFSIDE_NO_RULE)) {
      return Answer.NO;
    }
    Basis basis = b.basis("offside first", SettingKey.OFFSIDE);
    if (f.unknown(OFFSIDE)) {
      return basis.unknown(
          OFFSIDE, "unless an offside player would have reached it first or made contact");
    }
    return f.is(Fact.OFFSIDE_FIRST_OR_CONTACT)
        ? basis.applies(
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
    Basis origin = b.basis("gained the line", SettingKey.ORIGIN);
    Basis gainedBy = b.basis("gained the line", SettingKey.GAINED_BY);
    boolean blue = b.says(Choice.ORIGIN_OWN_BLUE_LINE);
    if (f.unknown(FROM)) {
      return origin.unknown(
          FROM,
          blue
              ? "if it was last played behind the own blue line"
              : "if it was last played short of the red line");
    }
    if (blue) {
      return f.is(Fact.FROM_OWN_ZONE)
          ? Answer.NO
          : origin.applies("only a puck sent from behind the own blue line is iced");
    }
    boolean stickOnly = b.says(Choice.GAINED_BY_STICK);
    if (f.is(Fact.FROM_PAST_THE_LINE)) {
      if (stickOnly && f.unknown(OVER_CENTER)) {
        return gainedBy.unknown(
            OVER_CENTER, "unless it was on a stick when it came over the red line");
      }
      return stickOnly && !f.is(Fact.OVER_CENTER_STICK)
          ? Answer.NO
          : origin.applies("the puck was past the red line when it was last played");
    }
    if (!f.is(Fact.FROM_ON_THE_LINE)) {
      return Answer.NO;
    }
    if (stickOnly && f.unknown(CONTACT)) {
      return gainedBy.unknown(CONTACT, "unless it was on a stick when it touched the red line");
    }
    boolean offTheStick =
        f.is(Fact.CONTACT_SKATE, Fact.CONTACT_KICK, Fact.CONTACT_HAND, Fact.CONTACT_BODY);
    return stickOnly && offTheStick
        ? Answer.NO
        : gainedBy.applies("the puck touched the red line when it was last played");
  }

  /** A kick is a way to ice the puck only where the book lists it. */
  static Answer kicked(IcingBook b, Facts f) {
    if (b.says(Choice.KICK_COUNTS_YES)) {
      return Answer.NO;
    }
    Basis basis = b.basis("kicked", SettingKey.KICK_COUNTS);
    if (f.unknown(CONTACT)) {
      return basis.unknown(CONTACT, "unless it was kicked");
    }
    return f.is(Fact.CONTACT_KICK)
        ? basis.applies("a kick is not among the ways to ice the puck that this book lists")
        : Answer.NO;
  }

  /**
   * Below strength at the instant of release because of penalties being served. A penalty that ends
   * after the release changes nothing; one that ended before it does, even with the player still in
   * the box; the exact instant follows the book's convention.
   */
  static Answer shorthanded(IcingBook b, Facts f) {
    if (b.says(Choice.SHORTHANDED_EXEMPT_NO)) {
      return Answer.NO;
    }
    Basis exempt = b.basis(SHORTHANDED, SettingKey.SHORTHANDED_EXEMPT);
    if (f.unknown(STRENGTH)) {
      return exempt.unknown(STRENGTH, "unless the team was shorthanded");
    }
    return switch (f.get(STRENGTH)) {
      case STRENGTH_SHORTHANDED, STRENGTH_ONE_OF_TWO_ENDED, STRENGTH_ENDED_AFTER_RELEASE ->
          exempt.applies("a team shorthanded at the instant of release may ice the puck");
      case STRENGTH_ENDED_AT_RELEASE ->
          exemptWhere(
              b,
              Choice.AT_EXPIRY_STILL_SERVED,
              "a penalty counts as served at the very instant of its expiry");
      case STRENGTH_SHORT_NO_PENALTY ->
          exemptWhere(
              b,
              Choice.SHORT_NEEDS_PENALTY_NO,
              "a team with fewer skaters for any reason may ice the puck");
      case STRENGTH_EXPIRED_MAJOR_EMPTY_BOX ->
          exemptWhere(
              b,
              Choice.EXPIRED_MAJOR_EXEMPT_YES,
              "a team still a skater down after an expired major may ice the puck");
      default -> Answer.NO;
    };
  }

  private static Answer exemptWhere(IcingBook b, Choice said, String text) {
    return b.says(said) ? b.basis(SHORTHANDED, said.key()).applies(text) : Answer.NO;
  }

  /** Straight off the first contact of a face-off, whoever took it. */
  static Answer straightFromFaceOff(IcingBook b, Facts f) {
    if (b.says(Choice.FACE_OFF_EXEMPT_NO)) {
      return Answer.NO;
    }
    Basis basis = b.basis("straight from a face-off", SettingKey.FACE_OFF_EXEMPT);
    if (f.unknown(FACE_OFF)) {
      return basis.unknown(FACE_OFF, "unless it came straight from a face-off");
    }
    return f.is(Fact.FACE_OFF_STRAIGHT)
        ? basis.applies(
            "the first contact of a face-off that sends the puck the length is no icing")
        : Answer.NO;
  }

  /** The other team's shot came back off this team's player: nobody iced it. */
  static Answer reboundOffThisTeam(IcingBook b, Facts f) {
    return f.is(Fact.TOUCH_SHOT_REBOUND_OFF_THIS_TEAM) && b.says(Choice.REBOUND_NO_ICING)
        ? b.basis("rebound", SettingKey.REBOUND)
            .applies(
                "a puck that rebounds off an opponent over the shooter's own goal line is no icing")
        : Answer.NO;
  }

  /** Last played past the line, by a teammate: the contact that counts is his. */
  static Answer teammatePastCenter(IcingBook b, Facts f) {
    return f.is(Fact.TOUCH_TEAMMATE_PAST_CENTER)
        ? b.basis("teammate past center", SettingKey.GAINED_BY)
            .applies("a teammate touched the puck past the red line, so it was last played there")
        : Answer.NO;
  }

  /** A puck off an official plays on, unless the book says otherwise. */
  static Answer offAnOfficial(IcingBook b, Facts f) {
    return f.is(Fact.TOUCH_OFFICIAL) && b.says(Choice.OFFICIAL_NULLIFIES)
        ? b.basis("off an official", SettingKey.OFFICIAL)
            .applies("a puck that glances off an official is not iced")
        : Answer.NO;
  }
}
