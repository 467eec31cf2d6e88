package twostrides.rulebook.penalty;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import twostrides.rulebook.penalty.BoxEvent.Called;
import twostrides.rulebook.penalty.BoxEvent.Goal;
import twostrides.rulebook.penalty.PenaltyRules.AtExpiry;

/** Goes through a game step by step and notes who is on the ice after each. */
final class Box {

  private static final GameInstant NEVER = new GameInstant(Integer.MAX_VALUE, 0, Long.MAX_VALUE);

  private final PenaltyRules rules;
  private final Clock clock;
  private final Strengths strengths;
  private final Map<Side, Boolean> netEmpty = new EnumMap<>(Side.class);
  private final Map<Side, Boolean> signalled = new EnumMap<>(Side.class);
  private final Map<Side, Long> lastMinorOut = new EnumMap<>(Side.class);
  private final List<Snapshot> snapshots = new ArrayList<>();
  private final List<Doubt> doubts = new ArrayList<>();

  /** A game at its first face-off. */
  Box(PenaltyRules rules, Clock clock) {
    this.rules = rules;
    this.clock = clock;
    this.strengths = new Strengths(rules);
    for (Side side : Side.values()) {
      netEmpty.put(side, false);
      signalled.put(side, false);
    }
    snapshots.add(snapshot(new GameInstant(1, 0, Long.MIN_VALUE)));
  }

  List<Snapshot> snapshots() {
    return List.copyOf(snapshots);
  }

  List<Doubt> doubts() {
    return List.copyOf(doubts);
  }

  /** Adds a doubt that somebody else found. */
  void doubt(GameInstant at, String text) {
    doubts.add(new Doubt(at, text));
  }

  /** Plays one step, after everything that runs out before it. */
  void play(Step step) {
    while (nextExpiry().compareTo(step.at()) < 0) {
      expire();
    }
    if (step instanceof Step.Noted noted) {
      note(noted);
    } else if (step instanceof Step.Stoppage stoppage) {
      stop(stoppage);
    } else {
      begin(step.at());
    }
  }

  private long nextMillis() {
    return Math.min(
        strengths.bench(Side.HOME).nextExpiry(), strengths.bench(Side.AWAY).nextExpiry());
  }

  /**
   * The convention for the instant of expiry: over before every row of that reading, or after them.
   * No book read defines the tie.
   */
  private GameInstant nextExpiry() {
    long millis = nextMillis();
    if (millis == Long.MAX_VALUE) {
      return NEVER;
    }
    return clock.instant(
        millis, rules.atExpiry() == AtExpiry.OVER ? Long.MIN_VALUE : Long.MAX_VALUE);
  }

  private void expire() {
    GameInstant at = nextExpiry();
    long now = nextMillis();
    for (Side side : Side.values()) {
      if (strengths.expire(side, now).stream().anyMatch(ServedPenalty::minor)) {
        lastMinorOut.put(side, now);
      }
    }
    note(at);
  }

  private void note(Step.Noted noted) {
    if (noted.event() instanceof BoxEvent.NetEmpty net) {
      netEmpty.put(net.side(), net.empty());
    } else if (noted.event() instanceof BoxEvent.Signalled s) {
      signalled.put(s.side(), true);
    }
    note(noted.at());
  }

  /** A period begins: play stood still, whatever the sheet says of it. */
  private void begin(GameInstant at) {
    signalled.replaceAll((side, up) -> false);
    strengths.atStoppage(clock.overtime(at.period()));
    note(at);
  }

