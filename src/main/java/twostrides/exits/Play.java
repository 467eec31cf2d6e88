package twostrides.exits;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import tech.tablesaw.api.Table;
import twostrides.game.Game;
import twostrides.race.TravelBound;
import twostrides.rink.Rink;

/**
 * The moves of a season with the questions that several stages ask of them: what came next, where
 * the next draw was, whether a place lies in a team's own zone.
 */
final class Play {

  private final List<Move> moves;
  private final Map<String, Game> games;
  private final Settings settings;

  /** Games in which some shot is written: only there does "no shot" mean none. */
  private final Set<String> gamesWithShots;

  Play(Table moves, List<Game> games, Settings settings) {
    this.moves = MovesStage.read(moves);
    this.games = games.stream().collect(Collectors.toMap(Game::id, Function.identity()));
    this.settings = settings;
    this.gamesWithShots =
        this.moves.stream().filter(Move::shot).map(Move::game).collect(Collectors.toSet());
  }

  /** Whether the sheet of a move's game writes shots. */
  boolean writesShots(Move m) {
    return gamesWithShots.contains(m.game());
  }

  List<Move> moves() {
    return moves;
  }

  Settings settings() {
    return settings;
  }

  Game game(Move m) {
    return games.get(m.game());
  }

  Rink rink(Move m) {
    return game(m).rink();
  }

  String opponent(Move m) {
    return game(m).opponentOf(m.team().orElseThrow());
  }

  /** Consecutive moves of one game and period, as index pairs from (inclusive) to (exclusive). */
  List<int[]> periods() {
    List<int[]> out = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= moves.size(); i++) {
      if (i == moves.size() || !moves.get(i).samePlay(moves.get(from))) {
        out.add(new int[] {from, i});
        from = i;
      }
    }
    return out;
  }

  /** The move after one; every period ends with a stop, so a touch always has one. */
  Move next(Move m) {
    return moves.get(m.index() + 1);
  }

  /** The next draw of the same period. */
  Optional<Move> nextFaceoff(Move from) {
    for (int i = from.index() + 1; i < moves.size() && moves.get(i).samePlay(from); i++) {
      if (moves.get(i).kind() == Move.Kind.FACEOFF) {
        return Optional.of(moves.get(i));
      }
    }
    return Optional.empty();
  }

  /**
   * The next draw of the same period with no control on the way, but for control that does not
   * count; empty otherwise.
   *
   * @param from the release, or the touch before
   * @param mayControl control that does not end the search
   */
  Optional<Move> drawWithoutControl(Move from, Predicate<Move> mayControl) {
    for (int i = from.index() + 1; i < moves.size(); i++) {
      Move m = moves.get(i);
      if (!m.samePlay(from) || (m.control() && !mayControl.test(m))) {
        return Optional.empty();
      }
      if (m.kind() == Move.Kind.FACEOFF) {
        return Optional.of(m);
      }
    }
    return Optional.empty();
  }

  /** The last move of the period of a move: its end. */
  Move periodEnd(Move from) {
    int i = from.index();
    while (i + 1 < moves.size() && moves.get(i + 1).samePlay(from)) {
      i++;
    }
    return moves.get(i);
  }

  /** Whether a place lies in a team's own zone; empty when the sheet gives no place. */
  Optional<Boolean> inOwnZone(Move m, String team) {
    OptionalDouble x = m.x(team);
    return x.isEmpty() ? Optional.empty() : Optional.of(rink(m).inOwnZone(x.getAsDouble()));
  }

  /** Whether a place is known and lies in a team's own zone. */
  boolean surelyInOwnZone(Move m, String team) {
    return inOwnZone(m, team).orElse(false);
  }

  /** Whether the puck touched the red line or was past it; empty when the sheet gives no place. */
  Optional<Boolean> atOrPastCenter(Move m, String team) {
    OptionalDouble x = m.x(team);
    return x.isEmpty()
        ? Optional.empty()
        : Optional.of(rink(m).shortOfCenter(x.getAsDouble()) <= 0);
  }

  /** Metres short of center, for a puck let go before it touched the red line; empty otherwise. */
  OptionalDouble shortOfCenter(Move m) {
    if (!m.release() || m.x().isEmpty()) {
      return OptionalDouble.empty();
    }
    double s = rink(m).shortOfCenter(m.x().getAsDouble());
    return s > 0 ? OptionalDouble.of(s) : OptionalDouble.empty();
  }

  /** Metres along the rink from a move to the far goal line. */
  double toFarGoalLine(Move m) {
    return rink(m).goalLine() - m.x().orElseThrow();
  }

  /** How the time between two moves fits a puck iced from the place of the first. */
  TravelBound.Fit timeToGoTheLength(Move release, Move until) {
    return settings
        .travel()
        .fit(
            Math.max(0, toFarGoalLine(release)),
            until.elapsed() - release.elapsed(),
            game(release).clockStep());
  }

  /** Whether any puck can have gone to the far goal line in the time between two moves. */
  boolean mayHaveGoneTheLength(Move release, Move until) {
    return settings
        .travel()
        .possible(
            Math.max(0, toFarGoalLine(release)),
            until.elapsed() - release.elapsed(),
            game(release).clockStep());
  }

  /**
   * What to say of a place that the sheet's step cannot put on one side of a line: within half a
   * step of the red line or of the own blue line.
   */
  Optional<String> lineNote(Move m) {
    if (m.x().isEmpty()) {
      return Optional.empty();
    }
    double x = m.x().getAsDouble();
    double half = game(m).placeStep() / 2;
    Rink rink = rink(m);
    double slack = half + 1e-9;
    if (Math.abs(x) <= rink.redLineHalfWidth() + slack) {
      return Optional.of("on the red line");
    }
    double outer = -rink.blueLineNeutralEdge();
    if (x <= outer + slack && x >= outer - rink.blueLineWidth() - slack) {
      return Optional.of("on the blue line");
    }
    return Optional.empty();
  }

  /**
   * Index of the last control touch before a move, in the same period and since the draw before.
   */
  OptionalInt lastControlBefore(Move m) {
    for (int i = m.index() - 1; i >= 0 && moves.get(i).samePlay(m); i--) {
      if (moves.get(i).control()) {
        return OptionalInt.of(i);
      }
      if (moves.get(i).kind() == Move.Kind.FACEOFF) {
        return OptionalInt.empty();
      }
    }
    return OptionalInt.empty();
  }

  /**
   * Fills strength, place and distance short of center of a release: alike in all three tables.
   *
   * @param out the row under way
   * @param m the release, or the last touch
   */
  void fillPlace(Shape.Filler out, Move m) {
    out.text(Columns.STRENGTH, m.strength())
        .number(Columns.RELEASE_X_M, m.x())
        .number(Columns.RELEASE_Y_M, m.y())
        .number(Columns.SHORT_OF_CENTER_M, shortOfCenter(m))
        .text(Columns.LINE_NOTE, lineNote(m));
  }
}
