package twostrides.rulebook.penalty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import twostrides.rulebook.penalty.HalfSecondCounter.Counted;
import twostrides.rulebook.penalty.InventedGames.Invented;

/**
 * What holds in every game, over 2,000 made-up ones; seeds 1 to 2,000. The profile mutation plays
 * fewer.
 */
class ManpowerPropertiesTest {

  private static final long GAMES = Long.getLong("twostrides.games", 2_000);

  private static BoxTimeline timeline(PenaltyRules rules, List<BoxEvent> events) {
    return BoxTimeline.of(
        rules, InventedGames.PERIOD_TICKS / 2.0, InventedGames.OVERTIME_TICKS / 2.0, 3, events);
  }

  private static HalfSecondCounter counter(Invented game) {
    return HalfSecondCounter.count(
        game.rules(), InventedGames.PERIOD_TICKS, InventedGames.OVERTIME_TICKS, 4, game.events());
  }

  private static GameInstant instant(Counted c) {
    return c.afterRows()
        ? GameInstant.afterRows(c.period(), c.tick() / 2.0)
        : GameInstant.beforeRows(c.period(), c.tick() / 2.0);
  }

  /** In words, so that a failure can be read. */
  private static String text(OnIce ice) {
    StringBuilder out = new StringBuilder();
    for (Side side : Side.values()) {
      OnIce.Team t = ice.team(side);
      out.append(line(t.skaters(), t.served(), t.waiting(), t.shorthanded()));
    }
    return out.toString();
  }

  private static String line(int skaters, int served, int waiting, boolean shorthanded) {
    return skaters + " (" + served + " served, " + waiting + " waiting, " + shorthanded + ") ";
  }

  private static String text(Counted c) {
    StringBuilder out = new StringBuilder();
    for (int t = 0; t < 2; t++) {
      out.append(
          line(c.skaters().get(t), c.served().get(t), c.waiting().get(t), c.shorthanded().get(t)));
    }
    return out.toString();
  }

  @Test
  void aSecondCounterAgreesAtEveryHalfSecondAndOnWhenStrengthMayChange() {
    LongStream.rangeClosed(1, GAMES).parallel().forEach(ManpowerPropertiesTest::compare);
  }

  private static void compare(long seed) {
    Invented game = InventedGames.game(seed);
    BoxTimeline timeline = timeline(game.rules(), game.events());
    HalfSecondCounter counter = counter(game);
    changesOnlyAtRowsExpiriesAndPeriods(seed, game, counter, timeline);
    for (Counted c : counter.counted()) {
      GameInstant at = instant(c);
      OnIce ice = timeline.at(at);
      if (!agrees(c, ice)) {
        fail(
            "seed "
                + seed
                + " at "
                + at
                + ": counted "
                + text(c)
                + "but the timeline has "
                + text(ice)
                + timeline.why(at, Side.HOME));
      }
    }
  }

  private static boolean agrees(Counted c, OnIce ice) {
    boolean same = true;
    for (int t = 0; t < 2; t++) {
      OnIce.Team team = t == 0 ? ice.home() : ice.away();
      same &=
          c.skaters().get(t) == team.skaters()
              && c.served().get(t) == team.served()
              && c.waiting().get(t) == team.waiting()
              && c.shorthanded().get(t) == team.shorthanded();
    }
    return same;
  }

  @Test
  void neverFewerThanThreeNorMoreThanAllowed() {
    for (long seed = 1; seed <= GAMES; seed++) {
      Invented game = InventedGames.game(seed);
      BoxTimeline timeline = timeline(game.rules(), game.events());
      for (Snapshot c : timeline.snapshots()) {
        for (Side side : Side.values()) {
          OnIce.Team team = c.ice().team(side);
          long s = seed;
          assertTrue(team.skaters() >= 3 && team.skaters() <= 5, () -> "seed " + s + ": " + c);
          assertTrue(team.served() <= 2, () -> "seed " + s + ": " + c);
        }
        assertTrue(
            !(c.ice().shorthanded(Side.HOME) && c.ice().shorthanded(Side.AWAY)),
            () -> "both short: " + c);
      }
    }
  }

