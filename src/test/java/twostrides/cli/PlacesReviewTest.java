package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A review with clicked places: the way from "look at these first" to a verdict. */
class PlacesReviewTest {

  private static final Path FOLDER = Path.of("src/test/resources/twostrides/places");
  private static final Path GAME = FOLDER.resolve("game.csv");
  private static final Path PLACES = FOLDER.resolve("places.csv");

  /** What a card says of the chance to gain center. */
  private static final String GAIN = "dt:contains(Gain center) + dd";

  @TempDir Path dir;

  private Document review(String book, Object... more) throws IOException {
    Path out = dir.resolve(book);
    Object[] args = new Object[4 + more.length];
    args[0] = "review";
    args[1] = GAME;
    args[2] = "--out";
    args[3] = out;
    System.arraycopy(more, 0, args, 4, more.length);
    Run r = Run.of(args);
    assertEquals(0, r.code(), r.err());
    Files.writeString(dir.resolve(book + ".txt"), r.out());
    return Jsoup.parse(out.resolve("flags.html").toFile(), "UTF-8");
  }

  private String said(String book) throws IOException {
    return Files.readString(dir.resolve(book + ".txt"));
  }

  @Test
  void theGuideShowsTheSheetThatIsTestedHere() throws IOException {
    String guide = Files.readString(Path.of("docs/sheets.md"));
    String block = guide.split("<!-- example: places -->\n```csv\n", -1)[1].split("```", -1)[0];
    assertEquals(Files.readString(PLACES), block);
  }

  @Test
  void fiveClicksTurnAReleaseToLookAtIntoAFlag() throws IOException {
    Document before = review("before");
    assertEquals(0, before.select("details.flag:not(.look):not(.near)").size());
    assertEquals(1, before.select("details.look").size());
    assertTrue(before.selectFirst("details.look " + GAIN).text().startsWith("unknown; like it "));
    assertFalse(before.selectFirst("details.look").text().contains("Avoid the icing"));
    assertTrue(said("before").contains("0 releases flagged, 1 to look at without a verdict, of 1"));
    Document after = review("after", "--places", PLACES);
    assertEquals(0, after.select("details.look").size());
    assertEquals(0, after.select("h2:contains(Look at these first)").size());
    assertEquals(1, after.select("details.flag:not(.look):not(.near)").size());
    String card = after.selectFirst("details.flag:not(.look)").text();
    assertTrue(card.contains("clicked on the video: places and speeds"), card);
    assertTrue(card.contains("95 % interval"), card);
    assertTrue(card.contains("each place off by 1.0 m"), card);
    assertTrue(
        said("after")
            .contains(
                "Clicked places: 5 rows read = 5 rows used + 0 rows set aside. Skaters at 1 puck"
                    + " sent before the red line."),
        said("after"));
    assertTrue(after.selectFirst("footer").text().contains("Clicked places: 5 rows read"));
    String run = Files.readString(dir.resolve("after/run.json"));
    assertTrue(run.contains("\"places.csv\"") && run.contains("\"places_error_m\" : 1.0"), run);
  }

  /** The drawing of a flag shows its skaters; one without places shows none. */
  @Test
  void aDrawingShowsTheSkatersWhoWereSeen() throws IOException {
    assertTrue(drawing(review("after", "--places", PLACES)).contains("class=\"opponent\""));
    assertFalse(drawing(review("before")).contains("class=\"opponent\""));
  }

  private static String drawing(Document flags) {
    return flags.selectFirst("details.flag figure").outerHtml();
  }

  @Test
  void aLargerErrorOfClicksMakesTheChanceLessSure() throws IOException {
    double one = chance(review("one", "--places", PLACES));
    double three = chance(review("three", "--places", PLACES, "--places-error", "3"));
    assertTrue(three < one, three + " with 3 m, " + one + " with 1 m");
  }

  /** What a row says of its own places counts before what the run says of all of them. */
  @Test
  void theErrorOfARowWinsOverThatOfTheRun() throws IOException {
    double run = chance(review("run", "--places", off("3"), "--places-error", "0.3"));
    double all = chance(review("all", "--places", PLACES, "--places-error", "3"));
    assertEquals(all, run, 1e-9);
    Document some = review("some", "--places", off("0.25", "", "", "2.5", ""));
    String card = some.selectFirst("details.flag:not(.look)").text();
    assertTrue(card.contains("each place off by 0.3 to 2.5 m"), card);
  }

  /** The places sheet with errors, one a row; one alone is that of every row. */
  private Path off(String... errors) throws IOException {
    List<String> lines = Files.readAllLines(PLACES);
    StringBuilder text = new StringBuilder(lines.get(0) + ",error_m\n");
    for (int i = 1; i < lines.size(); i++) {
      text.append(lines.get(i) + "," + errors[errors.length == 1 ? 0 : i - 1] + "\n");
    }
    return Files.writeString(dir.resolve("off.csv"), text);
  }

  private static double chance(Document flags) {
    String dd = flags.selectFirst("details.flag:not(.look) " + GAIN).text();
    return dd.startsWith("over 99") ? 99.5 : Double.parseDouble(dd.split(" ", -1)[0]);
  }

  @Test
  void rowsThatMatchNothingAreSetAsideInTheirOwnWords() throws IOException {
    String text = Files.readString(PLACES).replaceFirst("12:00,opponent", "12:10,opponent");
    Path places = Files.writeString(dir.resolve("clicks.csv"), text);
    Document flags = review("aside", "--places", places);
    assertTrue(said("aside").contains("5 rows read = 4 rows used + 1 rows set aside"));
    assertTrue(
        said("aside")
            .contains(
                "clicks.csv, line 3, column \"clock\": found \"12:10\", expected the clock of a"
                    + " puck sent before the red line in the game's sheet"),
        said("aside"));
    assertTrue(
        Files.readString(dir.resolve("aside/set-aside/clicks.csv")).contains("12:10,opponent"));
    assertTrue(
        Files.readString(dir.resolve("aside/set-aside/problems.csv")).contains("clicks.csv"));
    assertEquals(1, flags.select("details.flag:not(.look):not(.near)").size());
  }

  @Test
  void optionsThatCannotDoAnythingAreRefused() {
    Path out = dir.resolve("refused");
    Run error = Run.of("review", GAME, "--places", PLACES, "--places-error", "0", "--out", out);
    assertEquals(2, error.code());
    assertTrue(error.err().contains("--places-error: found 0.0, expected metres"), error.err());
    Run map = Run.of("review", GAME, "--places-map", GAME, "--out", out);
    assertEquals(2, map.code());
    assertTrue(map.err().contains("--places-map: found no --places"), map.err());
    Run none = Run.of("review", GAME, "--places", dir.resolve("none.csv"), "--out", out);
    assertEquals(3, none.code(), none.err());
  }

  /** A team that only tags exits gets its verdicts too. */
  @Test
  void aTagSheetIsLookedAtAndFlagged() throws IOException {
    Path tags =
        Files.writeString(
            dir.resolve("tags.csv"),
            "game,home,away,period,clock,team,player,way_out,at_center,strength,x_m,y_m,ended\n"
                + "G1,Herons,Wolves,2,12:00,Wolves,4 Berg,carry,released short,even,-4,5.5,icing\n");
    Run before = Run.of("review", tags, "--out", dir.resolve("tagged"));
    assertTrue(before.out().contains("0 releases flagged, 1 to look at"), before.out());
    Run after = Run.of("review", tags, "--places", PLACES, "--out", dir.resolve("tagged"));
    assertTrue(after.out().contains("1 release flagged, 0 to look at"), after.out());
  }
}
