package twostrides.rulebook.penalty;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import twostrides.rulebook.penalty.BoxEvent.Called;
import twostrides.rulebook.penalty.PenaltyRules.AtExpiry;
import twostrides.rulebook.penalty.PenaltyRules.CoincidentalMinors;

/**
 * A second count of manpower, written from the rules: it walks through the game half a second at a
 * time and takes that off the first men in each box, who are the ones being served. It shares no
 * deciding code with the package; only the events and the rules' data. Where no book read says
 * which of several comes first, it follows the same stated convention.
 */
final class HalfSecondCounter {

  /** What it counted, at one reading of the clock. */
  record Counted(
      int period,
      int tick,
      boolean afterRows,
      List<Integer> skaters,
      List<Integer> served,
      List<Integer> waiting,
      List<Boolean> shorthanded) {}

  /** One stretch that somebody has to serve. */
  private static final class Stretch {
    final Called call;
    final int full;
    int left;

    Stretch(Called call, int ticks) {
      this.call = call;
      this.full = ticks;
      this.left = ticks;
    }

    boolean minor() {
      return call.kind() == PenaltyKind.MINOR
          || call.kind() == PenaltyKind.BENCH_MINOR
          || call.kind() == PenaltyKind.DOUBLE_MINOR;
    }

    String man() {
      return call.player().orElse(call.sitter().orElse("row " + call.ref()));
    }

    String sortKey() {
      return (minor() ? "b" : "a")
          + "\0"
          + call.player().orElse("")
          + "\0"
          + call.servedBy().orElse("")
          + "\0"
          + KINDS.indexOf(call.kind())
          + "\0"
          + call.ref();
    }
  }

  private static final int MOST = 2;

  private static final List<PenaltyKind> KINDS = List.of(PenaltyKind.values());

  private static int team(Side side) {
    return side == Side.HOME ? 0 : 1;
  }

  private final PenaltyRules rules;
  private final List<List<List<Stretch>>> box = List.of(new ArrayList<>(), new ArrayList<>());
  private final int[] onIce = {5, 5};
  private final int[] ghosts = {0, 0};
  private final boolean[] arm = {false, false};
  private final List<Counted> counted = new ArrayList<>();
  private final Set<Long> expiries = new TreeSet<>();
  private final int periodTicks;
  private final int overtimeTicks;

  private HalfSecondCounter(PenaltyRules rules, int periodTicks, int overtimeTicks) {
    this.rules = rules;
    this.periodTicks = periodTicks;
    this.overtimeTicks = overtimeTicks;
  }

  /** Counts a game of three periods and as many more as asked for; events in order. */
  static HalfSecondCounter count(
      PenaltyRules rules, int periodTicks, int overtimeTicks, int periods, List<BoxEvent> events) {
    HalfSecondCounter c = new HalfSecondCounter(rules, periodTicks, overtimeTicks);
    Map<Long, List<BoxEvent>> byReading =
        events.stream()
            .collect(Collectors.groupingBy(e -> reading(e.at().period(), ticks(e.at().elapsed()))));
    for (int period = 1; period <= periods; period++) {
      c.period(period, byReading);
    }
    return c;
  }

  List<Counted> counted() {
    return counted;
  }

  /** Readings at which something ran out, as {@link #reading} writes them. */
  Set<Long> expiries() {
    return expiries;
  }

  static long reading(int period, long tick) {
    return period * 1_000_000L + tick;
  }

  private void period(int period, Map<Long, List<BoxEvent>> byReading) {
    int length = period > 3 ? overtimeTicks : periodTicks;
    arm[0] = false;
    arm[1] = false;
    if (period > 1) {
      putOut(period);
    }
    boolean over = rules.atExpiry() == AtExpiry.OVER;
    for (int tick = 0; tick <= length; tick++) {
      if (tick > 0) {
        for (List<List<Stretch>> team : box) {
          team.stream().limit(MOST).forEach(man -> man.get(0).left--);
        }
      }
      if (over) {
        letOut(period, tick);
      }
      see(period, tick, false);
      List<BoxEvent> rows = byReading.getOrDefault(reading(period, tick), List.of());
      if (!rows.isEmpty()) {
        readRows(period, rows);
      }
      see(period, tick, true);
      if (!over) {
        letOut(period, tick);
      }
    }
  }

