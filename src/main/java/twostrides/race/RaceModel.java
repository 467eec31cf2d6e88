package twostrides.race;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.race.SeededRandom.Simulation;
import twostrides.race.puck.Joint;
import twostrides.race.puck.PuckPath;
import twostrides.rulebook.RaceQuestion;

/**
 * Simulates a release again and again and answers the rulebook's question: how often is it icing.
 *
 * <p>Each simulation takes a release speed, a direction, a loft, ice and air from their ranges,
 * follows the puck, and lets the skaters go. An opponent who could play the puck before the goal
 * line ends it. Past the line: automatic icing is icing; touch icing asks who touches first; hybrid
 * who would, which is the same arrival seen no later than the first skate at the end-zone spots.
 * Arrivals carry a logistic error; a race closer than {@link #LEVEL} is level, and level is what
 * the book says.
 *
 * <p>Not in the model: goalkeepers, boards and other skaters in the way, tired legs, a puck handled
 * off a bounce, an official's eye.
 */
public final class RaceModel {

  /** A race closer than this is too close to call, s. Assumed: three frames of a broadcast. */
  public static final double LEVEL = 0.1;

  private final Scene scene;
  private final Optional<RaceQuestion> question;
  private final Launch launch;

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
    this.scene = scene;
    this.question = question;
    this.launch = launch;
  }

  /**
   * Simulates the race.
   *
   * @param random the random numbers of this release
   * @param n number of simulations, 1 or more
   */
  public RaceChances run(SeededRandom random, int n) {
    Map<End, Integer> ends = new EnumMap<>(End.class);
    for (int i = 0; i < n; i++) {
      ends.merge(one(random.simulation(i)).end(), 1, Integer::sum);
    }
    return new RaceChances(
        n,
        ends.getOrDefault(End.ICING, 0),
        ends.getOrDefault(End.WAVED_OFF, 0),
        ends.getOrDefault(End.STOPPED_SHORT, 0),
        ends.getOrDefault(End.TOUCHED, 0),
        ends.getOrDefault(End.OTHER, 0));
  }

  /** How a simulation ended. */
  enum End {
    ICING,
    WAVED_OFF,
    STOPPED_SHORT,
    TOUCHED,
    OTHER
  }

  /**
   * One simulation.
   *
   * @param end how it ended
   * @param path the puck
   * @param touchedAt when the first opponent could play the puck before the goal line, seconds
   */
  record Simulated(End end, PuckPath path, OptionalDouble touchedAt) {}

  /**
   * Runs one simulation.
   *
   * @param luck its random numbers
   */
  Simulated one(Simulation luck) {
    PuckPath path = launch.release(luck);
    OptionalDouble past = path.pastFarGoalLine();
    if (past.isEmpty()) {
      End end = path.ending() == Joint.STOPPED ? End.STOPPED_SHORT : End.OTHER;
      return new Simulated(end, path, OptionalDouble.empty());
    }
    double line = past.getAsDouble();
    Crowd crowd = Crowd.of(scene, luck);
    Looks looks = Looks.of(path, line);
    double touch = crowd.soonest(false, looks::arrival);
    if (touch < line) {
      return new Simulated(End.TOUCHED, path, OptionalDouble.of(touch));
    }
    End end = path.inNetAt(line) ? End.OTHER : icing(crowd, looks) ? End.ICING : End.WAVED_OFF;
    return new Simulated(end, path, OptionalDouble.empty());
  }

  /** Whether a puck over the line untouched is icing by the book. */
  private boolean icing(Crowd crowd, Looks looks) {
    if (question.isEmpty()) {
      return true;
    }
    double lead = crowd.first(true, looks::arrival) - crowd.first(false, looks::arrival);
    boolean level = Math.abs(lead) < LEVEL || Double.isNaN(lead);
    return level ? question.get().levelIsIcing() : lead > 0;
  }
}
