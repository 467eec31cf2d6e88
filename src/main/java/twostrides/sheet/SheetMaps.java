package twostrides.sheet;

import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The maps of one run: which sheet is read through which map.
 *
 * @param choices the maps, in the order in which they are tried
 */
public record SheetMaps(List<Choice> choices) {

  /** No map: every sheet is in our own columns. */
  public static final SheetMaps NONE = new SheetMaps(List.of());

  /**
   * A map and the sheets that it is for.
   *
   * @param pattern what the sheets' file names look like, {@code men-*}; empty means every sheet
   * @param map the map
   */
  public record Choice(Optional<String> pattern, SheetMap map) {
    private boolean fits(String name) {
      return pattern.isEmpty() || matcher(pattern.get()).matches(Path.of(name));
    }
  }

  /** Copies the list. */
  public SheetMaps {
    choices = List.copyOf(choices);
  }

  /**
   * One map for all sheets, or none.
   *
   * @param map the map
   */
  public static SheetMaps of(Optional<SheetMap> map) {
    return map.map(m -> new SheetMaps(List.of(new Choice(Optional.empty(), m)))).orElse(NONE);
  }

  /**
   * The maps of a command line: {@code MAP}, or {@code PATTERN=MAP} for the sheets whose file name
   * fits the pattern.
   *
   * @param given what the options say, in their order
   * @param schemas the kinds of sheet that a map may be of
   * @throws SheetException when there is no such map, it cannot be read, a pattern is none, or two
   *     maps are for every sheet
   */
  public static SheetMaps read(List<String> given, List<SheetSchema> schemas)
      throws SheetException {
    List<Choice> choices = new ArrayList<>();
    Optional<String> forAll = Optional.empty();
    for (String text : given) {
      int at = equalsSign(text);
      Optional<String> pattern =
          at < 0 ? Optional.empty() : Optional.of(checked(text.substring(0, at).strip(), text));
      if (pattern.isEmpty() && forAll.isPresent()) {
        throw SheetException.ofFile(
            text,
            "a second map for every sheet, after " + forAll.get(),
            "one map for every sheet, others with the sheets that they are for",
            "Write --map 'PATTERN=MAP', for example 'men-*=men-2024'.");
      }
      if (pattern.isEmpty()) {
        forAll = Optional.of(text);
      }
      choices.add(new Choice(pattern, ShippedMaps.find(text.substring(at + 1).strip(), schemas)));
    }
    // A map with a pattern goes before the one for every other sheet, wherever it was written.
    List<Choice> sorted = new ArrayList<>(choices);
    sorted.sort((a, b) -> Boolean.compare(a.pattern().isEmpty(), b.pattern().isEmpty()));
    return new SheetMaps(sorted);
  }

  /** Where the pattern ends; -1 without one, as where a file carries the whole name. */
  private static int equalsSign(String given) {
    return Files.exists(Path.of(given)) ? -1 : given.indexOf('=');
  }

  /**
   * The files among the maps of a command line, those that are not shipped.
   *
   * @param given what the options say
   */
  public static List<Path> files(List<String> given) {
    return given.stream()
        .map(text -> ShippedMaps.file(text.substring(equalsSign(text) + 1).strip()))
        .flatMap(Optional::stream)
        .toList();
  }

  private static String checked(String pattern, String text) throws SheetException {
    try {
      if (!pattern.isEmpty() && matcher(pattern) != null) {
        return pattern;
      }
    } catch (IllegalArgumentException e) {
      // Said below, as for an empty one.
    }
    throw SheetException.ofFile(
        text,
        (pattern.isEmpty() ? "nothing" : Wording.quoted(pattern)) + " before the =",
        "a pattern of file names such as men-* or 2024-??-??.csv",
        "Correct the pattern.");
  }

  private static PathMatcher matcher(String pattern) {
    return FileSystems.getDefault().getPathMatcher("glob:" + pattern);
  }

  /**
   * The map of a sheet: the first whose pattern fits the file's name, with or without its
   * extension; empty when it is in our own columns.
   *
   * @param file the sheet
   */
  public Optional<SheetMap> of(Path file) {
    return choices.stream()
        .filter(c -> c.fits(Sheet.fileName(file)) || c.fits(Sheet.stem(file)))
        .map(Choice::map)
        .findFirst();
  }

  /** The maps. */
  public List<SheetMap> maps() {
    return choices.stream().map(Choice::map).toList();
  }

  /** The maps' names, as the console and {@code run.json} say them; empty without a map. */
  public String names() {
    return String.join(
        ", ",
        choices.stream()
            .map(c -> c.pattern().map(p -> p + ": ").orElse("") + c.map().name())
            .toList());
  }
}
