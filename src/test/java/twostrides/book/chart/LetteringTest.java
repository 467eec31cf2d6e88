package twostrides.book.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

class LetteringTest {

  private final Type font = Type.NUMBER;

  @Test
  void aTextThatFitsIsOneLine() {
    assertEquals(List.of("Tarn Wolves"), Lettering.lines("Tarn Wolves", font, 300, 2));
  }

  @Test
  void aLongTextBreaksAtASpaceAndKeepsEveryWord() {
    String text = "Glasswater Herons of the Upper Valley";
    List<String> lines = Lettering.lines(text, font, 230, 2);
    assertEquals(2, lines.size());
    assertEquals(text, String.join(" ", lines));
  }

  @Test
  void onlyWhatExceedsTwoLinesIsCutAndSaysSo() {
    List<String> lines = Lettering.lines("Glasswater Herons ".repeat(9).strip(), font, 230, 2);
    assertEquals(2, lines.size());
    assertTrue(lines.get(1).endsWith("\u2026"), lines.get(1));
    for (String line : lines) {
      assertTrue(font.width(line) <= 230, line);
    }
  }

  @Test
  void aWordWithoutSpacesIsBrokenBetweenLettersNeverInsideOne() {
    String puck = "\uD83C\uDFD2";
    for (String line : Lettering.lines(puck.repeat(60), font, 231, 2)) {
      String rest = line.replace("\u2026", "").replace(puck, "");
      assertEquals("", rest);
      assertTrue(font.width(line) <= 231, line);
    }
  }

  @Test
  void controlCharactersDirectionMarksAndHalfSurrogatesGo() {
    assertEquals("a b cd", Lettering.clean(" a\u0000\t\n b \u202Ec\uD83Cd\uFFFE\u2066\u0007 "));
  }

  @Test
  void asManyLinesAsAskedForKeepEveryWord() {
    String text = "Glasswater Herons of the Upper Valley and its Lakes";
    List<String> lines = Lettering.lines(text, font, 160, 4);
    assertEquals(text, String.join(" ", lines));
    assertTrue(lines.size() > 2, lines.toString());
  }

  @Test
  void aMachineWithoutFontsIsToldWhatToInstall() {
    String expected = "No font was found on this machine: install fontconfig and fonts-dejavu-core";
    List<Supplier<String[]>> machines =
        List.of(
            () -> new String[0],
            () -> {
              throw new IllegalArgumentException("Fontconfig head is null");
            },
            () -> {
              throw new InternalError("no physical fonts");
            },
            () -> {
              throw new NoClassDefFoundError("Could not initialize class");
            });
    for (Supplier<String[]> machine : machines) {
      IllegalStateException e =
          assertThrows(IllegalStateException.class, () -> Lettering.family(machine));
      assertEquals(expected, e.getMessage());
    }
  }

  @Test
  void anotherFontDoesWhereThePreferredOneIsMissing() {
    assertEquals("SansSerif", Lettering.family(() -> new String[] {"Mono Something"}));
    assertEquals("DejaVu Sans", Lettering.family(() -> new String[] {"A", "DejaVu Sans"}));
  }
}
