package twostrides.race;

import java.util.Optional;
import twostrides.rulebook.RaceQuestion;

/**
 * Draws a release again and again and answers the rulebook's question: how often is it icing.
 *
 * <p>Each draw takes a release speed, a direction, a loft, ice and air from their ranges, follows
 * the puck, and lets the skaters go. An opponent who could play the puck before the goal line ends
 * it. Past the line: automatic icing is icing; touch icing asks who touches first; hybrid who
 * would, which is the same arrival seen no later than the first skate at the end-zone spots.
 * Arrivals carry a logistic error; a race closer than {@link #LEVEL} is level, and level is what
 * the book says.
 *
 * <p>Not in the model: goalkeepers, boards and other skaters in the way, tired legs, a puck handled
 * off a bounce, an official's eye. Not for two threads at once.
 */
public final class RaceModel {

  /** A race closer than this is too close to call, s. Assumed: three frames of a broadcast. */
  public static final double LEVEL = 0.1;

  /** Draws after which no flag changed when they were doubled; docs/checks.md. */
  public static final int DEFAULT_DRAWS = 2000;

  /** Greatest height at which a stick plays a puck on its way, m. Assumed: shoulder height. */
  static final double PLAYABLE = 1.2;

  /**
   * Looks along the path: as shares of the time to the goal line before it, in seconds past the
   * line after it.
   */
  private static final double[] LOOKS = {0.35, 0.65, 0.85, 1, 0.5, 1.2, 2.2, 4};

  private static final int BEFORE = 4;

  private final Optional<RaceQuestion> question;
  private final Launch launch;
  private final PuckPath path;
  private final SkaterSettings legs;
  private final Crowd crowd;
  private final double[] arrivals;
  private final double scale;
  private final double neglect;
  private final double[] looks = new double[LOOKS.length];
  private final boolean[] playable = new boolean[LOOKS.length];
  private final double[] places = new double[2 * LOOKS.length];
  private final double[] drift = new double[LOOKS.length];
  private final double[] stride = new double[LOOKS.length];
  private double theirs;

  /**
   * A model of one release.
   *
   * @param scene the release and who is there
   * @param question what the book asks; empty for automatic icing
   */
  public RaceModel(Scene scene, Optional<RaceQuestion> question) {
    this(scene, question, Launch.of(scene));
  }

  /**
   * A model of one release that is let go in its own way.
   *
   * @param scene the release and who is there
   * @param question what the book asks; empty for automatic icing
   * @param launch how the puck is put on its way
   */
  RaceModel(Scene scene, Optional<RaceQuestion> question, Launch launch) {
    this.question = question;
    this.launch = launch;
    this.path = new PuckPath(scene.rink());
    this.legs = scene.skaters().settings();
    this.crowd = new Crowd(scene);
    arrivals = new double[crowd.size()];
    scale = Arrival.scale(legs.sigma());
    neglect = Arrival.neglectAfter(legs.sigma(), Double.POSITIVE_INFINITY);
  }

  /**
   * Draws the race.
   *
   * @param draws the chance of this release
   * @param n number of draws, 1 or more
   */
  public RaceChances run(Draws draws, int n) {
    int icing = 0;
    int waved = 0;
    int shorts = 0;
    int touched = 0;
    int other = 0;
    for (int i = 0; i < n; i++) {
      switch (one(draws, i)) {
        case ICING -> icing++;
        case WAVED_OFF -> waved++;
        case STOPPED_SHORT -> shorts++;
        case TOUCHED -> touched++;
        case OTHER -> other++;
      }
    }
    return new RaceChances(n, icing, waved, shorts, touched, other);
  }

  /** How a draw ended. */
  enum End {
    ICING,
    WAVED_OFF,
    STOPPED_SHORT,
    TOUCHED,
    OTHER
  }

  /** The puck of the last draw. */
  PuckPath path() {
    return path;
  }

  /** When the first opponent could play the puck, seconds, where the last draw ended in that. */
  double touchedAt() {
    double first = Double.POSITIVE_INFINITY;
    for (int i = 0; i < crowd.size(); i++) {
      first = crowd.chases(i) ? first : Math.min(first, arrival(i, theirs, BEFORE));
    }
    return first;
  }

