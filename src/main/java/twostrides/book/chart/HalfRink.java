package twostrides.book.chart;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.stats.Count;

/**
 * The defending half of a rink: where icings come from, as zones with the share of the pucks sent
 * from there that were iced, and single pucks as marks. Without zones it is the map of a player's
 * pucks sent before the red line. The team attacks to the right, in the narrow form upwards.
 *
 * @param title what is shown; any text
 * @param rink its lengths
 * @param note what is counted, in a sentence; any text
 * @param zones in any order; a zone that is not given is left empty
 * @param marks on top
 */
public record HalfRink(String title, Rink rink, String note, List<Zone> zones, List<Mark> marks) {

  /** Metres shown past center: enough to see the red line as a line. Assumed. */
  private static final double PAST_CENTER = 0.8;

  /** Hundredths of the colour's strength at no icing and at the highest share shown. */
  private static final int PALEST = 4;

  private static final int STRONGEST = 52;

  /** Copies the lists. */
  public HalfRink {
    zones = List.copyOf(zones);
    marks = List.copyOf(marks);
  }

  /**
   * One zone.
   *
   * @param cell which
   * @param iced icings of the pucks sent from there
   * @param rows where these icings are listed, if anywhere
   */
  public record Zone(ZoneCell cell, Count iced, Optional<String> rows) {
    private Link link() {
      return new Link(rows, words());
    }

    private String words() {
      return cell.words() + ": " + Words.said(iced, iced.wilson());
    }
  }

  /**
   * One puck.
   *
   * @param from where it was sent from, frame of the team that sent it
   * @param kind how it looks
   * @param link its row or its clip
   */
  public record Mark(Place from, MarkKind kind, Link link) {}

  /**
   * Draws it.
   *
   * @param id beginning of its ids, unique on its page: a-z, 0-9 and hyphens
   */
  public Picture picture(String id) {
    return Picture.of(caption(id), this::draw);
  }

  /**
   * The map for a page to be printed: the rink upright, and under it, in the page's own letters,
   * what came of the pucks. Its marks lead nowhere.
   *
   * @param id beginning of its ids, unique on its page: a-z, 0-9 and hyphens
   */
  public String paper(String id) {
    StringBuilder kinds = new StringBuilder();
    for (MarkKind kind : seen()) {
      kinds
          .append("<li>")
          .append(Form.of(Form.MARK, s -> mark(s, kind)).sign())
          .append(Lettering.escaped(counted(kind)))
          .append("</li>");
    }
    return Form.of(Form.PAPER, this::upright).paper(caption(id))
        + ("<figcaption>" + Lettering.escaped(title) + " (at the top):<ul>" + kinds)
        + "</ul></figcaption>\n";
  }

  private static double mark(Sketch s, MarkKind kind) {
    kind.draw(s, MarkKind.REACH + 1, MarkKind.REACH + 1);
    return s.width();
  }

  private Caption caption(String id) {
    List<String> each = new ArrayList<>();
    zones.forEach(z -> each.add(z.words()));
    seen().forEach(k -> each.add(counted(k)));
    String description = each.isEmpty() ? note : note + " " + String.join("; ", each) + ".";
    return new Caption(id, title, description);
  }

  /** Kinds that occur, what lies on top first. */
  private List<MarkKind> seen() {
    return marks.stream().map(Mark::kind).distinct().sorted((a, b) -> b.compareTo(a)).toList();
  }

  private String counted(MarkKind kind) {
    long n = marks.stream().filter(m -> m.kind == kind).count();
    return String.format(Locale.ROOT, "%s (%,d)", kind.words(), n);
  }

