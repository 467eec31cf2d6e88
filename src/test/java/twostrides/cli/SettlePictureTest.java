package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;
import twostrides.browser.Browser;
import twostrides.clips.RinkFilm;
import twostrides.picture.Camera;
import twostrides.picture.PictureFit;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.rink.RinkMark;

/** Icings settled by clicks on the picture itself, of a rink drawn as a known camera sees it. */
class SettlePictureTest {

  private static final Rink RINK = Rink.NORTH_AMERICAN;

  /** Second of the release in the drawn videos, a tenth into a picture. */
  private static final double RELEASE = 5.1;

  /** Metres that the camera turns in the half second after the release, where it turns. */
  private static final double PAN = 3;

  /** The carrier first. */
  private static final List<Place> AT =
      List.of(
          new Place(-4, 5.5),
          new Place(-11, 1),
          new Place(-14, 8),
          new Place(3, -4),
          new Place(5, 6));

  private static final List<Place> LATER =
      List.of(
          new Place(-0.8, 5.5),
          new Place(-8.2, 2),
          new Place(-11, 7.5),
          new Place(3.5, -3.8),
          new Place(5.2, 5.8));

  private static final Map<List<Camera>, byte[]> FILMS = new HashMap<>();

  @TempDir Path dir;

  /** A game whose release stands at a second of its video. */
  private Path game(String... ids) throws IOException {
    List<String> rows =
        Files.readAllLines(Path.of("src/test/resources/twostrides/places/game.csv"));
    StringBuilder text = new StringBuilder(rows.get(0) + "\n");
    for (String id : ids) {
      for (String row : rows.subList(1, rows.size())) {
        String[] cells = row.split(",", -1);
        double video = Double.parseDouble(cells[cells.length - 1]) - 1735 + RELEASE;
        cells[0] = id;
        cells[cells.length - 1] = String.valueOf(Math.round(10 * video) / 10.0);
        text.append(String.join(",", cells)).append('\n');
      }
    }
    return Files.writeString(dir.resolve("games.csv"), text);
  }

  /** A game's video; each is drawn once, however many games have it. */
  private void film(String game, Camera camera, Camera later) throws IOException {
    Path folder = Files.createDirectories(dir.resolve("videos"));
    Path file = folder.resolve(game + ".mp4");
    byte[] known = FILMS.get(List.of(camera, later));
    if (known == null) {
      RinkFilm.write(file, RINK, shots(camera, later));
      FILMS.put(List.of(camera, later), Files.readAllBytes(file));
    } else {
      Files.write(file, known);
    }
  }

  private static List<RinkFilm.Shot> shots(Camera camera, Camera later) {
    int release = (int) (RELEASE * RinkFilm.RATE);
    RinkFilm.Shot first = new RinkFilm.Shot(camera, AT.subList(0, 1), AT.subList(1, AT.size()));
    RinkFilm.Shot second =
        new RinkFilm.Shot(later, LATER.subList(0, 1), LATER.subList(1, LATER.size()));
    List<RinkFilm.Shot> shots = new ArrayList<>(Collections.nCopies(release + 1, first));
    shots.addAll(Collections.nCopies(4, second));
    return shots;
  }

  private TagProcess settling(Path game, Path places) throws IOException {
    return TagProcess.settle(game, dir, places, "--video", dir.resolve("videos").toString());
  }

  private static void opened(Browser b, TagProcess p) throws InterruptedException {
    b.driver().get(p.address().toString());
    b.await("return document.getElementById('heading').textContent !== ''");
  }

  private static void keys(Browser b, CharSequence... keys) {
    new Actions(b.driver()).sendKeys(keys).perform();
  }

  private static String fit(Browser b) {
    return b.at("fit").getText();
  }

  /** Four marks that lie best, and the two nearest to the puck. */
  private static List<RinkMark> six(Camera camera) {
    List<RinkMark> wide = camera.wide(RINK);
    return Stream.concat(
            wide.stream(),
            camera.marks(RINK).stream()
                .filter(m -> !wide.contains(m))
                .sorted(Comparator.comparingDouble(m -> m.place().distanceTo(AT.get(0))))
                .limit(2))
        .toList();
  }

  private static List<CSVRecord> rows(Path csv) throws IOException {
    try (CSVParser in =
        CSVParser.parse(
            Files.readString(csv),
            CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get())) {
      return in.getRecords();
    }
  }

