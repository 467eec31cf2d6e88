package twostrides.tracking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Clock to video and back. */
class VideoClockTest {
  private static ClockPair pair(double elapsed, double video, double error) {
    return new ClockPair(1, elapsed, video, error, "s.csv", 2);
  }

  private static ClockMatch.At at(ClockMatch match) {
    return assertInstanceOf(ClockMatch.At.class, match);
  }

  @Test
  void aRunningClockIsAStraightLine() {
    VideoClock clock = VideoClock.of(List.of(pair(100, 500, 0.5), pair(160, 560, 0.5)));
    ClockMatch.At half = at(clock.videoAt(1, 130.25, 0.1));
    assertEquals(530.25, half.seconds(), 1e-9);
    assertEquals(0.55, half.plusMinus(), 1e-9);
    assertTrue(half.clockRan());
    assertInstanceOf(ClockMatch.NotCovered.class, clock.videoAt(1, 99.9, 0));
    assertInstanceOf(ClockMatch.NotCovered.class, clock.videoAt(1, 160.1, 0));
    assertInstanceOf(ClockMatch.NotCovered.class, clock.videoAt(2, 130, 0));
  }

  @Test
  void aStoppageWidensTheBound() {
    VideoClock clock = VideoClock.of(List.of(pair(100, 500, 0), pair(160, 600, 0)));
    // Forty seconds without play somewhere: the second lies between 530 and 570.
    ClockMatch.At m = at(clock.videoAt(1, 130, 0));
    assertEquals(550, m.seconds(), 1e-9);
    assertEquals(20, m.plusMinus(), 1e-9);
    assertFalse(m.clockRan());
    assertEquals(500, at(clock.videoAt(1, 100, 0)).seconds(), 1e-9);
  }

  @Test
  void aStoppageGivenByTwoPairsOfOneClockIsKnown() {
    VideoClock clock =
        VideoClock.of(
            List.of(pair(100, 500, 0), pair(130, 530, 0), pair(130, 570, 0), pair(160, 600, 0)));
    assertEquals(529, at(clock.videoAt(1, 129, 0)).seconds(), 1e-9);
    assertEquals(571, at(clock.videoAt(1, 131, 0)).seconds(), 1e-9);
    assertEquals(0, at(clock.videoAt(1, 131, 0)).plusMinus(), 1e-9);
    assertEquals(20, at(clock.videoAt(1, 130, 0)).plusMinus(), 1e-9);
  }

  @Test
  void theBoundHoldsAndTheMatchRisesForSeededGames() {
    Random random = new Random(20311004);
    for (int game = 0; game < 200; game++) {
      // The truth: play and stoppages in turn, the video's second written down at a few instants as
      // a whole one.
      List<double[]> truth = new ArrayList<>();
      double c = 0;
      double v = random.nextInt(100);
      List<ClockPair> pairs = new ArrayList<>();
      for (int i = 0; i < 120; i++) {
        double play = random.nextInt(4) == 0 ? 0 : random.nextDouble() * 5;
        c += play;
        v += play > 0 ? play : random.nextDouble() * 30;
        truth.add(new double[] {c, v});
        if (random.nextInt(6) == 0) {
          pairs.add(pair(c, Math.rint(v), 0.5));
        }
      }
      VideoClock clock = VideoClock.of(pairs);
      assertEquals(List.of(), clock.doubts());
      double before = Double.NEGATIVE_INFINITY;
      for (int i = 1; i < truth.size() - 1; i++) {
        double[] t = truth.get(i);
        // A clock at which play stood has two ends; no single second can be right for both.
        if (t[0] == truth.get(i - 1)[0] || t[0] == truth.get(i + 1)[0]) {
          continue;
        }
        if (clock.videoAt(1, t[0], 0) instanceof ClockMatch.At m) {
          assertTrue(Math.abs(m.seconds() - t[1]) <= m.plusMinus() + 1e-9, "outside the bound");
          assertTrue(m.seconds() >= before - 1e-9, "the match falls");
          before = m.seconds();
        }
      }
    }
  }

  @Test
  void aPairThatNoClockCanJoinIsLeftOutAndLocated() {
    List<ClockPair> pairs = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      pairs.add(new ClockPair(1, 10 * i, 100 + 10 * i, 0.5, "s.csv", i + 2L));
    }
    pairs.set(3, new ClockPair(1, 30, 300, 0.5, "s.csv", 5));
    VideoClock clock = VideoClock.of(pairs);
    assertEquals(5, clock.pairs());
    assertEquals(5, clock.doubts().get(0).line());
    assertEquals(135, at(clock.videoAt(1, 35, 0)).seconds(), 1e-9);
  }
}
