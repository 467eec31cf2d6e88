package twostrides.book.chart;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import twostrides.rink.Place;
import twostrides.rink.Rink;

/**
 * A zone of the defending half.
 *
 * @param depth how far up ice
 * @param side which third across
 */
public record ZoneCell(Depth depth, Side side) {

  /** Metres before center: two strides. Assumed. */
  private static final double LAST_STRIDES = 3.5;

  /** How far up ice. */
  public enum Depth {
    /** From the end boards to the face-off dots. */
    BEHIND_DOTS("behind the dots"),
    /** From the dots to the neutral edge of the blue line. */
    DOTS_TO_BLUE("dots to blue line"),
    /** From the blue line to the last strides. */
    BLUE_LINE_ON("blue line on"),
    /** The last strides before the red line. */
    LAST_STRIDES("last strides");

    private final String words;

    Depth(String words) {
      this.words = words;
    }

    /** Metres from center ice to the end of it that is nearer to center, 0 or less. */
    private double near(Rink rink) {
      return switch (this) {
        case BEHIND_DOTS -> -rink.endSpotX();
        case DOTS_TO_BLUE -> -rink.blueLineNeutralEdge();
        case BLUE_LINE_ON -> -ZoneCell.LAST_STRIDES;
        case LAST_STRIDES -> 0;
      };
    }
  }

  /** A third of the width, seen up ice. */
  public enum Side {
    /** At the left boards. */
    LEFT("left"),
    /** The middle. */
    MIDDLE("middle"),
    /** At the right boards. */
    RIGHT("right");

    private final String words;

    Side(String words) {
      this.words = words;
    }
  }

  /**
   * The zone of a place; places past center count to the last strides.
   *
   * @param place frame of the team that sends the puck
   * @param rink its lengths
   */
  public static ZoneCell of(Place place, Rink rink) {
    Depth depth = Depth.BEHIND_DOTS;
    for (Depth d : Depth.values()) {
      depth = d;
      if (place.x() <= d.near(rink)) {
        break;
      }
    }
    double third = rink.width() / 6;
    Side side = place.y() > third ? Side.LEFT : place.y() < -third ? Side.RIGHT : Side.MIDDLE;
    return new ZoneCell(depth, side);
  }

  /** For example "behind the dots, left". */
  String words() {
    return depth.words + ", " + side.words;
  }

  /** Metres from center ice to the end of it that is farther from center. */
  private double far(Rink rink) {
    return depth.ordinal() == 0
        ? -rink.length() / 2
        : Depth.values()[depth.ordinal() - 1].near(rink);
  }

  /** Where it lies on a drawing, pixels. */
  Rectangle2D box(Ice ice) {
    double third = ice.rink().width() / 3;
    double right = third * (0.5 - side.ordinal());
    Point2D a = ice.at(far(ice.rink()), right);
    Rectangle2D box = new Rectangle2D.Double(a.getX(), a.getY(), 0, 0);
    box.add(ice.at(depth.near(ice.rink()), right + third));
    return box;
  }

  /** Fills it, round where the boards are. */
  void draw(Sketch s, Ice ice) {
    Rink rink = ice.rink();
    double near = depth.near(rink);
    if (depth != Depth.BEHIND_DOTS || side == Side.MIDDLE) {
      Rectangle2D box = box(ice);
      s.rect("trouble", box.getX(), box.getY(), box.getWidth(), box.getHeight());
      return;
    }
    int hand = side == Side.LEFT ? 1 : -1;
    double boards = hand * rink.width() / 2;
    double round = rink.cornerRadius();
    double end = -rink.length() / 2;
    double r = round * ice.scale();
    s.path(
        "trouble",
        "M",
        ice.at(near, boards),
        "L",
        ice.at(end + round, boards),
        "A",
        r,
        r,
        0,
        0,
        side == Side.LEFT ? 0 : 1,
        ice.at(end, boards - hand * round),
        "L",
        ice.at(end, boards / 3),
        "L",
        ice.at(near, boards / 3),
        "Z");
  }

  /**
   * The names of the depths: under the rink, or at its left where the attack goes up.
   *
   * @return pixels, where they end
   */
  static double names(Sketch s, Ice ice) {
    for (Depth depth : Depth.values()) {
      Rectangle2D box = new ZoneCell(depth, Side.RIGHT).box(ice);
      double room = s.narrow() ? ice.left() - 6 : Math.max(box.getWidth() - 4, 44);
      List<String> lines = Lettering.lines(depth.words, Type.NOTE, room, 3);
      if (s.narrow()) {
        double middle = box.getCenterY() + 10 - lines.size() * Type.NOTE.leading() / 2;
        s.lines(Type.NOTE, lines, 0, middle);
      } else {
        s.centered(Type.NOTE, lines, box.getCenterX(), ice.bottom() + 17);
      }
    }
    return ice.bottom() + s.either(38, 6);
  }
}
