package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where no puck can be drawn, pages say why and draw no rink. */
class NoPlacesTest {

  private static final String WHY = "each release needs a place (columns x_m and y_m, or zone)";

  @TempDir Path dir;

  @ParameterizedTest
  @CsvSource({"'', '', false", "',x_m,y_m', ',-8,3', true"})
  void aTagSheetWithPlacesAndWithout(String columns, String places, boolean drawn)
      throws IOException {
    StringBuilder sheet =
        new StringBuilder("game,period,clock,team,opponent,player,way_out,at_center,ended");
    sheet.append(columns).append('\n');
    for (int minute = 19; minute > 7; minute--) {
      sheet.append("G1,1,").append(minute);
      sheet.append(":00,Herons,Wolves,3 Lind,carry,released short,icing").append(places);
      sheet.append('\n');
    }
    Path file = Files.writeString(dir.resolve("tags.csv"), sheet);
    Path book = SampleBook.of(dir.resolve("book"), List.of(file));
    for (String page : List.of("icings.html", "players.html", "players/001-3-lind.html")) {
      assertEquals(!drawn, read(book, page).text().contains(WHY), page);
    }
    assertEquals(drawn, !read(book, "icings.html").select("#icings-zones").isEmpty());
  }

  private static Document read(Path book, String page) throws IOException {
    return Jsoup.parse(Files.readString(book.resolve(page)));
  }
}
