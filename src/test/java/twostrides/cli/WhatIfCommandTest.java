package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command whatif: its words, its messages and its drawing. */
class WhatIfCommandTest {

  @TempDir Path dir;

  private static Run run(Object... args) {
    return Run.of(Stream.concat(Stream.of("whatif"), Arrays.stream(args)).toArray());
  }

  private static void says(Run r, String... words) {
    assertEquals(0, r.code(), r.err());
    for (String w : words) {
      assertTrue(r.out().contains(w), w + " is missing in:\n" + r.out());
    }
  }

  @Test
  void answersInPlainWords() {
    Run r = run("--release", "-5,6", "--pressure", "light", "--rulebook", "nhl");
    says(
        r,
        "NHL, season ",
        "Release at -5.0, 6.0 m (-16.4, 19.7 ft) on the nhl rink, sent with no receiver, even"
            + " strength.",
        "4.8 m (15.8 ft) before the red line, 0.9 s away at 5.2 m/s.",
        "  Icing: from short of the line, over the goal line, and a defender would touch it first"
            + " (81.1, S).",
        "Let go now, in 2000 simulations (seed 1; simulation error after +/-):",
        "  waved off, an own skater first ",
        "  dies short of their goal line ",
        "  an opponent can play it on the way ",
        "five of each team are placed",
        "Chance of icing 10 % (7 to 13 %): at most what was counted, 35 of 364 pucks sent on iced in six",
        "Chance of gaining center 87 % (58 to 99 %)",
        "0.10 losses of the puck a second under light pressure, a prior that is assumed",
        "6.4 to 10.5 m/s (21 to 34 ft/s)",
        "Cheapest by these numbers: release now, 0.001 +/- 0.00",
        " less than gain center first, then release, too close to call by this simulation.",
        "so the change can wait 0.9 s. Nothing read supports a number");
    List<String> lines = r.lines();
    int n = lines.size();
    assertEquals("The league's rulebook and its officials decide.", lines.get(n - 2));
    assertTrue(lines.get(n - 1).contains("nothing here says anything about the risk of injury"));
    assertFalse(r.out().contains("empty net"));
  }

  @Test
  void feetAndMetresAgree() {
    Run metres = run("--release", "-12.192,6.096", "--skater", "opponent:3.048,1.524,-1.524,0");
    Run feet = run("--release", "-40,20", "--unit", "ft", "--skater", "opponent:10,5,-5,0");
    says(metres, "Only the 1 skater given is in the race.");
    assertEquals(metres.out(), feet.out());
  }

