package twostrides.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** Files of drawings, read back by Java's own reader. */
class PngFileTest {

  private static BufferedImage image(int width, int height) {
    return new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
  }

  private static BufferedImage readBack(BufferedImage image) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(PngFile.of(image)));
  }

  private static int[] pixels(BufferedImage image) {
    return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
  }

  @Test
  void upTo256DistinctColoursAreKeptExactly() throws IOException {
    BufferedImage image = image(64, 40);
    for (int i = 0; i < 64 * 40; i++) {
      int shade = i % 32 * 8 + 3;
      image.setRGB(i % 64, i / 64, new Color(shade, 255 - shade, i % 8 * 32).getRGB());
    }
    assertArrayEquals(pixels(image), pixels(readBack(image)));
  }

  /** Paper, ink and two fills, and every shade that smooth edges make between two of them. */
  @Test
  void commonColoursStayAndShadesAlongEdgesComeNear() throws IOException {
    Color[] flat = {Color.WHITE, new Color(0x1F2A33), new Color(0xD55E00), new Color(0x0072B2)};
    BufferedImage image = image(300, 300);
    Random dice = new Random(5);
    for (int i = 0; i < 300 * 300; i++) {
      Color one = flat[dice.nextInt(flat.length)];
      Color two = i % 10 == 0 ? flat[dice.nextInt(flat.length)] : one;
      image.setRGB(i % 300, i / 300, between(one, two, dice.nextDouble()).getRGB());
    }
    BufferedImage back = readBack(image);
    for (int i = 0; i < 300 * 300; i++) {
      Color was = new Color(image.getRGB(i % 300, i / 300));
      Color is = new Color(back.getRGB(i % 300, i / 300));
      if (i % 10 != 0) {
        assertEquals(was, is);
      }
      int far =
          Math.max(
              Math.abs(was.getRed() - is.getRed()),
              Math.max(
                  Math.abs(was.getGreen() - is.getGreen()),
                  Math.abs(was.getBlue() - is.getBlue())));
      assertTrue(far <= 12, was + " became " + is);
    }
  }

  private static Color between(Color one, Color two, double share) {
    return new Color(
        (int) Math.round(one.getRed() + share * (two.getRed() - one.getRed())),
        (int) Math.round(one.getGreen() + share * (two.getGreen() - one.getGreen())),
        (int) Math.round(one.getBlue() + share * (two.getBlue() - one.getBlue())));
  }

  @Test
  void paperAndIceStayApart() throws IOException {
    BufferedImage image = image(100, 100);
    for (int i = 0; i < 100 * 100; i++) {
      image.setRGB(i % 100, i / 100, i % 3 == 0 ? 0xFBFCFE : 0xFFFFFF);
    }
    assertArrayEquals(pixels(image), pixels(readBack(image)));
  }

  @Test
  void oneBlackPixelIsAFile() throws IOException {
    assertEquals(0xFF000000, readBack(image(1, 1)).getRGB(0, 0));
  }

  @Test
  void pixelsThatLetThroughAreRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> PngFile.of(new BufferedImage(2, 2, BufferedImage.TYPE_INT_ARGB)));
  }
}
