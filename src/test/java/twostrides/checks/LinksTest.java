package twostrides.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Links of the docs to one another lead to files and headings that are there. */
class LinksTest {

  private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");
  private static final Pattern ELSEWHERE = Pattern.compile("[a-z]+:.*");

  private static List<Path> pages() throws IOException {
    try (Stream<Path> docs = Files.walk(Path.of("docs"))) {
      return Stream.concat(
              Stream.of(Path.of("README.md"), Path.of("DEVELOPERS.md")),
              docs.filter(f -> f.toString().endsWith(".md")).sorted())
          .toList();
    }
  }

  /** The address of a heading: its letters, digits and hyphens, spaces made hyphens. */
  static String anchor(String heading) {
    return heading
        .replaceFirst("^#+ ", "")
        .strip()
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^\\p{L}\\p{N} _-]", "")
        .replace(' ', '-');
  }

  private static Set<String> anchors(Path page) throws IOException {
    return Files.readAllLines(page).stream()
        .filter(l -> l.matches("#+ .*"))
        .map(LinksTest::anchor)
        .collect(Collectors.toSet());
  }

  @Test
  void everyLinkLeadsSomewhere() throws IOException {
    List<String> dead = new ArrayList<>();
    int links = 0;
    for (Path page : pages()) {
      Matcher m = LINK.matcher(Files.readString(page));
      while (m.find()) {
        String link = m.group(1);
        if (ELSEWHERE.matcher(link).matches()) {
          continue;
        }
        links++;
        String[] parts = link.split("#", 2);
        Path to = parts[0].isEmpty() ? page : page.resolveSibling(parts[0]).normalize();
        if (!Files.exists(to) || (parts.length == 2 && !anchors(to).contains(parts[1]))) {
          dead.add(page + ": " + link);
        }
      }
    }
    assertEquals("", String.join("\n", dead), "links that lead nowhere");
    assertTrue(links > 50, links + " links");
  }

  @Test
  void anAnchorIsMadeOfItsHeading() {
    assertEquals(
        "release-to-whistle-openwhistletest", anchor("### Release to whistle (`OpenWhistleTest`)"));
    assertEquals("its-kind-iced", anchor("### Its kind: iced"));
  }
}
