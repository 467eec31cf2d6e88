package twostrides.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import twostrides.findings.Habit;
import twostrides.findings.Mark;
import twostrides.findings.MarkOutcome;
import twostrides.findings.Profile;
import twostrides.findings.ShownWay;
import twostrides.findings.WayCount;
import twostrides.game.Strength;
import twostrides.rink.Place;
import twostrides.stats.Clustered;
import twostrides.stats.Count;

/** Made-up profiles for the tests of this package. */
final class Profiles {

  static final Profile EMPTY = new Profile(List.of(), List.of(), new Count(0, 0));

  private Profiles() {}

  static WayCount way(ShownWay way, Strength strength, int iced, int known, int attempts) {
    return new WayCount(way, strength, new Clustered(new Count(iced, known)), 0, 0, attempts);
  }

  static Profile counts(WayCount... counts) {
    return new Profile(List.of(counts), List.of(), new Count(0, 0));
  }

  /** One attempt, and one iced release. */
  static Profile one() {
    return new Profile(
        List.of(way(ShownWay.CHIP, Strength.EVEN, 1, 1, 1)),
        List.of(new Mark(new Place(-12, 9), MarkOutcome.ICED)),
        new Count(1, 1));
  }

  /** A player's season of some thirty attempts in four ways. */
  static Profile player() {
    return new Profile(
        List.of(
            way(ShownWay.CARRY_OVER_CENTER, Strength.EVEN, 0, 14, 14),
            way(ShownWay.CARRY_RELEASED_SHORT, Strength.EVEN, 7, 31, 31),
            way(ShownWay.PASS, Strength.EVEN, 0, 22, 24),
            way(ShownWay.LONG_CLEARANCE, Strength.EVEN, 2, 6, 6),
            way(ShownWay.LONG_CLEARANCE, Strength.SHORTHANDED, 0, 11, 11),
            way(ShownWay.KEPT_IN, Strength.EVEN, 3, 12, 12)),
        marks(43),
        new Count(9, 43));
  }

  /** A team with every way out at every strength, also those that occur seldom. */
  static Profile team(int most) {
    List<WayCount> counts = new ArrayList<>();
    ShownWay[] ways = ShownWay.values();
    Strength[] strengths = Strength.values();
    for (int w = 0; w < ways.length; w++) {
      for (int s = 0; s < strengths.length; s++) {
        int attempts = Math.max(1, most / (1 + w / 2) / (1 + 4 * s));
        int known = attempts - attempts / 9;
        counts.add(way(ways[w], strengths[s], known / (2 + w), known, attempts));
      }
    }
    return new Profile(counts, marks(most), new Count(most / 5, most));
  }

  static List<Mark> marks(int n) {
    Random random = new Random(7);
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double x = -1 - 20 * Math.pow(random.nextDouble(), 1.3);
      double y = 12 * Math.signum(random.nextGaussian()) * Math.sqrt(random.nextDouble());
      int which = (int) (MarkOutcome.values().length * Math.pow(random.nextDouble(), 1.2));
      marks.add(new Mark(new Place(x, y), List.of(MarkOutcome.values()).get(which)));
    }
    return marks;
  }

  /** Carries and passes out of twelve games, of which some were released short of center. */
  static Habit habit(int attempts) {
    return Habit.of(
        IntStream.range(0, attempts == 0 ? 0 : 12)
            .mapToObj(game -> new Count(game * attempts / 300, attempts / 8))
            .toList());
  }
}
