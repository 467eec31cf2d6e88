package twostrides.book.chart;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import org.jfree.chart.ChartUtils;

/** Diagrams as PNG in the light theme, drawn by Apache Batik. */
final class Raster {

  /** PNG pixels per pixel of the form: sharp on a slide. */
  static final int SCALE = 2;

  /** Where the rules begin that every picture needs; before it stand themes and pages. */
  private static final String LOOKS = "/* looks */";

  private static final Pattern VARIABLE = Pattern.compile("(--[a-z-]+): ([^;]+);");

  private Raster() {}

  static byte[] png(Form form, Caption caption) {
    Painter painter = new Painter();
    float width = SCALE * (form.width() + 2f * Form.MARGIN);
    painter.addTranscodingHint(ImageTranscoder.KEY_WIDTH, width);
    String svg = form.standAlone(caption, light(Picture.styles()));
    try {
      painter.transcode(new TranscoderInput(new StringReader(svg)), new TranscoderOutput());
      return png(painter.painted);
    } catch (TranscoderException e) {
      throw new IllegalStateException("our own drawing cannot be drawn", e);
    }
  }

  /** A picture's bytes as PNG. */
  static byte[] png(BufferedImage picture) {
    try {
      return ChartUtils.encodeAsPNG(picture);
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail", e);
    }
  }

  /**
   * Batik up to the pixels. Its own writer of PNG tries every filter on every row of them, which
   * takes several times as long as all the rest.
   */
  private static final class Painter extends ImageTranscoder {

    private BufferedImage painted;

    @Override
    public BufferedImage createImage(int width, int height) {
      return new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    }

    @Override
    public void writeImage(BufferedImage image, TranscoderOutput nowhere) {
      painted = image;
    }
  }

  /** The looks with the colours of the light theme in place of variables, which Batik lacks. */
  static String light(String styles) {
    String looks = styles.substring(styles.indexOf(LOOKS) + LOOKS.length());
    Matcher variable = VARIABLE.matcher(styles.substring(0, styles.indexOf('}')));
    while (variable.find()) {
      looks = looks.replace("var(" + variable.group(1) + ")", variable.group(2));
    }
    return looks;
  }
}
