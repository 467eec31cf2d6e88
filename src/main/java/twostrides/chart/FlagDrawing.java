package twostrides.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import twostrides.review.FlagLine;
import twostrides.rink.Rink;

/** The drawing of a flagged release: the drawing of any release, filled from the flag. */
final class FlagDrawing {

  private FlagDrawing() {}

  /**
   * The drawing of a release.
   *
   * @param flag the release
   * @param rink the rink
   * @throws IllegalStateException when the machine has no font
   */
  static Picture of(FlagLine flag, Rink rink) {
    double y = flag.y().orElse(0);
    FlagLine.Puck puck = flag.puck();
    List<ReleaseSketch.Row> band =
        List.of(
            new ReleaseSketch.Row(flag.x(), y, y, y),
            new ReleaseSketch.Row(puck.x(), puck.right(), puck.middle(), puck.left()));
    String spread =
        String.format(
            Locale.ROOT,
            "Band: where 10 to 90 %% of the draws would go, the sheet does not say which way; %.0f %%"
                + " pass their goal line.",
            100 * puck.past());
    return ReleaseDrawing.of(
        new ReleaseSketch(
            flag.x(),
            y,
            gap(flag),
            spread,
            skaters(flag.skaters()),
            band,
            new ReleaseSketch.Reach(puck.x(), puck.x())),
        rink);
  }

  private static String gap(FlagLine flag) {
    return String.format(
        Locale.ROOT,
        "%.1f m (%.0f ft) short of the red line, %.1f s away",
        flag.shortOfCenter(),
        flag.shortOfCenter() / 0.3048,
        flag.seconds());
  }

  private static List<ReleaseSketch.SketchedSkater> skaters(String words) {
    if (words.isEmpty()) {
      return List.of();
    }
    List<ReleaseSketch.SketchedSkater> skaters = new ArrayList<>();
    for (String one : words.split("; ", -1)) {
      String[] part = one.split(" ", -1);
      skaters.add(
          new ReleaseSketch.SketchedSkater(
              part[0].equals("own"),
              Double.parseDouble(part[1]),
              Double.parseDouble(part[2]),
              part.length > 3 ? Double.parseDouble(part[3]) : 0,
              part.length > 4 ? Double.parseDouble(part[4]) : 0));
    }
    return List.copyOf(skaters);
  }
}
