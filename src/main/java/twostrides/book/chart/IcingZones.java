package twostrides.book.chart;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import twostrides.rates.Count;
import twostrides.rink.Place;
import twostrides.rink.Rink;

/**
 * Where icings come from: the defending half of the rink in zones, each with the share of the pucks
 * sent from there that were iced, and the icings themselves as marks.
 *
 * @param title what is shown; any text
 * @param rink its lengths
 * @param zones in any order; a zone that is not given is left empty
 * @param icings as marks
 */
public record IcingZones(String title, Rink rink, List<Zone> zones, List<Icing> icings) {

  /** Metres shown past center: enough to see the red line as a line. Assumed. */
  private static final double PAST_CENTER = 0.6;

  /** Hundredths of the colour's strength at no icing and at the highest share shown. */
  private static final int PALEST = 4;

  private static final int STRONGEST = 52;

  /** Copies the lists. */
  public IcingZones {
    zones = List.copyOf(zones);
    icings = List.copyOf(icings);
  }

  /**
   * One zone.
   *
   * @param cell which
   * @param iced icings of the pucks sent from there
   * @param link to its rows
   */
  public record Zone(ZoneCell cell, Count iced, Link link) {}

  /**
   * One icing.
   *
   * @param from where the puck was sent from, frame of the team that sent it
   * @param kind how it looks
   * @param link its row or its clip
   */
  public record Icing(Place from, IcingKind kind, Link link) {}

  /**
   * Draws it.
   *
   * @param id beginning of its ids, unique on its page: a-z, 0-9 and hyphens
   */
  public Picture picture(String id) {
    return Picture.of(new Caption(id, title, description()), this::draw);
  }

  private String description() {
    String each =
        zones.stream()
            .map(z -> z.cell.words() + ": " + Words.said(z.iced, z.iced.wilson()))
            .collect(Collectors.joining("; "));
    return "Iced of the pucks sent before the red line. " + each + ". " + marks() + ".";
  }

  private String marks() {
    List<String> counts = new ArrayList<>();
    for (IcingKind kind : IcingKind.values()) {
      long n = icings.stream().filter(i -> i.kind == kind).count();
      counts.add(kind.words() + ": " + Words.whole(n));
    }
    return String.join("; ", counts);
  }

  private double draw(Sketch s) {
    double names = s.either(0, 62);
    double most = s.either(500, s.width() - names - 1);
    double along = rink.length() / 2 + PAST_CENTER;
    Ice ice =
        new Ice(rink, names + 1, 20, most / s.either(along, rink.width()), PAST_CENTER, s.narrow());
    ice.draw(s);
    double highest = zones.stream().mapToDouble(z -> z.iced.share().orElse(0)).max().orElse(0);
    List<Rectangle2D> plates = new ArrayList<>();
    for (Zone zone : zones) {
      s.linked(zone.link, () -> plates.add(zone(s, ice, zone, highest)));
    }
    for (IcingKind kind : IcingKind.values()) {
      icings.stream().filter(i -> i.kind == kind).forEach(i -> mark(s, ice, i, plates));
    }
    lineNames(s, ice);
    double bottom = depthNames(s, ice);
    return legend(s, ice, bottom);
  }

  private Rectangle2D zone(Sketch s, Ice ice, Zone zone, double highest) {
    double share = zone.iced.share().orElse(0);
    boolean said = !zone.iced.tooFew() && highest > 0;
    int tint = said ? (int) Math.round(PALEST + (STRONGEST - PALEST) * share / highest) : 0;
    Rectangle2D box = zone.cell.box(ice);
    s.tint("trouble", tint, box.getX(), box.getY(), box.getWidth(), box.getHeight());
    s.rect("fence", box.getX(), box.getY(), box.getWidth(), box.getHeight());
    double room = box.getWidth() - 4;
    String words = Words.share(zone.iced);
    Type type = Type.NUMBER.width(words) <= room ? Type.NUMBER : Type.STRONG;
    List<String> number = Lettering.lines(words, type, room, 2);
    List<String> count = Lettering.lines(Words.counted(zone.iced), Type.NOTE, room, 3);
    double height = number.size() * type.leading() + count.size() * Type.NOTE.leading();
    double width = Math.max(type.widest(number), Type.NOTE.widest(count)) + 8;
    double top = box.getCenterY() - height / 2;
    Rectangle2D plate =
        new Rectangle2D.Double(box.getCenterX() - width / 2, top - 1, width, height + 3);
    s.rect("plate", plate.getX(), plate.getY(), plate.getWidth(), plate.getHeight());
    double y = top + type.size() - 2;
    for (String line : number) {
      s.text(type, Sketch.Anchor.MIDDLE, line, box.getCenterX(), y);
      y += type.leading();
    }
    y = top + number.size() * type.leading() + Type.NOTE.size() - 1;
    for (String line : count) {
      s.text(Type.NOTE, Sketch.Anchor.MIDDLE, line, box.getCenterX(), y);
      y += Type.NOTE.leading();
    }
    return plate;
  }

