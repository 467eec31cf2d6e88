package twostrides.race;

import java.util.List;
import java.util.stream.DoubleStream;
import twostrides.race.Looks.Look;
import twostrides.race.SeededRandom.Simulation;
import twostrides.race.puck.PuckPath;
import twostrides.rink.Place;

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
    double from = free(path);
    List<Look> looks =
        DoubleStream.iterate(from, t -> t < end, t -> t + STEP)
            .mapToObj(t -> Look.at(path, t))
            .filter(Look::playable)
            .toList();
    Crowd.Arrival arrival =
        (racer, legs) ->
            looks.stream()
                .filter(look -> look.late(racer, legs) <= 0)
                .mapToDouble(Look::time)
                .findFirst()
                .orElseGet(() -> Math.max(end, legs.timeTo(racer, path.endPlace())));
    double chaser = crowd.first(true, arrival);
    double defender = crowd.first(false, arrival);
    double first = Math.max(from, Math.min(end, Math.min(chaser, defender)));
    return new FirstThere(chaser < defender - RaceModel.LEVEL, path.placeAt(first).x());
  }

  /** When the puck has gone {@link #FREE} metres, or lies still, seconds. */
  private static double free(PuckPath path) {
    Place release = path.placeAt(0);
    return DoubleStream.iterate(0, t -> t < path.endTime(), t -> t + STEP)
        .filter(t -> path.placeAt(t).distanceTo(release) >= FREE)
        .findFirst()
        .orElse(path.endTime());
  }
}
