package twostrides.clips;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import org.jcodec.api.SequenceEncoder;
import org.jcodec.common.io.NIOUtils;
import org.jcodec.common.io.SeekableByteChannel;
import org.jcodec.common.model.ColorSpace;
import org.jcodec.common.model.Picture;
import org.jcodec.common.model.Rational;
import twostrides.browser.Browser;

/**
 * A true video, H.264 in MP4, one picture a second, whose pictures say which second and which file
 * they are: sixteen squares, black for 0 and white for 1, the lowest bit first.
 */
public final class TestVideo {

  private static final int SQUARE = 16;
  private static final int COLUMNS = 8;
  private static final int BITS = 16;

  /** Bits of the second: more than two hours. The three above them are the file's mark. */
  private static final int SECOND_BITS = 13;

  /**
   * The picture now shown, read through a canvas: the middle of each square. Waits for the end of a
   * seek, and stops the video so that second and picture belong together.
   */
  private static final String LOOK =
      """
      const done = arguments[0];
      const v = document.querySelector('video');
      const look = () => {
        v.pause();
        const c = document.createElement('canvas');
        c.width = %d; c.height = %d;
        const x = c.getContext('2d');
        x.drawImage(v, 0, 0, c.width, c.height);
        const p = x.getImageData(0, 0, c.width, c.height).data;
        const square = %d, columns = %d;
        let n = 0;
        for (let b = 0; b < %d; b++) {
          const row = Math.floor(b / columns) * square + square / 2;
          const column = b %% columns * square + square / 2;
          n += p[4 * (row * c.width + column)] > 128 ? 2 ** b : 0;
        }
        done(v.currentTime + ' ' + n);
      };
      const wait = () => v.seeking || v.readyState < 2 ? setTimeout(wait, 20) : look();
      wait();
      """
          .formatted(COLUMNS * SQUARE, BITS / COLUMNS * SQUARE, SQUARE, COLUMNS, BITS);

  private TestVideo() {}

  /**
   * Where a page's video stands.
   *
   * @param time the player's own second
   * @param second the second that the picture says
   * @param mark the file that the picture says
   */
  public record Shown(double time, int second, int mark) {}

  /**
   * Writes a video.
   *
   * @param file where
   * @param seconds how long
   * @param mark a number from 0 to 7 that tells this file from others
   */
  public static Path write(Path file, int seconds, int mark) throws IOException {
    try (SeekableByteChannel out = NIOUtils.writableChannel(file.toFile())) {
      SequenceEncoder encoder = SequenceEncoder.createWithFps(out, Rational.R(1, 1));
      for (int s = 0; s < seconds; s++) {
        encoder.encodeNativeFrame(picture(s | mark << SECOND_BITS));
      }
      encoder.finish();
    }
    return file;
  }

  private static Picture picture(int number) {
    int width = COLUMNS * SQUARE;
    Picture picture = Picture.create(width, BITS / COLUMNS * SQUARE, ColorSpace.RGB);
    // Samples are signed here: -128 is black, 127 white.
    byte[] samples = picture.getPlaneData(0);
    for (int y = 0; y < picture.getHeight(); y++) {
      for (int column = 0; column < COLUMNS; column++) {
        int bit = y / SQUARE * COLUMNS + column;
        int from = 3 * (y * width + column * SQUARE);
        byte shade = (byte) ((number >> bit & 1) == 1 ? 127 : -128);
        Arrays.fill(samples, from, from + 3 * SQUARE, shade);
      }
    }
    return picture;
  }

  /**
   * Looks at the video of the page that is open, and stops it.
   *
   * @param browser the browser
   */
  public static Shown shown(Browser browser) {
    String[] said = String.valueOf(browser.driver().executeAsyncScript(LOOK)).split(" ", -1);
    int number = Integer.parseInt(said[1]);
    return new Shown(
        Double.parseDouble(said[0]), number & (1 << SECOND_BITS) - 1, number >> SECOND_BITS);
  }
}