  /** One draw. */
  End one(Draws draws, int draw) {
    long start = draws.start(draw);
    launch.put(path, start);
    double line = path.pastFarGoalLine();
    if (Double.isNaN(line)) {
      return path.ending() == Joint.STOPPED ? End.STOPPED_SHORT : End.OTHER;
    }
    crowd.place(start, false);
    look(line, 0, BEFORE);
    theirs = legs.topSpeed() * Crowd.legs(start, false);
    for (int i = 0; i < crowd.size(); i++) {
      // Whoever has his stick on it before the line ends the race: nothing else need be drawn.
      if (!crowd.chases(i) && arrival(i, theirs, BEFORE) < line) {
        return End.TOUCHED;
      }
    }
    if (path.inNet()) {
      return End.OTHER;
    }
    if (question.isEmpty()) {
      return End.ICING;
    }
    crowd.place(start, true);
    look(line, BEFORE, LOOKS.length);
    double own = legs.topSpeed() * Crowd.legs(start, true);
    double firstDefender = Double.POSITIVE_INFINITY;
    double firstChaser = Double.POSITIVE_INFINITY;
    for (int i = 0; i < crowd.size(); i++) {
      arrivals[i] = arrival(i, crowd.chases(i) ? own : theirs, LOOKS.length);
      if (crowd.chases(i)) {
        firstChaser = Math.min(firstChaser, arrivals[i]);
      } else {
        firstDefender = Math.min(firstDefender, arrivals[i]);
      }
    }
    double soonest = Math.min(firstChaser, firstDefender);
    double chaser = Double.POSITIVE_INFINITY;
    double defender = Double.POSITIVE_INFINITY;
    for (int i = 0; i < crowd.size(); i++) {
      // Whoever is so much later is first in less than a thousandth of the cases.
      if (arrivals[i] > soonest + neglect) {
        continue;
      }
      double t = arrivals[i] + scale * Crowd.error(start, i);
      if (crowd.chases(i)) {
        chaser = Math.min(chaser, t);
      } else {
        defender = Math.min(defender, t);
      }
    }
    double lead = chaser - defender;
    if (Math.abs(lead) < LEVEL || Double.isNaN(lead)) {
      return question.get().levelIsIcing() ? End.ICING : End.WAVED_OFF;
    }
    return lead > 0 ? End.ICING : End.WAVED_OFF;
  }

  /** Looks at the path before the line and after it: when, where, and what a skater has by then. */
  private void look(double line, int from, int to) {
    for (int k = from; k < to; k++) {
      double t = k < BEFORE ? LOOKS[k] * line : line + LOOKS[k];
      looks[k] = t;
      playable[k] = path.heightAt(t) <= PLAYABLE;
      path.placeAt(t, places, 2 * k);
      double s = Math.max(0, t - legs.reaction());
      double u = legs.tau() * (1 - Math.exp(-s / legs.tau()));
      drift[k] = t - s + u;
      stride[k] = s - u;
    }
  }

  /**
   * When a skater can have his stick on the puck: the first look at which it lies in his disc,
   * drawn back in a straight line from the look before. Off by a few hundredths of a second at
   * most, far less than the arrival error.
   */
  private double arrival(int skater, double topSpeed, int to) {
    double x = crowd.x(skater);
    double y = crowd.y(skater);
    double vx = crowd.vx(skater);
    double vy = crowd.vy(skater);
    double reach = legs.reach();
    double before = 0;
    double radiusBefore = 0;
    for (int k = 0; k < to; k++) {
      double dx = places[2 * k] - x - vx * drift[k];
      double dy = places[2 * k + 1] - y - vy * drift[k];
      double radius = reach + topSpeed * stride[k];
      double apart = dx * dx + dy * dy;
      // Squares tell whether he is there; the root is taken only when he is.
      if (apart <= radius * radius && playable[k]) {
        double lateBefore = Math.sqrt(before) - radiusBefore;
        if (k == 0 || lateBefore <= 0) {
          return looks[k];
        }
        double late = Math.sqrt(apart) - radius;
        return looks[k - 1] + (looks[k] - looks[k - 1]) * lateBefore / (lateBefore - late);
      }
      before = apart;
      radiusBefore = radius;
    }
    return looks[to - 1] + Math.max(0, Math.sqrt(before) - radiusBefore) / topSpeed;
  }
}
