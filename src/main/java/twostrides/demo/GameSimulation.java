package twostrides.demo;

import twostrides.rink.Rink;

/** Plays one game from the first face-off to the last horn; a tie stands. */
final class GameSimulation {
  static final int PERIODS = 3;

  /**
   * Seconds of play that no single decision and its flight exceeds: a carrier with less left keeps
   * the puck until the horn, so that no puck is under way when a period ends.
   */
  private static final double LONGEST_DECISION_S = 24;

  private final Match match;
  private final Hands hands;
  private final OwnZonePlay ownZone;
  private final NeutralPlay neutral;
  private final EntryPlay entry;
  private final AttackPlay attack;

  private GameSimulation(Match match) {
    this.match = match;
    hands = new Hands(match);
    neutral = new NeutralPlay(hands);
    ownZone = new OwnZonePlay(hands, neutral);
    entry = new EntryPlay(hands);
    attack = new AttackPlay(hands);
  }

  /**
   * Plays a game.
   *
   * @param rink where
   * @param home the home team
   * @param away the visitors
   * @param chance the game's own
   */
  static Match play(Rink rink, Team home, Team away, Chance chance) {
    Match match = new Match(rink, home, away, chance);
    GameSimulation simulation = new GameSimulation(match);
    for (int period = 1; period <= PERIODS; period++) {
      if (period > 1) {
        match.clock.nextPeriod();
      }
      simulation.period();
    }
    return match;
  }

  private void period() {
    Next next = match.spots.center();
    while (match.clock.left() > 0) {
      next = next instanceof Next.Drop drop ? hands.faceOff(drop) : step((Carrier) next);
    }
  }

  private Next step(Carrier carrier) {
    if (match.clock.left() < LONGEST_DECISION_S) {
      hands.whistle.horn(carrier);
      return match.spots.center();
    }
    return hands.interrupted(carrier).orElseGet(() -> withPuck(carrier));
  }

  private Next withPuck(Carrier carrier) {
    if (match.spots.inOwnZone(carrier.at())) {
      return ownZone.decide(carrier);
    }
    if (match.shortOfCenter(carrier.at())) {
      return neutral.decide(carrier, true);
    }
    return match.spots.inAttackingZone(carrier.at())
        ? attack.decide(carrier)
        : entry.decide(carrier);
  }
}
