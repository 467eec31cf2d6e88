package twostrides.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
import twostrides.demo.Skater.Legs;
import twostrides.demo.Skater.Role;
import twostrides.rink.Place;
import twostrides.rink.Rink;

/** The pieces that the games are made of. */
class DemoPartsTest {
  private static final Skater SOMEBODY =
      new Skater(5, "Ada Nowhere", Role.DEFENDER, Habits.USUAL, Legs.USUAL);

  /** Seeds that differ by one once played each other's games a step later. */
  @Test
  void neighbouringSeedsAndGamesShareNothing() {
    Set<Double> seen = new HashSet<>();
    for (int seed = -2; seed < 20; seed++) {
      for (int game = 1; game <= 12; game++) {
        Dice dice = new Dice(seed, game);
        Dice beside = Dice.beside(seed, game, 1);
        for (int i = 0; i < 100; i++) {
          assertTrue(seen.add(dice.between(0, 1)), "seed " + seed + ", game " + game);
          assertTrue(seen.add(beside.between(0, 1)), "beside " + seed + ", game " + game);
        }
      }
    }
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
    TruthBook book = new TruthBook(false);
    GameClock clock = new GameClock(0);
    book.controls(Side.HOME, clock, true);
    assertThrows(IllegalStateException.class, () -> book.controls(Side.AWAY, clock, false));
    assertThrows(
        IllegalStateException.class, () -> book.stopped(Optional.empty(), Cause.OTHER, clock));
  }

  @Test
  void restartBelongsToTheSpellThatEndedIt() {
    TruthBook book = new TruthBook(false);
    GameClock clock = new GameClock(0);
    Carrier home = new Carrier(Side.HOME, SOMEBODY, new Place(-20, 0), 1);
    book.controls(Side.HOME, clock, true);
    book.left(Way.LONG_CLEARANCE, home, clock, Manpower.EVEN);
    clock.run(4);
    book.controls(Side.AWAY, clock, false);
    book.stopped(Optional.of(Side.HOME), Cause.OTHER, clock);
    book.controls(Side.HOME, clock, true);
    book.left(Way.LONG_CLEARANCE, home, clock, Manpower.EVEN);
    clock.run(3);
    book.stopped(Optional.of(Side.HOME), Cause.ICING, clock);
    assertEquals(Cause.NONE, book.exits().get(0).cause, "the opponent had it in between");
    assertEquals(Cause.ICING, book.exits().get(1).cause);
    assertEquals(7, book.exits().get(1).restart.getAsInt());
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
    assertEquals(32 * 18, names.size());
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
