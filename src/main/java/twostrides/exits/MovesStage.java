package twostrides.exits;

import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import tech.tablesaw.api.Table;
import twostrides.game.Action;
import twostrides.game.Game;
import twostrides.game.Outcome;
import twostrides.game.PlayRow;
import twostrides.game.StopReason;
import twostrides.game.Strength;
import twostrides.rink.Place;

/**
 * First stage: the rows of the games become the moves table, one row a touch, stop or draw, in the
 * order of play.
 *
 * <p>Four things are settled here so that no later stage meets them again. A row that repeats a
 * release or a pass is left out ({@link Repeats}): a dumped entry written as two rows is one
 * release. A pass written as complete gets a reception at its second place, unless the receiver's
 * own touch is the next row. A goal and the end of a period stop play even where no stoppage is
 * written. An opponent who gets to an iced puck as the whistle goes has no control ({@link
 * WhistleTouches}).
 */
final class MovesStage {

  /** Columns of the moves table that no other table has. */
  static final String MOVE_KIND = "move";

  static final String GOAL = "goal";
  static final String STOP = "stop";
  static final String OPPONENT_ON_ICE = "opponent_on_ice";
  static final String SPELL = "spell";
  static final String TO_X = "to_x_m";

  /** Reason written by this stage for a period's end that the sheet does not write. */
  static final String PERIOD_END = StopReason.PERIOD_END.word();

  private static final Shape SHAPE =
      new Shape("moves")
          .text(Columns.GAME)
          .count(Columns.PERIOD)
          .number(Columns.ELAPSED_S)
          .text(MOVE_KIND, Columns.TEAM, Columns.PLAYER)
          .number("x_m", "y_m", TO_X)
          .flag(Columns.SHOT, GOAL)
          .text(Columns.STRENGTH, Columns.NET_EMPTY, Columns.PRESSURE, STOP)
          .text(Columns.ON_ICE, OPPONENT_ON_ICE)
          .number(Columns.VIDEO_S)
          .text(Columns.SHEET)
          .count(Columns.LINE, SPELL);

  private final Shape.Filler out = SHAPE.filler();
  private int spell;
  private Optional<String> inControl = Optional.empty();

  /** Strength at the row under way. */
  private Strength strength = Strength.UNKNOWN;

  private OnIceNames names = OnIceNames.NONE;
  private final StrengthAt strengthAt;

  private MovesStage(StrengthAt strengthAt) {
    this.strengthAt = strengthAt;
  }

  /** Strength of the acting team at a row of a game, by its index. */
  interface StrengthAt {
    Strength at(Game game, int row);
  }

  /**
   * Builds the moves table.
   *
   * @param games games in the order in which the tables list them
   * @param strengthAt strength at each row
   */
  static Table run(List<Game> games, StrengthAt strengthAt) {
    MovesStage stage = new MovesStage(strengthAt);
    for (Game g : games) {
      stage.game(g);
    }
    return stage.out.table();
  }

  private void game(Game g) {
    List<PlayRow> rows = g.rows();
    names = OnIceNames.of(g);
    BitSet whistleTouches = WhistleTouches.of(g);
    for (int i = 0; i < rows.size(); i++) {
      PlayRow r = rows.get(i);
      strength = strengthAt.at(g, i);
      Optional<PlayRow> next =
          i + 1 < rows.size() ? Optional.of(rows.get(i + 1)) : Optional.empty();
      if (whistleTouches.get(i)) {
        write(g, r, Move.Kind.WHISTLE_TOUCH, r.player(), r.place());
      } else if (!Repeats.is(rows, i)) {
        row(g, i);
      }
      if (next.isEmpty() || next.get().period() != r.period()) {
        double end =
            r.period() <= REGULAR_PERIODS ? Math.max(g.periodLength(), r.elapsed()) : r.elapsed();
        stop(g, r, end, PERIOD_END);
      }
    }
  }

  /**
   * How far from its target a pass may be received and the receiver's next row still be the
   * reception, metres; farther off he has carried it on. Assumed.
   */
  private static final double RECEPTION_SLACK = 3.0;

  /** Regular periods of a game; a later period has no length that a sheet must keep to. */
  private static final int REGULAR_PERIODS = 3;