  private static double number(CSVRecord r, String column) {
    return Double.parseDouble(r.get(column));
  }

  /**
   * From the center stand and from a corner with the camera still, from the center stand with the
   * camera turning: marks, men, half a second later, the verdict, the sheet.
   */
  @Test
  void threeCamerasSettleAnIcingEach() throws Exception {
    Map<String, Camera> cameras =
        Map.of("G1", Camera.CENTER_STAND, "G2", Camera.CORNER, "G3", Camera.CENTER_STAND);
    for (Map.Entry<String, Camera> c : cameras.entrySet()) {
      Camera later = c.getKey().equals("G3") ? c.getValue().panned(PAN) : c.getValue();
      film(c.getKey(), c.getValue(), later);
      assertTrue(AT.stream().allMatch(p -> c.getValue().sees(p.x(), p.y())), c.getKey());
      assertTrue(LATER.stream().allMatch(p -> later.sees(p.x(), p.y())), c.getKey());
    }
    Path game = game("G1", "G2", "G3");
    Path places = dir.resolve("places.csv");
    try (TagProcess p = settling(game, places);
        Browser b = Browser.open(1280, 900)) {
      opened(b, p);
      for (int i = 1; i <= 3; i++) {
        String id = b.ask("return document.getElementById('game').textContent");
        Camera camera = cameras.get(id);
        Camera later = id.equals("G3") ? camera.panned(PAN) : camera;
        PictureCoach coach = new PictureCoach(b, i);
        if (i == 1) {
          coach.open();
        }
        b.await(
            "const v = document.getElementById('video'); return v.readyState > 1 && !v.seeking");
        coach.marks(camera, six(camera));
        says(b, "6 marks agree. At the puck a man is off by ");
        assertTrue(
            fit(b).matches("6 marks agree. At the puck a man is off by [01][.]. m or so."), fit(b));
        coach.men(camera, AT);
        keys(b, "l");
        b.await(
            "return document.getElementById('fit').textContent.startsWith('The video has moved')");
        assertEquals(0, coach.rings());
        if (id.equals("G3")) {
          coach.marks(later, six(later));
        } else {
          keys(b, "k");
        }
        says(b, "6 marks agree. At the puck a man is off by ");
        coach.men(later, LATER);
        b.await(
            "return document.getElementById('gain').textContent.startsWith('Gain center: ')"
                + " && document.getElementById('picture').naturalWidth > 0"
                + " && /each place off by 0.\\d to \\d.\\d m/.test("
                + "document.getElementById('sentence').textContent)");
        keys(b, Keys.ENTER);
        b.await(
            "return document.getElementById('live').textContent.startsWith('Saved: "
                + i
                + " of 3')");
        if (i == 1) {
          assertEquals("", b.violations());
        }
        keys(b, "n");
      }
      assertEquals(List.of(), b.consoleErrors());
    }
    List<CSVRecord> rows = rows(places);
    assertEquals(3 * AT.size(), rows.size());
    List<Double> all = new ArrayList<>();
    int within = 0;
    for (int i = 0; i < rows.size(); i += AT.size()) {
      List<Double> off = new ArrayList<>();
      List<Double> said = new ArrayList<>();
      for (int k = 0; k < AT.size(); k++) {
        CSVRecord r = rows.get(i + k);
        said.add(number(r, "error_m"));
        off.add(new Place(number(r, "x_m"), number(r, "y_m")).distanceTo(AT.get(k)));
        off.add(new Place(number(r, "later_x_m"), number(r, "later_y_m")).distanceTo(LATER.get(k)));
      }
      within += (int) off.stream().filter(o -> o < 2 * Collections.max(said)).count();
      all.addAll(off);
      Collections.sort(off);
      say(
          "%s: %d places off by %.2f m (median), %.2f m (worst); errors said %.2f to %.2f m",
          rows.get(i).get("game"),
          off.size(),
          (off.get(4) + off.get(5)) / 2,
          off.get(9),
          Collections.min(said),
          Collections.max(said));
    }
    Collections.sort(all);
    say(
        "%d places off by %.2f m (median), %.2f m (worst)",
        all.size(), (all.get(14) + all.get(15)) / 2, all.get(29));
    assertTrue(all.get(29) < PictureFit.ROUGH, all.toString());
    assertTrue(all.get(15) < 0.5, all.toString());
    assertEquals(30, within, "within two of the errors said");
    verdicts(game, places);
  }

