package twostrides.rulebook.penalty;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import twostrides.rulebook.penalty.BoxEvent.Called;

/**
 * A stretch of time for which a call takes a skater off: a whole penalty, or half of a double
 * minor.
 *
 * @param call the penalty
 * @param millis its length, ms
 */
record ServedPenalty(Called call, long millis) {

  /**
   * An order of the penalties of one stoppage that does not depend on the order of their rows:
   * majors before minors, as they are served (from memory), then by the names that the sheet gives.
   */
  static final Comparator<ServedPenalty> CANONICAL =
      Comparator.comparing(ServedPenalty::minor)
          .thenComparing(b -> b.call().player().orElse(""))
          .thenComparing(b -> b.call().servedBy().orElse(""))
          .thenComparing(b -> b.call().kind())
          .thenComparing(b -> b.call().ref())
          .thenComparing(ServedPenalty::millis);

  /** Whether a goal can end it: minors only, not majors or match penalties (NHL 20.2: S). */
  boolean minor() {
    return call.kind().isMinor();
  }

  /**
   * What is served for a call. A double minor is two, one after the other (NHL 18.2: S); a
   * misconduct and a game misconduct are none. A match penalty counts as a major where the book
   * knows none.
   */
  static List<ServedPenalty> of(Called call, PenaltyRules rules) {
    if (!call.kind().costsSkater()) {
      return List.of();
    }
    int parts = call.kind() == PenaltyKind.DOUBLE_MINOR ? 2 : 1;
    double seconds =
        call.lengthSeconds().isPresent()
            ? call.lengthSeconds().getAsDouble() / parts
            : usualSeconds(call.kind(), rules.lengths());
    return Collections.nCopies(parts, new ServedPenalty(call, GameInstant.toMillis(seconds)));
  }

  private static double usualSeconds(PenaltyKind kind, PenaltyRules.Lengths lengths) {
    if (kind.isMinor()) {
      return lengths.minorSeconds();
    }
    return kind == PenaltyKind.MATCH
        ? lengths.matchSeconds().orElse(lengths.majorSeconds())
        : lengths.majorSeconds();
  }

  /** Who is punished, for telling players apart; a penalty to nobody named stands alone. */
  String owner() {
    return call.player().or(call::sitter).orElseGet(() -> "row " + call.ref());
  }
}
