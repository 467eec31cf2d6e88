package twostrides.book.chart;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import twostrides.rink.Lane;
import twostrides.rink.Place;
import twostrides.rink.Rink;

/**
 * A zone of the defending half.
 *
 * @param depth how far up ice
 * @param lane in which lane
 */
public record ZoneCell(Depth depth, Lane lane) {

  /** Metres before center: two strides. Assumed. */
  private static final double LAST_STRIDES = 3.5;

  /** How far up ice. */
  public enum Depth {
    /** From the end boards to the face-off dots. */
    BEHIND_THE_DOTS,
    /** From the dots to the neutral edge of the blue line. */
    DOTS_TO_BLUE_LINE,
    /** From the blue line to the last strides. */
    BLUE_LINE_ON,
    /** The last strides before the red line. */
    LAST_STRIDES;

    /** For example "behind the dots". */
    public String words() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Metres from center ice to the end of it that is nearer to center, 0 or less. */
    private double near(Rink rink) {
      return switch (this) {
        case BEHIND_THE_DOTS -> -rink.endSpotX();
        case DOTS_TO_BLUE_LINE -> -rink.blueLineNeutralEdge();
        case BLUE_LINE_ON -> -ZoneCell.LAST_STRIDES;
        case LAST_STRIDES -> 0;
      };
    }
  }

  /**
   * The zone of a place; places past center count to the last strides.
   *
   * @param place frame of the team that sends the puck
   * @param rink its lengths
   */
  public static ZoneCell of(Place place, Rink rink) {
    Depth depth = Depth.BEHIND_THE_DOTS;
    for (Depth d : Depth.values()) {
      depth = d;
      if (place.x() <= d.near(rink)) {
        break;
      }
    }
    return new ZoneCell(depth, rink.lane(place.y()));
  }

  /** For example "behind the dots, left". */
  String words() {
    return depth.words() + ", " + lane.word();
  }

  /** Metres. */
  private Rectangle2D metres(Rink rink) {
    double far =
        switch (depth) {
          case BEHIND_THE_DOTS -> -rink.length() / 2;
          case DOTS_TO_BLUE_LINE -> Depth.BEHIND_THE_DOTS.near(rink);
          case BLUE_LINE_ON -> Depth.DOTS_TO_BLUE_LINE.near(rink);
          case LAST_STRIDES -> Depth.BLUE_LINE_ON.near(rink);
        };
    double third = rink.width() / 3;
    double right =
        switch (lane) {
          case LEFT -> third / 2;
          case MIDDLE -> -third / 2;
          case RIGHT -> -1.5 * third;
        };
    return new Rectangle2D.Double(far, right, depth.near(rink) - far, third);
  }

  /** Where it lies on a drawing, pixels. */
  Rectangle2D box(Ice ice) {
    return ice.onPage(metres(ice.rink())).getBounds2D();
  }

  /** Fills it, round where the boards are. */
  void draw(Sketch s, Ice ice) {
    ice.fill(s, "trouble", metres(ice.rink()));
  }

  /**
   * The names of the depths: under the rink, or at its left where the attack goes up.
   *
   * @return pixels, where they end
   */
  static double names(Sketch s, Ice ice) {
    for (Depth depth : Depth.values()) {
      Rectangle2D box = new ZoneCell(depth, Lane.RIGHT).box(ice);
      double room = s.narrow() ? ice.bounds().getX() - 6 : Math.max(box.getWidth() - 4, 44);
      List<String> lines = Lettering.lines(depth.words(), Type.NOTE, room, 3);
      if (s.narrow()) {
        double middle = box.getCenterY() + 10 - lines.size() * Type.NOTE.leading() / 2;
        s.lines(Type.NOTE, lines, 0, middle);
      } else {
        s.centered(Type.NOTE, lines, box.getCenterX(), ice.bounds().getMaxY() + 17);
      }
    }
    return ice.bounds().getMaxY() + s.either(38, 6);
  }
}
