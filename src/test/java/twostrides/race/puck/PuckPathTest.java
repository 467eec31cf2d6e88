package twostrides.race.puck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import twostrides.rink.Place;
import twostrides.rink.Rink;

class PuckPathTest {

  private static final Rink RINK = Rink.INTERNATIONAL;
  private static final Ice ICE = new Ice(0.10, 0.0053);
  private static final double R = Rink.PUCK_RADIUS;

  private static PuckPath slide(Ice ice, double x, double y, double speed, double direction) {
    return PuckPath.of(RINK, ice, PuckRelease.alongTheIce(x, y, speed, direction));
  }

  private static PuckPath flip(
      Ice ice, double x, double y, double speed, double direction, double loft) {
    return PuckPath.of(RINK, ice, new PuckRelease(x, y, speed, direction, loft));
  }

  @Test
  void aSlideUpIceCrossesTheLinesWhenTheClosedFormSays() {
    PuckPath path = slide(ICE, -5, 3, 20, 0);
    Slide slide = SlideTest.onIce(20, 0.10, 0.0053);
    assertEquals(
        slide.timeTo(5 - 0.15 - R).orElseThrow(), path.touchesRedLine().orElseThrow(), 1e-12);
    assertEquals(
        slide.timeTo(5 + 7.8 + R).orElseThrow(), path.pastFarBlueLine().orElseThrow(), 1e-12);
    assertEquals(
        slide.timeTo(31.025 + R).orElseThrow(), path.pastFarGoalLine().orElseThrow(), 1e-12);
    assertEquals(0, path.pastOwnBlueLine().orElseThrow(), 0, "released past it");
    double red = path.reaches(0).orElseThrow();
    assertEquals(0, path.placeAt(red).x(), 1e-12);
    assertEquals(3, path.placeAt(red).y(), 0);
    assertEquals(0, path.heightAt(red), 0);
    assertEquals(slide.speedAfter(5).orElseThrow(), path.speedAt(red), 1e-12);
  }

  @Test
  void aWeakPuckStopsShort() {
    PuckPath path = slide(ICE, -10, 1, 7, 0);
    Slide slide = SlideTest.onIce(7, 0.10, 0.0053);
    assertTrue(path.stopsShort());
    assertEquals(Joint.STOPPED, path.ending());
    assertEquals(-10 + slide.stoppingDistance(), path.endPlace().x(), 1e-12);
    assertEquals(slide.stoppingTime(), path.endTime(), 1e-12);
    assertTrue(path.pastFarGoalLine().isEmpty());
    assertTrue(path.reaches(26).isEmpty());
    assertEquals(0, path.speedAt(1000), 0);
    assertEquals(path.endPlace(), path.placeAt(1000));
  }

  /** By hand: 0.30 of the speed at the end boards is left, and it slides back as from a release. */
  @Test
  void aHardShotComesBackOffTheEndBoards() {
    PuckPath path = slide(ICE, 0, 3, 28, 0);
    double toBoards = 30 - R;
    Slide out = SlideTest.onIce(28, 0.10, 0.0053);
    double tBoards = out.timeTo(toBoards).orElseThrow();
    double off = 0.30 * out.speedAfter(toBoards).orElseThrow();
    Slide back = SlideTest.onIce(off, 0.10, 0.0053);
    double threeBack = tBoards + back.timeTo(3).orElseThrow();
    assertEquals(toBoards - 3, path.placeAt(threeBack).x(), 1e-9);
    assertEquals(toBoards - back.stoppingDistance(), path.endPlace().x(), 1e-9);
    assertEquals(3, path.endPlace().y(), 1e-9);
    assertFalse(path.stopsShort());
    assertFalse(path.inNet());
    PuckPath slow = slide(ICE, 0, 3, 9, 0);
    assertTrue(slow.pastFarGoalLine().isPresent());
    assertTrue(slow.endPlace().x() > 26.025, "too slow to come out again");
  }

  @Test
  void betweenThePostsItIsInTheNet() {
    PuckPath path = slide(ICE, -12, 0.5, 20, 0);
    assertTrue(path.inNet());
    assertEquals(26.025 + R, path.endPlace().x(), 1e-12);
    assertEquals(path.pastFarGoalLine().orElseThrow(), path.endTime(), 1e-12);
    assertFalse(slide(ICE, -12, 0.92, 20, 0).inNet(), "wide of the post");
    assertFalse(slide(ICE, -22, 0.5, 6, 0).inNet(), "stops before the line");
    // 20 m/s at 20 degrees is 2.2 m up after 10 m.
    assertFalse(flip(ICE, 16, 0, 20, 0, Math.toRadians(20)).inNet(), "over the bar");
    assertTrue(flip(ICE, 16, 0, 20, 0, Math.toRadians(5)).inNet(), "under the bar");
    assertTrue(slide(ICE, -20, 0, 20, Math.PI).inNet(), "his own net");
  }

