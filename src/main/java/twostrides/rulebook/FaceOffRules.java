package twostrides.rulebook;

import java.util.List;
import java.util.Optional;
import twostrides.rulebook.FaceOff.Change;
import twostrides.rulebook.FaceOff.Place;
import twostrides.rulebook.FaceOff.Spot;
import twostrides.rulebook.FaceOff.TimeOut;

/** Where the face-off is, who picks the spot, who may change and who may take a time-out. */
final class FaceOffRules {

  /** Names of the rules about where it is, who may change and who may take a time-out. */
  static final String PLACE = "place";

  static final String CHANGE = "change";
  static final String TIME_OUT = "time-out";

  private FaceOffRules() {}

  /** The face-off after an icing. */
  static FaceOff afterIcing(IcingBook b, Facts f) {
    boolean neutral =
        f.is(Fact.SIGNALLED_OTHER_TEAM) && b.says(Choice.SIGNALLED_PENALTY_NEUTRAL_ZONE);
    Reason place =
        neutral
            ? b.basis(PLACE, SettingKey.SIGNALLED_PENALTY)
                .reason(
                    "with a penalty signalled on the other team the face-off is in the neutral zone")
            : b.basis(PLACE, SettingKey.SPOT)
                .reason("the face-off is in the icing team's end zone");
    Change change = change(b, f);
    TimeOut timeOut = timeOut(b);
    return new FaceOff(
        neutral ? Place.NEUTRAL_SPOT : Place.ICING_TEAM_END,
        neutral ? Spot.NO_CHOICE : spot(b),
        change,
        timeOut,
        List.of(
            place,
            b.basis(CHANGE, decides(b, f, change)).reason(change.words()),
            b.basis(TIME_OUT, SettingKey.TIME_OUT).reason(timeOut.words())));
  }

  private static Spot spot(IcingBook b) {
    return switch (b.choice(SettingKey.SPOT)) {
      case SPOT_ATTACKING_TEAM -> Spot.ATTACKERS_PICK;
      case SPOT_SHOT_SIDE -> Spot.SHOT_SIDE;
      default -> Spot.NO_RULE;
    };
  }

  /** The bar on changing, with what lifts it. A long delay or a rest never does. */
  private static Change change(IcingBook b, Facts f) {
    if (b.says(Choice.LINE_CHANGE_ALLOWED) || freedByPenalty(b, f)) {
      return Change.ALLOWED;
    }
    boolean keeper = f.is(Fact.WANTS_GOALKEEPER_BACK) && b.says(Choice.GOALKEEPER_RETURNS_YES);
    if (f.is(
        Fact.PENALTY_ICING_TEAM, Fact.PENALTY_BOTH_TEAMS, Fact.PENALTY_ICING_TEAM_MISCONDUCT)) {
      return keeper ? Change.PENALIZED_AND_GOALKEEPER : Change.PENALIZED_ONLY;
    }
    if (keeper) {
      return Change.GOALKEEPER_ONLY;
    }
    if (f.is(Fact.WANTS_INJURED_OUT) && b.says(Choice.INJURED_REPLACED_YES)) {
      return Change.INJURED_ONLY;
    }
    return f.is(Fact.WANTS_BROKEN_SKATE) && b.says(Choice.BROKEN_SKATE_YES)
        ? Change.SKATE_ONLY
        : Change.BARRED;
  }

  /** Whether a penalty at the same stoppage lifts the bar for everybody. */
  private static boolean freedByPenalty(IcingBook b, Facts f) {
    if (b.says(Choice.CHANGE_WITH_PENALTY_ANY)) {
      return !f.is(Fact.PENALTY_NONE, Fact.PENALTY_UNKNOWN);
    }
    boolean changesStrength =
        f.is(Fact.PENALTY_ICING_TEAM, Fact.PENALTY_OTHER_TEAM)
            || (f.is(Fact.PENALTY_BOTH_TEAMS) && b.says(Choice.COINCIDENTAL_MINORS_FOUR_ON_FOUR));
    return changesStrength && b.says(Choice.CHANGE_WITH_PENALTY_STRENGTH_CHANGING);
  }

  /** The setting behind who may change. */
  private static SettingKey decides(IcingBook b, Facts f, Change change) {
    return switch (change) {
      case PENALIZED_ONLY, PENALIZED_AND_GOALKEEPER -> SettingKey.CHANGE_WITH_PENALTY;
      case ALLOWED ->
          b.says(Choice.LINE_CHANGE_BARRED)
              ? SettingKey.CHANGE_WITH_PENALTY
              : SettingKey.LINE_CHANGE;
      case GOALKEEPER_ONLY -> SettingKey.GOALKEEPER_RETURNS;
      case INJURED_ONLY -> SettingKey.INJURED_REPLACED;
      case SKATE_ONLY -> SettingKey.BROKEN_SKATE;
      case BARRED ->
          f.is(Fact.WANTS_BROKEN_SKATE) ? SettingKey.BROKEN_SKATE : SettingKey.LINE_CHANGE;
    };
  }

  private static TimeOut timeOut(IcingBook b) {
    if (b.says(Choice.TIME_OUT_NOT_ICING_TEAM)) {
      return TimeOut.NOT_ICING_TEAM;
    }
    return b.says(Choice.LINE_CHANGE_BARRED) ? TimeOut.ALLOWED_NO_CHANGE : TimeOut.ALLOWED;
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
            && b.says(Choice.ABSTAINING_OWN_END);
    if (decided.rule().equals(WayRules.LEFT_ALONE) || leftShort) {
      return free(
          Place.ABSTAINING_TEAM_END,
          b.basis(PLACE, SettingKey.ABSTAINING)
              .reason("the face-off is beside the goal of the team that left the puck alone"));
    }
    if (f.is(Fact.WHISTLED_YES)) {
      Place place =
          switch (b.choice(SettingKey.BY_MISTAKE)) {
            case BY_MISTAKE_CENTER -> Place.CENTER;
            case BY_MISTAKE_NEAREST_END_SPOT -> Place.NEAREST_END_SPOT;
            default -> Place.NOT_FOUND;
          };
      return free(
          place,
          b.basis(PLACE, SettingKey.BY_MISTAKE)
              .reason("icing was whistled by mistake: " + place.words()));
    }
    if (f.is(Fact.OFFSIDE_FIRST_OR_CONTACT)) {
      return free(
          Place.OFFSIDE_SPOT,
          b.basis(PLACE, SettingKey.OFFSIDE).reason("play stops for the offside"));
    }
    if (f.is(Fact.PUCK_OUT_PAST_GOAL_LINE, Fact.PUCK_OUT_BEFORE_GOAL_LINE)) {
      return free(
          f.is(Fact.TOUCH_NONE, Fact.TOUCH_UNKNOWN)
              ? Place.WHERE_LAST_PLAYED
              : Place.WHERE_DEFLECTED,
          Reason.common(PLACE, "the puck left the rink"));
    }
    return Optional.empty();
  }

  /** The face-off after a goal. */
  static FaceOff afterGoal() {
    return free(Place.CENTER, Reason.common(PLACE, "after a goal the face-off is at center ice"))
        .orElseThrow();
  }

  private static Optional<FaceOff> free(Place place, Reason why) {
    return Optional.of(
        new FaceOff(place, Spot.NO_CHOICE, Change.ALLOWED, TimeOut.ALLOWED, List.of(why)));
  }
}
