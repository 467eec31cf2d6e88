package twostrides.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twostrides.clips.ClipFiles;

/**
 * Every figure on players' sheets, worked out once more from the tables in the book's data folder:
 * the advice by its rules, the moments and their order, the drawings, the clip lists. Tables of
 * sheets are checked with all others, see {@link FiguresTest}.
 */
class SheetFiguresTest {

  @TempDir static Path dir;

  private static BookRun season;
  private static BookRun tags;

  @BeforeAll
  static void run() throws IOException {
    season =
        BookRun.of(
            dir.resolve("season"),
            "sample-data",
            "--all-players",
            "--simulations",
            "100",
            "--window",
            "25");
    tags =
        BookRun.of(
            dir.resolve("tags"),
            Files.writeString(dir.resolve("tags.csv"), FiguresTest.tagSheet()).toString());
  }

  /** Everything on a player's sheet besides its table, in the order of the team's players. */
  @Test
  void everySheetSaysWhatItsDataSay() {
    int figures = 0;
    for (BookRun book : List.of(season, tags)) {
      SheetMoments moments = new SheetMoments(book.data);
      for (Map.Entry<String, Document> page : book.pages.entrySet()) {
        if (PageTable.kind(page.getKey()).equals("sheets")) {
          String team = book.team(page.getKey());
          List<BookData.Player> players =
              book.players.stream().filter(p -> p.team().equals(team)).toList();
          List<Element> sheets = page.getValue().select("section.one");
          assertEquals(players.size(), sheets.size(), page.getKey());
          for (int i = 0; i < sheets.size(); i++) {
            figures += sheet(book, moments, players.get(i), sheets.get(i));
          }
        }
      }
    }
    System.out.println(figures + " figures on players' sheets recomputed.");
    assertTrue(figures > 1000, figures + " figures");
  }

  private static int sheet(BookRun book, SheetMoments moments, BookData.Player p, Element sheet) {
    assertEquals("player=" + (book.players.indexOf(p) + 1), sheet.id());
    List<SheetMoments.Item> worked = moments.worked(p);
    List<SheetMoments.Item> talk = moments.talk(p);
    List<Want> wants =
        new ArrayList<>(
            List.of(
                Want.name(p.name()),
                book.sheets.who(p),
                new SheetAdvice(book.data, p).sentence(worked.size() + talk.size()),
                book.figures.change(p),
                Want.text(SheetMoments.heading(worked, "that worked", 1)),
                Want.text(SheetMoments.heading(talk, "to talk about", 2))));
    worked.forEach(i -> wants.addAll(i.words()));
    talk.forEach(i -> wants.addAll(i.words()));
    List<Element> headings = sheet.select("h3");
    List<String> shown =
        new ArrayList<>(
            List.of(
                sheet.select("> h2").text(),
                sheet.select(".who").text(),
                sheet.select(".advice").text(),
                sheet.select(".better > span").text(),
                headings.get(0).text(),
                headings.get(1).text()));
    for (Element item : sheet.select("li:not(figcaption li)")) {
      shown.add(item.select("> i").text());
      shown.add(item.ownText());
      shown.addAll(item.select("dd").eachText());
    }
    String map = sheet.select("svg.paper > desc").text();
    for (String kind : sheet.select("figcaption li").eachText()) {
      assertTrue(map.contains(kind), p.name() + ": " + kind + " is not in " + map);
    }
    return FiguresTest.fit(wants, shown) + pictures(book, p, sheet.select("svg:not(.sign)"));
  }

  /** The map in the form for paper. */
  private static int pictures(BookRun book, BookData.Player p, List<Element> pictures) {
    List<BookData.Row> releases = BookData.rows(book.data.releases, BookData.of(p));
    assertEquals(List.of("chart paper"), pictures.stream().map(Element::className).toList());
    return PictureFigures.onPaper(releases, pictures.get(0));
  }

  /** The clips of a sheet: the moments with a video second, in their order, in their words. */
  @Test
  void theClipsOfASheetAreItsMoments() throws Exception {
    SheetMoments moments = new SheetMoments(season.data);
    int clips = 0;
    for (int i = 0; i < season.players.size(); i++) {
      BookData.Player p = season.players.get(i);
      List<SheetMoments.Item> items = new ArrayList<>(moments.worked(p));
      items.addAll(moments.talk(p));
      String name = String.format(java.util.Locale.ROOT, "season/clips/sheets/%03d", i + 1);
      Path csv = dir.resolve(name + ".csv");
      assertEquals(!items.isEmpty(), Files.exists(csv), p.name());
      if (items.isEmpty()) {
        continue;
      }
      List<Map<String, String>> rows = ClipFiles.csv(Files.readString(csv));
      List<ClipFiles.Track> tracks = ClipFiles.xspf(Files.readString(dir.resolve(name + ".xspf")));
      assertEquals(items.size(), rows.size(), p.name());
      assertEquals(items.size(), tracks.size(), p.name());
      for (int c = 0; c < items.size(); c++) {
        BookData.Row row = items.get(c).row();
        assertEquals(row.get("game"), rows.get(c).get("game"), p.name() + ", clip " + c);
        assertEquals(
            Math.max(0, row.number("video_s") - 4),
            Double.parseDouble(rows.get(c).get("start_s")),
            0.06);
        String title = ", " + rows.get(c).get("title").replaceFirst(", ", ". ");
        assertTrue(items.get(c).words().get(1).fits(title), title);
        assertEquals(rows.get(c).get("title"), tracks.get(c).title());
        clips++;
      }
    }
    assertTrue(clips > 200, clips + " clips");
  }
}