  private static void mark(Sketch s, Ice ice, Icing icing, List<Rectangle2D> plates) {
    Point2D at = ice.at(icing.from);
    for (Rectangle2D plate : plates) {
      if (plate.contains(at)) {
        at = beside(plate, at);
      }
    }
    Point2D place = at;
    s.linked(icing.link, () -> icing.kind.draw(s, place.getX(), place.getY()));
  }

  /** A number stays readable: a mark that would lie on it is moved to its left or right side. */
  private static Point2D beside(Rectangle2D plate, Point2D at) {
    boolean left = at.getX() < plate.getCenterX();
    double x = left ? plate.getMinX() - IcingKind.REACH : plate.getMaxX() + IcingKind.REACH;
    return new Point2D.Double(x, at.getY());
  }

  private void lineNames(Sketch s, Ice ice) {
    if (s.narrow()) {
      s.text(Type.NOTE, Sketch.Anchor.MIDDLE, "red line", ice.left() + ice.width() / 2, 14);
    } else {
      double goal = ice.at(-rink.goalLine(), 0).getX();
      s.text(Type.NOTE, "own goal line", Math.max(0, goal - 40), 14);
      s.text(Type.NOTE, Sketch.Anchor.END, "red line", ice.left() + ice.width(), 14);
    }
  }

  /** The names of the depths: under the rink, or at its left where the attack goes up. */
  private static double depthNames(Sketch s, Ice ice) {
    for (ZoneCell.Depth depth : ZoneCell.Depth.values()) {
      Rectangle2D box = new ZoneCell(depth, ZoneCell.Side.RIGHT).box(ice);
      double room = s.narrow() ? ice.left() - 6 : Math.max(box.getWidth() - 4, 44);
      List<String> lines = Lettering.lines(depth.words(), Type.NOTE, room, 3);
      double y =
          s.narrow()
              ? box.getCenterY() + 10 - lines.size() * Type.NOTE.leading() / 2
              : ice.bottom() + 17;
      for (String line : lines) {
        Sketch.Anchor anchor = s.narrow() ? Sketch.Anchor.START : Sketch.Anchor.MIDDLE;
        s.text(Type.NOTE, anchor, line, s.narrow() ? 0 : box.getCenterX(), y);
        y += Type.NOTE.leading();
      }
    }
    return ice.bottom() + s.either(50, 14);
  }

  private double legend(Sketch s, Ice ice, double bottom) {
    List<IcingKind> seen = List.of(IcingKind.values());
    double left = s.narrow() ? 0 : ice.left() + ice.width() + 24;
    double y = s.narrow() ? bottom : ice.top() + 12;
    double room = s.width() - left - 22;
    String intro = "Of the pucks sent from a zone before the red line: how many were iced.";
    y = s.lines(Type.WORDS, Lettering.lines(intro, Type.WORDS, room + 22, 4), left, y + 8) + 10;
    for (IcingKind kind : seen) {
      long n = icings.stream().filter(i -> i.kind == kind).count();
      if (n > 0) {
        String words = String.format(Locale.ROOT, "%s (%,d)", kind.words(), n);
        kind.draw(s, left + 8, y - 4);
        y = s.lines(Type.WORDS, Lettering.lines(words, Type.WORDS, room, 3), left + 22, y) + 8;
      }
    }
    return Math.max(bottom, y - 4);
  }
}
