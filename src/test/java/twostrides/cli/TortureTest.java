package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The torture corpus: hundreds of inputs that nobody should give and somebody will, each with the
 * exit code and the words that it must get. None of them gets a stack trace, loses a row from the
 * count, or leaves a book behind where the run failed.
 */
class TortureTest {

  private static final Pattern SUM =
      Pattern.compile("(\\d+) rows read = (\\d+) rows used \\+ (\\d+) rows set aside");

  @TempDir Path dir;

  static List<TortureCase> cases() throws IOException {
    return TortureCase.all();
  }

  @Test
  void theCorpusIsLargeAndNamesEachCaseOnce() throws IOException {
    Set<String> names = new HashSet<>();
    for (TortureCase c : cases()) {
      assertTrue(names.add(c.name()), c.name());
    }
    assertTrue(names.size() >= 300, names.size() + " cases");
  }

  @ParameterizedTest
  @MethodSource("cases")
  @Timeout(60)
  void eachEndsAsItMust(TortureCase c) throws IOException {
    Run run = c.run(dir);
    String said = run.out() + run.err();
    assertEquals(c.exit(), run.code(), said);
    for (String words : c.says()) {
      String expected = words.replace("SHEET", "sheet.csv").replace("EXTRA", "extra");
      assertTrue(said.contains(expected), () -> "does not say " + expected + ": " + said);
    }
    assertFalse(said.contains("Something inside went wrong"), said);
    assertFalse(said.contains("\tat "), said);
    assertFalse(said.contains("Exception"), said);
    Matcher sum = SUM.matcher(said);
    while (sum.find()) {
      assertEquals(
          Long.parseLong(sum.group(1)),
          Long.parseLong(sum.group(2)) + Long.parseLong(sum.group(3)),
          said);
    }
    if (c.exit() != 0) {
      assertFalse(Files.exists(dir.resolve("out")), "nothing was written");
    }
  }
}
