package twostrides.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import twostrides.checks.Printed;

/**
 * Every figure of every page, worked out once more from the tables in the book's data folder by the
 * formulas of docs/numbers.md, with none of the program's own classes. A table or a column of
 * numbers that no checker knows fails, and so does a checker that no page needs.
 *
 * <p>Not drawn again: the interval by game. The difference has to lie inside it, and below ten
 * games there has to be none. An adjusted rate may miss by one per cent: it comes from other sums.
 */
class FiguresTest {

  @RegisterExtension static final Printed FIGURES = new Printed();

  private static final String PLACES = "sample-data/places/places.csv";

  /** Elements that hold sentences; so does every other that has a number of its own. */
  private static final String SENTENCES = "p, li, caption, figcaption, h1, h2, h3";

  /** Cells, drawings, cards, sheets, feet. */
  private static final String CHECKED_ELSEWHERE =
      "td, th, svg, script, details.flag, ol.dearest, section.one, footer";

  private static final String FOOTER =
      " Shares stand with the counts they come from; a 95 % interval is the range that fits the"
          + " counts (Wilson). Everything in this book stays on this machine.";

  @TempDir static Path dir;

  private static BookRun season;
  private static BookRun game;
  private static BookRun tags;

  @BeforeAll
  static void run() throws IOException {
    season =
        BookRun.of(
            dir.resolve("season"),
            "sample-data",
            "--all-players",
            "--places",
            PLACES,
            "--simulations",
            "200",
            "--compare-rulebook",
            "automatic");
    // One game has no team of its own, too few cases for most shares, and no interval by game.
    game =
        BookRun.of(
            dir.resolve("game"),
            "sample-data/game-04-MER-GLA.csv",
            "--simulations",
            "100",
            "--window",
            "12",
            "--goal-prior",
            "150",
            "--rulebook",
            "usah-youth-14u",
            "--compare-rulebook",
            "hybrid");
    tags =
        BookRun.of(
            dir.resolve("tags"),
            Files.writeString(dir.resolve("tags.csv"), tagSheet()).toString(),
            "--compare-rulebook",
            "automatic");
  }

  /** Exits as a video tagger writes them, every combination of words in turn. */
  static String tagSheet() {
    List<String> marks =
        List.of(
            "carry,gained",
            "carry,released short",
            "carry,lost short",
            "pass,gained",
            "pass,released short",
            "chip,",
            "long clearance,",
            "missed pass,",
            "kept in,");
    List<String> ends =
        List.of("icing", "opponent", "own", "own-zone restart", "stopped", "", "opponent");
    List<String> strengths = List.of("even", "shorthanded", "even", "power play", "");
    StringBuilder sheet =
        new StringBuilder("game,home,away,period,clock,team,player,way_out,at_center,strength,")
            .append("net_empty,pressure,x_m,y_m,ended,video_s\n");
    for (int i = 0; i < 240; i++) {
      sheet
          .append("G" + (1 + i / 120) + ",Herons,Wolves," + (1 + i / 40 % 3) + ",")
          .append(ListFigures.minutes(1190 - i % 40 * 29 - i / 120))
          .append(i % 3 == 0 ? ",Wolves,9 Vik," : i % 2 == 0 ? ",Herons,4 Berg," : ",Herons,,")
          .append(marks.get(i % marks.size()) + "," + strengths.get(i % strengths.size()))
          .append(i % 11 == 0 ? ",opponent," : ",none,")
          .append(i % 4 == 0 ? "heavy," : ",")
          .append(i % 13 == 0 ? "," : -(i * 7 % 240) / 10.0 + "," + (i * 5 % 200 - 100) / 10.0)
          .append("," + ends.get(i % ends.size()) + ",")
          .append(i % 5 == 0 ? "\n" : i * 25.5 + "\n");
    }
    return sheet.toString();
  }

  @Test
  void everyTableOfASeasonSaysWhatItsDataSay() {
    everyTable(season);
  }

  @Test
  void everyTableOfOneGameSaysWhatItsDataSay() {
    everyTable(game);
  }

  @Test
  void everyTableOfATagSheetSaysWhatItsDataSay() {
    assertFalse(tags.data.audits.isEmpty(), "icings while shorthanded");
    everyTable(tags);
  }

  /** The checks themselves: a wrong figure, a strange column and a missing row are seen. */
  @Test
  void aWrongFigureIsSeen() {
    PageTable right = PageTable.of("costs.html", season.pages.get("costs.html")).get(0);
    Wanted wanted = CostFigures.after(season.data);
    int figures = wanted.compare(right, new ArrayList<>());
    assertEquals(70, figures);
    List<List<String>> rows = new ArrayList<>(right.rows());
    List<String> row = new ArrayList<>(rows.get(0));
    row.set(3, row.get(3).replaceFirst("\\d$", row.get(3).endsWith("1") ? "2" : "1"));
    rows.set(0, row);
    assertEquals(1, disagreements(wanted, right, right.heads(), rows));
    List<String> heads = new ArrayList<>(right.heads());
    heads.set(3, "a day");
    assertEquals(1, disagreements(wanted, right, heads, right.rows()));
    assertEquals(1, disagreements(wanted, right, right.heads(), right.rows().subList(1, 10)));
  }

