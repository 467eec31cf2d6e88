package twostrides.tracking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import twostrides.rink.Place;

/** Velocities of tracks whose velocity is known. */
class SmootherTest {
  private static final double STEP = 1.0 / 30;
  private static final double[] NONE = {0, 0};

  private static Motion.Moving moving(Smoother smoother, Track track, double second) {
    return assertInstanceOf(Motion.Moving.class, smoother.motion(track, second));
  }

  @Test
  void aParabolaIsMetExactly() {
    Track track =
        TrackSheets.track(
            0, 3, STEP, new Place(-20, 3), new double[] {5, -2}, new double[] {1.5, 0.8}, 0, r());
    for (double s : new double[] {0, 0.4, 1.0, 1.517, 2.9, 3.0}) {
      Motion.Moving m = moving(Smoother.USUAL, track, s);
      assertEquals(5 + 1.5 * s, m.vx(), 1e-4);
      assertEquals(-2 + 0.8 * s, m.vy(), 1e-4);
      assertEquals(-20 + 5 * s + 0.75 * s * s, m.place().x(), 1e-5);
      assertTrue(m.standardError() < 1e-4);
    }
    assertEquals(15, moving(Smoother.USUAL, track, 1).frames());
  }

  @Test
  void theStandardErrorIsTheScatter() {
    Random random = r();
    double error = 0.05;
    for (double window : new double[] {0.3, 0.5, 1.0}) {
      int runs = 4000;
      double sum = 0;
      double squares = 0;
      double told = 0;
      int frames = 0;
      for (int i = 0; i < runs; i++) {
        Track track =
            TrackSheets.track(
                0, 2, STEP, new Place(-5, 0), new double[] {6, 1}, NONE, error, random);
        Motion.Moving m = moving(Smoother.over(window), track, 1);
        sum += m.vx() - 6;
        squares += (m.vx() - 6) * (m.vx() - 6);
        told += m.standardError() * m.standardError();
        frames = m.frames();
      }
      double scatter = Math.sqrt(squares / runs);
      // Variance of the slope through n evenly spaced rows: 12 error^2 / (step^2 n (n^2 - 1)).
      double exact =
          error / STEP * Math.sqrt(12.0 / ((double) frames * ((double) frames * frames - 1)));
      assertEquals(1, scatter / exact, 0.05);
      assertEquals(1, Math.sqrt(told / runs) / exact, 0.05);
      assertEquals(0, sum / runs, 4 * exact / Math.sqrt(runs));
    }
  }

  @Test
  void noFitReachesAcrossAGap() {
    Track track = new Track("7", "t.csv", false, Optional.of(1), Optional.empty());
    for (int i = 0; i < 30; i++) {
      track.add(i * STEP, new Place(i * 0.1, 0), Track.UNREAD, i + 2L, Track.UNREAD);
    }
    // Comes back 0.6 s later, 8 m away.
    for (int i = 0; i < 30; i++) {
      track.add(
          29 * STEP + 0.6 + i * STEP,
          new Place(11 + i * 0.1, 0),
          Track.UNREAD,
          i + 32L,
          Track.UNREAD);
    }
    Smoother wide = new Smoother(2, 0.5, 12);
    assertInstanceOf(Motion.NoSpeed.class, wide.motion(track, 29 * STEP + 0.3));
    assertEquals(3, moving(wide, track, 20 * STEP).vx(), 1e-4);
    assertEquals(3, moving(wide, track, 29 * STEP + 0.6 + 10 * STEP).vx(), 1e-4);
    assertInstanceOf(Motion.NoSpeed.class, wide.motion(track, -0.01));
    assertInstanceOf(Motion.NoSpeed.class, wide.motion(track, 29 * STEP + 0.61 + 29 * STEP));
    // Across a gap that is short enough, the fit reaches.
    Smoother patient = new Smoother(2, 0.7, 100);
    assertTrue(moving(patient, track, 29 * STEP + 0.3).vx() > 5);
  }

  @Test
  void tooFewRowsGiveNoSpeed() {
    Track track = new Track("7", "t.csv", false, Optional.of(1), Optional.empty());
    for (int i = 0; i < 3; i++) {
      track.add(i * 0.2, new Place(i, 0), Track.UNREAD, i + 2L, Track.UNREAD);
    }
    assertInstanceOf(Motion.NoSpeed.class, Smoother.USUAL.motion(track, 0.2));
    Track shortOne =
        TrackSheets.track(0, 5 * STEP, STEP, new Place(0, 0), new double[] {5, 0}, NONE, 0, r());
    assertInstanceOf(Motion.NoSpeed.class, Smoother.USUAL.motion(shortOne, 0.1));
    assertInstanceOf(Motion.Moving.class, Smoother.over(0.3).motion(shortOne, 0.1));
  }

  @Test
  void tooFastIsADoubtWithAPlaceAndIsNotCutDown() {
    Track track =
        TrackSheets.track(0, 2, STEP, new Place(0, 0), new double[] {12.5, 0}, NONE, 0, r());
    Motion.TooFast fast = assertInstanceOf(Motion.TooFast.class, Smoother.USUAL.motion(track, 1));
    assertEquals(12.5, fast.speed(), 1e-4);
    assertEquals("t.csv", fast.doubt().file());
    assertEquals(32, fast.doubt().line());
    assertTrue(fast.doubt().message().contains("12.5 m/s over 0.47 s"), fast.doubt().message());
    Track slower =
        TrackSheets.track(0, 2, STEP, new Place(0, 0), new double[] {11.9, 0}, NONE, 0, r());
    assertEquals(11.9, moving(Smoother.USUAL, slower, 1).speed(), 1e-4);
  }

  private static Random r() {
    return new Random(20311004);
  }
}
