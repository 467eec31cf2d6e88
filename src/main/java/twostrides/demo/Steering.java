package twostrides.demo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import twostrides.demo.Skater.Role;

/**
 * Where skaters want to be. Lengths here are in the frame of the side that has the puck: u up ice,
 * w across, m. All of it is assumed: a plain shape with the puck, and checking that presses with
 * one, sometimes two, while the defenders give way.
 */
final class Steering {
  /** Ways that a carrier looks at: cosine and sine of 0, 30, 60 and 85 degrees to either side. */
  private static final double[][] WAYS = {
    {1, 0},
    {0.866, 0.5},
    {0.866, -0.5},
    {0.5, 0.866},
    {0.5, -0.866},
    {0.087, 0.996},
    {0.087, -0.996}
  };

  /** Room beyond which more is no better to a carrier, m. */
  private static final double ROOM = 4.5;

  /** Share of top speed at which a skater takes his place. */
  private static final double IN_SHAPE = 0.75;

  /** Who is later than this at a loose puck pulls up, s, and so far from it, m. */
  private static final double CLEARLY_S = 0.3;

  private static final double PULLS_UP = 4.5;

  /** Longest that a skater who presses waits before he does, s; a third does not wait at all. */
  private static final double HESITATES_S = 0.9;

  /** Nearer than this to the puck he waits less, m. */
  private static final double SURE = 2.5;

  private Steering() {}

  /** Gives everybody of a side a place in its shape. */
  static void shape(Ice ice, Side side) {
    List<Body> bodies = ice.bodies(side);
    List<Body> forwards = new ArrayList<>();
    List<Body> defenders = new ArrayList<>();
    for (Body b : bodies) {
      if (!ice.holder().equals(Optional.of(b))) {
        (b.skater.role() == Role.DEFENDER ? defenders : forwards).add(b);
      }
    }
    int dir = Ice.direction(side);
    if (side == ice.attacking()) {
      // The one farthest back supports low; of the others the one on the puck's hand is the wing.
      forwards.sort(Comparator.comparingDouble(b -> dir * b.x));
      number(forwards);
      if (forwards.size() > 2) {
        Body a = forwards.get(1);
        Body b = forwards.get(2);
        boolean swap = Math.abs(b.y - ice.puck().y()) < Math.abs(a.y - ice.puck().y());
        a.slot = swap ? 2 : 1;
        b.slot = swap ? 1 : 2;
      }
      defenders.sort(Comparator.comparingDouble(b -> b.distanceTo(ice.puck())));
      number(defenders);
    } else {
      forwards.sort(Comparator.comparingDouble(b -> b.secondsTo(ice.puck())));
      number(forwards);
      defenders.sort(Comparator.comparingDouble(b -> dir * b.y));
      number(defenders);
    }
  }

  private static void number(List<Body> bodies) {
    for (int i = 0; i < bodies.size(); i++) {
      bodies.get(i).slot = i;
    }
  }

  /** Who goes for the carrier: nearly always the first, sometimes the next ones. */
  static void pressers(Ice ice, Dice dice) {
    double u = Ice.direction(ice.attacking()) * ice.puck().x();
    List<Body> checkers = ice.bodies(ice.attacking().other());
    double[] seconds = new double[checkers.size()];
    for (int i = 0; i < seconds.length; i++) {
      seconds[i] = checkers.get(i).secondsTo(ice.puck());
    }
    for (int k = 0; k < seconds.length; k++) {
      Body b = checkers.get(k);
      int i = 0;
      for (double other : seconds) {
        i += other < seconds[k] ? 1 : 0;
      }
      double chance = i == 0 ? 0.78 : i == 1 ? 0.22 : 0.06;
      if (b.skater.role() == Role.DEFENDER && u < ice.rink().blueLineNeutralEdge()) {
        chance *= 0.5;
      }
      b.presses = dice.chance(chance);
      if (b.presses) {
        double near = Math.min(1, b.distanceTo(ice.puck()) / SURE);
        b.late = Math.max(b.late, near * dice.between(-HESITATES_S / 2, HESITATES_S));
      }
    }
  }

  /** Everybody who is free to answers to where the puck is now. */
  static void aim(Ice ice) {
    Side with = ice.attacking();
    int dir = Ice.direction(with);
    double u = dir * ice.puck().x();
    double w = dir * ice.puck().y();
    double line = ice.rink().blueLineNeutralEdge();
    List<Body> own = ice.bodies(with);
    List<Body> others = ice.bodies(with.other());
    if (ice.loose()) {
      Body first = chaser(ice, own);
      Body second = chaser(ice, others);
      double lead = second.secondsTo(ice.puck()) - first.secondsTo(ice.puck());
      chase(ice, first, lead < -CLEARLY_S);
      chase(ice, second, lead > CLEARLY_S);
    }
    for (Body b : own) {
      if (free(ice, b)) {
        support(b, dir, u, w, line);
      }
    }
    for (Body b : others) {
      if (free(ice, b)) {
        if (b.presses) {
          press(ice, b, dir);
        } else {
          check(b, dir, u, w, line);
        }
      }
    }
  }

  private static boolean free(Ice ice, Body b) {
    return !b.bound && b.late <= 0 && ice.holder().filter(holder -> holder == b).isEmpty();
  }

  /** The soonest of a side, who goes for a loose puck; the others are free. */
  private static Body chaser(Ice ice, List<Body> bodies) {
    bodies.forEach(b -> b.bound = false);
    return ice.soonest(bodies.get(0).side, ice.puck());
  }

