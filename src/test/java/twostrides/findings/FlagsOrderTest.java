package twostrides.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import twostrides.season.Columns;
import twostrides.season.Flag;
import twostrides.season.FlagVerdict;
import twostrides.season.SeasonTables;
import twostrides.stats.Count;

/** Which releases are flags, near misses, to be looked at, or none of them, and in what order. */
class FlagsOrderTest {

  private final SeasonTables season = new SeasonTables();
  private int line;

  /** A release that an own-zone restart followed; the line it stands in. */
  private int release(FlagVerdict verdict, Object... cells) {
    line++;
    Object[] row = {
      Columns.GAME,
      "G1",
      Columns.RELEASE,
      line,
      Columns.PERIOD,
      1,
      Columns.RELEASE_ELAPSED_S,
      (double) line,
      Columns.TEAM,
      "Herons",
      Columns.STRENGTH,
      "even",
      Columns.RELEASE_X_M,
      -4.0,
      Columns.RELEASE_Y_M,
      0.0,
      Columns.SHORT_OF_CENTER_M,
      3.8,
      Columns.SHEET,
      "g.csv",
      Columns.LINE,
      line,
      Columns.REASON,
      verdict.words(),
      Columns.FLAGGED,
      verdict == FlagVerdict.FLAGGED
    };
    season.flag(Stream.concat(Stream.of(row), Stream.of(cells)).toArray());
    return line;
  }

  /** Iced, and nobody can say; a chance to order by where it is above 0. */
  private int look(double p, Object... cells) {
    Object[] row = {
      Columns.EVIDENCE,
      "unknown",
      Columns.P_GAIN_CENTER,
      p > 0 ? p : "",
      Columns.P_GAIN_LOW,
      p > 0 ? 0.0 : "",
      Columns.P_GAIN_HIGH,
      p > 0 ? 1.0 : "",
      Columns.P_AVOID,
      "",
      "cost_trying",
      ""
    };
    return release(FlagVerdict.LOOK, Stream.concat(Stream.of(row), Stream.of(cells)).toArray());
  }

  private SeasonReview review() {
    return Reviewer.review(season.season());
  }

  private static List<Integer> lines(List<Flag> flags) {
    return flags.stream().map(f -> f.release().at().when().line()).toList();
  }

  @Test
  void nearMissesWereMeasuredAndFellShortOfAFlag() {
    int likely = release(FlagVerdict.TOO_RISKY, Columns.P_AVOID, 0.55);
    int dear = release(FlagVerdict.TOO_DEAR, Columns.P_AVOID, 0.7);
    int unlikely = release(FlagVerdict.TOO_RISKY, Columns.P_AVOID, 0.49);
    int flagged = release(FlagVerdict.FLAGGED);
    look(0.9);
    assertEquals(List.of(dear, likely), lines(review().nearMisses()));
    assertEquals(List.of(likely, dear, unlikely), lines(review().notFlagged()));
    assertEquals(List.of(flagged), lines(review().flagged()));
  }

  /** Measured, open ice, and still none: no icing of his could have been avoided. */
  @Test
  void legalShorthandedClearancesNeverStandAmongNearMisses() {
    for (FlagVerdict v :
        List.of(FlagVerdict.OTHER_CAUSE, FlagVerdict.UNKNOWN_CAUSE, FlagVerdict.NOT_ICING)) {
      release(v, Columns.STRENGTH, "shorthanded", Columns.P_AVOID, 0.95);
    }
    assertEquals(List.of(), review().nearMisses());
    assertEquals(List.of(), review().toLookAt());
    assertEquals(List.of(), review().icingsLetGo());
    assertEquals(List.of(1, 2, 3), lines(review().notFlagged()));
  }

  @Test
  void theLikeliestIsLookedAtFirstAndWhatNobodyKnowsLast() {
    int unknown = look(0);
    int little = look(0.2);
    int much = look(0.8);
    int alike = look(0.2);
    assertEquals(List.of(much, little, alike, unknown), lines(review().toLookAt()));
    assertEquals(List.of(much, little, alike), lines(review().firstToLookAt()));
    assertEquals(List.of(), review().flagged());
    assertEquals(4, review().icingsLetGo().size());
  }

  @Test
  void theOpeningPageHasAFewOfOurTeam() {
    for (int i = 1; i < 9; i++) {
      look(i / 10.0, Columns.TEAM, i % 2 == 0 ? "Herons" : "Wolves");
    }
    assertEquals(List.of(8, 7, 6, 5, 4), lines(review().firstToLookAt()));
    release(FlagVerdict.FLAGGED, Columns.TEAM, "Wolves");
    assertEquals(List.of(8, 7, 6, 5), lines(review().firstToLookAt()), "five with the flag");
    for (int game = 1; game < 3; game++) {
      season.exit(
          Columns.GAME,
          "G" + game,
          Columns.TEAM,
          "Herons",
          Columns.OPPONENT,
          "Wolves" + game,
          Columns.WAY_OUT,
          "carry");
    }
    assertEquals(List.of(8, 6, 4, 2), lines(review().firstToLookAt()), "no flag of ours");
    for (int i = 0; i < 6; i++) {
      release(FlagVerdict.FLAGGED);
    }
    assertEquals(5, review().dearest().size());
    assertEquals(List.of(8, 6), lines(review().firstToLookAt()), "two, however many flags");
  }

  @Test
  void aLineSaysHowOftenItsKindWasIced() {
    release(FlagVerdict.FLAGGED, Columns.KIND, "missed_pass", Columns.RELEASE_X_M, -12.0);
    Flag flag = review().flagged().get(0);
    assertEquals("missed pass from the own zone", flag.kindWords());
    assertEquals(new Count(3, 40), flag.kindIced());
  }
}
