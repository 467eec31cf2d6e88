package twostrides.tag;

import java.util.Locale;
import twostrides.rink.Rink;

/**
 * The rink of the page as inline SVG, drawn from its lengths: one unit a metre, origin at center
 * ice, y downward as on a screen. Colours come from the page's style sheet, so that it is readable
 * in light and dark.
 */
final class RinkSvg {

  /** Ice around the boards, metres, so that the boards' line is seen whole; assumed. */
  private static final double MARGIN = 0.6;

  /** Radius of a face-off spot, metres: 1 foot; for drawing only, assumed. */
  private static final double SPOT_RADIUS = 0.3048;

  /** Depth of the goal frame, metres; for drawing only, assumed. */
  private static final double GOAL_DEPTH = 1.1;

  private final Rink rink;
  private final StringBuilder out = new StringBuilder();

  private RinkSvg(Rink rink) {
    this.rink = rink;
  }

  /**
   * The drawing; it holds an empty group {@code marks} for what is clicked on it.
   *
   * @param rink its lengths
   */
  static String of(Rink rink) {
    return new RinkSvg(rink).draw();
  }

  private String draw() {
    double x = rink.length() / 2;
    double y = rink.width() / 2;
    add(
        "<svg id=\"ice\" viewBox=\"%.2f %.2f %.2f %.2f\" data-half-length=\"%.3f\""
            + " data-half-width=\"%.3f\" data-corner=\"%.3f\" aria-hidden=\"true\""
            + " focusable=\"false\">\n",
        -x - MARGIN, -y - MARGIN, 2 * (x + MARGIN), 2 * (y + MARGIN), x, y, rink.cornerRadius());
    add(
        "<rect class=\"boards\" x=\"%.3f\" y=\"%.3f\" width=\"%.3f\" height=\"%.3f\""
            + " rx=\"%.3f\"/>\n",
        -x, -y, 2 * x, 2 * y, rink.cornerRadius());
    for (int side : new int[] {-1, 1}) {
      end(side);
    }
    across("redline", 0, 2 * rink.redLineHalfWidth(), y);
    add("<circle class=\"blue thin\" r=\"%.3f\"/>\n", rink.circleRadius());
    spot("blue", 0, 0);
    out.append("<g id=\"marks\"></g>\n</svg>");
    return out.toString();
  }

  /** Everything of one end; {@code side} is -1 for the left one. */
  private void end(int side) {
    across("goalline", side * rink.goalLine(), rink.goalLineWidth(), rink.goalLineHalf());
    across(
        "blueline",
        side * (rink.blueLineNeutralEdge() + rink.blueLineWidth() / 2),
        rink.blueLineWidth(),
        rink.width() / 2);
    double mouth = rink.goalWidth() / 2;
    add(
        "<rect class=\"net\" x=\"%.3f\" y=\"%.3f\" width=\"%.3f\" height=\"%.3f\"/>\n",
        side < 0 ? -rink.goalLine() - GOAL_DEPTH : rink.goalLine(), -mouth, GOAL_DEPTH, 2 * mouth);
    for (int hand : new int[] {-1, 1}) {
      double y = hand * rink.endSpotY();
      add(
          "<circle class=\"red thin\" cx=\"%.3f\" cy=\"%.3f\" r=\"%.3f\"/>\n",
          side * rink.endSpotX(), y, rink.circleRadius());
      spot("red", side * rink.endSpotX(), y);
      spot("red", side * rink.neutralSpotX(), y);
    }
  }

  private void across(String kind, double x, double width, double half) {
    add(
        "<line class=\"%s\" x1=\"%.3f\" x2=\"%.3f\" y1=\"%.3f\" y2=\"%.3f\""
            + " stroke-width=\"%.3f\"/>\n",
        kind, x, x, -half, half, width);
  }

  private void spot(String colour, double x, double y) {
    add(
        "<circle class=\"%s spot\" cx=\"%.3f\" cy=\"%.3f\" r=\"%.3f\"/>\n",
        colour, x, y, SPOT_RADIUS);
  }

  private void add(String form, Object... values) {
    out.append(String.format(Locale.ROOT, form, values));
  }
}
