package twostrides.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import twostrides.book.AdviceWords;
import twostrides.stats.AdjustedRate;
import twostrides.stats.Clustered;
import twostrides.stats.Count;
import twostrides.stats.Interval;

/**
 * Each rule of advice, where it speaks and where it keeps silent. Chances are those of Fisher's
 * exact test (DifferenceTest), intervals of shares Wilson's.
 */
class AdviceTest {

  private static final Count NONE = new Count(0, 0);
  private static final Advice.Pair ALIKE = pair(16, 96, 134, 804);
  private static final Advice.Pair SHORT = pair(31, 96, 145, 804);
  private static final Advice.Pair ICED = pair(12, 41, 14, 280);
  private static final Advice.Pair KEPT = pair(20, 50, 100, 700);

  private int attempts = 120;
  private Count flagged = NONE;
  private int clips = 6;
  private Advice.Pair releasedShort = ALIKE;
  private Advice.Pair iced = pair(2, 41, 14, 280);
  private Advice.Pair keptIn = ALIKE;
  private Count late = NONE;

  private Advice advice() {
    Count own = iced.own().total();
    AdjustedRate rate = new AdjustedRate(own, 0.215, new Interval(0.1, 0.36));
    return new Advice(
        attempts, flagged, clips, releasedShort, iced, Optional.of(rate), keptIn, late);
  }

  private static Advice.Pair pair(int k, int n, int restK, int restN) {
    return new Advice.Pair(new Clustered(new Count(k, n)), new Clustered(new Count(restK, restN)));
  }

  @Test
  void underTenAttemptsItSaysWhatToWatchInstead() {
    attempts = 9;
    assertEquals(
        "Too few to say: 9 exit attempts in these sheets. Watch 6 clips instead, below.",
        AdviceWords.sentence(advice()));
    clips = 0;
    assertEquals(
        "Too few to say: 9 exit attempts in these sheets. Watch the next games instead.",
        AdviceWords.sentence(advice()));
    attempts = 1;
    flagged = new Count(1, 2);
    assertEquals(
        "Too few to say: 1 exit attempt in these sheets. Watch 1 flagged release instead: was"
            + " center open?",
        AdviceWords.sentence(advice()));
    attempts = 10;
    assertNotEquals(Advice.Rule.TOO_FEW, advice().rule());
  }

  /** Whatever is flagged, and however much: a habit is the sentence, clips come after it. */
  @Test
  void theHabitComesBeforeAnyNumberOfFlags() {
    for (int flags = 0; flags <= 12; flags++) {
      flagged = new Count(flags, 14);
      iced = ICED;
      assertEquals(
          "Look at how it is let go: of the pucks sent before the red line, 12 of 41 (adjusted rate 22 %,"
              + " 95 % interval 10 to 36 %) were iced; in the rest of the team 14 of 280 (5 %, 95 %"
              + " interval 3 to 8 %).",
          AdviceWords.sentence(advice()));
      iced = pair(2, 41, 14, 280);
      assertEquals(flags == 0, AdviceWords.sentence(advice()).startsWith("Nothing stands out"));
    }
  }

  @Test
  void flagsAreSaid() {
    flagged = new Count(3, 5);
    assertEquals(
        "Gain center first: in 3 of 5 icings whose skaters' places and speeds are known there was"
            + " likely time to gain the red line first.",
        AdviceWords.sentence(advice()));
    flagged = new Count(1, 1);
    assertEquals(
        "Look at one clip: in 1 of 1 icing whose skaters' places and speeds are known there was"
            + " likely time to gain the red line first.",
        AdviceWords.sentence(advice()));
    flagged = new Count(0, 3);
    assertEquals(Advice.Rule.NOTHING, advice().rule());
  }

  /** 31 of 96 is 23.8 to 42.2 %, 145 of 804 is 15.5 to 20.8 %; the chance is .0009. */
  @Test
  void releasedShortMoreThanTheRestIsSaid() {
    releasedShort = SHORT;
    assertEquals(
        "Take it to center more often: of the pucks carried or passed out, 31 of 96 (32 %, 95 %"
            + " interval 24 to 42 %) were sent before the red line; in the rest of the team 145 of"
            + " 804 (18 %, 95 % interval 16 to 21 %).",
        AdviceWords.sentence(advice()));
  }

