package twostrides.demo;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** One team's bench in one game: which line and pair is out, its score and its net. */
final class Bench {
  private static final int PER_LINE = 3;
  private static final int PER_PAIR = 2;

  private final Team team;
  private final List<Skater> forwards;
  private final List<Skater> defenders;
  private int line;
  private int pair;

  int goals;
  boolean netEmpty;

  /** When the shift of those who are out began, s of play since the game began. */
  double shiftSince;

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
  void change(Dice dice, double gameSeconds) {
    shiftSince = gameSeconds;
    line = (line + 1 + (dice.chance(0.2) ? 1 : 0)) % (forwards.size() / PER_LINE);
    if (dice.chance(0.75)) {
      pair = (pair + 1) % (defenders.size() / PER_PAIR);
    }
  }

  /** Who is to be on the ice: the pair, then forwards from the line up; nobody who sits. */
  List<Skater> lineUp(int skaters, Set<Skater> sitting) {
    List<Skater> out = new ArrayList<>(from(defenders, pair * PER_PAIR, PER_PAIR, sitting));
    out.addAll(from(forwards, line * PER_LINE, skaters - PER_PAIR, sitting));
    return out;
  }

  private static List<Skater> from(List<Skater> roster, int start, int count, Set<Skater> sitting) {
    return IntStream.range(0, roster.size())
        .mapToObj(i -> roster.get((start + i) % roster.size()))
        .filter(s -> !sitting.contains(s))
        .limit(count)
        .toList();
  }
}
