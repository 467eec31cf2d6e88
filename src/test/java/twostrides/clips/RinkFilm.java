package twostrides.clips;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.jcodec.api.SequenceEncoder;
import org.jcodec.common.io.NIOUtils;
import org.jcodec.common.io.SeekableByteChannel;
import org.jcodec.common.model.ColorSpace;
import org.jcodec.common.model.Picture;
import org.jcodec.common.model.Rational;
import twostrides.picture.Camera;
import twostrides.picture.Pixel;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.rink.RinkLines;
import twostrides.rink.RinkMark;

/**
 * A true video of a drawn rink and drawn men, as a known camera sees them: two pictures a second.
 */
public final class RinkFilm {

  /** Pictures a second. */
  public static final int RATE = 2;

  private RinkFilm() {}

  /**
   * One picture.
   *
   * @param camera where it is taken from
   * @param own skaters of one team, where they touch the ice
   * @param others skaters of the other
   */
  public record Shot(Camera camera, List<Place> own, List<Place> others) {}

  /**
   * Writes a video.
   *
   * @param file where
   * @param rink the rink that is drawn
   * @param shots its pictures
   */
  public static Path write(Path file, Rink rink, List<Shot> shots) throws IOException {
    try (SeekableByteChannel out = NIOUtils.writableChannel(file.toFile())) {
      SequenceEncoder encoder = SequenceEncoder.createWithFps(out, Rational.R(RATE, 1));
      Shot before = null;
      Picture picture = null;
      for (Shot shot : shots) {
        picture = shot.equals(before) ? picture : picture(drawn(rink, shot));
        before = shot;
        encoder.encodeNativeFrame(picture);
      }
      encoder.finish();
    }
    return file;
  }

  private static BufferedImage drawn(Rink rink, Shot shot) {
    BufferedImage image =
        new BufferedImage(Camera.WIDTH, Camera.HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(new Color(40, 44, 52));
    g.fillRect(0, 0, Camera.WIDTH, Camera.HEIGHT);
    List<List<Place>> lines = RinkLines.of(rink);
    g.setColor(new Color(238, 243, 247));
    g.fill(shape(shot.camera(), lines.get(0)));
    for (List<Place> line : lines) {
      boolean blue = Math.abs(Math.abs(line.get(0).x()) - rink.blueLineNeutralEdge()) < 1e-9;
      g.setColor(line == lines.get(0) ? Color.DARK_GRAY : blue ? Color.BLUE : Color.RED);
      g.setStroke(new BasicStroke(2));
      g.draw(shape(shot.camera(), line));
    }
    for (RinkMark m : RinkMark.of(rink)) {
      if (m.name().contains("dot")) {
        g.setColor(m.name().equals("center dot") ? Color.BLUE : Color.RED);
        g.fill(shape(shot.camera(), dot(m.place())));
      }
    }
    shot.own().forEach(p -> man(g, shot.camera(), p, new Color(20, 110, 60)));
    shot.others().forEach(p -> man(g, shot.camera(), p, new Color(190, 120, 0)));
    g.dispose();
    return image;
  }

  private static List<Place> dot(Place p) {
    return IntStream.range(0, 24)
        .mapToObj(i -> Math.PI * i / 12)
        .map(a -> new Place(p.x() + 0.3048 * Math.cos(a), p.y() + 0.3048 * Math.sin(a)))
        .toList();
  }

  private static void man(Graphics2D g, Camera camera, Place p, Color colour) {
    Pixel feet = camera.shows(p.x(), p.y());
    Pixel head = camera.shows(p.x(), p.y(), 1.7);
    g.setColor(colour);
    g.setStroke(new BasicStroke(9, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    g.draw(new Line2D.Double(feet.u(), feet.v() - 5, head.u(), head.v()));
    g.setColor(Color.BLACK);
    g.setStroke(new BasicStroke(3));
    g.draw(new Line2D.Double(feet.u() - 5, feet.v(), feet.u() + 5, feet.v()));
  }

  private static Shape shape(Camera camera, List<Place> line) {
    Path2D path = new Path2D.Double();
    for (int i = 0; i < line.size(); i++) {
      Pixel p = camera.shows(line.get(i).x(), line.get(i).y());
      if (i == 0) {
        path.moveTo(p.u(), p.v());
      } else {
        path.lineTo(p.u(), p.v());
      }
    }
    return path;
  }

  private static Picture picture(BufferedImage image) {
    Picture picture = Picture.create(image.getWidth(), image.getHeight(), ColorSpace.RGB);
    // Samples are signed here: -128 is black, 127 white.
    byte[] samples = picture.getPlaneData(0);
    int[] colours =
        image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    for (int i = 0; i < colours.length; i++) {
      samples[3 * i] = (byte) ((colours[i] >> 16 & 255) - 128);
      samples[3 * i + 1] = (byte) ((colours[i] >> 8 & 255) - 128);
      samples[3 * i + 2] = (byte) ((colours[i] & 255) - 128);
    }
    return picture;
  }
}
