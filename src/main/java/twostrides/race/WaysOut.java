package twostrides.race;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A release and the other ways out, each over the same simulations.
 *
 * <p>Prices are attempts against within 20 s, counted beyond those that follow a puck sent deep:
 * nothing read says how many those are. Only two things have a price: an own-zone restart, and an
 * opponent who takes the puck short of his own blue line. A goal has none.
 *
 * @param release what becomes of the release in the race
 * @param icing the chance of icing that the race can carry: its own where the speed is known, else
 *     at most the share of real releases of the kind that were iced
 * @param seconds seconds to the red line with the puck, 0 where center is gained
 * @param gain chance of getting there with it
 * @param speeds how hard to lay a puck that dies; empty where center is gained
 * @param outcomes what each way brings, releasing now first
 * @param spread where the released puck goes
 */
public record WaysOut(
    RaceChances release,
    Chance icing,
    double seconds,
    Chance gain,
    Optional<SoftSpeeds> speeds,
    List<WayOutcome> outcomes,
    PuckSpread spread) {

  /** Copies the outcomes. */
  public WaysOut {
    outcomes = List.copyOf(outcomes);
  }

  /**
   * Simulates them.
   *
   * @param what the release and what is asked
   * @param random its random numbers
   * @param n number of simulations, 1 or more
   */
  public static WaysOut of(WhatIf what, SeededRandom random, int n) {
    return new WaysOutRun(what, random, n).run();
  }

  /**
   * What one way brings.
   *
   * @param way the way
   */
  public Optional<WayOutcome> outcome(Way way) {
    return outcomes.stream().filter(o -> o.way() == way).findFirst();
  }

  /** The cheapest way that is no shot; of equals the first. */
  public WayOutcome cheapest() {
    return outcomes.stream()
        .filter(o -> !o.way().shot())
        .min(Comparator.comparingDouble(o -> o.price().value()))
        .orElseThrow();
  }

  /** The way that comes nearest to releasing now in price, no shot; empty where there is none. */
  public Optional<WayOutcome> nextToReleasing() {
    return outcomes.stream()
        .filter(o -> !o.way().shot() && o.way() != Way.RELEASE_NOW)
        .min(Comparator.comparingDouble(o -> o.price().value()));
  }

  /**
   * The speed that lies between two in the sense of distance: the geometric mean of how far they
   * slide, because an error of speed is a share of it.
   *
   * @param least least distance, metres, above 0
   * @param most greatest distance, metres; infinite where no speed is too great
   */
  static OptionalDouble between(double least, double most) {
    return least < most && most < Double.POSITIVE_INFINITY
        ? OptionalDouble.of(Math.sqrt(least * most))
        : OptionalDouble.empty();
  }
}
