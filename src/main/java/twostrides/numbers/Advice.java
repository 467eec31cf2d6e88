package twostrides.numbers;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import twostrides.rates.Clustered;
import twostrides.rates.Count;
import twostrides.rates.Difference;
import twostrides.rates.Range;
import twostrides.review.Say;
import twostrides.review.TableRows;

/**
 * One sentence of advice for a player, tied to its numbers: the first rule that has something to
 * say, in the order of {@link #sentence}. A share is called more or less than the rest of the
 * team's only where the 95 % interval of the difference leaves out 0.
 *
 * @param attempts exit attempts of the player
 * @param releases releases short of center of the player
 * @param flagged flagged ones, of the player's releases that an own-zone restart followed
 * @param clips moments on the sheet
 * @param releasedShort released short of center, of the pucks carried or passed out
 * @param iced iced ones, of the releases short of center
 * @param keptIn kept in, of the attempts under no or light pressure
 * @param late iced ones, of the player's releases just after a penalty
 */
record Advice(
    int attempts,
    int releases,
    Count flagged,
    int clips,
    Pair releasedShort,
    Pair iced,
    Pair keptIn,
    Count late) {

  /** From so many flags they come first; one alone may be bad luck. Assumed. */
  private static final int SEVERAL = 2;

  /** Half a point of a hundred: a smaller one would be written as 0. */
  private static final double NOTHING = 0.005;

  private static final String OUT = " pucks carried or passed out";
  private static final String SHORT = "released short of center";

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

    private Optional<Range> range() {
      return tooFew() ? Optional.empty() : new Difference(own, rest).interval();
    }

    boolean clearlyMore() {
      return range().filter(r -> r.low() >= NOTHING).isPresent();
    }

    boolean clearlyLess() {
      return range().filter(r -> r.high() <= -NOTHING).isPresent();
    }

    /**
     * "31 of 96 passes (32 %) were kept; in the rest of the team 145 of 804 (18 %): a difference of
     * +14 points (95 % interval +5 to +24)".
     *
     * @param cases a space and what was counted
     * @param were what some of them were
     */
    String said(String cases, String were) {
      Difference d = new Difference(own, rest);
      Range r = d.interval().orElseThrow();
      return Cell.counts(own.total())
          + cases
          + " ("
          + Cell.share(own.total())
          + ") were "
          + were
          + "; in the rest of the team "
          + Cell.counts(rest.total())
          + " ("
          + Cell.share(rest.total())
          + "): a difference of "
          + Cell.points(d.value().orElseThrow())
          + " points (95 % interval "
          + Cell.points(r.low())
          + " to "
          + Cell.points(r.high())
          + ")";
    }
  }

  /** The sentence. */
  String sentence() {
    return Stream.of(
            tooFew(),
            severalFlags(),
            oftenShort(),
            oftenIced(),
            oftenKeptIn(),
            afterPenalty(),
            oneFlag(),
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

  /** There was time to gain center, more than once. */
  Optional<String> severalFlags() {
    return flagged.successes() < SEVERAL
        ? Optional.empty()
        : Optional.of("Gain center first: " + followed());
  }

  /** Released short of center more than the rest of the team. */
  Optional<String> oftenShort() {
    return releasedShort.clearlyMore()
        ? Optional.of("Take it to center more often: " + releasedShort.said(OUT, SHORT) + ".")
        : Optional.empty();
  }

  /** Iced more often once released short. */
  Optional<String> oftenIced() {
    return iced.clearlyMore()
        ? Optional.of(
            "Look at how it is let go: " + iced.said(" releases short of center", "iced") + ".")
        : Optional.empty();
  }

  /** Kept in though nobody was close. */
  Optional<String> oftenKeptIn() {
    return keptIn.clearlyMore()
        ? Optional.of(
            "Get it out while there is room: "
                + keptIn.said(" attempts under no or light pressure", "kept in")
                + ".")
        : Optional.empty();
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

  /** There was time to gain center, once. */
  Optional<String> oneFlag() {
    return flagged.successes() == 1
        ? Optional.of("Look at one clip: " + followed())
        : Optional.empty();
  }

  private String followed() {
    String restarts =
        "an own-zone restart followed "
            + flagged.trials()
            + " of "
            + Say.count(releases, "release")
            + " short of center, and ";
    String which =
        flagged.trials() == 1
            ? ""
            : "in " + flagged.successes() + " of those " + flagged.trials() + " ";
    return restarts + which + "there was likely time to gain the red line first.";
  }

  /** Released short of center less than the rest of the team. */
  Optional<String> seldomShort() {
    return releasedShort.clearlyLess()
        ? Optional.of("Keep taking it to center: " + releasedShort.said(OUT, SHORT) + ".")
        : Optional.empty();
  }

  /** Nothing can be told from chance. */
  String nothing() {
    return releasedShort.tooFew()
        ? "Nothing stands out; with "
            + Cell.counts(releasedShort.own().total())
            + OUT
            + " "
            + SHORT
            + " it is too few to say more."
        : "Nothing stands out: "
            + releasedShort.said(OUT, SHORT)
            + ", not to be told from chance yet.";
  }
}
