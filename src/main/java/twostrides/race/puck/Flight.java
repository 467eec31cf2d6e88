package twostrides.race.puck;

/**
 * The height of a puck in the air: a thrown body without drag until it lands.
 *
 * <p>Height z(t) = z + vz t - g t^2 / 2. Forward it keeps its speed. At a landing the vertical
 * speed is multiplied by a coefficient of restitution e, and the horizontal speed by max(0, 1 - mu
 * (1 + e) tan(theta)), theta the angle of impact against the ice: a Coulomb impulse in full
 * sliding. When a bounce would rise slower than {@link #SETTLES} the puck lies flat and slides.
 *
 * <p>Drag in flight is left out: the drag of a puck that turns over in the air is not known. At the
 * drag of a flat puck, k = 0.0053 per metre, a flip of 15 m/s at 30 degrees lands about one metre
 * shorter than this model says (own numerical integration, held by a test). Valid for lofts of 0 to
 * 80 degrees.
 *
 * @param height metres above the ice where it begins, 0 or more
 * @param rising vertical speed there, m/s, upward positive
 */
record Flight(double height, double rising) {

  /** Rising speed below which a bounce is a slide, m/s: 0.3, a rise of 5 mm (assumed). */
  static final double SETTLES = 0.3;

  /** Vertical restitution of a landing: 0.35, as off the glass ({@link Boards}). */
  static final double BOUNCE = 0.35;

  /** Friction coefficient of a landing: 0.15, range 0.1 to 0.2 (assumed). */
  static final double GRIP = 0.15;

  /** Seconds until the puck is back on the ice. */
  double airTime() {
    return (rising + falling()) / Slide.GRAVITY;
  }

  /** Vertical speed at the landing, m/s, downward positive. */
  double falling() {
    return Math.sqrt(rising * rising + 2 * Slide.GRAVITY * height);
  }

  /**
   * The rest of the flight.
   *
   * @param seconds since it began, no more than the air time
   */
  Flight after(double seconds) {
    double z = height + seconds * (rising - 0.5 * Slide.GRAVITY * seconds);
    return new Flight(Math.max(0, z), rising - Slide.GRAVITY * seconds);
  }

  /** The bounce after the landing. */
  Flight bounce() {
    return new Flight(0, BOUNCE * falling());
  }

  /** Whether it rises fast enough to leave the ice. */
  boolean leavesTheIce() {
    return rising >= SETTLES;
  }

  /**
   * Horizontal speed after the landing, m/s.
   *
   * @param forward horizontal speed before it, m/s
   */
  double forwardAfterLanding(double forward) {
    return Math.max(0, forward - GRIP * (1 + BOUNCE) * falling());
  }
}
