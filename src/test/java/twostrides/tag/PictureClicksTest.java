package twostrides.tag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twostrides.picture.Camera;
import twostrides.picture.Pixel;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.rink.RinkMark;

/** What the page asks of a picture, and what it is told. */
class PictureClicksTest {

  private static final Rink RINK = Rink.INTERNATIONAL;
  private static final Camera CAMERA = Camera.CENTER_STAND;
  private static final Place PUCK = new Place(-4, 5);

  private static Map<String, String> fields(List<RinkMark> marks, String... more) {
    Map<String, String> fields = new HashMap<>();
    fields.put(
        "marks",
        marks.stream()
            .map(m -> m.id() + "," + words(CAMERA.shows(m.place().x(), m.place().y())))
            .collect(Collectors.joining(";")));
    fields.put("error", "3");
    fields.put("width", "1280");
    fields.put("height", "720");
    for (int i = 0; i < more.length; i += 2) {
      fields.put(more[i], more[i + 1]);
    }
    return fields;
  }

  private static String words(Pixel p) {
    return String.format(Locale.ROOT, "%.4f,%.4f", p.u(), p.v());
  }

  /** One icing, and nothing else. */
  private static final Settler SETTLER =
      new Settler() {
        @Override
        public List<Icing> icings() {
          return List.of(new Icing("G1", "", "", PUCK, OptionalDouble.empty(), ""));
        }

        @Override
        public Verdict weigh(int icing, List<Clicked> skaters) {
          throw new AssertionError("nobody asks");
        }

        @Override
        public List<Map<String, String>> rows(int icing, List<Clicked> skaters) {
          throw new AssertionError("nobody asks");
        }
      };

  @TempDir static Path dir;

  private static PageServer server;

  @BeforeAll
  static void start() throws Exception {
    PlacesFile places = PlacesFile.open(dir.resolve("places.csv"));
    server = SettleServer.start(SETTLER, places, dir, game -> Optional.empty(), RINK);
  }

  @AfterAll
  static void stop() {
    server.close();
  }

  private static HttpResponse<String> post(String action, Map<String, String> fields)
      throws Exception {
    return HttpClient.newHttpClient()
        .send(
            HttpRequest.newBuilder(server.address().resolve(action))
                .header("Content-Type", "application/json")
                .POST(
                    HttpRequest.BodyPublishers.ofString(
                        Json.text(json -> Json.fields(json, fields))))
                .build(),
            HttpResponse.BodyHandlers.ofString());
  }

  private static String said(Map<String, String> fields) throws Exception {
    return post("picture", fields).body();
  }

  @Test
  void thePageIsSentTheMarksOfItsRink() throws Exception {
    String state = post("state", Map.of()).body();
    for (RinkMark m : RinkMark.of(RINK)) {
      String place = ",\"x\":" + m.place().x() + ",\"y\":" + m.place().y() + "}";
      assertTrue(state.contains("\"name\":\"" + m.name() + "\"" + place), state);
    }
  }

  @Test
  void fourMarksGiveLinesAndAWord() throws Exception {
    String four = said(fields(CAMERA.wide(RINK)));
    assertTrue(four.contains("\"lines\":[\""), four);
    assertTrue(four.contains("\"puck\":\"" + words(CAMERA.shows(-4, 5)).substring(0, 5)), four);
    assertTrue(four.contains("Four marks fit wherever they were clicked"), four);
    assertTrue(four.contains("\"rough\":false"), four);
    String all = said(fields(CAMERA.marks(RINK)));
    assertTrue(all.contains(CAMERA.marks(RINK).size() + " marks agree."), all);
  }

  @Test
  void aManGetsHisPlaceAndItsError() throws Exception {
    String man = said(fields(CAMERA.wide(RINK), "man", words(CAMERA.shows(-9, 3))));
    assertTrue(man.matches("\\{\"x\":-(9\\.0|8\\.9)\\d*,\"y\":(3\\.0|2\\.9).*"), man);
    assertTrue(man.contains("\"rough\":false,\"words\":\"His place is off by 0."), man);
    String far = said(fields(CAMERA.wide(RINK), "man", words(CAMERA.shows(-9, 3)), "error", "25"));
    assertTrue(far.contains("\"rough\":true"), far);
    assertTrue(far.contains("more than 1.5 m. Take him back (U), and click him on the rink"), far);
    String out = said(fields(CAMERA.wide(RINK), "man", "640,-5000"));
    assertTrue(out.contains("\"problems\":[{\"field\":\"\",\"found\":\"a click above"), out);
  }

  @Test
  void aWrongMarkIsNamedAmongSix() throws Exception {
    List<RinkMark> seen = CAMERA.marks(RINK);
    Map<String, String> fields = fields(seen);
    RinkMark wrong =
        seen.stream().filter(m -> m.id().equals("center-dot")).findFirst().orElseThrow();
    Pixel at = CAMERA.shows(0, 0);
    Pixel off = new Pixel(at.u() + 60, at.v() + 40);
    fields.put("marks", fields.get("marks").replace(words(at), words(off)));
    String said = said(fields);
    assertTrue(
        said.contains("The others do not fit this mark: " + wrong.name() + ". Click it again."),
        said);
    assertTrue(said.contains("\"rough\":true"), said);
  }

  /** No page sends these: the server answers that the request is no form. */
  @Test
  void whatNoPageSendsIsRefused() throws Exception {
    List<RinkMark> four = CAMERA.wide(RINK);
    for (String[] bad :
        new String[][] {
          {"error", "0"},
          {"error", "-1"},
          {"error", "NaN"},
          {"error", "x"},
          {"error", "1e9"},
          {"width", "0"},
          {"height", "1e400"},
          {"man", "1"},
          {"man", "NaN,2"},
          {"man", "1,1e6"},
          {"marks", ""},
          {"marks", "moon,1,2"},
          {"marks", "center-dot"},
          {"marks", "center-dot,1"},
          {"marks", "center-dot,1,2;center-dot,3,4;own-end-dot-left,1,5;own-end-dot-right,6,7"}
        }) {
      HttpResponse<String> answer = post("picture", fields(four, bad));
      assertEquals(422, answer.statusCode(), String.join(" ", bad));
      assertTrue(answer.body().contains("a request that is no form"), answer.body());
    }
    assertFalse(said(fields(four)).contains("problems"));
  }
}