  private void row(Game g, int i) {
    PlayRow r = g.rows().get(i);
    Optional<PlayRow> next = following(g.rows(), i);
    switch (r.action()) {
      case PENALTY -> {
        if (drawFollows(g.rows(), i)) {
          stop(g, r, r.elapsed(), StopReason.PENALTY.word());
        }
      }
      case STOPPAGE -> stop(g, r, r.elapsed(), r.stop().map(s -> s.word()).orElse("other"));
      case FACEOFF -> {
        inControl = Optional.empty();
        write(g, r, Move.Kind.FACEOFF, r.player(), r.place());
      }
      case DEFLECTION, BLOCK -> write(g, r, Move.Kind.UNCONTROLLED, r.player(), r.place());
      case ENTRY ->
          write(
              g,
              r,
              r.control() ? Move.Kind.CONTROL : Move.Kind.UNCONTROLLED,
              r.player(),
              r.place());
      case RECOVERY, TAKEAWAY, TOUCH -> write(g, r, Move.Kind.CONTROL, r.player(), r.place());
      case RELEASE -> write(g, r, Move.Kind.SENT, r.player(), r.place());
      case SHOT -> {
        write(g, r, Move.Kind.SENT, r.player(), r.place());
        boolean stopFollows =
            next.isPresent()
                && (next.get().action() == Action.STOPPAGE
                    || next.get().action() == Action.FACEOFF);
        if (isGoal(r) && !stopFollows) {
          stop(g, r, r.elapsed(), StopReason.GOAL.word());
        }
      }
      case PASS -> pass(g, r, next);
    }
  }

  /** The next row of the same period. */
  private static Optional<PlayRow> following(List<PlayRow> rows, int i) {
    return i + 1 < rows.size() && rows.get(i + 1).period() == rows.get(i).period()
        ? Optional.of(rows.get(i + 1))
        : Optional.empty();
  }

  /** Whether nothing more is played before the draw: only then does a penalty row stop play. */
  private static boolean drawFollows(List<PlayRow> rows, int i) {
    Optional<PlayRow> next = following(rows, i);
    for (int k = i + 1; next.isPresent(); k++) {
      Action a = next.get().action();
      if (a != Action.PENALTY && a != Action.STOPPAGE) {
        return a == Action.FACEOFF;
      }
      next = following(rows, k);
    }
    return false;
  }

  /**
   * A pass. Where the sheet does not say whether it was received, the next touch does: the
   * opponent's, or none before play stops, means that it was not.
   */
  private void pass(Game g, PlayRow r, Optional<PlayRow> next) {
    boolean written = r.outcome().isPresent();
    boolean ownNext =
        next.isPresent() && next.get().control() && next.get().team().equals(r.team());
    boolean missed = written ? r.outcome().get() == Outcome.MISSED : !ownNext;
    write(g, r, missed ? Move.Kind.MISSED_PASS : Move.Kind.PASS, r.player(), r.place());
    boolean receiverWritten = next.isPresent() && receives(r, next.get());
    if (written && !missed && !receiverWritten) {
      // A receiver without a name is whoever of the team plays it next.
      Optional<String> receiver =
          r.otherPlayer().or(() -> ownNext ? next.get().player() : Optional.empty());
      write(g, r, Move.Kind.RECEPTION, receiver, r.target());
    }
  }

  /**
   * Whether a row is the receiver's own touch of a pass, so that no reception need be made up from
   * the target.
   */
  private static boolean receives(PlayRow pass, PlayRow next) {
    return next.action() == Action.TOUCH
        && next.team().equals(pass.team())
        && next.place().isPresent()
        && (pass.target().isEmpty()
            || pass.target().get().distanceTo(next.place().get()) <= RECEPTION_SLACK)
        && (pass.otherPlayer().isEmpty() || pass.otherPlayer().equals(next.player()));
  }

  private static boolean isGoal(PlayRow r) {
    return r.outcome().equals(Optional.of(Outcome.GOAL));
  }

