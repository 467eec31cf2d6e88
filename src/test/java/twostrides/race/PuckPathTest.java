package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import twostrides.rink.Place;
import twostrides.rink.Rink;

class PuckPathTest {

  private static final Rink RINK = Rink.INTERNATIONAL;
  private static final PuckSettings DEFAULT = PuckSettings.DEFAULT.withIce(0.10, 0.0053);
  private static final double R = Rink.PUCK_RADIUS;

  @Test
  void aSlideUpIceCrossesTheLinesWhenTheClosedFormSays() {
    PuckPath path = new PuckPath(RINK);
    path.slide(DEFAULT, -5, 3, 20, 0);
    Slide slide = Slide.onIce(20, 0.10, 0.0053);
    assertEquals(slide.timeTo(5 - 0.15 - R).orElseThrow(), path.touchesRedLine(), 1e-12);
    assertEquals(slide.timeTo(5 + 7.8 + R).orElseThrow(), path.pastFarBlueLine(), 1e-12);
    assertEquals(slide.timeTo(31.025 + R).orElseThrow(), path.pastFarGoalLine(), 1e-12);
    assertEquals(0, path.pastOwnBlueLine(), 0, "released past it");
    Crossing red = path.crossing(0).orElseThrow();
    assertEquals(0, red.place().x(), 1e-12);
    assertEquals(3, red.place().y(), 0);
    assertEquals(0, red.height(), 0);
    assertEquals(slide.speedAfter(5).orElseThrow(), red.speed(), 1e-12);
  }

  @Test
  void aWeakPuckStopsShort() {
    PuckPath path = new PuckPath(RINK);
    path.slide(DEFAULT, -10, 1, 7, 0);
    Slide slide = Slide.onIce(7, 0.10, 0.0053);
    assertTrue(path.stopsShort());
    assertEquals(Joint.STOPPED, path.ending());
    assertEquals(-10 + slide.stoppingDistance().orElseThrow(), path.endPlace().x(), 1e-12);
    assertEquals(slide.stoppingTime().orElseThrow(), path.endTime(), 1e-12);
    assertTrue(Double.isNaN(path.pastFarGoalLine()));
    assertTrue(Double.isNaN(path.backOverFarGoalLine()));
    assertTrue(path.crossing(26).isEmpty());
    assertEquals(0, path.speedAt(1000), 0);
    assertEquals(path.endPlace(), path.placeAt(1000));
  }

  /** By hand: 0.30 of the speed at the end boards is left, and it slides back as from a release. */
  @Test
  void aHardShotComesBackOutOverTheGoalLine() {
    PuckPath path = new PuckPath(RINK);
    path.slide(DEFAULT, 0, 3, 28, 0);
    double toBoards = 30 - R;
    Slide out = Slide.onIce(28, 0.10, 0.0053);
    double tBoards = out.timeTo(toBoards).orElseThrow();
    double off = 0.30 * out.speedAfter(toBoards).orElseThrow();
    Slide back = Slide.onIce(off, 0.10, 0.0053);
    double toOut = toBoards - (26 - 0.025 - R);
    assertEquals(tBoards + back.timeTo(toOut).orElseThrow(), path.backOverFarGoalLine(), 1e-12);
    assertEquals(toBoards - back.stoppingDistance().orElseThrow(), path.endPlace().x(), 1e-9);
    assertEquals(3, path.endPlace().y(), 1e-9);
    assertFalse(path.stopsShort());
    assertFalse(path.inNet());
    path.slide(DEFAULT, 0, 3, 9, 0);
    assertTrue(path.pastFarGoalLine() > 0);
    assertTrue(Double.isNaN(path.backOverFarGoalLine()), "too slow to come out again");
  }

