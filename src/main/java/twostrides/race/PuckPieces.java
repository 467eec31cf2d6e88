package twostrides.race;

import twostrides.rink.Place;
import twostrides.rink.Rink;

/**
 * The pieces of one puck's path, laid one after another only as far as someone asks. Filled again
 * for every release, so that thousands of draws allocate nothing; for one thread.
 *
 * <p>A piece is straight or follows the curve of a corner, on the ice or in the air. Along the ice
 * it obeys {@link Slide}; in the air nothing slows it forward ({@link Flip}); along a curve the
 * boards add drag ({@link Boards#rimDrag}).
 */
final class PuckPieces extends PieceRows {

  /** Pieces followed before the path is given up; a test holds 10,000 releases to half of them. */
  static final int MOST = 64;

  /** Underside of the bar of the net, metres above the ice: 4 ft (from memory). */
  private static final double CROSSBAR = 1.22;

  private final double goalPlane;
  private final double post;

  private int count;

  /** How many pieces are known to their end: all, or all but the last. */
  private int ended;

  /** Until when a puck surely moves along a piece whose end is not known, seconds. */
  private double surely;

  private double rimKeep = Double.NaN;
  private double rimDrag;

  // The puck where the next piece begins.
  private PuckSettings settings = PuckSettings.DEFAULT;
  private double iceFriction;
  private double iceDrag;
  private double time;
  private double x;
  private double y;
  private double ux;
  private double uy;
  private double v;
  private double z;
  private double vz;
  private boolean flying;
  private int turning;
  private boolean towardCurve;
  private double phi;

  PuckPieces(Rink rink) {
    super(Boards.of(rink), MOST);
    goalPlane = rink.goalLine() + rink.goalLineWidth() / 2 + Rink.PUCK_RADIUS;
    post = rink.goalWidth() / 2;
    PuckSettings ordinary = PuckSettings.DEFAULT;
    release(ordinary, ordinary.deceleration(), ordinary.drag(), 0, 0, 0, 1, 0, 0);
  }

  /**
   * Begins a new path with its first piece; a place outside the boards is taken as the nearest one
   * inside. Nothing is checked.
   *
   * @param how boards and landings
   * @param deceleration deceleration by friction on the ice, m/s2, in place of the settings'
   * @param drag drag on the ice, per metre, in place of the settings'
   * @param atX place, metres from center ice
   * @param atY place, metres from the long axis
   * @param forward speed along the ice, m/s
   * @param alongX direction up ice, of a unit vector
   * @param alongY direction to the left, of a unit vector
   * @param upward rising speed, m/s
   */
  void release(
      PuckSettings how,
      double deceleration,
      double drag,
      double atX,
      double atY,
      double forward,
      double alongX,
      double alongY,
      double upward) {
    settings = how;
    iceFriction = deceleration;
    iceDrag = drag;
    count = 0;
    ended = 0;
    time = 0;
    x = atX;
    y = atY;
    if (!(boards.outside(atX, atY) <= 0)) {
      Place in = boards.inside(new Place(atX, atY));
      x = in.x();
      y = in.y();
    }
    ux = alongX;
    uy = alongY;
    v = forward;
    z = 0;
    flying = upward >= Flip.SETTLES;
    vz = flying ? upward : 0;
    turning = 0;
    lay();
  }

  /** Center of a puck wholly past a goal line, metres from center ice. */
  double goalPlane() {
    return goalPlane;
  }

  /** Whether there is a piece of this number, laying it and following it to its end if need be. */
  boolean has(int i) {
    finish(count - 1);
    while (count <= i) {
      if (!follows(count - 1)) {
        return false;
      }
      finish(count - 1);
    }
    return true;
  }

  /**
   * Whether a piece follows one whose end is known, laying it if need be; its own end need not be
   * known then.
   */
  boolean follows(int i) {
    if (count > i + 1) {
      return true;
    }
    if (joint[i].ends()) {
      return false;
    }
    lay();
    return true;
  }

  /**
   * Number of the piece that holds a time; the last one for times after the end. Its end is known,
   * unless the puck surely still moves along it.
   */
  int at(double seconds) {
    return at(seconds, 0);
  }

  /** The same for a time that no piece before a given one holds. */
  int at(double seconds, int from) {
    int i = from;
    while (!surelyAlong(i, seconds)) {
      finish(i);
      if (seconds <= end(i) || !follows(i)) {
        break;
      }
      i++;
    }
    return i;
  }

