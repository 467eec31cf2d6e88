package twostrides.game;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import twostrides.rink.Place;
import twostrides.rink.Zone;
import twostrides.rulebook.penalty.PenaltyKind;

/**
 * One row of a play sheet in the program's frame and clock.
 *
 * @param period period, from 1
 * @param elapsed seconds of play since the period began
 * @param team the acting team, empty only for a stoppage that is called on nobody
 * @param player who acts
 * @param otherPlayer who was to receive, or who lost the face-off
 * @param action what was done
 * @param outcome how it went
 * @param place where, metres, acting team's frame
 * @param target where a pass was meant to go, same frame
 * @param zone in which zone, acting team's frame, where the row says a zone instead of a place
 * @param toZone in which zone a pass was meant to go
 * @param manpower who was on the ice
 * @param stop why play stopped, for a stoppage
 * @param penalty what was called, for a penalty
 * @param penaltyMinutes minutes of the penalty, where the sheet says more than its kind
 * @param servedBy who sits for the penalty, where that is somebody else; {@code nobody} for an
 *     empty box
 * @param pressure how close the nearest checker was
 * @param skaters skaters whose places the row writes down, in its order
 * @param ownOnIce the acting team's skaters on the ice, as the sheet writes them; empty when it
 *     does not say
 * @param opponentOnIce the other team's skaters on the ice
 * @param video second of the video
 * @param sheet file name
 * @param line line of the sheet, header included
 * @param second whether it is the second event that a row of the sheet holds
 */
public record PlayRow(
    int period,
    double elapsed,
    Optional<String> team,
    Optional<String> player,
    Optional<String> otherPlayer,
    Action action,
    Optional<Outcome> outcome,
    Optional<Place> place,
    Optional<Place> target,
    Optional<Zone> zone,
    Optional<Zone> toZone,
    Manpower manpower,
    Optional<StopReason> stop,
    Optional<PenaltyKind> penalty,
    OptionalDouble penaltyMinutes,
    Optional<String> servedBy,
    Optional<Pressure> pressure,
    List<OnIce> skaters,
    List<String> ownOnIce,
    List<String> opponentOnIce,
    OptionalDouble video,
    String sheet,
    long line,
    boolean second) {

  /** Copies the lists and rejects rows that no reader may build. */
  public PlayRow {
    skaters = List.copyOf(skaters);
    ownOnIce = List.copyOf(ownOnIce);
    opponentOnIce = List.copyOf(opponentOnIce);
    if (action.needsTeam() && team.isEmpty()) {
      throw new IllegalArgumentException("a row with action " + action.word() + " needs a team");
    }
    if (!Double.isFinite(elapsed) || elapsed < 0) {
      throw new IllegalArgumentException("elapsed must be 0 s or more, not " + elapsed);
    }
  }

  /**
   * The row with a second of the video.
   *
   * @param second the second
   */
  public PlayRow atVideo(double second) {
    return with(elapsed, skaters, OptionalDouble.of(second), false);
  }

  /** The row at another instant of its period. */
  PlayRow at(double instant) {
    return with(instant, skaters, video, false);
  }

  /** The row with its places turned half round about center ice: teams attack the other way. */
  PlayRow turned() {
    return with(elapsed, skaters.stream().map(OnIce::turned).toList(), video, true);
  }

  /** The row with other names: of the acting team's players, and of the other team's. */
  PlayRow withNames(UnaryOperator<String> own, UnaryOperator<String> opponent) {
    return new PlayRow(
        period,
        elapsed,
        team,
        player.map(own),
        otherPlayer.map(own),
        action,
        outcome,
        place,
        target,
        zone,
        toZone,
        manpower,
        stop,
        penalty,
        penaltyMinutes,
        servedBy.map(own),
        pressure,
        skaters,
        ownOnIce.stream().map(own).toList(),
        opponentOnIce.stream().map(opponent).toList(),
        video,
        sheet,
        line,
        second);
  }

  private PlayRow with(
      double instant, List<OnIce> seen, OptionalDouble videoSecond, boolean seenByOpponent) {
    return new PlayRow(
        period,
        instant,
        team,
        player,
        otherPlayer,
        action,
        outcome,
        seenByOpponent ? place.map(Place::seenByOpponent) : place,
        seenByOpponent ? target.map(Place::seenByOpponent) : target,
        seenByOpponent ? zone.map(Zone::seenByOpponent) : zone,
        seenByOpponent ? toZone.map(Zone::seenByOpponent) : toZone,
        manpower,
        stop,
        penalty,
        penaltyMinutes,
        servedBy,
        pressure,
        seen,
        ownOnIce,
        opponentOnIce,
        videoSecond,
        sheet,
        line,
        second);
  }

  /** Whether the acting team has the puck under control in this row. */
  public boolean control() {
    return action.control()
        || (action == Action.ENTRY && outcome.equals(Optional.of(Outcome.CARRIED)));
  }

  /**
   * Whether the row says no more than a release or pass before it: an entry of a puck already under
   * way.
   */
  public boolean repeats() {
    return action == Action.ENTRY && !outcome.equals(Optional.of(Outcome.CARRIED));
  }
}
