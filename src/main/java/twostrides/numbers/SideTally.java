package twostrides.numbers;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import twostrides.exits.AtCenter;
import twostrides.exits.Columns;
import twostrides.exits.WayOut;
import twostrides.review.FaceOffAfter;
import twostrides.review.ShownStrength;
import twostrides.review.ShownWay;
import twostrides.review.TableRows;

/**
 * What one side did in one game: for each thing that is counted, and each strength, how many of how
 * many. Icings are counted by way out, one slot a way; the slots after them are named here.
 */
final class SideTally {

  /** The ways out in the order of their slots. */
  static final List<ShownWay> WAYS = List.of(ShownWay.values());

  /** Carries and passes that were released short of center, of those whose end there is known. */
  static final int RELEASED_SHORT = WAYS.size();

  /** Releases short of center that were iced. */
  static final int ICED = RELEASED_SHORT + 1;

  /** Exit attempts that were kept in. */
  static final int KEPT_IN = ICED + 1;

  /** Shot attempts against, over the exit attempts for which they are known. */
  static final int AGAINST = KEPT_IN + 1;

  /** Even, shorthanded, and all else: power play and unknown. */
  static final int STRENGTHS = 3;

  private static final int CELLS = (AGAINST + 1) * STRENGTHS;

  private final int[] hits = new int[CELLS];
  private final int[] cases = new int[CELLS];

  /** Counts an exit attempt. */
  void exit(TableRows r) {
    ShownWay way = ShownWay.of(r.words(Columns.WAY_OUT), r.text(Columns.AT_CENTER));
    FaceOffAfter.of(r).ifPresent(a -> add(r, WAYS.indexOf(way), a == FaceOffAfter.ICING ? 1 : 0));
    add(r, KEPT_IN, Season.keptIn(r) ? 1 : 0);
    Optional<String> atCenter = r.text(Columns.AT_CENTER);
    boolean controlled =
        Season.is(r, Columns.WAY_OUT, WayOut.CARRY.label())
            || Season.is(r, Columns.WAY_OUT, WayOut.PASS.label());
    if (controlled && atCenter.isPresent()) {
      add(r, RELEASED_SHORT, atCenter.get().equals(AtCenter.RELEASED_SHORT.label()) ? 1 : 0);
    }
    OptionalInt against = r.count(Columns.ATTEMPTS_AGAINST_20S);
    if (against.isPresent()) {
      add(r, AGAINST, against.getAsInt());
    }
  }

  /** Counts a release short of center. */
  void release(TableRows r) {
    add(r, ICED, Season.icing(r) ? 1 : 0);
  }

  private void add(TableRows r, int slot, int hit) {
    int strength =
        switch (r.text(Columns.STRENGTH).map(ShownStrength::of).orElse(ShownStrength.UNKNOWN)) {
          case EVEN -> 0;
          case SHORTHANDED -> 1;
          case POWER_PLAY, UNKNOWN -> 2;
        };
    hits[slot * STRENGTHS + strength] += hit;
    cases[slot * STRENGTHS + strength]++;
  }

  int hits(List<Integer> slots, List<Integer> strengths) {
    return sum(hits, slots, strengths);
  }

  int cases(List<Integer> slots, List<Integer> strengths) {
    return sum(cases, slots, strengths);
  }

  private static int sum(int[] cells, List<Integer> slots, List<Integer> strengths) {
    int sum = 0;
    for (int slot : slots) {
      for (int strength : strengths) {
        sum += cells[slot * STRENGTHS + strength];
      }
    }
    return sum;
  }

  /** Exit attempts. */
  int attempts() {
    return Arrays.stream(cases, KEPT_IN * STRENGTHS, (KEPT_IN + 1) * STRENGTHS).sum();
  }

  /** Cell, hits and cases of every cell that has cases, one after the other. */
  List<Integer> filled() {
    List<Integer> filled = new ArrayList<>();
    for (int cell = 0; cell < CELLS; cell++) {
      if (cases[cell] > 0) {
        filled.addAll(List.of(cell, hits[cell], cases[cell]));
      }
    }
    return filled;
  }
}
