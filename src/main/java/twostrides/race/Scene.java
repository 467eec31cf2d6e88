package twostrides.race;

import java.util.List;
import java.util.OptionalDouble;
import twostrides.rink.Rink;

/**
 * A release and who is there: what a race is simulated from.
 *
 * @param rink the rink
 * @param x place of the release, metres from center ice, acting team's frame
 * @param y place of the release, metres from the long axis
 * @param delivery how it was sent
 * @param targetY where along the far goal line it was aimed, metres; empty to simulate it
 * @param racers skaters whose places are known; empty to simulate ten
 * @param skaters what a skater of this game can do
 */
public record Scene(
    Rink rink,
    double x,
    double y,
    Delivery delivery,
    OptionalDouble targetY,
    List<Racer> racers,
    SkaterSet skaters) {

  /** Slack for a place written at the boards, metres. Assumed, as for sheets. */
  private static final double BOARD_SLACK = 0.5;

  /** The level of play. */
  public SkaterLevel level() {
    return skaters.level();
  }

  /**
   * The same sent otherwise.
   *
   * @param other how it is sent
   */
  Scene sent(Delivery other) {
    return new Scene(rink, x, y, other, targetY, racers, skaters);
  }

  /**
   * Copies the skaters and rejects a release outside the boards.
   *
   * @throws IllegalArgumentException for these
   */
  public Scene {
    racers = List.copyOf(racers);
    boolean inside =
        Math.abs(x) <= rink.length() / 2 + BOARD_SLACK
            && Math.abs(y) <= rink.width() / 2 + BOARD_SLACK;
    if (!inside) {
      throw new IllegalArgumentException(
          ("a release at %s, %s m: expected a place inside the boards, at most %s m "
                  + "along and %s m across")
              .formatted(x, y, rink.length() / 2, rink.width() / 2));
    }
  }
}
