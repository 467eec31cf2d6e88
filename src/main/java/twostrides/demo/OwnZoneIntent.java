package twostrides.demo;

import java.util.Arrays;
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

  /** Factors in the order above, but for the empty net. */
  private static final double[] SKATER = {1, 1, 1, 1, 1};

  private static final double[] GOALKEEPER = {3, 0, 0.3, 0, 1};
  private static final double[] EVEN = {1, 1, 1, 1, 1};
  private static final double[] SHORTHANDED = {0.6, 0.6, 0.4, 1.3, 7};
  private static final double[] POWER_PLAY = {1, 1.5, 1, 0.15, 0.05};

  static OwnZoneIntent choose(Match match, Carrier c) {
    boolean keeper = c.skater().role() == Role.GOALKEEPER;
    Habits habits = c.skater().habits();
    double hurry = c.pressure() == Pressure.HEAVY ? 1 : 0.5 + 0.5 * habits.hurry();
    double[] own = {1, habits.carry(), 1, hurry, hurry};
    double[] manpower =
        switch (match.box.manpower(c.side())) {
          case EVEN -> EVEN;
          case SHORTHANDED -> SHORTHANDED;
          case POWER_PLAY -> POWER_PLAY;
        };
    double[] weights = usual(c.pressure());
    Arrays.setAll(
        weights, i -> weights[i] * (keeper ? GOALKEEPER : SKATER)[i] * own[i] * manpower[i]);
    EnumMap<OwnZoneIntent, Double> w = Play.weights(OwnZoneIntent.class, weights);
    if (match.netEmpty(c.side().other()) && match.lead(c.side()) > 0 && !keeper) {
      w.put(EMPTY_NET, 30.0);
    }
    return match.dice.choose(w);
  }

  private static double[] usual(Pressure pressure) {
    return switch (pressure) {
      case NONE -> new double[] {26, 84, 38, 1.0, 1.2};
      case LIGHT -> new double[] {23, 50, 40, 5, 3.2};
      case HEAVY -> new double[] {26, 12, 36, 12, 7.5};
    };
  }
}
