package twostrides.sanity;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import twostrides.game.Game;

/**
 * Who is at home: "Herons at Wolves", or with an @, in a game's id or its sheet's name says the
 * same as the columns.
 */
final class AtHome {

  private static final String GAP = "[ ._-]";

  private static final Pattern AT =
      Pattern.compile(GAP + "+at" + GAP + "+|" + GAP + "*@" + GAP + "*", Pattern.CASE_INSENSITIVE);

  private static final Pattern GAPS = Pattern.compile(GAP + "+");

  private AtHome() {}

  /** What is odd about a game's name. */
  static Optional<Doubt> doubt(Game g, String sheet) {
    return List.of(g.id(), sheet).stream()
        .filter(n -> g.venueOf(g.home()).isPresent() && turned(n, g.home(), g.away()))
        .findFirst()
        .map(
            n ->
                Doubt.warn(
                    sheet,
                    g.home() + " at home by the columns, and away by the name \"" + n + "\"",
                    "the team after \"at\" at home",
                    "Exchange the columns of home and away (of team and opponent, where the sheet has"
                        + " those) under [columns] of the sheet map; if the columns are right, the name"
                        + " is wrong."));
  }

  /** Whether a name has the home team before its "at", and the other one after it. */
  private static boolean turned(String name, String home, String away) {
    String[] sides = AT.split(name, -1);
    return sides.length == 2 && only(sides[0], home, away) && only(sides[1], away, home);
  }

  /**
   * Whether a text has a word of one team's name that the other's lacks, and none of the other's.
   */
  private static boolean only(String text, String team, String other) {
    return names(text, team, other) && !names(text, other, team);
  }

  private static boolean names(String text, String team, String other) {
    Set<String> own = words(team);
    own.removeAll(words(other));
    own.retainAll(words(text));
    return !own.isEmpty();
  }

  private static Set<String> words(String text) {
    return new HashSet<>(List.of(GAPS.split(text.toLowerCase(Locale.ROOT))));
  }
}
