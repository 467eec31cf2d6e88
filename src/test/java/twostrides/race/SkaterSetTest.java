package twostrides.race;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A team's own skaters. */
class SkaterSetTest {

  @TempDir Path dir;

  private SkaterSet set(String toml) throws IOException {
    Path file = Files.writeString(dir.resolve("ours.toml"), toml.replace(" / ", "\n"));
    return SkaterSet.find(file.toString());
  }

  @Test
  void aLevelByItsWord() {
    assertEquals(SkaterSet.of(SkaterLevel.JUNIOR), SkaterSet.find("junior"));
    IllegalArgumentException e =
        assertThrows(IllegalArgumentException.class, () -> SkaterSet.find("pros"));
    assertTrue(e.getMessage().contains("elite-men"), e.getMessage());
  }

  @Test
  void ownNumbersReplaceThoseOfTheLevel() throws IOException {
    SkaterSet ours =
        set("starts-from = \"junior\" / name = \"Ours\" / top-speed = 8.9 / reach = 1.2");
    assertEquals("Ours", ours.name());
    assertEquals(8.9, ours.settings().topSpeed());
    assertEquals(1.2, ours.settings().reach());
    assertEquals(SkaterLevel.JUNIOR.settings().tau(), ours.settings().tau());
  }

  /** Kimberley's splits, R package shorts, README at commit 06d389e: 9.1278 m/s, 1.3776 s. */
  @Test
  void splitsAreFitted() throws IOException {
    SkaterSet ours =
        set(
            "starts-from = \"elite-women\" / splits = { distances = [5, 10, 15, 20, 30, 40], times ="
                + " [1.158, 1.893, 2.541, 3.149, 4.313, 5.444], offset = 0.3 }");
    assertEquals(9.1278, ours.settings().topSpeed(), 5e-5);
    assertEquals(1.3776, ours.settings().tau(), 5e-5);
    SkaterSet free =
        set(
            "starts-from = \"elite-women\" / splits = { distances = [5, 10, 15, 20, 30, 40], times ="
                + " [1.158, 1.893, 2.541, 3.149, 4.313, 5.444], offset = \"fit\" }");
    assertEquals(8.9748, free.settings().topSpeed(), 5e-5);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          starts-from = "pros"                                       | line 1, key starts-from | the level that this one starts from
          starts-from = "junior" / speed = 9                         | line 2, key speed       | one of starts-from, name
          starts-from = "junior" / top-speed = "9"                   | line 2, key top-speed   | a number without quotes
          starts-from = "junior" / top-speed = 40                    | top speed               | from 1.0 to 15.0
          starts-from = "junior" / tau = 1 / splits = { distances = [5], times = [1] } | key splits | one or the other
          starts-from = "junior" / splits = { distances = [5], times = [1] }           | key splits | splits that a sprint can have
          starts-from = "junior" / splits = { distances = 5, times = [1] }             | splits.distances | numbers in brackets
          starts-from = junior                                       | line 1                  | lines such as
          """)
  void refusesWithFileLineAndKey(String toml, String where, String expected) {
    IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> set(toml));
    assertTrue(e.getMessage().contains("ours.toml"), e.getMessage());
    assertTrue(e.getMessage().contains(where), e.getMessage());
    assertTrue(e.getMessage().contains(expected), e.getMessage());
  }
}
