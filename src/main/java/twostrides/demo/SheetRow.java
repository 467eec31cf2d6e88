package twostrides.demo;

import java.util.Optional;
import twostrides.demo.Words.Action;
import twostrides.demo.Words.Outcome;
import twostrides.demo.Words.Stoppage;
import twostrides.rink.Place;

/**
 * One row of a play sheet, as the person who logs the game writes it.
 *
 * @param period from 1
 * @param elapsed whole seconds of play since the period began
 * @param video second of the video
 * @param side the acting team, empty for a stoppage called on nobody
 * @param skater who acts
 * @param other who was to receive, or who lost the draw
 * @param action what was done
 * @param outcome how it went
 * @param at place, metres in the acting team's frame
 * @param to where a pass was meant to go, same frame
 * @param stoppage what stopped play
 * @param pressure how close the nearest checker was
 * @param ice skaters and nets, for the acting team
 * @param seen where the skaters were, behind center
 */
record SheetRow(
    int period,
    int elapsed,
    double video,
    Optional<Side> side,
    Optional<Skater> skater,
    Optional<Skater> other,
    Action action,
    Optional<Outcome> outcome,
    Optional<Place> at,
    Optional<Place> to,
    Optional<Stoppage> stoppage,
    Optional<Pressure> pressure,
    Optional<OnIce> ice,
    Optional<Seen> seen) {

  /**
   * Skaters (an extra attacker included) with their numbers, and empty nets, seen by the acting
   * team.
   */
  record OnIce(
      String own,
      String opponents,
      int skatersFor,
      int skatersAgainst,
      boolean netForEmpty,
      boolean netAgainstEmpty) {}

  SheetRow {
    if (action != Action.STOPPAGE && side.isEmpty()) {
      throw new IllegalArgumentException("only a stoppage can do without a team");
    }
  }

  /** A row of somebody who acts somewhere. */
  static SheetRow of(GameClock clock, Action action, Carrier who, OnIce ice) {
    return new SheetRow(
        clock.period(),
        clock.shown(),
        clock.video(),
        Optional.of(who.side()),
        Optional.of(who.skater()),
        Optional.empty(),
        action,
        Optional.empty(),
        Optional.of(who.at()),
        Optional.empty(),
        Optional.empty(),
        Optional.of(who.pressure()),
        Optional.of(ice),
        Optional.empty());
  }

  /** A stoppage. */
  static SheetRow stoppage(
      GameClock clock, Stoppage word, Optional<Side> calledOn, Optional<OnIce> ice) {
    return new SheetRow(
        clock.period(),
        clock.shown(),
        clock.video(),
        calledOn,
        Optional.empty(),
        Optional.empty(),
        Action.STOPPAGE,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(word),
        Optional.empty(),
        ice,
        Optional.empty());
  }

  SheetRow went(Outcome how) {
    return with(other, Optional.of(how), at, to, pressure);
  }

  SheetRow toward(Skater receiver, Place target) {
    return with(Optional.of(receiver), outcome, at, Optional.of(target), pressure);
  }

  SheetRow against(Skater loser) {
    return with(Optional.of(loser), outcome, at, to, pressure);
  }

  /** With the places of the skaters. */
  SheetRow seeing(Seen skaters) {
    return new SheetRow(
        period,
        elapsed,
        video,
        side,
        skater,
        other,
        action,
        outcome,
        at,
        to,
        stoppage,
        pressure,
        ice,
        Optional.of(skaters));
  }

  /** Called on somebody, wherever he stood. */
  SheetRow noPlace() {
    return with(other, outcome, Optional.empty(), to, pressure);
  }

  /** Without a pressure: draws, blocks, penalties and lines crossed are no touches. */
  SheetRow noTouch() {
    return with(other, outcome, at, to, Optional.empty());
  }

  private SheetRow with(
      Optional<Skater> newOther,
      Optional<Outcome> newOutcome,
      Optional<Place> newAt,
      Optional<Place> newTo,
      Optional<Pressure> newPressure) {
    return new SheetRow(
        period,
        elapsed,
        video,
        side,
        skater,
        newOther,
        action,
        newOutcome,
        newAt,
        newTo,
        stoppage,
        newPressure,
        ice,
        seen);
  }
}