  /** One icing to settle, its page open, its video standing. */
  private PictureCoach one(TagProcess p, Browser b) throws InterruptedException {
    opened(b, p);
    PictureCoach coach = new PictureCoach(b, 9);
    coach.open();
    return coach;
  }

  private static void says(Browser b, String words) throws InterruptedException {
    String quoted = words.replace("'", "\\'");
    b.await("return document.getElementById('fit').textContent.includes('" + quoted + "')");
  }

  /** What is wrong stands under the picture with what to do, and U takes back a click at a time. */
  @Test
  void whatIsWrongIsSaidUnderThePicture() throws Exception {
    film("G1", Camera.CENTER_STAND, Camera.CENTER_STAND);
    Camera camera = Camera.CENTER_STAND;
    List<RinkMark> all = RinkMark.of(RINK);
    try (TagProcess p = settling(game("G1"), dir.resolve("p.csv"));
        Browser b = Browser.open(1280, 900)) {
      PictureCoach coach = one(p, b);
      says(b, "0 of 4");
      coach.click(camera.shows(0, 0));
      b.await("return document.getElementById('live').textContent.startsWith('Pick a mark first')");
      List<RinkMark> line =
          all.stream().filter(m -> m.place().x() == 0 && camera.sees(0, m.place().y())).toList();
      coach.marks(camera, line.subList(0, 4));
      says(b, "Found marks of which three lie on one line");
      says(b, "Click two more marks, off that line.");
      keys(b, "u");
      says(b, "3 of 4");
      RinkMark off =
          all.stream().filter(m -> m.id().equals("own-end-dot-left")).findFirst().orElseThrow();
      coach.marks(camera, List.of(off));
      says(b, "Click another mark, off that line, such as: ");
      for (int i = 0; i < 4; i++) {
        keys(b, "u");
      }
      says(b, "0 of 4");
      coach.marks(camera, camera.wide(RINK));
      says(b, "Four marks fit wherever they were clicked");
      assertTrue(fit(b).contains("At the puck a man is off by "), fit(b));
      coach.click(camera.shows(-5, 24));
      says(b, "m outside the boards, expected a place on the ice");
      coach.men(camera, AT.subList(0, 1));
      says(b, "His place is off by ");
      // A hand that shakes: the error grows, and from 1.5 m on the page sends him to the rink.
      b.at("click-error").clear();
      b.at("click-error").sendKeys("20", Keys.TAB);
      says(b, "more than 1.5 m");
      coach.men(camera, AT.subList(1, 2));
      says(b, "click him on the rink");
      assertTrue(b.at("fit").getAttribute("class").contains("care"));
      keys(b, "u");
      b.await("return document.querySelectorAll('#marks text').length === 1");
      keys(b, "p");
      assertFalse(b.at("lens").isDisplayed());
      assertEquals("true", b.ask("return document.getElementById('video').controls"));
    }
  }

  /** Without a mouse: the list, the arrows, the space bar. */
  @Test
  void theKeyboardAloneSettlesOnThePicture() throws Exception {
    film("G1", Camera.CENTER_STAND, Camera.CENTER_STAND);
    Camera camera = Camera.CENTER_STAND;
    Path places = dir.resolve("p.csv");
    try (TagProcess p = settling(game("G1"), places);
        Browser b = Browser.open(820, 1180)) {
      opened(b, p);
      b.await("const v = document.getElementById('video'); return v.readyState > 1 && !v.seeking");
      keys(b, "p");
      PictureCoach coach = new PictureCoach(b, 0);
      for (RinkMark m : camera.wide(RINK)) {
        keys(b, Keys.TAB, Keys.TAB, Keys.TAB, Keys.TAB);
        for (int i = 0; i <= RinkMark.of(RINK).indexOf(m); i++) {
          keys(b, Keys.ARROW_DOWN);
        }
        keys(b, Keys.ENTER);
        coach.aim(camera.shows(m.place().x(), m.place().y()));
      }
      says(b, "Four marks fit");
      for (Place man : AT.subList(0, 3)) {
        coach.aim(camera.shows(man.x(), man.y()));
      }
      keys(b, "l");
      says(b, "The video has moved");
      keys(b, "k");
      says(b, "Four marks fit");
      for (Place man : LATER.subList(0, 3)) {
        coach.aim(camera.shows(man.x(), man.y()));
      }
      b.await("return document.getElementById('gain').textContent.startsWith('Gain center: ')");
      keys(b, Keys.ENTER);
      b.await("return document.getElementById('live').textContent.startsWith('Saved: 1 of 1')");
      assertEquals("", b.violations());
      assertEquals(List.of(), b.consoleErrors());
    }
    near(places, 3);
  }

