package twostrides.exits;

import java.util.Optional;

/**
 * What followed a release: the next touch, the restart, relief, attempts and goals against. One
 * reading for exits and releases alike.
 */
final class Endings {

  /**
   * Whose doing a restart is. An exit attempt's, as long as the opponent had no control in between;
   * a release's, only when it was the last thing done with the puck: of two releases in a row the
   * second one is iced.
   */
  enum Owner {
    ATTEMPT,
    RELEASE
  }

  private final Play play;
  private final StopFinder stops;

  Endings(Play play) {
    this.play = play;
    this.stops = new StopFinder(play);
  }

  /** Shots and goals after a release or draw, in order. */
  static final String[] AGAINST = {
    Columns.ATTEMPTS_AGAINST_20S,
    Columns.GOALS_AGAINST_20S,
    Columns.ATTEMPTS_AGAINST_30S,
    Columns.GOALS_AGAINST_30S,
    Columns.GOALS_FOR_20S
  };

  /** The columns this class fills, in order. */
  static Shape declare(Shape shape) {
    return shape
        .text(Columns.NEXT_TOUCH)
        .number(Columns.NEXT_TOUCH_X_M, Columns.SECONDS_TO_NEXT_TOUCH)
        .flag(Columns.OWN_ZONE_RESTART)
        .text(Columns.RESTART_CAUSE)
        .number(Columns.RESTART_ELAPSED_S)
        .flag(Columns.RESTART_WITHIN_20S)
        .number(Columns.RELIEF_S)
        .flag(Columns.RELIEF_CUT_SHORT)
        .count(AGAINST);
  }

  /**
   * Fills the ending columns of the row under way.
   *
   * @param out the row
   * @param release the release, or the touch at which an exit was settled
   * @param owner whose doing the restart must be
   */
  void fill(Shape.Filler out, Move release, Owner owner) {
    String team = release.team().orElseThrow();
    nextTouch(out, release, team);
    Optional<Move> draw =
        play.drawWithoutControl(release, m -> owner == Owner.ATTEMPT && m.by(team));
    Optional<Move> restart = draw.filter(d -> play.surelyInOwnZone(d, team));
    // A draw without a place leaves open in whose zone it was.
    boolean known = draw.isEmpty() || draw.get().x().isPresent();
    if (known) {
      out.flag(Columns.OWN_ZONE_RESTART, restart.isPresent());
    }
    RestartCause without = known ? RestartCause.NONE : RestartCause.UNKNOWN;
    out.text(
        Columns.RESTART_CAUSE,
        restart.map(d -> stops.cause(team, d).cause()).orElse(without).label());
    restart.ifPresent(d -> out.number(Columns.RESTART_ELAPSED_S, d.elapsed()));
    out.flag(Columns.RESTART_WITHIN_20S, restartWithinWindow(release, team));
    relief(out, release, team);
    against(out, restart.orElse(release), team);
  }

  private void nextTouch(Shape.Filler out, Move release, String team) {
    Move next = play.next(release);
    if (next.ends() || next.kind() == Move.Kind.WHISTLE_TOUCH) {
      out.text(Columns.NEXT_TOUCH, "none");
      return;
    }
    out.text(Columns.NEXT_TOUCH, next.by(team) ? "own" : "opponent")
        .number(Columns.NEXT_TOUCH_X_M, next.x(team));
    if (next.kind() != Move.Kind.RECEPTION) {
      out.number(Columns.SECONDS_TO_NEXT_TOUCH, next.elapsed() - release.elapsed());
    }
  }

  private boolean restartWithinWindow(Move release, String team) {
    double until = release.elapsed() + play.settings().window();
    for (int i = release.index() + 1; i < play.moves().size(); i++) {
      Move m = play.moves().get(i);
      if (!m.samePlay(release) || m.elapsed() > until) {
        return false;
      }
      if (m.kind() == Move.Kind.FACEOFF && play.surelyInOwnZone(m, team)) {
        return true;
      }
    }
    return false;
  }

  private void relief(Shape.Filler out, Move release, String team) {
    for (int i = release.index() + 1; i < play.moves().size(); i++) {
      Move m = play.moves().get(i);
      if (m.ends()) {
        out.number(Columns.RELIEF_S, m.elapsed() - release.elapsed())
            .flag(Columns.RELIEF_CUT_SHORT, true);
        return;
      }
      if (m.control() && !m.by(team) && play.surelyInOwnZone(m, team)) {
        out.number(Columns.RELIEF_S, m.elapsed() - release.elapsed())
            .flag(Columns.RELIEF_CUT_SHORT, false);
        return;
      }
    }
  }

  /**
   * Fills attempts and goals within the windows, counted from a move.
   *
   * @param out the row
   * @param from the release, or the draw when a restart followed
   * @param team the team they count against
   */
  void against(Shape.Filler out, Move from, String team) {
    if (!play.writesShots(from)) {
      return;
    }
    double window = play.settings().window();
    int[] shots = new int[2];
    int[] goals = new int[2];
    int goalsFor = 0;
    for (int i = from.index() + 1; i < play.moves().size(); i++) {
      Move m = play.moves().get(i);
      double after = m.elapsed() - from.elapsed();
      if (!m.samePlay(from) || after > play.settings().longWindow()) {
        break;
      }
      boolean inside = after <= window;
      if (m.shot() && !m.by(team)) {
        shots[0] += inside ? 1 : 0;
        shots[1]++;
        goals[0] += m.goal() && inside ? 1 : 0;
        goals[1] += m.goal() ? 1 : 0;
      } else if (m.goal() && inside) {
        goalsFor++;
      }
    }
    out.count(Columns.ATTEMPTS_AGAINST_20S, shots[0])
        .count(Columns.GOALS_AGAINST_20S, goals[0])
        .count(Columns.ATTEMPTS_AGAINST_30S, shots[1])
        .count(Columns.GOALS_AGAINST_30S, goals[1])
        .count(Columns.GOALS_FOR_20S, goalsFor);
  }
}
