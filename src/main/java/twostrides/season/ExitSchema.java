package twostrides.season;

import twostrides.exits.AtCenter;
import twostrides.exits.Exit;

/** The table of exit attempts. */
record ExitSchema(Columns.Windows windows) {

  TableSchema<Exit> schema() {
    return new TableSchema<Exit>("exits", "one row an exit attempt")
        .part(e -> e.at().when().game(), Parts::game)
        .count("exit", "number of the attempt in its game, from 1", Exit::number)
        .count("period", "from 1; overtime goes on counting", e -> e.at().when().period())
        .number("elapsed_s", "s", "when the attempt began", Exit::began)
        .number(
            "release_elapsed_s",
            "s",
            "when the puck was let go, passed out, or settled at center",
            e -> e.at().when().elapsed())
        .text("team", "", "who leaves its zone", e -> e.at().team())
        .optText("opponent", "", "the other team", e -> e.at().opponent())
        .optText("player", "", "who took it out, or lost it inside", Exit::player)
        .optText(
            "release_player",
            "",
            "who let it go at `release_x_m`: the same but after a pass that a teammate released"
                + " short",
            e -> e.at().player())
        .text(
            "way_out",
            "carry, pass, chip, long clearance, missed pass, moved, means unknown, kept in",
            "[exits.md](exits.md)",
            e -> e.way().label())
        .optText(
            "at_center",
            "gained, released short, lost short, brought back, stopped",
            "after a carry, a pass, or a move by unknown means",
            e -> e.mark().map(AtCenter::label))
        .part(Exit::at, Parts::strengthAndNet)
        .part(e -> e.at().where(), Parts::place)
        .part(Exit::outcome, new OutcomeColumns(windows)::outcome)
        .part(Exit::at, Parts::circumstances)
        .optNumber(
            "shift_s",
            "s",
            "mean seconds of play that the team's skaters had been on the ice at the release, in"
                + " this period, where the sheet lists them",
            Exit::shift)
        .part(e -> e.at().when(), Parts::source);
  }
}
