package twostrides.rink;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The lines of a rink as rows of places near one another, metres, for whoever draws the rink as a
 * camera sees it: boards, lines across (a blue line by its edge toward center), circles.
 */
public final class RinkLines {

  /** Pieces of a line, of a corner and of a circle. For drawing only, assumed. */
  private static final int PIECES = 48;

  private RinkLines() {}

  /**
   * The lines of a rink.
   *
   * @param rink its lengths
   */
  public static List<List<Place>> of(Rink rink) {
    List<List<Place>> lines = new ArrayList<>();
    lines.add(boards(rink));
    lines.add(across(0, rink.width() / 2));
    lines.add(circle(0, 0, rink.circleRadius()));
    for (int side : new int[] {-1, 1}) {
      lines.add(across(side * rink.blueLineNeutralEdge(), rink.width() / 2));
      lines.add(across(side * rink.goalLine(), rink.goalLineHalf()));
      for (int hand : new int[] {-1, 1}) {
        lines.add(circle(side * rink.endSpotX(), hand * rink.endSpotY(), rink.circleRadius()));
      }
    }
    return List.copyOf(lines);
  }

  private static List<Place> across(double x, double half) {
    return piecewise(part -> new Place(x, half * (1 - 2 * part)));
  }

  private static List<Place> circle(double x, double y, double radius) {
    return piecewise(part -> turned(x, y, radius, 2 * Math.PI * part));
  }

  private static List<Place> boards(Rink rink) {
    double x = rink.length() / 2 - rink.cornerRadius();
    double y = rink.width() / 2 - rink.cornerRadius();
    List<Place> corners = new ArrayList<>();
    for (int corner = 0; corner < 4; corner++) {
      double from = corner * Math.PI / 2;
      double cx = corner == 0 || corner == 3 ? x : -x;
      double cy = corner < 2 ? y : -y;
      corners.addAll(
          piecewise(part -> turned(cx, cy, rink.cornerRadius(), from + part * Math.PI / 2)));
    }
    corners.add(corners.get(0));
    // The straight boards between the corners are cut into pieces, too: a camera sees part of one.
    List<Place> whole = new ArrayList<>();
    for (int i = 0; i + 1 < corners.size(); i++) {
      Place a = corners.get(i);
      Place b = corners.get(i + 1);
      int pieces = (int) Math.ceil(Math.max(1, a.distanceTo(b)));
      for (int k = 0; k < pieces; k++) {
        double part = (double) k / pieces;
        whole.add(new Place(a.x() + part * (b.x() - a.x()), a.y() + part * (b.y() - a.y())));
      }
    }
    whole.add(corners.get(0));
    return whole;
  }

  private static Place turned(double x, double y, double radius, double angle) {
    return new Place(x + radius * Math.cos(angle), y + radius * Math.sin(angle));
  }

  private static List<Place> piecewise(DoubleFunction<Place> line) {
    Stream<Place> places =
        IntStream.rangeClosed(0, PIECES).mapToObj(i -> line.apply((double) i / PIECES));
    return places.toList();
  }
}
