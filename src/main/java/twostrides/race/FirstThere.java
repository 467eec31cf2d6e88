package twostrides.race;

import twostrides.race.SeededRandom.Simulation;
import twostrides.race.puck.PuckPath;

/**
 * Who gets to a puck that dies on the ice: the first skater who can have his stick on it, on its
 * way or where it lies.
 *
 * <p>Nobody is asked before the puck has gone {@link #FREE} metres: so near to the stick it left,
 * it is a block or a touch of the same player, and neither is in the model.
 *
 * @param own whether the team that let it go is first; a race too close to call counts as lost
 * @param x where the puck is then, metres from center ice
 */
record FirstThere(boolean own, double x) {

  /** Metres that a puck goes before anyone is asked. Assumed: two stick lengths. */
  static final double FREE = 3;

  /** Seconds between two looks at the path, far less than the arrival error. */
  private static final double STEP = 0.1;

  /**
   * Finds who is first to a puck that comes to rest.
   *
   * @param scene the release and who is there
   * @param path the puck's path
   * @param luck the random numbers of the simulation
   */
  static FirstThere of(Scene scene, PuckPath path, Simulation luck) {
    Crowd crowd = Crowd.of(scene, luck);
    double end = path.endTime();
    double from = free(path, end);
    double chaser = crowd.first(true, (r, legs) -> arrival(path, from, r, legs));
    double defender = crowd.first(false, (r, legs) -> arrival(path, from, r, legs));
    double first = Math.max(from, Math.min(end, Math.min(chaser, defender)));
    return new FirstThere(chaser < defender - RaceModel.LEVEL, path.placeAt(first).x());
  }

  private static double free(PuckPath path, double end) {
    double t = 0;
    while (t < end && path.placeAt(t).distanceTo(path.placeAt(0)) < FREE) {
      t += STEP;
    }
    return Math.min(t, end);
  }

  private static double arrival(PuckPath path, double from, Racer racer, SkaterSettings legs) {
    double end = path.endTime();
    for (double t = from; t < end; t += STEP) {
      if (path.heightAt(t) <= Looks.PLAYABLE
          && Skater.slack(t, racer, path.placeAt(t), legs) >= 0) {
        return t;
      }
    }
    return Math.max(end, Skater.timeTo(racer, path.endPlace(), legs));
  }
}
