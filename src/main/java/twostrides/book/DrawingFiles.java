package twostrides.book;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import twostrides.chart.Picture;

/**
 * The drawings of a book as files in {@code charts/}: each drawn and written once, however many
 * pages show it and whichever of them comes first, which keeps a season's book small enough to hand
 * on.
 */
final class DrawingFiles {

  private final Path out;
  private final boolean pngs;
  private final Map<String, Drawing> written = new ConcurrentHashMap<>();

  /**
   * Drawings of a book.
   *
   * @param out the book's folder
   * @param pngs whether to write each as PNG too, which takes a third of the time of a run
   */
  DrawingFiles(Path out, boolean pngs) {
    this.out = out;
    this.pngs = pngs;
  }

  /**
   * A drawing, which is made and written unless it lies there.
   *
   * @param name of the file, without folder and ending
   * @param picture draws it
   */
  Drawing write(String name, Supplier<Picture> picture) throws IOException {
    try {
      return written.computeIfAbsent(name, n -> files(n, picture.get()));
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private Drawing files(String name, Picture picture) {
    String svg = "charts/" + name + ".svg";
    String png = "charts/" + name + ".png";
    try {
      Files.writeString(out.resolve(svg), picture.svg(), StandardCharsets.UTF_8);
      if (pngs) {
        Files.write(out.resolve(png), picture.png().get());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new Drawing(
        svg, pngs ? png : svg, picture.alternative(), picture.width(), picture.height());
  }
}
