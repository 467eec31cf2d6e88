package twostrides.race;

/**
 * Where skaters are when no sheet says: five of each team, drawn about the release. Every number
 * here is assumed; whoever has positions should give them.
 */
final class Places {

  /** Skaters of each team. */
  static final int A_SIDE = 5;

  /** Opponents who forecheck; the others stay back. */
  private static final int FORECHECKERS = 3;

  /** Variables of a draw that one skater takes: place along and across, speed, direction. */
  static final int VARIABLES = 4;

  private Places() {}

  /**
   * Draws one skater into an array: x, y, vx, vy.
   *
   * @param into four numbers from the offset on
   * @param at offset
   * @param chases whether he plays for the releasing team
   * @param index 0 to 4 within his team
   * @param releaseX place of the release
   * @param halfWidth half the rink's width
   * @param start where the numbers of this draw start
   * @param variable first of his variables
   */
  static void draw(
      double[] into,
      int at,
      boolean chases,
      int index,
      double releaseX,
      double halfWidth,
      long start,
      int variable) {
    double u = Draws.uniform(start, variable);
    double w = 2 * Draws.uniform(start, variable + 1) - 1;
    double speed = Draws.uniform(start, variable + 2);
    double turn = Draws.uniform(start, variable + 3) - 0.5;
    if (chases) {
      // Forwards ahead of the puck or level with it, defenders behind; all moving up ice.
      boolean forward = index < FORECHECKERS;
      into[at] = releaseX + (forward ? -3 + 11 * u : -9 + 8 * u);
      into[at + 2] = forward ? 3 + 4 * speed : 1 + 3 * speed;
      into[at + 3] = 3 * turn;
    } else if (index < FORECHECKERS) {
      // Forecheckers near the puck; they come down ice and must turn.
      into[at] = releaseX - 6 + 14 * u;
      into[at + 2] = -4 + 5 * speed;
      into[at + 3] = 4 * turn;
    } else {
      // Defenders hold the far side of the puck, backing up.
      into[at] = Math.max(releaseX + 4, releaseX + 6 + 12 * u);
      into[at + 2] = 1 + 3.5 * speed;
      into[at + 3] = 3 * turn;
    }
    into[at + 1] = w * (halfWidth - 1);
  }
}
