package twostrides.numbers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import twostrides.rates.Clustered;
import twostrides.rates.Count;

/**
 * Each rule of advice, where it speaks and where it keeps silent. Intervals of differences:
 * Newcombe 1998, method 10, worked from the Wilson intervals by hand.
 */
class AdviceTest {

  private static final Count NONE = new Count(0, 0);
  private static final Advice.Pair ALIKE = pair(16, 96, 134, 804);

  private int attempts = 120;
  private Count flagged = NONE;
  private int clips = 6;
  private Advice.Pair releasedShort = ALIKE;
  private Advice.Pair iced = pair(2, 41, 14, 280);
  private Advice.Pair keptIn = ALIKE;
  private Count late = NONE;

  private Advice advice() {
    return new Advice(attempts, 41, flagged, clips, releasedShort, iced, keptIn, late);
  }

  private static Advice.Pair pair(int k, int n, int restK, int restN) {
    return new Advice.Pair(new Clustered(new Count(k, n)), new Clustered(new Count(restK, restN)));
  }

  @Test
  void underTenAttemptsItSaysWhatToWatchInstead() {
    attempts = 9;
    assertEquals(
        "Too few to say: 9 exit attempts in these sheets. Watch 6 clips instead, below.",
        advice().sentence());
    clips = 0;
    assertEquals(
        "Too few to say: 9 exit attempts in these sheets. Watch the next games instead.",
        advice().sentence());
    attempts = 1;
    flagged = new Count(1, 2);
    assertEquals(
        "Too few to say: 1 exit attempt in these sheets. Watch 1 flagged release instead: was"
            + " center open?",
        advice().sentence());
    attempts = 10;
    assertEquals(Optional.empty(), advice().tooFew());
  }

  @Test
  void severalFlagsComeFirst() {
    flagged = new Count(3, 5);
    releasedShort = pair(48, 96, 100, 804);
    assertEquals(
        "Gain center first: an own-zone restart followed 5 of 41 releases short of center, and in 3"
            + " of those 5 there was likely time to gain the red line first.",
        advice().sentence());
    flagged = new Count(1, 5);
    assertEquals(Optional.empty(), advice().severalFlags());
  }

  /** 31 of 96 less 145 of 804: 14.3 points; 23.8 to 42.2 % and 15.5 to 20.8 % give 5.3 to 24.4. */
  @Test
  void releasedShortMoreThanTheRestIsSaid() {
    releasedShort = pair(31, 96, 145, 804);
    assertEquals(
        "Take it to center more often: 31 of 96 pucks carried or passed out (32 %) were released"
            + " short of center; in the rest of the team 145 of 804 (18 %): a difference of +14"
            + " points (95 % interval +5 to +24).",
        advice().sentence());
  }

  @Test
  void whatMayBeChanceIsNeverCalledMore() {
    releasedShort = pair(24, 96, 145, 804);
    assertEquals(
        "Nothing stands out: 24 of 96 pucks carried or passed out (25 %) were released short of"
            + " center; in the rest of the team 145 of 804 (18 %): a difference of +7 points (95 %"
            + " interval -1 to +17), not to be told from chance yet.",
        advice().sentence());
    for (int k = 0; k <= 96; k++) {
      releasedShort = pair(k, 96, 145, 804);
      String said = advice().sentence();
      boolean leavesOutZero = said.matches(".*interval (\\+[1-9]\\d* to .*|-\\d+ to -[1-9].*)");
      assertEquals(leavesOutZero, !said.contains("not to be told from chance yet"), said);
      assertTrue(leavesOutZero || said.startsWith("Nothing stands out"), said);
    }
  }

  /** 31 of 96, all 31 in one of four games: a share that hangs on one game is no habit. */
  @Test
  void gamesThatHangTogetherMakeItLessSure() {
    releasedShort =
        new Advice.Pair(
            new Clustered(
                List.of(new Count(31, 40), new Count(0, 20), new Count(0, 20), new Count(0, 16))),
            new Clustered(new Count(145, 804)));
    assertTrue(
        advice().sentence().startsWith("Nothing stands out: 31 of 96 pucks"), advice().sentence());
  }

  @Test
  void belowTenCasesOnEitherSideNoShareSpeaks() {
    releasedShort = pair(9, 9, 100, 804);
    iced = pair(9, 9, 1, 280);
    keptIn = pair(60, 60, 0, 9);
    assertEquals(
        "Nothing stands out; with 9 of 9 pucks carried or passed out released short of center it is"
            + " too few to say more.",
        advice().sentence());
  }

  @Test
  void icedMoreThanTheRestIsSaid() {
    iced = pair(12, 41, 14, 280);
    assertTrue(
        advice()
            .sentence()
            .startsWith(
                "Look at how it is let go: 12 of 41 releases short of center (29 %) were iced; in"
                    + " the rest of the team 14 of 280 (5 %): a difference of +24 points"),
        advice().sentence());
  }

  @Test
  void keptInUnderLittlePressureIsSaid() {
    keptIn = pair(20, 50, 100, 700);
    assertTrue(
        advice()
            .sentence()
            .startsWith(
                "Get it out while there is room: 20 of 50 attempts under no or light pressure (40"
                    + " %) were kept in; in the rest of the team 100 of 700 (14 %)"),
        advice().sentence());
  }

  @Test
  void anIcingAfterThePenaltyIsSaid() {
    late = new Count(1, 3);
    assertEquals(
        "Know when the penalty is over: of 3 releases short of center within 10 s after it, 1 was"
            + " iced.",
        advice().sentence());
    late = new Count(2, 2);
    assertTrue(advice().sentence().endsWith("within 10 s after it, 2 were iced."));
    late = new Count(0, 4);
    assertEquals(Optional.empty(), advice().afterPenalty());
  }

  @Test
  void oneFlagIsOneClip() {
    flagged = new Count(1, 4);
    assertEquals(
        "Look at one clip: an own-zone restart followed 4 of 41 releases short of center, and in 1"
            + " of those 4 there was likely time to gain the red line first.",
        advice().sentence());
    flagged = new Count(1, 1);
    assertTrue(
        advice()
            .sentence()
            .endsWith("short of center, and there was likely time to gain the red line first."));
  }

  @Test
  void releasedShortLessThanTheRestIsPraised() {
    releasedShort = pair(3, 96, 145, 804);
    assertTrue(
        advice().sentence().startsWith("Keep taking it to center: 3 of 96 pucks"),
        advice().sentence());
  }

  /** The order of docs/numbers.md: each rule gives way to all before it. */
  @Test
  void theFirstRuleThatSpeaksIsTheSentence() {
    late = new Count(1, 1);
    flagged = new Count(1, 1);
    assertTrue(advice().sentence().startsWith("Know when"));
    keptIn = pair(20, 50, 100, 700);
    assertTrue(advice().sentence().startsWith("Get it out"));
    iced = pair(12, 41, 14, 280);
    assertTrue(advice().sentence().startsWith("Look at how"));
    releasedShort = pair(31, 96, 145, 804);
    assertTrue(advice().sentence().startsWith("Take it to center"));
    flagged = new Count(2, 2);
    assertTrue(advice().sentence().startsWith("Gain center first"));
    attempts = 3;
    assertTrue(advice().sentence().startsWith("Too few to say"));
  }
}
