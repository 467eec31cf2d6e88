package twostrides.race;

/**
 * What slows and turns a puck. Every value may be set; most defaults are assumptions, because no
 * measurement of a puck on ice or against the boards could be read.
 *
 * @param friction kinetic friction of a puck on ice, 0.01 to 0.5. Default 0.15, 5 to 95 % 0.07 to
 *     0.21: pucks of tracked men's games, with the drag; textbook problems imply 0.12 to 0.19
 * @param drag quadratic drag k = rho Cd A / (2 m), per metre, 0 to 0.05. Default 0.0044, from the
 *     same pucks, range 0.0030 to 0.0058 assumed; cold air of 1.29 kg/m3, edge-on area 1.935e-3 m2,
 *     0.165 kg and a Cd of 0.5 to 1.0 give 0.0038 to 0.0076
 * @param boardBounce normal restitution off the boards, 0 to 1. Default 0.30, range 0.2 to 0.5:
 *     assumed, softer than a rigid wall
 * @param glassBounce normal restitution off the glass, 0 to 1. Default 0.35, range 0.25 to 0.45:
 *     frozen puck on a rigid surface, derived from drop and cannon tests in Anderson 2008 (MSc
 *     thesis, Washington State University, abstract)
 * @param boardGrip friction coefficient of an impact on boards or glass, 0 to 1. Default 0.20,
 *     range 0.15 to 0.3: assumed
 * @param rimAngle incidence against the curve of a corner, radians, 0 to 0.5, below which the many
 *     small rebounds are one run along the boards. Default 0.17 (10 degrees): assumed
 * @param rimKeep share of its speed that a puck keeps over a quarter turn of the boards, above 0 to
 *     1, apart from what the ice and the air take. Default 0.80, range 0.65 to 0.95: assumed, best
 *     fitted from one's own video
 * @param iceBounce vertical restitution of a landing, 0 to under 1. Default 0.35: as for the glass
 * @param iceGrip friction coefficient of a landing, 0 to 1. Default 0.15, range 0.1 to 0.2: assumed
 * @param boardHeight top of the boards, metres, 0.5 to 2. Default 1.07: IIHF Official Rule Book
 *     2023/24 rule 1
 * @param glassHeight top of the glass above the ice, metres, at least that of the boards. Default
 *     2.87 (boards and 1.8 m of glass along the sides): from memory; taken all round, although
 *     glass behind the goals is higher
 */
public record PuckSettings(
    double friction,
    double drag,
    double boardBounce,
    double glassBounce,
    double boardGrip,
    double rimAngle,
    double rimKeep,
    double iceBounce,
    double iceGrip,
    double boardHeight,
    double glassHeight) {

  /** The defaults named at each parameter. */
  public static final PuckSettings DEFAULT =
      new PuckSettings(0.15, 0.0044, 0.30, 0.35, 0.20, 0.17, 0.80, 0.35, 0.15, 1.07, 2.87);

  /** Rejects values outside the ranges named at each parameter. */
  public PuckSettings {
    check("friction", friction, 0.01, 0.5);
    check("drag", drag, 0, 0.05);
    check("board bounce", boardBounce, 0, 1);
    check("glass bounce", glassBounce, 0, 1);
    check("board grip", boardGrip, 0, 1);
    check("rim angle", rimAngle, 0, 0.5);
    check("rim keep", rimKeep, 0.01, 1);
    check("ice bounce", iceBounce, 0, 0.99);
    check("ice grip", iceGrip, 0, 1);
    check("board height", boardHeight, 0.5, 2);
    check("glass height", glassHeight, boardHeight, 20);
  }

  private static void check(String what, double value, double least, double most) {
    if (!(value >= least && value <= most)) {
      throw new IllegalArgumentException(
          "puck settings: " + what + " must lie from " + least + " to " + most + ", not " + value);
    }
  }

  /**
   * The same with other ice.
   *
   * @param newFriction kinetic friction of the puck on ice
   * @param newDrag quadratic drag, per metre
   */
  public PuckSettings withIce(double newFriction, double newDrag) {
    return new PuckSettings(
        newFriction,
        newDrag,
        boardBounce,
        glassBounce,
        boardGrip,
        rimAngle,
        rimKeep,
        iceBounce,
        iceGrip,
        boardHeight,
        glassHeight);
  }

  /**
   * The same with other boards.
   *
   * @param bounce normal restitution off the boards
   * @param grip friction coefficient of an impact on them
   * @param keep share of its speed that a puck keeps over a quarter turn
   */
  public PuckSettings withBoards(double bounce, double grip, double keep) {
    return new PuckSettings(
        friction,
        drag,
        bounce,
        glassBounce,
        grip,
        rimAngle,
        keep,
        iceBounce,
        iceGrip,
        boardHeight,
        glassHeight);
  }

  /** Deceleration by friction a = mu g, m/s2. */
  double deceleration() {
    return friction * Slide.GRAVITY;
  }
}
