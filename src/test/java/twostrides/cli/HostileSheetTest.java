package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names in a sheet are untrusted text: they show as text everywhere and name no file. */
class HostileSheetTest {

  private static final String MARKUP = "<script>alert(1)</script>";
  private static final List<String> NAMES =
      List.of(
          MARKUP,
          "\"><img src=x onerror=alert(1)>",
          "../../../etc/passwd",
          "=HYPERLINK(1)",
          "\u05d3\u05e0\u05d9 \u202eabc",
          "\ud83c\udfd2 \ud83d\udc68\u200d\ud83d\udc69\u200d\ud83d\udc67",
          "O'Brien & Sons ]]> --> ${7*7}",
          "x".repeat(300));

  @TempDir Path dir;

  @Test
  void namesShowAsText() throws IOException {
    StringBuilder sheet =
        new StringBuilder(
            "period,clock,team,player,action,outcome,x_m,y_m,skaters_for,skaters_against\n");
    int clock = 1190;
    for (String name : NAMES) {
      String quoted = '"' + name.replace("\"", "\"\"") + '"';
      String team = "\"Herons " + MARKUP + "\"";
      sheet
          .append("1,")
          .append(clock)
          .append(',')
          .append(team)
          .append(',')
          .append(quoted)
          .append(",recovery,,-25,5,4,5\n");
      sheet
          .append("1,")
          .append(clock - 4)
          .append(',')
          .append(team)
          .append(',')
          .append(quoted)
          .append(",release,lost,-5,6,4,5\n");
      sheet.append("1,").append(clock - 7).append(",Wolves,9 Vik,faceoff,,21,-6.7,5,5\n");
      clock -= 20;
    }
    Path book = dir.resolve("book");
    StringWriter err = new StringWriter();
    int code =
        Main.run(
            new PrintWriter(new StringWriter()),
            new PrintWriter(err, true),
            "review",
            Files.writeString(dir.resolve("s.csv"), sheet).toString(),
            "--compare-rulebook",
            "usah-girls-14u",
            "--out",
            book.toString());
    assertEquals(0, code, err.toString());

    Pattern reference = Pattern.compile("(?:src|href)=\"([^\"]*)\"");
    int pages = 0;
    try (Stream<Path> files = Files.walk(book)) {
      for (Path p : files.filter(Files::isRegularFile).toList()) {
        String name = book.relativize(p).toString().replace('\\', '/');
        assertTrue(name.matches("[a-z0-9/.-]+"), name);
        if (name.endsWith(".html")) {
          pages++;
          String html = Files.readString(p);
          html = html.replaceFirst("<script src=\"(\\.\\./)?book\\.js\"></script>", "");
          html = html.replaceAll("<img src=\"(\\.\\./)?charts/[a-z0-9-]+\\.svg\"", "");
          assertFalse(html.contains("<script"), name);
          assertFalse(html.contains("<img"), name);
          if (name.startsWith("teams/")
              || name.startsWith("players/")
              || name.equals("index.html")) {
            assertEquals(!name.contains("wolves"), html.contains("&lt;script&gt;"), name);
          }
          Matcher m = reference.matcher(html);
          while (m.find()) {
            assertTrue(
                m.group(1).startsWith("#")
                    || Files.exists(p.resolveSibling(m.group(1).replaceFirst("#.*", ""))),
                name + " leads to " + m.group(1));
          }
        }
      }
    }
    assertEquals(
        8 + 2 + NAMES.size(),
        pages,
        "the opening page, rulings, flags, two teams and eight players");
    String exits = Files.readString(book.resolve("data/exits.csv"));
    assertTrue(exits.contains(",'=HYPERLINK(1),"), "a formula is made text");
  }
}
