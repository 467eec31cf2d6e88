package twostrides.rulebook.penalty;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import twostrides.rulebook.penalty.BoxEvent.Called;

/**
 * A stretch of time for which a penalty takes a skater off.
 *
 * @param call the penalty
 * @param millis its length, ms
 */
record Block(Called call, long millis) {

  /**
   * An order of the penalties of one stoppage that does not depend on the order of their rows:
   * majors before minors, as they are served (from memory), then by the names that the sheet gives.
   */
  static final Comparator<Block> CANONICAL =
      Comparator.comparing(Block::minor)
          .thenComparing(b -> b.call().player().orElse(""))
          .thenComparing(b -> b.call().servedBy().orElse(""))
          .thenComparing(b -> b.call().kind())
          .thenComparing(b -> b.call().ref())
          .thenComparing(Block::millis);

  /** Whether a goal can end it: minors only, not majors or match penalties (NHL 20.2: S). */
  boolean minor() {
    return call.kind().isMinor();
  }

  /**
   * The blocks of a penalty. A double minor is two, one after the other (NHL 18.2: S); a misconduct
   * and a game misconduct are none. A match penalty counts as a major where the book knows none.
   */
  static List<Block> of(Called call, PenaltyRules rules) {
    if (!call.kind().costsSkater()) {
      return List.of();
    }
    int parts = call.kind() == PenaltyKind.DOUBLE_MINOR ? 2 : 1;
    double seconds =
        call.lengthSeconds().isPresent()
            ? call.lengthSeconds().getAsDouble() / parts
            : usualSeconds(call.kind(), rules);
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < parts; i++) {
      blocks.add(new Block(call, GameInstant.toMillis(seconds)));
    }
    return List.copyOf(blocks);
  }

  private static double usualSeconds(PenaltyKind kind, PenaltyRules rules) {
    if (kind.isMinor()) {
      return rules.minorSeconds();
    }
    return kind == PenaltyKind.MATCH
        ? rules.matchSeconds().orElse(rules.majorSeconds())
        : rules.majorSeconds();
  }

  /** Who is punished, for telling players apart; a penalty to nobody named stands alone. */
  String owner() {
    return call.player().or(call::sitter).orElseGet(() -> "row " + call.ref());
  }
}
