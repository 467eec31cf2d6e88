package twostrides.race.puck;

/**
 * What slows a puck on the ice. What turns it stands in {@link Boards} and {@link Flight}.
 *
 * @param friction kinetic friction of a puck on ice, 0.01 to 0.5. Default 0.15, 5 to 95 % 0.07 to
 *     0.21: pucks of tracked men's games, with the drag; textbook problems imply 0.12 to 0.19
 * @param drag quadratic drag k = rho Cd A / (2 m), per metre, 0 to 0.05. Default 0.0044, from the
 *     same pucks, range 0.0030 to 0.0058 assumed; cold air of 1.29 kg/m3, edge-on area 1.935e-3 m2,
 *     0.165 kg and a Cd of 0.5 to 1.0 give 0.0038 to 0.0076
 */
public record Ice(double friction, double drag) {

  /** The defaults named at each parameter: ordinary ice. */
  public static final Ice ORDINARY = new Ice(0.15, 0.0044);

  /**
   * Rejects values outside the ranges named at each parameter.
   *
   * @throws IllegalArgumentException for these
   */
  public Ice {
    if (!(friction >= 0.01 && friction <= 0.5 && drag >= 0 && drag <= 0.05)) {
      throw new IllegalArgumentException(
          ("ice needs a friction from 0.01 to 0.5 and a drag from 0 to 0.05 a metre, "
                  + "not %s and %s")
              .formatted(friction, drag));
    }
  }

  /** Deceleration by friction a = mu g, m/s2. */
  public double deceleration() {
    return friction * Slide.GRAVITY;
  }
}
