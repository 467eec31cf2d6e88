package twostrides.race;

/**
 * What the race model knows of a skater.
 *
 * @param topSpeed speed that a sprint approaches, m/s, 1 to 15
 * @param tau time constant of that approach, s, 0.1 to 5; a sprint from rest starts with topSpeed /
 *     tau, m/s2
 * @param reaction time before he responds, s, 0 to 3; until then he drifts at his present velocity
 * @param carry factor on the top speed while carrying the puck, above 0 to 1
 * @param reach how far from his skates he plays a puck, m, 0 to 3; 0 when a skate counts
 * @param sigma standard deviation of his arrival about the computed time, s, above 0 to 2
 */
public record SkaterSettings(
    double topSpeed, double tau, double reaction, double carry, double reach, double sigma) {

  /**
   * Rejects values outside the ranges named at each parameter.
   *
   * @throws IllegalArgumentException for these
   */
  public SkaterSettings {
    check("top speed", topSpeed, 1, 15, "m/s");
    check("tau", tau, 0.1, 5, "s");
    check("reaction", reaction, 0, 3, "s");
    check("carry", carry, Double.MIN_NORMAL, 1, "of the top speed");
    check("reach", reach, 0, 3, "m");
    check("sigma", sigma, Double.MIN_NORMAL, 2, "s");
  }

  private static void check(String what, double value, double least, double most, String unit) {
    if (!(value >= least && value <= most)) {
      throw new IllegalArgumentException(
          "skater settings: %s must lie from %s to %s %s, not %s"
              .formatted(what, least, most, unit, value));
    }
  }

  /**
   * Scale of the logistic error of an arrival, s: P(there by t) = 1/(1 + e^(-(t - m)/s)), m the
   * computed arrival, s = sqrt(3) sigma/pi. Source: Spearman 2018, "Beyond Expected Goals", MIT
   * Sloan Sports Analytics Conference (read in public re-implementations that cite it). The error
   * has no lower end, so an arrival may fall before the release; sigma is to be small against m.
   */
  public double errorScale() {
    return Math.sqrt(3) / Math.PI * sigma;
  }

  /** What he can do without the puck. */
  public Skater skater() {
    return new Skater(topSpeed, tau, reaction, reach);
  }

  /** What he can do with the puck, by his own choice and without reaching. */
  Skater carrier() {
    return new Skater(carryingSpeed(), tau, 0, 0);
  }

  /** Top speed with the puck, m/s. */
  public double carryingSpeed() {
    return carry * topSpeed;
  }

  /**
   * The same with another sprint, such as one fitted to the team's own split times.
   *
   * @param newTopSpeed m/s
   * @param newTau s
   */
  public SkaterSettings withSprint(double newTopSpeed, double newTau) {
    return new SkaterSettings(newTopSpeed, newTau, reaction, carry, reach, sigma);
  }

  /**
   * The same with another reach.
   *
   * @param newReach m, 0 when a skate counts
   */
  public SkaterSettings withReach(double newReach) {
    return new SkaterSettings(topSpeed, tau, reaction, carry, newReach, sigma);
  }

  /**
   * The same with another arrival error.
   *
   * @param newSigma s
   */
  public SkaterSettings withSigma(double newSigma) {
    return new SkaterSettings(topSpeed, tau, reaction, carry, reach, newSigma);
  }

  /**
   * The same in a race to a loose puck: 1.0 m of reach and an arrival error of 0.60 s where the
   * default skater has 1.5 m and 0.50 s against a carrier. Source: 311 pucks of two tracked men's
   * games, docs/race.md.
   */
  public SkaterSettings toPuck() {
    return withReach(reach / 1.5).withSigma(1.2 * sigma);
  }
}
