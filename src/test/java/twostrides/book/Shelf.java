package twostrides.book;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import twostrides.findings.NumberSettings;
import twostrides.findings.Reviewer;
import twostrides.findings.SeasonReview;
import twostrides.season.Season;
import twostrides.season.TableFile;

/** Writes books for tests and reads them back. */
final class Shelf {

  /** Names as an unfriendly or unlucky sheet might hold them. */
  static final List<String> HOSTILE =
      List.of(
          "<script>alert('x')</script>",
          "\"quoted\" & 'single' <b>bold</b>",
          "../../x",
          "=CMD(\"calc\")",
          "\u05d3\u05e0\u05d4 \u05db\u05d4\u05df",
          "\u202Eturned\u202C",
          "\uD83C\uDFD2 Ice Ice",
          "onload=alert(1) ${1+1} @for",
          "]]></style><!--",
          "Cöté Ÿılmaz İI",
          "+1 plus",
          "x".repeat(300));

  private Shelf() {}

  static void write(Path out, Season season) throws IOException {
    SeasonReview review = Reviewer.review(season);
    ReviewBook.write(
        out,
        review,
        new NumberSettings(20, 1, 400),
        new Imprint(
            "0.0",
            new BookNote("hybrid", "", java.util.List.of(), java.util.List.of()),
            "5 rows read = 5 rows used + 0 rows set aside.",
            new BookOptions(Videos.named("{game}.mp4"), true, true)),
        TableFile.parts(season.tables(), Files.createDirectories(out.resolve("data"))),
        (n, all) -> {});
  }

  /** Every file of a book by its path with slashes. */
  static SortedMap<String, byte[]> files(Path book) throws IOException {
    SortedMap<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(book)) {
      for (Path p : all.filter(Files::isRegularFile).toList()) {
        files.put(book.relativize(p).toString().replace('\\', '/'), Files.readAllBytes(p));
      }
    }
    return files;
  }

  static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8);
  }
}
