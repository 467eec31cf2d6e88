package twostrides.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import twostrides.demo.Words.Action;
import twostrides.rink.Place;

/** Writes a game as a play sheet: the columns and words of docs/sheets.md, without a map. */
final class SheetCsv {
  static final List<String> HEADER =
      List.of(
          "game",
          "date",
          "home",
          "away",
          "period",
          "clock",
          "team",
          "player",
          "other_player",
          "action",
          "outcome",
          "x_m",
          "y_m",
          "to_x_m",
          "to_y_m",
          "skaters_for",
          "skaters_against",
          "on_ice",
          "opponent_on_ice",
          "net_for_empty",
          "net_against_empty",
          "stoppage",
          "penalty",
          "pressure",
          "own_skaters",
          "opponent_skaters",
          "video_s");

  /** The only kind of penalty in this league. */
  private static final String MINOR = "minor";

  private SheetCsv() {}

  static String text(DemoGame game) {
    List<List<String>> lines = new ArrayList<>();
    for (SheetRow row : game.rows()) {
      lines.add(cells(game, row));
    }
    return Csv.text(HEADER, lines);
  }

  private static List<String> cells(DemoGame game, SheetRow row) {
    Optional<SheetRow.OnIce> ice = row.ice();
    boolean touch = row.pressure().isPresent();
    Optional<Seen> seen = row.seen().filter(s -> touch && game.source().places());
    return List.of(
        game.id(),
        game.date().toString(),
        game.team(Side.HOME).name(),
        game.team(Side.AWAY).name(),
        Integer.toString(row.period()),
        clock(row.elapsed()),
        text(row.side(), s -> game.team(s).name()),
        text(row.skater(), Skater::label),
        text(row.other(), Skater::label),
        Words.word(row.action()),
        text(row.outcome(), Words::word),
        text(row.at(), SheetCsv::x),
        text(row.at(), SheetCsv::y),
        text(row.to(), SheetCsv::x),
        text(row.to(), SheetCsv::y),
        text(ice, i -> Integer.toString(i.skatersFor())),
        text(ice, i -> Integer.toString(i.skatersAgainst())),
        text(ice, SheetRow.OnIce::own),
        text(ice, SheetRow.OnIce::opponents),
        text(ice, i -> yesNo(i.netForEmpty())),
        text(ice, i -> yesNo(i.netAgainstEmpty())),
        text(row.stoppage(), Words::word),
        row.action() == Action.PENALTY ? MINOR : "",
        text(row.pressure().filter(p -> game.source().pressure()), Pressure::word),
        text(seen, s -> skaters(s.own())),
        text(seen, s -> skaters(s.opponents())),
        Csv.number(row.video(), 1));
  }

  /** Places and speeds, to a tenth. */
  private static String skaters(List<Seen.Spot> skaters) {
    StringBuilder text = new StringBuilder();
    for (Seen.Spot s : skaters) {
      text.append(text.isEmpty() ? "" : "; ");
      text.append(Csv.number(s.x(), 1)).append(' ').append(Csv.number(s.y(), 1)).append(' ');
      text.append(Csv.number(s.vx(), 1)).append(' ').append(Csv.number(s.vy(), 1));
    }
    return text.toString();
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

  private static <T> String text(Optional<T> value, Function<T, String> word) {
    return value.map(word).orElse("");
  }
}
