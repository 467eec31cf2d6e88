package twostrides.rulebook.penalty;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import twostrides.rulebook.penalty.BoxEvent.Called;

/**
 * Who is on the ice, by penalties, at every instant of a game.
 *
 * <p>Conventions: a penalty counts from the first row of the stoppage at which it is called, so a
 * row before it at the same reading of the clock is still at the old strength ({@link
 * GameInstant}). It covers the time from its start up to but not with its end, so that at the very
 * instant of expiry it is over; no book read defines the tie, and {@link PenaltyRules.AtExpiry}
 * turns it round. A goal and a penalty of one stoppage: the goal comes first. A reading past the
 * end of its period is taken for that end.
 *
 * <p>Guaranteed: skaters from the rules' fewest to full, whatever the events. Tolerated: events in
 * any order, missing stoppages and face-offs (a penalty, a goal and the start of a period stop
 * play). Not known: players, so a sheet that lists a penalty twice has it served twice.
 */
public final class BoxTimeline {

  private final PenaltyRules rules;
  private final Clock clock;
  private final NavigableMap<GameInstant, Snapshot> snapshots = new TreeMap<>();
  private final List<Doubt> doubts;

  private BoxTimeline(PenaltyRules rules, Clock clock, Box box) {
    this.rules = rules;
    this.clock = clock;
    box.snapshots().forEach(s -> snapshots.put(s.at(), s));
    this.doubts =
        box.doubts().stream()
            .sorted(Comparator.comparing(Doubt::at).thenComparing(Doubt::text))
            .toList();
  }

  /**
   * Works out a game.
   *
   * @param rules what the book says
   * @param periodSeconds length of a period of regulation, s
   * @param overtimeSeconds length of a period of overtime, s
   * @param regulationPeriods periods of regulation; every later one is overtime
   * @param events in any order
   */
  public static BoxTimeline of(
      PenaltyRules rules,
      double periodSeconds,
      double overtimeSeconds,
      int regulationPeriods,
      List<BoxEvent> events) {
    Clock clock =
        new Clock(
            GameInstant.toMillis(periodSeconds),
            GameInstant.toMillis(overtimeSeconds),
            regulationPeriods);
    Box box = new Box(rules, clock);
    List<BoxEvent> within = new ArrayList<>();
    for (BoxEvent e : events) {
      if (clock.pastEnd(e.at())) {
        box.doubt(
            e.at(),
            "the clock reads %s s, past the end of period %d; taken for that end"
                .formatted(e.at().elapsed(), e.at().period()));
      }
      within.add(clock.within(e));
    }
    List<Step> steps = new ArrayList<>(Step.of(within));
    int last = lastPeriod(rules, clock, within);
    for (int period = 2; period <= last; period++) {
      steps.add(new Step.PeriodStart(new GameInstant(period, 0, Long.MIN_VALUE)));
    }
    steps.sort(Comparator.comparing(Step::at));
    steps.forEach(box::play);
    return new BoxTimeline(rules, clock, box);
  }

  /** A period after which nothing can change: all penalties one after the other end before it. */
  private static int lastPeriod(PenaltyRules rules, Clock clock, List<BoxEvent> events) {
    long end = clock.offset(clock.regulationPeriods() + 1);
    long served = 1;
    for (BoxEvent e : events) {
      end = Math.max(end, clock.millis(e.at()));
      if (e instanceof Called c) {
        served += ServedPenalty.of(c, rules).stream().mapToLong(ServedPenalty::millis).sum();
      }
    }
    return clock.instant(end + served, 0).period() + 1;
  }

  /**
   * Who is on the ice at an instant. A row that carries this very instant does not count yet.
   *
   * @param t any instant
   */
  public OnIce at(GameInstant t) {
    return snapshot(t).ice();
  }

  /**
   * Why a team has the strength it has, one plain sentence without a stop.
   *
   * @param t any instant
   * @param side whose strength
   */
  public String why(GameInstant t, Side side) {
    return snapshot(t).why(side, rules, clock, t.period());
  }

  /** Who is on the ice from each instant to the next one, in order. */
  Collection<Snapshot> snapshots() {
    return snapshots.values();
  }

  /** What the events or the books leave open, in order. */
  public List<Doubt> doubts() {
    return doubts;
  }

  private Snapshot snapshot(GameInstant t) {
    Map.Entry<GameInstant, Snapshot> before = snapshots.lowerEntry(clock.within(t));
    return (before == null ? snapshots.firstEntry() : before).getValue();
  }
}
