package twostrides.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import twostrides.findings.Reviewer;
import twostrides.season.Columns;
import twostrides.season.SeasonTables;

/** The opening page's sentences, word for word, on seasons that are counted by hand. */
class SentencesTest {

  /** Attempts in two games in turn. */
  private static void exits(
      SeasonTables t, int n, int iced, String way, String atCenter, String strength) {
    for (int i = 0; i < n; i++) {
      exit(
          t,
          i % 2 == 0 ? "one" : "two",
          i < iced ? "icing_written" : "none",
          way,
          atCenter,
          strength);
    }
  }

  private static void exit(
      SeasonTables t, String game, String cause, String way, String atCenter, String strength) {
    t.exit(
        Columns.GAME,
        game,
        Columns.TEAM,
        "Herons",
        Columns.OPPONENT,
        "against " + game,
        Columns.PLAYER,
        "8 Brandt",
        Columns.WAY_OUT,
        way,
        Columns.AT_CENTER,
        atCenter,
        Columns.STRENGTH,
        strength,
        Columns.OWN_ZONE_RESTART,
        !cause.equals("none"),
        Columns.RESTART_CAUSE,
        cause);
  }

  private static void faceOff(
      SeasonTables t, String team, String cause, double shortOf, int attempts, int goals) {
    t.restart(
        Columns.GAME,
        "one",
        Columns.PERIOD,
        1,
        Columns.RESTART_ELAPSED_S,
        100.0,
        Columns.TEAM,
        team,
        Columns.OWN_LAST,
        true,
        Columns.RESTART_CAUSE,
        cause,
        Columns.SHORT_OF_CENTER_M,
        shortOf,
        "attempts_against_20s",
        attempts,
        "goals_against_20s",
        goals,
        Columns.SHEET,
        "one.csv",
        Columns.LINE,
        2);
  }

  private static void releases(SeasonTables t, String player, int n, int iced) {
    for (int i = 0; i < n; i++) {
      t.release(
          Columns.GAME,
          "one",
          Columns.PERIOD,
          1,
          Columns.RELEASE_ELAPSED_S,
          90.0,
          Columns.TEAM,
          "Herons",
          Columns.PLAYER,
          player,
          Columns.KIND,
          "sent",
          Columns.STRENGTH,
          "even",
          Columns.RELEASE_X_M,
          -4.0,
          Columns.RELEASE_Y_M,
          1.0,
          Columns.SHORT_OF_CENTER_M,
          3.8,
          Columns.RESTART_CAUSE,
          i < iced ? "icing_written" : "none",
          "next_touch",
          "opponent",
          Columns.SHEET,
          "one.csv",
          Columns.LINE,
          2);
    }
  }

  private static List<String> sentences(SeasonTables t) {
    return Sentences.of(Reviewer.review(t.season()));
  }

  @Test
  void speaksOfOurTeamWithCountsSharesAndIntervals() {
    SeasonTables t = new SeasonTables();
    exits(t, 20, 5, "carry", "released short", "even");
    exits(t, 20, 1, "chip", "", "even");
    exits(t, 6, 6, "long clearance", "", "shorthanded");
    exit(t, "one", "penalty", "kept in", "", "even");
    exit(t, "one", "other", "kept in", "", "even");
    faceOff(t, "Herons", "icing_written", 4.9, 2, 1);
    faceOff(t, "Herons", "icing_inferred", 5.1, 1, 0);
    faceOff(t, "Herons", "penalty", 12, 4, 1);
    faceOff(t, "Wolves", "icing_written", 1.0, 9, 9);
    releases(t, "8 Brandt", 12, 3);
    releases(t, "9 Falk", 9, 9);
    releases(t, "10 Roth", 30, 2);
    List<String> said = sentences(t);
    assertEquals(
        List.of(
            "In 2 games Herons tried to leave the own zone 48 times, with 2 icings (1.0 a game), 1 of"
                + " them inferred. Of the tries, 12 of 48 (25 %, 95 % interval 15 to 39 %) ended in icing,"
                + " 1 in a face-off after a penalty and 1 in another defensive-zone face-off.",
            "Fewer than three games with exit attempts: too few to say what changed.",
            "Of 2 icings with a known release, 1 was let go within 5.0 m (16 ft) of the red line."
                + " Most often followed by an icing: carried, sent before the red line, at even strength, 5 of"
                + " 20 (adjusted rate 26 %, 95 % interval 10 to 46 %); the chance that this is the"
                + " highest rate of 2 ways out is 96 %.",
            "Whose pucks sent before the red line are iced most often? Most likely those of No. 8 Brandt: 3"
                + " of 12 (adjusted rate 28 %, 95 % interval 8 to 54 %); the chance that this is the"
                + " highest rate of 2 players is 95 %.",
            "In the 20 s after 2 icings the opponents had 3 shot attempts and 1 goal; after 1 other"
                + " defensive-zone face-off, 4 shot attempts and 1 goal."),
        said);
  }

