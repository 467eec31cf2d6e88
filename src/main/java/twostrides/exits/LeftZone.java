package twostrides.exits;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import twostrides.game.StopReason;
import twostrides.race.TravelBound;
import twostrides.rink.Zone;

/**
 * Whether a puck let go inside the own zone left it, and how far it went. Decided by the next touch
 * of anyone; where play stopped first, by what the stop and the face-off show.
 */
final class LeftZone {

  /** Written reasons for which the puck must have left the zone. */
  private static final Set<StopReason> LEFT = EnumSet.of(StopReason.ICING, StopReason.OFFSIDE);

  /** Written reasons after which the face-off's place says nothing of where the puck was. */
  private static final Set<StopReason> SILENT =
      EnumSet.of(StopReason.PENALTY, StopReason.INJURY, StopReason.OUT_OF_PLAY);

  private final PuckTimeline timeline;
  private final StoppageCause stops;

  LeftZone(PuckTimeline timeline) {
    this.timeline = timeline;
    this.stops = new StoppageCause(timeline);
  }

  /**
   * The way out of a release or a missed pass from inside the own zone.
   *
   * @param release the release
   */
  WayOut way(PuckEvent release) {
    Reach reach = reach(release);
    if (reach == Reach.INSIDE) {
      return WayOut.KEPT_IN;
    }
    if (release.kind() == PuckEvent.Kind.MISSED_PASS) {
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

  private Reach reach(PuckEvent release) {
    if (release.goal()) {
      return Reach.FAR;
    }
    String team = release.team().orElseThrow();
    PuckEvent next = timeline.next(release);
    if (!next.ends()) {
      return reachOf(next, team);
    }
    return afterStop(release, team);
  }

  /**
   * How far a puck was when it was touched; a touch with neither place nor zone does not show that
   * it left.
   */
  private Reach reachOf(PuckEvent m, String team) {
    return switch (timeline.zone(m, team).orElse(Zone.OWN)) {
      case OWN -> Reach.INSIDE;
      case NEUTRAL -> Reach.NEUTRAL;
      case ATTACKING -> Reach.FAR;
    };
  }

  private Reach afterStop(PuckEvent release, String team) {
    Optional<PuckEvent> faceoff = timeline.nextFaceOff(release);
    PuckEvent end = faceoff.orElseGet(() -> timeline.periodEnd(release));
    Optional<StopReason> written =
        stops.writtenStop(end).flatMap(PuckEvent::stop).filter(w -> w != StopReason.PERIOD_END);
    if (written.filter(LEFT::contains).isPresent()) {
      return Reach.FAR;
    }
    if (written.filter(SILENT::contains).isPresent()) {
      return meantToLeave(release) ? Reach.NEUTRAL : Reach.INSIDE;
    }
    if (faceoff.isEmpty() || timeline.zone(faceoff.get(), team).isEmpty()) {
      return sentTheLength(release, end) ? Reach.FAR : Reach.INSIDE;
    }
    if (!timeline.surelyInOwnZone(faceoff.get(), team)) {
      return reachOf(faceoff.get(), team);
    }
    boolean far =
        stops.cause(team, faceoff.get()).cause().icing()
            || (written.isEmpty() && sentTheLength(release, end));
    return far ? Reach.FAR : Reach.INSIDE;
  }

  /** Whether a pass was meant for somebody beyond the own zone. */
  private boolean meantToLeave(PuckEvent release) {
    return release
        .row()
        .target()
        .map(p -> timeline.rink().zone(p.x()))
        .or(() -> release.row().toZone())
        .filter(z -> z != Zone.OWN)
        .isPresent();
  }

  private boolean sentTheLength(PuckEvent release, PuckEvent until) {
    return release.kind() == PuckEvent.Kind.SENT
        && timeline.toFarGoalLine(release).length > 0
        && timeline.timeToGoTheLength(release, until) != TravelBound.Fit.TOO_QUICK;
  }
}
