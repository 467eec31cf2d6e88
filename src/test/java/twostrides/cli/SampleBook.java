package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Books of the sample season, or of sheets that a test wrote. */
final class SampleBook {

  /** Name of the team's book as one file in that of the season. */
  static final String ONE_FILE = "glasswater-herons-book.html";

  private static Path season;

  private SampleBook() {}

  /** The sample season's sheets in the order of play. */
  static List<Path> games() throws IOException {
    try (Stream<Path> all = Files.list(Path.of("sample-data"))) {
      return all.filter(f -> f.toString().endsWith(".csv")).sorted().toList();
    }
  }

  /**
   * Reviews a small sheet of games of any names; a player of the same name has two releases in each
   * that icing follows, eight seconds apart on the video, so that their chapters overlap.
   *
   * @param dir where the sheet and the book go
   * @param names ids of the games
   * @param options further options
   * @return the book's folder
   */
  static Path ofGames(Path dir, List<String> names, String... options) throws IOException {
    StringBuilder sheet =
        new StringBuilder(
            "game,period,clock,team,player,action,outcome,x_m,y_m,skaters_for,skaters_against,"
                + "video_s,own_skaters,opponent_skaters\n");
    // Of the first release of a game it is known where the skaters were: nobody is near.
    String seen = ",-5 6 7 0,-20 0 0 0; -21 5 0 0";
    for (String name : names) {
      String quoted = '"' + name.replace("\"", "\"\"") + '"';
      for (int i = 0; i < 2; i++) {
        int clock = 1100 - 20 * i;
        double video = 3.5 + 8 * i;
        String row = "%s,1,%d,%s,%s,%s,5,5,%s" + (i == 0 ? seen : ",,") + "%n";
        sheet.append(row.formatted(quoted, clock, "Herons", quoted, "recovery,,-25,5", ""));
        sheet.append(
            row.formatted(quoted, clock - 4, "Herons", quoted, "release,lost,-5,6", video));
        sheet.append(row.formatted(quoted, clock - 7, "Wolves", "9 Vik", "faceoff,,21,-6.7", ""));
      }
    }
    List<String> all = new ArrayList<>(List.of("--simulations", "100"));
    all.addAll(List.of(options));
    return of(
        dir.resolve("book"),
        List.of(Files.writeString(dir.resolve("s.csv"), sheet)),
        all.toArray(String[]::new));
  }

  /**
   * The sample season's book with the skaters clicked at its releases, and that of its team as one
   * file. It is written once for all test classes of a process and removed when that ends: nobody
   * writes into it.
   */
  static synchronized Path season() throws IOException {
    if (season == null) {
      Path dir = Files.createTempDirectory("two-strides-season");
      Runtime.getRuntime().addShutdownHook(new Thread(() -> remove(dir)));
      season =
          of(
              dir.resolve("book"),
              games(),
              "--places",
              "sample-data/places",
              "--simulations",
              "100",
              "--one-file");
    }
    return season;
  }

  static void remove(Path dir) {
    try (Stream<Path> all = Files.walk(dir)) {
      for (Path p : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(p);
      }
    } catch (IOException e) {
      System.err.println("A book stays in the temporary folder: " + e);
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
