package twostrides.race;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The skaters of a race: those who are known, or, where nobody is, five of each team drawn anew in
 * every draw. For one thread.
 */
final class Crowd {

  private static final int ICING_TEAM_LEGS = 6;
  private static final int OTHER_LEGS = 7;
  private static final int FIRST_SKATER = 8;

  private final int known;
  private final double releaseX;
  private final double halfWidth;
  private final double[] state;
  private final boolean[] chases;

  Crowd(Scene scene) {
    List<Racer> racers = scene.racers();
    known = racers.size();
    releaseX = scene.x();
    halfWidth = scene.rink().width() / 2;
    int n = known == 0 ? 2 * Places.A_SIDE : known;
    state = new double[Places.VARIABLES * n];
    chases = new boolean[n];
    for (int i = 0; i < known; i++) {
      Racer r = racers.get(i);
      int at = Places.VARIABLES * i;
      chases[i] = r.chases();
      state[at] = r.x();
      state[at + 1] = r.y();
      state[at + 2] = r.vx();
      state[at + 3] = r.vy();
    }
    for (int i = known; i < n; i++) {
      chases[i] = i < Places.A_SIDE;
    }
  }

  /**
   * Puts skaters in their places for a draw.
   *
   * @param start where the numbers of the draw start, {@link Draws#start}
   * @param team their numbers here
   */
  void place(long start, int[] team) {
    for (int skater : team) {
      if (skater >= known) {
        Places.draw(
            state,
            Places.VARIABLES * skater,
            chases[skater],
            skater % Places.A_SIDE,
            releaseX,
            halfWidth,
            start,
            variables(skater));
      }
    }
  }

  int size() {
    return chases.length;
  }

  /**
   * The skaters of one team, by their numbers here.
   *
   * @param chasing the team that let the puck go, or the other
   */
  int[] team(boolean chasing) {
    return IntStream.range(0, chases.length).filter(i -> chases[i] == chasing).toArray();
  }

  /** Whether a skater plays for the team that let the puck go. */
  boolean chases(int skater) {
    return chases[skater];
  }

  /**
   * The square of the distance from a place to where a skater would drift, m2.
   *
   * @param skater his number here, in his place
   * @param toX metres from center ice
   * @param toY metres from the long axis
   * @param drift seconds that he drifts
   */
  double squared(int skater, double toX, double toY, double drift) {
    int at = Places.VARIABLES * skater;
    double dx = toX - state[at] - state[at + 2] * drift;
    double dy = toY - state[at + 1] - state[at + 3] * drift;
    return dx * dx + dy * dy;
  }

  double x(int skater) {
    return state[Places.VARIABLES * skater];
  }

  double y(int skater) {
    return state[Places.VARIABLES * skater + 1];
  }

  double vx(int skater) {
    return state[Places.VARIABLES * skater + 2];
  }

  double vy(int skater) {
    return state[Places.VARIABLES * skater + 3];
  }

  /** A skater's arrival error in a draw, in scales of the logistic. */
  static double error(long start, int skater) {
    return Arrival.logisticDraw(chance(start, skater));
  }

  /** The chance that a skater's arrival error in a draw is less than it is. */
  static double chance(long start, int skater) {
    return Draws.uniform(start, variables(skater) + Places.VARIABLES);
  }

  /**
   * A team's legs in a draw: top speed 10 % either side, the level's own range.
   *
   * @param chases the team that let the puck go
   */
  static double legs(long start, boolean chases) {
    return Draws.triangular(
        Draws.uniform(start, chases ? ICING_TEAM_LEGS : OTHER_LEGS), 0.9, 1, 1.1);
  }

  private static int variables(int skater) {
    return FIRST_SKATER + (Places.VARIABLES + 1) * skater;
  }
}
