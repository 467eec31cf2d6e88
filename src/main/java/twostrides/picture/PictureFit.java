package twostrides.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.RealMatrix;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.rink.RinkLines;
import twostrides.rink.RinkMark;

/**
 * The way from one picture of a rink to places on its ice, by marks clicked in it, as a plane is
 * seen through a lens that bends nothing. It holds for that picture only, and for what touches the
 * ice: skates, not heads.
 *
 * <p>Every click, of a mark and of a man, is taken to be off by the same standard error each way,
 * or, where more than four marks differ from the fit by more than that, by what they differ. The
 * error of a place carries both its own click's and the marks', to first order.
 */
public final class PictureFit {

  /** Marks that it takes. */
  public static final int FEWEST = 4;

  /** An error above which the picture says too little of where somebody is, metres. Assumed. */
  public static final double ROUGH = 1.5;

  /** An error above which it says nothing; places sheets take no larger one. Metres. Assumed. */
  private static final double MOST_ERROR = 5;

  /** Marks that differ by so many standard errors of a click do not fit one another. Assumed. */
  private static final double DISAGREE = 3;

  /** Up to so far outside the boards, or two errors, somebody stands at the boards, m. Assumed. */
  private static final double AT_BOARDS = 1;

  /** Depth, of 1 at the marks, below which a place is as good as behind the camera. Assumed. */
  private static final double NEAR_HORIZON = 0.05;

  /** Sides of a picture from its middle, as far as lines are given. Assumed. */
  private static final double FAR_OUT = 1.5;

  private final Rink rink;
  private final List<MarkClick> clicks;
  private final Homography way;
  private final double clickError;
  private final double differ;

  private PictureFit(Rink rink, List<MarkClick> clicks, Homography way, double clickError) {
    this.rink = rink;
    this.clicks = clicks;
    this.way = way;
    this.clickError = clickError;
    int spare = 2 * (clicks.size() - FEWEST);
    this.differ = spare > 0 ? Math.sqrt(way.squares() / spare) : 0;
  }

  /**
   * Fits a picture.
   *
   * @param rink the rink
   * @param clicks marks where they were clicked, four or more, each once
   * @param clickError standard error of a click each way, picture elements, above 0
   * @throws NoPlaceException where they fix no way to the ice
   * @throws IllegalArgumentException for an error that is none, or a mark that comes twice
   */
  public static PictureFit of(Rink rink, List<MarkClick> clicks, double clickError)
      throws NoPlaceException {
    if (!(clickError > 0) || Double.isInfinite(clickError)) {
      throw new IllegalArgumentException("a click's error is above 0, not " + clickError);
    }
    if (clicks.stream().map(MarkClick::mark).distinct().count() < clicks.size()) {
      throw new IllegalArgumentException("a mark was clicked twice");
    }
    if (clicks.size() < FEWEST) {
      throw new NoPlaceException(
          clicks.size() + " marks", "four or more", "Click more marks of the rink.");
    }
    check(rink, clicks, clickError);
    return fit(rink, clicks, clickError);
  }

  private static void check(Rink rink, List<MarkClick> clicks, double clickError)
      throws NoPlaceException {
    List<RinkMark> marks = clicks.stream().map(MarkClick::mark).toList();
    if (Layout.spread(places(clicks)) < Layout.OFF_LINE) {
      throw new NoPlaceException(
          "marks of which three lie on one line",
          "four of which no three lie on one line",
          Layout.missing(rink, marks)
              .map(m -> "Click another mark, off that line, such as: " + m.name() + ".")
              .orElse("Click two more marks, off that line."));
    }
    if (Layout.spread(points(clicks)) < 2 * clickError) {
      throw new NoPlaceException(
          "clicks that lie on one line in the picture, or on one another",
          "four marks clicked well apart",
          "Look whether each mark was clicked where it is, and click others, farther apart.");
    }
  }

  private static PictureFit fit(Rink rink, List<MarkClick> clicks, double clickError)
      throws NoPlaceException {
    Homography way;
    try {
      way = Homography.of(places(clicks), points(clicks));
    } catch (MathRuntimeException e) {
      throw cannotBe();
    }
    for (MarkClick c : clicks) {
      if (!(way.depth(c.mark().place().x(), c.mark().place().y()) > 0)) {
        throw cannotBe();
      }
    }
    if (way.mirrored()) {
      throw new NoPlaceException(
          "marks as in a mirror",
          "the rink as it is seen from above the ice",
          "Left and right, or the two ends, are exchanged: left is left of the attack. Turn the rink"
              + " of the page so that it lies as in the picture, and set the marks again.");
    }
    return new PictureFit(rink, List.copyOf(clicks), way, clickError);
  }

  private static NoPlaceException cannotBe() {
    return new NoPlaceException(
        "marks that no camera sees so",
        "each mark clicked where it is",
        "One of them is another mark: take it back, or choose it again and click where it is.");
  }

  private static List<double[]> places(List<MarkClick> clicks) {
    return clicks.stream().map(c -> Layout.of(c.mark().place())).toList();
  }

  private static List<double[]> points(List<MarkClick> clicks) {
    return clicks.stream().map(c -> new double[] {c.at().u(), c.at().v()}).toList();
  }

  /** Marks more than it takes. */
  public int spare() {
    return clicks.size() - FEWEST;
  }

