package twostrides.race;

/**
 * Looks at a puck's path before the far goal line and after it: is the puck in a skater's disc by
 * then. A look is taken when someone first asks for it. Made once for a race and begun anew for
 * every draw; for one thread.
 *
 * <p>Between two looks gap and radius are taken as straight lines, which is off by a few hundredths
 * of a second at most, far less than the arrival error.
 */
final class Looks {

  /** Greatest height at which a stick plays a puck on its way, m. Assumed: shoulder height. */
  static final double PLAYABLE = 1.2;

  /** How many looks there are before the puck is over the line, the one at the line included. */
  static final int BEFORE = 4;

  /** As shares of the time to the goal line before it, in seconds past the line after it. */
  private static final double[] WHEN = {0.35, 0.65, 0.85, 1, 0.5, 1.2, 2.2, 4};

  /** How many looks there are. */
  static final int ALL = WHEN.length;

  private final PuckPath path;
  private final Crowd crowd;
  private final SkaterSettings legs;

  /** What so long after the line leaves of e^(-t/tau) at it. */
  private final double[] leaves = new double[ALL];

  private final double[] time = new double[ALL];
  private final boolean[] playable = new boolean[ALL];
  private final double[] x = new double[ALL];
  private final double[] y = new double[ALL];
  private final double[] drift = new double[ALL];
  private final double[] stride = new double[ALL];
  private final double[] place = new double[2];
  private final int[] found;

  /** -1/tau, 1/s. */
  private final double fade;

  // The draw.
  private double line;
  private double leftAtLine;
  private int pieceAtLine;

  /** One bit a look: taken in this draw. */
  private int taken;

  /**
   * Looks at a path for a crowd.
   *
   * @param path the puck
   * @param crowd who is there
   * @param legs what a skater can do
   */
  Looks(PuckPath path, Crowd crowd, SkaterSettings legs) {
    this.path = path;
    this.crowd = crowd;
    this.legs = legs;
    found = new int[crowd.size()];
    fade = -1 / legs.tau();
    for (int k = BEFORE; k < ALL; k++) {
      leaves[k] = Math.exp(fade * WHEN[k]);
    }
  }

  /**
   * Forgets the looks of the draw before.
   *
   * @param atLine seconds until the puck is wholly past the far goal line
   */
  void begin(double atLine) {
    line = atLine;
    taken = 0;
  }

  /** When a look that was taken is, seconds since the release. */
  double time(int k) {
    return time[k];
  }

  /**
   * How many of some skaters can have their sticks on the puck at a look that was taken; {@link
   * #found} says who.
   *
   * @param list numbers in the crowd, all in their places
   * @param n how many of the list are asked for
   * @param topSpeed m/s
   * @param k the look
   */
  int there(int[] list, int n, double topSpeed, int k) {
    if (!playable[k]) {
      return 0;
    }
    double px = x[k];
    double py = y[k];
    double t = drift[k];
    double radius = legs.reach() + topSpeed * stride[k];
    double square = radius * radius;
    int there = 0;
    for (int at = 0; at < n; at++) {
      // Squares tell whether he is there, the root is taken only when he is; and everybody is
      // written down, because that is quicker than a jump that cannot be foreseen.
      found[there] = at;
      there += crowd.squared(list[at], px, py, t) <= square ? 1 : 0;
    }
    return there;
  }

  /**
   * Where in the list one of those last found there stands.
   *
   * @param index from 0; they ascend
   */
  int found(int index) {
    return found[index];
  }

  /**
   * When a skater first can have his stick on the puck, seconds since the release, by the first
   * look at which he can; that one and the one before it were taken.
   *
   * @param skater number in the crowd
   * @param topSpeed m/s
   * @param k the first look at which he can
   */
  double arrival(int skater, double topSpeed, int k) {
    if (k == 0) {
      return time[k];
    }
    double before = late(skater, topSpeed, k - 1);
    if (before <= 0) {
      return time[k];
    }
    return time[k - 1] + (time[k] - time[k - 1]) * before / (before - late(skater, topSpeed, k));
  }

  /**
   * When a skater who was never there before can be where the puck is at the last look, seconds.
   *
   * @param skater number in the crowd
   * @param topSpeed m/s
   */
  double afterAll(int skater, double topSpeed) {
    return time[ALL - 1] + Math.max(0, late(skater, topSpeed, ALL - 1)) / topSpeed;
  }

  /** How far the puck is outside a skater's disc, m. */
  private double late(int skater, double topSpeed, int k) {
    return Math.sqrt(crowd.squared(skater, x[k], y[k], drift[k]))
        - (legs.reach() + topSpeed * stride[k]);
  }

  /**
   * Takes a look if that is not done yet: where the puck is, and what any skater has by then. The
   * look at the line comes before all later ones.
   *
   * @param k the look
   */
  void take(int k) {
    if ((taken & 1 << k) != 0) {
      return;
    }
    taken |= 1 << k;
    boolean after = k >= BEFORE;
    double t = after ? line + WHEN[k] : WHEN[k] * line;
    double s = Math.max(0, t - legs.reaction());
    double left = after && line >= legs.reaction() ? leftAtLine * leaves[k] : Math.exp(fade * s);
    double u = legs.tau() * (1 - left);
    time[k] = t;
    drift[k] = t - s + u;
    stride[k] = s - u;
    int piece = path.pieceAt(t, after ? pieceAtLine : 0);
    playable[k] = path.lookAt(piece, t, place) <= PLAYABLE;
    x[k] = place[0];
    y[k] = place[1];
    if (k == BEFORE - 1) {
      leftAtLine = left;
      pieceAtLine = piece;
    }
  }
}
