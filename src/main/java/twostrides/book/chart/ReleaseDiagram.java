package twostrides.book.chart;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import twostrides.rink.Place;
import twostrides.rink.Rink;

/**
 * One release on a whole rink: the gap to the red line, the skaters and their speed, and the band
 * where 8 in 10 simulations take the puck. Every part has a shape of its own.
 *
 * @param rink its lengths
 * @param from where the puck was let go, frame of the team that lets it go
 * @param skaters whose places are known
 * @param band the spread of the puck across the rink, from the release up ice
 * @param reach how far up ice 8 in 10 simulations get, metres from center ice; empty where not
 *     asked for
 * @param gap how far before the red line, in a line
 * @param spread what else is to be said of where the puck goes, in a sentence or two
 */
public record ReleaseDiagram(
    Rink rink,
    Place from,
    List<Skater> skaters,
    List<Across> band,
    Optional<Span> reach,
    String gap,
    String spread) {

  /** Seconds of a skater's way that his arrow shows. Assumed. */
  private static final double AHEAD = 0.5;

  /** Slower than this, metres a second, a skater stands and has no arrow. Assumed. */
  private static final double STANDING = 0.5;

  private static final String BAND = "8 in 10 simulations go here";

  /** Copies the lists. */
  public ReleaseDiagram {
    skaters = List.copyOf(skaters);
    band = List.copyOf(band);
  }

  /**
   * A skater at the release.
   *
   * @param own whether he plays for the team that lets the puck go
   * @param at where he is, frame of that team
   * @param vx metres a second toward the goal that team attacks
   * @param vy metres a second to the left of that attack
   */
  public record Skater(boolean own, Place at, double vx, double vy) {}

  /**
   * The band at one distance up ice.
   *
   * @param x metres from center ice
   * @param right its right edge seen up ice, metres from the long axis: 1 in 10 simulations pass
   *     farther right
   * @param middle half of them do
   * @param left its left edge: 1 in 10 simulations pass farther left
   */
  public record Across(double x, double right, double middle, double left) {}

  /**
   * Draws it.
   *
   * @param id beginning of its ids, unique on its page: a-z, 0-9 and hyphens
   */
  public Picture picture(String id) {
    return Picture.of(caption(id), this::draw);
  }

  /**
   * A small form without words, for cards that open: one {@code <svg>} element without links.
   *
   * @param id beginning of its ids, unique on its page: a-z, 0-9 and hyphens
   */
  public String thumbnail(String id) {
    Form.Drawing small =
        s -> {
          Ice ice = new Ice(rink, 1, 1, (s.width() - 2) / rink.length(), rink.length() / 2, false);
          marks(s, ice);
          return ice.bottom() + 1;
        };
    return Form.of(true, small).inline(caption(id), "thumbnail");
  }

  private Caption caption(String id) {
    return new Caption(
        id, "Sent before the red line, and where the puck goes", gap + ". " + spread);
  }

  private double draw(Sketch s) {
    Ice ice = new Ice(rink, 1, 20, (s.width() - 2) / rink.length(), rink.length() / 2, false);
    marks(s, ice);
    s.inside(Type.NOTE, "own goal", ice.at(-rink.goalLine(), 0).getX(), 14, 0, s.width());
    s.inside(Type.NOTE, "red line", ice.at(0, 0).getX(), 14, 0, s.width());
    s.inside(Type.NOTE, "their goal", ice.at(rink.goalLine(), 0).getX(), 14, 0, s.width());
    double y = reach(s, ice) + 4;
    Legend legend = new Legend(s, y, 26);
    if (band.size() > 1) {
      legend.entry(BAND, (x, middle) -> s.rect("band", x, middle - 6, 20, 12));
    }
    legend.entry("let go here", (x, middle) -> s.circle("ink", x + 10, middle, 5.5));
    for (boolean own : new boolean[] {true, false}) {
      if (skaters.stream().anyMatch(k -> k.own == own)) {
        String words = own ? "own skater" : "opponent";
        legend.entry(words, (x, middle) -> skater(s, own, new Point2D.Double(x + 10, middle)));
      }
    }
    y = legend.bottom() + 16;
    y = s.lines(Type.HEAD, Lettering.lines(gap, Type.HEAD, s.width(), 2), 0, y);
    y = s.lines(Type.WORDS, Lettering.lines(spread, Type.WORDS, s.width(), 4), 0, y + 2);
    return y - 4;
  }

  private void marks(Sketch s, Ice ice) {
    ice.ground(s);
    ice.lines(s);
    band(s, ice);
    gap(s, ice);
    for (Skater skater : skaters) {
      Point2D at = ice.at(skater.at);
      if (Math.hypot(skater.vx, skater.vy) >= STANDING) {
        arrow(s, at, ice.at(skater.at.x() + AHEAD * skater.vx, skater.at.y() + AHEAD * skater.vy));
      }
      skater(s, skater.own, at);
    }
  }

  private void band(Sketch s, Ice ice) {
    if (band.size() < 2) {
      return;
    }
    List<Object> edge = new ArrayList<>();
    List<Object> middle = new ArrayList<>();
    for (Across a : band) {
      Collections.addAll(edge, edge.isEmpty() ? "M" : "L", ice.at(a.x, a.left));
      Collections.addAll(middle, middle.isEmpty() ? "M" : "L", ice.at(a.x, a.middle));
    }
    for (int i = band.size() - 1; i >= 0; i--) {
      Collections.addAll(edge, "L", ice.at(band.get(i).x, band.get(i).right));
    }
    edge.add("Z");
    s.path("band", edge.toArray());
    s.path("dashed", middle.toArray());
  }

  private void gap(Sketch s, Ice ice) {
    Point2D at = ice.at(from);
    if (rink.shortOfCenter(from.x()) > 0) {
      Point2D line = ice.at(-rink.redLineHalfWidth(), from.y());
      s.line("gap", at.getX(), at.getY(), line.getX(), line.getY());
      s.line("gap", line.getX(), line.getY() - 9, line.getX(), line.getY() + 9);
    }
    s.circle("ink", at.getX(), at.getY(), 5.5);
  }

  /** Where half a second takes a skater, with a head at its end. */
  private static void arrow(Sketch s, Point2D from, Point2D to) {
    double way = Math.max(1e-9, from.distance(to));
    double dx = (to.getX() - from.getX()) / way;
    double dy = (to.getY() - from.getY()) / way;
    double tip = Math.max(way, 14);
    double x = from.getX() + tip * dx;
    double y = from.getY() + tip * dy;
    s.line("ahead", from.getX(), from.getY(), x - 4 * dx, y - 4 * dy);
    s.path(
        "ink",
        "M",
        x,
        y,
        "L",
        x - 7 * dx - 3.5 * dy,
        y - 7 * dy + 3.5 * dx,
        "L",
        x - 7 * dx + 3.5 * dy,
        y - 7 * dy - 3.5 * dx,
        "Z");
  }

  /** Own skaters are rings, opponents crosses. */
  private static void skater(Sketch s, boolean own, Point2D at) {
    double x = at.getX();
    double y = at.getY();
    if (own) {
      s.circle("hollow", x, y, 5);
    } else {
      Object[] cross = {"M", x - 4.5, y - 4.5, "l", 9, 9, "m", 0, -9, "l", -9, 9};
      s.path("halo", cross);
      s.path("opponent", cross);
    }
  }

  /** A bracket under the rink from where the shortest tenth ends to where all but a tenth do. */
  private double reach(Sketch s, Ice ice) {
    double y = ice.bottom() + 9;
    if (reach.isEmpty()) {
      return ice.bottom();
    }
    double low = ice.at(reach.get().low(), 0).getX();
    double high = ice.at(reach.get().high(), 0).getX();
    s.path("bracket", "M", low, y - 4, "v", 8, "m", 0, -4, "H", high, "m", 0, -4, "v", 8);
    String words = "8 in 10 get this far";
    s.inside(Type.NOTE, words, (low + high) / 2, y + 18, 0, s.width());
    return y + 22;
  }
}
