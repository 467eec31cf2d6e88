package twostrides.race;

/**
 * The pieces of a puck's path as columns of numbers, one row a piece, and what can be asked of one
 * piece. Rows are written by {@link PuckPieces} only.
 */
abstract sealed class PieceRows permits PuckPieces {

  final Boards boards;
  final double cornerX;
  final double cornerY;

  // One row a piece.
  final double[] start;
  final double[] duration;
  final double[] fromX;
  final double[] fromY;
  final double[] dirX;
  final double[] dirY;
  final double[] speed;
  final double[] endSpeed;
  final double[] friction;
  final double[] drag;
  final double[] length;
  final double[] height;
  final double[] rising;
  final boolean[] air;

  /** 0 straight, 1 or -1 along a curve with rising or falling angle. */
  final int[] turn;

  /** Angle at which a curve begins, from the rink's length toward its width, radians. */
  final double[] angle;

  final Joint[] joint;

  /**
   * Empty rows.
   *
   * @param boards outline for the puck's center
   * @param rows how many pieces there can be
   */
  PieceRows(Boards boards, int rows) {
    this.boards = boards;
    cornerX = boards.cornerX();
    cornerY = boards.cornerY();
    start = new double[rows];
    duration = new double[rows];
    fromX = new double[rows];
    fromY = new double[rows];
    dirX = new double[rows];
    dirY = new double[rows];
    speed = new double[rows];
    endSpeed = new double[rows];
    friction = new double[rows];
    drag = new double[rows];
    length = new double[rows];
    height = new double[rows];
    rising = new double[rows];
    air = new boolean[rows];
    turn = new int[rows];
    angle = new double[rows];
    joint = new Joint[rows];
  }

  /** Whether the puck surely still moves along a piece at a time, its end not yet known. */
  abstract boolean surelyAlong(int i, double seconds);

  double start(int i) {
    return start[i];
  }

  double end(int i) {
    return start[i] + duration[i];
  }

  double speed(int i) {
    return speed[i];
  }

  double endSpeed(int i) {
    return endSpeed[i];
  }

  Joint joint(int i) {
    return joint[i];
  }

  PuckPiece.Kind kind(int i) {
    if (air[i]) {
      return turn[i] == 0 ? PuckPiece.Kind.FLIGHT : PuckPiece.Kind.RIM_FLIGHT;
    }
    return turn[i] == 0 ? PuckPiece.Kind.SLIDE : PuckPiece.Kind.RIM;
  }

  /** Metres along a piece at a time of the path, from 0 to its length. */
  double along(int i, double seconds) {
    double t = seconds - start[i];
    if (!surelyAlong(i, seconds) && t >= duration[i]) {
      return length[i];
    }
    return t <= 0
        ? 0
        : Math.min(length[i], Slide.distanceMoving(speed[i], friction[i], drag[i], t));
  }

  double length(int i) {
    return length[i];
  }

  double xAfter(int i, double s) {
    return turn[i] == 0
        ? fromX[i] + dirX[i] * s
        : Math.copySign(cornerX + boards.corner() * Math.cos(angleAfter(i, s)), fromX[i]);
  }

  double yAfter(int i, double s) {
    return turn[i] == 0
        ? fromY[i] + dirY[i] * s
        : Math.copySign(cornerY + boards.corner() * Math.sin(angleAfter(i, s)), fromY[i]);
  }

  private double angleAfter(int i, double s) {
    return angle[i] + turn[i] * (s / boards.corner());
  }

  double heightAt(int i, double seconds) {
    if (!air[i]) {
      return 0;
    }
    double t = Math.min(seconds, end(i)) - start[i];
    return Math.max(0, Flip.height(height[i], rising[i], t));
  }

  double speedAt(int i, double seconds) {
    double t = seconds - start[i];
    if (!surelyAlong(i, seconds)) {
      t = Math.max(0, Math.min(duration[i], t));
    }
    return Slide.speedAt(speed[i], friction[i], drag[i], t);
  }

  /**
   * Metres along a piece at which the puck's center meets a plane across the ice; NaN when not. A
   * piece meets a plane at most once: a curve is a quarter turn.
   */
  double meets(int i, double plane) {
    double s;
    if (turn[i] == 0) {
      s = (plane - fromX[i]) / dirX[i];
    } else {
      double depth = (Math.copySign(plane, plane * fromX[i]) - cornerX) / boards.corner();
      s = depth >= 0 && depth <= 1 ? turn[i] * (Math.acos(depth) - angle[i]) * boards.corner() : -1;
    }
    return s >= 0 && s <= length[i] ? s : Double.NaN;
  }

  /** Seconds since the release at which the puck is a distance along a piece. */
  double timeAlong(int i, double s) {
    if (s >= length[i]) {
      return end(i);
    }
    return start[i] + Slide.timeTo(speed[i], friction[i], drag[i], s);
  }
}
