package twostrides.game;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import twostrides.rulebook.penalty.BoxEvent;
import twostrides.rulebook.penalty.BoxTimeline;
import twostrides.rulebook.penalty.GameInstant;
import twostrides.rulebook.penalty.OnIce;
import twostrides.rulebook.penalty.PenaltyKind;
import twostrides.rulebook.penalty.PenaltyRules;
import twostrides.rulebook.penalty.Side;

/**
 * What the penalty rows of a game say about manpower, row by row.
 *
 * <p>A penalty row says when it was called: play may go on until the next stoppage, and the clock
 * of the penalty starts there. Until then it is signalled.
 */
public final class PenaltyRead {

  /** Periods of regulation; every later one is overtime. */
  private static final int REGULATION = 3;

  private static final Pattern CODE = Pattern.compile(" (to|served by) player-\\d+");

  private final Game game;
  private final BoxTimeline timeline;
  private final boolean anyPenalty;

  private PenaltyRead(Game game, BoxTimeline timeline, boolean anyPenalty) {
    this.game = game;
    this.timeline = timeline;
    this.anyPenalty = anyPenalty;
  }

  /**
   * Reads the penalties of a game.
   *
   * @param game the game
   * @param rules what its book says about manpower
   */
  public static PenaltyRead of(Game game, PenaltyRules rules) {
    List<BoxEvent> events = new ArrayList<>();
    Map<String, String> codes = new HashMap<>();
    List<PlayRow> rows = game.rows();
    boolean any = false;
    for (int i = 0; i < rows.size(); i++) {
      PlayRow r = rows.get(i);
      switch (r.action()) {
        case STOPPAGE -> events.add(new BoxEvent.Stopped(instant(r, i)));
        case FACEOFF -> events.add(new BoxEvent.Started(instant(r, i)));
        case SHOT -> {
          if (r.outcome().equals(Optional.of(Outcome.GOAL))) {
            events.add(new BoxEvent.Goal(instant(r, i), side(game, r), false, ref(r)));
          }
        }
        case PENALTY -> {
          any = true;
          events.add(new BoxEvent.Signalled(instant(r, i), side(game, r), ref(r)));
          events.add(called(game, i, codes));
        }
        default -> {}
      }
    }
    BoxTimeline timeline =
        BoxTimeline.of(rules, game.periodLength(), game.periodLength(), REGULATION, events);
    return new PenaltyRead(game, timeline, any);
  }

  /** The penalty of a row at the stoppage that follows it. */
  private static BoxEvent called(Game game, int at, Map<String, String> codes) {
    List<PlayRow> rows = game.rows();
    PlayRow penalty = rows.get(at);
    PenaltyKind kind = penalty.penalty().orElse(PenaltyKind.MINOR);
    OptionalDouble length = penalty.penaltyMinutes();
    OptionalDouble seconds =
        length.isPresent() ? OptionalDouble.of(length.getAsDouble() * 60) : OptionalDouble.empty();
    GameInstant start = instant(penalty, at);
    for (int i = at + 1; i < rows.size() && rows.get(i).period() == penalty.period(); i++) {
      PlayRow r = rows.get(i);
      boolean goal = r.outcome().equals(Optional.of(Outcome.GOAL));
      start = instant(r, i);
      if (goal || r.action() == Action.STOPPAGE) {
        break;
      }
      if (r.action() == Action.FACEOFF) {
        // The face-off closes the stoppage: the penalty starts before it.
        start = new GameInstant(r.period(), r.elapsed(), i - 1L);
        break;
      }
    }
    return new BoxEvent.Called(
        start,
        side(game, penalty),
        kind,
        seconds,
        penalty.player().map(n -> code(penalty, n, codes)),
        penalty.servedBy().map(n -> code(penalty, n, codes)),
        ref(penalty));
  }

  /** A player by a code of ours: who is who matters, and no name reaches an output from here. */
  private static String code(PlayRow row, String name, Map<String, String> codes) {
    return name.equals(BoxEvent.Called.NOBODY)
        ? name
        : codes.computeIfAbsent(
            row.team().orElse("") + "\n" + name, k -> "player-" + (codes.size() + 1));
  }

  private static GameInstant instant(PlayRow r, int order) {
    return new GameInstant(r.period(), r.elapsed(), order);
  }

  private static Side side(Game game, PlayRow r) {
    return r.team().equals(Optional.of(game.home())) ? Side.HOME : Side.AWAY;
  }

  private static String ref(PlayRow r) {
    return r.sheet() + " line " + r.line();
  }

  /** Whether the sheet has a penalty row at all; without one it may just not write them. */
  public boolean anyPenalty() {
    return anyPenalty;
  }

  /** Skaters of the acting team and of the other at a row, extra attackers not counted. */
  public int[] skaters(int row) {
    PlayRow r = game.rows().get(row);
    OnIce ice = timeline.at(instant(r, row));
    Side us = side(game, r);
    return new int[] {ice.skaters(us), ice.skaters(us.other())};
  }

  /**
   * Strength of the acting team at a row.
   *
   * @param row index of the row in the game
   */
  public Strength strength(int row) {
    PlayRow r = game.rows().get(row);
    OnIce ice = timeline.at(instant(r, row));
    Side us = side(game, r);
    if (ice.shorthanded(us)) {
      return Strength.SHORTHANDED;
    }
    return ice.shorthanded(us.other()) ? Strength.POWER_PLAY : Strength.EVEN;
  }

  /**
   * Why the acting team has that strength, one sentence.
   *
   * @param row index of the row in the game
   */
  public String why(int row) {
    PlayRow r = game.rows().get(row);
    Side us = side(game, r);
    GameInstant at = instant(r, row);
    String words = "own: " + timeline.why(at, us) + "; opponent: " + timeline.why(at, us.other());
    return CODE.matcher(words).replaceAll("");
  }
}