  private static void changesOnlyAtRowsExpiriesAndPeriods(
      long seed, Invented game, HalfSecondCounter counter, BoxTimeline timeline) {
    Set<Long> allowed = new HashSet<>(counter.expiries());
    game.events().forEach(e -> allowed.add(reading(e.at())));
    OnIce before = timeline.at(GameInstant.beforeRows(1, 0));
    for (Snapshot c : timeline.snapshots()) {
      if (!strengthDiffers(before, c.ice())) {
        continue;
      }
      before = c.ice();
      boolean notCounted = c.at().period() > 4;
      boolean periodStart = c.at().elapsed() == 0;
      assertTrue(
          notCounted || periodStart || allowed.contains(reading(c.at())),
          () -> "seed " + seed + ": " + c);
    }
  }

  private static boolean strengthDiffers(OnIce before, OnIce after) {
    return before.skaters(Side.HOME) != after.skaters(Side.HOME)
        || before.skaters(Side.AWAY) != after.skaters(Side.AWAY)
        || before.home().netEmpty() != after.home().netEmpty()
        || before.away().netEmpty() != after.away().netEmpty();
  }

  private static long reading(GameInstant t) {
    return HalfSecondCounter.reading(t.period(), HalfSecondCounter.ticks(t.elapsed()));
  }

  @Test
  void theOrderOfRowsInsideAStoppageChangesNothing() {
    for (long seed = 1; seed <= GAMES; seed++) {
      Invented game = InventedGames.game(seed);
      BoxTimeline as = timeline(game.rules(), game.events());
      List<BoxEvent> mixed = mix(game.events(), new Random(-seed));
      BoxTimeline other = timeline(game.rules(), mixed);
      for (BoxEvent e : game.events()) {
        GameInstant after = GameInstant.afterRows(e.at().period(), e.at().elapsed());
        GameInstant later = GameInstant.afterRows(e.at().period(), e.at().elapsed() + 30);
        long s = seed;
        assertEquals(as.at(after), other.at(after), () -> "seed " + s + " at " + after);
        assertEquals(as.at(later), other.at(later), () -> "seed " + s + " at " + later);
        assertEquals(as.why(after, Side.HOME), other.why(after, Side.HOME));
      }
      assertEquals(
          as.doubts().stream().map(Doubt::text).sorted().toList(),
          other.doubts().stream().map(Doubt::text).sorted().toList());
    }
  }

  /** The same rows with their orders dealt anew inside each stoppage; a face-off stays last. */
  private static List<BoxEvent> mix(List<BoxEvent> events, Random random) {
    List<BoxEvent> out = new ArrayList<>();
    int from = 0;
    for (int i = 0; i < events.size(); i++) {
      boolean last =
          i + 1 == events.size()
              || reading(events.get(i + 1).at()) != reading(events.get(i).at())
              || events.get(i + 1) instanceof BoxEvent.Started
              || events.get(i) instanceof BoxEvent.Started;
      if (last) {
        List<BoxEvent> part = new ArrayList<>(events.subList(from, i + 1));
        List<Long> orders = new ArrayList<>(part.stream().map(e -> e.at().order()).toList());
        Collections.shuffle(orders, random);
        for (int k = 0; k < part.size(); k++) {
          out.add(withOrder(part.get(k), orders.get(k)));
        }
        from = i + 1;
      }
    }
    Collections.shuffle(out, random);
    return out;
  }

  private static BoxEvent withOrder(BoxEvent e, long order) {
    GameInstant at = new GameInstant(e.at().period(), e.at().elapsed(), order);
    if (e instanceof BoxEvent.Called c) {
      return new BoxEvent.Called(
          at, c.side(), c.kind(), c.lengthSeconds(), c.player(), c.servedBy(), c.ref());
    } else if (e instanceof BoxEvent.Goal g) {
      return new BoxEvent.Goal(at, g.scoring(), g.penaltyShot(), g.ref());
    } else if (e instanceof BoxEvent.Signalled s) {
      return new BoxEvent.Signalled(at, s.side(), s.ref());
    } else if (e instanceof BoxEvent.NetEmpty n) {
      return new BoxEvent.NetEmpty(at, n.side(), n.empty());
    }
    return e instanceof BoxEvent.Stopped ? new BoxEvent.Stopped(at) : new BoxEvent.Started(at);
  }
}
