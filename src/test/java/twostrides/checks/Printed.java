package twostrides.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * The figures that a test prints, held to the text stored for its class in {@code
 * src/test/resources/twostrides/checks}: docs/checks.md shows figures of those texts, and {@link
 * ChecksPageTest} looks them up there. {@code -Dtwostrides.writeChecks=true} stores them anew; read
 * the difference before you commit it.
 *
 * <pre>{@code
 * @RegisterExtension static final Printed FIGURES = new Printed();
 * ...
 * FIGURES.say("%d of %d agree", same, all);
 * }</pre>
 */
public final class Printed implements BeforeEachCallback, AfterEachCallback, AfterAllCallback {

  static final Path FOLDER = Path.of("src/test/resources/twostrides/checks");

  private static final String BEFORE_ALL = "before all";

  private final Map<String, List<String>> said = new TreeMap<>();
  private final Set<String> passed = new TreeSet<>();
  private final Set<String> failed = new TreeSet<>();
  private String method = BEFORE_ALL;

  /**
   * Prints figures.
   *
   * @param text a format
   * @param values its values
   */
  public void say(String text, Object... values) {
    String line = String.format(Locale.ROOT, text, values);
    said.computeIfAbsent(method, m -> new ArrayList<>()).add(line);
    System.err.println(line);
  }

  /**
   * What a class has stored, by the method that said it.
   *
   * @param test the class's simple name
   */
  static Map<String, List<String>> stored(String test) {
    Map<String, List<String>> stored = new TreeMap<>();
    Path file = file(test);
    if (!Files.exists(file)) {
      return stored;
    }
    try {
      List<String> lines = List.of();
      for (String line : Files.readAllLines(file)) {
        if (line.startsWith("# ")) {
          lines = stored.computeIfAbsent(line.substring(2), m -> new ArrayList<>());
        } else {
          lines.add(line);
        }
      }
      return stored;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Path file(String test) {
    return FOLDER.resolve(test + ".txt");
  }

  @Override
  public void beforeEach(ExtensionContext context) {
    method = context.getRequiredTestMethod().getName();
  }

  @Override
  public void afterEach(ExtensionContext context) {
    if (context.getExecutionException().isEmpty()) {
      passed.add(method);
    } else {
      failed.add(method);
    }
    method = BEFORE_ALL;
  }

  /** Compares what the methods that passed have said, or stores it. */
  @Override
  public void afterAll(ExtensionContext context) throws IOException {
    Class<?> type = context.getRequiredTestClass();
    String test = type.getSimpleName();
    if (!passed.isEmpty()) {
      passed.add(BEFORE_ALL);
    }
    passed.removeAll(failed);
    Map<String, List<String>> stored = stored(test);
    Map<String, List<String>> now = new TreeMap<>(stored);
    now.keySet().removeAll(passed);
    said.forEach(
        (m, lines) -> {
          if (passed.contains(m)) {
            now.put(m, lines);
          }
        });
    now.keySet()
        .removeIf(
            m ->
                !m.equals(BEFORE_ALL)
                    && Arrays.stream(type.getDeclaredMethods())
                        .noneMatch(d -> d.getName().equals(m)));
    if (Boolean.getBoolean("twostrides.writeChecks")) {
      Files.createDirectories(FOLDER);
      Files.writeString(file(test), text(now), StandardCharsets.UTF_8);
      return;
    }
    assertEquals(
        text(stored),
        text(now),
        () ->
            file(test)
                + " holds other figures. If the new ones are right, store them with"
                + " -Dtwostrides.writeChecks=true and mend docs/checks.md");
  }

  private static String text(Map<String, List<String>> figures) {
    StringBuilder text = new StringBuilder();
    figures.forEach(
        (m, lines) -> {
          text.append("# ").append(m).append('\n');
          lines.forEach(line -> text.append(line).append('\n'));
        });
    return text.toString();
  }
}
