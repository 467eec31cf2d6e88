package twostrides.race;

import static twostrides.race.SourceGrade.ASSUMED;
import static twostrides.race.SourceGrade.COMPUTED;
import static twostrides.race.SourceGrade.MEMORY_LOW;

/**
 * The numbers on which other ways out are compared where no sheet says better. None was found
 * published; each has its range.
 */
public enum Assumption {
  /** Metres a second up ice with the puck. */
  PACE(
      "pace up ice with the puck",
      5.2,
      3,
      7,
      "m/s",
      "carriers of two tracked men's games; other levels are taken to be alike",
      COMPUTED),
  /** Times a second that a carrier loses the puck under no pressure. */
  LOSS_NONE("losses of the puck, no pressure", 0.02, 0, 0.1, "1/s"),
  /** The same under light pressure. */
  LOSS_LIGHT("losses of the puck, light pressure", 0.10, 0.02, 0.3, "1/s"),
  /** The same under heavy pressure. */
  LOSS_HEAVY("losses of the puck, heavy pressure", 0.50, 0.2, 1.5, "1/s"),
  /** The same where nobody says how much pressure there was. */
  LOSS_UNSAID("losses of the puck, pressure unsaid", 0.15, 0.02, 0.6, "1/s"),
  /** Weight of those four, seconds of carrying. */
  LOSS_SECONDS("weight of those rates", 20, 5, 60, "s"),
  /** Chance of an own-zone restart after center was gained. */
  RESTART_AFTER_GAINING("own-zone restart after gaining center", 0.03, 0, 0.1, "1"),
  /** Attempts against within 20 s after an own-zone face-off. */
  ATTEMPTS_AFTER_RESTART(
      "attempts against within 20 s of an own-zone draw",
      0.5,
      0.1,
      1,
      "1",
      "of draws only a net cost in goals is published (Schuckers and Curro 2012)",
      ASSUMED),
  /** The same after the opponent took the puck short of his own blue line. */
  ATTEMPTS_AFTER_LOSS(
      "attempts against within 20 s of a puck lost before their blue line", 0.5, 0.1, 1, "1"),
  /** Standard deviation of a meant speed, as a share of it. */
  SPEED_ERROR("error of a meant speed, standard deviation", 0.08, 0.03, 0.2, "1"),
  /** Standard deviation of a shot's direction, radians. */
  SHOT_ERROR(
      "error of a shot's direction, standard deviation",
      Math.toRadians(2),
      Math.toRadians(0.5),
      Math.toRadians(5),
      "rad"),
  /** Speed of a shot at an empty net, m/s; {@link Delivery#SHOT} has the range. */
  SHOT_SPEED(
      "usual speed of a shot at an empty net",
      20,
      14,
      30,
      "m/s",
      "elite men, from memory; other levels by the same shares as releases",
      MEMORY_LOW);

  private final Parameter parameter;

  Assumption(String name, double value, double low, double high, String unit) {
    this(name, value, low, high, unit, "nothing published was read", ASSUMED);
  }

  Assumption(
      String name,
      double value,
      double low,
      double high,
      String unit,
      String source,
      SourceGrade grade) {
    parameter = new Parameter(name, value, low, high, unit, source, grade);
  }

  /** The number with its range and source. */
  public Parameter parameter() {
    return parameter;
  }

  /** The number, in the unit of {@link #parameter}. */
  public double value() {
    return parameter.value();
  }

  /**
   * How often a carrier loses the puck.
   *
   * @param pressure none, light or heavy; anything else where nobody says
   * @param losses times it was lost in the sheets
   * @param seconds seconds at risk in the sheets
   */
  public static LossRate losses(String pressure, int losses, double seconds) {
    Assumption rate =
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