  @Test
  void theSameSeedGivesTheSameWordsInEveryCountry() {
    String[] asked = {"--release", "-9,-3", "--net-empty", "--simulations", "500"};
    Run here = run((Object[]) asked);
    Locale locale = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertEquals(here.out(), run((Object[]) asked).out());
    } finally {
      Locale.setDefault(locale);
    }
    Run other = run("--release", "-9,-3", "--net-empty", "--simulations", "500", "--seed", "2");
    assertEquals(0, other.code());
    assertNotEquals(here.out().replace("seed 1", ""), other.out().replace("seed 2", ""));
  }

  @Test
  void anExemptTeamIsNotIced() {
    Run r = run("--release", "-20,6", "--strength", "shorthanded", "--rulebook", "iihf");
    says(
        r,
        "  No icing: a team shorthanded at the instant of release may ice the puck",
        "  goes the length, a defender first ");
    assertFalse(r.out().contains("Chance of icing"), r.out());
    assertTrue(
        r.lines().stream()
            .anyMatch(
                l ->
                    l.startsWith("  release now:") && l.contains("defensive-zone face-off 0.0 %")));
    says(
        run("--release", "-20,6", "--strength", "shorthanded", "--rulebook", "usah-youth-14u"),
        "  Icing: ");
  }

  @Test
  void anEmptyNetAddsTheShots() {
    Run r = run("--release", "-12,2", "--net-empty");
    says(
        r,
        ", their net empty.",
        "  shoot at the empty net now: goal ",
        "  gain center first, then shoot: goal ",
        "A goal has no price here.");
    says(
        run("--release", "2,0", "--net-empty"), "Center is gained", "  shoot at the empty net now");
  }

  @Test
  void automaticIcingHasNoRaceAndAPassMayHangOnTheLinesperson() {
    Run automatic = run("--release", "-12,2", "--rulebook", "automatic");
    says(automatic, "If it goes the length:");
    assertFalse(automatic.out().contains("waved off"));
    Run pass = run("--release", "-12,2", "--kind", "pass", "--rulebook", "nhl");
    says(
        pass,
        "a pass that is not received",
        "  What is not yet decided is counted as icing below.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--release -31,2 | --release: found \"-31,2\", expected a place inside the boards",
        "--release -29.9,12.4 | less in the corners. Check the sign and --unit.",
        "--release -3 | --release: found \"-3\", expected 2 numbers with commas between",
        "--release -3,NaN | --release: found \"-3,NaN\"",
        "--release -3,1e400 | --release: found \"-3,1e400\"",
        "--simulations 500 | --release: found nothing, expected X,Y. Add it",
        "--release -3,2 --skater opponent:3,3,20,0 | opponent:3,3,20,0: found 20.0 m/s, expected at most 12.0 m/s",
        "--release -3,2 --skater opponent:40,3 | --skater opponent:40,3: found a skater there",
        "--release -3,2 --skater opponent:4,3,1 | expected 2 or 4 numbers",
        "--release -3,2 --skater rival:4,3 | --skater rival:4,3: found \"rival\", expected own or opponent",
        "--release -3,2 --skater own:4,3 | --skater: found own skaters only, expected at least one opponent",
        "--release -3,2 --speed 61 | --speed: found 61.0 (61.0 m/s), expected above 0 and up to 60 m/s",
        "--release -3,2 --speed 0 | --speed: found 0.0",
        "--release -3,2 --direction 100 | --direction: found 100.0, expected -80 to 80 degrees",
        "--release -3,2 --loft 90 | --loft: found 90.0, expected 0 to 75 degrees",
        "--release -3,2 --kind rim | --kind: found \"rim\", expected one of sent, pass",
        "--release -3,2 --pressure some | --pressure: found \"some\", expected one of none, light, heavy",
        "--release -3,2 --strength 5v4 | --strength: found \"5v4\", expected one of even, shorthanded",
        "--release -3,2 --level pros | --level: found \"pros\", expected one of elite-men",
        "--release -3,2 --rink big | --rink: found \"big\", expected one of nhl, iihf",
        "--release -3,2 --unit yd | --unit: found \"yd\", expected one of m, ft",
        "--release -3,2 --simulations 99 | --simulations: found 99, expected 100 to 1000000",
        "--release -3,2 --out x.jpg | --out: found \"x.jpg\", expected a file that ends in .svg or .png",
        "--release -3,2 --rulebook nowhere | nowhere",
        "--release -3,2 --season soon | --season: found \"soon\""
      })
  void whatCannotBeUsedIsNamed(String args, String message) {
    Run r = run((Object[]) args.split(" "));
    assertEquals(2, r.code(), r.out());
    assertTrue(r.err().contains(message), r.err());
    assertEquals("", r.out());
  }

  @Test
  void drawsTheReleaseAsSvgAndAsPng() throws IOException {
    Path svg = dir.resolve("release.svg");
    Path png = dir.resolve("release.PNG");
    Object[] asked = {
      "--release", "-8,4", "--simulations", "200", "--skater", "opponent:3,5", "--out"
    };
    says(run(Stream.concat(Arrays.stream(asked), Stream.of(svg)).toArray()), "Diagram: " + svg);
    String first = Files.readString(svg);
    assertTrue(first.contains("viewBox=\"-20 "), first);
    assertTrue(first.contains("<desc"), first);
    assertTrue(first.contains("7.8 m (25.6 ft) before the red line"), first);
    assertEquals(0, run(Stream.concat(Arrays.stream(asked), Stream.of(svg)).toArray()).code());
    assertEquals(first, Files.readString(svg));
    assertEquals(0, run(Stream.concat(Arrays.stream(asked), Stream.of(png)).toArray()).code());
    assertArrayEquals(
        new byte[] {(byte) 0x89, 'P', 'N', 'G'}, Arrays.copyOf(Files.readAllBytes(png), 4));
    try (Stream<Path> files = Files.list(dir)) {
      assertEquals(2, files.count(), "nothing half written is left");
    }
    Run nowhere =
        run(Stream.concat(Arrays.stream(asked), Stream.of(dir.resolve("no/x.svg"))).toArray());
    assertEquals(4, nowhere.code());
    assertTrue(nowhere.err().contains("expected a file in a folder that exists"), nowhere.err());
  }

  /** The example of the guide runs as it stands there, and the guide knows every number. */
  @Test
  void theGuideHolds() throws IOException {
    String guide = Files.readString(Path.of("docs/whatif.md"), StandardCharsets.UTF_8);
    String example =
        guide.lines().filter(l -> l.startsWith("two-strides whatif ")).findFirst().orElseThrow();
    String args =
        example
            .replace("two-strides whatif ", "")
            .replace("release.svg", dir.resolve("release.svg").toString());
    says(run((Object[]) args.split(" ")), "Cheapest by these numbers: ");
    Run list = run("--assumptions");
    assertEquals(12, list.lines().size());
    for (String number :
        List.of("5.2 m/s", "0.02, 0.10, 0.50; 0.15", "20 s", "3 %", "8 %", "2 deg")) {
      assertTrue(guide.contains(number), number);
    }
  }
}
