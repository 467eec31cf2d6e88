package twostrides.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import twostrides.findings.Mark;
import twostrides.findings.MarkOutcome;
import twostrides.findings.Profile;
import twostrides.rink.Rink;

/**
 * Where pucks were released short of center and what came of each. The team attacks to the right;
 * its own goal is at the left.
 */
public final class ReleaseMap {

  private static final int WIDTH = 800;

  /** Metres shown past center on the half map: enough to see the red line as a line. Assumed. */
  private static final double PAST_CENTER = 2;

  /** Pixels for the legend beside the half map. */
  private static final double LEGEND_WIDTH = 236;

  private static final double LEGEND_GAP = 22;

  /** Pixels above the rink for the names of its lines. */
  private static final double NAMES = 20;

  /** More marks than this hide each other at full size. Assumed, from maps of drawn seasons. */
  private static final int MANY = 150;

  private ReleaseMap() {}

  /**
   * The map of the own half, with a little of the ice past the red line.
   *
   * @param title what is shown, for example a player's name; any text
   * @param profile the releases
   * @param rink the rink they were released on
   * @throws IllegalStateException when the machine has no font
   */
  public static Picture of(String title, Profile profile, Rink rink) {
    double room = WIDTH - 2 * Headline.MARGIN - LEGEND_WIDTH;
    double scale = room / (rink.length() / 2 + PAST_CENTER);
    return map(title, profile, rink, scale, PAST_CENTER);
  }

  /**
   * The map of the whole rink.
   *
   * @param title what is shown, for example a player's name; any text
   * @param profile the releases
   * @param rink the rink they were released on
   * @throws IllegalStateException when the machine has no font
   */
  public static Picture ofWholeRink(String title, Profile profile, Rink rink) {
    double scale = (WIDTH - 2.0 * Headline.MARGIN) / rink.length();
    return map(title, profile, rink, scale, rink.length() / 2);
  }

  private static Picture map(String title, Profile profile, Rink rink, double scale, double farX) {
    boolean whole = farX > PAST_CENTER;
    String note = note(profile) + (whole ? "; red line in the middle" : "; red line at the right");
    String shown = Lettering.cleanOr(title, "Releases short of center");
    Headline headline = Headline.of(shown, note, WIDTH);
    RinkDrawing ice =
        new RinkDrawing(rink, Headline.MARGIN, headline.height() + NAMES, scale, farX);
    double below = headline.height() + NAMES + ice.height();
    Map<MarkOutcome, Integer> counts = counts(profile);
    MarkLegend legend =
        whole
            ? MarkLegend.below(
                counts, Headline.MARGIN, below + LEGEND_GAP, WIDTH - 2.0 * Headline.MARGIN)
            : MarkLegend.beside(
                counts,
                Headline.MARGIN + ice.width() + LEGEND_GAP,
                headline.height() + NAMES + LEGEND_GAP,
                LEGEND_WIDTH - LEGEND_GAP);
    int height = (int) Math.ceil(Math.max(below, legend.bottom()) + Headline.MARGIN);
    return Easel.picture(
        new Easel.TextAlternative(
            shown + ": map of releases short of center", description(note, counts)),
        new Easel.Size(WIDTH, height),
        Theme.BOOK.grid(),
        g -> {
          headline.draw(g, Theme.BOOK);
          ice.draw(g);
          names(g, ice, rink, headline.height() + NAMES - 6);
          marks(g, ice, profile);
          if (profile.marks().isEmpty()) {
            empty(g, ice, headline.height() + NAMES + ice.height() / 2, profile);
          }
          legend.draw(g, Theme.BOOK);
        });
  }

  private static String note(Profile profile) {
    int all = Math.max(profile.releases().trials(), profile.marks().size());
    String n = "n = " + all + (all == 1 ? " release" : " releases") + " short of center";
    int placed = profile.marks().size();
    return placed == all ? n : n + ", " + placed + " of them with a place in these sheets";
  }

  private static Map<MarkOutcome, Integer> counts(Profile profile) {
    Map<MarkOutcome, Integer> counts = new EnumMap<>(MarkOutcome.class);
    for (MarkOutcome outcome : MarkOutcome.values()) {
      counts.put(
          outcome, (int) profile.marks().stream().filter(m -> m.outcome() == outcome).count());
    }
    return counts;
  }

  private static String description(String note, Map<MarkOutcome, Integer> counts) {
    return counts.entrySet().stream()
        .map(e -> MarkLegend.label(e.getKey(), e.getValue()))
        .collect(Collectors.joining("; ", note + ". ", "."));
  }

  /** Outcomes in turn from the last to the first, so that the iced ones lie on top. */
  private static void marks(Graphics2D g, RinkDrawing ice, Profile profile) {
    List<MarkOutcome> outcomes = List.of(MarkOutcome.values());
    for (int i = outcomes.size() - 1; i >= 0; i--) {
      MarkOutcome outcome = outcomes.get(i);
      Stream<Mark> ofOutcome = profile.marks().stream().filter(m -> m.outcome() == outcome);
      ofOutcome.forEach(
          m -> {
            Point2D at = ice.at(m.place().x(), m.place().y());
            if (profile.marks().size() > MANY) {
              MarkLook.drawAmongMany(g, outcome, at);
            } else {
              MarkLook.draw(g, outcome, at);
            }
          });
    }
  }

  private static void names(Graphics2D g, RinkDrawing ice, Rink rink, double y) {
    g.setFont(Lettering.plain(11));
    g.setColor(Theme.BOOK.quiet());
    centered(g, "own goal line", ice.px(-rink.goalLine()), y);
    centered(g, "own blue line", ice.px(-rink.blueLineNeutralEdge() - rink.blueLineWidth() / 2), y);
    centered(g, "red line", ice.px(0), y);
  }

  private static void centered(Graphics2D g, String text, double x, double y) {
    g.drawString(text, (float) (x - Lettering.width(g.getFont(), text) / 2), (float) y);
  }

  private static void empty(Graphics2D g, RinkDrawing ice, double y, Profile profile) {
    String text =
        profile.releases().trials() == 0
            ? "no releases short of center in these sheets"
            : "these sheets do not say where";
    Font font = Lettering.bold(15);
    double middle = Headline.MARGIN + ice.width() / 2;
    double half = Lettering.width(font, text) / 2 + 10;
    g.setColor(Color.WHITE);
    g.fill(new Rectangle2D.Double(middle - half, y - 22, 2 * half, 34));
    g.setFont(font);
    g.setColor(Theme.BOOK.ink());
    centered(g, text, middle, y);
  }
}
