package twostrides.book.chart;

import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
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

  private static final String CROSS = "m-4.5 -4.5l9 9m0 -9l-9 9";

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
    ToDoubleFunction<Sketch> small =
        s -> {
          Ice ice = ice(s, 1);
          marks(s, ice);
          return ice.bounds().getMaxY() + 1;
        };
    return Form.of(Form.NARROW, small).inline(caption(id), "thumbnail");
  }

  private Caption caption(String id) {
    return new Caption(
        id, "Sent before the red line, and where the puck goes", gap + ". " + spread);
  }

  private Ice ice(Sketch s, double top) {
    return Ice.of(rink, rink.length() / 2, 1, top, s.width() - 2, false);
  }

  private double draw(Sketch s) {
    Ice ice = ice(s, 20);
    marks(s, ice);
    s.inside(
        Type.NOTE, "own goal", ice.at(new Place(-rink.goalLine(), 0)).getX(), 14, 0, s.width());
    s.inside(Type.NOTE, "red line", s.width() / 2, 14, 0, s.width());
    s.inside(
        Type.NOTE, "their goal", ice.at(new Place(rink.goalLine(), 0)).getX(), 14, 0, s.width());
    Legend legend = new Legend(s, reach(s, ice) + 4, 26);
    legend.entry(
        "8 in 10 simulations go here", (x, middle) -> s.rect("band", x, middle - 6, 20, 12));
    legend.entry("let go here", (x, middle) -> s.circle("ink", x + 10, middle, 5.5));
    if (!skaters.isEmpty()) {
      legend.entry("own skater", (x, middle) -> skater(s, true, x + 10, middle));
      legend.entry("opponent", (x, middle) -> skater(s, false, x + 10, middle));
    }
    double y = legend.bottom() + 16;
    y = s.lines(Type.HEAD, Lettering.lines(gap, Type.HEAD, s.width(), 2), 0, y);
    y = s.lines(Type.WORDS, Lettering.lines(spread, Type.WORDS, s.width(), 4), 0, y + 2);
    return y - 4;
  }

  private void marks(Sketch s, Ice ice) {
    ice.ground(s);
    ice.lines(s);
    band(s, ice);
    Point2D at = ice.at(from);
    double line = ice.at(new Place(-rink.redLineHalfWidth(), 0)).getX();
    if (rink.shortOfCenter(from.x()) > 0) {
      s.line("gap", at.getX(), at.getY(), line, at.getY());
      s.line("gap", line, at.getY() - 9, line, at.getY() + 9);
    }
    s.circle("ink", at.getX(), at.getY(), 5.5);
    for (Skater skater : skaters) {
      Point2D place = ice.at(skater.at);
      if (Math.hypot(skater.vx, skater.vy) >= STANDING) {
        arrow(s, ice, skater);
      }
      skater(s, skater.own, place.getX(), place.getY());
    }
  }

  private void band(Sketch s, Ice ice) {
    Path2D edge = new Path2D.Double();
    Path2D middle = new Path2D.Double();
    edge.moveTo(from.x(), from.y());
    middle.moveTo(from.x(), from.y());
    band.forEach(a -> edge.lineTo(a.x, a.left));
    band.forEach(a -> middle.lineTo(a.x, a.middle));
    for (int i = band.size() - 1; i >= 0; i--) {
      edge.lineTo(band.get(i).x, band.get(i).right);
    }
    ice.fill(s, "band", edge);
    ice.draw(s, "dashed", middle);
  }

  /** Where half a second takes a skater, with a head at its end. */
  private static void arrow(Sketch s, Ice ice, Skater skater) {
    Point2D from = ice.at(skater.at);
    Place ahead = new Place(skater.at.x() + AHEAD * skater.vx, skater.at.y() + AHEAD * skater.vy);
    double way = Math.max(14, from.distance(ice.at(ahead)));
    AffineTransform turn = AffineTransform.getTranslateInstance(from.getX(), from.getY());
    turn.rotate(skater.vx, -skater.vy);
    Path2D arrow = new Path2D.Double(new Line2D.Double(0, 0, way, 0));
    arrow.append(new Line2D.Double(way - 6, -4, way, 0), false);
    arrow.append(new Line2D.Double(way, 0, way - 6, 4), true);
    s.shape("ahead", turn.createTransformedShape(arrow));
  }

  /** Own skaters are rings, opponents crosses. */
  private static void skater(Sketch s, boolean own, double x, double y) {
    if (own) {
      s.circle("hollow", x, y, 5);
    } else {
      s.mark("halo", x, y, CROSS);
      s.mark("opponent", x, y, CROSS);
    }
  }

  /** A bracket under the rink from where the shortest tenth ends to where all but a tenth do. */
  private double reach(Sketch s, Ice ice) {
    double bottom = ice.bounds().getMaxY();
    if (reach.isEmpty()) {
      return bottom;
    }
    double low = ice.at(new Place(reach.get().low(), 0)).getX();
    double high = ice.at(new Place(reach.get().high(), 0)).getX();
    String length = Sketch.number(high - low);
    s.mark("bracket", low, bottom + 9, "m0 -4v8m0 -4h" + length + "m0 -4v8");
    s.inside(Type.NOTE, "8 in 10 get this far", (low + high) / 2, bottom + 27, 0, s.width());
    return bottom + 31;
  }
}
