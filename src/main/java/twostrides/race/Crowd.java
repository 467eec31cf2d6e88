package twostrides.race;

import java.util.List;
import twostrides.race.SeededRandom.Simulation;

/**
 * The skaters of one simulation: those who are known, or, where nobody is, five of each team placed
 * anew; with the legs of either team and the arrival error of each.
 *
 * @param racers who is there
 * @param luck the random numbers of the simulation
 * @param legs what a skater of the game can do in a race to a loose puck
 * @param headStart seconds by which the other team is ahead
 */
record Crowd(List<Racer> racers, Simulation luck, SkaterSettings legs, double headStart) {

  /** Random numbers of a skater: place along and across, speed, direction, arrival error. */
  private static final int VARIABLES = 5;

  private static final int ICING_TEAM_LEGS = 6;
  private static final int OTHER_LEGS = 7;
  private static final int FIRST_SKATER = 8;

  /**
   * The skaters of a scene.
   *
   * @param scene the release and who is there
   * @param luck the random numbers of the simulation
   */
  static Crowd of(Scene scene, Simulation luck) {
    return new Crowd(
        scene.racers().isEmpty() ? Places.simulated(scene, luck) : scene.racers(),
        luck,
        scene.skaters().settings().toPuck(),
        scene.delivery().headStart());
  }

  /** First of a skater's random numbers, by his place in the list. */
  static int variable(int skater) {
    return FIRST_SKATER + VARIABLES * skater;
  }

  /** When somebody is where the puck is. */
  interface Arrival {

    /**
     * Seconds since the release, error left out.
     *
     * @param racer the skater
     * @param legs what he can do in this simulation
     */
    double of(Racer racer, Skater legs);
  }

  /**
   * When the first of a team is there, error left out, seconds since the release; infinite for a
   * team of none.
   *
   * @param chasing the team that let the puck go, or the other
   * @param arrival when somebody is there
   */
  double soonest(boolean chasing, Arrival arrival) {
    Skater team = team(chasing);
    return racers.stream()
        .filter(r -> r.chases() == chasing)
        .mapToDouble(r -> arrival.of(r, team))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /**
   * When the first of a team is there, errors and head start in it, seconds since the release;
   * infinite for a team of none.
   *
   * @param chasing the team that let the puck go, or the other
   * @param arrival when somebody is there
   */
  double first(boolean chasing, Arrival arrival) {
    Skater team = team(chasing);
    double first = Double.POSITIVE_INFINITY;
    for (int i = 0; i < racers.size(); i++) {
      if (racers.get(i).chases() == chasing) {
        double error = legs.errorScale() * luck.logistic(variable(i) + VARIABLES - 1);
        first = Math.min(first, arrival.of(racers.get(i), team) + error);
      }
    }
    return first + (chasing ? headStart : 0);
  }

  /** A team's legs in this simulation: top speed 10 % either side, the level's own range. */
  private Skater team(boolean chasing) {
    double share = luck.triangular(chasing ? ICING_TEAM_LEGS : OTHER_LEGS, 0.9, 1, 1.1);
    return legs.withSprint(share * legs.topSpeed(), legs.tau()).skater();
  }
}
