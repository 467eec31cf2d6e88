package twostrides.book;

import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import twostrides.exits.Situation;
import twostrides.findings.PlayerReview;
import twostrides.findings.SeasonReview;
import twostrides.sheet.CsvOut;

/**
 * Clip lists in four open forms: CSV; WebVTT chapters (W3C), one file a game, since chapters belong
 * to one video; an XSPF version 1 playlist whose locations are media fragments (W3C) of the game's
 * file; and an M3U playlist whose options tell a player where a clip starts and stops, since
 * players play on past a fragment's end.
 */
final class ClipLists {

  private static final String XSPF = "http://xspf.org/ns/0/";

  /** What may stand unquoted in the part of a name that the user gives, besides letters. */
  private static final String PATH = "/:@!$&'()*+,;=";

  /** A path from the root, or with a scheme of two letters or more. */
  private static final Pattern ABSOLUTE = Pattern.compile("/|[A-Za-z][A-Za-z0-9+.-]+:");

  private final Path folder;
  private final Videos videos;
  private final Map<String, Integer> games;

  /**
   * Lists for a folder.
   *
   * @param folder where they are written; it exists
   * @param videos the games' videos
   * @param games number of each game, for file names
   */
  ClipLists(Path folder, Videos videos, Map<String, Integer> games) {
    this.folder = folder;
    this.videos = videos;
    this.games = games;
  }

  /**
   * Writes the lists of a book: flags, icings to look at, the releases and moments of each player
   * who has a page.
   *
   * @param folder where they are written; it exists
   * @param videos the games' videos
   * @param review what the book shows
   * @throws IOException when a file cannot be written
   */
  static void write(Path folder, Videos videos, SeasonReview review) throws IOException {
    Map<String, Integer> games = new TreeMap<>();
    review.flags().forEach(f -> games.put(f.release().at().when().game().id(), 0));
    review.shown().forEach(p -> p.releases().forEach(r -> games.put(r.at().when().game().id(), 0)));
    int number = 0;
    for (Map.Entry<String, Integer> g : games.entrySet()) {
      g.setValue(++number);
    }
    MomentWords words = new MomentWords(review.window());
    ClipLists lists = new ClipLists(folder, videos, games);
    lists.write("flags", of(review.flagged(), f -> f.release().at(), c -> Clip.of(c, videos)));
    lists.writeInOrder(
        "look", of(review.toLookAt(), f -> f.release().at(), c -> Clip.of(c, videos)));
    for (PlayerReview p : review.shown()) {
      lists.write(
          Links.file(p).replace(".html", ""),
          of(p.releases(), r -> r.at(), c -> Clip.of(c, videos)));
      lists.writeInOrder(
          Links.sheetClips(p).replaceFirst("^clips/", ""),
          of(
              Stream.concat(p.worked().stream(), p.talk().stream()).toList(),
              m -> m.at(),
              m -> Clip.of(m, words.sentence(m), videos)));
    }
  }

  /** Clips of those that have a second of video. */
  private static <T> List<Clip> of(List<T> all, Function<T, Situation> at, Function<T, Clip> clip) {
    return all.stream().filter(t -> at.apply(t).when().video().isPresent()).map(clip).toList();
  }

  /**
   * Writes a list in all forms; nothing when it is empty.
   *
   * @param name start of the files' names, plain letters
   * @param clips the clips, in the order of the playlist
   * @throws IOException when a file cannot be written
   */
  void write(String name, List<Clip> clips) throws IOException {
    writeInOrder(name, clips);
    Map<String, List<Clip>> byGame = new TreeMap<>();
    clips.forEach(c -> byGame.computeIfAbsent(c.game(), g -> new ArrayList<>()).add(c));
    for (Map.Entry<String, List<Clip>> g : byGame.entrySet()) {
      text(
          String.format(
              Locale.ROOT, "%s-%02d-%s.vtt", name, games.get(g.getKey()), Links.slug(g.getKey())),
          vtt(g.getValue()));
    }
  }

  /**
   * Writes a list whose order matters, without chapters, which have their video's order; nothing
   * when it is empty.
   *
   * @param name start of the files' names, plain letters
   * @param clips the clips, in the order of the playlist
   * @throws IOException when a file cannot be written
   */
  void writeInOrder(String name, List<Clip> clips) throws IOException {
    if (!clips.isEmpty()) {
      text(name + ".csv", csv(clips));
      String up = "../".repeat((int) name.chars().filter(c -> c == '/').count());
      text(name + ".xspf", xspf(clips, up));
      text(name + ".m3u", m3u(clips, up));
    }
  }

  private void text(String file, String text) throws IOException {
    Files.writeString(folder.resolve(file), text, StandardCharsets.UTF_8);
  }

  private static String csv(List<Clip> clips) throws IOException {
    StringWriter out = new StringWriter();
    try (CsvOut csv = new CsvOut(out)) {
      csv.row("game", "start_s", "end_s", "title");
      for (Clip c : clips) {
        csv.row(c.game(), plain(c.start()), plain(c.end()), c.title());
      }
    }
    return out.toString();
  }

