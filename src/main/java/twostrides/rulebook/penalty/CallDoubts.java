package twostrides.rulebook.penalty;

import java.util.ArrayList;
import java.util.List;
import twostrides.rulebook.penalty.BoxEvent.Called;

/** What the calls of a stoppage leave open by themselves. */
final class CallDoubts {

  private CallDoubts() {}

  /** Every doubt of a stoppage, as sentences. */
  static List<String> of(Step.Stoppage stoppage, PenaltyRules rules) {
    List<String> found = new ArrayList<>();
    for (Called c : stoppage.calls()) {
      if (c.kind() == PenaltyKind.MATCH && rules.lengths().matchSeconds().isEmpty()) {
        found.add("this book knows no match penalty; " + c.ref() + " counts as long as a major");
      }
      if (whoSitsIsOpen(c, stoppage.calls())) {
        found.add(
            "the sheet does not say who sits for the "
                + Term.name(c)
                + " ("
                + c.ref()
                + "), who is out of the game; taken: a team-mate sits and comes back");
      }
    }
    return List.copyOf(found);
  }

  /** A player out of the game does not sit; whether somebody does matters when a major runs out. */
  private static boolean whoSitsIsOpen(Called c, List<Called> calls) {
    if (c.servedBy().isPresent() || c.kind().isMinor() || !c.kind().costsSkater()) {
      return false;
    }
    return c.kind() == PenaltyKind.MATCH
        || calls.stream()
            .anyMatch(
                o ->
                    o.kind() == PenaltyKind.GAME_MISCONDUCT
                        && o.side() == c.side()
                        && c.player().isPresent()
                        && o.player().equals(c.player()));
  }
}
