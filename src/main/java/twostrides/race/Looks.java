package twostrides.race;

import java.util.List;
import java.util.stream.DoubleStream;
import twostrides.race.puck.PuckPath;
import twostrides.rink.Place;

/**
 * Looks at a puck's path before the far goal line and after it: is the puck in a skater's disc by
 * then.
 *
 * <p>Between two looks gap and radius are taken as straight lines, which is off by a few hundredths
 * of a second at most, far less than the arrival error.
 *
 * @param looks the looks, in the order of time
 */
record Looks(List<Look> looks) {

  /** Greatest height at which a stick plays a puck on its way, m. Assumed: shoulder height. */
  static final double PLAYABLE = 1.2;

  /** Looks before the line and at it, as shares of the time to it. */
  private static final double[] BEFORE = {0.35, 0.65, 0.85, 1};

  /** Looks after it, seconds past it. */
  private static final double[] AFTER = {0.5, 1.2, 2.2, 4};

  /**
   * One look.
   *
   * @param time seconds since the release
   * @param puck where the puck is
   * @param playable whether it is low enough for a stick
   */
  record Look(double time, Place puck, boolean playable) {

    /**
     * A look at a path.
     *
     * @param path the puck
     * @param time seconds since the release
     */
    static Look at(PuckPath path, double time) {
      return new Look(time, path.placeAt(time), path.heightAt(time) <= PLAYABLE);
    }

    /** How far the puck is outside a skater's disc, m. */
    double late(Racer racer, Skater legs) {
      return -legs.slack(time, racer, puck);
    }
  }

  /**
   * Looks at a path.
   *
   * @param path the puck
   * @param line seconds until it is wholly past the far goal line
   */
  static Looks of(PuckPath path, double line) {
    return new Looks(
        DoubleStream.concat(
                DoubleStream.of(BEFORE).map(share -> share * line),
                DoubleStream.of(AFTER).map(after -> line + after))
            .mapToObj(t -> Look.at(path, t))
            .toList());
  }

  /**
   * When a skater first can have his stick on the puck, seconds since the release. After the last
   * look he goes on to where the puck was then.
   *
   * @param racer the skater
   * @param legs what he can do
   */
  double arrival(Racer racer, Skater legs) {
    double before = 0;
    for (int k = 0; k < looks.size(); k++) {
      Look look = looks.get(k);
      double late = look.late(racer, legs);
      if (look.playable() && late <= 0) {
        return before <= 0 ? look.time() : between(looks.get(k - 1), look, before, late);
      }
      before = late;
    }
    return looks.get(looks.size() - 1).time() + Math.max(0, before) / legs.topSpeed();
  }

  private static double between(Look from, Look to, double before, double late) {
    return from.time() + (to.time() - from.time()) * before / (before - late);
  }
}
