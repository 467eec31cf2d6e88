package twostrides.demo;

import java.util.List;
import java.util.Optional;
import twostrides.demo.Words.Action;
import twostrides.demo.Words.Outcome;
import twostrides.demo.Words.Stoppage;
import twostrides.rink.Place;

/**
 * One row of a play sheet, as the person who logs the game writes it: when and who at once, the
 * rest as it becomes known.
 */
final class SheetRow {
  /**
   * Skaters (an extra attacker included) and empty nets, seen by the acting team.
   *
   * @param own its skaters
   * @param opponents those of the other team
   * @param netForEmpty whether its goalkeeper has left
   * @param netAgainstEmpty whether that of the other team has
   */
  record OnIce(
      List<Skater> own, List<Skater> opponents, boolean netForEmpty, boolean netAgainstEmpty) {}

  /** From 1. */
  final int period;

  /** Whole seconds of play since the period began. */
  final int elapsed;

  /** Second of the video. */
  final double video;

  /** What was done. */
  final Action action;

  /** The acting team, empty for a stoppage called on nobody. */
  final Optional<Side> side;

  /** Skaters and nets, for the acting team. */
  final Optional<OnIce> ice;

  /** Who acts. */
  Optional<Skater> skater = Optional.empty();

  /** Who was to receive, or who lost the face-off. */
  Optional<Skater> other = Optional.empty();

  /** How it went. */
  Optional<Outcome> outcome = Optional.empty();

  /** Place, metres in the acting team's frame. */
  Optional<Place> at = Optional.empty();

  /** Where a pass was meant to go, same frame. */
  Optional<Place> to = Optional.empty();

  /** What stopped play. */
  Optional<Stoppage> stoppage = Optional.empty();

  /** How close the nearest checker was. */
  Optional<Pressure> pressure = Optional.empty();

  /** Where the skaters were, behind center. */
  Optional<Seen> seen = Optional.empty();

  private SheetRow(GameClock clock, Action action, Optional<Side> side, Optional<OnIce> ice) {
    period = clock.period();
    elapsed = clock.shown();
    video = clock.video();
    this.action = action;
    this.side = side;
    this.ice = ice;
  }

  /** A row of somebody who acts somewhere. */
  static SheetRow of(GameClock clock, Action action, Carrier who, OnIce ice) {
    SheetRow row = new SheetRow(clock, action, Optional.of(who.side()), Optional.of(ice));
    row.skater = Optional.of(who.skater());
    row.at = Optional.of(who.at());
    row.pressure = Optional.of(who.pressure());
    return row;
  }

  /** A stoppage. */
  static SheetRow stoppage(
      GameClock clock, Stoppage word, Optional<Side> calledOn, Optional<OnIce> ice) {
    SheetRow row = new SheetRow(clock, Action.STOPPAGE, calledOn, ice);
    row.stoppage = Optional.of(word);
    return row;
  }

  SheetRow went(Outcome how) {
    outcome = Optional.of(how);
    return this;
  }

  SheetRow toward(Target receiver) {
    other = Optional.of(receiver.skater());
    to = Optional.of(receiver.place());
    return this;
  }

  SheetRow against(Skater loser) {
    other = Optional.of(loser);
    return this;
  }

  /** Called on somebody, wherever he stood. */
  SheetRow noPlace() {
    at = Optional.empty();
    return this;
  }

  /** Without a pressure: face-offs, blocks, penalties and lines crossed are no touches. */
  SheetRow noTouch() {
    pressure = Optional.empty();
    return this;
  }
}
