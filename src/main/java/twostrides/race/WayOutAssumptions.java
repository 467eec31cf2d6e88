package twostrides.race;

import java.util.List;

/**
 * The numbers on which other ways out are compared where no sheet says better. None was found
 * published; {@link #parameters} gives each its range.
 *
 * @param pace metres a second up ice with the puck, 1 to 10
 * @param lossNone times a second that a carrier loses the puck under no pressure, above 0 to 3
 * @param lossLight the same under light pressure
 * @param lossHeavy the same under heavy pressure
 * @param lossUnsaid the same where nobody says how much pressure there was
 * @param priorSeconds weight of those four, seconds of carrying, above 0
 * @param restartAfterGaining chance of an own-zone restart after center was gained, 0 to 1
 * @param attemptsAfterRestart attempts against within 20 s after an own-zone draw, 0 to 5
 * @param attemptsAfterLoss attempts against within 20 s after the opponent took the puck short of
 *     his own blue line, 0 to 5
 * @param speedError standard deviation of a meant speed, as a share of it, 0 to 0.5
 * @param shotError standard deviation of a shot's direction, radians, 0 to 0.5
 * @param shot speeds of a shot at an empty net
 */
public record WayOutAssumptions(
    double pace,
    double lossNone,
    double lossLight,
    double lossHeavy,
    double lossUnsaid,
    double priorSeconds,
    double restartAfterGaining,
    double attemptsAfterRestart,
    double attemptsAfterLoss,
    double speedError,
    double shotError,
    Delivery shot) {

  /** All assumed; the speeds of the shot from memory, graded low. */
  public static final WayOutAssumptions DEFAULT =
      new WayOutAssumptions(
          5.2,
          0.02,
          0.10,
          0.50,
          0.15,
          20,
          0.03,
          0.5,
          0.5,
          0.08,
          Math.toRadians(2),
          new Delivery(14, 20, 30, 0, 0, false));

  private static final String NOTHING = "nothing published was read";

  /** Rejects values outside the ranges named at each parameter. */
  public WayOutAssumptions {
    check("pace", pace, 1, 10);
    check("losses under no pressure", lossNone, Double.MIN_NORMAL, 3);
    check("losses under light pressure", lossLight, Double.MIN_NORMAL, 3);
    check("losses under heavy pressure", lossHeavy, Double.MIN_NORMAL, 3);
    check("losses under pressure unsaid", lossUnsaid, Double.MIN_NORMAL, 3);
    check("seconds of the prior", priorSeconds, Double.MIN_NORMAL, 1e6);
    check("restarts after gaining center", restartAfterGaining, 0, 1);
    check("attempts after a restart", attemptsAfterRestart, 0, 5);
    check("attempts after a loss", attemptsAfterLoss, 0, 5);
    check("error of speed", speedError, 0, 0.5);
    check("error of a shot", shotError, 0, 0.5);
  }

  private static void check(String what, double value, double least, double most) {
    if (!(value >= least && value <= most)) {
      throw new IllegalArgumentException(
          "ways out: " + what + " must lie from " + least + " to " + most + ", not " + value);
    }
  }

  /**
   * How often a carrier loses the puck.
   *
   * @param pressure none, light or heavy; anything else where nobody says
   * @param losses times it was lost in the sheets
   * @param seconds seconds at risk in the sheets
   */
  public LossRate losses(String pressure, int losses, double seconds) {
    double rate =
        switch (pressure) {
          case "none" -> lossNone;
          case "light" -> lossLight;
          case "heavy" -> lossHeavy;
          default -> lossUnsaid;
        };
    return new LossRate(losses, seconds, rate * priorSeconds, priorSeconds);
  }

  /** The numbers with range and source, in the order of the record. */
  public List<Parameter> parameters() {
    return List.of(
        new Parameter(
            "pace up ice with the puck",
            pace,
            3,
            7,
            "m/s",
            "carriers of two tracked men's games; other levels are taken to be alike",
            SourceGrade.COMPUTED),
        assumed("losses of the puck, no pressure", lossNone, 0, 0.1, "1/s"),
        assumed("losses of the puck, light pressure", lossLight, 0.02, 0.3, "1/s"),
        assumed("losses of the puck, heavy pressure", lossHeavy, 0.2, 1.5, "1/s"),
        assumed("losses of the puck, pressure unsaid", lossUnsaid, 0.02, 0.6, "1/s"),
        assumed("weight of those rates", priorSeconds, 5, 60, "s"),
        assumed("own-zone restart after gaining center", restartAfterGaining, 0, 0.1, "1"),
        new Parameter(
            "attempts against within 20 s of an own-zone draw",
            attemptsAfterRestart,
            0.1,
            1,
            "1",
            "of draws only a net cost in goals is published (Schuckers and Curro 2012)",
            SourceGrade.ASSUMED),
        assumed(
            "attempts against within 20 s of a puck lost before their blue line",
            attemptsAfterLoss,
            0.1,
            1,
            "1"),
        assumed("error of a meant speed, standard deviation", speedError, 0.03, 0.2, "1"),
        assumed(
            "error of a shot's direction, standard deviation",
            shotError,
            Math.toRadians(0.5),
            Math.toRadians(5),
            "rad"),
        new Parameter(
            "usual speed of a shot at an empty net",
            shot.usual(),
            shot.slowest(),
            shot.fastest(),
            "m/s",
            "elite men, from memory; other levels by the same shares as releases",
            SourceGrade.MEMORY_LOW));
  }

  private static Parameter assumed(
      String name, double value, double low, double high, String unit) {
    return new Parameter(name, value, low, high, unit, NOTHING, SourceGrade.ASSUMED);
  }
}
