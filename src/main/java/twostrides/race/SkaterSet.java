package twostrides.race;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.tomlj.TomlArray;
import org.tomlj.TomlTable;
import twostrides.toml.TomlException;
import twostrides.toml.TomlText;

/**
 * The skaters of a run: a level's own numbers, or a team's in a TOML file that starts from a level.
 *
 * @param name the name on pages
 * @param level the level, which also scales how hard pucks are sent
 * @param settings the skater
 */
public record SkaterSet(String name, SkaterLevel level, SkaterSettings settings) {

  private static final List<String> KEYS =
      List.of("starts-from name top-speed tau reaction carry reach sigma splits".split(" "));
  private static final List<String> SPLIT_KEYS = List.of("distances", "times", "offset");

  /**
   * A level as it is.
   *
   * @param level the level
   */
  public static SkaterSet of(SkaterLevel level) {
    return new SkaterSet(level.title(), level, level.settings());
  }

  /**
   * A level by its word, or a file of one's own.
   *
   * @param wordOrFile a word of {@link SkaterLevel#words}, or a path that ends in .toml
   * @throws IllegalArgumentException when there is no such level or the file cannot be used; the
   *     message says where, what was found and what is expected
   */
  public static SkaterSet find(String wordOrFile) {
    if (wordOrFile.endsWith(".toml")) {
      return new Reader(wordOrFile).read();
    }
    return SkaterLevel.of(wordOrFile)
        .map(SkaterSet::of)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    ("found \"%s\", expected one of %s, or a file that ends in .toml "
                            + "(docs/race.md).")
                        .formatted(wordOrFile, SkaterLevel.words())));
  }

  /** Reads one file; every complaint names file, line and key. */
  private static final class Reader {
    private final String file;

    Reader(String file) {
      this.file = file;
    }

    SkaterSet read() {
      String text;
      // Pages show it, and not where it lies on this machine.
      String name;
      try {
        name = String.valueOf(Path.of(file).getFileName());
        text = TomlText.of(Path.of(file));
      } catch (IOException | InvalidPathException e) {
        throw new IllegalArgumentException(
            file + ": found no file that can be read, expected skaters in TOML. Check the path.",
            e);
      }
      TomlTable toml;
      try {
        toml = TomlText.parse(text);
      } catch (TomlException e) {
        throw wrong(
            e.line(),
            "",
            "text that is not TOML (" + e.getMessage() + ")",
            "lines such as top-speed = 8.9");
      }
      allowOnly(toml, KEYS, "");
      Optional<SkaterLevel> level = text(toml, "starts-from").flatMap(SkaterLevel::of);
      if (level.isEmpty()) {
        throw wrong(
            line(toml, "starts-from"),
            "starts-from",
            text(toml, "starts-from").map(t -> "\"" + t + "\"").orElse("nothing"),
            "the level that this one starts from: " + SkaterLevel.words());
      }
      SkaterSettings s = level.get().settings();
      double top = number(toml, "top-speed", s.topSpeed());
      double tau = number(toml, "tau", s.tau());
      if (toml.contains(List.of("splits"))) {
        if (toml.contains(List.of("top-speed")) || toml.contains(List.of("tau"))) {
          throw wrong(
              line(toml, "splits"),
              "splits",
              "splits together with top-speed or tau",
              "one or the other: splits are what both are fitted from");
        }
        SprintFit fit = fit(toml);
        top = fit.topSpeed();
        tau = fit.tau();
      }
      try {
        SkaterSettings own =
            new SkaterSettings(
                top,
                tau,
                number(toml, "reaction", s.reaction()),
                number(toml, "carry", s.carry()),
                number(toml, "reach", s.reach()),
                number(toml, "sigma", s.sigma()));
        return new SkaterSet(text(toml, "name").orElse(name), level.get(), own);
      } catch (IllegalArgumentException e) {
        throw new IllegalArgumentException(file + ": " + e.getMessage() + ".", e);
      }
    }

    private SprintFit fit(TomlTable toml) {
      if (!(toml.get(List.of("splits")) instanceof TomlTable splits)) {
        throw wrong(
            line(toml, "splits"),
            "splits",
            "no table",
            "{ distances = [5, 10, 20], times = [1.2, 1.9, 3.1], offset = 0.3 }");
      }
      allowOnly(splits, SPLIT_KEYS, "splits.");
      double[] distances = numbers(splits, "distances");
      double[] times = numbers(splits, "times");
      boolean free = text(splits, "offset").filter("fit"::equals).isPresent();
      try {
        return free
            ? SprintFit.withOffset(distances, times)
            : SprintFit.of(distances, times, number(splits, "offset", 0));
      } catch (IllegalArgumentException e) {
        throw wrong(
            line(toml, "splits"), "splits", e.getMessage(), "splits that a sprint can have");
      }
    }

    private double[] numbers(TomlTable table, String key) {
      if (table.get(List.of(key)) instanceof TomlArray array
          && !array.isEmpty()
          && array.toList().stream().allMatch(Number.class::isInstance)) {
        return array.toList().stream().mapToDouble(n -> ((Number) n).doubleValue()).toArray();
      }
      throw wrong(line(table, key), "splits." + key, "no list of numbers", "numbers in brackets");
    }

    private double number(TomlTable table, String key, double without) {
      Object value = table.get(List.of(key));
      if (value == null) {
        return without;
      }
      if (value instanceof Number n) {
        return n.doubleValue();
      }
      throw wrong(line(table, key), key, "\"" + value + "\"", "a number without quotes");
    }

    private Optional<String> text(TomlTable table, String key) {
      return table.get(List.of(key)) instanceof String s
          ? Optional.of(s.strip())
          : Optional.empty();
    }

    private void allowOnly(TomlTable table, List<String> known, String path) {
      for (String key : table.keySet()) {
        if (!known.contains(key)) {
          throw wrong(
              line(table, key), path + key, "an unknown key", "one of " + String.join(", ", known));
        }
      }
    }

    private static int line(TomlTable table, String key) {
      var at = table.inputPositionOf(List.of(key));
      return at == null ? 1 : at.line();
    }

    private IllegalArgumentException wrong(int line, String key, String found, String expected) {
      return new IllegalArgumentException(
          "%s, line %s%s: found %s, expected %s."
              .formatted(file, line, (key.isEmpty() ? "" : ", key " + key), found, expected));
    }
  }
}
