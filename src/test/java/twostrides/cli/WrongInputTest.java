package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What cannot be used gets a message, never a stack trace; what travels with a book names no home.
 */
class WrongInputTest {

  private static final String HEADER =
      "date,period,clock,team,player,action,outcome,x_m,y_m,skaters_for,skaters_against,penalty\n";

  private static final String PLAYED =
      "2031-10-04 19:30,1,19:00,Herons,4 Berg,recovery,,-25,5,5,5,\n"
          + "2031-10-04 19:30,1,18:56,Herons,4 Berg,release,lost,-5,6,5,5,\n"
          + "2031-10-04 19:30,1,18:53,Wolves,9 Vik,faceoff,,21,-6.7,5,5,\n"
          + "2031-10-04 19:30,1,18:50,Wolves,9 Vik,penalty,,3,3,5,5,minor\n";

  @TempDir Path dir;

  private Path file(String name, String text) throws IOException {
    Path file = dir.resolve(name);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text);
  }

  private Path sheet() throws IOException {
    return file("g.csv", HEADER + PLAYED.replace(" 19:30", ""));
  }

  private static void assertSays(Run run, int code, String... says) {
    assertEquals(code, run.code(), run.err());
    for (String words : says) {
      assertTrue(run.err().contains(words), run.err());
    }
    assertFalse(run.err().contains("Something inside went wrong"), run.err());
    assertFalse(run.err().contains("\tat "), run.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"-1", "NaN", "Infinity", "1e300"})
  void aGoalPriorThatIsNoWeightIsRefused(String value) throws IOException {
    Run run = Run.of("review", sheet(), "--goal-prior", value, "--out", dir.resolve("book"));
    String found =
        "--goal-prior: found " + Double.parseDouble(value) + ", expected face-offs from 0";
    assertSays(run, Main.USAGE, found);
    assertFalse(Files.exists(dir.resolve("book")));
  }

  @ParameterizedTest
  @CsvSource({"1000000000, 1000000000", "0, 0", "-1200, -1200", "nan, the value NaN"})
  void aPeriodThatIsNoneIsRefused(String value, String found) throws IOException {
    Path map = file("m.toml", "sheet = \"play\"\n[clock]\nperiod_length_s = " + value + "\n");
    Run run = Run.of("review", sheet(), "--map", map, "--out", dir.resolve("book"));
    assertSays(
        run,
        Main.UNREADABLE,
        map + ", line 3, character 1, key \"clock.period_length_s\": found " + found,
        "What to do: Correct the ");
  }

  @Test
  void theLongestPeriodIsReviewed() throws IOException {
    Path map = file("m.toml", "sheet = \"play\"\n[clock]\nperiod_length_s = 7200\n");
    Run run = Run.of("review", sheet(), "--map", map, "--out", dir.resolve("book"));
    assertEquals(0, run.code(), run.err());
  }

  @Test
  void oneBadDateAmongTimesOfDayIsSetAside() throws IOException {
    Path map = file("m.toml", "sheet = \"play\"\n[date]\nform = \"yyyy-MM-dd HH:mm\"\n");
    String bad = PLAYED.lines().findFirst().orElseThrow().replace("2031-10-04 19:30", "4 Oct");
    Path sheet = file("g.csv", HEADER + PLAYED + bad + "\n");
    Run run = Run.of("review", sheet, "--map", map, "--out", dir.resolve("book"));
    assertSays(run, 0);
    String said =
        "line 6, column \"date\": found \"4 Oct\", expected a date such as 2031-10-04 19:30";
    assertTrue(run.out().contains(said), run.out());
    assertTrue(run.out().contains("5 rows read = 4 rows used + 1 rows set aside."), run.out());
  }

  @Test
  void monthsAreEnglishOnEveryMachine() throws IOException {
    Path map = file("m.toml", "sheet = \"play\"\n[date]\nform = \"d MMM yyyy\"\n");
    Path sheet = file("g.csv", HEADER + PLAYED.replace("2031-10-04 19:30", "4 Oct 2031"));
    Locale locale = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      Run run = Run.of("check", sheet, "--map", map);
      assertTrue(run.out().contains("4 rows used + 0 rows set aside."), run.out());
    } finally {
      Locale.setDefault(locale);
    }
  }

  @Test
  void listsInListsInAMapABookOrALevelAreRefused() throws IOException {
    Path deep = file("deep.toml", "a=1\nb=" + "[".repeat(5000) + "\n");
    String found = "lists or tables in one another, more than 40 deep";
    for (String option : List.of("--map", "--rulebook", "--level")) {
      Run run = Run.of("review", sheet(), option, deep, "--out", dir.resolve("book"));
      int code = option.equals("--level") ? Main.USAGE : Main.UNREADABLE;
      assertSays(run, code, deep + ", line 2", found);
    }
  }

  /** Folders named as someone typed them: none of it stands in the book. */
  @Test
  void noFileOfABookSaysWhereSomethingLay() throws IOException {
    String doubtful = "2031-10-04,1,18:40,Herons,4 Berg,dribble,,-5,6,5,5,\n";
    Path home = dir.resolve("home-of-anna");
    List<Path> sheets =
        List.of(
            file("home-of-anna/season/g1.csv", HEADER + PLAYED.replace(" 19:30", "") + doubtful),
            file("home-of-anna/season/g2.csv", "period,clock\n1,2\n"));
    Path map = file("home-of-anna/m.toml", "sheet = \"play\"\n[columns]\nnote = \"date\"\n");
    Path book =
        file("home-of-anna/own.toml", "starts-from = \"nhl\"\n[settings]\ntype = \"touch\"\n");
    Path level = file("home-of-anna/team.toml", "starts-from = \"junior\"\ntop-speed = 8.7\n");
    Path sync =
        file("home-of-anna/sync.csv", "game,period,clock,video_s\ng1,1,20:00,x\ng1,1,19:00,60\n");
    Path out =
        SampleBook.of(
            dir.resolve("book"),
            sheets,
            "--keep-going",
            "--map",
            map.toString(),
            "--rulebook",
            book.toString(),
            "--compare-rulebook",
            book.toString(),
            "--level",
            level.toString(),
            "--sync",
            sync.toString());
    try (Stream<Path> all = Files.walk(out)) {
      for (Path p : all.filter(Files::isRegularFile).toList()) {
        String text = Files.readString(p, StandardCharsets.ISO_8859_1);
        assertFalse(text.contains(String.valueOf(home.getFileName())), p.toString());
      }
    }
    List<String> problems = Files.readAllLines(out.resolve("set-aside/problems.csv"));
    assertEquals(4, problems.size(), problems.toString());
    assertTrue(problems.get(1).startsWith("m.toml,3,"), problems.get(1));
    assertTrue(problems.get(1).contains("which the sheet g2.csv does not have"), problems.get(1));
    assertTrue(problems.get(2).startsWith("g1.csv,6,action,dribble,"), problems.get(2));
    assertTrue(problems.get(3).startsWith("sync.csv,2,video_s,x,"), problems.get(3));
    assertTrue(Files.readString(out.resolve("run.json")).contains("\"skaters\" : \"team.toml\""));
    String rulings = Files.readString(out.resolve("rulings.html"));
    assertTrue(rulings.contains("chosen in own.toml, line 3"), "the page says where it was chosen");
  }

  @Test
  void answersNameTheFileWithoutItsPlace() throws IOException {
    Path cases = file("home-of-anna/cases.csv", "id,from\n1,nowhere\n");
    Path answers = dir.resolve("answers.csv");
    Run run = Run.of("ruling", "--cases", cases, "--out", answers);
    assertEquals(0, run.code(), run.err());
    String text = Files.readString(answers);
    assertTrue(text.contains("cases.csv, line 2, column \"\"from\"\""), text);
    assertFalse(text.contains("home-of-anna"), text);
  }

  /** A real process with little memory; the sheet is allowed, and too large for it. */
  @Test
  void aSheetThatMemoryDoesNotHoldIsSaidToBeOne() throws Exception {
    Path sheet = file("g.csv", HEADER + PLAYED.repeat(150_000));
    List<String> line = Child.program("check", sheet);
    line.add(1, "-Xmx48m");
    Child run = Child.run(line);
    assertEquals(Main.FAILED, run.code(), run.said());
    assertTrue(
        run.said().contains("does not hold these files. Give it more, for example java -Xmx4g"),
        run.said());
    assertFalse(run.said().contains("\tat "), run.said());
  }

  /** Read like a file, a pipe would be waited for until somebody writes into it. */
  @Test
  @Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
  void aPipeIsNoFile() throws Exception {
    Path pipe = dir.resolve("pipe.toml");
    try {
      assertEquals(0, new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor());
    } catch (IOException e) {
      Assumptions.abort("this machine makes no pipes: " + e.getMessage());
    }
    Path out = dir.resolve("book");
    String found = pipe + ": found a pipe or a device, expected a file";
    assertSays(Run.of("review", sheet(), "--map", pipe, "--out", out), Main.UNREADABLE, found);
    assertSays(Run.of("ruling", "--cases", pipe), Main.UNREADABLE, found);
    assertSays(
        Run.of("review", sheet(), "--rulebook", pipe, "--out", out),
        Main.UNREADABLE,
        pipe + ": found a file that cannot be read, expected a rulebook in TOML");
    assertSays(
        Run.of("review", sheet(), "--level", pipe, "--out", out),
        Main.USAGE,
        pipe + ": found no file that can be read");
    assertFalse(Files.exists(out));
  }

  @Test
  void theOptionThatNamesTheBookIsBlamed() throws IOException {
    Path out = dir.resolve("book");
    String expected = ": found \"nix\", expected one of hybrid";
    for (String option : List.of("--rulebook", "--compare-rulebook")) {
      Run run = Run.of("review", sheet(), option, "nix", "--out", out);
      assertSays(run, Main.USAGE, option + expected);
      assertTrue(run.err().startsWith(option), run.err());
    }
    Run run = Run.of("review", sheet(), "--compare-rulebook", dir.resolve("x.toml"), "--out", out);
    assertSays(run, Main.UNREADABLE, "Check the path given to --compare-rulebook.");
  }

  /** Spreadsheets and editors put a mark before UTF-8 text. */
  @Test
  void aByteOrderMarkBeforeABookOrALevelIsRead() throws IOException {
    Path book = file("own.toml", "\uFEFFstarts-from = \"nhl\"\n");
    Path level = file("team.toml", "\uFEFFstarts-from = \"junior\"\n");
    Run run =
        Run.of(
            "review", sheet(), "--rulebook", book, "--level", level, "--out", dir.resolve("book"));
    assertSays(run, 0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "place.home_attacks_plus_x_in = [1, 0]|found 0, expected whole numbers from 1 to 20",
        "place.home_attacks_plus_x_in = [21]|found 21, expected whole numbers from 1 to 20",
        "clock.step_s = 0|found 0, expected a number from 0.0001 to 60",
        "place.step = -3|found -3, expected a number from 0.0001 to 60"
      })
  void valuesOfAMapAreChecked(String line, String found) throws IOException {
    Path map = file("m.toml", "sheet = \"play\"\n" + line + "\n");
    assertSays(Run.of("check", sheet(), "--map", map), Main.UNREADABLE, "line 2", found);
  }

  /** Brackets in brackets, in a pattern: the stack holds some thousand. */
  @Test
  void aPatternOfBracketsInBracketsIsRefused() throws IOException {
    String pattern = "(".repeat(20_000) + "a" + ")".repeat(20_000);
    String line = "player = { column = \"player\", take = \"" + pattern + "\" }\n";
    Path map = file("m.toml", "sheet = \"play\"\n[columns]\n" + line);
    String found = "a pattern that cannot be read";
    assertSays(Run.of("check", sheet(), "--map", map), Main.UNREADABLE, "line 3", found);
  }

  @Test
  void oneCellIsNotCells() throws IOException {
    Run run = Run.of("check", file("g.csv", HEADER + PLAYED.replace(" 19:30", "") + "1\n"));
    assertTrue(run.out().contains("found \"1 cell: 1\", expected 12 cells, as in"), run.out());
  }

  @Test
  void aPointIsNotAdvisedWhereItWouldNotHelp() throws IOException {
    String far = "2031-10-04,1,\"1999999,5\",Herons,4 Berg,recovery,,-25,5,5,5,\n";
    Run run = Run.of("check", file("g.csv", HEADER + PLAYED.replace(" 19:30", "") + far));
    assertTrue(run.out().contains("found \"1999999,5\""), run.out());
    assertFalse(run.out().contains("Write a decimal point"), run.out());
  }
}
