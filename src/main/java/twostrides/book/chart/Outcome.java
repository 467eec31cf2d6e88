package twostrides.book.chart;

/** What came of a puck sent before the red line, in the order drawn: the last lies on top. */
public enum Outcome {
  /** Play stopped elsewhere, or the sheet does not say. */
  STOPPED("play stopped, or not in the sheet"),
  /** The own team touched it next. */
  OWN_NEXT("own team had it next"),
  /** The opponent touched it next. */
  OPPONENT_NEXT("opponent had it next"),
  /** The next face-off was in the own zone for another or an unknown reason. */
  OTHER_RESTART("other defensive-zone face-off"),
  /** Icing. */
  ICED("iced");

  private final String words;

  Outcome(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }

  /** Whether a face-off in the own zone followed: what the map is for. */
  boolean stopsPlay() {
    return this == ICED || this == OTHER_RESTART;
  }

  /** Draws a mark; {@code size} is 1 for its full size. */
  void draw(Sketch s, double x, double y, double size) {
    double r = 5.5 * size;
    switch (this) {
      case STOPPED -> s.path("quiet", "M", x, y - r, "l", r, r, "l", -r, r, "l", -r, -r, "Z");
      case OWN_NEXT -> s.rect("bought edged", x - 0.9 * r, y - 0.9 * r, 1.8 * r, 1.8 * r);
      case OPPONENT_NEXT -> s.circle("hollow", x, y, r);
      case OTHER_RESTART ->
          s.path("trouble-line", "M", x, y - 1.2 * r, "l", 1.2 * r, 2.1 * r, "h", -2.4 * r, "Z");
      case ICED -> IcingKind.star(s, x, y, 1.6 * r);
    }
  }
}
