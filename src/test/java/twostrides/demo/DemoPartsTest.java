package twostrides.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import twostrides.demo.ExitTruth.Cause;
import twostrides.demo.ExitTruth.Way;
import twostrides.demo.PenaltyBox.Manpower;
import twostrides.demo.Skater.Habits;
import twostrides.demo.Skater.Role;
import twostrides.rink.Place;
import twostrides.rink.Rink;

/** The pieces that the games are made of. */
class DemoPartsTest {
  private static final Skater SOMEBODY = new Skater(5, "Ada Nowhere", Role.DEFENDER, Habits.USUAL);

  @Test
  void keepingThePuckForTwoStretchesIsKeepingItForBoth() {
    for (Pressure pressure : Pressure.values()) {
      assertEquals(pressure.keepsFor(17.5), pressure.keepsFor(12) * pressure.keepsFor(5.5), 1e-12);
    }
    assertTrue(Pressure.HEAVY.keepsFor(10) < Pressure.LIGHT.keepsFor(10));
    assertTrue(Pressure.LIGHT.keepsFor(10) < Pressure.NONE.keepsFor(10));
    assertEquals(1.0, Pressure.HEAVY.keepsFor(-3), "already past center");
  }

  @Test
  void goalAgainstAShorthandedTeamEndsItsPenalty() {
    PenaltyBox box = new PenaltyBox();
    box.call(Side.HOME, SOMEBODY, 100);
    assertEquals(Manpower.SHORTHANDED, box.manpower(Side.HOME));
    assertEquals(Manpower.POWER_PLAY, box.manpower(Side.AWAY));
    box.goalAgainst(Side.AWAY);
    assertEquals(4, box.skaters(Side.HOME));
    box.goalAgainst(Side.HOME);
    assertEquals(Manpower.EVEN, box.manpower(Side.HOME));
  }

  @Test
  void penaltyIsServedAfterTwoMinutes() {
    PenaltyBox box = new PenaltyBox();
    box.call(Side.AWAY, SOMEBODY, 100);
    box.release(219.9);
    assertEquals(Manpower.SHORTHANDED, box.manpower(Side.AWAY));
    box.release(220);
    assertEquals(Manpower.EVEN, box.manpower(Side.AWAY));
  }

  @Test
  void cornersPushPlacesInside() {
    Spots spots = new Spots(Rink.NORTH_AMERICAN);
    Place corner = spots.inside(30.0, 12.5);
    assertTrue(Math.hypot(corner.x(), corner.y()) < Math.hypot(30, 12.5));
    assertEquals(new Place(-21.0, 3.3), spots.inside(-21.04, 3.26));
  }

  @Test
  void faceOffAfterIcingIsOnAnEndSpotOfThatTeam() {
    Next.Drop drop = new Spots(Rink.NORTH_AMERICAN).ownZone(Side.AWAY, 1);
    assertEquals(Optional.of(Side.AWAY), drop.zoneOf());
    assertEquals(21.0, drop.homeSpot().x());
    assertEquals(-6.7, drop.homeSpot().y());
  }

  @Test
  void truthRefusesToForgetAnAttempt() {
    TruthBook book = new TruthBook();
    GameClock clock = new GameClock(0);
    book.controls(Side.HOME, clock, true);
    assertThrows(IllegalStateException.class, () -> book.controls(Side.AWAY, clock, false));
    assertThrows(
        IllegalStateException.class, () -> book.stopped(Optional.empty(), Cause.OTHER, clock));
  }

  @Test
  void restartBelongsToTheSpellThatEndedIt() {
    TruthBook book = new TruthBook();
    GameClock clock = new GameClock(0);
    Carrier home = new Carrier(Side.HOME, SOMEBODY, new Place(-20, 0), Pressure.LIGHT);
    book.controls(Side.HOME, clock, true);
    book.left(Way.LONG_CLEARANCE, home, clock, Manpower.EVEN);
    clock.run(4);
    book.controls(Side.AWAY, clock, false);
    book.stopped(Optional.of(Side.HOME), Cause.OTHER, clock);
    book.controls(Side.HOME, clock, true);
    book.left(Way.LONG_CLEARANCE, home, clock, Manpower.EVEN);
    clock.run(3);
    book.stopped(Optional.of(Side.HOME), Cause.ICING, clock);
    assertEquals(Cause.NONE, book.exits().get(0).cause(), "the opponent had it in between");
    assertEquals(Cause.ICING, book.exits().get(1).cause());
    assertEquals(7, book.exits().get(1).restart().getAsInt());
  }

  @Test
  void nobodyIsWhereNoSkaterGetsTo() {
    Dice dice = new Dice(1, 1);
    Team team = League.found().own();
    Bench bench = new Bench(team, dice);
    Skater first = team.defenders().get(0);
    bench.saw(first, new Place(-25, 0), 100);
    for (int i = 0; i < 50; i++) {
      Skater there =
          bench.whoGetsTo(new Place(20, 0), 101, Role.DEFENDER, team.defenders(), Set.of(), dice);
      assertFalse(there.equals(first));
    }
  }

  @Test
  void namesAndNumbersOfTheLeagueAreUsedOnce() {
    League league = League.found();
    Set<String> names = new HashSet<>();
    Stream.concat(Stream.of(league.own()), league.opponents().stream())
        .forEach(
            team -> {
              Set<Integer> numbers = new HashSet<>();
              Stream.of(team.forwards(), team.defenders())
                  .flatMap(java.util.List::stream)
                  .forEach(
                      s -> {
                        assertTrue(names.add(s.name()), s.name());
                        assertTrue(numbers.add(s.number()), s.label());
                      });
            });
    assertEquals(7 * 18, names.size());
  }

  @Test
  void numbersAreNeverMinusZero() {
    assertEquals("0.0", Csv.number(-0.0, 1));
    assertEquals("0.0", Csv.number(-0.04, 1));
    assertEquals("-3.2", Csv.number(-3.2, 1));
    assertEquals("0.0050", Csv.number(0.005, 4));
    assertEquals("1834.5", Csv.number(1834.46, 1));
    assertEquals("-0.7", Csv.number(-0.66, 1));
  }
}
