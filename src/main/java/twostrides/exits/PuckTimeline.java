package twostrides.exits;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import twostrides.game.Fixture;
import twostrides.game.Game;
import twostrides.race.TravelBound;
import twostrides.rink.Rink;
import twostrides.rink.Zone;

/**
 * The events of one game with the questions that are asked of them: what came next, where the next
 * face-off was, whether a place lies in a team's own zone.
 */
final class PuckTimeline {

  private final List<PuckEvent> events;
  private final int[] periodStart;
  private final int[] periodEnd;
  private final Game game;
  private final Fixture fixture;
  private final Settings settings;
  private final OnIceNames names;
  private final boolean writesShots;

  PuckTimeline(Game game, ManpowerRead manpower, Settings settings) {
    this.events = TimelineBuilder.events(game, manpower.strengths());
    this.game = game;
    this.fixture = game.fixture();
    this.settings = settings;
    this.names = OnIceNames.of(game);
    this.writesShots = events.stream().anyMatch(PuckEvent::shot);
    int n = events.size();
    periodStart = new int[n];
    periodEnd = new int[n];
    for (int i = 1; i < n; i++) {
      boolean same = events.get(i).period() == events.get(i - 1).period();
      periodStart[i] = same ? periodStart[i - 1] : i;
    }
    for (int i = n - 1; i >= 0; i--) {
      boolean last = i == n - 1 || periodStart[i + 1] == i + 1;
      periodEnd[i] = last ? i + 1 : periodEnd[i + 1];
    }
  }

  List<PuckEvent> events() {
    return events;
  }

  Game game() {
    return game;
  }

  Fixture fixture() {
    return fixture;
  }

  Rink rink() {
    return game.rink();
  }

  Settings settings() {
    return settings;
  }

  /** Whether some shot is written: only then does "no shot" mean none. */
  boolean writesShots() {
    return writesShots;
  }

  String opponent(PuckEvent e) {
    return game.opponentOf(e.team().orElseThrow());
  }

  /** A team's skaters on the ice by their full names, sorted; empty where no row lists them. */
  List<String> onIce(PuckEvent e, String team) {
    if (e.team().isEmpty() || e.kind() == PuckEvent.Kind.STOP) {
      return List.of();
    }
    return names.of(team, e.by(team) ? e.row().ownOnIce() : e.row().opponentOnIce());
  }

  /** What follows an event in its period. */
  List<PuckEvent> after(PuckEvent e) {
    return events.subList(e.index() + 1, periodEnd[e.index()]);
  }

  /** What came before an event in its period, in the order of play. */
  List<PuckEvent> before(PuckEvent e) {
    return events.subList(periodStart[e.index()], e.index());
  }

  /** The event after one; every period ends with a stop, so a touch always has one. */
  PuckEvent next(PuckEvent e) {
    return events.get(e.index() + 1);
  }

  /** The next face-off of the same period. */
  Optional<PuckEvent> nextFaceOff(PuckEvent from) {
    return after(from).stream().filter(e -> e.kind() == PuckEvent.Kind.FACEOFF).findFirst();
  }

  /**
   * The next face-off of the same period with no control on the way, but for control that does not
   * count; empty otherwise.
   *
   * @param from the release, or the touch before
   * @param mayControl control that does not end the search
   */
  Optional<PuckEvent> faceOffWithoutControl(PuckEvent from, Predicate<PuckEvent> mayControl) {
    for (PuckEvent e : after(from)) {
      if (e.control() && !mayControl.test(e)) {
        return Optional.empty();
      }
      if (e.kind() == PuckEvent.Kind.FACEOFF) {
        return Optional.of(e);
      }
    }
    return Optional.empty();
  }

  /** The last event of a period: its end. */
  PuckEvent periodEnd(PuckEvent from) {
    return events.get(periodEnd[from.index()] - 1);
  }

  /** The zone of an event, seen by a team; empty when the sheet gives neither place nor zone. */
  Optional<Zone> zone(PuckEvent e, String team) {
    return e.zone(rink(), team);
  }

  /** Whether a place or zone is known and lies in a team's own zone. */
  boolean surelyInOwnZone(PuckEvent e, String team) {
    return zone(e, team).equals(Optional.of(Zone.OWN));
  }

  /** Metres short of center, for a puck let go before it touched the red line; empty otherwise. */
  OptionalDouble shortOfCenter(PuckEvent e) {
    if (!e.release() || e.x().isEmpty()) {
      return OptionalDouble.empty();
    }
    double s = rink().shortOfCenter(e.x().getAsDouble());
    return s > 0 ? OptionalDouble.of(s) : OptionalDouble.empty();
  }

  /**
   * Metres along the rink from an event to the far goal line: from its place, or from both ends of
   * the own zone, blue line and goal line, where the sheet says no more; else empty.
   */
  double[] toFarGoalLine(PuckEvent e) {
    double line = rink().goalLine();
    if (e.x().isPresent()) {
      return new double[] {line - e.x().getAsDouble()};
    }
    return e.zone().equals(Optional.of(Zone.OWN))
        ? new double[] {line + rink().blueLineNeutralEdge(), 2 * line}
        : new double[0];
  }

  /**
   * How the time between two events fits a puck iced from the place of the first; of a zone, it
   * fits only where it fits both its ends.
   */
  TravelBound.Fit timeToGoTheLength(PuckEvent release, PuckEvent until) {
    return Arrays.stream(toFarGoalLine(release))
        .mapToObj(
            far ->
                settings
                    .travel()
                    .fit(Math.max(0, far), until.elapsed() - release.elapsed(), game.clockStep()))
        .filter(fit -> fit != TravelBound.Fit.FITS)
        .findFirst()
        .orElse(TravelBound.Fit.FITS);
  }

  /** Whether any puck can have gone to the far goal line in the time between two events. */
  boolean mayHaveGoneTheLength(PuckEvent release, PuckEvent until) {
    return settings
        .travel()
        .possible(
            Math.max(0, Arrays.stream(toFarGoalLine(release)).max().orElseThrow()),
            until.elapsed() - release.elapsed(),
            game.clockStep());
  }

  /** The last control touch before an event, in the same period and since the face-off before. */
  Optional<PuckEvent> lastControlBefore(PuckEvent e) {
    List<PuckEvent> before = before(e);
    for (int i = before.size() - 1; i >= 0; i--) {
      if (before.get(i).control()) {
        return Optional.of(before.get(i));
      }
      if (before.get(i).kind() == PuckEvent.Kind.FACEOFF) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }
}
