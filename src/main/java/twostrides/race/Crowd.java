package twostrides.race;

import java.util.List;

/**
 * The skaters of a race: those who are known, or five of each team drawn anew in every draw. For
 * one thread.
 */
final class Crowd {

  private static final int ICING_TEAM_LEGS = 6;
  private static final int OTHER_LEGS = 7;
  private static final int FIRST_SKATER = 8;

  private final Scene scene;
  private final double[] state;
  private final boolean[] chases;

  Crowd(Scene scene) {
    this.scene = scene;
    List<Racer> known = scene.racers();
    int n = known.isEmpty() ? 2 * Places.A_SIDE : known.size();
    state = new double[Places.VARIABLES * n];
    chases = new boolean[n];
    for (int i = 0; i < n; i++) {
      chases[i] = known.isEmpty() ? i < Places.A_SIDE : known.get(i).chases();
      if (!known.isEmpty()) {
        Racer r = known.get(i);
        int at = Places.VARIABLES * i;
        state[at] = r.x();
        state[at + 1] = r.y();
        state[at + 2] = r.vx();
        state[at + 3] = r.vy();
      }
    }
  }

  /**
   * Puts the skaters of one team in their places for a draw.
   *
   * @param start where the numbers of the draw start, {@link Draws#start}
   * @param chasing the team that let the puck go, or the other
   */
  void place(long start, boolean chasing) {
    if (!scene.racers().isEmpty()) {
      return;
    }
    for (int i = 0; i < chases.length; i++) {
      if (chases[i] != chasing) {
        continue;
      }
      Places.draw(
          state,
          Places.VARIABLES * i,
          chases[i],
          i % Places.A_SIDE,
          scene.x(),
          scene.rink().width() / 2,
          start,
          variables(i));
    }
  }

  int size() {
    return chases.length;
  }

  /** Whether a skater plays for the team that let the puck go. */
  boolean chases(int skater) {
    return chases[skater];
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
    return Arrival.logisticDraw(Draws.uniform(start, variables(skater) + Places.VARIABLES));
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