  /**
   * Seven of 118 are the most icings, three of 14 the highest share; neither is likely the worst.
   */
  @Test
  void namesWhoIsMostLikelyTheHighestNotWhoPlaysMost() {
    SeasonTables t = new SeasonTables();
    exits(t, 20, 1, "chip", "", "even");
    releases(t, "4 Merle", 118, 7);
    releases(t, "6 Hedda", 102, 5);
    releases(t, "23 Yara", 87, 4);
    releases(t, "10 Ilse", 45, 12);
    releases(t, "12 Odile", 14, 3);
    releases(t, "9 Elke", 25, 1);
    String said = sentences(t).get(3);
    assertTrue(
        said.startsWith(
            "Whose pucks sent before the red line are iced most often? Most likely those of No. 10 Ilse: 12"
                + " of 45 (adjusted rate "),
        said);
    assertTrue(said.matches(".*highest rate of 6 players is [5-9]\\d %\\."), said);
  }

  /** All alike: whoever leads, the chance is small and the sentence says what that means. */
  @Test
  void namesNobodyAsClearlyTheHighestWhereAllAreAlike() {
    SeasonTables t = new SeasonTables();
    for (int player = 1; player <= 18; player++) {
      releases(t, player + " Player", 40 + player, player % 3 == 0 ? 3 : 2);
    }
    String said = sentences(t).get(3);
    assertTrue(
        said.matches(".*highest rate of 18 players is 1?\\d %: no clear difference\\."), said);
  }

  /** A way out with restarts for penalties alone leads to no icing. */
  @Test
  void causesOtherThanIcingDoNotCountForAWayOut() {
    SeasonTables t = new SeasonTables();
    exits(t, 40, 4, "carry", "released short", "even");
    exits(t, 40, 1, "chip", "", "even");
    for (int i = 0; i < 12; i++) {
      t.exit(
          Columns.GAME, "one",
          Columns.TEAM, "Herons",
          Columns.OPPONENT, "against one",
          Columns.PLAYER, "8 Brandt",
          Columns.WAY_OUT, "pass",
          Columns.STRENGTH, "even",
          Columns.OWN_ZONE_RESTART, i < 6,
          Columns.RESTART_CAUSE, i < 6 ? "other" : "none");
    }
    String said = sentences(t).get(2);
    assertTrue(
        said.contains("Most often followed by an icing: carried, sent before the red line"), said);
  }

  @Test
  void saysSoWhenThereIsTooLittle() {
    SeasonTables t = new SeasonTables();
    exits(t, 4, 1, "chip", "", "even");
    List<String> said = sentences(t);
    assertTrue(said.get(0).contains("1 of 4 (too few to say)"), said.get(0));
    assertTrue(said.get(1).contains("too few to say"), said.get(1));
    assertTrue(
        said.get(2)
            .startsWith("No icing is written or can be inferred in these sheets. Too few attempts"),
        said.get(2));
    assertTrue(said.get(3).startsWith("Too few releases"), said.get(3));
    assertTrue(said.get(4).contains("not in these sheets"), said.get(4));
  }

  private static String changed(int... restarts) {
    SeasonTables t = new SeasonTables();
    for (int g = 0; g < restarts.length; g++) {
      for (int i = 0; i < 20; i++) {
        exit(t, "game " + g, i < restarts[g] ? "icing_written" : "none", "chip", "", "even");
      }
    }
    return sentences(t).get(1);
  }

  @Test
  void saysWhatChangedOnlyAsFarAsTheGamesCarryIt() {
    assertEquals(
        "Icing followed 1 of 20 attempts (5 %) in game 1 and 12 of 20 attempts (60 %)"
            + " in game 3: over all games the share rises, beyond chance.",
        changed(1, 5, 12));
    assertEquals(
        "Icing followed 17 of 40 attempts (43 %) in games 1 to 2 and 3 of 60 attempts"
            + " (5 %) in games 5 to 7: over all games the share falls, beyond chance.",
        changed(9, 8, 5, 4, 2, 1, 0));
    assertEquals(
        "Icing followed 4 of 20 attempts (20 %) in game 1 and 5 of 20 attempts (25 %)"
            + " in game 3: over all games there is no clear change.",
        changed(4, 3, 5));
  }

  @Test
  void noSentenceEverShowsBrokenNumbers() {
    for (int attempts : new int[] {0, 1, 2, 9, 10, 200, 1700}) {
      SeasonTables t =
          SeasonTables.drawn(
              attempts,
              Math.max(1, attempts / 140),
              "Herons",
              List.of("Wolves"),
              List.of("8"),
              attempts);
      for (String s : sentences(t)) {
        assertFalse(s.contains("NaN") || s.contains("Infinity") || s.contains("null"), s);
        assertTrue(s.endsWith("."), s);
      }
    }
  }

  @Test
  void aNameThatRunsRightToLeftDoesNotTurnTheNumbersAfterIt() {
    SeasonTables t = new SeasonTables();
    String name = "8 \u05d3\u05e0\u05d4";
    exits(t, 2, 0, "chip", "", "even");
    releases(t, name, 12, 3);
    releases(t, "9 Falk", 9, 1);
    releases(t, "10 Roth", 30, 2);
    assertTrue(
        sentences(t).get(3).contains("those of No. \u2068" + name + "\u2069: 3 of 12"),
        sentences(t).get(3));
  }
}
