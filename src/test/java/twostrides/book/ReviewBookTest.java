package twostrides.book;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TimeZone;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twostrides.exits.Settings;
import twostrides.game.Anonymous;
import twostrides.game.SeasonReader;
import twostrides.game.SheetsRead;
import twostrides.season.Columns;
import twostrides.season.Season;
import twostrides.season.SeasonTables;
import twostrides.season.SkatersAtRelease;
import twostrides.sheet.SheetException;

/** A whole book from tables: safe with any name, complete, and the same every time. */
class ReviewBookTest {

  private static final Pattern REFERENCE =
      Pattern.compile("(?:href|src|action|data|poster)\\s*=\\s*\"([^\"]*)\"");

  private static final Season HOSTILE_SEASON =
      SeasonTables.drawn(
              3, 4, "<img src=x onerror=alert(1)>", List.of("../up", "=1+1"), Shelf.HOSTILE, 300)
          .season();

  private static final Season PLAIN_SEASON =
      SeasonTables.drawn(
              11, 3, "Herons", List.of("Wolves", "Otters"), List.of("8 Brandt", "17 Vance"), 240)
          .season();

  @TempDir private static Path shared;

  /** Books of the two seasons, written once for all tests: their pictures as PNG take long. */
  private static SortedMap<String, byte[]> hostile;

  private static SortedMap<String, byte[]> plain;

  @TempDir Path dir;

  @BeforeAll
  static void books() throws IOException {
    hostile = book(shared.resolve("hostile"), HOSTILE_SEASON);
    plain = book(shared.resolve("plain"), PLAIN_SEASON);
  }

  private static SortedMap<String, byte[]> book(Path dir, Season tables) throws IOException {
    Path out = dir.resolve("book");
    Shelf.write(out, tables);
    return Collections.unmodifiableSortedMap(Shelf.files(out));
  }

  private static String withoutOwnFiles(String page, SortedMap<String, byte[]> files) {
    String scripts = Shelf.text(files.get("book.js")) + Shelf.text(files.get("compare.js"));
    return page.replaceAll("<script src=\"(\\.\\./)?(book|compare|meeting)\\.js\"></script>", "")
        // The book as one file holds them.
        .replace("<script>" + scripts + "</script>", "")
        // Data for the page's script: no < may stand in it.
        .replaceFirst(
            "<script type=\"application/json\" id=\"(compare\\.html:)?compared\">[^<]*</script>",
            "");
  }

  @Test
  void namesFromSheetsAreNeverMarkup() throws IOException {
    SortedMap<String, byte[]> files = hostile;
    for (Map.Entry<String, byte[]> f : files.entrySet()) {
      String text = Shelf.text(f.getValue());
      if (f.getKey().endsWith(".html") || f.getKey().endsWith(".svg")) {
        text = withoutOwnFiles(text, files);
        assertFalse(text.contains("<script"), f.getKey());
        assertFalse(text.contains("<img"), f.getKey());
        assertFalse(text.contains("<b>"), f.getKey());
        assertFalse(text.contains("]]></style>"), f.getKey());
        assertFalse(Pattern.compile("<[^>\"]*\\sonload=").matcher(text).find(), f.getKey());
      }
    }
    String players = Shelf.text(files.get("players.html"));
    assertTrue(players.contains("&lt;script&gt;alert("), "the name itself is shown");
    assertTrue(players.contains("${1+1} @for"), "nothing in a name is run by the pages");
  }

  @Test
  void fileNamesHoldOnlyPlainLettersAndNothingLeavesTheFolder() throws IOException {
    SortedMap<String, byte[]> files = hostile;
    for (String name : files.keySet()) {
      assertTrue(
          name.matches(
              "(book\\.(css|js)|chart\\.css|(compare|meeting)\\.js|icon\\.svg|img-src-x-onerror-alert-1-book\\.html|(index|meeting|icings|players|opponents|flags|restarts|rulings|costs|kill|empty-net|slices|compare|numbers)\\.html|(teams|players|sheets|charts|data|clips|clips/players|clips/sheets)/[a-z0-9-]+\\.(html|svg|png|csv|vtt|xspf|m3u))"),
          name);
      assertTrue(name.length() < 80, name);
    }
    assertEquals(
        1,
        shared.resolve("hostile").toFile().list().length,
        "only the book itself lies in the folder it was given");
  }

