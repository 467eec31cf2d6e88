package twostrides.exits;

import java.util.Optional;
import tech.tablesaw.api.Table;

/**
 * Second stage: the moves table becomes the attempts table, one row an exit attempt with its two
 * marks.
 *
 * <p>An attempt runs from a team's first control in its own zone until the puck leaves by its
 * doing, the other team has it, or play stops; a release or a missed pass ends it too, since
 * control ends there. Brought back under control behind the own blue line, the puck starts a new
 * attempt.
 *
 * <p>Where a control touch on the way has no place, the sheet cannot say how the puck crossed the
 * line: the way out is then "moved, means unknown".
 */
final class AttemptsStage {

  /** Rows of the moves table: first and last of the attempt, and its release. */
  static final String START_MOVE = "start_move";

  static final String RELEASE_MOVE = "release_move";
  static final String LAST_MOVE = "last_move";

  private static final Shape SHAPE =
      new Shape("attempts")
          .text(Columns.GAME)
          .count(Columns.EXIT)
          .text(Columns.TEAM, Columns.PLAYER, Columns.WAY_OUT, Columns.AT_CENTER)
          .count(START_MOVE, RELEASE_MOVE, LAST_MOVE);

  private final Play play;
  private final LeftZone leftZone;
  private final Shape.Filler out = SHAPE.filler();

  private AttemptsStage(Play play) {
    this.play = play;
    this.leftZone = new LeftZone(play);
  }

  /**
   * Builds the attempts table.
   *
   * @param play the moves
   */
  static Table run(Play play) {
    AttemptsStage stage = new AttemptsStage(play);
    String game = "";
    int exit = 0;
    for (int[] period : play.periods()) {
      String here = play.moves().get(period[0]).game();
      if (!here.equals(game)) {
        game = here;
        exit = 0;
      }
      int i = period[0];
      while (i < period[1]) {
        Move m = play.moves().get(i);
        if (stage.begins(m)) {
          Attempt a = stage.attempt(m);
          stage.write(a, ++exit);
          // The move that brings the puck back starts the next attempt, so it is looked at again.
          i =
              Math.max(a.last().index(), i)
                  + (a.atCenter().equals(Optional.of(AtCenter.BROUGHT_BACK)) ? 0 : 1);
        } else {
          i++;
        }
      }
    }
    return stage.out.table();
  }

  /**
   * Whether an attempt begins: control in the own zone that a row writes down. Where a pass was
   * meant to be received is no such row; where the receiver is inside, his own row comes next.
   */
  private boolean begins(Move m) {
    return m.control()
        && m.kind() != Move.Kind.RECEPTION
        && play.surelyInOwnZone(m, m.team().orElseThrow());
  }

  /** One attempt: its marks, who took it out, its first move, its release and its last move. */
  private record Attempt(
      WayOut way,
      Optional<AtCenter> atCenter,
      Optional<String> player,
      Move start,
      Move release,
      Move last) {}

  private Attempt attempt(Move start) {
    String team = start.team().orElseThrow();
    Move inside = start;
    Move here = start;
    boolean placed = true;
    while (true) {
      if (here.release()) {
        WayOut way = leftZone.way(here);
        if (!placed && way != WayOut.KEPT_IN) {
          way = WayOut.MEANS_UNKNOWN;
        }
        return new Attempt(way, Optional.empty(), here.player(), start, here, here);
      }
      Move next = nextControlOrEnd(here);
      if (next.ends() || !next.by(team)) {
        return new Attempt(WayOut.KEPT_IN, Optional.empty(), here.player(), start, here, here);
      }
      Optional<Boolean> nextInside = play.inOwnZone(next, team);
      if (nextInside.isEmpty()) {
        placed = false;
      } else if (nextInside.get()) {
        placed = true;
        inside = next;
      } else {
        WayOut way = placed ? crossing(here, next) : WayOut.MEANS_UNKNOWN;
        Move carrier = way == WayOut.PASS ? here : next;
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

  private static WayOut crossing(Move inside, Move outside) {
    if (inside.kind() == Move.Kind.PASS) {
      return WayOut.PASS;
    }
    boolean same = inside.player().isPresent() && inside.player().equals(outside.player());
    return same ? WayOut.CARRY : WayOut.MEANS_UNKNOWN;
  }

  /** Follows the puck from beyond the own blue line to center. */
  private Attempt atCenter(
      WayOut way, Optional<String> player, Move start, Move outMove, Move beyond) {
    String team = start.team().orElseThrow();
    Move before = outMove;
    Move here = beyond;
    boolean passed = way == WayOut.PASS;
    while (true) {
      Move next = nextControlOrEnd(here);
      boolean known = here.x().isPresent();
      if (known && play.atOrPastCenter(here, team).orElse(false)) {
        Move decides = here.kind() == Move.Kind.RECEPTION ? before : here;
        return new Attempt(
            way, Optional.of(AtCenter.GAINED), player, start, passed ? outMove : decides, here);
      }
      if (known && play.surelyInOwnZone(here, team)) {
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
        AtCenter mark = next.ends() ? AtCenter.STOPPED : AtCenter.LOST_SHORT;
        return new Attempt(way, Optional.of(mark), player, start, passed ? outMove : here, here);
      }
      before = here;
      here = next;
    }
  }

  /**
   * The next move that is under control or ends play; touches without control change nothing here.
   */
  private Move nextControlOrEnd(Move m) {
    Move n = play.next(m);
    while (!n.control() && !n.ends()) {
      n = play.next(n);
    }
    return n;
  }

  private void write(Attempt a, int exit) {
    Move start = a.start();
    Move after = play.next(start);
    // A reception made up from a pass's target has the pass's clock; the receiver's own row is the
    // better start.
    if (start.kind() == Move.Kind.RECEPTION
        && after.control()
        && after.by(start.team().orElseThrow())
        && play.surelyInOwnZone(after, start.team().orElseThrow())
        && start.index() != a.release().index()) {
      start = after;
    }
    out.row()
        .text(Columns.GAME, start.game())
        .count(Columns.EXIT, exit)
        .text(Columns.TEAM, start.team())
        .text(Columns.PLAYER, a.player())
        .text(Columns.WAY_OUT, a.way().label())
        .text(Columns.AT_CENTER, a.atCenter().map(AtCenter::label))
        .count(START_MOVE, start.index())
        .count(RELEASE_MOVE, a.release().index())
        .count(LAST_MOVE, a.last().index());
  }
}
