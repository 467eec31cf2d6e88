package twostrides.book.chart;

/** How an icing is marked on the ice, in the order drawn: the later lies on top. */
public enum IcingKind {
  /** An icing. */
  ICED("icing"),
  /** An icing that nobody can judge from the sheet: to be looked at on the video. */
  LOOK_FIRST("look at these first"),
  /** An icing that need not have been: there was time to gain the red line. */
  FLAGGED("flagged: there was time to gain the red line");

  /** Pixels from the middle of a mark that it takes at most. */
  static final double REACH = 8;

  private final String words;

  IcingKind(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }

  void draw(Sketch s, double x, double y) {
    switch (this) {
      case ICED -> s.circle("trouble ringed", x, y, 3);
      case LOOK_FIRST -> s.path("hollow", "M", x - 6, y + 5, "h", 12, "l", -6, -11, "Z");
      case FLAGGED -> star(s, x, y, REACH);
    }
    s.rect("hit", x - REACH, y - REACH, 2 * REACH, 2 * REACH);
  }

  /** A star of four points: nothing else on the ice has its outline. */
  static void star(Sketch s, double x, double y, double reach) {
    double in = 0.32 * reach;
    double out = reach - in;
    s.path(
        "trouble edged",
        "M",
        x,
        y - reach,
        "l",
        in,
        out,
        "l",
        out,
        in,
        "l",
        -out,
        in,
        "l",
        -in,
        out,
        "l",
        -in,
        -out,
        "l",
        -out,
        -in,
        "l",
        out,
        -in,
        "Z");
  }
}
