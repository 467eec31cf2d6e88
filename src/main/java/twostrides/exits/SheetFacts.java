package twostrides.exits;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.game.Strength;
import twostrides.rink.Rink;
import twostrides.rulebook.FactKey;
import twostrides.rulebook.Facts;
import twostrides.rulebook.IcingBook;
import twostrides.rulebook.SettingKey;

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
  private static Facts wentTheIcingWay(Map<FactKey, String> facts, IcingBook played) {
    facts.put(FactKey.PUCK, "crossed");
    if (played.says(SettingKey.ABLE_OPPONENT, "yes")) {
      facts.put(FactKey.COULD_PLAY, "no");
    }
    if (!played.says(SettingKey.RECEIVABLE_PASS, "no")) {
      facts.put(FactKey.PASS, "none");
    }
    if (played.says(SettingKey.FACE_OFF_EXEMPT, "yes")) {
      facts.put(FactKey.FACE_OFF, "no");
    }
    if (!played.says(SettingKey.GOALKEEPER, "touch-only")) {
      facts.put(FactKey.GOALKEEPER, "stayed");
    }
    if (played.raceQuestion().isPresent()) {
      facts.put(FactKey.RACE, "defender");
    }
    return Facts.of(facts);
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
    Map<FactKey, String> facts = new EnumMap<>(FactKey.class);
    facts.put(FactKey.FROM, from(rink, x));
    facts.put(FactKey.STRENGTH, strength(strength));
    facts.put(FactKey.FACE_OFF, "unknown");
    facts.put(FactKey.TOUCH, iced ? "none" : "unknown");
    return iced ? wentTheIcingWay(facts, played) : Facts.of(facts);
  }

  /**
   * The facts of a release that was not iced, or of which nobody knows.
   *
   * @param release the release
   */
  Facts notIced(Move release) {
    Map<FactKey, String> facts = atRelease(release);
    Move next = play.next(release);
    if (next.ends() || !next.touch()) {
      return Facts.of(facts);
    }
    String team = release.team().orElseThrow();
    OptionalDouble x = next.x(team);
    if (x.isEmpty()) {
      facts.put(FactKey.TOUCH, "unknown");
      return Facts.of(facts);
    }
    boolean past = x.getAsDouble() > play.rink(release).goalLine();
    boolean own = next.by(team);
    if (past) {
      facts.put(FactKey.PUCK, "crossed");
      facts.put(FactKey.RACE, own ? "attacker" : "defender");
    } else if (own) {
      facts.put(
          FactKey.TOUCH,
          play.rink(release).shortOfCenter(x.getAsDouble()) > 0
              ? "teammate-short-of-center"
              : "teammate-past-center");
      facts.put(FactKey.PUCK, "short-of-goal-line");
    } else {
      facts.put(FactKey.TOUCH, "opponent-before-line");
    }
    return Facts.of(facts);
  }

  private Map<FactKey, String> atRelease(Move release) {
    Map<FactKey, String> facts = new EnumMap<>(FactKey.class);
    facts.put(FactKey.FROM, from(play.rink(release), release.x()));
    facts.put(FactKey.STRENGTH, strength(release.strength()));
    facts.put(FactKey.FACE_OFF, faceOff(release));
    if (release.kind() == Move.Kind.MISSED_PASS) {
      // The sheet says where a pass was meant to go, not whether it could have been reached.
      facts.put(FactKey.PASS, "unknown");
    }
    return facts;
  }

  private static String from(Rink rink, OptionalDouble place) {
    return place.isPresent() ? Facts.from(rink, place.getAsDouble()) : "unknown";
  }

  private static String strength(String label) {
    if (label.equals(Strength.SHORTHANDED.label())) {
      return "shorthanded";
    }
    if (label.equals(Strength.POWER_PLAY.label())) {
      return "power-play";
    }
    return label.equals(Strength.UNKNOWN.label()) ? "unknown" : "even";
  }

  /** Whoever won the draw and let the puck go with no row between may have done both in one. */
  private String faceOff(Move release) {
    if (release.index() == 0) {
      return "no";
    }
    Move before = play.moves().get(release.index() - 1);
    boolean fromDraw = before.samePlay(release) && before.kind() == Move.Kind.FACEOFF;
    if (!fromDraw) {
      return "no";
    }
    Optional<String> winner = before.player();
    return winner.isEmpty() || winner.equals(release.player()) ? "unknown" : "later";
  }
}
