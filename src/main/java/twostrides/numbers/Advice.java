package twostrides.numbers;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import twostrides.review.Say;
import twostrides.review.TableRows;
import twostrides.stats.AdjustedRate;
import twostrides.stats.Clustered;
import twostrides.stats.Count;
import twostrides.stats.Difference;

/**
 * One sentence of advice for a player, tied to its numbers: the first rule that has something to
 * say, in the order of {@link #sentence}. What the player does more or less often than the rest of
 * the team comes first, single clips second, however many there are.
 *
 * @param attempts exit attempts of the player
 * @param flagged flagged ones, of the player's icings that carry a verdict
 * @param clips moments on the sheet
 * @param releasedShort released short of center, of the pucks carried or passed out
 * @param iced iced ones, of the releases short of center
 * @param icedRate the adjusted rate of the same
 * @param keptIn kept in, of the attempts under no or light pressure
 * @param late iced ones, of the player's releases just after a penalty
 */
record Advice(
    int attempts,
    Count flagged,
    int clips,
    Pair releasedShort,
    Pair iced,
    Optional<AdjustedRate> icedRate,
    Pair keptIn,
    Count late) {

  /**
   * At most this chance of so many icings calls them a habit; with {@link #OTHERS} one equal player
   * in fifty is told of any. Assumed; docs/checks.md has what it finds.
   */
  private static final double HABIT = 0.02;

  /** The same for each of the other three comparisons. Assumed. */
  private static final double OTHERS = 0.0025;

  /** Once is no habit, however seldom the others are iced. Assumed. */
  private static final int FEWEST_ICINGS = 2;

  private static final String OUT = "of the pucks carried or passed out, ";
  private static final String SHORT = "were released short of center";

  /**
   * The same count of the player and of the rest of the team, game by game: cases of one game may
   * hang together.
   *
   * @param own the player's
   * @param rest everybody else's in the team, the unnamed too
   */
  record Pair(Clustered own, Clustered rest) {

    static Pair of(
        List<TableRows> team, Predicate<TableRows> own, Function<List<TableRows>, Count> count) {
      return new Pair(
          Season.byGame(team.stream().filter(own).toList(), count),
          Season.byGame(team.stream().filter(own.negate()).toList(), count));
    }

    boolean tooFew() {
      return own.total().tooFew() || rest.total().tooFew();
    }

    boolean clearlyMore(double level) {
      return !tooFew() && new Difference(own, rest).chanceOfMore() <= level;
    }

    boolean clearlyLess(double level) {
      return !tooFew() && new Difference(own, rest).chanceOfLess() <= level;
    }

    /**
     * "31 of 96 (32 %, 95 % interval 24 to 42 %) were kept; in the rest of the team 145 of 804 (18
     * %, 95 % interval 16 to 21 %)".
     *
     * @param were what some of them were
     */
    String said(String were) {
      return said(Say.share(own), were);
    }

    private String said(String share, String were) {
      return share + " " + were + "; in the rest of the team " + Say.share(rest);
    }
  }

  /** The sentence. */
  String sentence() {
    return Stream.of(
            tooFew(),
            oftenIced(),
            oftenShort(),
            oftenKeptIn(),
            flags(),
            afterPenalty(),
            seldomShort())
        .flatMap(Optional::stream)
        .findFirst()
        .orElseGet(this::nothing);
  }

  /** Under ten attempts: what to watch instead. */
  Optional<String> tooFew() {
    if (attempts >= Count.FEWEST_TO_SAY) {
      return Optional.empty();
    }
    String instead =
        flagged.successes() > 0
            ? Say.count(flagged.successes(), "flagged release") + " instead: was center open?"
            : clips > 0 ? Say.count(clips, "clip") + " instead, below." : "the next games instead.";
    return Optional.of(
        "Too few to say: "
            + Say.count(attempts, "exit attempt")
            + " in these sheets. Watch "
            + instead);
  }

  /** Iced more often once released short. */
  Optional<String> oftenIced() {
    return iced.own().total().successes() >= FEWEST_ICINGS && iced.clearlyMore(HABIT)
        ? Optional.of(
            "Look at how it is let go: of the releases short of center, "
                + iced.said(Say.share(iced.own().total(), icedRate), "were iced")
                + ".")
        : Optional.empty();
  }

  /** Released short of center more than the rest of the team. */
  Optional<String> oftenShort() {
    return releasedShort.clearlyMore(OTHERS)
        ? Optional.of("Take it to center more often: " + OUT + releasedShort.said(SHORT) + ".")
        : Optional.empty();
  }

  /** Kept in though nobody was close. */
  Optional<String> oftenKeptIn() {
    return keptIn.clearlyMore(OTHERS)
        ? Optional.of(
            "Get it out while there is room: of the attempts under no or light pressure, "
                + keptIn.said("were kept in")
                + ".")
        : Optional.empty();
  }

  /** There was time to gain center. */
  Optional<String> flags() {
    return flagged.successes() == 0
        ? Optional.empty()
        : Optional.of(
            (flagged.successes() == 1 ? "Look at one clip: " : "Gain center first: ")
                + "in "
                + flagged.successes()
                + " of "
                + Say.count(flagged.trials(), "icing")
                + " whose skaters' places and speeds are known there was likely time to gain the red"
                + " line first.");
  }

  /** Iced when the penalty was over. */
  Optional<String> afterPenalty() {
    return late.successes() == 0
        ? Optional.empty()
        : Optional.of(
            "Know when the penalty is over: of "
                + Say.count(late.trials(), "release")
                + " short of center within "
                + Math.round(PenaltyKill.JUST_AFTER)
                + " s after it, "
                + late.successes()
                + (late.successes() == 1 ? " was" : " were")
                + " iced.");
  }

  /** Released short of center less than the rest of the team. */
  Optional<String> seldomShort() {
    return releasedShort.clearlyLess(OTHERS)
        ? Optional.of("Keep taking it to center: " + OUT + releasedShort.said(SHORT) + ".")
        : Optional.empty();
  }

  /** None of the rules has anything to say. */
  String nothing() {
    return releasedShort.tooFew()
        ? "Nothing stands out; with "
            + Cell.counts(releasedShort.own().total())
            + " pucks carried or passed out released short of center it is too few to say more."
        : "Nothing stands out: " + OUT + releasedShort.said(SHORT) + ".";
  }
}
