package twostrides.book.chart;

/**
 * Where the parts of the lines of a {@link DotLines} stand. In the wide form label, volume, dots,
 * words and note are columns; in the narrow form the label is a line of its own.
 *
 * @param narrow which form
 * @param labels pixels that a label may take
 * @param volumes bars of trials, from zero to the fullest line; of no length where not asked for
 * @param scale of the dots
 * @param shares pixels, right side of the shares in words
 * @param notes pixels, left side of the notes
 * @param noteRoom pixels that a note may take
 */
record DotColumns(
    boolean narrow,
    double labels,
    Scale volumes,
    Scale scale,
    double shares,
    double notes,
    double noteRoom) {

  private static final double GAP = 10;

  static DotColumns of(DotLines lines, Sketch s) {
    double counts = Type.NOTE.widest(lines.words(d -> Words.counted(d.count())));
    double shares = Type.STRONG.widest(lines.words(Dot::said));
    double words = counts + shares + 6;
    double volume = lines.volumes() ? s.either(70, 52) : 0;
    double volumeGap = lines.volumes() ? 2 * GAP : 0;
    boolean two = lines.series().size() > 1;
    if (s.narrow()) {
      double right = two ? s.width() - words - GAP : s.width() - 20;
      Scale bars = new Scale(0, lines.mostTrials(), 0, volume);
      Scale scale = lines.scale(volume + volumeGap + 16, right);
      double labels = two ? s.width() : s.width() - words - GAP;
      return new DotColumns(true, labels, bars, scale, s.width() - counts - 6, 0, s.width());
    }
    double notes = Math.min(160, lines.widest(DotLines.Row::note) + 1);
    double labels = Math.min(notes > 1 ? 190 : 220, lines.widest(DotLines.Row::label) + 1);
    double right = s.width() - (notes > 1 ? notes + GAP : 0);
    Scale bars = new Scale(0, lines.mostTrials(), labels + GAP, labels + GAP + volume);
    double left = bars.right() + GAP + volumeGap / 2 + 8;
    Scale scale = lines.scale(left, right - words - 2.5 * GAP);
    return new DotColumns(
        false, labels, bars, scale, right - counts - 6, right + GAP, Math.max(notes, 1));
  }

  /** Names the bars under them. */
  void volumeName(Sketch s, double baseline) {
    if (volumes.right() > volumes.left()) {
      s.text(Type.NOTE, "how many", volumes.left(), baseline);
    }
  }
}
