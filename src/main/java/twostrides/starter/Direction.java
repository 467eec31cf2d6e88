package twostrides.starter;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Whose attack is toward larger x, by the shots: every way of seeing them is tried.
 *
 * @param shots shots with a place and a team
 * @param actingTeam share of them ahead of center when x is seen by the acting team
 * @param homeTeam the same when it is seen by the home team in all periods
 * @param fixed the same when teams change ends, each game turned as it fits better
 */
record Direction(int shots, double actingTeam, double homeTeam, double fixed) {

  /** Shots that it takes to tell, and the share that must agree. Assumed, as in the reading. */
  private static final int LEAST_SHOTS = 10;

  private static final double LEAST_SHARE = 0.75;

  /** What the shots say. */
  enum View {
    ACTING_TEAM("acting_team"),
    HOME_TEAM("home_team"),
    /** The home team attacks toward smaller x in every period. */
    AWAY_TEAM("rink_fixed"),
    RINK_FIXED("rink_fixed"),
    UNKNOWN("acting_team");

    private final String word;

    View(String word) {
      this.word = word;
    }

    /** The map's word for it. */
    String word() {
      return word;
    }
  }

  /**
   * Tries every way.
   *
   * @param sheet the sheet
   * @param found its columns
   * @param words what its rows are
   * @param centerX center ice in the sheet's numbers
   */
  static Direction of(UnknownSheet sheet, Found found, Words words, double centerX) {
    int shots = 0;
    int acting = 0;
    int home = 0;
    Map<String, int[]> byGame = new HashMap<>();
    for (List<String> row : sheet.rows()) {
      String x = found.cell(Found.X, row);
      if (!words.actionIn(row).equals(Optional.of("shot")) || x.isEmpty()) {
        continue;
      }
      boolean ahead = Column.number(x) > centerX;
      boolean isHome = isHome(found, row);
      boolean odd = !found.cell(Found.PERIOD, row).matches("\\d*[02468]");
      shots++;
      acting += ahead ? 1 : 0;
      home += ahead == isHome ? 1 : 0;
      int[] game = byGame.computeIfAbsent(found.game(row), g -> new int[2]);
      game[(ahead == isHome) == odd ? 0 : 1]++;
    }
    int fixed = byGame.values().stream().mapToInt(g -> Math.max(g[0], g[1])).sum();
    double n = Math.max(shots, 1);
    return new Direction(shots, acting / n, home / n, fixed / n);
  }

  private static boolean isHome(Found found, List<String> row) {
    String team = found.cell(Found.TEAM, row);
    return team.equalsIgnoreCase("home")
        || found.cell("venue", row).equalsIgnoreCase("home")
        || team.equals(found.cell(Found.HOME, row));
  }

  View view() {
    if (shots < LEAST_SHOTS) {
      return View.UNKNOWN;
    }
    if (actingTeam >= LEAST_SHARE) {
      return View.ACTING_TEAM;
    }
    if (homeTeam >= LEAST_SHARE) {
      return View.HOME_TEAM;
    }
    if (homeTeam <= 1 - LEAST_SHARE) {
      return View.AWAY_TEAM;
    }
    return fixed >= LEAST_SHARE ? View.RINK_FIXED : View.UNKNOWN;
  }

  String says() {
    return String.format(
        Locale.ROOT,
        "%d shots. Ahead of center: %.0f %% seen by the acting team, %.0f %% by the home team, %.0f %%"
            + " when teams change ends.",
        shots,
        100 * actingTeam,
        100 * homeTeam,
        100 * fixed);
  }
}
