package twostrides.book.chart;

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
  /** A shot that went in. */
  SCORED("scored"),
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

  void draw(Sketch s, double x, double y) {
    switch (this) {
      case STOPPED -> s.mark("quiet", x, y, "m0 -5l5 5l-5 5l-5 -5z");
      case SCORED -> s.mark("bought edged", x, y, "m-2 -6h4v4h4v4h-4v4h-4v-4h-4v-4h4z");
      case OWN_NEXT -> s.rect("bought edged", x - 4.5, y - 4.5, 9, 9);
      case OPPONENT_NEXT -> s.circle("hollow", x, y, 5);
      case OTHER_FACE_OFF -> s.mark("trouble-line", x, y, "m0 -5l5 9h-10z");
      case ICED -> s.circle("trouble ringed", x, y, 4.5);
      case LOOK_FIRST -> s.mark("hollow", x, y, "m0 -6l6 11h-12z");
      case FLAGGED ->
          s.mark(
              "trouble edged",
              x,
              y,
              "m0 -8l2.5 5.5l5.5 2.5l-5.5 2.5l-2.5 5.5l-2.5 -5.5l-5.5 -2.5l5.5 -2.5z");
    }
    s.rect("hit", x - REACH, y - REACH, 2 * REACH, 2 * REACH);
  }
}
