package twostrides.game;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;

/** Which games are asked how long their periods are. */
class PeriodDoubtTest {

  private static final Path SAMPLE = Path.of("sample-data/game-01-GLA-TAR.csv");
  private static final int CLOCK = 5;

  @TempDir Path dir;

  private static int seconds(String clock) {
    String[] parts = clock.split(":", -1);
    return 60 * Integer.parseInt(parts[0]) + Integer.parseInt(parts[1]);
  }

  /** The sample's first game with other clocks: those kept, each so many seconds earlier. */
  private Optional<PeriodDoubt> sample(IntPredicate keep, int earlier)
      throws IOException, SheetException {
    String text;
    try (Stream<String> lines = Files.lines(SAMPLE)) {
      text =
          lines
              .filter(l -> l.startsWith("game,") || keep.test(seconds(l.split(",", -1)[CLOCK])))
              .map(l -> l.startsWith("game,") ? l : shifted(l, earlier))
              .collect(Collectors.joining("\n"));
    }
    Files.writeString(dir.resolve("g.csv"), text);
    return in(SeasonReader.at(dir.resolve("g.csv").toString()), true);
  }

  private static String shifted(String line, int earlier) {
    String[] cells = line.split(",", -1);
    int clock = seconds(cells[CLOCK]) - earlier;
    cells[CLOCK] = String.format(Locale.ROOT, "%d:%02d", clock / 60, clock % 60);
    return String.join(",", cells);
  }

  @Test
  void theSampleSeasonHasTwentyMinutes() throws SheetException {
    assertEquals(Optional.empty(), in(SeasonReader.at("sample-data"), true));
  }

  /** The first minutes of a period are those of a shorter one, five or eight minutes lower. */
  @ParameterizedTest
  @ValueSource(ints = {10, 12, 15, 17})
  void clocksThatBeginLowerAreAskedAbout(int minutes) throws IOException, SheetException {
    int earlier = 1200 - 60 * minutes;
    assertEquals(
        Optional.of(new PeriodDoubt("g.csv", "2031-10-04 GLA-TAR", minutes)),
        sample(clock -> clock >= earlier, earlier));
  }

  /** A game of which only the last or the middle minutes were written down. */
  @ParameterizedTest
  @ValueSource(ints = {12, 15, 8, 5})
  void aGameWrittenInPartIsNot(int minutes) throws IOException, SheetException {
    assertEquals(Optional.empty(), sample(clock -> clock <= 60 * minutes - 90, 0));
    assertEquals(Optional.empty(), sample(clock -> clock <= 60 * minutes && clock > 120, 0));
  }

  private Optional<PeriodDoubt> tags(boolean down, List<String> clocks)
      throws IOException, SheetException {
    Path map = dir.resolve("up.toml");
    Files.writeString(
        map, "sheet = \"tag\"\n[clock]\ndirection = \"" + (down ? "down" : "up") + "\"");
    String rows =
        clocks.stream()
            .map(c -> c + ",Herons,carry\n")
            .collect(Collectors.joining("", "period,clock,team,way_out\n", ""));
    Files.writeString(dir.resolve("t.csv"), rows);
    return in(
        SeasonReader.read(
            List.of(dir.resolve("t.csv")),
            Optional.of(SheetMap.read(map, SheetForms.ALL)),
            false,
            n -> {}),
        down);
  }

  @Test
  void tagsFromEndToEndOfShortPeriodsAreAskedAbout() throws IOException, SheetException {
    List<String> quarters =
        List.of("1,14:41", "1,7:00", "1,0:20", "2,14:55", "2,0:40", "3,14:30", "3,0:05");
    assertEquals(Optional.of(15), tags(true, quarters).map(PeriodDoubt::minutes));
    List<String> played =
        List.of("1,0:41", "1,7:00", "1,11:20", "2,0:15", "2,11:40", "3,0:30", "3,11:55");
    assertEquals(Optional.of(12), tags(false, played).map(PeriodDoubt::minutes));
    List<String> longer = List.of("1,18:41", "1,0:20", "2,14:55", "2,0:40", "3,14:30", "3,0:05");
    assertEquals(Optional.empty(), tags(true, longer));
    List<String> inPart = List.of("1,14:41", "1,0:20", "2,14:55", "2,6:40");
    assertEquals(Optional.empty(), tags(true, inPart));
  }

  @Test
  void overtimeSaysNothing() throws IOException, SheetException {
    assertEquals(Optional.empty(), tags(true, List.of("4,9:50", "4,0:20", "5,9:58", "5,0:10")));
    List<String> after = List.of("1,19:30", "1,0:20", "4,9:50", "4,0:20");
    assertEquals(Optional.empty(), tags(true, after));
  }

  /** Of the first game that is in doubt. */
  private static Optional<PeriodDoubt> in(SheetsRead season, boolean down) {
    return Stream.concat(
            season.games().stream().map(g -> PeriodDoubt.in(g, down)),
            season.tagged().stream().map(g -> PeriodDoubt.in(g, down)))
        .flatMap(Optional::stream)
        .findFirst();
  }
}
