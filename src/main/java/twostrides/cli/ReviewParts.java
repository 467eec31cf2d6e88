package twostrides.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.io.file.PathUtils;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;
import twostrides.sheet.Sheet;
import twostrides.sheet.SheetException;

/**
 * A review in parts, a sheet each, for programs that spread them over machines: every part leaves
 * what its game gave in the cache, and the review itself then finds all of them there. All machines
 * need the sheets and the cache under the same names.
 */
public final class ReviewParts {

  private static final String CACHE = "--cache";

  /** What a part does in its own way, or not at all. */
  private static final Set<String> NOT_OF_PARTS =
      Set.of(
          "--out",
          "--tables-only",
          "--tracking",
          "--team",
          "--all-players",
          "--png",
          "--one-file",
          "--json-lines");

  private ReviewParts() {}

  /**
   * The command lines of the parts, each with a sheet of its own and the tracking sheets whose
   * names begin with that of the sheet, without its ending.
   *
   * @param review the command line of a review with a cache, the word review included
   * @throws IllegalArgumentException when it is none, or has no cache
   * @throws SheetException when a name stands for no sheet
   */
  public static List<List<String>> of(List<String> review) throws SheetException {
    CommandLine.ParseResult parsed;
    try {
      parsed = Main.line().parseArgs(review.toArray(String[]::new)).subcommand();
    } catch (CommandLine.ParameterException e) {
      throw new IllegalArgumentException(e.getMessage(), e);
    }
    if (parsed == null
        || !(parsed.commandSpec().userObject() instanceof ReviewCommand command)
        || !parsed.hasMatchedOption(CACHE)) {
      throw new IllegalArgumentException(
          "expected review SHEETS " + CACHE + " DIR and other options");
    }
    List<String> options = new ArrayList<>(List.of("review", "--tables-only"));
    for (OptionSpec option : parsed.matchedOptions()) {
      if (!NOT_OF_PARTS.contains(option.longestName())) {
        for (String value : option.originalStringValues()) {
          options.add(option.longestName());
          if (option.arity().max() > 0) {
            options.add(value);
          }
        }
      }
    }
    Map<Path, List<String>> parts = new LinkedHashMap<>();
    for (Path sheet : command.sheets.files()) {
      List<String> part = new ArrayList<>(options);
      part.add(sheet.toString());
      parts.put(sheet, part);
    }
    for (Path tracking : command.tracking.tracking()) {
      parts.keySet().stream()
          .filter(s -> Sheet.fileName(tracking).startsWith(Sheet.stem(s)))
          .max(Comparator.comparingInt(s -> Sheet.stem(s).length()))
          .ifPresent(s -> parts.get(s).addAll(List.of("--tracking", tracking.toString())));
    }
    return List.copyOf(parts.values());
  }

  /**
   * Runs a part. What is wrong with its sheet the review says in its turn.
   *
   * @param part a command line of {@link #of}
   */
  public static void run(List<String> part) {
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    try {
      Path out = Files.createTempDirectory("two-strides");
      try {
        Main.run(
            nowhere,
            nowhere,
            Stream.concat(part.stream(), Stream.of("--out", out.resolve("part").toString()))
                .toArray(String[]::new));
      } finally {
        PathUtils.deleteDirectory(out);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
