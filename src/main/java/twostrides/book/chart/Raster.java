package twostrides.book.chart;

import java.io.ByteArrayOutputStream;
import java.io.StringReader;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.PNGTranscoder;

/** Diagrams as PNG in the light theme, drawn by Apache Batik. */
final class Raster {

  /** PNG pixels per pixel of the form: sharp on a slide. */
  static final int SCALE = 2;

  /** Where the rules begin that every picture needs; before it stand themes and pages. */
  private static final String LOOKS = "/* looks */";

  private static final Pattern VARIABLE = Pattern.compile("(--[a-z-]+): ([^;]+);");

  private Raster() {}

  static byte[] png(Form form, Caption caption) {
    PNGTranscoder painter = new PNGTranscoder();
    float width = SCALE * (form.width() + 2f * Form.MARGIN);
    painter.addTranscodingHint(PNGTranscoder.KEY_WIDTH, width);
    String svg = form.standAlone(caption, light(Picture.styles()));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      painter.transcode(new TranscoderInput(new StringReader(svg)), new TranscoderOutput(out));
    } catch (TranscoderException e) {
      throw new IllegalStateException("our own drawing cannot be drawn", e);
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
}