  @Test
  void aRimGoesRoundTheCornerAndBehindTheNet() {
    PuckPath path = slide(ICE, -8, 15 - R, 22, 0);
    List<PuckPiece> pieces = path.pieces();
    assertFalse(curved(pieces.get(0)));
    assertEquals(Joint.RIM_ENTERED, pieces.get(0).joint());
    assertTrue(curved(pieces.get(1)));
    assertEquals(Joint.RIM_LEFT, pieces.get(1).joint());
    assertEquals(30 - R, pieces.get(1).to().x(), 1e-12);
    assertEquals(6.5, pieces.get(1).to().y(), 1e-6);
    assertFalse(curved(pieces.get(2)));
    assertEquals(-6.5, pieces.get(2).to().y(), 1e-6);
    assertTrue(curved(pieces.get(3)));
    double quarter = pieces.get(1).endSpeed() / pieces.get(1).speed();
    assertTrue(quarter < 0.80 && quarter > 0.70, "the corner's 0.80, and the ice: " + quarter);
    // The goal line is crossed on the curve, at the place the circle says.
    double c = (26.025 + R - 21.5) / (8.5 - R);
    Place goal = path.placeAt(path.reaches(26.025 + R).orElseThrow());
    assertEquals(6.5 + (8.5 - R) * Math.sqrt(1 - c * c), goal.y(), 1e-9);
    assertTrue(path.endPlace().x() < 26 && path.endPlace().y() < 0, "out on the other side");
  }

  private static boolean curved(PuckPiece piece) {
    return piece.track() instanceof Track.Curve && piece.flight().isEmpty();
  }

  @Test
  void aFlipPassesTheLinesInTheAirAndThenSlides() {
    PuckPath path = flip(ICE, -9, 4, 14, 0, Math.toRadians(35));
    double forward = 14 * Math.cos(Math.toRadians(35));
    double upward = 14 * Math.sin(Math.toRadians(35));
    double t = 9 / forward;
    assertEquals(t, path.reaches(0).orElseThrow(), 1e-12);
    assertEquals(upward * t - Slide.GRAVITY * t * t / 2, path.heightAt(t), 1e-12);
    // Hops of 8.0, 2.8 and 0.98 m/s upward; the next, 0.34, too, and then it slides.
    List<PuckPiece> pieces = path.pieces();
    double start = 0;
    double x = -9;
    for (int i = 0; i < 4; i++) {
      assertTrue(pieces.get(i).flight().isPresent());
      start += 2 * upward / Slide.GRAVITY;
      x += forward * 2 * upward / Slide.GRAVITY;
      assertEquals(start, pieces.get(i).end(), 1e-12);
      assertEquals(x, pieces.get(i).to().x(), 1e-9);
      forward -= 0.15 * 1.35 * upward;
      upward *= 0.35;
    }
    assertTrue(pieces.get(4).flight().isEmpty());
    assertEquals(forward, pieces.get(4).speed(), 1e-12);
  }

  @Test
  void overTheGlassItIsGone() {
    PuckPath path = flip(ICE, 10, 0, 22, Math.PI / 2, Math.toRadians(40));
    assertEquals(Joint.OVER_GLASS, path.ending());
    assertEquals(15 - R, path.endPlace().y(), 1e-12);
    // 0.3 s to the boards, 2 m up: off the glass.
    List<PuckPiece> glass = flip(ICE, 10, 8, 24, Math.PI / 2, Math.toRadians(20)).pieces();
    assertEquals(Joint.REBOUND, glass.get(0).joint());
    assertEquals(0.35 * glass.get(0).speed(), glass.get(1).speed(), 1e-9, "off the glass");
  }

  private static PuckPath anyRelease(SplittableRandom random) {
    Ice ice = new Ice(random.nextDouble(0.03, 0.2), random.nextDouble(0, 0.01));
    double x = random.nextDouble(-31, 31);
    double y = random.nextDouble(-16, 16);
    double speed = random.nextDouble(0, 45);
    double direction = random.nextDouble(-Math.PI, Math.PI);
    double loft = random.nextInt(3) > 0 ? 0 : random.nextDouble(0, 1.2);
    return flip(ice, x, y, speed, direction, loft);
  }