  @Test
  void nothingIsFetchedAndEveryLinkLeadsToAFileOfTheBook() throws IOException {
    SortedMap<String, byte[]> files = hostile;
    int links = 0;
    for (Map.Entry<String, byte[]> f : files.entrySet()) {
      if (!f.getKey().endsWith(".html")) {
        continue;
      }
      String page = withoutOwnFiles(Shelf.text(f.getValue()), files);
      String named = page.replaceAll("xmlns(:xlink)?=\"http://(www\\.w3|xspf)\\.org/[^\"]*\"", "");
      assertFalse(named.contains("http:") || named.contains("https:"), f.getKey());
      assertFalse(page.contains("@import"), f.getKey());
      Matcher m = REFERENCE.matcher(page);
      while (m.find()) {
        if (!m.group(1).startsWith("#")) {
          String[] parts = m.group(1).split("#", 2);
          Path target = Path.of(f.getKey()).resolveSibling(parts[0]).normalize();
          byte[] there = files.get(target.toString().replace('\\', '/'));
          assertNotNull(there, f.getKey() + ": " + m.group(1));
          // A filter of a table is set by its address; everything else is a part of the page.
          String part =
              parts.length == 1 || parts[1].matches("f\\d+-[a-z-]+=.+")
                  ? ""
                  : "id=\"" + parts[1] + "\"";
          assertTrue(Shelf.text(there).contains(part), f.getKey() + ": " + m.group(1));
          links++;
        }
      }
    }
    assertTrue(links > 100, links + " links");
  }

  @Test
  void everyPlayerAndTeamHasAPageWithPicturesAndTheirSlides() throws IOException {
    SortedMap<String, byte[]> files = plain;
    List<String> pages =
        files.keySet().stream()
            .filter(n -> n.startsWith("teams/") || n.startsWith("players/"))
            .toList();
    assertEquals(
        List.of(
                "players/001-17-vance.html",
                "players/002-8-brandt.html",
                "players/003-8-brandt.html",
                "players/004-17-vance.html",
                "players/005-17-vance.html",
                "players/006-8-brandt.html",
                "teams/01-herons.html",
                "teams/02-wolves.html",
                "teams/03-otters.html")
            .stream()
            .map(n -> n.replaceAll("^(players/\\d+).*", "$1"))
            .toList(),
        pages.stream().map(n -> n.replaceAll("^(players/\\d+).*", "$1")).toList());
    for (String page : pages) {
      String html = Shelf.text(files.get(page));
      String stem = page.replace('/', '-').replace(".html", "");
      List<String> kinds =
          page.startsWith("players/")
              ? List.of("-trend", "-map", "-ways")
              : page.contains("herons")
                  ? List.of("-numbers", "-ways", "-zones")
                  : List.of("-against", "-numbers", "-ways", "-zones");
      assertEquals(
          kinds.stream().map(k -> stem + k).toList(),
          Jsoup.parse(html).select("section.answer:has(svg.wide):has(svg.narrow)").eachAttr("id"));
      for (String kind : kinds) {
        assertTrue(files.containsKey("charts/" + stem + kind + ".png"), stem + kind);
      }
    }
  }

  @Test
  void pagesSayTheirLanguageAndTablesTheirHeads() throws IOException {
    for (Map.Entry<String, byte[]> f : plain.entrySet()) {
      if (f.getKey().endsWith(".html")) {
        String page = Shelf.text(f.getValue());
        assertTrue(page.startsWith("<!DOCTYPE html>"), f.getKey());
        assertTrue(page.contains("<html lang=\"en\">"), f.getKey());
        assertEquals(
            page.split("<table", -1).length, page.split("<caption", -1).length, f.getKey());
        assertTrue(page.contains("Everything in this book stays on this machine."), f.getKey());
        assertTrue(
            page.contains("Arriving first is not worth arriving out of control."), f.getKey());
      }
    }
  }

