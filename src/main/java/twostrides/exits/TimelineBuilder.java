package twostrides.exits;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import twostrides.exits.PuckEvent.Kind;
import twostrides.game.Action;
import twostrides.game.Game;
import twostrides.game.Outcome;
import twostrides.game.PlayRow;
import twostrides.game.StopReason;
import twostrides.game.Strength;
import twostrides.rink.Place;
import twostrides.rink.Zone;

/**
 * Rows of a game become its timeline. Rows that repeat a release are dropped, the reception of a
 * complete pass is added, whistle touches are told from control, and play stops at goals and period
 * ends also where no row says so.
 */
final class TimelineBuilder {

  /**
   * How far from its target a pass may be received and the receiver's next row still be the
   * reception, metres; farther off he has carried it on. Assumed.
   */
  private static final double RECEPTION_SLACK = 3.0;

  /** Regular periods of a game; a later period has no length that a sheet must keep to. */
  private static final int REGULAR_PERIODS = 3;

  private final Game game;
  private final List<PlayRow> rows;
  private final List<Strength> strengths;
  private final List<PuckEvent> events = new ArrayList<>();

  private TimelineBuilder(Game game, List<Strength> strengths) {
    this.game = game;
    this.rows = game.rows();
    this.strengths = strengths;
  }

  /**
   * The events of a game, in order; every period ends with a stop.
   *
   * @param game the game
   * @param strengths the acting team's strength at each of its rows
   */
  static List<PuckEvent> events(Game game, List<Strength> strengths) {
    TimelineBuilder builder = new TimelineBuilder(game, strengths);
    BitSet whistleTouches = WhistleTouches.of(game);
    for (int i = 0; i < builder.rows.size(); i++) {
      PlayRow r = builder.rows.get(i);
      if (whistleTouches.get(i)) {
        builder.add(Kind.WHISTLE_TOUCH, i);
      } else if (!Repeats.is(builder.rows, i)) {
        builder.row(i);
      }
      if (builder.following(i).isEmpty()) {
        double end =
            r.period() <= REGULAR_PERIODS
                ? Math.max(game.periodLength(), r.elapsed())
                : r.elapsed();
        builder.stop(r, end, StopReason.PERIOD_END);
      }
    }
    return List.copyOf(builder.events);
  }

  private void row(int i) {
    PlayRow r = rows.get(i);
    switch (r.action()) {
      case PENALTY -> {
        if (faceOffFollows(i)) {
          stop(r, r.elapsed(), StopReason.PENALTY);
        }
      }
      case STOPPAGE -> stop(r, r.elapsed(), r.stop().orElse(StopReason.OTHER));
      case FACEOFF -> add(Kind.FACEOFF, i);
      case DEFLECTION, BLOCK -> add(Kind.UNCONTROLLED, i);
      case ENTRY -> add(r.control() ? Kind.CONTROL : Kind.UNCONTROLLED, i);
      case RECOVERY, TAKEAWAY, TOUCH -> add(Kind.CONTROL, i);
      case RELEASE -> add(Kind.SENT, i);
      case SHOT -> {
        add(Kind.SENT, i);
        boolean stopFollows =
            following(i)
                .filter(n -> n.action() == Action.STOPPAGE || n.action() == Action.FACEOFF)
                .isPresent();
        if (r.outcome().equals(Optional.of(Outcome.GOAL)) && !stopFollows) {
          stop(r, r.elapsed(), StopReason.GOAL);
        }
      }
      case PASS -> pass(i);
    }
  }

  /** The next row of the same period. */
  private Optional<PlayRow> following(int i) {
    return i + 1 < rows.size() && rows.get(i + 1).period() == rows.get(i).period()
        ? Optional.of(rows.get(i + 1))
        : Optional.empty();
  }

  /** Whether nothing more is played before the face-off: only then does a penalty row stop play. */
  private boolean faceOffFollows(int i) {
    Optional<PlayRow> next = following(i);
    for (int k = i + 1; next.isPresent(); k++) {
      Action a = next.get().action();
      if (a != Action.PENALTY && a != Action.STOPPAGE) {
        return a == Action.FACEOFF;
      }
      next = following(k);
    }
    return false;
  }

  /**
   * A pass. Where the sheet does not say whether it was received, the next touch does: the
   * opponent's, or none before play stops, means that it was not.
   */
  private void pass(int i) {
    PlayRow r = rows.get(i);
    Optional<PlayRow> next = following(i);
    boolean ownNext =
        next.isPresent() && next.get().control() && next.get().team().equals(r.team());
    boolean missed = game.letsGo(i);
    add(missed ? Kind.MISSED_PASS : Kind.PASS, i);
    boolean receiverWritten = next.isPresent() && receives(r, next.get());
    if (r.outcome().isPresent() && !missed && !receiverWritten) {
      // A receiver without a name is whoever of the team plays it next.
      Optional<String> receiver =
          r.otherPlayer().or(() -> ownNext ? next.get().player() : Optional.empty());
      add(Kind.RECEPTION, i, receiver, r.target(), r.toZone());
    }
  }

  /**
   * Whether a row is the receiver's own touch of a pass, so that no reception need be made up from
   * the target.
   */
  private static boolean receives(PlayRow pass, PlayRow next) {
    return next.action() == Action.TOUCH
        && next.team().equals(pass.team())
        && (next.place().isPresent()
            ? pass.target().isEmpty()
                || pass.target().get().distanceTo(next.place().get()) <= RECEPTION_SLACK
            : next.zone().isPresent()
                && (pass.toZone().isEmpty() || pass.toZone().equals(next.zone())))
        && (pass.otherPlayer().isEmpty() || pass.otherPlayer().equals(next.player()));
  }

  private void stop(PlayRow r, double at, StopReason why) {
    events.add(
        new PuckEvent(
            events.size(),
            Kind.STOP,
            r,
            at,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Strength.UNKNOWN,
            Optional.of(why)));
  }

  private void add(Kind kind, int i) {
    PlayRow r = rows.get(i);
    add(kind, i, r.player(), r.place(), r.zone());
  }

  private void add(
      Kind kind, int i, Optional<String> player, Optional<Place> place, Optional<Zone> zone) {
    PlayRow r = rows.get(i);
    events.add(
        new PuckEvent(
            events.size(),
            kind,
            r,
            r.elapsed(),
            player,
            place,
            zone,
            strengths.get(i),
            Optional.empty()));
  }
}
