package twostrides.exits;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import twostrides.game.StopReason;
import twostrides.race.TravelBound;

/**
 * Whether a puck let go inside the own zone left it, and how far it went. Decided by the next touch
 * of anyone; where play stopped first, by what the stop and the draw show.
 */
final class LeftZone {

  /** Written reasons for which the puck must have left the zone. */
  private static final Set<String> LEFT =
      Set.of(StopReason.ICING.word(), StopReason.OFFSIDE.word());

  /** Written reasons after which the draw's place says nothing of where the puck was. */
  private static final Set<String> SILENT =
      Set.of(StopReason.PENALTY.word(), StopReason.INJURY.word(), StopReason.OUT_OF_PLAY.word());

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
    if (written.filter(LEFT::contains).isPresent()) {
      return Reach.FAR;
    }
    if (written.filter(SILENT::contains).isPresent()) {
      return meantToLeave(release) ? Reach.NEUTRAL : Reach.INSIDE;
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

  /** Whether a pass was meant for somebody beyond the own zone. */
  private boolean meantToLeave(Move release) {
    return release.toX().isPresent() && !play.rink(release).inOwnZone(release.toX().getAsDouble());
  }

  private boolean sentTheLength(Move release, Move until) {
    return release.kind() == Move.Kind.SENT
        && release.x().isPresent()
        && play.timeToGoTheLength(release, until) != TravelBound.Fit.TOO_QUICK;
  }
}
