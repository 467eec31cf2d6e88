package twostrides.toml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Text that would break the parser is refused at its place; brackets in strings are text. */
class TomlTextTest {

  @ParameterizedTest
  @ValueSource(strings = {"[", "{a=", "[[1],"})
  void thousandsOfListsInOneAnotherAreRefused(String opens) {
    TomlException e =
        assertThrows(TomlException.class, () -> TomlText.parse("b = 1\na=" + opens.repeat(20_000)));
    assertEquals("lists or tables in one another, more than 40 deep", e.getMessage());
    assertEquals(2, e.line());
    assertTrue(e.character() > 40, () -> "character " + e.character());
  }

  @Test
  void asDeepAsItMayBe() throws TomlException {
    String deepest = "[".repeat(TomlText.DEEPEST) + "]".repeat(TomlText.DEEPEST);
    assertEquals(2, TomlText.parse("a = " + deepest + "\nb = " + deepest).size());
    TomlException e =
        assertThrows(TomlException.class, () -> TomlText.parse("a = 1\r\rb = [" + deepest + "]"));
    assertEquals(List.of(3, 45), List.of(e.line(), e.character()));
  }

  @Test
  void bracketsInStringsAndCommentsDoNotCount() throws TomlException {
    String many = "[{".repeat(100);
    String text =
        String.join(
            "\n",
            "# " + many,
            "a = '" + many + "'",
            "b = \"\\\"" + many + "\"",
            "c = '''\n" + many + "''\n'''",
            "d = \"\"\"\n" + many + "\\\"\"\"\n\"\"\" # " + many,
            "e = ['^(\\[)', \"[\\\\\"]");
    assertEquals(5, TomlText.parse(text).size());
    TomlException e =
        assertThrows(TomlException.class, () -> TomlText.parse(text + "\nf = " + many));
    assertEquals(List.of(11, 45), List.of(e.line(), e.character()));
  }

  @Test
  void otherFaultsAreTheParsersOwn() {
    TomlException e = assertThrows(TomlException.class, () -> TomlText.parse("a = 1\nb == 2\n"));
    assertEquals(2, e.line());
    TomlException open = assertThrows(TomlException.class, () -> TomlText.parse("a = 'x\nb = [\n"));
    assertEquals(1, open.line());
  }

  @Test
  void aTextOfMillionsOfCharactersIsRefused() {
    TomlException e =
        assertThrows(TomlException.class, () -> TomlText.parse("#".repeat(1_000_001)));
    assertTrue(e.getMessage().startsWith("1000001 characters, more than"), e.getMessage());
  }

  /** The parser's own assertions, which tests and some tools turn on, are no better founded. */
  @Test
  void aWrongEscapeInANameIsRefused() {
    String name = "[\"\\" + "U".repeat(19);
    assertEquals(1, assertThrows(TomlException.class, () -> TomlText.parse(name)).line());
    String value = "a = \"\\" + "U".repeat(9) + "\"\n";
    assertEquals(1, assertThrows(TomlException.class, () -> TomlText.parse(value)).line());
  }
}
