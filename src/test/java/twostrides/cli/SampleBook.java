package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Books of the sample season, or of sheets that a test wrote. */
final class SampleBook {

  private SampleBook() {}

  /** The sample season's sheets in the order of play. */
  static List<Path> games() throws IOException {
    try (Stream<Path> all = Files.list(Path.of("sample-data"))) {
      return all.filter(f -> f.toString().endsWith(".csv")).sorted().toList();
    }
  }

  /**
   * Reviews sheets.
   *
   * @param book where the book goes
   * @param sheets files or folders
   * @param options further options
   * @return the book's folder
   */
  static Path of(Path book, List<Path> sheets, String... options) {
    List<Object> line = new ArrayList<>(List.of("review"));
    line.addAll(sheets);
    line.addAll(List.of(options));
    line.addAll(List.of("--out", book));
    Run run = Run.of(line.toArray());
    assertEquals(0, run.code(), run.err());
    return book;
  }
}
