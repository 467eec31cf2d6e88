package twostrides.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import twostrides.checks.Printed;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.rink.RinkMark;

/** Places clicked in a picture, against a camera whose place is known. */
class PictureFitTest {

  @RegisterExtension static final Printed FIGURES = new Printed();

  private static final Rink RINK = Rink.NORTH_AMERICAN;
  private static final double CLICK = 2;
  private static final double FINE = 0.01;

  private static MarkClick off(MarkClick c, double u, double v) {
    return new MarkClick(c.mark(), new Pixel(c.at().u() + u, c.at().v() + v));
  }

  private static List<MarkClick> exact(Camera camera, String... ids) {
    return Stream.of(ids).map(id -> camera.click(mark(id))).toList();
  }

  private static RinkMark mark(String id) {
    return RinkMark.of(RINK).stream().filter(m -> m.id().equals(id)).findFirst().orElseThrow();
  }

  /** A camera anywhere in the stands, all around the rink. */
  private static Camera anywhere(Random random) {
    double around = 2 * Math.PI * random.nextDouble();
    return new Camera(
        42 * Math.cos(around),
        32 * Math.sin(around),
        5 + 15 * random.nextDouble(),
        30 * random.nextDouble() - 15,
        12 * random.nextDouble() - 6,
        900 + 900 * random.nextDouble());
  }

  /** So many marks of a picture that fix it, in any order; none where it shows too few. */
  private static List<RinkMark> some(Camera camera, Rink rink, int n, Random random) {
    List<RinkMark> seen = new ArrayList<>(camera.marks(rink));
    Collections.shuffle(seen, random);
    List<RinkMark> some = seen.subList(0, Math.min(n, seen.size()));
    boolean fixed =
        some.size() == n
            && Layout.spread(some.stream().map(m -> Layout.of(m.place())).toList())
                >= Layout.OFF_LINE;
    return fixed ? some : List.of();
  }

  private static Place somewhere(Camera camera, Random random) {
    while (true) {
      Place p = new Place(56 * random.nextDouble() - 28, 22 * random.nextDouble() - 11);
      if (camera.sees(p.x(), p.y())) {
        return p;
      }
    }
  }

  /** Whatever the camera, the rink and the marks: clicks that are exact give places that are. */
  @Test
  void exactClicksGiveExactPlaces() throws NoPlaceException {
    Random random = new Random(17);
    int fits = 0;
    while (fits < 500) {
      Camera camera = anywhere(random);
      Rink rink = Rink.ALL.get(fits % 2);
      List<RinkMark> marks = some(camera, rink, 4 + random.nextInt(4), random);
      if (!marks.isEmpty()) {
        fits++;
        PictureFit fit = PictureFit.of(rink, marks.stream().map(camera::click).toList(), FINE);
        assertEquals(0, fit.differ(), 1e-3);
        for (int i = 0; i < 5; i++) {
          Place p = somewhere(camera, random);
          SeenPlace seen = fit.place(camera.shows(p.x(), p.y()));
          assertEquals(0, seen.place().distanceTo(p), 1e-4, camera + " " + marks);
          assertTrue(seen.error() > 0);
        }
      }
    }
  }

  /** Clicks that are off as they are said to be give places that are off as they are said to be. */
  @Test
  void theErrorSaidIsTheErrorMade() throws NoPlaceException {
    for (int marks : new int[] {4, 6}) {
      Random random = new Random(4);
      int n = 0;
      double squares = 0;
      int within = 0;
      while (n < 4000) {
        Camera camera = anywhere(random);
        List<RinkMark> some = some(camera, RINK, marks, random);
        Place p = some.isEmpty() ? new Place(0, 0) : somewhere(camera, random);
        List<MarkClick> clicks =
            some.stream()
                .map(camera::click)
                .map(c -> off(c, CLICK * random.nextGaussian(), CLICK * random.nextGaussian()))
                .toList();
        List<double[]> points =
            some.stream()
                .map(camera::click)
                .map(c -> new double[] {c.at().u(), c.at().v()})
                .toList();
        // Where noise alone could put the marks in line, the fit is refused: no error is said.
        if (!some.isEmpty()
            && Layout.spread(points) > 10 * CLICK
            && PictureFit.of(RINK, some.stream().map(camera::click).toList(), CLICK)
                .errorAt(p)
                .filter(e -> e < PictureFit.ROUGH)
                .isPresent()) {
          Pixel at = camera.shows(p.x(), p.y());
          Pixel clicked =
              new Pixel(
                  at.u() + CLICK * random.nextGaussian(), at.v() + CLICK * random.nextGaussian());
          PictureFit fit = PictureFit.of(RINK, clicks, CLICK);
          SeenPlace seen = fit.place(clicked);
          RealMatrix c = fit.covariance(seen.place());
          double[] d = {seen.place().x() - p.x(), seen.place().y() - p.y()};
          double[] whitened = new LUDecomposition(c).getSolver().getInverse().operate(d);
          squares += d[0] * whitened[0] + d[1] * whitened[1];
          within += Math.hypot(d[0], d[1]) <= 2 * seen.error() ? 1 : 0;
          n++;
        }
      }
      FIGURES.say(
          "%d marks, %d places: squared error over that said %.2f, within two errors %.1f %%",
          marks, n, squares / n / 2, 100.0 * within / n);
      assertEquals(1, squares / n / 2, 0.15);
      assertTrue(within > 0.9 * n, "" + within);
    }
  }

