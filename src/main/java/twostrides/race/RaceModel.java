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

  /**
   * Looks before the line, the one that most often finds an opponent on the puck first: the discs
   * have grown by then, and the puck is not yet past everybody.
   */
  private static final int[] TELLING = {2, 1, 0, 3};

  private final Optional<RaceQuestion> question;
  private final Launch launch;
  private final PuckPath path;
  private final SkaterSettings legs;
  private final Crowd crowd;
  private final Looks looks;
  private final Side own;
  private final Side theirs;
  private final double neglect;

  // The draw.
  private long start;
  private double line;

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
    this.legs = scene.skaters().settings().toPuck();
    this.crowd = new Crowd(scene);
    this.looks = new Looks(path, crowd, legs);
    double scale = Arrival.scale(legs.sigma());
    this.own = new Side(crowd.team(true), scale, scene.delivery().headStart());
    this.theirs = new Side(crowd.team(false), scale, 0);
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
    for (int k = 0; k < Looks.BEFORE && first == Double.POSITIVE_INFINITY; k++) {
      looks.take(k);
      first = firstThere(k);
    }
    return first;
  }

  /** When the first opponent is there of those who are at a look, s; infinite when nobody is. */
  private double firstThere(int k) {
    double first = Double.POSITIVE_INFINITY;
    for (int there = theirs.there(looks, k) - 1; there >= 0; there--) {
      int skater = theirs.team()[looks.found(there)];
      first = Math.min(first, looks.arrival(skater, theirs.topSpeed(), k));
    }
    return first;
  }

  /** One draw. */
  End one(Draws draws, int draw) {
    start = draws.start(draw);
    launch.put(path, start);
    line = path.pastFarGoalLine();
    if (Double.isNaN(line)) {
      return path.ending() == Joint.STOPPED ? End.STOPPED_SHORT : End.OTHER;
    }
    looks.begin(line);
    theirs.runs(legs.topSpeed() * Crowd.legs(start, false));
    if (touched()) {
      return End.TOUCHED;
    }
    if (path.inNetAt(line)) {
      return End.OTHER;
    }
    if (question.isEmpty()) {
      return End.ICING;
    }
    own.runs(legs.topSpeed() * Crowd.legs(start, true));
    arrive();
    double lead = own.first() - theirs.first();
    if (Math.abs(lead) < LEVEL || Double.isNaN(lead)) {
      return question.get().levelIsIcing() ? End.ICING : End.WAVED_OFF;
    }
    return lead > 0 ? End.ICING : End.WAVED_OFF;
  }

  /**
   * Whether an opponent can have his stick on the puck before it is over the line. One is enough to
   * end the race: nothing more is drawn or looked at than it takes to find him.
   */
  private boolean touched() {
    crowd.place(start, theirs.team());
    for (int k : TELLING) {
      looks.take(k);
      // At the line he may be there with the puck on it and no sooner.
      if (k < Looks.BEFORE - 1 ? theirs.there(looks, k) > 0 : firstThere(k) < line) {
        return true;
      }
    }
    return false;
  }

  /**
   * Takes in both sides look by look until the answer is sure: whoever comes later would not change
   * it.
   */
  private void arrive() {
    crowd.place(start, own.team());
    own.begin(start);
    theirs.begin(start);
    for (int k = 0; k < Looks.ALL; k++) {
      looks.take(k);
      double soonest = own.arriveAt(looks, k);
      // No opponent was there before the line.
      if (k >= Looks.BEFORE - 1) {
        soonest = Math.min(soonest, theirs.arriveAt(looks, k));
      }
      count(soonest);
      double now = looks.time(k);
      if (now > soonest + neglect
          || own.surelyAheadOf(theirs, now, LEVEL)
          || theirs.surelyAheadOf(own, now, LEVEL)) {
        return;
      }
    }
    count(Math.min(own.arriveAfterAll(looks), theirs.arriveAfterAll(looks)));
  }

  /** Counts in who is there, but for who is first in less than a thousandth of the cases. */
  private void count(double soonest) {
    own.count(soonest + neglect);
    theirs.count(soonest + neglect);
  }
}
