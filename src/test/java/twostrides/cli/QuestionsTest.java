package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import twostrides.browser.Browser;

/**
 * What a coach asks, each answered by a picture: from the opening page at most two clicks away, and
 * seen there without scrolling on a laptop and on a tablet held upright. That the pictures say what
 * the data say is {@code book.FiguresTest}'s.
 */
class QuestionsTest {

  /** Pixels that a screen shows at once. */
  private static final int SEEN = 900;

  /** Clicks allowed, without the one that opens "More". */
  private static final int CLICKS = 2;

  /**
   * A question.
   *
   * @param asked in the coach's words
   * @param clicks what is clicked, from the opening page: a link's text, or a selector after "css "
   * @param answer where the answer is
   */
  private record Question(String asked, List<String> clicks, String answer) {}

  private static final List<Question> QUESTIONS =
      List.of(
          new Question("How is the team?", List.of(), "#team-numbers"),
          new Question("Which way out is safe?", List.of(), "#team-ways"),
          new Question("What changed?", List.of("What changed"), "#last-game"),
          new Question("What do I show?", List.of("What to show"), "#show"),
          new Question("How did our kill do?", List.of("Penalty kill"), "#kill-numbers"),
          new Question("Show me every kill", List.of("Penalty kill", "Every kill"), "#kill-strips"),
          new Question("Who gets it out?", List.of("Penalty kill", "Who gets it out"), "#kill-who"),
          new Question("Where do icings start?", List.of("Icings"), "#icings-zones"),
          new Question("Who is iced?", List.of("Players"), "#players-who"),
          new Question("What does one cost?", List.of("Icings", "What one costs"), "#icings-cost"),
          new Question(
              "Is she getting better?",
              List.of("Players", "css #players-who svg.wide a"),
              "[id$='-trend']"),
          new Question("When does it happen?", List.of("More", "Situations"), "#situations"),
          new Question("How do two differ?", List.of("More", "Compare"), "#pairs"),
          new Question(
              "What gives the next opponent?",
              List.of("Opponents", "Tarn Wolves"),
              "[id$='-against']"),
          new Question("Could center have been gained?", List.of("More", "Flags"), "details.flag"));

  private static Path book;
  @AutoClose private static Browser browser;

  @BeforeAll
  static void review() throws IOException {
    browser = Browser.open(1280, SEEN);
    book = SampleBook.season();
  }

  @Test
  void eachIsAnsweredWithinTwoClicksAndWithoutScrolling() {
    List<String> wrong = new ArrayList<>();
    for (int width : new int[] {1280, 820}) {
      browser.size(width, SEEN);
      for (Question q : QUESTIONS) {
        long clicks = q.clicks.stream().filter(c -> !c.equals("More")).count();
        assertTrue(clicks <= CLICKS, q.asked);
        browser.driver().get("about:blank");
        browser.driver().get(book.resolve("index.html").toUri().toString());
        q.clicks.forEach(QuestionsTest::click);
        long top =
            Math.round(
                Double.parseDouble(
                    browser.ask(
                        "return document.querySelector(arguments[0]).getBoundingClientRect().top",
                        q.answer)));
        // A third of the screen at least is left for the answer.
        if (top < -1 || top > SEEN * 2 / 3) {
          wrong.add(q.asked + " at " + width + ": " + q.answer + " begins at " + top + " px");
        }
      }
    }
    browser.size(1280, SEEN);
    assertEquals("", String.join("\n", wrong));
  }

  private static void click(String what) {
    By by =
        what.startsWith("css ")
            ? By.cssSelector(what.substring(4))
            : what.equals("More") ? By.cssSelector("details.more summary") : By.linkText(what);
    browser.driver().findElement(by).click();
  }
}