  static int ticks(double seconds) {
    return (int) Math.round(seconds * 2);
  }

  private void see(int period, int tick, boolean afterRows) {
    List<Integer> served = new ArrayList<>();
    List<Integer> waiting = new ArrayList<>();
    for (List<List<Stretch>> team : box) {
      int now = Math.min(MOST, team.size());
      int calls = 0;
      for (List<Stretch> man : team) {
        calls += (int) man.stream().map(s -> s.call).distinct().count();
      }
      served.add(now);
      waiting.add(calls - now);
    }
    counted.add(
        new Counted(
            period,
            tick,
            afterRows,
            List.of(onIce[0], onIce[1]),
            served,
            waiting,
            List.of(isShort(0), isShort(1))));
  }

  private boolean isShort(int team) {
    int wouldHave = onIce[team] + (rules.expiredMajorEmptyBoxExempt() ? 0 : ghosts[team]);
    return wouldHave < onIce[1 - team];
  }

  private void letOut(int period, int tick) {
    for (int t = 0; t < 2; t++) {
      List<List<Stretch>> team = box.get(t);
      int before = Math.min(MOST, team.size());
      int manned = 0;
      for (List<Stretch> man : List.copyOf(team.subList(0, before))) {
        if (man.get(0).left <= 0) {
          expiries.add(reading(period, tick));
          Stretch done = man.remove(0);
          if (man.isEmpty()) {
            team.remove(man);
            boolean nobody = done.call.servedBy().equals(Optional.of("nobody")) && !done.minor();
            manned += nobody ? 0 : 1;
          }
        }
      }
      int free = before - Math.min(MOST, team.size());
      int comeBack = Math.min(free, manned);
      onIce[t] = Math.min(5, onIce[t] + comeBack);
      ghosts[t] += free - comeBack;
    }
  }

  private void putOut(int period) {
    int home = Math.min(MOST, box.get(0).size());
    int away = Math.min(MOST, box.get(1).size());
    if (period > 3 && rules.overtimeSkaters().isPresent()) {
      onIce[0] = 3 + Math.max(0, away - home);
      onIce[1] = 3 + Math.max(0, home - away);
    } else {
      onIce[0] = 5 - home;
      onIce[1] = 5 - away;
    }
    ghosts[0] = 0;
    ghosts[1] = 0;
  }

  /** Rows of one reading, cut after each face-off. */
  private void readRows(int period, List<BoxEvent> rows) {
    List<BoxEvent> part = new ArrayList<>();
    for (BoxEvent e : rows) {
      part.add(e);
      if (e instanceof BoxEvent.Started) {
        readPart(period, part);
        part.clear();
      }
    }
    readPart(period, part);
  }

  private void readPart(int period, List<BoxEvent> part) {
    List<List<Stretch>> calls = List.of(new ArrayList<>(), new ArrayList<>());
    boolean stopped = false;
    for (BoxEvent e : part) {
      if (e instanceof BoxEvent.Signalled s) {
        arm[team(s.side())] = true;
      } else if (e instanceof Called c) {
        calls.get(team(c.side())).addAll(stretches(c));
        stopped = true;
      } else if (!(e instanceof BoxEvent.NetEmpty)) {
        stopped = true;
      }
    }
    for (BoxEvent e : part) {
      if (e instanceof BoxEvent.Goal g && !g.penaltyShot()) {
        afterGoal(team(g.scoring()), calls);
      }
    }
    if (!stopped) {
      return;
    }
    offset(calls);
    sit(0, calls.get(0));
    sit(1, calls.get(1));
    putOut(period);
    arm[0] = false;
    arm[1] = false;
  }

  private List<Stretch> stretches(Called c) {
    double seconds =
        switch (c.kind()) {
          case MINOR, BENCH_MINOR -> rules.lengths().minorSeconds();
          case DOUBLE_MINOR -> 2 * rules.lengths().minorSeconds();
          case MAJOR -> rules.lengths().majorSeconds();
          case MATCH -> rules.lengths().matchSeconds().orElse(rules.lengths().majorSeconds());
          case MISCONDUCT, GAME_MISCONDUCT -> 0;
        };
    if (seconds == 0) {
      return List.of();
    }
    int ticks = ticks(c.lengthSeconds().orElse(seconds));
    return c.kind() == PenaltyKind.DOUBLE_MINOR
        ? List.of(new Stretch(c, ticks / 2), new Stretch(c, ticks / 2))
        : List.of(new Stretch(c, ticks));
  }

