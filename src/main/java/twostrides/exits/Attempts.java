package twostrides.exits;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import twostrides.rink.Zone;

/**
 * Finds the exit attempts of a game, each with its way out and its mark at center.
 *
 * <p>An attempt runs from a team's first control in its own zone until the puck leaves by its
 * doing, the other team has it, or play stops; a release or a missed pass ends it too, since
 * control ends there. Brought back under control behind the own blue line, the puck starts a new
 * attempt.
 *
 * <p>Where a control touch on the way has no place, the sheet cannot say how the puck crossed the
 * line: the way out is then "moved, means unknown".
 */
final class Attempts {

  private final PuckTimeline timeline;
  private final LeftZone leftZone;

  private Attempts(PuckTimeline timeline) {
    this.timeline = timeline;
    this.leftZone = new LeftZone(timeline);
  }

  /**
   * The attempts of a game in the order of play.
   *
   * @param timeline the game's events
   */
  static List<Attempt> of(PuckTimeline timeline) {
    Attempts finder = new Attempts(timeline);
    List<Attempt> found = new ArrayList<>();
    int i = 0;
    while (i < timeline.events().size()) {
      PuckEvent e = timeline.events().get(i);
      if (finder.begins(e)) {
        Attempt a = finder.attempt(e);
        found.add(finder.fromReceiversRow(a));
        // The event that brings the puck back starts the next attempt, so it is looked at again.
        boolean again = a.mark().equals(Optional.of(AtCenter.BROUGHT_BACK));
        i = Math.max(a.last().index(), i) + (again ? 0 : 1);
      } else {
        i++;
      }
    }
    return found;
  }

  /**
   * Whether an attempt begins: control in the own zone that a row writes down. Where a pass was
   * meant to be received is no such row; where the receiver is inside, his own row comes next.
   */
  private boolean begins(PuckEvent m) {
    return m.control()
        && m.kind() != PuckEvent.Kind.RECEPTION
        && timeline.surelyInOwnZone(m, m.team().orElseThrow());
  }

  /**
   * One attempt.
   *
   * @param way the way out
   * @param mark what happened at center, for ways out that have a mark
   * @param player who took it out, or lost it inside
   * @param start its first event
   * @param release its release, or the touch at which it was settled
   * @param last its last event
   */
  record Attempt(
      WayOut way,
      Optional<AtCenter> mark,
      Optional<String> player,
      PuckEvent start,
      PuckEvent release,
      PuckEvent last) {}

  private Attempt attempt(PuckEvent start) {
    String team = start.team().orElseThrow();
    PuckEvent inside = start;
    PuckEvent here = start;
    boolean placed = true;
    while (true) {
      if (here.release()) {
        WayOut way = leftZone.way(here);
        if (!placed && way != WayOut.KEPT_IN) {
          way = WayOut.MEANS_UNKNOWN;
        }
        return new Attempt(way, Optional.empty(), here.player(), start, here, here);
      }
      PuckEvent next = nextControlOrEnd(here);
      if (next.ends() || !next.by(team)) {
        return new Attempt(WayOut.KEPT_IN, Optional.empty(), here.player(), start, here, here);
      }
      Optional<Zone> zone = timeline.zone(next, team);
      if (zone.isEmpty()) {
        placed = false;
      } else if (zone.get() == Zone.OWN) {
        placed = true;
        inside = next;
      } else {
        WayOut way = placed ? crossing(here, next) : WayOut.MEANS_UNKNOWN;
        PuckEvent carrier = way == WayOut.PASS ? here : next;
        return atCenter(
            way,
            carrier.player().or(here::player),
            start,
            way == WayOut.PASS ? here : inside,
            next);
      }
      here = next;
    }
  }

  private static WayOut crossing(PuckEvent inside, PuckEvent outside) {
    if (inside.kind() == PuckEvent.Kind.PASS) {
      return WayOut.PASS;
    }
    boolean same = inside.player().isPresent() && inside.player().equals(outside.player());
    return same ? WayOut.CARRY : WayOut.MEANS_UNKNOWN;
  }

  /** Follows the puck from beyond the own blue line to center. */
  private Attempt atCenter(
      WayOut way, Optional<String> player, PuckEvent start, PuckEvent outMove, PuckEvent beyond) {
    String team = start.team().orElseThrow();
    PuckEvent before = outMove;
    PuckEvent here = beyond;
    boolean passed = way == WayOut.PASS;
    while (true) {
      PuckEvent next = nextControlOrEnd(here);
      // The neutral zone lies on both sides of center.
      boolean open =
          here.x().isEmpty() && timeline.zone(here, team).equals(Optional.of(Zone.NEUTRAL));
      boolean known = !open && timeline.zone(here, team).isPresent();
      if (known && atOrPastCenter(here, team)) {
        PuckEvent decides = here.kind() == PuckEvent.Kind.RECEPTION ? before : here;
        return new Attempt(
            way, Optional.of(AtCenter.GAINED), player, start, passed ? outMove : decides, here);
      }
      if (known && timeline.surelyInOwnZone(here, team)) {
        return new Attempt(
            way,
            Optional.of(AtCenter.BROUGHT_BACK),
            player,
            start,
            passed ? outMove : before,
            here);
      }
      if (here.release()) {
        Optional<AtCenter> mark = known ? Optional.of(AtCenter.RELEASED_SHORT) : Optional.empty();
        return new Attempt(way, mark, player, start, here, here);
      }
      if (next.ends() || !next.by(team)) {
        Optional<AtCenter> mark =
            open
                ? Optional.empty()
                : Optional.of(next.ends() ? AtCenter.STOPPED : AtCenter.LOST_SHORT);
        return new Attempt(way, mark, player, start, passed ? outMove : here, here);
      }
      before = here;
      here = next;
    }
  }

  /**
   * The next move that is under control or ends play; touches without control change nothing here.
   */
  private PuckEvent nextControlOrEnd(PuckEvent m) {
    PuckEvent n = timeline.next(m);
    while (!n.control() && !n.ends()) {
      n = timeline.next(n);
    }
    return n;
  }

  private boolean atOrPastCenter(PuckEvent e, String team) {
    return e.x().isPresent()
        ? timeline.rink().shortOfCenter(e.x(team).orElseThrow()) <= 0
        : timeline.zone(e, team).equals(Optional.of(Zone.ATTACKING));
  }

  /**
   * A reception made up from a pass's target has the pass's clock; the receiver's own row is the
   * better start.
   */
  private Attempt fromReceiversRow(Attempt a) {
    String team = a.start().team().orElseThrow();
    PuckEvent after = timeline.next(a.start());
    boolean better =
        a.start().kind() == PuckEvent.Kind.RECEPTION
            && after.control()
            && after.by(team)
            && timeline.surelyInOwnZone(after, team)
            && a.start().index() != a.release().index();
    return better ? new Attempt(a.way(), a.mark(), a.player(), after, a.release(), a.last()) : a;
  }
}
