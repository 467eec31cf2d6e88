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
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import twostrides.checks.Printed;
import twostrides.game.Game;
import twostrides.game.SeasonReader;
import twostrides.game.SheetForms;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;

/**
 * Each key of each shipped map of play sheets wrong in each plausible way, and the wrong map given
 * to {@code check} with the open games that the right one is for: it is refused, or what it does to
 * the games is said, or it is on the list of those that nothing can find.
 */
class MapMistakesTest {

  @RegisterExtension static final Printed FIGURES = new Printed();

  private static final Path OPEN =
      Path.of(System.getProperty("twostrides.openData", "../shared/open-data"));

  /** A game, or two where a sheet holds several, for each map. */
  private static final Map<String, String> SHEETS =
      new TreeMap<>(
          Map.of(
              "womens-2022-open-data", "2022-02-12-E-at-D.events.csv",
              "women-2018-19", "women-2018-19/sheets/2019-04-13-G-at-H.csv",
              "women-2023", "women-2023/sheets/games.csv",
              "men-2024", "men-2024/sheets/2024-10-13.Team.B.@.Team.A.-.Events.csv",
              "women-league-2021", "women-league-2021/sheets/games.csv",
              "tracked-2023", "tracked-2023/native/2023-12-28-M2-at-M4.csv"));

  /** Rows of two games of a sheet that holds five. */
  private static final int TWO_GAMES = 3500;

  private enum Answer {
    REFUSED,
    SAID,
    MISSED
  }

  @TempDir Path dir;

  @Test
  void noMistakeInTwoMapsPassesSilently() throws IOException, SheetException {
    noMistakePasses(Set.of("women-2023", "tracked-2023"));
  }

  @Test
  @Tag("long")
  void noMistakeInAnyMapPassesSilently() throws IOException, SheetException {
    noMistakePasses(SHEETS.keySet());
  }

  private void noMistakePasses(Set<String> maps) throws IOException, SheetException {
    if (!Files.isDirectory(OPEN.resolve("women-2023"))) {
      System.err.println("SKIPPED: no open games at " + OPEN + " (set -Dtwostrides.openData)");
    }
    assumeTrue(Files.isDirectory(OPEN.resolve("women-2023")), "no open games at " + OPEN);
    Map<Answer, Integer> all = new LinkedHashMap<>();
    Map<String, List<String>> missed = new LinkedHashMap<>();
    for (Map.Entry<String, String> sheet : SHEETS.entrySet()) {
      if (!maps.contains(sheet.getKey())) {
        continue;
      }
      Path sheets = twoGames(OPEN.resolve(sheet.getValue()));
      String right = Files.readString(Path.of("docs/maps", sheet.getKey() + ".toml"));
      Run baseline = check(right, sheets);
      assertEquals(Main.DONE, baseline.code(), baseline.err());
      assertEquals(List.of(), said(baseline, "Look at this"), sheet.getKey());
      List<Game> games = games(right, sheets);
      Map<Answer, Integer> counts = new LinkedHashMap<>();
      for (Map.Entry<String, String> mistake : MapMistakes.of(right).entrySet()) {
        Answer answer = answer(baseline, check(mistake.getValue(), sheets));
        if (answer == Answer.MISSED && games(mistake.getValue(), sheets).equals(games)) {
          continue;
        }
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
    missed.forEach((mistake, in) -> FIGURES.say("missed: %s (%d maps)", mistake, in.size()));
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

  private Run check(String map, Path sheets) throws IOException {
    Path file = Files.writeString(dir.resolve("map.toml"), map);
    return Run.of("check", "--map", file, sheets);
  }

  /** What a map makes of the sheets: where that is the same, nothing was wrong. */
  private List<Game> games(String map, Path sheets) throws IOException, SheetException {
    Path file = Files.writeString(dir.resolve("map.toml"), map);
    return SeasonReader.read(
            List.of(sheets), Optional.of(SheetMap.read(file, SheetForms.ALL)), false, n -> {})
        .games();
  }

  private Path twoGames(Path sheets) throws IOException {
    try (Stream<String> lines = Files.lines(sheets)) {
      return Files.write(
          dir.resolve(String.valueOf(sheets.getFileName())), lines.limit(TWO_GAMES).toList());
    }
  }

  private static Answer answer(Run right, Run wrong) {
    if (wrong.code() != Main.DONE) {
      assertEquals(Main.UNREADABLE, wrong.code(), wrong.err());
      return Answer.REFUSED;
    }
    Set<String> more = new TreeSet<>();
    for (String kind :
        List.of("Look at this", "Set aside", "Mended", "Left or right", "There:", "  ")) {
      more.addAll(said(wrong, kind));
      more.removeAll(said(right, kind));
    }
    return more.isEmpty() ? Answer.MISSED : Answer.SAID;
  }

  /** Lines of what is missing, or that begin with some words; another figure is nothing new. */
  private static List<String> said(Run run, String kind) {
    List<String> lines = run.lines().stream().map(l -> l.replaceAll("\\d+", "#")).toList();
    if (kind.equals("Left or right")) {
      int at =
          lines.indexOf("Left or right, which no sheet can prove; look at this one on the video:");
      return at < 0 ? List.of() : List.of(lines.get(at + 1));
    }
    if (kind.equals("There:")) {
      return lines.stream().filter(l -> l.matches("  .*: .*, # rows, # periods?")).toList();
    }
    if (kind.isBlank()) {
      int from = lines.indexOf("Missing, and what that costs:");
      return lines.subList(from + 1, lines.size()).stream()
          .takeWhile(l -> l.startsWith(kind))
          .toList();
    }
    return lines.stream().filter(l -> l.startsWith(kind)).toList();
  }
}
