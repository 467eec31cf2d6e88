package twostrides.exits;

import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.game.StopReason;

/**
 * Whether a puck let go inside the own zone left it, and how far it went. Decided by the next touch
 * of anyone; where play stopped first, by what the stop and the draw show.
 */
final class LeftZone {

  private final Play play;
  private final StopFinder stops;

  LeftZone(Play play) {
    this.play = play;
    this.stops = new StopFinder(play);
  }

  /**
   * The way out of a release or a missed pass from inside the own zone.
   *
   * @param release the release
   */
  WayOut way(Move release) {
    Reach reach = reach(release);
    if (reach == Reach.INSIDE) {
      return WayOut.KEPT_IN;
    }
    if (release.kind() == Move.Kind.MISSED_PASS) {
      return WayOut.MISSED_PASS;
    }
    return reach == Reach.FAR ? WayOut.LONG_CLEARANCE : WayOut.CHIP;
  }

  /** How far a puck went before it was touched or play stopped. */
  private enum Reach {
    INSIDE,
    NEUTRAL,
    FAR
  }

  private Reach reach(Move release) {
    if (release.goal()) {
      return Reach.FAR;
    }
    String team = release.team().orElseThrow();
    Move next = play.next(release);
    if (!next.ends()) {
      // A next touch with no place says only that the puck was touched; without more it is not
      // shown to have left.
      return next.x().isEmpty() ? Reach.INSIDE : reachOf(next, team);
    }
    return afterStop(release, team);
  }

  private Reach reachOf(Move m, String team) {
    OptionalDouble x = m.x(team);
    if (play.rink(m).inOwnZone(x.orElseThrow())) {
      return Reach.INSIDE;
    }
    return play.rink(m).pastFarBlueLine(x.getAsDouble()) ? Reach.FAR : Reach.NEUTRAL;
  }

  private Reach afterStop(Move release, String team) {
    Optional<Move> faceoff = play.nextFaceoff(release);
    Move end = faceoff.orElseGet(() -> play.periodEnd(release));
    Optional<String> written =
        stops.writtenStop(end).flatMap(Move::stop).filter(w -> !w.equals(MovesStage.PERIOD_END));
    boolean leftForSure =
        written.isPresent()
            && (written.get().equals(StopReason.ICING.word())
                || written.get().equals(StopReason.OFFSIDE.word()));
    if (leftForSure) {
      return Reach.FAR;
    }
    if (faceoff.isEmpty() || faceoff.get().x().isEmpty()) {
      return sentTheLength(release, end) ? Reach.FAR : Reach.INSIDE;
    }
    if (!play.surelyInOwnZone(faceoff.get(), team)) {
      return reachOf(faceoff.get(), team);
    }
    boolean far =
        stops.cause(team, faceoff.get()).icing()
            || (written.isEmpty() && sentTheLength(release, end));
    return far ? Reach.FAR : Reach.INSIDE;
  }

  private boolean sentTheLength(Move release, Move until) {
    return release.kind() == Move.Kind.SENT && play.timeToGoTheLength(release, until);
  }
}
