package twostrides.book.chart;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;

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
    String svg = form.standAlone(caption, light(Picture.styles()));
    float width = SCALE * (form.width() + 2f * Form.MARGIN);
    painter.addTranscodingHint(SVGAbstractTranscoder.KEY_WIDTH, width);
    try {
      painter.transcode(new TranscoderInput(new StringReader(svg)), new TranscoderOutput());
    } catch (TranscoderException e) {
      throw new IllegalStateException("our own drawing cannot be drawn", e);
    }
    return png(painter.image);
  }

  static byte[] png(BufferedImage image) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "png", out);
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail", e);
    }
    return out.toByteArray();
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

  /** Keeps the image instead of writing it in a way of its own. */
  private static final class Painter extends ImageTranscoder {

    private BufferedImage image = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB);

    @Override
    public BufferedImage createImage(int width, int height) {
      return new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    }

    @Override
    public void writeImage(BufferedImage drawn, TranscoderOutput output) {
      image = drawn;
    }
  }
}