  /**
   * By how much the marks differ from the fit each way, picture elements; 0 where there are four,
   * which fit whatever was clicked.
   */
  public double differ() {
    return differ;
  }

  /** Whether the marks differ by so much that one of them must be wrong. */
  public boolean disagrees() {
    return differ > DISAGREE * clickError;
  }

  /** The mark without which the others agree, where there is one, among six or more. */
  public Optional<RinkMark> odd() {
    if (!disagrees() || spare() < 2) {
      return Optional.empty();
    }
    List<RinkMark> odd = new ArrayList<>();
    for (MarkClick c : clicks) {
      List<MarkClick> others = clicks.stream().filter(o -> !o.equals(c)).toList();
      try {
        if (!of(rink, others, clickError).disagrees()) {
          odd.add(c.mark());
        }
      } catch (NoPlaceException e) {
        // Without this mark nothing is fixed, so nothing is said against it.
      }
    }
    return odd.size() == 1 ? Optional.of(odd.get(0)) : Optional.empty();
  }

  /**
   * The place of a point of the picture where something touches the ice.
   *
   * @param point the point
   * @throws NoPlaceException where it lies above the horizon or outside the boards, or where its
   *     error says that it may be anywhere
   */
  public SeenPlace place(Pixel point) throws NoPlaceException {
    double[] at = way.place(point.u(), point.v());
    if (!(at[2] > 0) || !Double.isFinite(at[0]) || !Double.isFinite(at[1])) {
      throw new NoPlaceException(
          "a click above the horizon of the ice",
          "a point of the ice",
          "Click where his skates touch the ice.");
    }
    double error = error(at[0], at[1]);
    if (!(error <= MOST_ERROR)) {
      throw new NoPlaceException(
          String.format(Locale.ROOT, "a place that this picture shows to within %.0f m", error),
          String.format(Locale.ROOT, "%.0f m or better", MOST_ERROR),
          "Click him on the rink, or click more marks near him.");
    }
    double out = outside(at[0], at[1]);
    if (out > Math.max(AT_BOARDS, 2 * error)) {
      throw new NoPlaceException(
          String.format(Locale.ROOT, "a place %.1f m outside the boards", out),
          "a place on the ice",
          "Click where his skates touch the ice. Where that is what you did the marks are off: click"
              + " a mark near him.");
    }
    double x = rink.length() / 2;
    double y = rink.width() / 2;
    return new SeenPlace(
        new Place(Math.max(-x, Math.min(x, at[0])), Math.max(-y, Math.min(y, at[1]))), error);
  }

  /** Metres outside the boards; below 0 inside. */
  private double outside(double x, double y) {
    double alongCorner = Math.abs(x) - (rink.length() / 2 - rink.cornerRadius());
    double acrossCorner = Math.abs(y) - (rink.width() / 2 - rink.cornerRadius());
    return alongCorner > 0 && acrossCorner > 0
        ? Math.hypot(alongCorner, acrossCorner) - rink.cornerRadius()
        : Math.max(alongCorner, acrossCorner) - rink.cornerRadius();
  }

  /**
   * Standard error of somebody clicked at a place, in the direction in which the picture shows it
   * worst, metres; empty where the picture cannot show the place.
   *
   * @param place the place
   */
  public Optional<Double> errorAt(Place place) {
    return way.depth(place.x(), place.y()) > NEAR_HORIZON
        ? Optional.of(error(place.x(), place.y()))
        : Optional.empty();
  }

  private double error(double x, double y) {
    RealMatrix c = covariance(new Place(x, y));
    double half = (c.getEntry(0, 0) + c.getEntry(1, 1)) / 2;
    double apart = (c.getEntry(0, 0) - c.getEntry(1, 1)) / 2;
    return Math.sqrt(half + Math.hypot(apart, c.getEntry(0, 1)));
  }

  /** Covariance of the place of a click, square metres. */
  RealMatrix covariance(Place place) {
    return way.covariance(place.x(), place.y(), Math.max(clickError, differ));
  }

  /**
   * The rink's lines as the picture shows them, cut where they leave it far behind.
   *
   * @param width of the picture
   * @param height of the picture
   */
  public List<List<Pixel>> lines(double width, double height) {
    List<List<Pixel>> seen = new ArrayList<>();
    for (List<Place> line : RinkLines.of(rink)) {
      List<Optional<Pixel>> points =
          line.stream().map(p -> point(p).filter(q -> near(q, width, height))).toList();
      int from = 0;
      for (int i = 0; i <= points.size(); i++) {
        if (i == points.size() || points.get(i).isEmpty()) {
          List<Pixel> piece =
              IntStream.range(from, i).mapToObj(k -> points.get(k).orElseThrow()).toList();
          if (piece.size() > 1) {
            seen.add(piece);
          }
          from = i + 1;
        }
      }
    }
    return seen;
  }

  /**
   * Where the picture shows a place, also outside its edges; empty where no camera in its place
   * could.
   *
   * @param place the place
   */
  public Optional<Pixel> point(Place place) {
    if (!(way.depth(place.x(), place.y()) > NEAR_HORIZON)) {
      return Optional.empty();
    }
    double[] at = way.point(place.x(), place.y());
    return Optional.of(new Pixel(at[0], at[1]));
  }

  private static boolean near(Pixel p, double width, double height) {
    return Math.abs(p.u() - width / 2) < FAR_OUT * width
        && Math.abs(p.v() - height / 2) < FAR_OUT * height;
  }
}
