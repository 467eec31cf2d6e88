package twostrides.exits;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import twostrides.game.StopReason;
import twostrides.rink.Rink;
import twostrides.rulebook.Judge;
import twostrides.rulebook.Ruling;

/**
 * Why a draw is where it is. A written reason wins; without one, icing is inferred only when
 * release, manpower, spot and time all fit, and whatever does not fit is named in the reason.
 */
final class StopFinder {

  /**
   * How far a draw's place may be written from the spot: a player's stick and the sheet's step,
   * metres. Assumed.
   */
  private static final double SPOT_SLACK = 1.5;

  private final Play play;
  private final SheetFacts facts;

  StopFinder(Play play) {
    this.play = play;
    this.facts = new SheetFacts(play);
  }

  /**
   * A cause with its reason.
   *
   * @param cause the cause
   * @param reason why, in words
   */
  record Finding(RestartCause cause, String reason) {
    boolean icing() {
      return cause == RestartCause.ICING_WRITTEN || cause == RestartCause.ICING_INFERRED;
    }
  }

  /**
   * The reason written between the last touch and a draw, or between a touch and the period's end.
   */
  Optional<Move> writtenStop(Move faceoffOrEnd) {
    Optional<Move> found = Optional.empty();
    for (int i = faceoffOrEnd.index() - 1; i >= 0; i--) {
      Move m = play.moves().get(i);
      if (!m.samePlay(faceoffOrEnd) || m.kind() != Move.Kind.STOP) {
        break;
      }
      found = Optional.of(m);
    }
    return found;
  }

  /**
   * The cause of a draw in a team's own zone.
   *
   * @param team whose zone it is
   * @param faceoff the draw
   */
  Finding cause(String team, Move faceoff) {
    Optional<Move> stop = writtenStop(faceoff);
    if (stop.isPresent()) {
      return written(team, stop.get());
    }
    OptionalInt lastIndex = play.lastControlBefore(faceoff);
    if (lastIndex.isEmpty()) {
      return unknown("no touch is written since the draw before");
    }
    Move last = play.moves().get(lastIndex.getAsInt());
    if (!last.by(team)) {
      return unknown(
          "the opponent had the puck last, and the sheet does not say what stopped play");
    }
    return last.release()
        ? inferred(last, faceoff)
        : unknown("the last touch was no release, and the sheet does not say what stopped play");
  }

  private static Finding written(String team, Move stop) {
    String reason = stop.stop().orElse("other");
    if (reason.equals(StopReason.PENALTY.word())) {
      return new Finding(RestartCause.PENALTY, "the sheet says penalty");
    }
    if (!reason.equals(StopReason.ICING.word())) {
      return new Finding(RestartCause.OTHER, "the sheet says " + reason.replace('_', ' '));
    }
    return stop.team().isEmpty() || stop.by(team)
        ? new Finding(RestartCause.ICING_WRITTEN, "the sheet says icing")
        : new Finding(RestartCause.OTHER, "the sheet says icing against the other team");
  }

  private Finding inferred(Move release, Move faceoff) {
    if (release.x().isEmpty()) {
      return unknown("the sheet has no place for the release");
    }
    for (int i = release.index() + 1; i < faceoff.index(); i++) {
      if (play.moves().get(i).touch()) {
        return unknown("the puck was touched after the release");
      }
    }
    double shortBy = play.rink(release).shortOfCenter(release.x().getAsDouble());
    // A draw after the puck went the length says that nothing was waved off.
    Ruling ruling = Judge.judge(play.settings().book(), facts.iced(release));
    if (ruling instanceof Ruling.NotYetDecided open) {
      return unknown(
          "released short of center; it would be icing, " + open.open().get(0).settles());
    }
    if (!(ruling instanceof Ruling.Icing)) {
      return unknown("no icing: " + ruling.reason().text());
    }
    if (!onEndSpot(faceoff)) {
      return unknown("the draw is not at an end-zone spot");
    }
    double gap = faceoff.elapsed() - release.elapsed();
    if (!play.timeToGoTheLength(release, faceoff)) {
      return unknown(
          String.format(
              Locale.ROOT,
              "a puck cannot have gone %.0f m to the goal line in %s s",
              play.toFarGoalLine(release),
              seconds(gap)));
    }
    return new Finding(
        RestartCause.ICING_INFERRED,
        String.format(
            Locale.ROOT,
            "let go %.1f m short of center, not exempt, and %s s fit the %.0f m to the goal line",
            shortBy,
            seconds(gap),
            play.toFarGoalLine(release)));
  }

  /** Seconds as a sheet would write them: no more decimals than are needed, at most one. */
  private static String seconds(double s) {
    return BigDecimal.valueOf(s)
        .setScale(1, RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }

  private boolean onEndSpot(Move faceoff) {
    Rink rink = play.rink(faceoff);
    double slack = SPOT_SLACK + play.game(faceoff).placeStep();
    boolean along = Math.abs(Math.abs(faceoff.x().orElse(0)) - rink.endSpotX()) <= slack;
    return along
        && (faceoff.y().isEmpty()
            || Math.abs(Math.abs(faceoff.y().getAsDouble()) - rink.endSpotY()) <= slack);
  }

  private static Finding unknown(String reason) {
    return new Finding(RestartCause.UNKNOWN, reason);
  }
}
