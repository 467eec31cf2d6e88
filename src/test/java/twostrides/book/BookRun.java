package twostrides.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import picocli.CommandLine;
import twostrides.cli.Main;

/** A review that was run, its tables and its pages. */
final class BookRun {

  final BookData data;
  final SortedMap<String, Document> pages = new TreeMap<>();
  final PlayerFigures figures;
  final SheetFigures sheets;
  final List<BookData.Player> players;
  final List<String> teams;

  private BookRun(Path book) throws IOException {
    data = new BookData(book);
    figures = new PlayerFigures(data);
    sheets = new SheetFigures(data);
    players = data.players();
    teams = data.teams();
    try (Stream<Path> files = Files.walk(book)) {
      for (Path p : files.filter(f -> f.toString().endsWith(".html")).toList()) {
        pages.put(
            book.relativize(p).toString().replace('\\', '/'), Jsoup.parse(p.toFile(), "UTF-8"));
      }
    }
  }

  /** Runs the review command in this process and reads the book back. */
  static BookRun of(Path out, String... options) throws IOException {
    StringWriter words = new StringWriter();
    PrintWriter console = new PrintWriter(words, true);
    String[] all =
        Stream.concat(Stream.of("review", "--out", out.toString()), Stream.of(options))
            .toArray(String[]::new);
    int code =
        new CommandLine(Main.class)
            .setCaseInsensitiveEnumValuesAllowed(true)
            .setOut(console)
            .setErr(console)
            .execute(all);
    assertEquals(0, code, words.toString());
    return new BookRun(out);
  }

  /** The number that begins a page's name, less one. */
  private static int place(String page) {
    String name = page.substring(page.indexOf('/') + 1);
    return Integer.parseInt(name.substring(0, name.indexOf('-'))) - 1;
  }

  /** The player of a page: pages are numbered by attempts. */
  BookData.Player player(String page) {
    return players.get(place(page));
  }

  /** The team of its page or of its players' sheets; on the opening page the first one. */
  String team(String page) {
    return page.contains("/") ? teams.get(place(page)) : teams.get(0);
  }

  /** Rows of the exits table that a page with charts is about. */
  List<BookData.Row> exits(String page) {
    return about(page, data.exits);
  }

  /** Rows of the releases table that a page with charts is about. */
  List<BookData.Row> releases(String page) {
    return about(page, data.releases);
  }

  private List<BookData.Row> about(String page, List<BookData.Row> rows) {
    return page.startsWith("players/")
        ? BookData.rows(rows, BookData.of(player(page)))
        : BookData.rows(rows, BookData.team(Optional.of(team(page))));
  }

  /** Weight of the published net goals, in draws. */
  double goalPrior() {
    return Double.parseDouble(data.run.get("goal_prior_weight"));
  }
}
