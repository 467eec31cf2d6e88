package twostrides.book;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import twostrides.book.chart.ReleaseDiagram;
import twostrides.book.chart.Span;
import twostrides.race.PuckSpread;
import twostrides.race.Sighting;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.season.Flag;

/** The diagram of a release that may be flagged. */
final class FlagView {

  private FlagView() {}

  static ReleaseDiagram diagram(Flag flag, Rink rink) {
    Place from = flag.release().at().where().place().orElseThrow();
    PuckSpread.Farthest pucks = flag.release().puck().orElseThrow();
    PuckSpread.Row puck = pucks.row();
    return new ReleaseDiagram(
        rink,
        from,
        flag.assessment().gain().seen().stream()
            .flatMap(p -> p.around().others().stream())
            .map(Sighting::racer)
            .map(
                r -> new ReleaseDiagram.Skater(r.chases(), new Place(r.x(), r.y()), r.vx(), r.vy()))
            .toList(),
        List.of(
            new ReleaseDiagram.Across(from.x(), from.y(), from.y(), from.y()),
            new ReleaseDiagram.Across(puck.x(), puck.low(), puck.middle(), puck.high())),
        Optional.<Span>empty(),
        String.format(
            Locale.ROOT,
            "%s before the red line, %.1f s away",
            Format.metresAndFeet(flag.release().shortOfCenter()),
            flag.assessment().gain().seconds()),
        String.format(
            Locale.ROOT,
            "Band: 8 in 10 of %,d simulations go here; the sheet does not say which way. %.0f %%"
                + " of them pass their goal line.",
            pucks.simulations(),
            100 * pucks.past()));
  }
}