  /** Number of the last piece. */
  int last() {
    int i = 0;
    while (has(i + 1)) {
      i++;
    }
    return i;
  }

  private void lay() {
    int i = count++;
    start[i] = time;
    fromX[i] = x;
    fromY[i] = y;
    dirX[i] = ux;
    dirY[i] = uy;
    speed[i] = v;
    height[i] = z;
    rising[i] = vz;
    air[i] = flying;
    turn[i] = turning;
    angle[i] = phi;
    friction[i] = flying ? 0 : iceFriction;
    drag[i] = (flying ? 0 : iceDrag) + (turning == 0 ? 0 : rimDrag());
    length[i] = turning == 0 ? toBoards() : boards.corner() * angleLeft();
    joint[i] = turning == 0 ? Joint.REBOUND : Joint.RIM_LEFT;
    surely = Double.NEGATIVE_INFINITY;
  }

  /**
   * Seconds since the release at which a puck that slides straight up ice meets a plane, no farther
   * than the far goal line; NaN where its end decides, which then must be known.
   */
  double meetsOnItsWay(int i, double plane) {
    if (i < ended || air[i] || turn[i] != 0) {
      return Double.NaN;
    }
    if (!(dirX[i] > 0) || !(plane > fromX[i]) || plane > goalPlane) {
      return Double.NaN;
    }
    double s = (plane - fromX[i]) / dirX[i];
    if (s > length[i]) {
      return Double.NaN;
    }
    double t = start[i] + Slide.timeTo(speed[i], friction[i], drag[i], s);
    surely = t > surely ? t : surely;
    return t;
  }

  @Override
  boolean surelyAlong(int i, double seconds) {
    return i >= ended && seconds <= surely;
  }

  /** Follows a piece to its end. */
  void finish(int i) {
    if (i < ended) {
      return;
    }
    ended = i + 1;
    measure(i);
    if (turning == 0) {
      net(i);
    }
    go(i);
  }

  /** Metres to the boards; notes whether a curve is met there, which rounding could hide later. */
  private double toBoards() {
    double s = boards.toRectangle(x, y, ux, uy);
    double hitX = x + ux * s;
    double hitY = y + uy * s;
    towardCurve = boards.inCorner(hitX, hitY);
    return towardCurve ? boards.toCurve(x, y, ux, uy, hitX, hitY) : s;
  }

  /** What a run along the curve adds to the drag, per metre; the logarithm is taken once. */
  private double rimDrag() {
    if (settings.rimKeep() != rimKeep) {
      rimKeep = settings.rimKeep();
      rimDrag = boards.rimDrag(rimKeep);
    }
    return rimDrag;
  }

  private double angleLeft() {
    return turning > 0 ? Math.PI / 2 - phi : phi;
  }

  /**
   * Sets how long a piece lasts, where it ends and how fast, and what ends it if not the boards.
   */
  private void measure(int i) {
    if (flying && turning == 0) {
      fly(i);
      return;
    }
    double vEnd = Slide.speedAfter(v, friction[i], drag[i], length[i]);
    if (Double.isNaN(vEnd) || v == 0) {
      length[i] = v == 0 ? 0 : Slide.stoppingDistance(v, friction[i], drag[i]);
      duration[i] = v == 0 ? 0 : Slide.stoppingTime(v, friction[i], drag[i]);
      vEnd = 0;
      joint[i] = Joint.STOPPED;
    } else {
      duration[i] = length[i] == 0 ? 0 : Slide.timeTo(v, friction[i], drag[i], length[i], vEnd);
    }
    endSpeed[i] = vEnd;
    if (flying) {
      double landing = Flip.airTime(z, vz);
      if (v == 0 || landing <= duration[i]) {
        duration[i] = landing;
        length[i] = Slide.distanceAt(v, 0, drag[i], landing);
        endSpeed[i] = Slide.speedAt(v, 0, drag[i], landing);
        joint[i] = Joint.LANDED;
      }
    }
  }

  /** The same in straight flight, which nothing slows. */
  private void fly(int i) {
    double landing = Flip.airTime(z, vz);
    endSpeed[i] = v;
    duration[i] = length[i] / v;
    if (v == 0 || landing <= duration[i]) {
      duration[i] = landing;
      length[i] = v * landing;
      joint[i] = Joint.LANDED;
    }
  }