  private void afterGoal(int scoring, List<List<Stretch>> calls) {
    int against = 1 - scoring;
    boolean ended = isShort(against) && endOneMinor(against);
    if (!ended && arm[against]) {
      List<Stretch> theirs = calls.get(against);
      int shortest = theirs.stream().filter(Stretch::minor).mapToInt(s -> s.full).min().orElse(0);
      strike(theirs, true, shortest, 1);
    }
    if (rules.shorthandedGoalFreesOwnMinor() && isShort(scoring)) {
      endOneMinor(scoring);
    }
  }

  private boolean endOneMinor(int team) {
    Optional<List<Stretch>> least =
        box.get(team).stream()
            .limit(MOST)
            .filter(man -> man.get(0).minor())
            .min(
                Comparator.<List<Stretch>>comparingInt(man -> man.get(0).left)
                    .thenComparingInt(man -> man.stream().skip(1).mapToInt(s -> s.full).sum())
                    .thenComparing(man -> man.get(0).sortKey()));
    least.ifPresent(
        man -> {
          man.remove(0);
          if (man.isEmpty()) {
            box.get(team).remove(man);
          }
        });
    return least.isPresent();
  }

  /** Equal ones cancel; by the rule of four on four, one minor each with empty boxes does not. */
  private void offset(List<List<Stretch>> calls) {
    List<Stretch> home = calls.get(0);
    List<Stretch> away = calls.get(1);
    boolean boxesEmpty = box.get(0).isEmpty() && box.get(1).isEmpty();
    if (rules.coincidentalMinors() == CoincidentalMinors.FOUR_ON_FOUR
        && boxesEmpty
        && home.size() == 1
        && away.size() == 1
        && home.get(0).minor()
        && away.get(0).minor()
        && home.get(0).full == away.get(0).full) {
      return;
    }
    for (boolean minors : new boolean[] {false, true}) {
      TreeSet<Integer> lengths = new TreeSet<>(Comparator.reverseOrder());
      home.stream().filter(s -> s.minor() == minors).forEach(s -> lengths.add(s.full));
      for (int length : lengths) {
        long pairs = Math.min(many(home, minors, length), many(away, minors, length));
        strike(home, minors, length, pairs);
        strike(away, minors, length, pairs);
      }
    }
  }

  private static long many(List<Stretch> calls, boolean minors, int length) {
    return calls.stream().filter(s -> s.minor() == minors && s.full == length).count();
  }

  /** Men with the fewest majors, then the fewest stretches, are struck first. */
  private static void strike(List<Stretch> calls, boolean minors, int length, long howMany) {
    List<Stretch> before = List.copyOf(calls);
    before.stream()
        .filter(s -> s.minor() == minors && s.full == length)
        .sorted(
            Comparator.<Stretch>comparingLong(s -> ofMan(before, s).filter(o -> !o.minor()).count())
                .thenComparingLong(s -> ofMan(before, s).count())
                .thenComparing(Stretch::sortKey))
        .limit(howMany)
        .forEach(calls::remove);
  }

  private static Stream<Stretch> ofMan(List<Stretch> calls, Stretch s) {
    return calls.stream().filter(o -> o.man().equals(s.man()));
  }

  private void sit(int team, List<Stretch> calls) {
    List<Stretch> sorted = new ArrayList<>(calls);
    sorted.sort(Comparator.comparing(Stretch::sortKey));
    for (Stretch s : sorted) {
      List<Stretch> behind = null;
      for (List<Stretch> man : box.get(team)) {
        for (Stretch here : man) {
          boolean sameSitter =
              s.call.sitter().isPresent() && s.call.sitter().equals(here.call.sitter());
          boolean sameMan =
              s.call.player().isPresent()
                  && s.call.player().equals(here.call.player())
                  && sorted.stream().anyMatch(o -> o.call.equals(here.call));
          if (behind == null && (here.call.equals(s.call) || sameSitter || sameMan)) {
            behind = man;
          }
        }
      }
      if (behind == null) {
        behind = new ArrayList<>();
        box.get(team).add(behind);
      }
      behind.add(s);
    }
  }
}
