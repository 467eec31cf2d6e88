package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import twostrides.checks.Printed;

/**
 * Each key of each shipped map of play sheets wrong in each plausible way, and the wrong map given
 * to {@code check} with the open games that the right one is for: it is refused, or what it does to
 * the games is said, or it is on the list of those that nothing can find.
 */
class MapMistakesTest {

  @RegisterExtension static final Printed FIGURES = new Printed();

  private static final Path OPEN =
      Path.of(System.getProperty("twostrides.openData", "../shared/open-data"));

  /** Where the sheets of each map are. */
  private static final Map<String, String> SHEETS = sheets();

  private static Map<String, String> sheets() {
    Map<String, String> sheets = new LinkedHashMap<>();
    sheets.put("womens-2022-open-data", "*.events.csv");
    sheets.put("women-2018-19", "women-2018-19/sheets/*.csv");
    sheets.put("women-2023", "women-2023/sheets/*.csv");
    sheets.put("men-2024", "men-2024/sheets/*.csv");
    sheets.put("women-league-2021", "women-league-2021/sheets/*.csv");
    sheets.put("tracked-2023", "tracked-2023/native/*.csv");
    return sheets;
  }

  private enum Answer {
    REFUSED,
    SAID,
    MISSED
  }

  @TempDir Path dir;

  @Test
  void noMistakePassesSilently() throws IOException {
    if (!Files.isDirectory(OPEN.resolve("women-2023"))) {
      System.err.println("SKIPPED: no open games at " + OPEN + " (set -Dtwostrides.openData)");
    }
    assumeTrue(Files.isDirectory(OPEN.resolve("women-2023")), "no open games at " + OPEN);
    Map<Answer, Integer> all = new LinkedHashMap<>();
    Map<String, List<String>> missed = new LinkedHashMap<>();
    for (Map.Entry<String, String> sheet : SHEETS.entrySet()) {
      String sheets = OPEN.resolve(sheet.getValue()).toString();
      String right = Files.readString(Path.of("docs/maps", sheet.getKey() + ".toml"));
      Run baseline = check(right, sheets);
      assertEquals(Main.DONE, baseline.code(), baseline.err());
      assertEquals(List.of(), said(baseline, "Look at this"), sheet.getKey());
      Map<Answer, Integer> counts = new LinkedHashMap<>();
      for (Map.Entry<String, String> mistake : MapMistakes.of(right).entrySet()) {
        Answer answer = answer(baseline, check(mistake.getValue(), sheets));
        counts.merge(answer, 1, Integer::sum);
        all.merge(answer, 1, Integer::sum);
        if (Boolean.getBoolean("twostrides.mistakes")) {
          System.err.println(sheet.getKey() + ": " + mistake.getKey() + ": " + answer);
        }
        if (answer == Answer.MISSED) {
          missed.computeIfAbsent(mistake.getKey(), k -> new ArrayList<>()).add(sheet.getKey());
        }
      }
      FIGURES.say("%s: %s", sheet.getKey(), words(counts));
    }
    FIGURES.say("all: %s", words(all));
    missed.forEach((mistake, maps) -> FIGURES.say("missed: %s (%d maps)", mistake, maps.size()));
    assertTrue(all.values().stream().mapToInt(n -> n).sum() >= 40);
    String page = Files.readString(Path.of("docs/checks.md"));
    assertEquals(
        List.of(),
        missed.keySet().stream().filter(m -> !page.contains("| " + m + " |")).toList(),
        "missed, and docs/checks.md does not say why");
  }

  private static String words(Map<Answer, Integer> counts) {
    return counts.values().stream().mapToInt(n -> n).sum()
        + " mistakes, "
        + counts.getOrDefault(Answer.REFUSED, 0)
        + " refused, "
        + counts.getOrDefault(Answer.SAID, 0)
        + " said, "
        + counts.getOrDefault(Answer.MISSED, 0)
        + " missed";
  }

  private Run check(String map, String sheets) throws IOException {
    Path file = Files.writeString(dir.resolve("map.toml"), map);
    return Run.of("check", "--map", file, sheets);
  }

  private static Answer answer(Run right, Run wrong) {
    if (wrong.code() != Main.DONE) {
      assertEquals(Main.UNREADABLE, wrong.code(), wrong.err());
      return Answer.REFUSED;
    }
    Set<String> more = new TreeSet<>();
    for (String kind : List.of("Look at this", "Set aside", "Mended", "  ")) {
      more.addAll(said(wrong, kind));
      more.removeAll(said(right, kind));
    }
    return more.isEmpty() ? Answer.MISSED : Answer.SAID;
  }

  /** Lines of what is missing, or that begin with some words; without their figures. */
  private static List<String> said(Run run, String kind) {
    List<String> lines = run.lines();
    if (kind.isBlank()) {
      int from = lines.indexOf("Missing, and what that costs:");
      return lines.subList(from + 1, lines.size()).stream()
          .takeWhile(l -> l.startsWith(kind))
          .toList();
    }
    return lines.stream().filter(l -> l.startsWith(kind)).collect(Collectors.toList());
  }
}
