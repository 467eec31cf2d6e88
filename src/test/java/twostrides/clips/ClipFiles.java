package twostrides.clips;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * Reads written files back with parsers that share nothing with what wrote them: CSV by Jackson,
 * XSPF by JSpiff, whose classes were made from the format's published schema.
 */
public final class ClipFiles {
  private ClipFiles() {}

  /** A track of a playlist as another program sees it. */
  public record Track(String location, String title, String album) {}

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
      assertEquals(1, t.getLocation().length);
      tracks.add(new Track(t.getLocation(0), t.getTitle(), t.getAlbum()));
    }
    return tracks;
  }
}
