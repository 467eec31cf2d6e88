package twostrides.demo;

import java.util.List;

/**
 * Where the skaters were at one instant, in the frame of the side that acts.
 *
 * @param own skaters of that side
 * @param opponents of the other
 */
record Seen(List<Spot> own, List<Spot> opponents) {

  /**
   * One skater.
   *
   * @param skater who
   * @param x m
   * @param y m
   * @param vx m/s
   * @param vy m/s
   */
  record Spot(Skater skater, double x, double y, double vx, double vy) {}

  Seen {
    own = List.copyOf(own);
    opponents = List.copyOf(opponents);
  }

  static Seen of(Ice ice, Side side) {
    int dir = Ice.direction(side);
    return new Seen(spots(ice.bodies(side), dir), spots(ice.bodies(side.other()), dir));
  }

  private static List<Spot> spots(List<Body> bodies, int dir) {
    return bodies.stream()
        .map(b -> new Spot(b.skater, dir * b.x, dir * b.y, dir * b.vx, dir * b.vy))
        .toList();
  }
}
