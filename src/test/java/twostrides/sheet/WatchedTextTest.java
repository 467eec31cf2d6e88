package twostrides.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Patterns that would look for ever, or deeper than the stack, end. */
class WatchedTextTest {

  private static final String LONG = "a".repeat(200_000);

  @ParameterizedTest
  @ValueSource(strings = {"((a+)+)b", "(a*a*a*a*b)", "((a|aa)+)$b", "((?:a|b)*)c"})
  void aPatternThatNeverEndsIsGivenUp(String regex) {
    Pattern pattern = Pattern.compile(regex);
    assertTimeoutPreemptively(
        Duration.ofSeconds(10),
        () -> {
          assertEquals(Optional.empty(), Source.taken(Optional.of(pattern), LONG));
          assertTrue(WatchedText.isTooHard(pattern, LONG));
        });
  }

  @Test
  void anOrdinaryPatternReadsLongCells() {
    Pattern pattern = Pattern.compile("^a+ (\\d+)$");
    assertEquals(Optional.of("12"), Source.taken(Optional.of(pattern), LONG + " 12"));
    assertEquals(Optional.empty(), Source.taken(Optional.of(pattern), LONG));
    assertFalse(WatchedText.isTooHard(pattern, LONG));
  }
}
