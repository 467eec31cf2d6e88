package twostrides.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The maps of {@code docs/maps}, which the program carries with it: each is known by its name. */
public final class ShippedMaps {
  private static final String FOLDER = "/twostrides/maps/";
  private static final String EXTENSION = ".toml";

  private ShippedMaps() {}

  /**
   * A shipped map.
   *
   * @param name what {@code --map} calls it
   * @param sheets which sheets it reads, a few words
   */
  public record Entry(String name, String sheets) {}

  /** The shipped maps, in the order in which they are listed. */
  public static List<Entry> all() {
    return text("maps.txt")
        .lines()
        .filter(line -> !line.isBlank())
        .map(line -> line.split(" ", 2))
        .map(parts -> new Entry(parts[0], parts[1].strip()))
        .toList();
  }

  /**
   * A map by the name of a file, or else by that of a shipped map.
   *
   * @param given the name
   * @param schemas the kinds of sheet that it may map
   * @throws SheetException when there is no such map, or it cannot be read
   */
  public static SheetMap find(String given, List<SheetSchema> schemas) throws SheetException {
    Optional<Path> file = file(given);
    if (file.isPresent()) {
      return SheetMap.read(file.get(), schemas);
    }
    List<String> names = all().stream().map(Entry::name).toList();
    if (!names.contains(given)) {
      throw SheetException.ofFile(
          given,
          "no map of this name",
          "a map's file, or the name of a shipped map: " + Wording.nearestFirst(given, names),
          "Correct the name; two-strides map --list says what each of them reads.");
    }
    String name = given + EXTENSION;
    byte[] bytes = text(name).getBytes(StandardCharsets.UTF_8);
    return MapReader.read(
        SheetText.of(name, bytes, Optional.of(StandardCharsets.UTF_8)), given, schemas);
  }

  /**
   * The file that a name stands for; empty for the name of a shipped map.
   *
   * @param given the name
   */
  public static Optional<Path> file(String given) {
    boolean looksLikeFile =
        given.endsWith(EXTENSION) || given.contains("/") || given.contains("\\");
    return looksLikeFile || Files.exists(Path.of(given))
        ? Optional.of(Path.of(given))
        : Optional.empty();
  }

  private static String text(String name) {
    try (InputStream in = ShippedMaps.class.getResourceAsStream(FOLDER + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