  @Test
  void tenThousandReleasesStayInsideTheBoards() {
    SplittableRandom random = new SplittableRandom(41);
    Boards boards = Boards.of(RINK);
    int most = 0;
    int rims = 0;
    for (int n = 0; n < 10_000; n++) {
      PuckPath path = anyRelease(random);
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
        rims += curved(p) ? 1 : 0;
        before = p;
      }
      for (int i = 0; i < 20; i++) {
        double t = path.endTime() * random.nextDouble();
        Place at = path.placeAt(t);
        assertTrue(boards.outside(at.x(), at.y()) <= 1e-9, "release " + n + " at " + t);
        assertTrue(path.heightAt(t) >= 0);
      }
    }
    assertTrue(rims > 1000, "rims are among them: " + rims);
    assertTrue(most < Follower.MOST / 2, "pieces: " + most);
  }

  @Test
  void atACrossingThePuckIsOnThePlane() {
    SplittableRandom random = new SplittableRandom(42);
    int crossings = 0;
    for (int n = 0; n < 3000; n++) {
      PuckPath path = anyRelease(random);
      double plane = random.nextDouble(-29, 29);
      OptionalDouble time = path.reaches(plane);
      double before = time.orElse(path.endTime());
      if (before > 0) {
        for (int i = 0; i < 50; i++) {
          assertTrue(path.placeAt(before * i / 50).x() < plane);
        }
      }
      if (time.isPresent() && before > 0) {
        crossings++;
        assertEquals(plane, path.placeAt(before).x(), 1e-6);
      }
    }
    assertTrue(crossings > 500, "crossings: " + crossings);
  }

  @Test
  void theSpeedIsTheSlopeOfThePlace() {
    SplittableRandom random = new SplittableRandom(43);
    double h = 1e-5;
    for (int n = 0; n < 2000; n++) {
      PuckPath path = anyRelease(random);
      double t = path.endTime() * random.nextDouble(0.01, 0.99);
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
    SplittableRandom random = new SplittableRandom(44);
    for (int n = 0; n < 3000; n++) {
      double x = random.nextDouble(-31, 31);
      double y = random.nextDouble(-16, 16);
      double speed = random.nextDouble(0, 45);
      double direction = random.nextDouble(-Math.PI, Math.PI);
      double loft = n % 2 == 0 ? 0 : random.nextDouble(0, 1);
      PuckPath path = flip(ICE, x, y, speed, direction, loft);
      PuckPath mirror = flip(ICE, x, -y, speed, -direction, loft);
      assertEquals(path.endTime(), mirror.endTime(), 1e-12);
      for (int i = 0; i <= 10; i++) {
        double t = path.endTime() * i / 10;
        assertEquals(path.placeAt(t).x(), mirror.placeAt(t).x(), 1e-12);
        assertEquals(path.placeAt(t).y(), -mirror.placeAt(t).y(), 1e-12);
      }
    }
  }

  @Test
  void slowerIceIsLaterAtTheGoalLine() {
    SplittableRandom random = new SplittableRandom(45);
    for (int n = 0; n < 2000; n++) {
      double mu = random.nextDouble(0.03, 0.15);
      double k = random.nextDouble(0, 0.01);
      double x = random.nextDouble(-20, 5);
      double y = random.nextDouble(-14, 14);
      double speed = random.nextDouble(10, 40);
      double direction = random.nextDouble(-0.1, 0.1);
      double t = pastGoalLine(mu, k, x, y, speed, direction);
      if (t < Double.POSITIVE_INFINITY) {
        assertTrue(pastGoalLine(mu * 1.1, k, x, y, speed, direction) > t, "friction");
        assertTrue(pastGoalLine(mu, k + 0.001, x, y, speed, direction) > t, "drag");
        assertTrue(pastGoalLine(mu, k, x, y, speed * 1.1, direction) < t, "speed");
      }
    }
  }

  private static double pastGoalLine(
      double mu, double k, double x, double y, double speed, double direction) {
    return slide(new Ice(mu, k), x, y, speed, direction)
        .pastFarGoalLine()
        .orElse(Double.POSITIVE_INFINITY);
  }

  @Test
  void valuesOutsidePhysicsAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> slide(ICE, 0, 0, -1, 0));
    assertThrows(IllegalArgumentException.class, () -> slide(ICE, 0, 0, 61, 0));
    assertThrows(IllegalArgumentException.class, () -> slide(ICE, 0, 0, 10, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> slide(ICE, Double.NaN, 0, 10, 0));
    assertThrows(IllegalArgumentException.class, () -> flip(ICE, 0, 0, 10, 0, 1.6));
    assertThrows(IllegalArgumentException.class, () -> new Ice(0, 0));
    assertThrows(IllegalArgumentException.class, () -> new Ice(0.1, 0.06));
  }
}
