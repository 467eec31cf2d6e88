package twostrides.demo;

/**
 * A player of the invented league.
 *
 * @param number jersey number, 1 to 98
 * @param name given name and surname
 * @param role position
 * @param habits what sets the player apart
 * @param legs how the player skates
 */
record Skater(int number, String name, Role role, Habits habits, Legs legs) {

  /** As a sheet writes it: {@code 17 Noor Halvik}. */
  String label() {
    return number + " " + name;
  }

  /** Where a player plays. */
  enum Role {
    FORWARD,
    DEFENDER,
    GOALKEEPER
  }

  /**
   * What sets one player apart from another: factors on how often something is chosen, 1 being the
   * league's usual. All values are assumed; they exist so that a season has something to show.
   *
   * @param hurry factor on sending the puck on short of center when a checker is not close
   * @param carry factor on carrying the puck out
   * @param passing added to the chance that a pass is received, -0.15 to 0.15
   * @param far factor on the odds that a puck sent on or passed from behind center is iced
   */
  record Habits(double hurry, double carry, double passing, double far) {

    static final Habits USUAL = new Habits(1.0, 1.0, 0.0, 1.0);
  }

  /**
   * How a player skates. Assumed, so that speeds on the ice come out like those of tracked games.
   *
   * @param topSpeed m/s, 6 to 10
   * @param push most change of velocity, m/s a second, 2 to 8
   * @param reaction seconds from a change of play to the first stride, 0 to 1
   */
  record Legs(double topSpeed, double push, double reaction) {

    static final Legs USUAL = new Legs(8.2, 4.6, 0.3);
  }
}
