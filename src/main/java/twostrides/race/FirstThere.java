package twostrides.race;

import java.util.stream.IntStream;

/**
 * Who gets to a puck that dies on the ice: the first skater who can have his stick on it, on its
 * way or where it lies. For one thread.
 *
 * <p>Nobody is asked before the puck has gone {@link #FREE} metres: so near to the stick it left,
 * it is a block or a touch of the same player, and neither is in the model.
 */
final class FirstThere {

  /** Metres that a puck goes before anyone is asked. Assumed: two stick lengths. */
  static final double FREE = 3;

  /** Seconds between two looks at the path, far less than the arrival error. */
  private static final double STEP = 0.1;

  private final Crowd crowd;
  private final SkaterSettings legs;
  private final double scale;
  private final double headStart;
  private final int[] all;
  private boolean own;
  private double x;

  /**
   * Asks for the skaters of a scene.
   *
   * @param scene the release and who is there
   */
  FirstThere(Scene scene) {
    crowd = new Crowd(scene);
    all = IntStream.range(0, crowd.size()).toArray();
    legs = scene.skaters().settings().toPuck();
    headStart = scene.delivery().headStart();
    scale = Arrival.scale(legs.sigma());
  }

  /**
   * Finds who is first to a puck that comes to rest.
   *
   * @param path its path
   * @param start where the numbers of the draw start, {@link Draws#start}
   */
  void ask(PuckPath path, long start) {
    crowd.place(start, all);
    double end = path.endTime();
    double from = free(path, end);
    double chaser = Double.POSITIVE_INFINITY;
    double defender = Double.POSITIVE_INFINITY;
    for (int i = 0; i < crowd.size(); i++) {
      boolean chases = crowd.chases(i);
      double topSpeed = legs.topSpeed() * Crowd.legs(start, chases);
      double t = arrival(path, i, topSpeed, from, end) + scale * Crowd.error(start, i);
      if (chases) {
        chaser = Math.min(chaser, t + headStart);
      } else {
        defender = Math.min(defender, t);
      }
    }
    own = chaser < defender - RaceModel.LEVEL;
    x = path.xAt(Math.max(from, Math.min(end, Math.min(chaser, defender))));
  }

  /** Whether the team that let it go is first; a race too close to call counts as lost. */
  boolean own() {
    return own;
  }

  /** Where the puck is then, metres from center ice. */
  double x() {
    return x;
  }

  private static double free(PuckPath path, double end) {
    double t = 0;
    double x0 = path.xAt(0);
    double y0 = path.yAt(0);
    while (t < end && Math.hypot(path.xAt(t) - x0, path.yAt(t) - y0) < FREE) {
      t += STEP;
    }
    return Math.min(t, end);
  }

  private double arrival(PuckPath path, int i, double topSpeed, double from, double end) {
    for (double t = from; t < end; t += STEP) {
      if (path.heightAt(t) <= Looks.PLAYABLE && slack(path, i, topSpeed, t) >= 0) {
        return t;
      }
    }
    return Math.max(
        end,
        Skater.timeTo(
            path.xAt(end) - crowd.x(i),
            path.yAt(end) - crowd.y(i),
            crowd.vx(i),
            crowd.vy(i),
            topSpeed,
            legs.tau(),
            legs.reaction(),
            legs.reach()));
  }

  private double slack(PuckPath path, int i, double topSpeed, double t) {
    return Skater.slack(
        t,
        path.xAt(t) - crowd.x(i),
        path.yAt(t) - crowd.y(i),
        crowd.vx(i),
        crowd.vy(i),
        topSpeed,
        legs.tau(),
        legs.reaction(),
        legs.reach());
  }
}