  private double draw(Sketch s) {
    double names = zones.isEmpty() ? 1 : s.either(1, 62);
    double most = s.either(500, s.width() - names - 1);
    Ice ice = Ice.of(rink, PAST_CENTER, names, 20, most, s.narrow());
    ice.ground(s);
    double highest = zones.stream().mapToDouble(z -> z.iced.share().orElse(0)).max().orElse(0);
    zones.forEach(z -> s.tinted(tint(z.iced, highest), () -> z.cell.draw(s, ice)));
    ice.lines(s);
    List<Rectangle2D> plates = new ArrayList<>();
    zones.forEach(z -> s.linked(z.link(), () -> plates.add(words(s, ice, z))));
    marks(s, ice, plates);
    double red = s.either(ice.bounds().getMaxX(), ice.bounds().getCenterX());
    s.inside(Type.NOTE, "red line", red, 14, 0, ice.bounds().getMaxX());
    double bottom = zones.isEmpty() ? ice.bounds().getMaxY() + 4 : ZoneCell.names(s, ice);
    double left = s.either(ice.bounds().getMaxX() + 24, 0);
    double room = s.width() - left;
    List<String> intro = Lettering.lines(note, Type.WORDS, room, 5);
    double y = s.lines(Type.WORDS, intro, left, s.either(20, bottom) + 14) + 10;
    return Math.max(bottom, legend(s, left, y));
  }

  private double upright(Sketch s) {
    Ice ice = Ice.of(rink, PAST_CENTER, 8, 8, s.width() - 16, true);
    ice.ground(s);
    ice.lines(s);
    marks(s, ice, List.of());
    return ice.bounds().getMaxY() + 8;
  }

  private void marks(Sketch s, Ice ice, List<Rectangle2D> plates) {
    for (MarkKind kind : MarkKind.values()) {
      marks.stream().filter(m -> m.kind == kind).forEach(m -> mark(s, ice, m, plates));
    }
  }

  private static int tint(Count iced, double highest) {
    double share = iced.tooFew() || highest == 0 ? 0 : iced.share().orElse(0) / highest;
    return (int) Math.round(PALEST + (STRONGEST - PALEST) * share);
  }

  /** Share and count in the middle of a zone, on a plate; gives where no mark may lie. */
  private static Rectangle2D words(Sketch s, Ice ice, Zone zone) {
    Rectangle2D box = zone.cell.box(ice);
    s.rect("hit", box.getX(), box.getY(), box.getWidth(), box.getHeight());
    double room = box.getWidth() - 4;
    String share = Words.share(zone.iced);
    Type type = Type.NUMBER.width(share) <= room ? Type.NUMBER : Type.STRONG;
    List<String> number = Lettering.lines(share, type, room, 2);
    List<String> count = Lettering.lines(Words.counted(zone.iced), Type.NOTE, room, 3);
    double height = number.size() * type.leading() + count.size() * Type.NOTE.leading();
    double width = Math.max(type.widest(number), Type.NOTE.widest(count)) + 8;
    double top = box.getCenterY() - height / 2;
    double left = box.getCenterX() - width / 2;
    s.rect("plate", left, top - 1, width, height + 3);
    double next = s.centered(type, number, box.getCenterX(), top + type.size() - 2);
    double beneath = next - type.size() + Type.NOTE.size() + 1;
    s.centered(Type.NOTE, count, box.getCenterX(), beneath);
    double beside = MarkKind.REACH - 2;
    return new Rectangle2D.Double(
        left - beside, top - 1 - beside, width + 2 * beside, height + 3 + 2 * beside);
  }

  /**
   * A number stays readable: a mark that would lie on it is moved beside it, where zones have room.
   */
  private static void mark(Sketch s, Ice ice, Mark mark, List<Rectangle2D> plates) {
    Point2D at = ice.at(mark.from);
    for (Rectangle2D plate : plates) {
      if (plate.contains(at) && s.narrow()) {
        boolean left = at.getX() < plate.getCenterX();
        at.setLocation(left ? plate.getMinX() : plate.getMaxX(), at.getY());
      } else if (plate.contains(at)) {
        boolean upper = at.getY() < plate.getCenterY();
        at.setLocation(at.getX(), upper ? plate.getMinY() : plate.getMaxY());
      }
    }
    s.linked(mark.link, () -> mark.kind.draw(s, at.getX(), at.getY()));
  }

  /** Every kind of mark with its count under each other; gives where they end. */
  private double legend(Sketch s, double left, double top) {
    double y = top;
    for (MarkKind kind : seen()) {
      kind.draw(s, left + 9, y - 4);
      List<String> words = Lettering.lines(counted(kind), Type.WORDS, s.width() - left - 26, 3);
      y = s.lines(Type.WORDS, words, left + 26, y) + 8;
    }
    return y - 8;
  }
}
