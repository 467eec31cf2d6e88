package twostrides.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import twostrides.rulebook.Rule.Effect;

/** Asks a book's rules about a situation, one after the other. */
public final class Judge {
  private Judge() {}

  /**
   * The ruling of a book.
   *
   * <p>An exception that surely applies decides, whatever else is unknown. If none does and a fact
   * is missing, the ruling is not yet decided and says which facts would settle it. Whatever passes
   * every rule is icing.
   *
   * @param book the book
   * @param facts the situation
   */
  public static Ruling judge(IcingBook book, Facts facts) {
    List<Ruling.Open> open = new ArrayList<>(0);
    for (Rule rule : IcingRules.IN_ORDER) {
      Answer answer = Objects.requireNonNull(rule.ask().apply(book, facts));
      if (answer instanceof Answer.Applies applies) {
        if (rule.effect() == Effect.NOT_YET) {
          open.add(new Ruling.Open(FactKey.RACE, "once that has happened", applies.reason()));
        } else {
          return decided(rule.effect(), applies.reason(), book, facts);
        }
      } else if (answer instanceof Answer.Unknown unknown) {
        open.add(unknown.open());
      }
    }
    Reason completed = completed(book, facts);
    return open.isEmpty()
        ? new Ruling.Icing(completed, FaceOffRules.afterIcing(book, facts))
        : new Ruling.NotYetDecided(completed, open);
  }

  private static Ruling decided(Effect effect, Reason reason, IcingBook book, Facts facts) {
    return switch (effect) {
      case GOAL -> new Ruling.Goal(reason, FaceOffRules.afterGoal());
      case WAVED_OFF -> new Ruling.WavedOff(reason, FaceOffRules.withoutIcing(book, facts, reason));
      case NO_ICING, NOT_YET ->
          new Ruling.NoIcing(reason, FaceOffRules.withoutIcing(book, facts, reason));
    };
  }

  /** The rule that completes an icing, by the book's type. */
  private static Reason completed(IcingBook book, Facts facts) {
    boolean past = facts.is(Fact.FROM_PAST_THE_LINE, Fact.FROM_ON_THE_LINE);
    String from = past ? "with the line not gained on a stick" : "from short of the line";
    String text =
        switch (book.choice(SettingKey.TYPE)) {
          case TYPE_TOUCH -> ", over the goal line, touched first by a defender";
          case TYPE_HYBRID -> ", over the goal line, and a defender would touch it first";
          default -> " and wholly over the goal line";
        };
    return book.basis("icing", SettingKey.TYPE).reason(from + text);
  }

  /**
   * The assumed settings on which a ruling hangs: those for which no source was found and with
   * another value of which the ruling or its face-off would be another.
   *
   * @param book the book
   * @param facts the situation
   * @return what the ruling would be instead, by setting, in the keys' order
   */
  public static Map<Setting, String> assumptions(IcingBook book, Facts facts) {
    Map<Setting, String> hanging = new LinkedHashMap<>();
    String now = outcome(judge(book, facts));
    for (Setting s : book.assumed()) {
      for (String other : s.key().words()) {
        if (other.equals(s.value())) {
          continue;
        }
        Setting changed =
            new Setting(s.key(), other, s.seasons(), s.clause(), s.source(), s.grade());
        Ruling then = judge(book.with(List.of(changed)), facts);
        if (!outcome(then).equals(now)) {
          hanging.putIfAbsent(s, "with " + s.key().word() + " = " + other + ": " + outcome(then));
        }
      }
    }
    return hanging;
  }

  /** The ruling and its face-off, without reasons. */
  private static String outcome(Ruling r) {
    String open =
        r instanceof Ruling.NotYetDecided n
            ? n.open().stream().map(o -> o.fact().column()).toList().toString()
            : "";
    return r.word() + open + r.faceOff().map(Judge::outcome).orElse("");
  }

  private static String outcome(FaceOff then) {
    String spot = then.spot().words().isEmpty() ? "" : ", " + then.spot().words();
    String change = then.change().words();
    return ", face-off "
        + then.place().words()
        + spot
        + ", "
        + change
        + ", "
        + then.timeOut().words();
  }
}