  @Test
  void betweenThePostsItIsInTheNet() {
    PuckPath path = new PuckPath(RINK);
    path.slide(DEFAULT, -12, 0.5, 20, 0);
    assertTrue(path.inNet());
    assertEquals(26.025 + R, path.endPlace().x(), 1e-12);
    assertEquals(path.pastFarGoalLine(), path.endTime(), 1e-12);
    assertFalse(path.slide(DEFAULT, -12, 0.92, 20, 0).inNet(), "wide of the post");
    assertFalse(path.slide(DEFAULT, -22, 0.5, 6, 0).inNet(), "stops before the line");
    // 20 m/s at 20 degrees is 2.2 m up after 10 m.
    assertFalse(path.flip(DEFAULT, 16, 0, 20, 0, Math.toRadians(20)).inNet(), "over the bar");
    assertTrue(path.flip(DEFAULT, 16, 0, 20, 0, Math.toRadians(5)).inNet(), "under the bar");
    assertTrue(path.slide(DEFAULT, -20, 0, 20, Math.PI).inNet(), "his own net");
  }

  @Test
  void aRimGoesRoundTheCornerAndBehindTheNet() {
    PuckPath path = new PuckPath(RINK);
    path.slide(DEFAULT, -8, 15 - R, 22, 0);
    List<PuckPiece> pieces = path.pieces();
    assertEquals(PuckPiece.Kind.SLIDE, pieces.get(0).kind());
    assertEquals(Joint.RIM_ENTERED, pieces.get(0).joint());
    assertEquals(PuckPiece.Kind.RIM, pieces.get(1).kind());
    assertEquals(Joint.RIM_LEFT, pieces.get(1).joint());
    assertEquals(30 - R, pieces.get(1).to().x(), 1e-12);
    assertEquals(6.5, pieces.get(1).to().y(), 1e-6);
    assertEquals(PuckPiece.Kind.SLIDE, pieces.get(2).kind());
    assertEquals(-6.5, pieces.get(2).to().y(), 1e-6);
    assertEquals(PuckPiece.Kind.RIM, pieces.get(3).kind());
    double quarter = pieces.get(1).endSpeed() / pieces.get(1).speed();
    assertTrue(quarter < 0.80 && quarter > 0.70, "the corner's 0.80, and the ice: " + quarter);
    // The goal line is crossed on the curve, at the place the circle says.
    double c = (26.025 + R - 21.5) / (8.5 - R);
    Crossing goal = path.crossing(26.025 + R).orElseThrow();
    assertEquals(6.5 + (8.5 - R) * Math.sqrt(1 - c * c), goal.place().y(), 1e-9);
    assertTrue(path.backOverFarGoalLine() > goal.time(), "and out again on the other side");
    assertTrue(path.endPlace().y() < 0);
  }

  @Test
  void aFlipPassesTheLinesInTheAirAndThenSlides() {
    PuckPath path = new PuckPath(RINK);
    path.flip(DEFAULT, -9, 4, 14, 0, Math.toRadians(35));
    Flip flip = new Flip(14, Math.toRadians(35));
    assertEquals(9 / flip.forward(), path.reaches(0), 1e-12);
    assertEquals(flip.heightAt(9 / flip.forward()), path.heightAt(path.reaches(0)), 1e-12);
    List<Flip.Hop> hops = flip.hops(DEFAULT);
    List<PuckPiece> pieces = path.pieces();
    for (int i = 0; i < hops.size(); i++) {
      assertEquals(PuckPiece.Kind.FLIGHT, pieces.get(i).kind());
      assertEquals(hops.get(i).end(), pieces.get(i).end(), 1e-12);
      assertEquals(-9 + hops.get(i).to(), pieces.get(i).to().x(), 1e-9);
    }
    PuckPiece slide = pieces.get(hops.size());
    assertEquals(PuckPiece.Kind.SLIDE, slide.kind());
    assertEquals(flip.slideAfter(DEFAULT).speed(), slide.speed(), 1e-12);
  }

  @Test
  void overTheGlassItIsGone() {
    PuckPath path = new PuckPath(RINK);
    path.flip(DEFAULT, 10, 0, 22, Math.PI / 2, Math.toRadians(40));
    assertEquals(Joint.OVER_GLASS, path.ending());
    assertEquals(15 - R, path.endPlace().y(), 1e-12);
    // 0.3 s to the boards, 2 m up: off the glass.
    path.flip(DEFAULT, 10, 8, 24, Math.PI / 2, Math.toRadians(20));
    assertEquals(Joint.REBOUND, path.pieces().get(0).joint());
    assertEquals(
        0.35 * path.pieces().get(0).speed(), path.pieces().get(1).speed(), 1e-9, "off the glass");
  }

