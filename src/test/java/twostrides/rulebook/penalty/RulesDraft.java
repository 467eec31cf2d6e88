package twostrides.rulebook.penalty;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import twostrides.rulebook.penalty.PenaltyRules.AtExpiry;
import twostrides.rulebook.penalty.PenaltyRules.CoincidentalMinors;
import twostrides.rulebook.penalty.PenaltyRules.Lengths;

/** The common rules while a case changes some of them. */
final class RulesDraft {
  double minorSeconds = 120;
  double majorSeconds = 300;
  OptionalDouble matchSeconds = OptionalDouble.of(300);
  int fewestSkaters = 3;
  OptionalInt overtimeSkaters = OptionalInt.empty();
  CoincidentalMinors coincidentalMinors = CoincidentalMinors.CANCEL;
  boolean shorthandedGoalFreesOwnMinor;
  boolean expiredMajorEmptyBoxExempt;
  AtExpiry atExpiry = AtExpiry.OVER;

  PenaltyRules rules() {
    return new PenaltyRules(
        new Lengths(minorSeconds, majorSeconds, matchSeconds),
        fewestSkaters,
        overtimeSkaters,
        coincidentalMinors,
        shorthandedGoalFreesOwnMinor,
        expiredMajorEmptyBoxExempt,
        atExpiry);
  }
}
