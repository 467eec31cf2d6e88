package twostrides.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.codec.digest.DigestUtils;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetRow;

/**
 * The videos of a folder and which game each is: the one whose id stands in the file's name word by
 * word, of two the longer one; what {@code videos.csv} (game, file) in the folder says wins. One
 * video named for one game is that game's, whatever its name.
 */
final class GameVideos {

  /** Folders below the one that is named: a folder a month or a team. Assumed. */
  private static final int DEPTH = 3;

  /** Bytes that tell a file from others; the script of the pages takes the same. */
  private static final int PRINT = 1 << 20;

  private static final String LIST = "videos.csv";
  private static final Pattern VIDEO = Pattern.compile("(?i).*\\.(mp4|m4v|mov|webm|mkv|ogv)");
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{M}\\p{N}]+");

  private final List<Path> files;
  private final Map<Path, String> games = new LinkedHashMap<>();

  private GameVideos(List<Path> files) {
    this.files = files;
  }

  /**
   * Looks into a folder.
   *
   * @param folder the folder, or one video
   * @param ids the games
   * @throws SheetException where {@code videos.csv} names what is not there
   */
  static GameVideos in(Path folder, Collection<String> ids) throws IOException, SheetException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(folder, DEPTH)) {
      files =
          all.filter(f -> VIDEO.matcher(f.getFileName().toString()).matches())
              .filter(Files::isRegularFile)
              .sorted()
              .toList();
    }
    GameVideos found = new GameVideos(files);
    if (Files.isRegularFile(folder) && ids.size() == 1) {
      files.forEach(f -> found.games.put(f, ids.iterator().next()));
      return found;
    }
    files.forEach(f -> named(f, ids).ifPresent(g -> found.games.put(f, g)));
    Path list = folder.resolve(LIST);
    if (Files.isRegularFile(list)) {
      found.read(list, ids);
    }
    return found;
  }

  private static Optional<String> named(Path file, Collection<String> ids) {
    String name = file.getFileName().toString();
    String words = words(name.substring(0, name.lastIndexOf('.')));
    Map<Integer, List<String>> byLength =
        ids.stream()
            .filter(g -> words(g).length() > 2 && words.contains(words(g)))
            .collect(Collectors.groupingBy(g -> words(g).length()));
    List<String> longest =
        byLength.getOrDefault(
            byLength.keySet().stream().mapToInt(n -> n).max().orElse(0), List.of());
    return longest.size() == 1 ? Optional.of(longest.get(0)) : Optional.empty();
  }

  private static String words(String text) {
    String plain = Normalizer.normalize(text, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
    return WORD.matcher(plain)
        .results()
        .map(m -> m.group())
        .collect(Collectors.joining(" ", " ", " "));
  }

  private void read(Path list, Collection<String> ids) throws SheetException {
    Map<String, Path> byName = new HashMap<>();
    files.forEach(f -> byName.putIfAbsent(f.getFileName().toString(), f));
    for (SheetRow row : SmallSheet.read(list, "videos", "game", "file")) {
      String game = SmallSheet.words(row, "game");
      String file = SmallSheet.words(row, "file");
      if (!ids.contains(game) || !byName.containsKey(file)) {
        throw SheetException.atLine(
            row.file(),
            row.line(),
            "game \"" + game + "\", file \"" + file + "\"",
            "a game of the book and a video of this folder",
            "Correct the row; the games are " + String.join("; ", ids) + ".");
      }
      games.values().remove(game);
      games.put(byName.get(file), game);
    }
  }

  /** All videos, by name. */
  List<Path> files() {
    return files;
  }

  /** The file of a game; of several the first by name. */
  Optional<Path> of(String game) {
    return files.stream().filter(f -> game.equals(games.get(f))).findFirst();
  }

  /** The game of a file, where its name says one. */
  Optional<String> game(Path file) {
    return Optional.ofNullable(games.get(file));
  }

  /**
   * A statement of JavaScript that tells the pages of a book of these files.
   *
   * @param list the text of a meeting list that lies beside the book; empty where there is none
   */
  String script(String list) throws IOException {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.writeStartObject();
      json.writeStringField("list", list);
      json.writeArrayFieldStart("files");
      for (int i = 0; i < files.size(); i++) {
        Path f = files.get(i);
        json.writeStartObject();
        json.writeStringField("name", f.getFileName().toString());
        json.writeNumberField("size", Files.size(f));
        json.writeStringField("print", print(f));
        json.writeStringField("url", "video/" + i);
        json.writeStringField("game", games.getOrDefault(f, ""));
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    return "var SERVED = " + out + ";\n";
  }

  private static String print(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return Files.size(file) + " " + DigestUtils.sha256Hex(in.readNBytes(PRINT));
    }
  }

  /** The games of a book, in order, as its script names them. */
  static List<String> gamesOf(Path book) throws IOException, SheetException {
    Path script = book.resolve("book.js");
    if (Files.isRegularFile(script)) {
      try (Stream<String> lines = Files.lines(script, StandardCharsets.UTF_8)) {
        Optional<String> first = lines.findFirst().filter(l -> l.startsWith("var GAMES = "));
        if (first.isPresent()) {
          return games(first.get().substring("var GAMES = ".length()));
        }
      }
    }
    throw SheetException.ofFile(
        book.toString(),
        "no review book of this version",
        "a folder that two-strides review wrote",
        "Run review again, or name its folder.");
  }

  private static List<String> games(String json) throws IOException {
    List<String> games = new ArrayList<>();
    try (var in = new JsonFactory().createParser(json)) {
      int depth = 0;
      for (var t = in.nextToken(); t != null && depth >= 0; t = in.nextToken()) {
        depth += t.isStructStart() ? 1 : t.isStructEnd() ? -1 : 0;
        // {"key": ..., "games": [["id", second, [...]], ...]}
        if (depth == 3 && t == com.fasterxml.jackson.core.JsonToken.VALUE_STRING) {
          games.add(in.getText());
        }
        if (depth == 0) {
          break;
        }
      }
    }
    return games;
  }
}
