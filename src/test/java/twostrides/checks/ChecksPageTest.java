package twostrides.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Every figure of docs/checks.md comes from a test that its section names: from what that test has
 * printed ({@link Printed}) or from a literal of its code. A section without tests in its own
 * heading takes those of the heading above it.
 */
class ChecksPageTest {

  private static final Path PAGE = Path.of("docs/checks.md");
  private static final Path TESTS = Path.of("src/test/java");

  private static final Pattern HEADING = Pattern.compile("(#+) (.*)");
  private static final Pattern TEST = Pattern.compile("`(\\w+Test)`");

  /** Years, seasons, rules, volume and page: they name something and measure nothing. */
  private static final Pattern NAMES =
      Pattern.compile(
          "\\b(19|20)\\d\\d([/-]\\d\\d)?\\b|\\b[Rr]ule \\d+|\\b\\d+:\\d{3}\\b|\\]\\([^)]*\\)");

  private static final Pattern NUMBER =
      Pattern.compile(
          "(?<![\\w.])((\\d{1,3}(,\\d{3})+|\\d[\\d_]*)(\\.\\d+)?|\\.\\d+)(e-?\\d+)?( %)?(?!\\w)");

  private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/|//[^\\n]*", Pattern.DOTALL);

  private record Section(String title, Set<String> tests, List<String> lines) {}

  private static List<Section> sections() throws IOException {
    List<Section> sections = new ArrayList<>();
    Map<Integer, Section> open = new HashMap<>();
    for (String line : Files.readAllLines(PAGE)) {
      Matcher heading = HEADING.matcher(line);
      if (heading.matches()) {
        int level = heading.group(1).length();
        Set<String> tests = new TreeSet<>();
        TEST.matcher(line).results().forEach(m -> tests.add(m.group(1)));
        Section above = open.get(level - 1);
        boolean own = !tests.isEmpty() || above == null;
        String title = heading.group(2).replaceFirst(" \\(?`.*", "");
        Section s = new Section(title, own ? tests : above.tests(), new ArrayList<>());
        sections.add(s);
        open.put(level, s);
      } else if (!sections.isEmpty()) {
        sections.get(sections.size() - 1).lines().add(line);
      }
    }
    return sections;
  }

  private static Path source(String test) {
    try (Stream<Path> files = Files.walk(TESTS)) {
      return files
          .filter(f -> f.getFileName().toString().equals(test + ".java"))
          .findFirst()
          .orElseThrow(() -> new AssertionError("no test " + test));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  /** The numbers of a text, as numbers: 1,200 and 1200.0 are one. */
  private static Set<BigDecimal> numbers(String text) {
    Set<BigDecimal> numbers = new TreeSet<>();
    NUMBER.matcher(text).results().forEach(m -> numbers.add(number(m)));
    return numbers;
  }

  private static BigDecimal number(MatchResult m) {
    return new BigDecimal(m.group().replaceAll("[,_]| %", "")).stripTrailingZeros();
  }

  private static Set<BigDecimal> given(Collection<String> tests) throws IOException {
    Set<BigDecimal> given = new TreeSet<>();
    for (String test : tests) {
      given.addAll(numbers(COMMENT.matcher(Files.readString(source(test))).replaceAll(" ")));
      Printed.stored(test)
          .values()
          .forEach(lines -> lines.forEach(line -> given.addAll(numbers(line))));
    }
    return given;
  }

  @Test
  void everyFigureComesFromATestThatItsSectionNames() throws IOException {
    List<String> unknown = new ArrayList<>();
    for (Section s : sections()) {
      Set<BigDecimal> given = given(s.tests());
      for (String line : s.lines()) {
        String figures = NAMES.matcher(line).replaceAll(" ");
        NUMBER
            .matcher(figures)
            .results()
            .filter(m -> !found(m, given))
            .forEach(m -> unknown.add(s.title() + ": " + m.group() + " in: " + line.strip()));
      }
    }
    assertEquals("", String.join("\n", unknown), "figures that no test of their section gives");
  }

  /** A percentage may be a share in the test. */
  private static boolean found(MatchResult m, Set<BigDecimal> given) {
    BigDecimal figure = number(m);
    return given.contains(figure)
        || (m.group().endsWith("%")
            && given.contains(figure.movePointLeft(2).stripTrailingZeros()));
  }

  @Test
  void everySectionNamesTestsAndEveryNameIsATest() throws IOException {
    for (Section s : sections()) {
      s.tests().forEach(ChecksPageTest::source);
      assertTrue(
          !s.tests().isEmpty() || s.lines().stream().allMatch(l -> numbers(l).isEmpty()),
          s.title() + " names no test");
    }
  }

  @Test
  void everyStoredTextHasItsTest() throws IOException {
    try (Stream<Path> files = Files.list(Printed.FOLDER)) {
      files.forEach(f -> source(f.getFileName().toString().replace(".txt", "")));
    }
  }
}
