package twostrides.rulebook;

import java.util.List;
import twostrides.rulebook.Rule.Effect;

/**
 * The rules that keep a puck sent the length of the ice from being an icing, in the order in which
 * they are asked. Whatever passes them all is one.
 */
final class IcingRules {

  /**
   * Every rule in the order in which it is asked: first those that find something missing which
   * makes an icing, so that only a puck with nothing missing can be waved off. Within each of the
   * two the order decides which reason is given where two apply, nothing else.
   */
  static final List<Rule> IN_ORDER =
      List.of(
          new Rule(Effect.NO_ICING, ReleaseRules::offsideFirst),
          new Rule(Effect.NO_ICING, ReleaseRules::noLegalGoal),
          new Rule(Effect.GOAL, ReleaseRules::inTheNet),
          new Rule(Effect.NO_ICING, ReleaseRules::neverCalled),
          new Rule(Effect.NO_ICING, ReleaseRules::gainedTheLine),
          new Rule(Effect.NO_ICING, ReleaseRules::kicked),
          new Rule(Effect.NO_ICING, ReleaseRules::shorthanded),
          new Rule(Effect.NO_ICING, ReleaseRules::straightFromFaceOff),
          new Rule(Effect.NO_ICING, ReleaseRules::reboundOffThisTeam),
          new Rule(Effect.NO_ICING, ReleaseRules::teammatePastCenter),
          new Rule(Effect.NO_ICING, ReleaseRules::offAnOfficial),
          new Rule(Effect.NO_ICING, WayRules::touchedOnTheWay),
          new Rule(Effect.NO_ICING, WayRules::diedBeforeTheLine),
          new Rule(Effect.WAVED_OFF, WayRules::touchedPastTheLine),
          new Rule(Effect.WAVED_OFF, WayRules::offTheBackOfTheNet),
          new Rule(Effect.WAVED_OFF, WayRules::leftAlone),
          new Rule(Effect.WAVED_OFF, WayRules::opponentCouldPlay),
          new Rule(Effect.WAVED_OFF, WayRules::receivablePass),
          new Rule(Effect.WAVED_OFF, WayRules::goalkeeperCame),
          new Rule(Effect.NOT_YET, WayRules::nobodyChased),
          new Rule(Effect.WAVED_OFF, WayRules::attackerFirst));

  private IcingRules() {}
}
