package twostrides.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** One guard for every CSV file that is written. */
class CsvOutTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      ignoreLeadingAndTrailingWhitespace = false,
      value = {
        "=1+1|'=1+1",
        "@sum|'@sum",
        "+1+cmd|'+1+cmd",
        "-x|'-x",
        "-|'-",
        "-1.2.3|'-1.2.3",
        "-.5|'-.5",
        "+1.|'+1.",
        "--1|'--1",
        " =1|' =1",
        "\uff1d1|'\uff1d1",
        "x;=1+1|x;'=1+1",
        "x; =1+1|x;' =1+1",
        "x;\"=1+1\"|x;'\"=1+1\"",
        "x;y;-z;@w|x;y;'-z;'@w",
        "x\t=1|x\t'=1",
      })
  void whatASpreadsheetWouldRunIsText(String text, String guarded) {
    assertEquals(guarded, CsvOut.guarded(text));
    assertEquals(guarded, CsvOut.guarded(guarded), "once is enough");
  }

  @Test
  void alsoBehindALineEnd() {
    assertEquals("x\n'=1\r'=2\r\n'=3", CsvOut.guarded("x\n=1\r=2\r\n=3"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "8 Sole Brandt", "-3.2", "+1", "-3,2", "4; -9; 14", "a=b", "x; y", "1-2"})
  void otherTextStaysAsItIs(String text) {
    assertEquals(text, CsvOut.guarded(text));
  }

  /** An empty first cell is quoted, so that no reader takes the line for an empty one. */
  @Test
  void rowsAreQuotedWhereTheyMustBe() throws IOException {
    StringBuilder out = new StringBuilder();
    try (CsvOut csv = new CsvOut(out)) {
      csv.row("=a", 3, "b, \"c\"");
      csv.row("", -3.5, "d\ne");
    }
    assertEquals("'=a,3,\"b, \"\"c\"\"\"\n\"\",-3.5,\"d\ne\"\n", out.toString());
  }
}