  private static int disagreements(
      Wanted wanted, PageTable like, List<String> heads, List<List<String>> rows) {
    List<String> wrong = new ArrayList<>();
    wanted.compare(
        new PageTable(like.page(), like.heading(), like.caption(), heads, like.numeric(), rows),
        wrong);
    return wrong.size();
  }

  private static void everyTable(BookRun book) {
    List<String> wrong = new ArrayList<>();
    Set<TableCheckers.Known> idle = new HashSet<>(TableCheckers.ALL);
    int figures = 0;
    int tables = 0;
    for (Map.Entry<String, Document> page : book.pages.entrySet()) {
      for (PageTable t : PageTable.of(page.getKey(), page.getValue())) {
        List<TableCheckers.Known> known =
            TableCheckers.ALL.stream()
                .filter(k -> k.kind().equals(PageTable.kind(t.page())))
                .filter(k -> k.heading().matcher(t.heading()).matches())
                .toList();
        if (known.size() == 1) {
          idle.removeAll(known);
          figures += known.get(0).checker().wanted(book, t).compare(t, wrong);
          tables++;
        } else {
          wrong.add(t.page() + ", " + t.heading() + ": known to " + known.size() + " checkers");
        }
      }
    }
    idle.forEach(k -> wrong.add("no page has " + k.kind() + ", " + k.heading()));
    assertEquals(List.of(), wrong);
    FIGURES.say(
        "%d figures in %d tables on %d pages recomputed", figures, tables, book.pages.size());
    assertTrue(figures > 1000, figures + " figures");
  }

  /** A sentence with a number that nobody works out anew fails: {@link RecognizerTest}. */
  @Test
  void sentencesWithNumbersSayWhatTheirDataSay() throws IOException {
    int clicked = Files.readAllLines(Path.of(PLACES)).size() - 1;
    int checked =
        sentences(
                season,
                " Clicked places: "
                    + clicked
                    + " rows read = "
                    + clicked
                    + " rows used + 0 rows set aside.")
            + sentences(game, "")
            + sentences(tags, "");
    FIGURES.say("%d sentences, captions and headings with numbers recomputed", checked);
  }

  private static String whole(BookRun book, String key) {
    return Drawings.whole(Integer.parseInt(book.data.run.get(key)));
  }

  private static int sentences(BookRun book, String clicked) {
    List<String> wrong = new ArrayList<>();
    List<String> names = new ArrayList<>(Recognizer.rulebooks());
    book.players.forEach(p -> names.add(p.name()));
    int checked = 0;
    String rows =
        whole(book, "read")
            + " rows read = "
            + whole(book, "used")
            + " rows used + "
            + whole(book, "set_aside")
            + " rows set aside."
            + clicked
            + FOOTER;
    for (Map.Entry<String, Document> page : book.pages.entrySet()) {
      String name = page.getKey();
      Recognizer known = new Recognizer(SentenceFigures.of(book, name), names);
      Element body = page.getValue().body();
      Set<Element> sentences = new LinkedHashSet<>(body.select(SENTENCES));
      for (Element e : body.select("*:matchesOwn(\\d)").not("td, th")) {
        if (e.parents().stream().noneMatch(sentences::contains)) {
          sentences.add(e);
        }
      }
      sentences.stream()
          .filter(e -> e.closest(CHECKED_ELSEWHERE) == null)
          .forEach(e -> known.read(e.text()));
      checked += known.recognized();
      known.wrong().forEach(w -> wrong.add(name + ": " + w));
      String foot = page.getValue().select("footer").text();
      if (!foot.endsWith(rows)) {
        wrong.add(name + ": the foot is " + foot + ", wanted " + rows);
      }
    }
    assertEquals("", String.join("\n", wrong));
    return checked;
  }

  @Test
  void countsInsideTheComparePageSayWhatTheirDataSay() throws IOException {
    int cells =
        EmbeddedCounts.check(season) + EmbeddedCounts.check(game) + EmbeddedCounts.check(tags);
    long bytes = Files.size(dir.resolve("season").resolve("compare.html"));
    System.out.println(cells + " counts inside the compare page recomputed; " + bytes + " bytes.");
    assertTrue(cells > 5_000, cells + " counts");
    assertTrue(bytes < 250_000, bytes + " bytes");
  }

