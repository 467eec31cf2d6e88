package twostrides.exits;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.game.Strength;
import twostrides.game.TaggedExit;
import twostrides.rink.Rink;
import twostrides.rink.Zone;
import twostrides.rulebook.Choice;
import twostrides.rulebook.Fact;
import twostrides.rulebook.Facts;
import twostrides.rulebook.IcingBook;

/**
 * What a sheet says of a release, in the words of the rulebooks. What a sheet cannot say stays
 * unknown; that icing was called says that nothing happened which the book of that game would have
 * waved off.
 */
final class SheetFacts {

  private final PuckTimeline timeline;

  SheetFacts(PuckTimeline timeline) {
    this.timeline = timeline;
  }

  /**
   * The facts of a release that was iced, by the call or by inference: whatever the played book
   * asks for went the icing way; what it does not ask for stays unknown.
   *
   * @param release the release
   */
  Facts iced(PuckEvent release) {
    return wentTheIcingWay(atRelease(release), timeline.settings().book());
  }

  /** Facts completed by what an icing call says under the book of the game. */
  private static Facts wentTheIcingWay(Facts known, IcingBook played) {
    Facts facts = known.with(Fact.PUCK_CROSSED);
    if (played.says(Choice.ABLE_OPPONENT_YES)) {
      facts = facts.with(Fact.COULD_PLAY_NO);
    }
    if (!played.says(Choice.RECEIVABLE_PASS_NO)) {
      facts = facts.with(Fact.PASS_NONE);
    }
    if (played.says(Choice.FACE_OFF_EXEMPT_YES)) {
      facts = facts.with(Fact.FACE_OFF_NO);
    }
    if (!played.says(Choice.GOALKEEPER_TOUCH_ONLY) || played.says(Choice.GOALKEEPER_PREVENTS_YES)) {
      facts = facts.with(Fact.GOALKEEPER_STAYED);
    }
    return played.raceQuestion().isPresent() ? facts.with(Fact.RACE_DEFENDER) : facts;
  }

  /**
   * The facts of a tagged exit that was let go.
   *
   * @param rink the rink
   * @param tag the tag
   * @param iced whether it was tagged as icing
   * @param played the book of the game
   */
  static Facts tagged(Rink rink, TaggedExit tag, boolean iced, IcingBook played) {
    OptionalDouble x =
        tag.place().isPresent() ? OptionalDouble.of(tag.place().get().x()) : OptionalDouble.empty();
    Fact from = from(rink, x, tag.zone());
    if (x.isEmpty() && tag.releasedShort() && tag.zone().equals(Optional.of(Zone.NEUTRAL))) {
      from = Fact.FROM_OWN_HALF;
    }
    Facts facts = Facts.NONE.with(from, strength(tag.strength()), Fact.FACE_OFF_UNKNOWN);
    return iced
        ? wentTheIcingWay(facts.with(Fact.TOUCH_NONE), played)
        : facts.with(Fact.TOUCH_UNKNOWN);
  }

  /**
   * The facts of a release that was not iced, or of which nobody knows.
   *
   * @param release the release
   */
  Facts notIced(PuckEvent release) {
    Facts facts = atRelease(release);
    PuckEvent next = timeline.next(release);
    if (next.ends() || !next.touch()) {
      return facts;
    }
    String team = release.team().orElseThrow();
    OptionalDouble x = next.x(team);
    Rink rink = timeline.rink();
    boolean own = next.by(team);
    if (x.isEmpty()) {
      // The attacking zone reaches past the goal line, the neutral zone lies on both sides of
      // center.
      return switch (timeline.zone(next, team).orElse(Zone.ATTACKING)) {
        case OWN ->
            own
                ? facts.with(Fact.TOUCH_TEAMMATE_SHORT_OF_CENTER, Fact.PUCK_SHORT_OF_GOAL_LINE)
                : facts.with(Fact.TOUCH_OPPONENT_BEFORE_LINE);
        case NEUTRAL ->
            own
                ? facts.with(Fact.TOUCH_UNKNOWN, Fact.PUCK_SHORT_OF_GOAL_LINE)
                : facts.with(Fact.TOUCH_OPPONENT_BEFORE_LINE);
        case ATTACKING -> facts.with(Fact.TOUCH_UNKNOWN);
      };
    }
    if (x.getAsDouble() > rink.goalLine()) {
      return facts.with(Fact.PUCK_CROSSED, own ? Fact.RACE_ATTACKER : Fact.RACE_DEFENDER);
    }
    if (!own) {
      return facts.with(Fact.TOUCH_OPPONENT_BEFORE_LINE);
    }
    return facts.with(
        rink.shortOfCenter(x.getAsDouble()) > 0
            ? Fact.TOUCH_TEAMMATE_SHORT_OF_CENTER
            : Fact.TOUCH_TEAMMATE_PAST_CENTER,
        Fact.PUCK_SHORT_OF_GOAL_LINE);
  }

  private Facts atRelease(PuckEvent release) {
    Facts facts =
        Facts.NONE.with(
            from(timeline.rink(), release.x(), release.zone()),
            strength(release.strength()),
            faceOff(release));
    // The sheet says where a pass was meant to go, not whether it could have been reached.
    return release.kind() == PuckEvent.Kind.MISSED_PASS ? facts.with(Fact.PASS_UNKNOWN) : facts;
  }

  /** From the place; of a zone alone the neutral one lies on both sides of center. */
  private static Fact from(Rink rink, OptionalDouble x, Optional<Zone> zone) {
    if (x.isPresent()) {
      return Facts.from(rink, x.getAsDouble());
    }
    if (zone.isEmpty()) {
      return Fact.FROM_UNKNOWN;
    }
    return switch (zone.get()) {
      case OWN -> Fact.FROM_OWN_ZONE;
      case NEUTRAL -> Fact.FROM_UNKNOWN;
      case ATTACKING -> Fact.FROM_PAST_THE_LINE;
    };
  }

  private static Fact strength(Strength strength) {
    return switch (strength) {
      case SHORTHANDED -> Fact.STRENGTH_SHORTHANDED;
      case POWER_PLAY -> Fact.STRENGTH_POWER_PLAY;
      case UNKNOWN -> Fact.STRENGTH_UNKNOWN;
      case EVEN -> Fact.STRENGTH_EVEN;
    };
  }

  private Fact faceOff(PuckEvent release) {
    List<PuckEvent> before = timeline.before(release);
    PuckEvent last = before.isEmpty() ? release : before.get(before.size() - 1);
    if (last.kind() != PuckEvent.Kind.FACEOFF) {
      return Fact.FACE_OFF_NO;
    }
    // Who won it may have sent it on at once; where one of the two has no name, it may be he.
    Optional<String> winner = last.player();
    boolean another =
        winner.isPresent() && release.player().isPresent() && !winner.equals(release.player());
    return another ? Fact.FACE_OFF_LATER : Fact.FACE_OFF_UNKNOWN;
  }
}