  @Test
  void tablesOpenSafelyInASpreadsheetAndKeepTheirNumbers() throws IOException {
    SortedMap<String, byte[]> files = hostile;
    String csv = Shelf.text(files.get("data/exits.csv"));
    try (CSVParser rows =
        CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .get()
            .parse(new StringReader(csv))) {
      boolean guarded = false;
      int row = 0;
      for (CSVRecord r : rows) {
        for (String column : List.of(Columns.PLAYER, Columns.TEAM, Columns.OPPONENT)) {
          assertFalse(r.get(column).matches("[=+@-].*"), r.get(column));
        }
        guarded |= r.get(Columns.PLAYER).equals("'=CMD(\"calc\")");
        double x = HOSTILE_SEASON.exits().doubleColumn(Columns.RELEASE_X_M).getDouble(row++);
        assertEquals(x, Double.parseDouble(r.get(Columns.RELEASE_X_M)), 0.005);
        assertTrue(r.get(Columns.RELEASE_X_M).matches("-?\\d+\\.\\d\\d"));
      }
      assertEquals(HOSTILE_SEASON.exits().rowCount(), row);
      assertTrue(guarded);
    }
    assertFalse(csv.contains("\r"));
  }

  /** A game of two players a team whose pucks are let go short of center, some of them iced. */
  private String named() throws IOException {
    StringBuilder rows =
        new StringBuilder("period,clock,team,player,action,x_m,y_m,stoppage,on_ice\n");
    for (int i = 0; i < 60; i++) {
      String team = i % 3 == 0 ? "Wolves" : "Herons";
      String player = i % 2 == 0 ? "8 Brandt" : "17 Vance";
      int minute = 19 - i % 20;
      rows.append(
          String.format(
              Locale.ROOT,
              "%d,%d:50,%s,%s,recovery,-20,3,,8 Brandt; 17 Vance%n"
                  + "%1$d,%2$d:46,%3$s,%4$s,release,-5,3,,8 Brandt; 17 Vance%n"
                  + "%1$d,%2$d:40,%3$s,,stoppage,,,%5$s,%n"
                  + "%1$d,%2$d:39,%3$s,%4$s,faceoff,%6$d,6.7,,8 Brandt; 17 Vance%n",
              1 + i / 20,
              minute,
              team,
              player,
              i % 4 == 0 ? "icing" : "other",
              i % 4 == 0 ? -21 : 0));
    }
    return Files.writeString(dir.resolve("one.csv"), rows).toString();
  }

  @Test
  void aBookWithoutNamesHoldsNoneAnywhere() throws IOException, SheetException {
    SheetsRead read = SeasonReader.at(named());
    Season season =
        Season.of(
            Anonymous.games(read.games()), List.of(), Settings.DEFAULT, SkatersAtRelease.NONE);
    assertTrue(season.flags().rowCount() > 0, "flags name players too");
    SortedMap<String, byte[]> book = book(dir.resolve("without"), season);
    assertTrue(Shelf.text(book.get("players.html")).contains("No. 17"));
    for (Map.Entry<String, byte[]> f : book.entrySet()) {
      String text = Shelf.text(f.getValue());
      for (String name : List.of("Brandt", "Vance", "brandt", "vance")) {
        assertFalse(text.contains(name) || f.getKey().contains(name), f.getKey());
      }
    }
  }

  @Test
  void theSameTablesWriteTheSameBytesWhateverTheMachineIsSetTo() throws IOException {
    Path second = dir.resolve("second");
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Apia"));
      Shelf.write(second, HOSTILE_SEASON);
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
    SortedMap<String, byte[]> b = Shelf.files(second);
    assertEquals(hostile.keySet(), b.keySet());
    hostile.forEach((name, bytes) -> assertArrayEquals(bytes, b.get(name), name));
  }

  @Test
  void noneOneAndTwoHundredAttemptsMakeABook() throws IOException {
    for (int attempts : new int[] {0, 1, 200}) {
      Path out = dir.resolve("book" + attempts);
      Shelf.write(
          out,
          SeasonTables.drawn(attempts, 1, "Herons", List.of("Wolves"), List.of("8"), attempts)
              .season());
      String index = Shelf.text(Shelf.files(out).get("index.html"));
      assertFalse(index.contains("NaN"));
      assertEquals(attempts > 0, index.contains("id=\"team-ways\""));
      String restarts = Shelf.text(Shelf.files(out).get("restarts.html"));
      assertTrue(attempts > 0 || restarts.contains("No defensive-zone face-off in these sheets."));
    }
  }
}