  /** Who is clearly second pulls up between the puck and his own net. */
  private static void chase(Ice ice, Body b, boolean pullsUp) {
    if (b.late <= 0 && pullsUp) {
      double back = PULLS_UP * Ice.direction(b.side);
      b.goTo(ice.puck().x() - back, ice.puck().y() * 0.85, b.top());
    } else if (b.late <= 0) {
      b.goThrough(ice.puck().x(), ice.puck().y(), b.top());
    }
    b.bound = true;
  }

  /** Straight for where the carrier will be. */
  private static void press(Ice ice, Body b, int dir) {
    double vx = ice.holder().map(holder -> holder.vx).orElse(0.0);
    double vy = ice.holder().map(holder -> holder.vy).orElse(0.0);
    double t = Math.min(1.4, b.distanceTo(ice.puck()) / 8.5);
    b.goThrough(ice.puck().x() + vx * t + dir * 0.4, ice.puck().y() + vy * t, b.top());
  }

  private static void go(Body b, int dir, double u, double w) {
    b.goTo(dir * u, dir * w, IN_SHAPE * b.skater.legs().topSpeed());
  }

  /** Places of a team with the puck. */
  private static void support(Body b, int dir, double u, double w, double line) {
    double hand = w < 0 ? -1 : 1;
    boolean back = b.skater.role() == Role.DEFENDER;
    if (u < -line) {
      if (back) {
        go(b, dir, clamp(u - 2 - 3 * b.slot, -26, -12), -hand * (5 + b.slot));
      } else {
        switch (b.slot) {
          case 0 -> go(b, dir, clamp(u + 7, -20, -9), w * 0.3);
          case 1 -> go(b, dir, clamp(u + 14, -11, -3), hand * 10.5);
          default -> go(b, dir, clamp(u + 24, -4, 7), -hand * (7 - 3 * (b.slot - 2)));
        }
      }
    } else if (u < line) {
      if (back) {
        go(b, dir, u - 6 - 3 * b.slot, -hand * (3 + 2 * b.slot));
      } else {
        switch (b.slot) {
          case 0 -> go(b, dir, clamp(u + 4, -8, 7), w - hand * 7);
          case 1 -> go(b, dir, clamp(u + 8, -3, 7), hand * 10);
          default -> go(b, dir, clamp(u + 9, 0, 7), -hand * 9);
        }
      }
    } else if (back) {
      go(b, dir, 10, (b.slot == 0 ? hand : -hand) * 6.5);
    } else {
      switch (b.slot) {
        case 0 -> go(b, dir, 17, -hand * 3);
        case 1 -> go(b, dir, clamp(u + 4, 14, 26), hand * 9);
        default -> go(b, dir, 25, -hand * (1.5 + 4 * (b.slot - 2)));
      }
    }
  }

  /** Places of a team without it that does not press. */
  private static void check(Body b, int dir, double u, double w, double line) {
    boolean back = b.skater.role() == Role.DEFENDER;
    double side = b.slot == 0 ? 1 : -1;
    if (u < -line) {
      if (back) {
        go(b, dir, clamp(u + 17, -6.5, 5), side * 5.5 + 0.15 * w);
      } else {
        switch (b.slot) {
          case 0 -> go(b, dir, u + 5.5, w * 0.8);
          case 1 -> go(b, dir, clamp(u + 9, -18, -5), w * 0.5);
          default -> go(b, dir, clamp(u + 11, -14, -3), -w * 0.4);
        }
      }
    } else if (u < line) {
      if (back) {
        go(b, dir, clamp(u + 8, 3, 20), side * 4.5 + 0.25 * w);
      } else {
        switch (b.slot) {
          case 0 -> go(b, dir, u + 6, w * 0.75);
          default -> go(b, dir, clamp(u + 3, -3, 14), w * 0.2 + (b.slot == 1 ? 4 : -4));
        }
      }
    } else if (back) {
      go(b, dir, b.slot == 0 ? 24 : 22, side * 2 + 0.3 * w);
    } else {
      switch (b.slot) {
        case 0 -> go(b, dir, clamp(u + 1.5, 12, 26), w * 0.75);
        case 1 -> go(b, dir, 15, w < 0 ? -4 : 4);
        default -> go(b, dir, 14, w < 0 ? 5 : -5);
      }
    }
  }

  /** A carrier goes up ice where most room will be. */
  static void head(Ice ice, Body carrier, double speed) {
    int dir = Ice.direction(carrier.side);
    List<Body> checkers = ice.bodies(carrier.side.other());
    double ahead = 0.8;
    double best = Double.NEGATIVE_INFINITY;
    double bestX = carrier.x + dir;
    double bestY = carrier.y;
    double edge = ice.rink().width() / 2 - 1;
    for (double[] way : WAYS) {
      double x = carrier.x + 0.5 * ahead * (carrier.vx + dir * way[0] * speed);
      double y = carrier.y + 0.5 * ahead * (carrier.vy + dir * way[1] * speed);
      double room = ROOM * ROOM;
      for (Body b : checkers) {
        double dx = x - b.x - b.vx * 0.6;
        double dy = y - b.y - b.vy * 0.6;
        room = Math.min(room, dx * dx + dy * dy);
      }
      double score = Math.sqrt(room) + 1.6 * way[0] - 3 * Math.max(0, Math.abs(y) - edge);
      if (score > best) {
        best = score;
        bestX = carrier.x + dir * way[0] * 5;
        bestY = carrier.y + dir * way[1] * 5;
      }
    }
    carrier.goThrough(bestX, bestY, speed);
  }

  private static double clamp(double value, double low, double high) {
    return Math.max(low, Math.min(high, value));
  }
}
