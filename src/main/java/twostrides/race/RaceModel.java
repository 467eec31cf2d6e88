package twostrides.race;

import java.util.List;
import java.util.Optional;
import twostrides.rink.Rink;
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
  private static final double PLAYABLE = 1.2;

  /**
   * Looks along the path: as shares of the time to the goal line before it, in seconds past the
   * line after it.
   */
  private static final double[] LOOKS = {0.35, 0.65, 0.85, 1, 0.5, 1.2, 2.2, 4};

  private static final int BEFORE = 4;

  /** Variables of a draw: puck first, then ten skaters with an error each. */
  private static final int SPEED = 0;

  private static final int TARGET = 1;
  private static final int LOFT = 2;
  private static final int LOFT_ANGLE = 3;
  private static final int FRICTION = 4;
  private static final int DRAG = 5;
  private static final int ICING_TEAM_LEGS = 6;
  private static final int OTHER_LEGS = 7;
  private static final int FIRST_SKATER = 8;

  private final Scene scene;
  private final Optional<RaceQuestion> question;
  private final PuckPath path;
  private final SkaterSettings legs;
  private final double[] skaters;
  private final boolean[] chases;
  private final double[] arrivals;
  private final double scale;
  private final double neglect;
  private final double[] looks = new double[LOOKS.length];
  private final boolean[] playable = new boolean[LOOKS.length];
  private final double[] places = new double[2 * LOOKS.length];
  private final double[] drift = new double[LOOKS.length];
  private final double[] stride = new double[LOOKS.length];

  /**
   * A model of one release.
   *
   * @param scene the release and who is there
   * @param question what the book asks; empty for automatic icing
   */
  public RaceModel(Scene scene, Optional<RaceQuestion> question) {
    this.scene = scene;
    this.question = question;
    this.path = new PuckPath(scene.rink());
    this.legs = scene.level().settings();
    List<Racer> known = scene.racers();
    int n = known.isEmpty() ? 2 * Places.A_SIDE : known.size();
    skaters = new double[Places.VARIABLES * n];
    chases = new boolean[n];
    arrivals = new double[n];
    scale = Arrival.scale(legs.sigma());
    neglect = Arrival.neglectAfter(legs.sigma(), Double.POSITIVE_INFINITY);
    for (int i = 0; i < n; i++) {
      chases[i] = known.isEmpty() ? i < Places.A_SIDE : known.get(i).chases();
      if (!known.isEmpty()) {
        Racer r = known.get(i);
        int at = Places.VARIABLES * i;
        skaters[at] = r.x();
        skaters[at + 1] = r.y();
        skaters[at + 2] = r.vx();
        skaters[at + 3] = r.vy();
      }
    }
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

  private enum End {
    ICING,
    WAVED_OFF,
    STOPPED_SHORT,
    TOUCHED,
    OTHER
  }

  private End one(Draws draws, int draw) {
    long start = draws.start(draw);
    release(start);
    double line = path.pastFarGoalLine();
    if (Double.isNaN(line)) {
      return path.ending() == Joint.STOPPED ? End.STOPPED_SHORT : End.OTHER;
    }
    placeSkaters(start, false);
    look(line, 0, BEFORE);
    double theirs = legs.topSpeed() * legs(start, OTHER_LEGS);
    for (int i = 0; i < chases.length; i++) {
      // Whoever has his stick on it before the line ends the race: nothing else need be drawn.
      if (!chases[i] && arrival(i, theirs, BEFORE) < line) {
        return End.TOUCHED;
      }
    }
    if (path.inNet()) {
      return End.OTHER;
    }
    if (question.isEmpty()) {
      return End.ICING;
    }
    placeSkaters(start, true);
    look(line, BEFORE, LOOKS.length);
    double own = legs.topSpeed() * legs(start, ICING_TEAM_LEGS);
    double firstDefender = Double.POSITIVE_INFINITY;
    double firstChaser = Double.POSITIVE_INFINITY;
    for (int i = 0; i < chases.length; i++) {
      arrivals[i] = arrival(i, chases[i] ? own : theirs, LOOKS.length);
      if (chases[i]) {
        firstChaser = Math.min(firstChaser, arrivals[i]);
      } else {
        firstDefender = Math.min(firstDefender, arrivals[i]);
      }
    }
    double soonest = Math.min(firstChaser, firstDefender);
    double chaser = Double.POSITIVE_INFINITY;
    double defender = Double.POSITIVE_INFINITY;
    for (int i = 0; i < chases.length; i++) {
      // Whoever is so much later is first in less than a thousandth of the cases.
      if (arrivals[i] > soonest + neglect) {
        continue;
      }
      double t =
          arrivals[i]
              + scale * Arrival.logisticDraw(Draws.uniform(start, variables(i) + Places.VARIABLES));
      if (chases[i]) {
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

  private void release(long start) {
    Delivery d = scene.delivery();
    double speed =
        Draws.triangular(Draws.uniform(start, SPEED), d.slowest(), d.usual(), d.fastest());
    Rink rink = scene.rink();
    double aim =
        scene.targetY().isPresent()
            ? scene.targetY().getAsDouble()
            : d.spread() * (2 * Draws.uniform(start, TARGET) - 1);
    double direction = Math.atan2(aim - scene.y(), rink.goalLine() - scene.x());
    PuckSettings ice = ice(start);
    if (Draws.uniform(start, LOFT) < d.lofted()) {
      double u = Draws.uniform(start, LOFT_ANGLE);
      path.flip(
          ice,
          scene.x(),
          scene.y(),
          speed,
          direction,
          Delivery.LEAST_LOFT + u * (Delivery.MOST_LOFT - Delivery.LEAST_LOFT));
    } else {
      path.slide(ice, scene.x(), scene.y(), speed, direction);
    }
  }

  /** Friction 0.05 to 0.15 and drag 0.0038 to 0.0076 a metre: ranges of {@link PuckSettings}. */
  private static PuckSettings ice(long start) {
    PuckSettings d = PuckSettings.DEFAULT;
    return new PuckSettings(
        Draws.triangular(Draws.uniform(start, FRICTION), 0.05, 0.10, 0.15),
        Draws.triangular(Draws.uniform(start, DRAG), 0.0038, 0.0053, 0.0076),
        d.boardBounce(),
        d.glassBounce(),
        d.boardGrip(),
        d.rimAngle(),
        d.rimKeep(),
        d.iceBounce(),
        d.iceGrip(),
        d.boardHeight(),
        d.glassHeight());
  }

  /** A team's legs: top speed 10 % either side, the level's own range. */
  private static double legs(long start, int variable) {
    return Draws.triangular(Draws.uniform(start, variable), 0.9, 1, 1.1);
  }

  private void placeSkaters(long start, boolean chasing) {
    if (!scene.racers().isEmpty()) {
      return;
    }
    for (int i = 0; i < chases.length; i++) {
      if (chases[i] != chasing) {
        continue;
      }
      Places.draw(
          skaters,
          Places.VARIABLES * i,
          chases[i],
          i % Places.A_SIDE,
          scene.x(),
          scene.rink().width() / 2,
          start,
          variables(i));
    }
  }

  private static int variables(int skater) {
    return FIRST_SKATER + (Places.VARIABLES + 1) * skater;
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
    int at = Places.VARIABLES * skater;
    double before = 0;
    for (int k = 0; k < to; k++) {
      double dx = places[2 * k] - skaters[at] - skaters[at + 2] * drift[k];
      double dy = places[2 * k + 1] - skaters[at + 1] - skaters[at + 3] * drift[k];
      double late = Math.sqrt(dx * dx + dy * dy) - legs.reach() - topSpeed * stride[k];
      if (late <= 0 && playable[k]) {
        if (k == 0 || before <= 0) {
          return looks[k];
        }
        return looks[k - 1] + (looks[k] - looks[k - 1]) * before / (before - late);
      }
      before = late;
    }
    return looks[to - 1] + Math.max(0, before) / topSpeed;
  }
}
