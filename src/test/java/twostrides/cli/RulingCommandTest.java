package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands about rulebooks as a user meets them: words, files, exit codes. */
class RulingCommandTest {

  @TempDir Path dir;

  private record Ran(int code, String out, String err) {}

  private static Ran run(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    return new Ran(code, out.toString(), err.toString());
  }

  @Test
  void answersOneQuestionInPlainWords() {
    Ran r =
        run(
            "ruling",
            "--rulebook",
            "iihf",
            "from=own-half",
            "strength=even",
            "puck=crossed",
            "could-play=no",
            "goalkeeper=stayed",
            "race=level");
    assertEquals(Main.DONE, r.code(), r.err());
    assertTrue(r.out().startsWith("IIHF, season 2026-27"), r.out());
    assertTrue(r.out().contains("Icing: from short of the line"), r.out());
    assertTrue(r.out().contains("The icing team may not change (81.4, 82.1, S)."), r.out());
    assertTrue(r.out().contains("the attacking team picks the spot"), r.out());
    assertTrue(r.out().endsWith("The league's rulebook and its officials decide.\n"), r.out());
  }

  @Test
  void saysWhichFactWouldSettleIt() {
    Ran r =
        run(
            "ruling",
            "--rulebook",
            "nhl",
            "from=own-half",
            "strength=even",
            "puck=crossed",
            "could-play=no",
            "race=defender");
    assertTrue(
        r.out().contains("Not yet decided: icing, unless the goalkeeper moved toward the puck."),
        r.out());
    assertTrue(r.out().contains("goalkeeper would settle it: stayed, moved-toward"), r.out());
  }

  @Test
  void theSameClearanceIsRuledBySeason() {
    String[] facts = {"from=own-zone", "strength=shorthanded", "puck=crossed", "could-play=no"};
    for (String[] c :
        List.of(
            new String[] {"2016-17", "No icing"},
            new String[] {"2017-18", "Icing"},
            new String[] {"2024-25", "Icing"},
            new String[] {"2025-26", "Icing"})) {
      Ran r =
          run(
              "ruling",
              "--rulebook",
              "usah-youth-14u",
              "--season",
              c[0],
              facts[0],
              facts[1],
              facts[2],
              facts[3]);
      assertTrue(r.out().contains("\n" + c[1] + ": "), c[0] + ": " + r.out());
    }
  }

  @Test
  void refusesUnknownFactsWordsBooksAndSeasons() {
    assertTrue(run("ruling", "fromm=x").err().contains("expected one of from, contact"));
    assertTrue(run("ruling", "from=x").err().contains("expected unknown, own-zone, own-half"));
    Ran book = run("ruling", "--rulebook", "nhx", "from=own-half");
    assertEquals(Main.USAGE, book.code());
    assertTrue(book.err().contains("expected one of hybrid, touch"), book.err());
    Ran season = run("ruling", "--season", "soon", "from=own-half");
    assertEquals(Main.USAGE, season.code());
    assertTrue(season.err().contains("a season such as 2025-26"), season.err());
  }

  @Test
  void answersAFileAndKeepsItsColumns() throws IOException {
    Path file =
        Files.writeString(
            dir.resolve("q.csv"),
            "id,mine,from,strength,puck,could_play,rulebook,ruling\n"
                + "a,=1+1,own-zone,even,crossed,no,usah-adult,icing\n"
                + "b,x,own-zone,evn,crossed,no,usah-adult,\n"
                + "c,y,own-zone,shorthanded,crossed,no,usah-adult,icing\n");
    Ran r = run("ruling", "--cases", file.toString());
    assertEquals(Main.DONE, r.code(), r.err());
    assertTrue(r.out().contains("3 rows read = 2 rows used + 1 rows set aside."), r.out());
    assertTrue(r.out().contains("1 of 2 rows answered as expected."), r.out());
    assertTrue(
        r.out().contains("line 4: ruling expected \"icing\", answered \"no icing\""), r.out());
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser csv =
        CSVParser.parse(dir.resolve("q-answers.csv"), StandardCharsets.UTF_8, format)) {
      List<CSVRecord> rows = csv.getRecords();
      assertEquals(3, rows.size());
      assertEquals("'=1+1", rows.get(0).get("mine"), "text that a spreadsheet would run");
      assertEquals("icing", rows.get(0).get("answer"));
      assertEquals("yes", rows.get(0).get("as_expected"));
      assertEquals("set aside", rows.get(1).get("answer"));
      assertTrue(rows.get(1).get("answer_sentence").contains("\"evn\""));
      assertEquals("no", rows.get(2).get("as_expected"));
    }
  }

  @Test
  void neverWritesOverTheQuestions() throws IOException {
    Path file = Files.writeString(dir.resolve("q.csv"), "from\nown-half\n");
    Ran r = run("ruling", "--cases", file.toString(), "--out", file.toString());
    assertEquals(Main.UNWRITABLE, r.code());
    assertEquals("from\nown-half\n", Files.readString(file));
  }

  @Test
  void listsTheBooksAndWhatOneHolds() {
    Ran list = run("rulebooks");
    assertEquals(Main.DONE, list.code());
    assertTrue(list.out().contains("usah-girls-14u"), list.out());
    assertTrue(list.out().contains("? looked for, not found: assumed"), list.out());
    Ran one = run("rulebooks", "iihf");
    assertTrue(one.out().contains("no-race = defender-back"), one.out());
    assertTrue(one.out().contains("settings assumed, no source found"), one.out());
    assertFalse(one.out().contains("= null"), one.out());
  }

  /** Fifteen-minute periods: a clock of 16:00 is no clock of that league. */
  @Test
  void thePeriodIsTheBooksWhereTheMapDoesNotSay() throws IOException {
    Path sheet =
        Files.writeString(
            dir.resolve("s.csv"),
            "period,clock,team,player,action,x_m,y_m\n"
                + "1,16:00,Herons,9 Elke,recovery,-25,5\n"
                + "1,14:00,Herons,9 Elke,recovery,-25,5\n"
                + "1,13:00,Wolves,8 Sole,recovery,-25,5\n");
    assertTrue(run("check", sheet.toString()).out().contains("3 rows used + 0 rows set aside"));
    Ran fifteen = run("check", sheet.toString(), "--rulebook", "nfhs");
    assertTrue(fifteen.out().contains("2 rows used + 1 rows set aside"), fifteen.out());
    assertTrue(fifteen.out().contains("a clock from 0:00 to 15:00"), fifteen.out());
  }

  @Test
  void aBrokenBookStopsTheReviewBeforeAnythingIsWritten() throws IOException {
    Path book = Files.writeString(dir.resolve("ours.toml"), "starts-from = \"nhl\"\nx = 1\n");
    Path out = dir.resolve("book");
    Ran r = run("review", "sample-data", "--rulebook", book.toString(), "--out", out.toString());
    assertEquals(Main.UNREADABLE, r.code());
    assertTrue(r.err().contains("ours.toml, line 2, key x: found an unknown key"), r.err());
    assertFalse(Files.exists(out));
  }
}
