package twostrides.book.chart;

/** Marks with their words, one after the other in as many lines as they need. */
final class Legend {

  private static final double LEADING = 22;
  private static final double BETWEEN = 18;

  private final Sketch sketch;
  private final double room;
  private double x;
  private double top;

  /** Draws one mark. */
  interface Mark {
    /**
     * Draws.
     *
     * @param x pixels of its left side
     * @param middle pixels of its middle
     */
    void draw(double x, double middle);
  }

  /**
   * A legend from the left side on.
   *
   * @param sketch to draw on
   * @param top pixels of its upper side
   * @param room pixels from the left side of a mark to its words
   */
  Legend(Sketch sketch, double top, double room) {
    this.sketch = sketch;
    this.top = top;
    this.room = room;
  }

  void entry(String words, Mark mark) {
    double width = room + Type.WORDS.width(words);
    if (x > 0 && x + width > sketch.width()) {
      x = 0;
      top += LEADING;
    }
    mark.draw(x, top + LEADING / 2);
    sketch.text(Type.WORDS, words, x + room, top + LEADING / 2 + 4);
    x += width + BETWEEN;
  }

  /** Pixels of its lower side; of its upper side where there is no entry. */
  double bottom() {
    return x > 0 ? top + LEADING + 2 : top;
  }
}
