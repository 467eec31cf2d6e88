package twostrides.book.chart;

import java.awt.geom.Point2D;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import twostrides.rink.Place;
import twostrides.rink.Rink;

/**
 * Where a player sent the puck from before the red line, and what came of it: one mark each on the
 * half rink, with the counts in the legend. The team attacks to the right.
 *
 * @param title whose; any text
 * @param rink its lengths
 * @param releases with a place
 * @param unplaced releases whose place the sheets do not say
 */
public record ReleaseMap(String title, Rink rink, List<Release> releases, int unplaced) {

  /** Metres shown past center: enough to see the red line as a line. Assumed. */
  private static final double PAST_CENTER = 1.5;

  /** More marks than this hide each other at full size. Assumed, from maps of drawn seasons. */
  private static final int MANY = 150;

  /** Copies the releases. */
  public ReleaseMap {
    releases = List.copyOf(releases);
  }

  /**
   * One release.
   *
   * @param from where, frame of the team that lets the puck go
   * @param outcome what came of it
   * @param link its row or its clip
   */
  public record Release(Place from, Outcome outcome, Link link) {}

  /**
   * Draws it.
   *
   * @param id beginning of its ids, unique on its page: a-z, 0-9 and hyphens
   */
  public Picture picture(String id) {
    String counts =
        Stream.of(Outcome.values()).map(this::counted).collect(Collectors.joining("; "));
    return Picture.of(new Caption(id, title, all() + ". " + counts + "."), this::draw);
  }

  private String all() {
    String n = Words.whole(releases.size() + (long) unplaced) + " sent before the red line";
    return unplaced == 0 ? n : n + ", " + Words.whole(unplaced) + " without a place in the sheets";
  }

  private String counted(Outcome outcome) {
    return String.format(Locale.ROOT, "%s (%,d)", outcome.words(), of(outcome).count());
  }

  private Stream<Release> of(Outcome outcome) {
    return releases.stream().filter(r -> r.outcome == outcome);
  }

  private double draw(Sketch s) {
    double width = s.either(500, s.width() - 2);
    Ice ice = new Ice(rink, 1, 20, width / (rink.length() / 2 + PAST_CENTER), PAST_CENTER, false);
    ice.draw(s);
    s.text(Type.NOTE, "own end", 0, 14);
    double blue = ice.at(-rink.blueLineNeutralEdge(), 0).getX();
    s.text(Type.NOTE, Sketch.Anchor.MIDDLE, "blue line", blue, 14);
    s.text(Type.NOTE, Sketch.Anchor.END, "red line", ice.left() + width, 14);
    boolean many = releases.size() > MANY;
    for (Outcome outcome : Outcome.values()) {
      of(outcome)
          .forEach(
              r -> {
                Point2D at = ice.at(r.from);
                double size = many && !outcome.stopsPlay() ? 0.6 : 1;
                s.linked(r.link, () -> outcome.draw(s, at.getX(), at.getY(), size));
              });
    }
    double left = s.either(ice.left() + width + 24, 0);
    return Math.max(ice.bottom() + 2, legend(s, left, s.either(ice.top(), ice.bottom() + 10)));
  }

  private double legend(Sketch s, double left, double top) {
    double y = top + 14;
    double room = s.width() - left;
    y = s.lines(Type.STRONG, Lettering.lines(all(), Type.STRONG, room, 3), left, y) + 8;
    for (int i = Outcome.values().length - 1; i >= 0; i--) {
      Outcome outcome = Outcome.values()[i];
      outcome.draw(s, left + 10, y - 4, 1);
      List<String> words = Lettering.lines(counted(outcome), Type.WORDS, room - 28, 2);
      y = s.lines(Type.WORDS, words, left + 28, y) + 8;
    }
    return y - 10;
  }
}
