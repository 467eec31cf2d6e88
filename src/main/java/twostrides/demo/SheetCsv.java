package twostrides.demo;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import twostrides.demo.Words.Action;
import twostrides.rink.Place;

/** Writes a game as a play sheet: the columns and words of docs/sheets.md, without a map. */
final class SheetCsv {
  /** The only kind of penalty in this league. */
  private static final String MINOR = "minor";

  private SheetCsv() {}

  static String text(DemoGame game) {
    return new Csv<SheetRow>()
        .column("game", row -> game.id())
        .column("date", row -> game.fixture().date().toString())
        .column("home", row -> game.team(Side.HOME).name())
        .column("away", row -> game.team(Side.AWAY).name())
        .column("period", row -> Integer.toString(row.period))
        .column("clock", row -> clock(row.elapsed))
        .column("team", row -> row.side, side -> game.team(side).name())
        .column("player", row -> row.skater, Skater::label)
        .column("other_player", row -> row.other, Skater::label)
        .column("action", row -> Words.word(row.action))
        .column("outcome", row -> row.outcome, Words::word)
        .column("x_m", row -> row.at, SheetCsv::x)
        .column("y_m", row -> row.at, SheetCsv::y)
        .column("to_x_m", row -> row.to, SheetCsv::x)
        .column("to_y_m", row -> row.to, SheetCsv::y)
        .column("skaters_for", row -> row.ice, ice -> Integer.toString(ice.own().size()))
        .column("skaters_against", row -> row.ice, ice -> Integer.toString(ice.opponents().size()))
        .column("on_ice", row -> row.ice, ice -> numbers(ice.own()))
        .column("opponent_on_ice", row -> row.ice, ice -> numbers(ice.opponents()))
        .column("net_for_empty", row -> row.ice, ice -> yesNo(ice.netForEmpty()))
        .column("net_against_empty", row -> row.ice, ice -> yesNo(ice.netAgainstEmpty()))
        .column("stoppage", row -> row.stoppage, Words::word)
        .column("penalty", row -> row.action == Action.PENALTY ? MINOR : "")
        .column("pressure", row -> row.pressure.filter(p -> game.source().pressure()), Words::word)
        .column("own_skaters", row -> tracked(game, row), seen -> skaters(seen.own()))
        .column("opponent_skaters", row -> tracked(game, row), seen -> skaters(seen.opponents()))
        .column("video_s", row -> Csv.number(row.video, 1))
        .text(game.rows());
  }

  private static Optional<Seen> tracked(DemoGame game, SheetRow row) {
    return row.seen.filter(seen -> row.pressure.isPresent() && game.source().places());
  }

  private static String numbers(List<Skater> skaters) {
    return skaters.stream()
        .map(Skater::number)
        .sorted()
        .map(String::valueOf)
        .collect(Collectors.joining("; "));
  }

  /** Places and speeds, to a tenth. */
  private static String skaters(List<Seen.Spot> skaters) {
    return skaters.stream()
        .map(
            s ->
                DoubleStream.of(s.x(), s.y(), s.vx(), s.vy())
                    .mapToObj(value -> Csv.number(value, 1))
                    .collect(Collectors.joining(" ")))
        .collect(Collectors.joining("; "));
  }

  /** Time left, minutes and seconds. */
  static String clock(int elapsed) {
    int left = GameClock.PERIOD_S - elapsed;
    return String.format(Locale.ROOT, "%02d:%02d", left / 60, left % 60);
  }

  private static String x(Place at) {
    return Csv.number(at.x(), 1);
  }

  private static String y(Place at) {
    return Csv.number(at.y(), 1);
  }

  private static String yesNo(boolean value) {
    return value ? "yes" : "no";
  }
}
