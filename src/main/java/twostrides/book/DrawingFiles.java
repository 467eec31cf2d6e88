package twostrides.book;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import twostrides.chart.Picture;

/**
 * The drawings of a book as files in {@code charts/}: each once, however many pages show it, which
 * keeps a season's book small enough to hand on.
 *
 * @param out the book's folder
 * @param pngs whether to write each as PNG too, which takes a third of the time of a run
 */
record DrawingFiles(Path out, boolean pngs) {

  /**
   * Writes a drawing.
   *
   * @param name of the file, without folder and ending
   */
  Drawing write(String name, Picture picture) throws IOException {
    String svg = "charts/" + name + ".svg";
    String png = "charts/" + name + ".png";
    Files.writeString(out.resolve(svg), picture.svg(), StandardCharsets.UTF_8);
    if (pngs) {
      Files.write(out.resolve(png), picture.png().get());
    }
    return new Drawing(
        svg, pngs ? png : svg, picture.alternative(), picture.width(), picture.height());
  }
}
