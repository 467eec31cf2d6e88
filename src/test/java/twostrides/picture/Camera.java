package twostrides.picture;

import java.util.List;
import java.util.stream.IntStream;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.rink.RinkMark;

/**
 * A camera whose place is known, written down by its rays and by no matrix: what clicks in a
 * picture are held to. Metres, picture elements; z is up, the ice z = 0.
 *
 * @param x where it stands
 * @param y where it stands
 * @param z how high
 * @param atX what lies in the middle of its picture
 * @param atY the same across
 * @param focal its focal length in picture elements
 */
public record Camera(double x, double y, double z, double atX, double atY, double focal) {

  /** Its picture. */
  public static final int WIDTH = 1280;

  public static final int HEIGHT = 720;

  /** High in the stand at center ice, near the board side, turned to the own half. */
  public static final Camera CENTER_STAND = new Camera(0, -34, 14, -6, -1, 1300);

  /** In the stand behind a corner of the own end. */
  public static final Camera CORNER = new Camera(-40, -24, 11, -6, 2, 1150);

  /** Low at center ice, where the picture is flat. */
  public static final Camera LOW = new Camera(4, -30, 6, -7, 0, 1000);

  /** The same camera turned along the ice. */
  public Camera panned(double metres) {
    return new Camera(x, y, z, atX + metres, atY, focal);
  }

  /** Where it shows a place of the ice. */
  public Pixel shows(double px, double py) {
    return shows(px, py, 0);
  }

  /** Where it shows a point above the ice. */
  public Pixel shows(double px, double py, double pz) {
    double[] forward = unit(atX - x, atY - y, -z);
    double[] right = unit(forward[1], -forward[0], 0);
    double[] down = {
      forward[1] * right[2] - forward[2] * right[1],
      forward[2] * right[0] - forward[0] * right[2],
      forward[0] * right[1] - forward[1] * right[0]
    };
    double[] ray = {px - x, py - y, pz - z};
    double far = dot(ray, forward);
    if (far <= 0) {
      throw new IllegalArgumentException("behind the camera: " + px + ", " + py);
    }
    return new Pixel(
        WIDTH / 2.0 + focal * dot(ray, right) / far, HEIGHT / 2.0 + focal * dot(ray, down) / far);
  }

  /** Whether a place lies in front of it and in its picture. */
  public boolean sees(double px, double py) {
    double[] forward = unit(atX - x, atY - y, -z);
    if (dot(new double[] {px - x, py - y, -z}, forward) <= 1) {
      return false;
    }
    Pixel p = shows(px, py);
    return p.u() > 8 && p.v() > 8 && p.u() < WIDTH - 8 && p.v() < HEIGHT - 8;
  }

  /** The marks in its picture. */
  public List<RinkMark> marks(Rink rink) {
    return RinkMark.of(rink).stream().filter(m -> sees(m.place().x(), m.place().y())).toList();
  }

  /** The four marks that lie best in its picture, which is how somebody would choose them. */
  public List<RinkMark> wide(Rink rink) {
    List<RinkMark> seen = marks(rink);
    List<RinkMark> best = List.of();
    double most = 0;
    for (int set = 0; set < 1 << seen.size(); set++) {
      if (Integer.bitCount(set) == PictureFit.FEWEST) {
        int chosen = set;
        List<RinkMark> four =
            IntStream.range(0, seen.size())
                .filter(i -> (chosen >> i & 1) == 1)
                .mapToObj(seen::get)
                .toList();
        double spread =
            Layout.spread(
                four.stream()
                    .map(m -> shows(m.place().x(), m.place().y()))
                    .map(p -> new double[] {p.u(), p.v()})
                    .toList());
        if (spread > most) {
          most = spread;
          best = four;
        }
      }
    }
    return best;
  }

  /** A mark clicked where it is. */
  public MarkClick click(RinkMark m) {
    Place p = m.place();
    return new MarkClick(m, shows(p.x(), p.y()));
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  private static double[] unit(double a, double b, double c) {
    double length = Math.sqrt(a * a + b * b + c * c);
    return new double[] {a / length, b / length, c / length};
  }
}
