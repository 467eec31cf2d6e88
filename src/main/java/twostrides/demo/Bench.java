package twostrides.demo;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import twostrides.demo.Skater.Role;
import twostrides.rink.Place;

/**
 * One team's bench in one game: which line and pair is on the ice, and where each player was seen
 * last, so that nobody turns up where no skater could have got to.
 */
final class Bench {
  /** The fastest that a player gets from one touch to the next, m/s, assumed. */
  private static final double TOP_SPEED = 8.0;

  /** Reach of a player and stick, m, assumed. */
  private static final double REACH = 1.5;

  private static final int PER_LINE = 3;
  private static final int PER_PAIR = 2;

  private record Seen(double when, Place homePlace) {}

  private final Team team;
  private final List<Skater> forwards;
  private final List<Skater> defenders;
  private final Map<Skater, Seen> seen = new HashMap<>();
  private int line;
  private int pair;

  /** Lines and pairs of the day: the usual ones with a few players moved. */
  Bench(Team team, Dice dice) {
    this.team = team;
    forwards = new ArrayList<>(team.forwards());
    defenders = new ArrayList<>(team.defenders());
    for (int i = 0; i < 2; i++) {
      Collections.swap(forwards, dice.below(forwards.size()), dice.below(forwards.size()));
    }
    Collections.swap(defenders, dice.below(defenders.size()), dice.below(defenders.size()));
  }

  Skater goalkeeper() {
    return team.goalkeeper();
  }

  /** Sends out the next line, and mostly the next pair too. */
  void change(Dice dice) {
    line = (line + 1 + (dice.chance(0.2) ? 1 : 0)) % (forwards.size() / PER_LINE);
    if (dice.chance(0.75)) {
      pair = (pair + 1) % (defenders.size() / PER_PAIR);
    }
  }

  /** Who is on the ice: the pair, then forwards from the line up; nobody who sits. */
  List<Skater> onIce(int skaters, Set<Skater> sitting) {
    List<Skater> out = new ArrayList<>(from(defenders, pair * PER_PAIR, PER_PAIR, sitting));
    out.addAll(from(forwards, line * PER_LINE, skaters - PER_PAIR, sitting));
    return out;
  }

  /**
   * Somebody who can be at a place now, preferably of one role. When nobody on the ice can have got
   * there, a player from the bench has come on.
   *
   * @param barred who cannot: who sits, and who has just passed
   */
  Skater whoGetsTo(
      Place homePlace, double now, Role wanted, List<Skater> onIce, Set<Skater> barred, Dice dice) {
    List<Skater> able =
        onIce.stream().filter(s -> !barred.contains(s) && canReach(s, homePlace, now)).toList();
    List<Skater> others = everybody().filter(s -> !barred.contains(s)).toList();
    if (able.isEmpty()) {
      able = others.stream().filter(s -> canReach(s, homePlace, now)).toList();
    }
    if (able.isEmpty()) {
      return others.stream().min(Comparator.comparingDouble(this::lastSeen)).orElseThrow();
    }
    List<Skater> fitting = able.stream().filter(s -> s.role() == wanted).toList();
    return dice.oneOf(fitting.isEmpty() ? able : fitting);
  }

  void saw(Skater skater, Place homePlace, double now) {
    seen.put(skater, new Seen(now, homePlace));
  }

  /** After a stoppage players stand where they like. */
  void forget() {
    seen.clear();
  }

  private Stream<Skater> everybody() {
    return Stream.concat(defenders.stream(), forwards.stream());
  }

  private double lastSeen(Skater skater) {
    Seen last = seen.get(skater);
    return last == null ? 0 : last.when();
  }

  private boolean canReach(Skater skater, Place homePlace, double now) {
    Seen last = seen.get(skater);
    return last == null
        || last.homePlace().distanceTo(homePlace) <= REACH + TOP_SPEED * (now - last.when());
  }

  private static List<Skater> from(List<Skater> roster, int start, int count, Set<Skater> sitting) {
    List<Skater> out = new ArrayList<>();
    for (int i = 0; i < roster.size() && out.size() < count; i++) {
      Skater next = roster.get((start + i) % roster.size());
      if (!sitting.contains(next)) {
        out.add(next);
      }
    }
    return out;
  }
}
