package twostrides.demo;

import java.util.EnumMap;
import twostrides.demo.Skater.Habits;
import twostrides.demo.Skater.Role;

/** What a player with the puck in the own zone means to do. All weights are assumed. */
enum OwnZoneIntent {
  TEAMMATE,
  CARRY,
  PASS,
  CHIP,
  LONG,
  EMPTY_NET;

  static OwnZoneIntent draw(Match match, Carrier c) {
    EnumMap<OwnZoneIntent, Double> w = usual(c.pressure());
    if (c.skater().role() == Role.GOALKEEPER) {
      scale(w, CARRY, 0);
      scale(w, CHIP, 0);
      scale(w, PASS, 0.3);
      scale(w, TEAMMATE, 3);
    }
    Habits habits = c.skater().habits();
    double hurry = c.pressure() == Pressure.HEAVY ? 1 : 0.5 + 0.5 * habits.hurry();
    scale(w, CARRY, habits.carry());
    scale(w, CHIP, hurry);
    scale(w, LONG, hurry);
    switch (match.box.manpower(c.side())) {
      case EVEN -> {}
      case SHORTHANDED -> {
        scale(w, TEAMMATE, 0.6);
        scale(w, CARRY, 0.6);
        scale(w, PASS, 0.4);
        scale(w, CHIP, 1.3);
        scale(w, LONG, 7);
      }
      case POWER_PLAY -> {
        scale(w, CARRY, 1.5);
        scale(w, CHIP, 0.15);
        scale(w, LONG, 0.05);
      }
    }
    if (match.netEmpty(c.side().other())
        && match.lead(c.side()) > 0
        && c.skater().role() != Role.GOALKEEPER) {
      w.put(EMPTY_NET, 30.0);
    }
    return match.dice.choose(w);
  }

  private static EnumMap<OwnZoneIntent, Double> usual(Pressure pressure) {
    return switch (pressure) {
      case NONE -> weights(26, 84, 38, 1.0, 1.2);
      case LIGHT -> weights(23, 50, 40, 5, 3.2);
      case HEAVY -> weights(26, 12, 36, 12, 7.5);
    };
  }

  private static EnumMap<OwnZoneIntent, Double> weights(double... weights) {
    return Play.weights(OwnZoneIntent.class, weights);
  }

  private static void scale(
      EnumMap<OwnZoneIntent, Double> weights, OwnZoneIntent intent, double factor) {
    weights.computeIfPresent(intent, (key, weight) -> weight * factor);
  }
}