  @Test
  void everyHeadingLeadsToItsMeaningAndEveryMeaningHasAHeading() {
    Set<String> meanings =
        new TreeSet<>(season.pages.get("numbers.html").select("h3[id]").eachAttr("id"));
    Set<String> used = new TreeSet<>();
    int heads = 0;
    for (Map.Entry<String, Document> page : season.pages.entrySet()) {
      String up = page.getKey().contains("/") ? "../" : "";
      for (Element th : page.getValue().select("thead th")) {
        List<String> links = th.select("> a[href]").eachAttr("href");
        assertEquals(1, links.size(), page.getKey() + ": " + th.text());
        String[] link = links.get(0).split("#", 2);
        assertEquals(up + "numbers.html", link[0]);
        assertTrue(meanings.contains(link[1]), page.getKey() + ": " + link[1]);
        used.add(link[1]);
        heads++;
      }
      for (String link : page.getValue().select("dt > a[href]").eachAttr("href")) {
        used.add(link.substring(link.indexOf('#') + 1));
      }
    }
    assertEquals(meanings, used);
    System.out.println(heads + " headings lead to " + meanings.size() + " meanings.");
  }

  @Test
  void picturesSayWhatTheirDataSay() {
    int figures = 0;
    for (BookRun book : List.of(season, game, tags)) {
      for (Map.Entry<String, Document> page : book.pages.entrySet()) {
        figures += new PictureFigures(book, page.getKey(), page.getValue()).compare();
      }
    }
    FIGURES.say("%d figures in pictures recomputed", figures);
    assertTrue(figures > 1000, figures + " figures");
  }

  /** The checks of pictures themselves: each of these must be seen, the pages as they are hold. */
  @Test
  void aWrongPictureIsSeen() {
    List.of("icings.html", "kill.html")
        .forEach(p -> new PictureFigures(season, p, season.pages.get(p)).compare());
    for (String words :
        List.of(
            "#icings-zones svg.wide > desc",
            "#icings-ways svg.narrow > desc",
            "#icings-who svg.wide > desc",
            "#icings-cost svg.wide > desc",
            "#icings-zones a > title",
            "#icings-ways svg.narrow text.t-strong")) {
      wrong("icings.html", html -> misread(html.selectFirst(words)), words);
    }
    for (String words :
        List.of(
            "#kill-numbers svg.wide > desc",
            "#kill-strips svg.wide > desc",
            "#kill-strips svg.narrow a > title",
            "#kill-who svg.narrow > desc",
            "#kill-numbers svg.wide text.t-big")) {
      wrong("kill.html", html -> misread(html.selectFirst(words)), words);
    }
    wrong("kill.html", html -> html.selectFirst("#kill-who").attr("id", "kill-whom"), "an id");
    wrong("kill.html", html -> html.selectFirst("#kill-strips a").remove(), "a mark less");
    wrong("kill.html", html -> html.selectFirst("#kill-who svg").remove(), "a form less");
    wrong("kill.html", html -> html.selectFirst("main").append("<svg></svg>"), "one more");
    wrong("kill.html", html -> html.selectFirst("main").append("<img>"), "an image");
  }

  private static void wrong(String page, Consumer<Document> change, String what) {
    Document html = season.pages.get(page).clone();
    change.accept(html);
    PictureFigures changed = new PictureFigures(season, page, html);
    assertThrows(AssertionError.class, changed::compare, page + ": " + what);
  }

  /** The last number but one, or the only one, is another. */
  private static void misread(Element words) {
    String before = words.text();
    String after = before.replaceFirst("(.*\\D|)\\d+(.*?\\d.*?|\\D*)$", "$1987$2");
    assertNotEquals(before, after);
    words.text(after);
  }

  static String words(Element drawing) {
    return drawing.select("> desc").text();
  }

  /** A name in a list of face-offs, flags, tries or rulings leads to the page of that player. */
  @Test
  void everyNameLeadsToHisPage() {
    int links = 0;
    int sentences = 0;
    for (BookRun book : List.of(season, game, tags)) {
      Set<String> about = new HashSet<>(book.pages.keySet());
      for (Map.Entry<String, Document> page : book.pages.entrySet()) {
        for (Element name : page.getValue().select("td.name:has(a), dd:has(a[href*=players/])")) {
          String to = name.selectFirst("a").attr("href").replace("../", "");
          assertTrue(about.contains(to), page.getKey() + " leads to " + to);
          assertEquals(book.pages.get(to).select("h1").text(), name.text(), page.getKey());
          links++;
        }
        for (Element name : page.getValue().select("ol.says a")) {
          Document to = book.pages.get(name.attr("href"));
          assertTrue(name.text().endsWith(to.select("h1").text()), name.text());
          sentences++;
        }
        // Whoever has a page and stands in a list leads there.
        for (Element row :
            page.getValue().select("th:contains(Had it last), th:contains(Let go by)")) {
          int column = row.elementSiblingIndex();
          for (Element tr : row.closest("table").select("tbody tr:not(.zero)")) {
            Element cell = tr.child(column);
            assertTrue(
                cell.text().equals(Want.NONE) || cell.selectFirst("a") != null,
                page.getKey() + ": " + cell.text());
          }
        }
      }
    }
    System.out.println(links + " names lead to their pages.");
    assertTrue(links > 600, links + " names");
    assertTrue(sentences > 0);
  }

