package twostrides.clips;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import com.melloware.jspiff.jaxp.XspfPlaylist;
import com.melloware.jspiff.jaxp.XspfTrack;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.openqa.selenium.By;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import twostrides.browser.Browser;

/**
 * Reads written files back with parsers that share nothing with what wrote them: CSV by Jackson,
 * XSPF by JSpiff, which refuses what has not the format's structure.
 */
public final class ClipFiles {
  private ClipFiles() {}

  /**
   * A track of a playlist as another program sees it.
   *
   * @param location where its video is, empty where the playlist does not say
   * @param title what is to be seen
   * @param album its game
   */
  public record Track(String location, String title, String album) {}

  /**
   * A chapter as a browser sees it.
   *
   * @param start second of the video
   * @param end second of the video
   * @param text what is to be seen
   */
  public record Chapter(double start, double end, String text) {}

  /** The rows of a CSV file by its heading; a row of another length is an error. */
  public static List<Map<String, String>> csv(String text) throws IOException {
    CsvMapper mapper = new CsvMapper();
    mapper.enable(CsvParser.Feature.FAIL_ON_MISSING_COLUMNS);
    CsvSchema schema = CsvSchema.emptySchema().withHeader();
    try (MappingIterator<Map<String, String>> rows =
        mapper.readerForMapOf(String.class).with(schema).readValues(text)) {
      return rows.readAll();
    }
  }

  /** A column of a CSV file. */
  public static List<String> column(Path csv, String name) throws IOException {
    return csv(Files.readString(csv)).stream().map(r -> r.get(name)).toList();
  }

  /** The tracks of an XSPF version 1 playlist; anything else is an error. */
  public static List<Track> xspf(String text)
      throws IOException, SAXException, ParserConfigurationException {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
    factory.setNamespaceAware(true);
    Document document = factory.newDocumentBuilder().parse(new InputSource(new StringReader(text)));
    Element root = document.getDocumentElement();
    // JSpiff does not look at namespaces.
    assertEquals("http://xspf.org/ns/0/", root.getNamespaceURI());
    assertTrue(XspfPlaylist.isMatch(root), "not the structure of a playlist");
    XspfPlaylist playlist = new XspfPlaylist(document);
    assertEquals("1", playlist.getVersion());
    List<Track> tracks = new ArrayList<>();
    for (XspfTrack t : playlist.getPlaylistTrackList().getTrack()) {
      List<String> locations = List.of(t.getLocation());
      assertTrue(locations.size() <= 1, locations.toString());
      tracks.add(new Track(String.join("", locations), t.getTitle(), t.getAlbum()));
    }
    return tracks;
  }

  /**
   * What a page saves when one of its buttons is pressed, a text a file.
   *
   * @param browser the browser with the page
   * @param form csv, vtt or xspf
   */
  public static List<String> saved(Browser browser, String form) throws InterruptedException {
    browser.ask(
        "window.saved = []; window.waiting = 0;"
            + "const make = URL.createObjectURL;"
            + "URL.createObjectURL = b => { window.waiting++;"
            + "  b.text().then(t => { window.saved.push(t); window.waiting--; });"
            + "  return make.call(URL, b); };");
    browser
        .driver()
        .executeScript(
            "arguments[0].click()",
            browser.driver().findElement(By.cssSelector("[data-clips=" + form + "]")));
    browser.await("return window.saved.length > 0 && window.waiting === 0");
    List<?> texts = (List<?>) browser.driver().executeScript("return window.saved");
    browser.driver().navigate().refresh();
    return texts.stream().map(String::valueOf).toList();
  }

  /** The chapters of a WebVTT file, by the browser's own parser. */
  public static List<Chapter> vtt(Browser browser, String text) {
    Object said =
        browser
            .driver()
            .executeAsyncScript(
                "const done = arguments[1], v = document.createElement('video');"
                    + "const t = document.createElement('track'); t.kind = 'chapters';"
                    + "t.src = URL.createObjectURL(new Blob([arguments[0]], {type: 'text/vtt'}));"
                    + "t.onload = () => done(Array.from(t.track.cues).map(c =>"
                    + "  [c.startTime, c.endTime, c.getCueAsHTML().textContent]));"
                    + "t.onerror = () => done(null);"
                    + "v.appendChild(t); document.body.appendChild(v); t.track.mode = 'hidden';",
                text);
    assertNotNull(said, "the browser refuses the chapters");
    return ((List<?>) said)
        .stream()
            .map(c -> (List<?>) c)
            .map(
                c ->
                    new Chapter(
                        ((Number) c.get(0)).doubleValue(),
                        ((Number) c.get(1)).doubleValue(),
                        String.valueOf(c.get(2))))
            .toList();
  }
}
