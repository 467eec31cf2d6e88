package twostrides.race.puck;

import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.rink.Place;

/**
 * One piece of a puck's path, between two rebounds, landings or ends of a corner: on the ice or in
 * the air, straight or along a corner.
 *
 * @param start seconds since the release at which it begins
 * @param track the line it follows, beyond its end where the puck stops or lands before
 * @param slide how fast it goes along it
 * @param flight its height; empty on the ice
 * @param length metres to its end
 * @param duration seconds to its end
 * @param joint what happens at its end
 */
record PuckPiece(
    double start,
    Track track,
    Slide slide,
    Optional<Flight> flight,
    double length,
    double duration,
    Joint joint) {

  /** Seconds since the release at which it ends. */
  double end() {
    return start + duration;
  }

  /** Where it begins. */
  Place from() {
    return track.after(0);
  }

  /** Where it ends. */
  Place to() {
    return track.after(length);
  }

  /** Horizontal speed at its beginning, m/s. */
  double speed() {
    return slide.speed();
  }

  /** Horizontal speed at its end, before what happens there, m/s. */
  double endSpeed() {
    return joint == Joint.STOPPED ? 0 : slide.speedAfter(length).orElse(0);
  }

  /** The same with something else at its end. */
  PuckPiece endingIn(Joint other) {
    return new PuckPiece(start, track, slide, flight, length, duration, other);
  }

  /**
   * Metres along it, from 0 to its length.
   *
   * @param time seconds since the release
   */
  double along(double time) {
    return time >= end() ? length : Math.min(length, slide.distanceAt(Math.max(0, time - start)));
  }

  /**
   * Metres above the ice.
   *
   * @param time seconds since the release
   */
  double heightAt(double time) {
    return flight.map(f -> f.after(within(time)).height()).orElse(0.0);
  }

  /**
   * Horizontal speed, m/s.
   *
   * @param time seconds since the release
   */
  double speedAt(double time) {
    return slide.speedAt(within(time));
  }

  private double within(double time) {
    return Math.max(0, Math.min(duration, time - start));
  }

  /**
   * Seconds since the release until the puck is at or up ice of a plane; empty when it is not on
   * this piece.
   *
   * @param x the plane, metres from center ice
   */
  OptionalDouble reaches(double x) {
    if (from().x() >= x) {
      return OptionalDouble.of(start);
    }
    OptionalDouble s = track.meets(x);
    if (s.isEmpty() || s.getAsDouble() > length) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(start + slide.timeTo(s.getAsDouble()).orElse(duration));
  }
}
