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

  // The puck where the next piece begins.
  private PuckSettings settings = PuckSettings.DEFAULT;
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
    release(PuckSettings.DEFAULT, 0, 0, 0, 0, 0);
  }

  /**
   * Begins a new path with its first piece; a place outside the boards is taken as the nearest one
   * inside.
   */
  void release(
      PuckSettings how, double atX, double atY, double forward, double direction, double upward) {
    settings = how;
    count = 0;
    time = 0;
    x = atX;
    y = atY;
    if (!(boards.outside(atX, atY) <= 0)) {
      Place in = boards.inside(new Place(atX, atY));
      x = in.x();
      y = in.y();
    }
    ux = Math.cos(direction);
    uy = Math.sin(direction);
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

  /** Whether there is a piece of this number, laying it if need be. */
  boolean has(int i) {
    while (count <= i) {
      if (joint[count - 1].ends()) {
        return false;
      }
      lay();
    }
    return true;
  }

  /** Number of the piece that holds a time; the last one for times after the end. */
  int at(double seconds) {
    int i = 0;
    while (seconds > end(i) && has(i + 1)) {
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
    friction[i] = flying ? 0 : settings.deceleration();
    drag[i] =
        (flying ? 0 : settings.drag()) + (turning == 0 ? 0 : boards.rimDrag(settings.rimKeep()));
    length[i] = turning == 0 ? toBoards() : boards.corner() * angleLeft();
    joint[i] = turning == 0 ? Joint.REBOUND : Joint.RIM_LEFT;
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

  private double angleLeft() {
    return turning > 0 ? Math.PI / 2 - phi : phi;
  }

  /**
   * Sets how long a piece lasts, where it ends and how fast, and what ends it if not the boards.
   */
  private void measure(int i) {
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
