package twostrides.race;

import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.race.puck.Boards;
import twostrides.rink.Rink;
import twostrides.rulebook.RaceQuestion;

/**
 * One release and what is asked of it.
 *
 * @param scene the release and who is there
 * @param loft known loft, radians, 0 along the ice; empty to simulate it
 * @param question what the book asks of a race; empty for automatic icing
 * @param canBeIcing whether the book would call this release at all
 * @param losses how often a carrier loses the puck here
 * @param netEmpty whether the opponent's net is empty
 */
public record WhatIf(
    Scene scene,
    OptionalDouble loft,
    Optional<RaceQuestion> question,
    boolean canBeIcing,
    LossRate losses,
    boolean netEmpty) {

  /** Slack for feet turned into metres, metres. */
  private static final double ROUNDING = 1e-9;

  /**
   * Rejects a release outside the boards.
   *
   * @throws IllegalArgumentException for these
   */
  public WhatIf {
    if (!inside(scene.rink(), scene.x(), scene.y())) {
      throw new IllegalArgumentException(
          "a release at " + scene.x() + ", " + scene.y() + " m lies outside the boards");
    }
  }

  /**
   * Whether a place lies inside the boards, round corners and all; on the boards is inside.
   *
   * @param rink the rink
   * @param x metres from center ice
   * @param y metres from the long axis
   */
  public static boolean inside(Rink rink, double x, double y) {
    return Boards.of(rink).outside(x, y) <= Rink.PUCK_RADIUS + ROUNDING;
  }

  /** How far short of center, metres; 0 or less where center is gained. */
  public double shortOfCenter() {
    return scene.rink().shortOfCenter(scene.x());
  }
}
