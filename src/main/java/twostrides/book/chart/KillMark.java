package twostrides.book.chart;

import java.util.Set;

/**
 * What is marked on a strip of a kill, in the order drawn: the later lies on top. Each has a shape
 * of its own; the colour says it again.
 */
public enum KillMark {
  /** The puck got out: a tick up, and a bar as long as the time it bought. */
  CLEAR("clear, and the time it bought"),
  /** A face-off in the kill. */
  FACE_OFF("face-off"),
  /** The opponent's shot attempt. */
  ATTEMPT("shot attempt"),
  /** A clear that the rules call no icing because the team was shorthanded. */
  ICING_EXEMPTION("icing exemption used"),
  /** A clear that was kept in. */
  FAILED_CLEAR("failed clear"),
  /** A goal against. */
  GOAL("goal against");

  /** Pixels from the left side of a mark in the legend to its words. */
  private static final double LEGEND_MARK = 26;

  /** Pixels to each side of a moment that can be tapped. */
  private static final double TAP = 6;

  private static final String CROSS = "m-3.5 -3.5l7 7m0 -7l-7 7";

  private final String words;

  KillMark(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }

  /**
   * Where a strip lies.
   *
   * @param top pixels of the strip's upper side
   * @param height pixels of the strip
   * @param row pixels to the next strip
   */
  record Strip(double top, double height, double row) {
    double middle() {
      return top + height / 2;
    }

    double bottom() {
      return top + height;
    }
  }

  void draw(Sketch s, Strip strip, double x, double to) {
    double middle = strip.middle();
    switch (this) {
      case CLEAR -> {
        s.rect("bought", x, strip.top(), to - x, strip.height());
        s.mark("bought edged", x, strip.top() + 1, "m-3.5 0h7l-3.5 -6z");
      }
      case FACE_OFF -> s.circle("hollow-soft", x, strip.bottom() - 2.5, 2.5);
      case ATTEMPT -> s.line("tick", x, strip.top(), x, strip.bottom());
      case ICING_EXEMPTION -> s.mark("hollow", x, middle, "m0 -5l5 5l-5 5l-5 -5z");
      case FAILED_CLEAR -> {
        s.mark("halo", x, middle, CROSS);
        s.mark("cross", x, middle, CROSS);
      }
      case GOAL -> s.circle("trouble ringed", x, middle, 5.5);
    }
    if (this != CLEAR) {
      s.rect("hit", x - TAP, strip.top() - 5, 2 * TAP, strip.row());
    }
  }

  /** Every mark that occurs and the ground, with words; gives where the legend ends. */
  static double legend(Sketch s, Set<KillMark> seen, double top) {
    Legend legend = new Legend(s, top, LEGEND_MARK);
    legend.entry("puck in our end", (x, middle) -> s.rect("ground", x, middle - 5.5, 20, 11));
    for (KillMark mark : seen) {
      double length = mark == CLEAR ? 18 : 0;
      legend.entry(
          mark.words,
          (x, middle) -> {
            double at = mark == CLEAR ? x + 2 : x + 10;
            mark.draw(s, new Strip(middle - 5.5, 11, 12), at, at + length);
          });
    }
    return legend.bottom();
  }
}