  /**
   * A stoppage: first what a goal ends, then what the calls come to, then the teams put out whom
   * they may.
   */
  private void stop(Step.Stoppage s) {
    long now = clock.millis(s.at());
    s.signalled().forEach(up -> signalled.put(up.side(), true));
    Map<Side, List<ServedPenalty>> called = new EnumMap<>(Side.class);
    for (Side side : Side.values()) {
      called.put(side, new ArrayList<>());
    }
    for (Called c : s.calls()) {
      called.get(c.side()).addAll(ServedPenalty.of(c, rules));
    }
    CallDoubts.of(s, rules).forEach(text -> doubt(s.at(), text));
    for (Goal goal : s.goals()) {
      goal(goal, called, now);
    }
    assess(called, s.at(), now);
    strengths.atStoppage(clock.overtime(s.at().period()));
    signalled.replaceAll((side, up) -> false);
    note(s.at());
  }

  /**
   * What a goal ends. Nothing on a penalty shot (NHL 24.6: S). A minor of the team scored on, only
   * if it is shorthanded (NHL 16.2: S; USA Hockey, at four on four nothing is released: P). If it
   * ends none and a penalty was signalled, one minor signalled is not served (NHL 15.2, from
   * memory). Where the book says so, a shorthanded goal ends a minor of the team that scored (PWHL:
   * P).
   */
  private void goal(Goal goal, Map<Side, List<ServedPenalty>> called, long now) {
    Side against = goal.scoring().other();
    atExpiry(goal, against, now);
    if (goal.penaltyShot()) {
      return;
    }
    Consumer<String> doubts = text -> doubt(goal.at(), text);
    boolean ended =
        strengths.shorthanded(against) && strengths.bench(against).endLeastLeft(now, doubts);
    if (!ended && signalled.get(against)) {
      Offsetting.strikeSignalled(called.get(against), doubts);
    } else if (called.get(against).stream().anyMatch(ServedPenalty::minor)
        && !signalled.get(against)) {
      doubt(
          goal.at(),
          "a goal ("
              + goal.ref()
              + ") and a minor on the team scored on stand at one stoppage and none was signalled;"
              + " taken: called after the goal, so it is served");
    }
    if (rules.shorthandedGoalFreesOwnMinor() && strengths.shorthanded(goal.scoring())) {
      strengths.bench(goal.scoring()).endLeastLeft(now, doubts);
    }
  }

  private void atExpiry(Goal goal, Side against, long now) {
    boolean justOut = lastMinorOut.getOrDefault(against, -1L) == now;
    boolean aboutTo =
        strengths.bench(against).seats().stream()
            .anyMatch(seat -> seat.running() && seat.endsAt() == now && seat.current().minor());
    if (justOut || aboutTo) {
      doubt(
          goal.at(),
          "the goal ("
              + goal.ref()
              + ") came at the very instant at which a minor of the "
              + against.text()
              + " team ran out; no book read says which comes first, taken: "
              + (justOut ? "the minor was over" : "the minor was still being served"));
    }
  }

  private void assess(Map<Side, List<ServedPenalty>> called, GameInstant at, long now) {
    Offsetting offsetting =
        new Offsetting(
            called.get(Side.HOME), called.get(Side.AWAY), rules, strengths.nothingServed());
    offsetting.doubts().forEach(text -> doubt(at, text));
    for (Side side : Side.values()) {
      strengths.bench(side).sit(offsetting.left(side), now, text -> doubt(at, text));
    }
  }

  /** Who is on the ice from here on. */
  private void note(GameInstant at) {
    snapshots.add(snapshot(at));
  }

  private Snapshot snapshot(GameInstant at) {
    return new Snapshot(
        at,
        new OnIce(team(Side.HOME), team(Side.AWAY)),
        Term.of(strengths.bench(Side.HOME), strengths.ranOut(Side.HOME)),
        Term.of(strengths.bench(Side.AWAY), strengths.ranOut(Side.AWAY)));
  }

  private OnIce.Team team(Side side) {
    Bench bench = strengths.bench(side);
    return new OnIce.Team(
        strengths.skaters(side),
        netEmpty.get(side),
        bench.running(),
        bench.waiting(),
        signalled.get(side),
        strengths.shorthanded(side));
  }
}
