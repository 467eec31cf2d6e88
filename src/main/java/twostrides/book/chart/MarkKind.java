package twostrides.book.chart;

import java.util.stream.Stream;

/**
 * How a puck sent before the red line is marked on the ice, in the order drawn: the later lies on
 * top. Each has a shape of its own; the colour says it again.
 */
public enum MarkKind {
  /** Play stopped elsewhere, or the sheet does not say. */
  STOPPED("play stopped, or not in the sheet"),
  /** The own team touched it next. */
  OWN_NEXT("own team had it next"),
  /** The opponent touched it next. */
  OPPONENT_NEXT("opponent had it next"),
  /** The next face-off was in the own zone for another or an unknown reason. */
  OTHER_FACE_OFF("other defensive-zone face-off"),
  /** Icing. */
  ICED("iced"),
  /** An icing that nobody can judge from the sheet: to be looked at on the video. */
  LOOK_FIRST("look at these first"),
  /** An icing that need not have been. */
  FLAGGED("flagged: there was time to gain the red line");

  /** Pixels from the middle of a mark that it takes at most. */
  static final double REACH = 8;

  private final String words;

  MarkKind(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }

  /** Draws a mark; {@code size} is 1 for its full size. */
  void draw(Sketch s, double x, double y, double size) {
    double r = 5 * size;
    switch (this) {
      case STOPPED -> s.path("quiet", "M", x, y - r, "l", r, r, "l", -r, r, "l", -r, -r, "Z");
      case OWN_NEXT -> s.rect("bought edged", x - 0.9 * r, y - 0.9 * r, 1.8 * r, 1.8 * r);
      case OPPONENT_NEXT -> s.circle("hollow", x, y, r);
      case OTHER_FACE_OFF -> triangle(s, "trouble-line", x, y, r);
      case ICED -> s.circle("trouble ringed", x, y, 0.95 * r);
      case LOOK_FIRST -> triangle(s, "hollow", x, y, 1.2 * r);
      case FLAGGED -> star(s, x, y, 1.6 * r);
    }
    s.rect("hit", x - REACH, y - REACH, 2 * REACH, 2 * REACH);
  }

  private static void triangle(Sketch s, String css, double x, double y, double r) {
    s.path(css, "M", x, y - r, "l", r, 1.8 * r, "h", -2 * r, "Z");
  }

  /** A star of four points: nothing else on the ice has its outline. */
  private static void star(Sketch s, double x, double y, double reach) {
    double in = 0.32 * reach;
    double out = reach - in;
    Object[] right = {"M", x, y - reach, "l", in, out, "l", out, in, "l", -out, in};
    Object[] left = {"l", -in, out, "l", -in, -out, "l", -out, -in, "l", out, -in, "Z"};
    s.path("trouble edged", Stream.concat(Stream.of(right), Stream.of(left)).toArray());
  }
}