  /** Three cameras as from the stands, marks and men clicked up to 2 picture elements off. */
  @Test
  void fromTheStandsPlacesHold() throws NoPlaceException {
    List<Camera> cameras = List.of(Camera.CENTER_STAND, Camera.CORNER, Camera.LOW);
    List<String> names = List.of("center stand, 14 m up", "corner, 11 m up", "center, 6 m up");
    for (int k = 0; k < cameras.size(); k++) {
      Camera camera = cameras.get(k);
      Random random = new Random(k);
      List<MarkClick> four = wide(camera);
      List<Double> off = new ArrayList<>();
      List<Double> said = new ArrayList<>();
      for (int round = 0; round < 400; round++) {
        List<MarkClick> clicks =
            four.stream()
                .map(c -> off(c, 4 * random.nextDouble() - 2, 4 * random.nextDouble() - 2))
                .toList();
        PictureFit fit = PictureFit.of(RINK, clicks, CLICK);
        Place p = somewhere(camera, random);
        Pixel at = camera.shows(p.x(), p.y());
        SeenPlace seen =
            fit.place(
                new Pixel(
                    at.u() + 4 * random.nextDouble() - 2, at.v() + 4 * random.nextDouble() - 2));
        off.add(seen.place().distanceTo(p));
        said.add(seen.error());
      }
      Collections.sort(off);
      Collections.sort(said);
      FIGURES.say(
          "%s, 1280 x 720, 4 marks, %d places: off by %.2f m (median), %.2f m (95 of 100), %.2f m (worst);"
              + " error said %.2f m (median), %.2f m (worst)",
          names.get(k),
          off.size(),
          off.get(200),
          off.get(380),
          off.get(399),
          said.get(200),
          said.get(399));
      assertTrue(off.get(380) < PictureFit.ROUGH, off.toString());
    }
  }

  private static List<MarkClick> wide(Camera camera) {
    return camera.wide(RINK).stream().map(camera::click).toList();
  }

  private static String refused(List<MarkClick> clicks) {
    return assertThrows(NoPlaceException.class, () -> PictureFit.of(RINK, clicks, CLICK))
        .getMessage();
  }

  @Test
  void marksOnALineAreNamedWithOneThatHelps() {
    Camera c = Camera.CENTER_STAND;
    String line =
        refused(
            exact(
                c,
                "center-dot",
                "center-circle-at-the-red-line-left",
                "center-circle-at-the-red-line-right",
                "own-end-dot-left"));
    assertTrue(line.startsWith("found marks of which three lie on one line"), line);
    assertTrue(line.contains(", such as: neutral dot on the own side, "), line);
    String three = refused(exact(c, "center-dot", "own-end-dot-left", "own-end-dot-right"));
    assertEquals("found 3 marks, expected four or more. Click more marks of the rink.", three);
    List<MarkClick> flat =
        exact(
            c,
            "red-line-at-the-boards-left",
            "center-dot",
            "center-circle-at-the-red-line-left",
            "center-circle-at-the-red-line-right",
            "red-line-at-the-boards-right");
    assertTrue(refused(flat).startsWith("found marks of which three"), refused(flat));
    assertTrue(refused(flat).endsWith("Click two more marks, off that line."), refused(flat));
  }