  /** With a finger on a tablet: marks on the rink, men on the picture, buttons. */
  @Test
  void aFingerAloneSettlesOnThePicture() throws Exception {
    film("G1", Camera.CENTER_STAND, Camera.CENTER_STAND);
    Camera camera = Camera.CENTER_STAND;
    Path places = dir.resolve("p.csv");
    try (TagProcess p = settling(game("G1"), places);
        Browser b = Browser.open(820, 1180)) {
      opened(b, p);
      b.await("const v = document.getElementById('video'); return v.readyState > 1 && !v.seeking");
      PictureCoach coach = new PictureCoach(b, 0);
      SettleBrowserTest.finger(b, b.at("on-picture"), 0, 0, 0, 0);
      for (RinkMark m : camera.wide(RINK)) {
        coach.tapRink(m.place());
        coach.tap(camera.shows(m.place().x(), m.place().y()));
      }
      says(b, "Four marks fit");
      for (Place man : AT.subList(0, 3)) {
        coach.tap(camera.shows(man.x(), man.y()));
      }
      b.await("return document.querySelectorAll('#sight .who-ring').length === 3");
      SettleBrowserTest.finger(b, b.at("undo"), 0, 0, 0, 0);
      b.await("return document.querySelectorAll('#sight .who-ring').length === 2");
      coach.tap(camera.shows(AT.get(2).x(), AT.get(2).y()));
      SettleBrowserTest.finger(b, b.at("at-later"), 0, 0, 0, 0);
      says(b, "The video has moved");
      SettleBrowserTest.finger(b, b.at("keep"), 0, 0, 0, 0);
      says(b, "Four marks fit");
      for (Place man : LATER.subList(0, 3)) {
        coach.tap(camera.shows(man.x(), man.y()));
      }
      b.await("return document.getElementById('gain').textContent.startsWith('Gain center: ')");
      SettleBrowserTest.finger(b, b.at("save"), 0, 0, 0, 0);
      b.await("return document.getElementById('live').textContent.startsWith('Saved: 1 of 1')");
      assertEquals(List.of(), b.consoleErrors());
    }
    near(places, 3);
  }

  /** So many men stand in the sheet, each where he is to within half a metre. */
  private static void near(Path places, int men) throws IOException {
    List<CSVRecord> rows = rows(places);
    assertEquals(men, rows.size());
    for (int i = 0; i < men; i++) {
      CSVRecord r = rows.get(i);
      assertEquals(0, new Place(number(r, "x_m"), number(r, "y_m")).distanceTo(AT.get(i)), 0.5);
      Place later = new Place(number(r, "later_x_m"), number(r, "later_y_m"));
      assertEquals(0, later.distanceTo(LATER.get(i)), 0.5);
      assertTrue(number(r, "error_m") < PictureFit.ROUGH, r.toString());
    }
  }

  /** Not held to the last figure: another browser lays the page out by some px otherwise. */
  private static void say(String text, Object... values) {
    System.out.println(String.format(Locale.ROOT, text, values));
  }

  /** The book says it in the same words, and with more error in the rows it is less sure. */
  private void verdicts(Path game, Path places) throws IOException {
    List<CSVRecord> flags = review(game, places, "again");
    assertTrue(flags.stream().allMatch(f -> f.get("evidence").equals("clicked")), flags.toString());
    Path worse = dir.resolve("worse.csv");
    Files.writeString(worse, Files.readString(places).replaceAll("(?m),\\d\\.\\d\\d$", ",3"));
    List<CSVRecord> unsure = review(game, worse, "unsure");
    for (int i = 0; i < flags.size(); i++) {
      double p = number(flags.get(i), "p_gain_center");
      double q = number(unsure.get(i), "p_gain_center");
      assertTrue(q < p, p + " with the errors of the clicks, " + q + " with 3 m");
    }
  }

  private List<CSVRecord> review(Path game, Path places, String book) throws IOException {
    Run run = Run.of("review", game, "--out", dir.resolve(book), "--places", places);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("15 rows read = 15 rows used + 0 rows set aside"), run.out());
    return rows(dir.resolve(book).resolve("data/flags.csv"));
  }
}
