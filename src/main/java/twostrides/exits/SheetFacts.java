package twostrides.exits;

import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.game.Strength;
import twostrides.rink.Rink;
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

  private final Play play;

  SheetFacts(Play play) {
    this.play = play;
  }

  /**
   * The facts of a release that was iced, by the call or by inference: whatever the played book
   * asks for went the icing way; what it does not ask for stays unknown.
   *
   * @param release the release
   */
  Facts iced(Move release) {
    return wentTheIcingWay(atRelease(release), play.settings().book());
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
   * @param x metres along the rink, where the tag has a place
   * @param strength label of the strength
   * @param iced whether it was tagged as icing
   * @param played the book of the game
   */
  static Facts tagged(
      Rink rink, OptionalDouble x, String strength, boolean iced, IcingBook played) {
    Facts facts = Facts.NONE.with(from(rink, x), strength(strength), Fact.FACE_OFF_UNKNOWN);
    return iced
        ? wentTheIcingWay(facts.with(Fact.TOUCH_NONE), played)
        : facts.with(Fact.TOUCH_UNKNOWN);
  }

  /**
   * The facts of a release that was not iced, or of which nobody knows.
   *
   * @param release the release
   */
  Facts notIced(Move release) {
    Facts facts = atRelease(release);
    Move next = play.next(release);
    if (next.ends() || !next.touch()) {
      return facts;
    }
    String team = release.team().orElseThrow();
    OptionalDouble x = next.x(team);
    if (x.isEmpty()) {
      return facts.with(Fact.TOUCH_UNKNOWN);
    }
    Rink rink = play.rink(release);
    boolean own = next.by(team);
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

  private Facts atRelease(Move release) {
    Facts facts =
        Facts.NONE.with(
            from(play.rink(release), release.x()), strength(release.strength()), faceOff(release));
    // The sheet says where a pass was meant to go, not whether it could have been reached.
    return release.kind() == Move.Kind.MISSED_PASS ? facts.with(Fact.PASS_UNKNOWN) : facts;
  }

  private static Fact from(Rink rink, OptionalDouble place) {
    return place.isPresent() ? Facts.from(rink, place.getAsDouble()) : Fact.FROM_UNKNOWN;
  }

  private static Fact strength(String label) {
    if (label.equals(Strength.SHORTHANDED.label())) {
      return Fact.STRENGTH_SHORTHANDED;
    }
    if (label.equals(Strength.POWER_PLAY.label())) {
      return Fact.STRENGTH_POWER_PLAY;
    }
    return label.equals(Strength.UNKNOWN.label()) ? Fact.STRENGTH_UNKNOWN : Fact.STRENGTH_EVEN;
  }

  /** Whoever won the draw and let the puck go with no row between may have done both in one. */
  private Fact faceOff(Move release) {
    if (release.index() == 0) {
      return Fact.FACE_OFF_NO;
    }
    Move before = play.moves().get(release.index() - 1);
    boolean fromDraw = before.samePlay(release) && before.kind() == Move.Kind.FACEOFF;
    if (!fromDraw) {
      return Fact.FACE_OFF_NO;
    }
    Optional<String> winner = before.player();
    return winner.isEmpty() || winner.equals(release.player())
        ? Fact.FACE_OFF_UNKNOWN
        : Fact.FACE_OFF_LATER;
  }
}
