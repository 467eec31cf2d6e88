package twostrides.race;

import twostrides.stats.Count;

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
          new double[] {-1.6018, 0.7656, 0.4933},
          new double[][] {{0.273474}, {-0.009488, 0.010542}, {-0.045025, 0.005267, 0.010000}});

  /** The same with speeds hidden. 296 carriers. */
  static final LogisticLine PLACES_ONLY =
      new LogisticLine(
          new double[] {-0.9247, 0.6162, 0.3039},
          new double[][] {{0.125059}, {0.003035, 0.006721}, {-0.018975, 0.001514, 0.004121}});

  /**
   * Seconds by which the other team is ahead in the race to a pass that was not received, with its
   * standard error: 123 passes. For 188 pucks sent away it is 0 (fitted -0.05, error 0.07).
   */
  static final double HEAD_START = 0.37;

  static final double HEAD_START_ERROR = 0.09;

  /**
   * Who lets the puck go is pressed more than who carries on from the same place: log odds of
   * gaining center, a puck sent away and a missed pass. 0.3 may be taken for their errors; the two
   * shared games alone give -0.6 (128 pucks) and -0.8 (106 passes).
   */
  static final double PRESSED_SENT = -0.9;

  static final double PRESSED_MISSED = -1.5;

  /**
   * Seconds from the puck wholly past the far goal line to the whistle: of 0, 0.25, 0.5 and 0.75
   * the one that puts the gaps of 130 real icings in the middle of the model's.
   */
  static final double WHISTLE = 0.5;

  /**
   * Without places: log odds of the chance that places and speeds would give, by metres short of
   * center, metres carried up ice, metres off the middle, and 1 for a missed pass. 123 releases.
   */
  static final LogisticLine SHEET =
      new LogisticLine(
          new double[] {2.1089, -0.1979, 0.0347, -0.0992, -0.4334},
          new double[][] {
            {0.475379},
            {-0.026415, 0.003699},
            {-0.009026, 0.000089, 0.002269},
            {-0.023529, 0.000494, 0.000146, 0.001985},
            {-0.057585, -0.002364, -0.000621, 0.001595, 0.176206}
          });

  /** How far off those log odds are, either way: for 68 % and for 95 % of the releases. */
  static final double SHEET_LIKELY = 1.72;

  static final double SHEET_BAND = 3.23;

  /**
   * Pucks sent on from behind the red line by a team that the book does not exempt, and how many
   * were iced: six games, three of women of February 2022 and the tracked ones. Among them the race
   * with nobody's place known orders hardly better than a coin (area .57).
   */
  static final Count SENT_ICED = new Count(35, 364);

  /** The same of passes that were not received (area .39). */
  static final Count MISSED_ICED = new Count(12, 368);

  private Fitted() {}
}
