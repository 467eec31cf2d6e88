package twostrides.tag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twostrides.game.Usual;
import twostrides.rink.Rink;

/** The page shows the rink of the run, and a place on it is not refused for another. */
class TagRinkTest {

  private static final Usual WIDE = Usual.DEFAULT.on(Rink.INTERNATIONAL);

  @TempDir Path dir;

  @Test
  void thePageShowsTheRinkOfTheRun() throws Exception {
    try (TagDesk desk = TagDesk.open(dir.resolve("tags.csv"), WIDE, Map.of());
        PageServer server =
            TagServer.start(desk, Optional.empty(), dir, () -> new BookMaker.Made(true, ""))) {
      String page =
          HttpClient.newHttpClient()
              .send(
                  HttpRequest.newBuilder(server.address()).build(),
                  HttpResponse.BodyHandlers.ofString())
              .body();
      assertTrue(page.contains("data-half-width=\"15.000\""), page);
    }
  }

  @Test
  void aPlaceNearTheBoardsOfAWideRinkIsKept() throws Exception {
    Path sheet =
        Files.writeString(
            dir.resolve("t.csv"),
            "period,clock,team,way_out,x_m,y_m\n1,19:00,Herons,chip,-20,14.5\n");
    assertEquals(Optional.empty(), TagSheet.doubtful(sheet, WIDE));
    assertTrue(TagSheet.doubtful(sheet, Usual.DEFAULT).isPresent());
  }
}
