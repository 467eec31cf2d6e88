package twostrides.chart;

import java.awt.Font;
import java.awt.Graphics2D;
import java.util.List;

/**
 * The bold title of a picture and the plain line under it, both at the left.
 *
 * @param title one or two lines that fit
 * @param titleFont their font
 * @param notes one or two lines that fit
 */
record Headline(List<String> title, Font titleFont, List<String> notes) {

  /** Pixels from the card's edge to what is drawn on it. */
  static final int MARGIN = 18;

  private static final int TITLE_SIZE = 18;

  /** A title that needs two lines is set smaller. */
  private static final int LONG_TITLE_SIZE = 16;

  private static final int NOTE_SIZE = 13;
  private static final int TITLE_LEADING = 23;
  private static final int NOTE_LEADING = 18;

  Headline {
    title = List.copyOf(title);
    notes = List.copyOf(notes);
  }

  /**
   * Fits a title and a note into a width.
   *
   * @param title a clean line
   * @param note our own text
   * @param width pixels of the whole card
   */
  static Headline of(String title, String note, int width) {
    double room = width - 2.0 * MARGIN;
    Font large = Lettering.able(Lettering.bold(TITLE_SIZE), title);
    List<String> notes = Lettering.twoLines(note, Lettering.plain(NOTE_SIZE), room);
    if (Lettering.width(large, title) <= room) {
      return new Headline(List.of(title), large, notes);
    }
    Font small = Lettering.able(Lettering.bold(LONG_TITLE_SIZE), title);
    return new Headline(Lettering.twoLines(title, small, room), small, notes);
  }

  /** Pixels from the card's upper edge to below the last line. */
  int height() {
    return MARGIN + title.size() * TITLE_LEADING + notes.size() * NOTE_LEADING + 4;
  }

  void draw(Graphics2D g, Theme theme) {
    double y = MARGIN;
    g.setFont(titleFont);
    g.setColor(theme.ink());
    for (String line : title) {
      y += TITLE_LEADING;
      g.drawString(line, MARGIN, (float) y - 6);
    }
    g.setFont(Lettering.plain(NOTE_SIZE));
    for (String line : notes) {
      y += NOTE_LEADING;
      g.drawString(line, MARGIN, (float) y - 4);
    }
  }
}
