package twostrides.book;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Function;
import twostrides.book.chart.Picture;

/**
 * The pictures of a book. Pages hold them; where the run asks for slides, each is a file as well.
 *
 * @param out the book's folder
 * @param pngs whether each is written as PNG too
 */
record PictureFiles(Path out, boolean pngs) {

  /**
   * A picture as its page shows it.
   *
   * @param id its name, unique in the book: a-z, 0-9 and hyphens
   * @param picture the picture
   * @throws UncheckedIOException where its file cannot be written
   */
  String html(String id, Picture picture) {
    file(id, picture);
    return picture.html();
  }

  /**
   * A picture under its title, as a part of the page that an address can name.
   *
   * @param id its name, unique in the book: a-z, 0-9 and hyphens
   * @param drawing the picture whose ids begin with that name
   */
  String headed(String id, Function<String, Picture> drawing) {
    Picture picture = drawing.apply(id);
    file(id, picture);
    return picture.headed(id);
  }

  private void file(String id, Picture picture) {
    if (pngs) {
      try {
        Path charts = Files.createDirectories(out.resolve("charts"));
        Files.write(charts.resolve(id + ".png"), picture.png().get());
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
