package twostrides.starter;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The part of the map that says where our columns come from. */
final class ColumnText {
  private static final List<String> COLUMNS =
      List.of(
          "game",
          "date",
          "home",
          "away",
          "opponent",
          "venue",
          "period",
          "clock",
          "team",
          "player",
          "other_player",
          "x_m",
          "y_m",
          "to_x_m",
          "to_y_m",
          Zones.ZONE,
          Zones.TO_ZONE,
          "skaters_home",
          "skaters_away",
          "skaters_for",
          "skaters_against",
          "net_home_empty",
          "net_away_empty",
          "video_s");

  private static final List<String> REQUIRED = List.of("period", "clock", "team");

  private final UnknownSheet sheet;
  private final Found found;
  private final Targets targets;
  private final StarterText out;

  ColumnText(UnknownSheet sheet, Found found, Targets targets, StarterText out) {
    this.sheet = sheet;
    this.found = found;
    this.targets = targets;
    this.out = out;
  }

  void write() {
    out.heading("[columns]");
    game();
    for (String ours : Stream.concat(COLUMNS.stream().skip(1), Tags.columns()).toList()) {
      found.get(ours).ifPresent(c -> column(ours, c));
      if (found.get(ours).isEmpty() && REQUIRED.contains(ours)) {
        out.question("No column looks like " + ours + ", which is needed. Name it:");
        out.note(ours + " = \"\"");
      }
    }
    found.manpower().ifPresent(this::manpower);
  }

  private void column(String ours, Column c) {
    boolean target = ours.equals("to_x_m") || ours.equals("to_y_m");
    if (target && targets.byRule()) {
      return;
    }
    if (c.header().equalsIgnoreCase(ours)) {
      out.note(c.header() + " is called as ours: " + c.shown());
      return;
    }
    out.note(c.header() + ": " + c.shown());
    out.line(ours + " = " + StarterText.quoted(c.header()));
  }

  /** A game's id: a column, or date and teams where a file holds several games. */
  private void game() {
    Optional<Column> id = found.get("game");
    long games = sheet.rows().stream().map(found::game).distinct().count();
    boolean named = found.get("home").isPresent() && found.get("away").isPresent();
    if (id.isPresent() && id.get().words().size() > 0) {
      column("game", id.get());
    } else if (games > 1 && named && found.get("date").isPresent()) {
      out.note(games + " games in this file, told apart by date and teams.");
      out.line(
          "game = { text = \"{"
              + found.get("date").orElseThrow().header()
              + "} {"
              + found.get("away").orElseThrow().header()
              + "} at {"
              + found.get("home").orElseThrow().header()
              + "}\" }");
    } else {
      out.note("One game; the file's name is its id.");
    }
  }

  private void manpower(Column c) {
    Manpower order = Manpower.of(sheet, found, c);
    out.note(c.header() + ": " + c.shown());
    out.note(order.says());
    if (!order.sure()) {
      out.question("Whose skaters come first, those of the acting team or those of home?");
    }
    order.cells(false).forEach((ours, source) -> out.line(ours + " = " + source));
  }
}
