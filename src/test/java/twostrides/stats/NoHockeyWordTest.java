package twostrides.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Counts and waiting times know no hockey: a statistician reads {@code stats} without learning what
 * an icing is. Code and comments are searched for words of the game, also inside names.
 */
class NoHockeyWordTest {

  private static final Path SOURCES = Path.of("src/main/java/twostrides/stats");

  /** Whole words: "periodic" is none. "Center" is a word of statistics too and may stand. */
  private static final Pattern WORDS =
      Pattern.compile(
          "\\b(?:hockey|icing|iced|puck|skater|goal|goalkeeper|face.?off|rink|period|penalty|penalties"
              + "|shorthanded|power.?play|kill|zone|exit|team|player|stick|shot|referee|linesman"
              + "|boards|restart|strength|ice|bench|shift|season|league|whistle)s?\\b");

  /** Names are taken apart where a capital begins, so that {@code puckSpeed} is two words. */
  private static List<String> hockeyWords(String text) {
    String words =
        text.replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ").replace('_', ' ').toLowerCase(Locale.ROOT);
    List<String> found = new ArrayList<>();
    Matcher m = WORDS.matcher(words);
    while (m.find()) {
      found.add(m.group());
    }
    return found;
  }

  @Test
  void noSourceHasAWordOfTheGame() throws IOException {
    List<String> found = new ArrayList<>();
    int files = 0;
    try (Stream<Path> sources = Files.list(SOURCES)) {
      for (Path source : sources.sorted().toList()) {
        files++;
        List<String> lines = Files.readAllLines(source);
        for (int i = 0; i < lines.size(); i++) {
          for (String word : hockeyWords(lines.get(i))) {
            found.add(source.getFileName() + ", line " + (i + 1) + ": " + word);
          }
        }
      }
    }
    assertTrue(files > 5, "the folder is empty: " + SOURCES);
    assertEquals(List.of(), found);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "int puckSpeed",
        "ICING_RATE",
        "/** The face-offs. */",
        "the skaters' places",
        "faceOffsWon",
        "long goals",
        "after the third period"
      })
  void theSearchFinds(String text) {
    assertEquals(1, hockeyWords(text).size(), text);
  }
}
