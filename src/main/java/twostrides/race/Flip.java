package twostrides.race;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A puck lifted off the ice: a thrown body without drag until it lands, then bounces, then a slide.
 *
 * <p>Height z(t) = vz t - g t^2 / 2, distance vh t, with vh = v cos(loft) and vz = v sin(loft). At
 * a landing the vertical speed is multiplied by a coefficient of restitution e, and the horizontal
 * speed by max(0, 1 - mu (1 + e) tan(theta)), theta the angle of impact against the ice: a Coulomb
 * impulse in full sliding. When a bounce would rise slower than {@link #SETTLES} the puck lies flat
 * and slides.
 *
 * <p>Drag in flight is left out: the drag of a puck that turns over in the air is not known. At the
 * drag of a flat puck, k = 0.0053 per metre, a flip of 15 m/s at 30 degrees lands about one metre
 * shorter than this model says (own numerical integration, held by a test). Valid for lofts of 0 to
 * 80 degrees from the height of the ice.
 *
 * @param speed speed at the release, m/s, 0 or more
 * @param loft angle above the ice, radians, 0 to just under pi/2
 */
public record Flip(double speed, double loft) {

  /** Rising speed below which a bounce is a slide, m/s: 0.3, a rise of 5 mm (assumed). */
  static final double SETTLES = 0.3;

  /**
   * One flight between two touches of the ice.
   *
   * @param start seconds since the release at which it begins
   * @param from metres from the release at which it begins
   * @param forward horizontal speed, m/s
   * @param rising vertical speed at its beginning, m/s
   */
  public record Hop(double start, double from, double forward, double rising) {

    /** Seconds since the release at which it lands. */
    public double end() {
      return start + airTime(0, rising);
    }

    /** Metres from the release at which it lands. */
    public double to() {
      return from + forward * airTime(0, rising);
    }
  }

  /** Rejects speeds below 0 and lofts that are not forward and upward. */
  public Flip {
    if (!(speed >= 0 && speed < Double.POSITIVE_INFINITY) || !(loft >= 0 && loft < Math.PI / 2)) {
      throw new IllegalArgumentException(
          "a flip needs a speed of 0 m/s or more and a loft from 0 to under pi/2, not "
              + speed
              + " and "
              + loft);
    }
  }

  /** Horizontal speed in the first flight, m/s. */
  public double forward() {
    return speed * Math.cos(loft);
  }

  /** Vertical speed at the release, m/s. */
  public double rising() {
    return speed * Math.sin(loft);
  }

  /** Seconds until the first landing. */
  public double airTime() {
    return airTime(0, rising());
  }

  /** Metres to the first landing. */
  public double carry() {
    return forward() * airTime();
  }

  /** Greatest height in metres. */
  public double apex() {
    return rising() * rising() / (2 * Slide.GRAVITY);
  }

  /**
   * Height in metres during the first flight; 0 from the landing on.
   *
   * @param time seconds since the release
   */
  public double heightAt(double time) {
    return Math.max(0, height(0, rising(), time));
  }

  /**
   * Seconds until the puck has flown a distance; empty when it lands short of it. A plane across
   * the ice has no upper limit: a puck that passes above a line has crossed it.
   *
   * @param distance metres from the release, 0 or more
   */
  public OptionalDouble timeTo(double distance) {
    return distance <= carry() && forward() > 0
        ? OptionalDouble.of(distance / forward())
        : OptionalDouble.empty();
  }

  /**
   * The flight and the bounces after it, in order; empty when the loft is too small to leave the
   * ice.
   *
   * @param settings what the ice does to a puck that lands
   */
  public List<Hop> hops(PuckSettings settings) {
    List<Hop> hops = new ArrayList<>();
    double start = 0;
    double from = 0;
    double vh = forward();
    double vz = rising();
    while (vz >= SETTLES) {
      Hop hop = new Hop(start, from, vh, vz);
      hops.add(hop);
      start = hop.end();
      from = hop.to();
      vh = forwardAfterLanding(vh, vz, settings.iceBounce(), settings.iceGrip());
      vz = settings.iceBounce() * vz;
    }
    return List.copyOf(hops);
  }

  /**
   * The slide after the last bounce.
   *
   * @param settings what the ice does to a puck that lands and slides
   */
  public Slide slideAfter(PuckSettings settings) {
    List<Hop> hops = hops(settings);
    double vh = forward();
    if (!hops.isEmpty()) {
      Hop last = hops.get(hops.size() - 1);
      vh =
          forwardAfterLanding(
              last.forward(), last.rising(), settings.iceBounce(), settings.iceGrip());
    }
    return Slide.onIce(vh, settings.friction(), settings.drag());
  }

  /**
   * Seconds until a thrown puck is back on the ice.
   *
   * @param height height at the start, metres, 0 or more
   * @param rising vertical speed at the start, m/s, upward positive
   */
  static double airTime(double height, double rising) {
    double root = Math.sqrt(rising * rising + 2 * Slide.GRAVITY * height);
    // Whichever form adds rather than subtracts.
    return rising >= 0 ? (rising + root) / Slide.GRAVITY : 2 * height / (root - rising);
  }

  /**
   * Height of a thrown puck, metres.
   *
   * @param height height at the start, metres
   * @param rising vertical speed at the start, m/s
   * @param time seconds since the start
   */
  static double height(double height, double rising, double time) {
    return height + time * (rising - 0.5 * Slide.GRAVITY * time);
  }

  /**
   * Horizontal speed after a landing, m/s.
   *
   * @param forward horizontal speed before it, m/s
   * @param falling vertical speed at the impact, m/s, downward positive
   * @param bounce coefficient of restitution off the ice
   * @param grip friction coefficient of the impact
   */
  static double forwardAfterLanding(double forward, double falling, double bounce, double grip) {
    return Math.max(0, forward - grip * (1 + bounce) * falling);
  }
}
