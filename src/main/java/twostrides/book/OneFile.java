package twostrides.book;

import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.codec.digest.DigestUtils;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.ParseSettings;
import org.jsoup.parser.Parser;
import twostrides.findings.SeasonReview;
import twostrides.findings.TeamReview;

/**
 * A team's book as one file, for a mail or a tablet: the written pages under each other, with their
 * links between them. A page's name is the id of its part, and stands before every id in it ({@code
 * kill.html:tries}), so that each link is an anchor and works without scripts; the script shows one
 * page at a time.
 */
final class OneFile {

  private static final List<String> FIRST =
      List.of("index", "kill", "icings", "players", "opponents", "flags", "slices", "costs");

  private static final List<String> LAST =
      List.of("compare", "restarts", "empty-net", "rulings", "numbers");

  /** Attributes that name the ids of other elements. */
  private static final List<String> NAMING =
      List.of("aria-labelledby", "aria-describedby", "aria-controls", "for", "list");

  private final Path book;
  private final List<String> pages;

  private OneFile(Path book, List<String> pages) {
    this.book = book;
    this.pages = pages;
  }

  /** Its name in the book's folder. */
  static String name(SeasonReview review) {
    return review.ourTeam().map(t -> Links.slug(t) + "-book.html").orElse("whole-book.html");
  }

  /**
   * Writes it beside the pages of a book.
   *
   * @param book folder whose pages are written
   * @param review what they show: all teams, and the players of the book's team
   * @param script the script that its pages share
   * @throws IOException when a page cannot be read or the file cannot be written
   */
  static void write(Path book, SeasonReview review, String script) throws IOException {
    List<String> pages = new ArrayList<>();
    FIRST.forEach(p -> pages.add(p + ".html"));
    for (TeamReview t : review.teams()) {
      pages.add(Links.file(t));
      if (review.ourTeam().isEmpty() || review.ourTeam().get().equals(t.team())) {
        review.playersOf(t.team()).stream().map(Links::file).forEach(pages::add);
        pages.add(Links.sheets(t));
      }
    }
    LAST.forEach(p -> pages.add(p + ".html"));
    new OneFile(book, pages).write(book.resolve(name(review)), script);
  }

  private void write(Path file, String shared) throws IOException {
    String script = shared + ReviewBook.resource("compare.js");
    String policy =
        "default-src 'none'; script-src 'sha256-"
            + Base64.getEncoder().encodeToString(DigestUtils.sha256(script))
            + "'; style-src 'unsafe-inline'; img-src data:; media-src blob:; form-action 'none';"
            + " base-uri 'none'";
    StringBuilder html = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n");
    html.append("<meta charset=\"utf-8\">\n<meta http-equiv=\"Content-Security-Policy\" content=\"")
        .append(policy)
        .append("\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
        .append("<meta name=\"color-scheme\" content=\"light dark\">\n");
    for (String page : pages) {
      Document d =
          Jsoup.parse(
              Files.readString(book.resolve(page)),
              Parser.htmlParser().settings(ParseSettings.preserveCase));
      d.outputSettings().prettyPrint(false);
      if (page.equals(pages.get(0))) {
        html.append(d.selectFirst("title").outerHtml()).append("\n<style>");
        html.append(ReviewBook.resource("book.css")).append(ReviewBook.resource("chart.css"));
        html.append("</style>\n</head>\n<body>\n");
      }
      html.append(part(page, d).outerHtml()).append('\n');
    }
    html.append("<script>").append(script).append("</script>\n</body>\n</html>\n");
    Files.writeString(file, html, StandardCharsets.UTF_8);
  }

  private Element part(String page, Document d) {
    Element sheet = d.selectFirst(".sheet");
    sheet.select(".folder").remove();
    for (Element e : sheet.select("[id]")) {
      e.attr("id", page + ":" + e.id());
    }
    for (String naming : NAMING) {
      for (Element e : sheet.select("[" + naming + "]")) {
        e.attr(
            naming,
            Arrays.stream(e.attr(naming).split(" "))
                .map(id -> page + ":" + id)
                .collect(Collectors.joining(" ")));
      }
    }
    for (Element a : sheet.select("a[href]")) {
      Optional<String> here = anchor(page, a.attr("href"));
      if (here.isPresent()) {
        a.attr("href", here.get());
      } else if (a.closest("nav.pages") != null) {
        a.remove();
      } else if (a.closest("svg") != null) {
        a.tagName("g").removeAttr("href");
      } else {
        a.unwrap();
      }
    }
    return sheet.addClass("page").attr("id", page).attr("data-title", d.title());
  }

  /** Where a link leads in the one file; nowhere where it leads to a file that is not in it. */
  private Optional<String> anchor(String page, String href) {
    if (href.startsWith("#clip=")) {
      return Optional.of(href);
    }
    int hash = href.indexOf('#');
    String path = hash < 0 ? href : href.substring(0, hash);
    String to = path.isEmpty() ? page : URI.create("/" + page).resolve(path).getPath().substring(1);
    String rest = hash < 0 ? "" : ":" + href.substring(hash + 1);
    return Stream.of(to).filter(pages::contains).map(t -> "#" + t + rest).findFirst();
  }
}
