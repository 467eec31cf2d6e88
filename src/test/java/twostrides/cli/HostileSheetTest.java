package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names in a sheet are untrusted text: they show as text everywhere and name no file. */
class HostileSheetTest {

  @TempDir Path dir;

  @Test
  void namesShowAsText() throws IOException {
    Path book = HostileNames.review(dir);
    Pattern reference = Pattern.compile("(?:src|href)=\"([^\"]*)\"");
    int pages = 0;
    try (Stream<Path> files = Files.walk(book)) {
      for (Path p : files.filter(Files::isRegularFile).toList()) {
        String name = book.relativize(p).toString().replace('\\', '/');
        assertTrue(name.matches("[a-z0-9/.-]+"), name);
        if (name.endsWith(".html")) {
          pages++;
          String html = Files.readString(p);
          html =
              html.replaceAll(
                  "<script src=\"(\\.\\./)?(book|compare|meeting)\\.js\"></script>", "");
          // Data for the page's script: no < may stand in it.
          html =
              html.replaceFirst(
                  "<script type=\"application/json\" id=\"compared\">[^<]*</script>", "");
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
        14 + 2 + 2 + HostileNames.ALL.size(),
        pages,
        "fourteen pages of the season, two teams, their sheets and eight players");
    String exits = Files.readString(book.resolve("data/exits.csv"));
    assertTrue(exits.contains(",'=HYPERLINK(1),"), "a formula is made text");
  }
}
