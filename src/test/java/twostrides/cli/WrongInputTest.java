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
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
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
    String found = "--goal-prior: found " + Double.parseDouble(value) + ", expected draws from 0";
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
    String classes =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Xmx48m",
                "-cp",
                classes,
                "twostrides.cli.Main",
                "check",
                sheet.toString())
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(process.waitFor(5, TimeUnit.MINUTES));
    assertEquals(Main.FAILED, process.exitValue(), said);
    assertTrue(
        said.contains("does not hold these files. Give it more, for example java -Xmx4g"), said);
    assertFalse(said.contains("\tat "), said);
  }
}
