package twostrides.race.puck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import twostrides.rink.Place;
import twostrides.rink.Rink;

class BoardsTest {

  private static final Boards BOARDS = Boards.of(Rink.INTERNATIONAL);

  private static double run(Boards boards, Place from, double ux, double uy) {
    return boards.ahead(from, ux, uy).length();
  }

  @Test
  void thePuckStaysItsRadiusAwayFromTheBoards() {
    assertEquals(30 - 0.0381, run(BOARDS, new Place(0, 0), 1, 0), 1e-12);
    assertEquals(15 - 0.0381, run(BOARDS, new Place(0, 0), 0, -1), 1e-12);
    // From the center of a corner every way into it is one corner radius long.
    for (int i = 1; i < 9; i++) {
      double angle = i * Math.PI / 20;
      assertEquals(
          8.5 - 0.0381,
          run(BOARDS, new Place(21.5, -6.5), Math.cos(angle), -Math.sin(angle)),
          1e-12);
    }
  }

  @Test
  void everyStraightPathEndsAtTheBoards() {
    SplittableRandom random = new SplittableRandom(31);
    for (Rink rink : new Rink[] {Rink.INTERNATIONAL, Rink.NORTH_AMERICAN}) {
      Boards boards = Boards.of(rink);
      for (int i = 0; i < 20_000; i++) {
        Place from =
            boards.inside(new Place(random.nextDouble(-32, 32), random.nextDouble(-16, 16)));
        assertTrue(boards.outside(from.x(), from.y()) <= 1e-12);
        double angle = random.nextDouble(-Math.PI, Math.PI);
        double ux = Math.cos(angle);
        double uy = Math.sin(angle);
        double s = run(boards, from, ux, uy);
        assertEquals(0, boards.outside(from.x() + s * ux, from.y() + s * uy), 1e-10);
        double part = s * random.nextDouble();
        assertTrue(boards.outside(from.x() + part * ux, from.y() + part * uy) <= 1e-10);
      }
    }
  }

  @Test
  void placesOutsideAreMovedToTheNearestInside() {
    Place corner = BOARDS.inside(new Place(30, -15));
    double half = (8.5 - 0.0381) / Math.sqrt(2);
    assertEquals(21.5 + half, corner.x(), 1e-12);
    assertEquals(-6.5 - half, corner.y(), 1e-12);
    assertEquals(new Place(3, 15 - 0.0381), BOARDS.inside(new Place(3, 15)));
    assertEquals(new Place(3, 4), BOARDS.inside(new Place(3, 4)));
  }

  @Test
  void aReboundNeverGivesEnergy() {
    SplittableRandom random = new SplittableRandom(32);
    for (int i = 0; i < 20_000; i++) {
      double along = random.nextDouble(-30, 30);
      double into = random.nextDouble(0, 30);
      double e = random.nextDouble();
      double after = Boards.alongAfter(along, into, e);
      assertTrue(Math.abs(after) <= Math.abs(along));
      assertTrue(Math.abs(after) >= Math.abs(along) * (2.0 / 3 - 1e-15), "no slip at the least");
      assertTrue(after * along >= 0, "never turned round along the wall");
      assertTrue(after * after + e * e * into * into <= along * along + into * into);
    }
  }

  @Test
  void theImpulseAlongTheWallIsThatOfCoulombUntilTheDiscRolls() {
    assertEquals(10 - 0.2 * 1.3 * 4, Boards.alongAfter(10, 4, 0.3), 1e-12);
    assertEquals(-10 + 0.2 * 1.3 * 4, Boards.alongAfter(-10, 4, 0.3), 1e-12);
    assertEquals(2, Boards.alongAfter(3, 20, 0.3), 1e-12);
  }

  @Test
  void aQuarterTurnKeepsItsShare() {
    double k = BOARDS.rimDrag();
    double quarter = (8.5 - 0.0381) * Math.PI / 2;
    assertEquals(0.8 * 20, new Slide(20, 0, k).speedAfter(quarter).orElseThrow(), 1e-12);
  }

  @Test
  void outlinesWithoutCornersAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Boards(30, 15, 0));
    assertThrows(IllegalArgumentException.class, () -> new Boards(30, 15, 15));
  }
}
