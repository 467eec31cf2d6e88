package twostrides.rulebook;

import static twostrides.rulebook.FactKey.PENALTY;
import static twostrides.rulebook.FactKey.TOUCH;
import static twostrides.rulebook.FactKey.WANTS;

import java.util.List;
import java.util.Optional;
import twostrides.rulebook.FaceOff.Change;
import twostrides.rulebook.FaceOff.Place;
import twostrides.rulebook.FaceOff.Spot;
import twostrides.rulebook.FaceOff.TimeOut;

/** Where the face-off is, who picks the spot, who may change and who may take a time-out. */
final class FaceOffRules {
  private FaceOffRules() {}

  /** The face-off after an icing. */
  static FaceOff afterIcing(IcingBook b, Facts f) {
    Reason place = reason(b, SettingKey.SPOT, "draw", "the draw is in the icing team's end zone");
    Place where = Place.ICING_TEAM_END;
    Spot spot = spot(b);
    if (f.is(Fact.SIGNALLED_OTHER_TEAM) && b.says(SettingKey.SIGNALLED_PENALTY, "neutral-zone")) {
      where = Place.NEUTRAL_SPOT;
      spot = Spot.NO_CHOICE;
      place =
          reason(
              b,
              SettingKey.SIGNALLED_PENALTY,
              "draw",
              "with a penalty signalled on the other team the draw is in the neutral zone");
    }
    Change change = change(b, f);
    return new FaceOff(
        where,
        spot,
        change,
        timeOut(b),
        List.of(place, changeReason(b, f, change), timeOutReason(b)));
  }

  private static Spot spot(IcingBook b) {
    return switch (b.setting(SettingKey.SPOT).value()) {
      case "attacking-team" -> Spot.ATTACKERS_PICK;
      case "shot-side" -> Spot.SHOT_SIDE;
      default -> Spot.NO_RULE;
    };
  }

  /** The bar on changing, with what lifts it. A long delay or a rest never does. */
  private static Change change(IcingBook b, Facts f) {
    if (b.says(SettingKey.LINE_CHANGE, "allowed")) {
      return Change.ALLOWED;
    }
    if (!f.is(Fact.PENALTY_NONE) && !f.unknown(PENALTY)) {
      boolean own =
          f.isOne(Fact.PENALTY_ICING_TEAM, Fact.PENALTY_BOTH_TEAMS)
              || f.is(Fact.PENALTY_ICING_TEAM_MISCONDUCT);
      boolean changesStrength =
          f.isOne(Fact.PENALTY_ICING_TEAM, Fact.PENALTY_OTHER_TEAM)
              || (f.is(Fact.PENALTY_BOTH_TEAMS)
                  && b.says(SettingKey.COINCIDENTAL_MINORS, "four-on-four"));
      switch (b.setting(SettingKey.CHANGE_WITH_PENALTY).value()) {
        case "any" -> {
          return Change.ALLOWED;
        }
        case "strength-changing" -> {
          if (changesStrength) {
            return Change.ALLOWED;
          }
          if (own) {
            return penalized(b, f);
          }
        }
        default -> {
          if (own) {
            return penalized(b, f);
          }
        }
      }
    }
    return switch (f.get(WANTS)) {
      case WANTS_GOALKEEPER_BACK ->
          b.says(SettingKey.GOALKEEPER_RETURNS, "yes") ? Change.GOALKEEPER_ONLY : Change.BARRED;
      case WANTS_INJURED_OUT ->
          b.says(SettingKey.INJURED_REPLACED, "yes") ? Change.INJURED_ONLY : Change.BARRED;
      case WANTS_BROKEN_SKATE ->
          b.says(SettingKey.BROKEN_SKATE, "yes") ? Change.SKATE_ONLY : Change.BARRED;
      default -> Change.BARRED;
    };
  }

  private static Change penalized(IcingBook b, Facts f) {
    boolean keeper =
        f.is(Fact.WANTS_GOALKEEPER_BACK) && b.says(SettingKey.GOALKEEPER_RETURNS, "yes");
    return keeper ? Change.PENALIZED_AND_GOALKEEPER : Change.PENALIZED_ONLY;
  }

