package twostrides.book.chart;

import twostrides.rink.Rink;

/**
 * A whole rink with nothing on it, for a script to draw on: the attack goes to the right.
 *
 * @param rink its lengths
 */
public record RinkPlan(Rink rink) {

  /**
   * Draws it, the boards one pixel inside the view box: one {@code <svg>} element.
   *
   * @param id beginning of its ids, unique on its page: a-z, 0-9 and hyphens
   */
  public String drawing(String id) {
    Caption caption = new Caption(id, "Where it was", "The attack goes to the right.");
    return Form.of(
            Form.NARROW,
            s -> {
              Ice ice = Ice.of(rink, rink.length() / 2, 1, 1, s.width() - 2, false);
              ice.ground(s);
              ice.lines(s);
              return ice.bounds().getMaxY() + 1;
            })
        .inline(caption, "plan");
  }
}