  @Test
  void clicksThatCannotBeAreRefusedWithWhatToDo() {
    List<MarkClick> right =
        exact(
            Camera.CENTER_STAND,
            "own-blue-line-at-the-boards-left",
            "red-line-at-the-boards-left",
            "neutral-dot-on-the-own-side-right",
            "center-dot");
    List<MarkClick> one =
        right.stream().map(m -> new MarkClick(m.mark(), new Pixel(100, 100))).toList();
    assertTrue(refused(one).startsWith("found clicks that lie on one line in the picture"));
    List<MarkClick> mirrored =
        right.stream()
            .map(m -> new MarkClick(m.mark(), new Pixel(Camera.WIDTH - m.at().u(), m.at().v())))
            .toList();
    assertTrue(refused(mirrored).startsWith("found marks as in a mirror"), refused(mirrored));
    List<MarkClick> exchanged =
        List.of(
            new MarkClick(right.get(0).mark(), right.get(1).at()),
            new MarkClick(right.get(1).mark(), right.get(0).at()),
            right.get(2),
            right.get(3));
    assertTrue(refused(exchanged).startsWith("found marks that no camera"), refused(exchanged));
    assertThrows(IllegalArgumentException.class, () -> PictureFit.of(RINK, right, 0));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            PictureFit.of(
                RINK, List.of(right.get(0), right.get(0), right.get(1), right.get(2)), 1));
  }

  @Test
  void aClickAboveTheHorizonOrOffTheRinkIsNoPlace() throws NoPlaceException {
    PictureFit fit = PictureFit.of(RINK, wide(Camera.LOW), CLICK);
    String sky =
        assertThrows(NoPlaceException.class, () -> fit.place(new Pixel(640, -2000))).getMessage();
    assertTrue(sky.startsWith("found a click above the horizon"), sky);
    Pixel bench = Camera.LOW.shows(0, 21);
    String out = assertThrows(NoPlaceException.class, () -> fit.place(bench)).getMessage();
    assertTrue(out.startsWith("found a place 8.0 m outside the boards"), out);
    Pixel corner = Camera.CORNER.shows(-30, 12.5);
    PictureFit round = PictureFit.of(RINK, wide(Camera.CORNER), CLICK);
    String cut = assertThrows(NoPlaceException.class, () -> round.place(corner)).getMessage();
    assertTrue(cut.startsWith("found a place 2.9 m outside the boards"), cut);
    // At the boards a click may fall just outside: he stands at them.
    Pixel near = Camera.CENTER_STAND.shows(-5, 13.3);
    SeenPlace at = PictureFit.of(RINK, wide(Camera.CENTER_STAND), CLICK).place(near);
    assertEquals(RINK.width() / 2, at.place().y(), 1e-9);
  }

  @Test
  void aMarkThatDoesNotFitTheOthersIsFound() throws NoPlaceException {
    List<MarkClick> six =
        new ArrayList<>(
            exact(
                Camera.CENTER_STAND,
                "own-blue-line-at-the-boards-left",
                "red-line-at-the-boards-left",
                "neutral-dot-on-the-own-side-right",
                "neutral-dot-on-the-own-side-left",
                "own-end-dot-right",
                "center-dot"));
    PictureFit right = PictureFit.of(RINK, six, CLICK);
    assertFalse(right.disagrees());
    assertEquals(Optional.empty(), right.odd());
    six.set(3, off(six.get(3), 40, -30));
    PictureFit wrong = PictureFit.of(RINK, six, CLICK);
    assertTrue(wrong.disagrees(), "" + wrong.differ());
    assertEquals(six.get(3).mark(), wrong.odd().orElseThrow());
    Place middle = new Place(-5, 0);
    assertTrue(
        wrong.errorAt(middle).orElseThrow() > 3 * right.errorAt(middle).orElseThrow(),
        "what marks differ by is part of the error");
    PictureFit five = PictureFit.of(RINK, six.subList(0, 5), CLICK);
    assertEquals(Optional.empty(), five.odd(), "five cannot say which");
  }

  @Test
  void moreMarksMakeTheErrorSmaller() throws NoPlaceException {
    Camera c = Camera.CENTER_STAND;
    List<MarkClick> all = c.marks(RINK).stream().map(c::click).toList();
    Place p = new Place(-5, 3);
    double four = PictureFit.of(RINK, wide(c), CLICK).errorAt(p).orElseThrow();
    double more = PictureFit.of(RINK, all, CLICK).errorAt(p).orElseThrow();
    double finer = PictureFit.of(RINK, all, CLICK / 2).errorAt(p).orElseThrow();
    assertTrue(more < four, more + " with " + all.size() + " marks, " + four + " with four");
    assertEquals(more / 2, finer, 1e-6);
  }

  /** The lines drawn over the picture lie where the camera shows them, and only before it. */
  @Test
  void theLinesLieWhereTheCameraShowsThem() throws NoPlaceException {
    Camera c = Camera.CORNER;
    List<List<Pixel>> lines =
        PictureFit.of(RINK, wide(c), CLICK).lines(Camera.WIDTH, Camera.HEIGHT);
    double[] nearest = new double[3];
    Arrays.fill(nearest, 1e9);
    List<Pixel> truth =
        List.of(c.shows(0, 6), c.shows(-7.62, -3), c.shows(-21.0312, 6.7056 + 4.572));
    for (List<Pixel> line : lines) {
      assertTrue(line.size() > 1);
      for (int i = 0; i + 1 < line.size(); i++) {
        for (int t = 0; t < nearest.length; t++) {
          nearest[t] = Math.min(nearest[t], apart(truth.get(t), line.get(i), line.get(i + 1)));
        }
      }
    }
    for (double d : nearest) {
      assertEquals(0, d, 1, Arrays.toString(nearest));
    }
  }

  private static double apart(Pixel p, Pixel a, Pixel b) {
    double du = b.u() - a.u();
    double dv = b.v() - a.v();
    double part = ((p.u() - a.u()) * du + (p.v() - a.v()) * dv) / (du * du + dv * dv);
    double on = Math.max(0, Math.min(1, part));
    return Math.hypot(a.u() + on * du - p.u(), a.v() + on * dv - p.v());
  }
}
