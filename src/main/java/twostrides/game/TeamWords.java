package twostrides.game;

import java.util.Optional;
import twostrides.sheet.SheetMap;

/**
 * The words that stand for the two teams where a sheet writes a side instead of a name.
 *
 * @param home the word for the home team
 * @param away the word for the away team
 */
record TeamWords(Optional<String> home, Optional<String> away) {

  /** The words of a map. */
  static TeamWords of(SheetMap map) {
    return new TeamWords(map.text("team", SheetForms.HOME), map.text("team", SheetForms.AWAY));
  }

  /**
   * The team of a row by its name; empty when the row names none, or its side has no name.
   *
   * @param in the row
   * @param needed whether the row has to name a team
   */
  Optional<String> team(RowReader in, boolean needed) {
    Optional<String> written =
        needed
            ? in.requiredText(SheetForms.TEAM, "the acting team's name")
            : in.text(SheetForms.TEAM);
    if (written.isEmpty()) {
      return written;
    }
    if (written.equals(home)) {
      return named(in, SheetForms.HOME);
    }
    return written.equals(away) ? named(in, SheetForms.AWAY) : written;
  }

  private static Optional<String> named(RowReader in, String side) {
    return in.requiredText(side, "the name of the " + side + " team, as team writes the side");
  }
}
