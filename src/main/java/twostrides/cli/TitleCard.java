package twostrides.cli;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.FontRenderContext;
import java.awt.font.LineBreakMeasurer;
import java.awt.font.TextAttribute;
import java.awt.font.TextLayout;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.text.AttributedString;
import javax.imageio.ImageIO;

/** A picture of words that stands before a clip. */
final class TitleCard {

  private static final int MARGIN = 90;
  private static final Color PAPER = new Color(0x14191e);
  private static final Color INK = new Color(0xe8e6e0);

  private TitleCard() {}

  /**
   * Draws a card.
   *
   * @param file a PNG
   * @param lines what stands on it, the second line large
   */
  static void write(Path file, String... lines) throws IOException {
    BufferedImage card = new BufferedImage(Ffmpeg.WIDTH, Ffmpeg.HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = card.createGraphics();
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setColor(PAPER);
    g.fillRect(0, 0, Ffmpeg.WIDTH, Ffmpeg.HEIGHT);
    g.setColor(INK);
    float y = 1.5f * MARGIN;
    for (int i = 0; i < lines.length; i++) {
      y = words(g, lines[i], i == 1 ? 52 : 30, y) + 24;
    }
    g.dispose();
    ImageIO.write(card, "png", file.toFile());
  }

  /** Writes lines as wide as the card; what does not fit on it is left out. */
  private static float words(Graphics2D g, String text, int size, float top) {
    String plain = text.isBlank() ? " " : text.replaceAll("[\\s\\p{Cntrl}]+", " ");
    AttributedString said = new AttributedString(plain);
    said.addAttribute(TextAttribute.FONT, new Font(Font.SANS_SERIF, Font.PLAIN, size));
    FontRenderContext context = g.getFontRenderContext();
    LineBreakMeasurer lines = new LineBreakMeasurer(said.getIterator(), context);
    float y = top;
    while (lines.getPosition() < plain.length() && y < Ffmpeg.HEIGHT - MARGIN) {
      TextLayout line = lines.nextLayout(Ffmpeg.WIDTH - 2f * MARGIN);
      y += line.getAscent();
      line.draw(g, MARGIN, y);
      y += line.getDescent() + line.getLeading();
    }
    return y;
  }
}