  private void stop(Game g, PlayRow r, double at, String why) {
    inControl = Optional.empty();
    out.row()
        .text(Columns.GAME, g.id())
        .count(Columns.PERIOD, r.period())
        .number(Columns.ELAPSED_S, at)
        .text(MOVE_KIND, word(Move.Kind.STOP))
        .text(Columns.TEAM, r.action() == Action.STOPPAGE ? r.team() : Optional.empty())
        .flag(Columns.SHOT, false)
        .flag(GOAL, false)
        .text(Columns.STRENGTH, Strength.UNKNOWN.label())
        .text(STOP, why)
        .text(Columns.SHEET, r.sheet())
        .count(Columns.LINE, Math.toIntExact(r.line()));
  }

  private void write(
      Game g, PlayRow r, Move.Kind kind, Optional<String> player, Optional<Place> place) {
    if (kind != Move.Kind.FACEOFF
        && kind != Move.Kind.UNCONTROLLED
        && kind != Move.Kind.WHISTLE_TOUCH
        && !inControl.equals(r.team())) {
      inControl = r.team();
      spell++;
    }
    out.row()
        .text(Columns.GAME, g.id())
        .count(Columns.PERIOD, r.period())
        .number(Columns.ELAPSED_S, r.elapsed())
        .text(MOVE_KIND, word(kind))
        .text(Columns.TEAM, r.team())
        .text(Columns.PLAYER, player)
        .number("x_m", x(place))
        .number("y_m", y(place))
        .number(TO_X, x(r.target()))
        .flag(Columns.SHOT, r.action() == Action.SHOT)
        .flag(GOAL, isGoal(r))
        .text(Columns.STRENGTH, strength.label())
        .text(Columns.NET_EMPTY, r.manpower().netEmpty().map(n -> n.word()))
        .text(Columns.PRESSURE, r.pressure().map(p -> p.word()))
        .text(Columns.ON_ICE, names.of(r.team(), r.ownOnIce()))
        .text(OPPONENT_ON_ICE, names.of(r.team().map(g::opponentOf), r.opponentOnIce()))
        .number(Columns.VIDEO_S, r.video())
        .text(Columns.SHEET, r.sheet())
        .count(Columns.LINE, Math.toIntExact(r.line()));
    if (inControl.isPresent() && kind != Move.Kind.FACEOFF) {
      out.count(SPELL, spell);
    }
  }

  private static OptionalDouble x(Optional<Place> p) {
    return p.isPresent() ? OptionalDouble.of(p.get().x()) : OptionalDouble.empty();
  }

  private static OptionalDouble y(Optional<Place> p) {
    return p.isPresent() ? OptionalDouble.of(p.get().y()) : OptionalDouble.empty();
  }

  private static String word(Move.Kind kind) {
    return kind.name().toLowerCase(Locale.ROOT);
  }

  /**
   * Reads a moves table back, row by row.
   *
   * @param moves what {@link #run} built
   */
  static List<Move> read(Table moves) {
    return IntStream.range(0, moves.rowCount()).mapToObj(i -> move(moves, i)).toList();
  }

  private static Move move(Table t, int i) {
    return new Move(
        i,
        Cells.text(t, Columns.GAME, i).orElse(""),
        t.intColumn(Columns.PERIOD).getInt(i),
        t.doubleColumn(Columns.ELAPSED_S).getDouble(i),
        Move.Kind.valueOf(t.stringColumn(MOVE_KIND).get(i).toUpperCase(Locale.ROOT)),
        Cells.text(t, Columns.TEAM, i),
        Cells.text(t, Columns.PLAYER, i),
        Cells.number(t, "x_m", i),
        Cells.number(t, "y_m", i),
        Cells.number(t, TO_X, i),
        t.booleanColumn(Columns.SHOT).get(i),
        t.booleanColumn(GOAL).get(i),
        t.stringColumn(Columns.STRENGTH).get(i),
        Cells.text(t, Columns.NET_EMPTY, i),
        Cells.text(t, Columns.PRESSURE, i),
        Cells.text(t, STOP, i),
        Cells.text(t, Columns.ON_ICE, i),
        Cells.text(t, OPPONENT_ON_ICE, i),
        Cells.number(t, Columns.VIDEO_S, i),
        t.stringColumn(Columns.SHEET).get(i),
        t.intColumn(Columns.LINE).getInt(i));
  }
}
