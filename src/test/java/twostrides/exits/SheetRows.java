package twostrides.exits;

import java.util.List;
import twostrides.game.OnIce;
import twostrides.game.PlayRow;

/** Rows of play sheets that say less of skaters than they did. */
final class SheetRows {

  private SheetRows() {}

  static PlayRow withoutSkaters(PlayRow row) {
    return with(row, List.of());
  }

  static PlayRow withoutSpeeds(PlayRow row) {
    return with(
        row, row.skaters().stream().map(s -> new OnIce(s.own(), s.place(), false, 0, 0)).toList());
  }

  private static PlayRow with(PlayRow r, List<OnIce> skaters) {
    return new PlayRow(
        r.period(),
        r.elapsed(),
        r.team(),
        r.player(),
        r.otherPlayer(),
        r.action(),
        r.outcome(),
        r.place(),
        r.target(),
        r.zone(),
        r.toZone(),
        r.manpower(),
        r.stop(),
        r.penalty(),
        r.penaltyMinutes(),
        r.servedBy(),
        r.pressure(),
        skaters,
        r.ownOnIce(),
        r.opponentOnIce(),
        r.video(),
        r.sheet(),
        r.line(),
        r.second());
  }
}
