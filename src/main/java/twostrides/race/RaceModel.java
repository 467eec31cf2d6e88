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

  /** Looks along the path before the goal line, as shares of the time to it. */
  private static final double[] LOOKS = {0.3, 0.5, 0.7, 0.9, 1};

  /** Seconds between looks along the path past the line. */
  private static final double STEP = 0.25;

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
  private final Mover mover = new Mover();

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
    release(draws, draw);
    double line = path.pastFarGoalLine();
    placeSkaters(draws, draw);
    double own = legs.topSpeed() * legs(draws, draw, ICING_TEAM_LEGS);
    double theirs = legs.topSpeed() * legs(draws, draw, OTHER_LEGS);
    double until = Double.isNaN(line) ? path.endTime() : line;
    if (opponentPlaysIt(until, theirs)) {
      return End.TOUCHED;
    }
    if (Double.isNaN(line)) {
      return path.ending() == Joint.STOPPED ? End.STOPPED_SHORT : End.OTHER;
    }
    if (path.inNet()) {
      return End.OTHER;
    }
    if (question.isEmpty()) {
      return End.ICING;
    }
    double chaser = first(true, line, own, draws, draw);
    double defender = first(false, line, theirs, draws, draw);
    double lead = chaser - defender;
    if (Math.abs(lead) < LEVEL || Double.isNaN(lead)) {
      return question.get().levelIsIcing() ? End.ICING : End.WAVED_OFF;
    }
    return lead > 0 ? End.ICING : End.WAVED_OFF;
  }

  private void release(Draws draws, int draw) {
    Delivery d = scene.delivery();
    double speed = draws.triangular(draw, SPEED, d.slowest(), d.usual(), d.fastest());
    Rink rink = scene.rink();
    double aim =
        scene.targetY().isPresent()
            ? scene.targetY().getAsDouble()
            : d.spread() * (2 * draws.uniform(draw, TARGET) - 1);
    double direction = Math.atan2(aim - scene.y(), rink.goalLine() - scene.x());
    PuckSettings ice = ice(draws, draw);
    if (draws.uniform(draw, LOFT) < d.lofted()) {
      double u = draws.uniform(draw, LOFT_ANGLE);
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
  private static PuckSettings ice(Draws draws, int draw) {
    PuckSettings d = PuckSettings.DEFAULT;
    return new PuckSettings(
        draws.triangular(draw, FRICTION, 0.05, 0.10, 0.15),
        draws.triangular(draw, DRAG, 0.0038, 0.0053, 0.0076),
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
  private static double legs(Draws draws, int draw, int variable) {
    return draws.triangular(draw, variable, 0.9, 1, 1.1);
  }

  private void placeSkaters(Draws draws, int draw) {
    if (!scene.racers().isEmpty()) {
      return;
    }
    for (int i = 0; i < chases.length; i++) {
      Places.draw(
          skaters,
          Places.VARIABLES * i,
          chases[i],
          i % Places.A_SIDE,
          scene.x(),
          scene.rink().width() / 2,
          draws,
          draw,
          variables(i));
    }
  }

  private static int variables(int skater) {
    return FIRST_SKATER + (Places.VARIABLES + 1) * skater;
  }

  /** Whether an opponent can have his stick on the puck before a time. */
  private boolean opponentPlaysIt(double until, double topSpeed) {
    for (double look : LOOKS) {
      double t = look * until;
      if (path.heightAt(t) > PLAYABLE) {
        continue;
      }
      double x = path.xAt(t);
      double y = path.yAt(t);
      for (int i = 0; i < chases.length; i++) {
        int at = Places.VARIABLES * i;
        if (!chases[i]
            && Skater.slack(
                    t,
                    x - skaters[at],
                    y - skaters[at + 1],
                    skaters[at + 2],
                    skaters[at + 3],
                    topSpeed,
                    legs.tau(),
                    legs.reaction(),
                    legs.reach())
                >= 0) {
          return true;
        }
      }
    }
    return false;
  }

  /** When the first of a team gets the puck past the line, errors included. */
  private double first(boolean chasing, double line, double topSpeed, Draws draws, int draw) {
    double gx = path.xAt(line);
    double gy = path.yAt(line);
    double best = Double.POSITIVE_INFINITY;
    double scale = Arrival.scale(legs.sigma());
    for (int i = 0; i < chases.length; i++) {
      if (chases[i] != chasing) {
        continue;
      }
      mover.set(skaters, Places.VARIABLES * i, topSpeed, legs);
      double error = scale * draws.logistic(draw, variables(i) + Places.VARIABLES);
      // Nobody is sooner at the moving puck than at where it crosses, less what it travels on.
      if (mover.secondsTo(gx, gy) - FARTHEST_AHEAD + error > best) {
        continue;
      }
      double arrival = Math.max(line, path.earliest(mover, STEP, PLAYABLE));
      best = Math.min(best, arrival + error);
    }
    return best;
  }

  /** Seconds by which a skater may be sooner at the puck than at its crossing. Assumed generous. */
  private static final double FARTHEST_AHEAD = 1.5;

  /** A skater as the path asks for him. */
  private static final class Mover implements Reach {
    private double x;
    private double y;
    private double vx;
    private double vy;
    private double topSpeed;
    private double tau;
    private double reaction;
    private double reach;

    void set(double[] skaters, int at, double fastest, SkaterSettings legs) {
      x = skaters[at];
      y = skaters[at + 1];
      vx = skaters[at + 2];
      vy = skaters[at + 3];
      topSpeed = fastest;
      tau = legs.tau();
      reaction = legs.reaction();
      reach = legs.reach();
    }

    @Override
    public double secondsTo(double targetX, double targetY) {
      return Skater.timeTo(targetX - x, targetY - y, vx, vy, topSpeed, tau, reaction, reach);
    }
  }
}