  private static double draw(SplittableRandom random, double from, double to) {
    return random.nextDouble(from, to);
  }

  private PuckPath anyRelease(PuckPath to, SplittableRandom random) {
    PuckSettings settings =
        DEFAULT
            .withIce(draw(random, 0.03, 0.2), draw(random, 0, 0.01))
            .withBoards(draw(random, 0, 0.6), draw(random, 0, 0.4), draw(random, 0.6, 1));
    double x = draw(random, -31, 31);
    double y = draw(random, -16, 16);
    double speed = draw(random, 0, 45);
    double direction = draw(random, -Math.PI, Math.PI);
    return random.nextInt(3) > 0
        ? to.slide(settings, x, y, speed, direction)
        : to.flip(settings, x, y, speed, direction, draw(random, 0, 1.2));
  }

  @Test
  void tenThousandReleasesStayInsideTheBoards() {
    PuckPath path = new PuckPath(RINK);
    SplittableRandom random = new SplittableRandom(41);
    Boards boards = Boards.of(RINK);
    int most = 0;
    int rims = 0;
    for (int n = 0; n < 10_000; n++) {
      anyRelease(path, random);
      List<PuckPiece> pieces = path.pieces();
      most = Math.max(most, pieces.size());
      assertTrue(path.ending() != Joint.GIVEN_UP, "release " + n);
      PuckPiece before = null;
      for (PuckPiece p : pieces) {
        assertTrue(boards.outside(p.to().x(), p.to().y()) <= 1e-9);
        assertTrue(p.end() >= p.start());
        assertTrue(p.endSpeed() <= p.speed(), "no piece gains speed");
        if (before != null) {
          assertTrue(p.from().distanceTo(before.to()) < 1e-6, "no jumps");
          assertTrue(p.speed() <= before.endSpeed() * (1 + 1e-14), "nothing gives energy");
          assertEquals(before.end(), p.start(), 1e-12);
        }
        rims += p.kind() == PuckPiece.Kind.RIM ? 1 : 0;
        before = p;
      }
      for (int i = 0; i < 20; i++) {
        double t = path.endTime() * random.nextDouble();
        assertTrue(boards.outside(path.xAt(t), path.yAt(t)) <= 1e-9, "release " + n + " at " + t);
        assertTrue(path.heightAt(t) >= 0);
      }
    }
    assertTrue(rims > 1000, "rims are among them: " + rims);
    assertTrue(most < PuckPieces.MOST / 2, "pieces: " + most);
  }

  @Test
  void atACrossingThePuckIsOnThePlane() {
    PuckPath path = new PuckPath(RINK);
    SplittableRandom random = new SplittableRandom(42);
    int crossings = 0;
    for (int n = 0; n < 3000; n++) {
      anyRelease(path, random);
      double plane = draw(random, -29, 29);
      double t = path.reaches(plane);
      if (t > 0) {
        crossings++;
        assertEquals(plane, path.xAt(t), 1e-6);
        assertTrue(path.xAt(t * 0.999) < plane);
        double back = path.returns(plane - 0.5, t);
        if (back >= 0) {
          assertEquals(plane - 0.5, path.xAt(back), 1e-6);
          assertTrue(back > t);
        }
      } else if (Double.isNaN(t)) {
        for (int i = 0; i <= 50; i++) {
          assertTrue(path.xAt(path.endTime() * i / 50) < plane);
        }
      }
    }
    assertTrue(crossings > 500, "crossings: " + crossings);
  }

  @Test
  void theSpeedIsTheSlopeOfThePlace() {
    PuckPath path = new PuckPath(RINK);
    SplittableRandom random = new SplittableRandom(43);
    double h = 1e-5;
    for (int n = 0; n < 2000; n++) {
      anyRelease(path, random);
      double t = path.endTime() * draw(random, 0.01, 0.99);
      boolean joint =
          path.pieces().stream().anyMatch(p -> Math.abs(p.end() - t) < 2 * h || p.end() < 4 * h);
      if (!joint) {
        double moved = path.placeAt(t + h).distanceTo(path.placeAt(t - h));
        assertEquals(path.speedAt(t), moved / (2 * h), 1e-4, "release " + n);
      }
    }
  }