  private static Reason changeReason(IcingBook b, Facts f, Change change) {
    boolean barred = b.says(SettingKey.LINE_CHANGE, "barred");
    boolean byPenalty =
        change == Change.PENALIZED_ONLY
            || change == Change.PENALIZED_AND_GOALKEEPER
            || (barred && change == Change.ALLOWED);
    SettingKey key =
        byPenalty
            ? SettingKey.CHANGE_WITH_PENALTY
            : switch (change) {
              case GOALKEEPER_ONLY -> SettingKey.GOALKEEPER_RETURNS;
              case INJURED_ONLY -> SettingKey.INJURED_REPLACED;
              case SKATE_ONLY -> SettingKey.BROKEN_SKATE;
              case BARRED ->
                  f.is(Fact.WANTS_BROKEN_SKATE) ? SettingKey.BROKEN_SKATE : SettingKey.LINE_CHANGE;
              case ALLOWED, PENALIZED_ONLY, PENALIZED_AND_GOALKEEPER -> SettingKey.LINE_CHANGE;
            };
    return reason(b, key, "change", change.words());
  }

  private static TimeOut timeOut(IcingBook b) {
    if (b.says(SettingKey.TIME_OUT, "not-icing-team")) {
      return TimeOut.NOT_ICING_TEAM;
    }
    return b.says(SettingKey.LINE_CHANGE, "barred") ? TimeOut.ALLOWED_NO_CHANGE : TimeOut.ALLOWED;
  }

  private static Reason timeOutReason(IcingBook b) {
    return reason(b, SettingKey.TIME_OUT, "time-out", timeOut(b).words());
  }

  /**
   * The face-off where it is no icing and play stopped all the same; empty where play goes on.
   *
   * @param decided the rule that decided
   */
  static Optional<FaceOff> withoutIcing(IcingBook b, Facts f, Reason decided) {
    boolean leftShort =
        decided.rule().equals(WayRules.SHORT)
            && f.is(Fact.ABSTAINED_YES)
            && b.says(SettingKey.ABSTAINING, "own-end");
    if (decided.rule().equals(WayRules.LEFT_ALONE) || leftShort) {
      return Optional.of(
          free(
              b,
              Place.ABSTAINING_TEAM_END,
              SettingKey.ABSTAINING,
              "the draw is beside the goal of the team that left the puck alone"));
    }
    if (f.is(Fact.WHISTLED_YES)) {
      Place place =
          switch (b.setting(SettingKey.BY_MISTAKE).value()) {
            case "center" -> Place.CENTER;
            case "nearest-end-spot" -> Place.NEAREST_END_SPOT;
            default -> Place.NOT_FOUND;
          };
      return Optional.of(
          free(b, place, SettingKey.BY_MISTAKE, "icing was whistled by mistake: " + place.words()));
    }
    if (f.is(Fact.OFFSIDE_FIRST_OR_CONTACT)) {
      return Optional.of(
          free(b, Place.OFFSIDE_SPOT, SettingKey.OFFSIDE, "play stops for the offside"));
    }
    if (f.isOne(Fact.PUCK_OUT_PAST_GOAL_LINE, Fact.PUCK_OUT_BEFORE_GOAL_LINE)) {
      boolean touched = !f.is(Fact.TOUCH_NONE) && !f.unknown(TOUCH);
      Place place = touched ? Place.WHERE_DEFLECTED : Place.WHERE_LAST_PLAYED;
      return Optional.of(free(place, Reason.common("draw", "the puck left the rink")));
    }
    return Optional.empty();
  }

  /** The face-off after a goal. */
  static FaceOff afterGoal() {
    return free(Place.CENTER, Reason.common("draw", "after a goal the draw is at center ice"));
  }

  private static FaceOff free(IcingBook b, Place place, SettingKey key, String text) {
    return free(place, reason(b, key, "draw", text));
  }

  private static FaceOff free(Place place, Reason why) {
    return new FaceOff(place, Spot.NO_CHOICE, Change.ALLOWED, TimeOut.ALLOWED, List.of(why));
  }

  private static Reason reason(IcingBook b, SettingKey key, String rule, String text) {
    return Reason.of(rule, text, b.setting(key));
  }
}
