package twostrides.rink;

import java.util.List;
import java.util.Optional;

/**
 * The lengths of one rink, in metres. Every rule and drawing takes its lengths from here.
 *
 * <p>The frame has its origin at center ice; lines lie at the same distance on both sides. A line
 * has a width: {@link #blueLineNeutralEdge} is the edge of the blue line that faces center, {@link
 * #redLineHalfWidth} half the width of the red line.
 *
 * @param name short name used in sheet maps and on pages
 * @param length end boards to end boards
 * @param width side boards to side boards
 * @param cornerRadius radius of the rounded corners
 * @param goalLine center to the goal line
 * @param blueLineNeutralEdge center to the neutral-side edge of the blue line
 * @param blueLineWidth width of the blue line
 * @param redLineHalfWidth half the width of the red line
 * @param goalLineWidth width of the goal line
 * @param endSpotX center to the end-zone face-off spots, along the rink
 * @param endSpotY long axis to the end-zone face-off spots
 * @param neutralSpotX center to the neutral-zone face-off spots, along the rink
 * @param circleRadius radius of the face-off circles
 * @param goalWidth width of the goal mouth
 */
public record Rink(
    String name,
    double length,
    double width,
    double cornerRadius,
    double goalLine,
    double blueLineNeutralEdge,
    double blueLineWidth,
    double redLineHalfWidth,
    double goalLineWidth,
    double endSpotX,
    double endSpotY,
    double neutralSpotX,
    double circleRadius,
    double goalWidth) {

  /** Radius of the puck in metres: 3 inches across (rule text, shared by all books read). */
  public static final double PUCK_RADIUS = 0.0381;

  /**
   * The 200 by 85 foot rink. Source: NHL Rule 1 (1.2, 1.5, 1.9) as cited in the project's reference
   * notes, graded secondary; that the 75 ft from the boards run to the neutral-side edge follows
   * from the 50 ft neutral zone (derived). Goal mouth 6 ft: from memory.
   */
  public static final Rink NORTH_AMERICAN =
      new Rink(
          "nhl", ft(200), ft(85), ft(28), ft(89), ft(25), ft(1), ft(0.5), ft(1) / 6, ft(69), ft(22),
          ft(20), ft(15), ft(6));

  /**
   * The 60 by 30 m rink. Source: IIHF Official Rule Book 2023/24 rule 1 (length, corner radius:
   * read on the page) and 2025/26 rule 1 (goal line, blue line, spots: secondary). The book allows
   * 26 to 30 m of width; 30 is assumed. Goal mouth 1.83 m: from memory.
   */
  public static final Rink INTERNATIONAL =
      new Rink("iihf", 60.0, 30.0, 8.5, 26.0, 7.5, 0.30, 0.15, 0.05, 20.0, 7.0, 6.0, 4.5, 1.83);

  /** Both, by which names they go. */
  public static final List<Rink> ALL = List.of(NORTH_AMERICAN, INTERNATIONAL);

  /** Checks that the lines lie in order and inside the boards. */
  public Rink {
    boolean ordered =
        0 < redLineHalfWidth
            && redLineHalfWidth < neutralSpotX
            && neutralSpotX < blueLineNeutralEdge
            && blueLineNeutralEdge + blueLineWidth < endSpotX
            && endSpotX < goalLine
            && goalLine < length / 2
            && endSpotY < width / 2
            && cornerRadius < width / 2;
    if (!ordered) {
      throw new IllegalArgumentException(
          "rink "
              + name
              + ": from center outward there must lie red line, neutral spots, blue line, end-zone spots,"
              + " goal line, end boards");
    }
  }

  /**
   * The rink of a name.
   *
   * @param name such as nhl
   */
  public static Optional<Rink> named(String name) {
    return ALL.stream().filter(r -> r.name().equals(name)).findFirst();
  }

  private static double ft(double feet) {
    return Units.FOOT.toMetres(feet);
  }

  /** Long axis to where the goal line meets the boards, in metres. */
  public double goalLineHalf() {
    double into = goalLine - (length / 2 - cornerRadius);
    return into <= 0
        ? width / 2
        : width / 2 - cornerRadius + Math.sqrt(cornerRadius * cornerRadius - into * into);
  }

  /**
   * How far short of gaining center a puck was let go: from the puck's near side to the near edge
   * of the red line, in metres. Zero or less means the puck touched the line or was past it.
   *
   * @param x place of the puck in metres, acting team's frame
   */
  public double shortOfCenter(double x) {
    return -redLineHalfWidth - PUCK_RADIUS - x;
  }

  /**
   * Whether a place lies in the acting team's own zone: the puck has left it only when it is wholly
   * past the neutral-side edge of the own blue line; a place written on the edge is still inside.
   *
   * @param x place in metres, acting team's frame
   */
  public boolean inOwnZone(double x) {
    return x <= -blueLineNeutralEdge + PUCK_RADIUS;
  }

  /**
   * The lane of a place.
   *
   * @param y place in metres, acting team's frame
   */
  public Lane lane(double y) {
    double third = width / 6;
    return y > third ? Lane.LEFT : y < -third ? Lane.RIGHT : Lane.MIDDLE;
  }

  /**
   * The zone of a place.
   *
   * @param x place in metres, acting team's frame
   */
  public Zone zone(double x) {
    if (inOwnZone(x)) {
      return Zone.OWN;
    }
    return pastFarBlueLine(x) ? Zone.ATTACKING : Zone.NEUTRAL;
  }

  /**
   * Whether a place lies past the far blue line, seen from the acting team.
   *
   * @param x place in metres, acting team's frame
   */
  public boolean pastFarBlueLine(double x) {
    return x > blueLineNeutralEdge;
  }
}
