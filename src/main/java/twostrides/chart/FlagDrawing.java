package twostrides.chart;

import java.util.List;
import java.util.Locale;
import twostrides.race.PuckSpread;
import twostrides.race.Sighting;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.rink.Units;
import twostrides.season.Flag;

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
  static Picture of(Flag flag, Rink rink) {
    Place from = flag.release().at().where().place().orElseThrow();
    PuckSpread.Row puck = flag.puck().farthest();
    List<ReleaseSketch.Row> band =
        List.of(
            new ReleaseSketch.Row(from.x(), from.y(), from.y(), from.y()),
            new ReleaseSketch.Row(puck.x(), puck.low(), puck.middle(), puck.high()));
    String spread =
        String.format(
            Locale.ROOT,
            "Band: where 10 to 90 %% of the draws would go, the sheet does not say which way; %.0f"
                + " %% pass their goal line.",
            100 * flag.puck().past());
    return ReleaseDrawing.of(
        new ReleaseSketch(
            from.x(),
            from.y(),
            gap(flag),
            spread,
            skaters(flag),
            band,
            new ReleaseSketch.Reach(puck.x(), puck.x())),
        rink);
  }

  private static String gap(Flag flag) {
    return String.format(
        Locale.ROOT,
        "%.1f m (%.0f ft) short of the red line, %.1f s away",
        flag.release().shortOfCenter(),
        Units.FOOT.fromMetres(flag.release().shortOfCenter()),
        flag.assessment().gain().seconds());
  }

  private static List<ReleaseSketch.SketchedSkater> skaters(Flag flag) {
    return flag.assessment().gain().seen().stream()
        .flatMap(p -> p.around().others().stream())
        .map(Sighting::racer)
        .map(r -> new ReleaseSketch.SketchedSkater(r.chases(), r.x(), r.y(), r.vx(), r.vy()))
        .toList();
  }
}
