package twostrides.race.puck;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.rink.Place;
import twostrides.rink.Rink;

/**
 * Follows a puck from piece to piece. Along the ice it obeys {@link Slide}; in the air nothing
 * slows it forward ({@link Flight}); along a curve the boards add drag ({@link Boards#rimDrag}).
 */
final class Follower {

  /** Pieces followed before the path is given up; a test holds 10,000 releases to half of them. */
  static final int MOST = 64;

  /** Underside of the bar of the net, metres above the ice: 4 ft (from memory). */
  private static final double CROSSBAR = 1.22;

  private final Rink rink;
  private final Boards boards;
  private final Ice ice;

  Follower(Rink rink, Ice ice) {
    this.rink = rink;
    this.boards = Boards.of(rink);
    this.ice = ice;
  }

  /**
   * The pieces of a puck's path, to its end.
   *
   * @param release how it leaves the stick
   */
  List<PuckPiece> follow(PuckRelease release) {
    Place from = boards.inside(new Place(release.x(), release.y()));
    Track track = boards.ahead(from, Math.cos(release.direction()), Math.sin(release.direction()));
    Flight flight = new Flight(0, release.speed() * Math.sin(release.loft()));
    List<PuckPiece> pieces = new ArrayList<>();
    PuckPiece piece = piece(0, track, release.speed() * Math.cos(release.loft()), flight);
    pieces.add(piece);
    while (!piece.joint().ends() && pieces.size() < MOST) {
      piece = next(piece);
      pieces.add(piece);
    }
    if (!piece.joint().ends()) {
      pieces.set(MOST - 1, piece.endingIn(Joint.GIVEN_UP));
    }
    return List.copyOf(pieces);
  }

  /**
   * Follows one piece to its end.
   *
   * @param start seconds since the release
   * @param track where it goes
   * @param speed horizontal speed, m/s
   * @param flight its height, on the ice where it does not rise fast enough to leave it
   */
  private PuckPiece piece(double start, Track track, double speed, Flight flight) {
    boolean flying = flight.height() > 0 || flight.leavesTheIce();
    Slide slide =
        new Slide(speed, flying ? 0 : ice.deceleration(), (flying ? 0 : ice.drag()) + track.drag());
    OptionalDouble toEnd = slide.timeTo(track.length());
    boolean stops = speed == 0 || toEnd.isEmpty();
    double length = stops ? slide.stoppingDistance() : track.length();
    double duration = stops ? slide.stoppingTime() : toEnd.getAsDouble();
    Joint joint = stops ? Joint.STOPPED : Joint.REBOUND;
    if (flying && (stops || flight.airTime() <= duration)) {
      duration = flight.airTime();
      length = slide.distanceAt(duration);
      joint = Joint.LANDED;
    }
    PuckPiece piece =
        new PuckPiece(
            start,
            track,
            slide,
            flying ? Optional.of(flight) : Optional.empty(),
            length,
            duration,
            joint);
    if (!(track instanceof Track.Straight straight)) {
      return joint == Joint.REBOUND ? piece.endingIn(Joint.RIM_LEFT) : piece;
    }
    return intoNet(piece, straight)
        .orElse(joint == Joint.REBOUND ? atBoards(piece, straight) : piece);
  }

  /** The piece to where it goes into a net from the front; empty where it does not. */
  private Optional<PuckPiece> intoNet(PuckPiece piece, Track.Straight way) {
    double plane = Math.copySign(PuckPath.goalPlane(rink), way.ux());
    OptionalDouble s = way.meets(plane);
    if (s.isEmpty() || s.getAsDouble() > piece.length()) {
      return Optional.empty();
    }
    double length = s.getAsDouble();
    double seconds = piece.slide().timeTo(length).orElse(piece.duration());
    boolean in =
        Math.abs(way.after(length).y()) < rink.goalWidth() / 2
            && piece.heightAt(piece.start() + seconds) < CROSSBAR;
    return in
        ? Optional.of(
            new PuckPiece(
                piece.start(), way, piece.slide(), piece.flight(), length, seconds, Joint.IN_NET))
        : Optional.empty();
  }

  private static PuckPiece atBoards(PuckPiece piece, Track.Straight way) {
    if (piece.heightAt(piece.end()) > Boards.GLASS_HEIGHT) {
      return piece.endingIn(Joint.OVER_GLASS);
    }
    boolean rim = way.toCurve() && Impact.of(way).followsCurve();
    return piece.endingIn(rim ? Joint.RIM_ENTERED : Joint.REBOUND);
  }

  /** The piece after one that does not end the path. */
  private PuckPiece next(PuckPiece before) {
    double speed = before.endSpeed();
    Flight flight = before.flight().map(f -> f.after(before.duration())).orElse(new Flight(0, 0));
    Track track = before.track();
    switch (before.joint()) {
      case LANDED -> {
        Flight landing = before.flight().orElseThrow();
        speed = landing.forwardAfterLanding(speed);
        flight = landing.bounce();
        track = track.rest(before.length());
      }
      case RIM_LEFT -> track = ((Track.Curve) track).exit();
      case RIM_ENTERED -> {
        Impact impact = Impact.of((Track.Straight) track);
        speed *= impact.keptOnCurve();
        track = impact.curve();
      }
      default -> {
        Impact impact = Impact.of((Track.Straight) track);
        double bounce = flight.height() > Boards.HEIGHT ? Boards.GLASS_BOUNCE : Boards.BOUNCE;
        speed *= impact.kept(bounce);
        track = impact.rebound(bounce);
      }
    }
    return piece(before.end(), track, speed, flight);
  }
}
