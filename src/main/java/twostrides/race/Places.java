package twostrides.race;

import java.util.List;
import java.util.stream.IntStream;
import twostrides.race.SeededRandom.Simulation;

/**
 * Where skaters are when no sheet says: five of each team, simulated about the release. Every
 * number here is assumed; whoever has positions should give them.
 */
final class Places {

  /** Skaters of each team. */
  private static final int A_SIDE = 5;

  /** Opponents who forecheck, and forwards of the releasing team; the others stay back. */
  private static final int FORECHECKERS = 3;

  private Places() {}

  /**
   * Five skaters of each team, those of the releasing team first.
   *
   * @param scene the release
   * @param luck the random numbers of the simulation
   */
  static List<Racer> simulated(Scene scene, Simulation luck) {
    return IntStream.range(0, 2 * A_SIDE)
        .mapToObj(i -> skater(scene, luck, i, i < A_SIDE, i % A_SIDE < FORECHECKERS))
        .toList();
  }

  private static Racer skater(
      Scene scene, Simulation luck, int skater, boolean chases, boolean forward) {
    int variable = Crowd.variable(skater);
    double u = luck.uniform(variable);
    double y = (2 * luck.uniform(variable + 1) - 1) * (scene.rink().width() / 2 - 1);
    double speed = luck.uniform(variable + 2);
    double turn = luck.uniform(variable + 3) - 0.5;
    double x = scene.x();
    if (chases) {
      // Forwards ahead of the puck or level with it, defenders behind; all moving up ice.
      return forward
          ? new Racer(true, x + (-3 + 11 * u), y, 3 + 4 * speed, 3 * turn)
          : new Racer(true, x + (-9 + 8 * u), y, 1 + 3 * speed, 3 * turn);
    }
    // Forecheckers near the puck, who come down ice and must turn; defenders hold the far side of
    // the puck, backing up.
    return forward
        ? new Racer(false, x - 6 + 14 * u, y, -4 + 5 * speed, 4 * turn)
        : new Racer(false, x + 6 + 12 * u, y, 1 + 3.5 * speed, 3 * turn);
  }
}
