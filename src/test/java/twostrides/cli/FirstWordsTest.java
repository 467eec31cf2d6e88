package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What somebody reads first: whole sentences, the answer before its grounds, one line of error. */
class FirstWordsTest {

  @TempDir Path dir;

  @Test
  void everyCommandIsDescribedByWholeSentences() {
    List<String> lines = Run.of("--help").lines();
    List<String> commands =
        lines.subList(lines.indexOf("Commands:") + 1, lines.lastIndexOf("")).stream()
            .map(String::strip)
            .toList();
    assertTrue(commands.size() >= 8, commands.toString());
    String all = String.join(" ", commands);
    for (String command :
        all.split(" (?=(?:review|check|map|ruling|whatif|rulebooks|tag|demo)  )", -1)) {
      assertTrue(command.matches("(?s).*[.?]"), command);
    }
  }

  @Test
  void theAnswerOfWhatIfComesFirst() {
    List<String> lines = Run.of("whatif", "--release", "-5,6", "--pressure", "light").lines();
    assertTrue(lines.get(0).startsWith("Cheapest by these numbers: release now"), lines.get(0));
    assertEquals(
        "Chance of icing 10 % (7 to 13 %), chance of gaining center 87 % (58 to 99 %).",
        lines.get(1));
    assertEquals("", lines.get(2));
    assertEquals(1, lines.stream().filter(l -> l.startsWith("Cheapest by these numbers")).count());
    String past = Run.of("whatif", "--release", "5,6").lines().get(0);
    assertTrue(past.startsWith("No icing: "), past);
  }

  @ParameterizedTest
  @ValueSource(strings = {"review --nonsense", "whatif --release", "nonsense", "check"})
  void whatWasNotUnderstoodIsOneLine(String words) {
    Run run = Run.of((Object[]) words.split(" ", -1));
    assertEquals(Main.USAGE, run.code());
    List<String> lines = run.err().lines().toList();
    assertFalse(run.err().contains("Usage:"), run.err());
    assertTrue(lines.get(lines.size() - 1).matches("Help: two-strides.* --help"), run.err());
    assertTrue(lines.size() <= 3, run.err());
  }

  @Test
  void aReviewSaysWhetherARulebookWasChosen() {
    Run none = Run.of("review", "sample-data/game-01-GLA-TAR.csv", "--out", dir.resolve("a"));
    assertEquals(Main.DONE, none.code(), none.err());
    assertTrue(
        none.out()
            .contains(
                ", as none was chosen: --rulebook names your league's (two-strides rulebooks)."),
        none.out());
    assertFalse(none.out().contains("assumed, no source found"), none.out());
  }
}
