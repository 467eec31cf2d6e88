package twostrides.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

class LetteringTest {

  private final Font font = Lettering.bold(16);

  @Test
  void aTextThatFitsIsOneLine() {
    assertEquals(List.of("Tarn Wolves"), Lettering.twoLines("Tarn Wolves", font, 300));
  }

  @Test
  void aLongTextBreaksAtASpaceAndKeepsEveryWord() {
    String text = "Glasswater Herons of the Upper Valley";
    List<String> lines = Lettering.twoLines(text, font, 230);
    assertEquals(2, lines.size());
    assertEquals(text, String.join(" ", lines));
  }

  @Test
  void onlyWhatExceedsTwoLinesIsCutAndSaysSo() {
    List<String> lines = Lettering.twoLines("Glasswater Herons ".repeat(9).strip(), font, 230);
    assertEquals(2, lines.size());
    assertTrue(lines.get(1).endsWith("\u2026"), lines.get(1));
    for (String line : lines) {
      assertTrue(Lettering.width(font, line) <= 230, line);
    }
  }

  @Test
  void aWordWithoutSpacesIsBrokenBetweenLettersNeverInsideOne() {
    String puck = "\uD83C\uDFD2";
    for (String line : Lettering.twoLines(puck.repeat(60), font, 231)) {
      String rest = line.replace("\u2026", "").replace(puck, "");
      assertEquals("", rest);
      assertTrue(Lettering.width(font, line) <= 231, line);
    }
  }

  @Test
  void controlCharactersDirectionMarksAndHalfSurrogatesGo() {
    assertEquals("a b cd", Lettering.clean(" a\u0000\t\n b \u202Ec\uD83Cd\uFFFE\u2066\u0007 "));
  }

  @Test
  void aTitleOfNothingGetsOurWords() {
    assertEquals("Exit attempts", Lettering.cleanOr(" \u0001\t", "Exit attempts"));
    assertEquals("8 Sole Brandt", Lettering.cleanOr("8 Sole Brandt", "Exit attempts"));
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