  @Test
  void theMirroredReleaseHasTheMirroredPath() {
    PuckPath path = new PuckPath(RINK);
    SplittableRandom random = new SplittableRandom(44);
    PuckPath mirror = new PuckPath(RINK);
    for (int n = 0; n < 3000; n++) {
      double x = draw(random, -31, 31);
      double y = draw(random, -16, 16);
      double speed = draw(random, 0, 45);
      double direction = draw(random, -Math.PI, Math.PI);
      double loft = n % 2 == 0 ? 0 : draw(random, 0, 1);
      path.flip(DEFAULT, x, y, speed, direction, loft);
      mirror.flip(DEFAULT, x, -y, speed, -direction, loft);
      assertEquals(path.endTime(), mirror.endTime(), 1e-12);
      for (int i = 0; i <= 10; i++) {
        double t = path.endTime() * i / 10;
        assertEquals(path.xAt(t), mirror.xAt(t), 1e-12);
        assertEquals(path.yAt(t), -mirror.yAt(t), 1e-12);
      }
    }
  }

  @Test
  void slowerIceIsLaterAtTheGoalLine() {
    PuckPath path = new PuckPath(RINK);
    SplittableRandom random = new SplittableRandom(45);
    PuckPath other = new PuckPath(RINK);
    for (int n = 0; n < 2000; n++) {
      double mu = draw(random, 0.03, 0.15);
      double k = draw(random, 0, 0.01);
      double x = draw(random, -20, 5);
      double y = draw(random, -14, 14);
      double speed = draw(random, 10, 40);
      double direction = draw(random, -0.1, 0.1);
      double t = path.slide(DEFAULT.withIce(mu, k), x, y, speed, direction).pastFarGoalLine();
      if (t > 0) {
        other.slide(DEFAULT.withIce(mu * 1.1, k), x, y, speed, direction);
        assertFalse(other.pastFarGoalLine() <= t, "friction");
        other.slide(DEFAULT.withIce(mu, k + 0.001), x, y, speed, direction);
        assertFalse(other.pastFarGoalLine() <= t, "drag");
        other.slide(DEFAULT.withIce(mu, k), x, y, speed * 1.1, direction);
        assertTrue(other.pastFarGoalLine() < t, "speed");
      }
    }
  }

  @Test
  void aPathIsTheSameHoweverItWasAskedBefore() {
    PuckPath path = new PuckPath(RINK);
    PuckPath fresh = new PuckPath(RINK);
    SplittableRandom a = new SplittableRandom(47);
    SplittableRandom b = new SplittableRandom(47);
    for (int n = 0; n < 500; n++) {
      anyRelease(path, a);
      anyRelease(fresh, b);
      double firstX = fresh.xAt(0.5);
      fresh.reaches(10);
      assertEquals(path.endPlace(), fresh.endPlace());
      assertEquals(firstX, path.xAt(0.5), 0);
      assertEquals(path.pieces(), fresh.pieces());
    }
  }

  @Test
  void beforeTheFirstReleaseThePuckLiesAtCenter() {
    PuckPath path = new PuckPath(RINK);
    assertEquals(new Place(0, 0), path.placeAt(1));
    assertEquals(Joint.STOPPED, path.ending());
  }

  @Test
  void valuesOutsidePhysicsAreRefused() {
    PuckPath path = new PuckPath(RINK);
    assertThrows(IllegalArgumentException.class, () -> path.slide(DEFAULT, 0, 0, -1, 0));
    assertThrows(IllegalArgumentException.class, () -> path.slide(DEFAULT, 0, 0, 61, 0));
    assertThrows(IllegalArgumentException.class, () -> path.slide(DEFAULT, 0, 0, 10, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> path.slide(DEFAULT, Double.NaN, 0, 10, 0));
    assertThrows(IllegalArgumentException.class, () -> path.flip(DEFAULT, 0, 0, 10, 0, 1.6));
    assertThrows(IllegalArgumentException.class, () -> DEFAULT.withIce(0, 0));
    assertThrows(IllegalArgumentException.class, () -> DEFAULT.withBoards(1.1, 0, 1));
  }
}
