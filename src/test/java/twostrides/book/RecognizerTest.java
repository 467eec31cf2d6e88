package twostrides.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Of a page's sentences with numbers, those that {@link FiguresTest} does not know are named. */
class RecognizerTest {

  private static final Want SAID =
      Want.like("Of # icings # % were flagged.", Want.num(40, 0), Want.num(12.4, 0));

  private static List<String> wrong(String... sentences) {
    Recognizer r = new Recognizer(List.of(SAID), List.of("4 Berg", "14 Berg", "Youth 14U"));
    for (String s : sentences) {
      r.read(s);
    }
    return r.wrong();
  }

  @Test
  void whatIsWorkedOutAnewIsKnown() {
    assertEquals(List.of(), wrong("Of 40 icings 12 % were flagged."));
  }

  @Test
  void aSentenceThatNobodyKnowsIsNamed() {
    assertEquals(
        List.of("nobody knows the sentence: 3 of them cost a goal."),
        wrong("Of 40 icings 12 % were flagged.", "3 of them cost a goal."));
  }

  @Test
  void aWrongFigureIsNoLongerTheSentenceThatIsKnown() {
    List<String> wrong = wrong("Of 40 icings 13 % were flagged.");
    assertEquals(2, wrong.size());
    assertEquals("nobody knows the sentence: Of 40 icings 13 % were flagged.", wrong.get(0));
    assertTrue(wrong.get(1).startsWith("does not say: Of # icings"), wrong.get(1));
  }

  @Test
  void namesAndEditionsMeasureNothing() {
    String known = "Of 40 icings 12 % were flagged.";
    assertEquals(
        List.of(),
        wrong(known, "Before: 14 Berg", "By the book: Youth 14U, season 2026-27", "No numbers."));
    assertEquals(
        List.of("nobody knows the sentence: 4 Berg had 7 of them."),
        wrong(known, "4 Berg had 7 of them."));
  }
}
