package twostrides.race;

import static twostrides.race.SourceGrade.ASSUMED;
import static twostrides.race.SourceGrade.COMPUTED;
import static twostrides.race.SourceGrade.MEMORY_LOW;

import java.util.List;

/**
 * The numbers on which other ways out are compared where no sheet says better. None was found
 * published; each has its range.
 */
public final class Assumptions {

  /** Metres a second up ice with the puck. */
  public static final Parameter PACE =
      new Parameter(
          "pace up ice with the puck",
          5.2,
          3,
          7,
          "m/s",
          "carriers of two tracked men's games; other levels are taken to be alike",
          COMPUTED);

  /** Times a second that a carrier loses the puck under no pressure. */
  public static final Parameter LOSS_NONE =
      Parameter.assumed("losses of the puck, no pressure", 0.02, 0, 0.1, "1/s");

  /** The same under light pressure. */
  public static final Parameter LOSS_LIGHT =
      Parameter.assumed("losses of the puck, light pressure", 0.10, 0.02, 0.3, "1/s");

  /** The same under heavy pressure. */
  public static final Parameter LOSS_HEAVY =
      Parameter.assumed("losses of the puck, heavy pressure", 0.50, 0.2, 1.5, "1/s");

  /** The same where nobody says how much pressure there was. */
  public static final Parameter LOSS_UNSAID =
      Parameter.assumed("losses of the puck, pressure unsaid", 0.15, 0.02, 0.6, "1/s");

  /** Weight of those four, seconds of carrying. */
  public static final Parameter LOSS_SECONDS =
      Parameter.assumed("weight of those rates", 20, 5, 60, "s");

  /** Chance of an own-zone restart after center was gained. */
  public static final Parameter RESTART_AFTER_GAINING =
      Parameter.assumed("defensive-zone face-off after gaining center", 0.03, 0, 0.1, "1");

  /** Attempts against within 20 s after an own-zone face-off. */
  public static final Parameter ATTEMPTS_AFTER_RESTART =
      new Parameter(
          "attempts against within 20 s of a defensive-zone face-off",
          0.5,
          0.1,
          1,
          "1",
          "of face-offs only a net cost in goals is published (Schuckers and Curro 2012)",
          ASSUMED);

  /** The same after the opponent took the puck short of his own blue line. */
  public static final Parameter ATTEMPTS_AFTER_LOSS =
      Parameter.assumed(
          "attempts against within 20 s of a puck lost before their blue line", 0.5, 0.1, 1, "1");

  /** Standard deviation of a meant speed, as a share of it. */
  public static final Parameter SPEED_ERROR =
      Parameter.assumed("error of a meant speed, standard deviation", 0.08, 0.03, 0.2, "1");

  /** Standard deviation of a shot's direction, radians. */
  public static final Parameter SHOT_ERROR =
      Parameter.assumed(
          "error of a shot's direction, standard deviation",
          Math.toRadians(2),
          Math.toRadians(0.5),
          Math.toRadians(5),
          "rad");

  /** Speed of a shot at an empty net, m/s; {@link Delivery#SHOT} has the range. */
  public static final Parameter SHOT_SPEED =
      new Parameter(
          "usual speed of a shot at an empty net",
          20,
          14,
          30,
          "m/s",
          "elite men, from memory; other levels by the same shares as releases",
          MEMORY_LOW);

  /** All of them, in the order in which {@code whatif} lists them. */
  public static final List<Parameter> ALL =
      List.of(
          PACE,
          LOSS_NONE,
          LOSS_LIGHT,
          LOSS_HEAVY,
          LOSS_UNSAID,
          LOSS_SECONDS,
          RESTART_AFTER_GAINING,
          ATTEMPTS_AFTER_RESTART,
          ATTEMPTS_AFTER_LOSS,
          SPEED_ERROR,
          SHOT_ERROR,
          SHOT_SPEED);

  private Assumptions() {}

  /**
   * How often a carrier loses the puck.
   *
   * @param pressure none, light or heavy; anything else where nobody says
   * @param losses times it was lost in the sheets
   * @param seconds seconds at risk in the sheets
   */
  public static LossRate losses(String pressure, int losses, double seconds) {
    Parameter rate =
        switch (pressure) {
          case "none" -> LOSS_NONE;
          case "light" -> LOSS_LIGHT;
          case "heavy" -> LOSS_HEAVY;
          default -> LOSS_UNSAID;
        };
    double weight = LOSS_SECONDS.value();
    return new LossRate(losses, seconds, rate.value() * weight, weight);
  }
}
