package twostrides.game;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import twostrides.sheet.SheetMap;

/**
 * The teams' names as a sheet writes them: a team that differs from one before it in capitals,
 * blanks or composed letters alone is that team, and a side may stand for a name.
 *
 * @param home the word for the home team, where a sheet writes sides
 * @param away the word for the away team
 * @param spellings the first spelling of each team in the sheet so far; grows with the reading
 */
record TeamWords(Optional<String> home, Optional<String> away, Map<String, String> spellings) {

  /** The words of a map. */
  static TeamWords of(SheetMap map, Map<String, String> spellings) {
    return new TeamWords(
        map.text("team", SheetForms.HOME), map.text("team", SheetForms.AWAY), spellings);
  }

  /** What all spellings of a team have in common. */
  static String key(String written) {
    return Normalizer.normalize(written, Normalizer.Form.NFKC)
        .toLowerCase(Locale.ROOT)
        .replaceAll("\\s+", "");
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
    if (written.isPresent() && written.equals(home)) {
      return named(in, SheetForms.HOME);
    }
    return written.isPresent() && written.equals(away)
        ? named(in, SheetForms.AWAY)
        : name(in, SheetForms.TEAM);
  }

  private Optional<String> named(RowReader in, String side) {
    in.requiredText(side, "the name of the " + side + " team, as team writes the side");
    return name(in, side);
  }

  /**
   * A team's name in the spelling that the sheet had first.
   *
   * @param in the row
   * @param column our column
   */
  Optional<String> name(RowReader in, String column) {
    Optional<String> written = in.text(column);
    Optional<String> first = written.map(this::first);
    if (!first.equals(written)) {
      in.mends().add(Mend.team(written.get(), first.get()));
    }
    return first;
  }

  private String first(String written) {
    String known = spellings.get(written);
    if (known == null) {
      known = spellings.computeIfAbsent(key(written), k -> written);
      spellings.put(written, known);
    }
    return known;
  }
}