  @Test
  void whatMayBeChanceIsNeverCalledMore() {
    releasedShort = pair(24, 96, 145, 804);
    assertEquals(
        "Nothing stands out: of the pucks carried or passed out, 24 of 96 (25 %, 95 % interval 17"
            + " to 35 %) were sent before the red line; in the rest of the team 145 of 804 (18 %, 95"
            + " % interval 16 to 21 %).",
        AdviceWords.sentence(advice()));
  }

  /** From 30 of 96 on the chance is below .0025, up to 7 that of so few. */
  @Test
  void oneCountDecides() {
    for (int k = 0; k <= 96; k++) {
      releasedShort = pair(k, 96, 145, 804);
      String begin =
          k >= 30
              ? "Take it to center more often"
              : k <= 7 ? "Keep taking it to center" : "Nothing stands out";
      assertTrue(
          AdviceWords.sentence(advice()).startsWith(begin),
          k + ": " + AdviceWords.sentence(advice()));
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
        AdviceWords.sentence(advice()).startsWith("Nothing stands out"),
        AdviceWords.sentence(advice()));
  }

  @Test
  void belowTenCasesOnEitherSideNoShareSpeaks() {
    releasedShort = pair(9, 9, 100, 804);
    iced = pair(9, 9, 1, 280);
    keptIn = pair(60, 60, 0, 9);
    assertEquals(
        "Nothing stands out; with 9 of 9 pucks carried or passed out sent before the red line it is"
            + " too few to say more.",
        AdviceWords.sentence(advice()));
  }

  /** One of ten, none of 300: the chance is .016, but once is no habit. */
  @Test
  void onceIsNoHabit() {
    iced = pair(1, 10, 0, 300);
    assertEquals(Advice.Rule.NOTHING, advice().rule());
    iced = pair(2, 10, 0, 300);
    assertEquals(Advice.Rule.OFTEN_ICED, advice().rule());
  }

  @Test
  void withoutAnAdjustedRateThePlainShareStands() {
    Advice advice = new Advice(120, NONE, 0, ALIKE, ICED, Optional.empty(), ALIKE, NONE);
    assertTrue(
        AdviceWords.sentence(advice)
            .contains("12 of 41 (29 %, 95 % interval 18 to 44 %) were iced"),
        AdviceWords.sentence(advice));
  }

  @Test
  void keptInUnderLittlePressureIsSaid() {
    keptIn = KEPT;
    assertEquals(
        "Get it out while there is room: of the attempts under no or light pressure, 20 of 50 (40"
            + " %, 95 % interval 28 to 54 %) were failed clears; in the rest of the team 100 of 700 (14 %,"
            + " 95 % interval 12 to 17 %).",
        AdviceWords.sentence(advice()));
  }

  @Test
  void anIcingAfterThePenaltyIsSaid() {
    late = new Count(1, 3);
    assertEquals(
        "Know when the penalty is over: of 3 pucks sent before the red line within 10 s after it, 1 was"
            + " iced.",
        AdviceWords.sentence(advice()));
    late = new Count(2, 2);
    assertTrue(AdviceWords.sentence(advice()).endsWith("within 10 s after it, 2 were iced."));
    late = new Count(0, 4);
    assertEquals(Advice.Rule.NOTHING, advice().rule());
  }

  @Test
  void releasedShortLessThanTheRestIsPraised() {
    releasedShort = pair(3, 96, 145, 804);
    assertTrue(
        AdviceWords.sentence(advice())
            .startsWith("Keep taking it to center: of the pucks carried or passed out, 3 of 96"),
        AdviceWords.sentence(advice()));
  }

  /** The order of docs/numbers.md: each rule gives way to all before it. */
  @Test
  void theFirstRuleThatSpeaksIsTheSentence() {
    releasedShort = pair(3, 96, 145, 804);
    assertTrue(AdviceWords.sentence(advice()).startsWith("Keep taking it"));
    late = new Count(1, 1);
    assertTrue(AdviceWords.sentence(advice()).startsWith("Know when"));
    flagged = new Count(2, 2);
    assertTrue(AdviceWords.sentence(advice()).startsWith("Gain center first"));
    keptIn = KEPT;
    assertTrue(AdviceWords.sentence(advice()).startsWith("Get it out"));
    releasedShort = SHORT;
    assertTrue(AdviceWords.sentence(advice()).startsWith("Take it to center"));
    iced = ICED;
    assertTrue(AdviceWords.sentence(advice()).startsWith("Look at how"));
    attempts = 3;
    assertTrue(AdviceWords.sentence(advice()).startsWith("Too few to say"));
  }
}