  /** Chapters may not overlap in part, so one ends where the next begins. */
  static String vtt(List<Clip> clips) {
    List<Clip> sorted =
        clips.stream()
            .sorted(Comparator.comparingDouble(Clip::start).thenComparing(Clip::title))
            .toList();
    StringBuilder out = new StringBuilder("WEBVTT\n");
    for (int i = 0; i < sorted.size(); i++) {
      Clip c = sorted.get(i);
      double end = c.end();
      for (Clip later : sorted.subList(i + 1, sorted.size())) {
        if (later.start() > c.start()) {
          end = Math.min(end, later.start());
          break;
        }
      }
      out.append('\n')
          .append(stamp(c.start()))
          .append(" --> ")
          .append(stamp(end))
          .append('\n')
          .append(cue(c.title()))
          .append('\n');
    }
    return out.toString();
  }

  private static String cue(String title) {
    return title
        .replaceAll("\\s+", " ")
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;");
  }

  private static String stamp(double seconds) {
    long ms = Math.round(seconds * 1000);
    return String.format(
        Locale.ROOT,
        "%02d:%02d:%02d.%03d",
        ms / 3_600_000,
        ms / 60_000 % 60,
        ms / 1000 % 60,
        ms % 1000);
  }

  private String xspf(List<Clip> clips, String up) throws IOException {
    StringWriter out = new StringWriter();
    try {
      XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out);
      xml.writeStartDocument("UTF-8", "1.0");
      xml.writeCharacters("\n");
      xml.setDefaultNamespace(XSPF);
      xml.writeStartElement(XSPF, "playlist");
      xml.writeDefaultNamespace(XSPF);
      xml.writeAttribute("version", "1");
      xml.writeStartElement(XSPF, "trackList");
      for (Clip c : clips) {
        xml.writeCharacters("\n");
        xml.writeStartElement(XSPF, "track");
        element(xml, "location", location(c, up));
        element(xml, "title", valid(c.title()));
        element(xml, "album", valid(c.game()));
        xml.writeEndElement();
      }
      xml.writeCharacters("\n");
      xml.writeEndElement();
      xml.writeEndElement();
      xml.writeCharacters("\n");
      xml.writeEndDocument();
    } catch (XMLStreamException e) {
      throw new IOException("the playlist could not be written", e);
    }
    return out.toString();
  }

  private static void element(XMLStreamWriter xml, String name, String text)
      throws XMLStreamException {
    xml.writeStartElement(XSPF, name);
    xml.writeCharacters(text);
    xml.writeEndElement();
  }

  /** Start and stop are options of the line after them; a name is one line and no comment. */
  private String m3u(List<Clip> clips, String up) {
    StringBuilder out = new StringBuilder("#EXTM3U\n");
    for (Clip c : clips) {
      String title = c.title().replaceAll("[\\s\\p{Cntrl}]+", " ");
      out.append("#EXTINF:").append(Math.round(c.end() - c.start())).append(',').append(title);
      out.append("\n#EXTVLCOPT:start-time=").append(plain(c.start()));
      out.append("\n#EXTVLCOPT:stop-time=").append(plain(c.end()));
      out.append('\n').append(file(c.game(), up)).append('\n');
    }
    return out.toString();
  }

  private String location(Clip c, String up) {
    return file(c.game(), up) + "#t=" + plain(c.start()) + "," + plain(c.end());
  }

  /**
   * A game's file as a reference (RFC 3986) seen from the playlist. A game's id is quoted whole, so
   * that it stays one name in a folder: a slash in it leads nowhere, a colon makes no scheme.
   *
   * @param up from the playlist's folder to the folder of the lists
   */
  private String file(String game, String up) {
    String own = videos.own().get(game);
    StringBuilder out = new StringBuilder();
    String[] around = (own == null ? videos.name() : own).split(Pattern.quote("{game}"), -1);
    for (int i = 0; i < around.length; i++) {
      out.append(i == 0 ? "" : quoted(game, "")).append(quoted(around[i], PATH));
    }
    return (ABSOLUTE.matcher(out).lookingAt() ? "" : up) + out;
  }

  private static String quoted(String text, String kept) {
    StringBuilder out = new StringBuilder();
    for (byte b : text.getBytes(StandardCharsets.UTF_8)) {
      char c = (char) (b & 0xFF);
      boolean letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
      if (letter || "-._~".indexOf(c) >= 0 || kept.indexOf(c) >= 0) {
        out.append(c);
      } else {
        out.append(String.format(Locale.ROOT, "%%%02X", (int) c));
      }
    }
    return out.toString();
  }

  /** Letters that XML cannot hold become spaces. */
  private static String valid(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .map(
            c ->
                c == 0x9
                        || c == 0xA
                        || c == 0xD
                        || (c >= 0x20 && c <= 0xD7FF)
                        || (c >= 0xE000 && c <= 0xFFFD)
                        || c >= 0x10000
                    ? c
                    : ' ')
        .forEach(out::appendCodePoint);
    return out.toString();
  }

  static String plain(double seconds) {
    return BigDecimal.valueOf(Math.round(seconds * 10), 1).stripTrailingZeros().toPlainString();
  }
}
