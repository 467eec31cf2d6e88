package twostrides.race;

/**
 * The numbers that were fitted on real games, all in one place: two games of a men's club
 * tournament of December 2023 with the places and speeds of every skater (open data, MIT licence;
 * 296 carriers behind the red line who kept on, 311 pucks sent away or missed). {@code
 * OpenPlacesTest}, {@code OpenFirstTest} and {@code OpenSheetChanceTest} fit them anew and check
 * them one game left out; docs/race.md says how, docs/checks.md how well.
 */
final class Fitted {

  /** Raw chances are held so far from 0 and 1. */
  static final double HOLD = 0.005;

  /** An opponent farther off than this counts as so far off, metres. */
  static final double FAR = 10;

  /**
   * Gaining center, places and speeds known: log odds by those of the race and metres to the
   * nearest opponent. 227 carriers.
   */
  static final LogisticLine MEASURED =
      new LogisticLine(
          new double[] {-1.6135, 0.7641, 0.4934},
          new double[][] {{0.271461}, {-0.009796, 0.010379}, {-0.044936, 0.005242, 0.009993}});

  /** The same with speeds hidden. 296 carriers. */
  static final LogisticLine PLACES_ONLY =
      new LogisticLine(
          new double[] {-0.9332, 0.6290, 0.3073},
          new double[][] {{0.125988}, {0.002876, 0.006908}, {-0.019205, 0.001569, 0.004181}});

  private Fitted() {}
}
