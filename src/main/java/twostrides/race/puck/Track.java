package twostrides.race.puck;

import java.util.OptionalDouble;
import twostrides.rink.Place;

/** The line on the rink that a piece of a puck's path follows, to the boards or round a corner. */
sealed interface Track {

  /** Metres to its end. */
  double length();

  /**
   * A place on it.
   *
   * @param s metres from its beginning
   */
  Place after(double s);

  /**
   * What is left of it.
   *
   * @param s metres from its beginning
   */
  Track rest(double s);

  /** Drag that it adds to that of the ice, per metre. */
  double drag();

  /**
   * Metres from its beginning at which it meets a plane across the ice, which it does at most once:
   * a curve is a quarter turn. Empty where that is not on it.
   *
   * @param x the plane, metres from center ice
   */
  OptionalDouble meets(double x);

  /** A number of metres where it is on a track. */
  private static OptionalDouble on(Track track, double s) {
    return s >= 0 && s <= track.length() ? OptionalDouble.of(s) : OptionalDouble.empty();
  }

  /**
   * A straight way to the boards.
   *
   * @param boards the boards
   * @param from where it begins
   * @param ux direction up ice, of a unit vector
   * @param uy direction to the left, of a unit vector
   * @param length metres to the boards
   * @param toCurve whether it ends at the curve of a corner
   */
  record Straight(Boards boards, Place from, double ux, double uy, double length, boolean toCurve)
      implements Track {

    @Override
    public Place after(double s) {
      return new Place(from.x() + ux * s, from.y() + uy * s);
    }

    @Override
    public Straight rest(double s) {
      return boards.ahead(after(s), ux, uy);
    }

    @Override
    public double drag() {
      return 0;
    }

    @Override
    public OptionalDouble meets(double x) {
      return on(this, (x - from.x()) / ux);
    }
  }

  /**
   * A way along the curve of a corner.
   *
   * @param boards the boards
   * @param signX 1 for a corner up ice, -1 for one down ice
   * @param signY 1 for a corner on the left, -1 for one on the right
   * @param angle where it begins, from the rink's length toward its width, radians
   * @param turn 1 with rising angle, toward the side; -1 with falling angle, toward the end
   */
  record Curve(Boards boards, double signX, double signY, double angle, int turn) implements Track {

    @Override
    public double length() {
      return boards.corner() * (turn > 0 ? Math.PI / 2 - angle : angle);
    }

    @Override
    public Place after(double s) {
      double at = angle + turn * (s / boards.corner());
      return new Place(
          signX * (boards.cornerX() + boards.corner() * Math.cos(at)),
          signY * (boards.cornerY() + boards.corner() * Math.sin(at)));
    }

    @Override
    public Curve rest(double s) {
      return new Curve(boards, signX, signY, angle + turn * (s / boards.corner()), turn);
    }

    @Override
    public double drag() {
      return boards.rimDrag();
    }

    @Override
    public OptionalDouble meets(double x) {
      double depth = (signX * x - boards.cornerX()) / boards.corner();
      return depth >= 0 && depth <= 1
          ? on(this, turn * (Math.acos(depth) - angle) * boards.corner())
          : OptionalDouble.empty();
    }

    /** The way along the straight boards that follows, exactly on them. */
    Straight exit() {
      return turn > 0
          ? boards.ahead(new Place(signX * boards.cornerX(), signY * boards.halfWidth()), -signX, 0)
          : boards.ahead(
              new Place(signX * boards.halfLength(), signY * boards.cornerY()), 0, -signY);
    }
  }
}