  /** Ends a straight piece in the net when it goes in from the front. */
  private void net(int i) {
    double side = ux > 0 ? 1 : -1;
    double toPlane = goalPlane - side * x;
    double s = toPlane / Math.abs(ux);
    if (!(toPlane >= 0 && s <= length[i]) || Math.abs(y + uy * s) >= post) {
      return;
    }
    double seconds = Slide.timeTo(v, friction[i], drag[i], s);
    if (flying && Flip.height(z, vz, seconds) >= CROSSBAR) {
      return;
    }
    length[i] = s;
    duration[i] = seconds;
    endSpeed[i] = Slide.speedAfter(v, friction[i], drag[i], s);
    joint[i] = Joint.IN_NET;
  }

  /** Moves the puck to the end of a piece and through what happens there. */
  private void go(int i) {
    x = xAfter(i, length[i]);
    y = yAfter(i, length[i]);
    time += duration[i];
    v = endSpeed[i];
    if (flying && joint[i] != Joint.LANDED) {
      z = Math.max(0, Flip.height(z, vz, duration[i]));
      vz -= Slide.GRAVITY * duration[i];
    }
    if (turning != 0) {
      phi = turning > 0 ? phi + length[i] / boards.corner() : phi - length[i] / boards.corner();
    }
    switch (joint[i]) {
      case REBOUND -> meetBoards(i);
      case RIM_LEFT -> leaveRim(i);
      case LANDED -> land();
      default -> {}
    }
    if (i == MOST - 1 && !joint[i].ends()) {
      joint[i] = Joint.GIVEN_UP;
    }
  }

  private void land() {
    double falling = Math.sqrt(vz * vz + 2 * Slide.GRAVITY * z);
    v = Flip.forwardAfterLanding(v, falling, settings.iceBounce(), settings.iceGrip());
    z = 0;
    vz = settings.iceBounce() * falling;
    flying = vz >= Flip.SETTLES;
    vz = flying ? vz : 0;
  }

  private void meetBoards(int i) {
    if (flying && z > settings.glassHeight()) {
      joint[i] = Joint.OVER_GLASS;
      return;
    }
    double bounce =
        flying && z > settings.boardHeight() ? settings.glassBounce() : settings.boardBounce();
    // The wall's outward normal, with both signs taken off so that mirrored paths stay mirrored.
    double signX = Math.copySign(1, x);
    double signY = Math.copySign(1, y);
    double nx = 0;
    double ny = 0;
    if (towardCurve) {
      double dx = Math.max(0, signX * x - cornerX);
      double dy = Math.max(0, signY * y - cornerY);
      double r = Math.sqrt(dx * dx + dy * dy);
      nx = dx / r;
      ny = dy / r;
      x = signX * (cornerX + boards.corner() * nx);
      y = signY * (cornerY + boards.corner() * ny);
    } else if (Math.abs(y) <= cornerY) {
      nx = 1;
      x = signX * boards.halfLength();
    } else {
      ny = 1;
      y = signY * boards.halfWidth();
    }
    double wx = signX * ux;
    double wy = signY * uy;
    double into = Math.max(0, wx * nx + wy * ny);
    double along = wy * nx - wx * ny;
    if (towardCurve && into < Math.sin(settings.rimAngle())) {
      v *= Math.abs(Boards.alongAfter(along, into, 0, settings.boardGrip()));
      turning = along > 0 ? 1 : -1;
      phi = Math.atan2(ny, nx);
      joint[i] = Joint.RIM_ENTERED;
      return;
    }
    double off = bounce * into;
    double kept = Boards.alongAfter(along, into, bounce, settings.boardGrip());
    double length = Math.sqrt(off * off + kept * kept);
    v *= length;
    if (length > 0) {
      ux = signX * (-off * nx - kept * ny) / length;
      uy = signY * (-off * ny + kept * nx) / length;
    }
  }

  /** Sets the puck exactly on the straight boards after a corner, moving along them. */
  private void leaveRim(int i) {
    double signX = Math.copySign(1, fromX[i]);
    double signY = Math.copySign(1, fromY[i]);
    boolean toSide = turning > 0;
    x = signX * (toSide ? cornerX : boards.halfLength());
    y = signY * (toSide ? boards.halfWidth() : cornerY);
    ux = toSide ? -signX : 0;
    uy = toSide ? 0 : -signY;
    turning = 0;
  }
}