  @Test
  void everyFlagSaysWhatItsRowSays() {
    int figures = 0;
    for (BookRun book : List.of(season, game, tags)) {
      Document page = book.pages.get("flags.html");
      figures +=
          cards(
              book,
              page.select("details.flag:not(.near):not(.look)"),
              ListFigures.dearest(book.data, false));
      figures += cards(book, page.select("details.near"), ListFigures.nearMisses(book.data));
      List<BookData.Row> look = ListFigures.toLookAt(book.data);
      List<BookData.Row> opening = ListFigures.firstToLookAt(book.data);
      figures +=
          cards(
              book,
              page.select("details.look"),
              look.stream().filter(r -> look.indexOf(r) < 10 || opening.contains(r)).toList());
      figures += dearest(book);
    }
    System.out.println(figures + " figures of flags recomputed.");
  }

  /** Each card says what its row says, in the order of the rows. */
  private static int cards(BookRun book, List<Element> cards, List<BookData.Row> inOrder) {
    List<BookData.Row> rows = ListFigures.ownFirst(book.data, inOrder);
    int figures = 0;
    assertEquals(rows.size(), cards.size());
    for (int at = 0; at < cards.size(); at++) {
      Element card = cards.get(at);
      BookData.Row row = rows.get(at);
      List<String> shown = new ArrayList<>(card.select("dd").eachText());
      List<Want> wants = new ArrayList<>(ListFigures.flagList(book.data, row));
      String sentence = card.select("> summary > p").text();
      assertEquals(row.get("sentence"), sentence);
      // Where the chance falls short the sentence says by what; then on what the chance rests.
      String said = sentence.replaceFirst("(; (a flag|trying) .*?)?\\. [A-Z].*$", "");
      shown.addAll(List.of(said, card.select("h3").text()));
      wants.add(ListFigures.flagSentence(row));
      wants.add(ListFigures.flagHeading(book.data, row));
      drawings(
          book, row, card, List.of("chart thumbnail", "chart wide", "chart narrow"), wants, shown);
      figures += fit(wants, shown);
    }
    return figures;
  }

  /** All forms of a card's drawing; what is written in the large ones is in their words. */
  private static void drawings(
      BookRun book,
      BookData.Row row,
      Element card,
      List<String> forms,
      List<Want> wants,
      List<String> shown) {
    List<Element> drawings = card.select("svg");
    assertEquals(forms, drawings.stream().map(Element::className).toList());
    for (Element drawing : drawings) {
      wants.add(ListFigures.flagDrawing(book.data, row));
      shown.add(words(drawing));
      PictureFigures.written(card.id(), drawing, words(drawing), List.of());
    }
  }

  /** The opening page's short list: the same cards, with the drawings of the page of flags. */
  private static int dearest(BookRun book) {
    int figures = 0;
    List<BookData.Row> rows = ListFigures.clips(book.data);
    List<Element> items = book.pages.get("index.html").select("ol.dearest > li");
    assertEquals(rows.size(), items.size());
    for (int at = 0; at < items.size(); at++) {
      BookData.Row row = rows.get(at);
      Element item = items.get(at);
      List<Want> wants = new ArrayList<>(ListFigures.dearestList(book.data, row));
      wants.add(ListFigures.flagHeading(book.data, row));
      List<String> shown = new ArrayList<>(item.select("dd").eachText());
      shown.add(item.select("h3").text());
      drawings(book, row, item, List.of("chart wide", "chart narrow"), wants, shown);
      figures += fit(wants, shown);
      String card = item.select("h3 a").attr("href").replace("flags.html#", "");
      Element there = book.pages.get("flags.html").getElementById(card);
      assertEquals(item.select("h3").text(), there.select("h3").text(), card);
    }
    return figures;
  }

  static int fit(List<Want> wants, List<String> shown) {
    int figures = 0;
    assertEquals(wants.size(), shown.size());
    for (int i = 0; i < wants.size(); i++) {
      assertTrue(wants.get(i).fits(shown.get(i)), shown.get(i) + ", wanted " + wants.get(i));
      figures += wants.get(i).figure() ? 1 : 0;
    }
    return figures;
  }
}
