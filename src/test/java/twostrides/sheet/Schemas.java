package twostrides.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import twostrides.sheet.SettingSpec.Kind;

/** The two kinds of sheet that docs/sheets.md describes, declared for the tests of this package. */
final class Schemas {
  static final SheetSchema PLAY =
      new SheetSchema(
          "play",
          columns(
              Set.of("period", "clock", "action"),
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
              "action",
              "outcome",
              "x_m",
              "y_m",
              "to_x_m",
              "to_y_m",
              "skaters_for",
              "skaters_against",
              "net_for_empty",
              "net_against_empty",
              "stoppage",
              "penalty",
              "pressure",
              "video_s",
              "note"),
          settings());

  static final SheetSchema TAG =
      new SheetSchema(
          "tag",
          columns(
              Set.of("period", "clock", "team", "way_out"),
              "game",
              "date",
              "home",
              "away",
              "opponent",
              "period",
              "clock",
              "team",
              "player",
              "way_out",
              "at_center",
              "strength",
              "net_empty",
              "x_m",
              "y_m",
              "ended",
              "pressure",
              "video_s",
              "note"),
          settings());

  static final List<SheetSchema> ALL = List.of(PLAY, TAG);

  private Schemas() {}

  private static List<ColumnSpec> columns(Set<String> required, String... names) {
    List<ColumnSpec> columns = new ArrayList<>();
    for (String name : names) {
      String expects = name.equals("period") ? "a whole number from 1 to 20" : "";
      columns.add(new ColumnSpec(name, required.contains(name), expects));
    }
    return columns;
  }

  private static List<SettingSpec> settings() {
    return List.of(
        new SettingSpec("clock", "direction", Kind.TEXT, Set.of("down", "up"), "how it counts"),
        SettingSpec.number("clock", "period_length_s", 60, 7200, "seconds"),
        new SettingSpec("clock", "step_s", Kind.NUMBER, Set.of(), "smallest step, seconds"),
        new SettingSpec("place", "unit", Kind.TEXT, Set.of("m", "ft"), "unit of places"),
        new SettingSpec(
            "place", "view", Kind.TEXT, Set.of("acting_team", "home_team", "rink_fixed"), "view"),
        new SettingSpec("place", "center_x", Kind.NUMBER, Set.of(), "center ice"),
        new SettingSpec("place", "center_y", Kind.NUMBER, Set.of(), "center ice"),
        new SettingSpec("place", "y_left", Kind.TEXT, Set.of("up", "down"), "y to the left"),
        new SettingSpec("place", "step", Kind.NUMBER, Set.of(), "smallest step"),
        new SettingSpec("place", "home_attacks_plus_x_in", Kind.WHOLE_NUMBERS, Set.of(), "periods"),
        new SettingSpec("rink", "name", Kind.TEXT, Set.of("nhl", "iihf"), "rink"),
        new SettingSpec("date", "form", Kind.DATE_FORM, Set.of(), "form of dates"),
        new SettingSpec("test", "flag", Kind.FLAG, Set.of(), "a flag"));
  }
}
