package twostrides.exits;

import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.stats.CensoredTime;

/** What followed the exits and releases of one game. */
final class ExitOutcomes {

  /** Whose doing a face-off in the own zone must be to follow an exit or a release. */
  enum Owner {
    /** An attempt's: the team may have touched the puck again. */
    ATTEMPT,
    /** A release's: nobody may have had control since. */
    RELEASE
  }

  private final PuckTimeline timeline;
  private final StoppageCause stops;

  ExitOutcomes(PuckTimeline timeline) {
    this.timeline = timeline;
    this.stops = new StoppageCause(timeline);
  }

  /**
   * What followed.
   *
   * @param release the release, or the touch at which an exit was settled
   * @param owner whose doing the restart must be
   */
  ExitOutcome of(PuckEvent release, Owner owner) {
    String team = release.team().orElseThrow();
    Optional<PuckEvent> faceOff =
        timeline.faceOffWithoutControl(release, e -> owner == Owner.ATTEMPT && e.by(team));
    Optional<PuckEvent> restart = faceOff.filter(f -> timeline.surelyInOwnZone(f, team));
    // A face-off with neither place nor zone leaves open in whose zone it was.
    boolean known = faceOff.isEmpty() || timeline.zone(faceOff.get(), team).isPresent();
    return new ExitOutcome(
        Optional.of(nextTouch(release, team)),
        known ? Optional.of(restart.isPresent()) : Optional.empty(),
        restart
            .map(f -> stops.cause(team, f).cause())
            .orElse(known ? RestartCause.NONE : RestartCause.UNKNOWN),
        restart.map(f -> OptionalDouble.of(f.elapsed())).orElse(OptionalDouble.empty()),
        Optional.of(restartWithinWindow(release, team)),
        reentry(release, team),
        against(restart.orElse(release), team));
  }

  private NextTouch nextTouch(PuckEvent release, String team) {
    PuckEvent next = timeline.next(release);
    if (next.ends() || next.kind() == PuckEvent.Kind.WHISTLE_TOUCH) {
      return NextTouch.NONE;
    }
    return new NextTouch(
        next.by(team) ? NextTouch.By.OWN : NextTouch.By.OPPONENT,
        next.x(team),
        next.kind() == PuckEvent.Kind.RECEPTION
            ? OptionalDouble.empty()
            : OptionalDouble.of(next.elapsed() - release.elapsed()));
  }

  private boolean restartWithinWindow(PuckEvent release, String team) {
    double until = release.elapsed() + timeline.settings().window();
    return timeline.after(release).stream()
        .takeWhile(e -> e.elapsed() <= until)
        .anyMatch(e -> e.kind() == PuckEvent.Kind.FACEOFF && timeline.surelyInOwnZone(e, team));
  }

  private Optional<CensoredTime> reentry(PuckEvent release, String team) {
    for (PuckEvent e : timeline.after(release)) {
      boolean back = e.control() && !e.by(team) && timeline.surelyInOwnZone(e, team);
      if (e.ends() || back) {
        return Optional.of(new CensoredTime(e.elapsed() - release.elapsed(), !e.ends()));
      }
    }
    return Optional.empty();
  }

  /** Shots and goals after an event; empty where the game's sheet writes no shots. */
  Optional<Against> against(PuckEvent from, String team) {
    if (!timeline.writesShots()) {
      return Optional.empty();
    }
    int attempts = 0;
    int goals = 0;
    int attemptsLong = 0;
    int goalsLong = 0;
    int goalsFor = 0;
    for (PuckEvent e : timeline.after(from)) {
      double after = e.elapsed() - from.elapsed();
      if (after > timeline.settings().longWindow()) {
        break;
      }
      boolean inside = after <= timeline.settings().window();
      if (e.shot() && !e.by(team)) {
        attempts += inside ? 1 : 0;
        attemptsLong++;
        goals += e.goal() && inside ? 1 : 0;
        goalsLong += e.goal() ? 1 : 0;
      } else if (e.goal() && inside) {
        goalsFor++;
      }
    }
    return Optional.of(new Against(attempts, goals, attemptsLong, goalsLong, goalsFor));
  }
}
