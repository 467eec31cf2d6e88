package twostrides.race;

import java.util.List;

/**
 * The skaters of a race: those who are known, and those who were not seen, drawn anew in every
 * draw; five of each team where nobody is known. For one thread.
 */
final class Crowd {

  private static final int ICING_TEAM_LEGS = 6;
  private static final int OTHER_LEGS = 7;
  private static final int FIRST_SKATER = 8;

  private final Scene scene;
  private final double[] state;
  private final boolean[] chases;

  /** Which of his team's five {@link Places} a skater is who was not seen. */
  private final int[] drawnAs;

  Crowd(Scene scene) {
    this.scene = scene;
    List<Racer> known = scene.racers();
    int own = known.isEmpty() ? Places.A_SIDE : scene.unseenOwn();
    int opponents = known.isEmpty() ? Places.A_SIDE : scene.unseenOpponents();
    int n = known.size() + own + opponents;
    state = new double[Places.VARIABLES * n];
    chases = new boolean[n];
    drawnAs = new int[n];
    for (int i = 0; i < known.size(); i++) {
      Racer r = known.get(i);
      int at = Places.VARIABLES * i;
      chases[i] = r.chases();
      state[at] = r.x();
      state[at + 1] = r.y();
      state[at + 2] = r.vx();
      state[at + 3] = r.vy();
    }
    // Who was not seen is far from the puck: own forwards up ice, opponents who stayed back.
    for (int i = known.size(); i < n; i++) {
      int k = i - known.size();
      chases[i] = k < own;
      drawnAs[i] = k < own ? k : Places.A_SIDE - opponents + k - own;
    }
  }

  /**
   * Puts the skaters of one team in their places for a draw.
   *
   * @param start where the numbers of the draw start, {@link Draws#start}
   * @param chasing the team that let the puck go, or the other
   */
  void place(long start, boolean chasing) {
    for (int i = scene.racers().size(); i < chases.length; i++) {
      if (chases[i] != chasing) {
        continue;
      }
      Places.draw(
          state,
          Places.VARIABLES * i,
          chases[i],
          drawnAs[i],
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
