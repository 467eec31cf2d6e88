package twostrides.game;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * What a season's sheets hold, and what the missing columns cost.
 *
 * @param present one line each: games, rows by action
 * @param costs missing column to what it costs, in the order of the documentation
 */
public record Coverage(List<String> present, Map<String, String> costs) {

  private static final String NO_VIDEO =
      "rows cannot be found on the video, unless a sync sheet says which clock is which second";

  private static final String NO_MANPOWER =
      "strength is read from penalty rows alone, and is unknown in a game without any; icing is inferred"
          + " where the rulebook needs no strength, or the penalty rows say it";

  /** Copies. */
  public Coverage {
    present = List.copyOf(present);
    costs = new LinkedHashMap<>(costs);
  }

  /**
   * Looks at what was read.
   *
   * @param season the season
   * @param columns our columns that some sheet can fill
   * @param tags whether the sheets are tag sheets
   */
  public static Coverage of(SheetsRead season, Set<String> columns, boolean tags) {
    List<String> present = new ArrayList<>();
    Map<String, String> costs = new LinkedHashMap<>();
    if (!season.games().isEmpty()) {
      play(season, present);
    }
    for (TaggedGame g : season.tagged()) {
      long exits = g.exits().stream().filter(e -> e.wayOut().isPresent()).count();
      present.add(g.id() + ": " + exits + " tagged exits");
    }
    (tags ? tagCosts() : playCosts())
        .forEach(
            (column, cost) -> {
              if (!columns.contains(column)
                  && !columns.contains(INSTEAD.getOrDefault(column, column))) {
                costs.put(column, cost);
              }
            });
    if (columns.contains(SheetForms.ZONE) && !columns.contains(SheetForms.X)) {
      costs.put(
          SheetForms.X,
          tags
              ? "a zone says what the rulebook makes of an icing from it; how short of center, flags and maps"
                  + " need places"
              : "a zone says which way the puck came out, and an icing from the own zone; how short of center,"
                  + " what became of a puck let go in the neutral zone, flags and maps need places");
    }
    boolean stops =
        season.games().stream()
            .anyMatch(g -> g.rows().stream().anyMatch(r -> r.action() == Action.STOPPAGE));
    if (!season.games().isEmpty() && !stops) {
      costs.put(
          "rows with action stoppage",
          "what stopped play is worked out from the next face-off; where it cannot be, the cause says unknown");
    }
    if (!season.games().isEmpty()) {
      partly(season, columns, costs);
    }
    return new Coverage(present, costs);
  }

  /** What only some rows lack. */
  private static void partly(SheetsRead season, Set<String> columns, Map<String, String> costs) {
    List<PlayRow> rows = season.games().stream().flatMap(g -> g.rows().stream()).toList();
    List<PlayRow> penalties = rows.stream().filter(r -> r.action() == Action.PENALTY).toList();
    long bare = penalties.stream().filter(r -> r.penalty().isEmpty()).count();
    if (penalties.isEmpty()) {
      costs.put(
          "rows with action penalty",
          "strength rests on the manpower columns, and a penalty's end is not known");
    } else if (bare > 0) {
      costs.put(
          "penalty in " + bare + " of " + penalties.size() + " penalty rows",
          "each counts as a minor penalty");
    }
    List<PlayRow> control = rows.stream().filter(PlayRow::control).toList();
    long nameless = control.stream().filter(r -> r.player().isEmpty()).count();
    if (columns.contains(SheetForms.PLAYER) && 2 * nameless > control.size()) {
      costs.put(
          "player in " + nameless + " of " + control.size() + " rows that have the puck",
          playCosts().get(SheetForms.PLAYER));
    }
    long unknown = rows.stream().filter(r -> r.manpower().strength() == Strength.UNKNOWN).count();
    boolean column =
        columns.contains(SheetForms.SKATERS_FOR) || columns.contains(SheetForms.SKATERS_HOME);
    if (column && 2 * unknown > rows.size()) {
      costs.put(
          "skaters of both teams in " + unknown + " of " + rows.size() + " rows", NO_MANPOWER);
    }
  }

  /** Columns that say the same as another one. */
  private static final Map<String, String> INSTEAD =
      Map.of(
          SheetForms.SKATERS_FOR,
          SheetForms.SKATERS_HOME,
          SheetForms.SKATERS_AGAINST,
          SheetForms.SKATERS_AWAY,
          SheetForms.NET_FOR,
          SheetForms.NET_HOME,
          SheetForms.TO_X,
          SheetForms.TO_ZONE,
          SheetForms.OPPONENT_SKATERS,
          SheetForms.AWAY_SKATERS);

  private static void play(SheetsRead season, List<String> present) {
    Map<Action, Integer> actions = new TreeMap<>();
    int placed = 0;
    int zoned = 0;
    int rows = 0;
    for (Game g : season.games()) {
      present.add(
          g.id()
              + ": "
              + g.home()
              + ", "
              + g.away()
              + ", "
              + g.rows().size()
              + " rows, "
              + periods(g));
      for (PlayRow r : g.rows()) {
        actions.merge(r.action(), 1, Integer::sum);
        rows++;
        placed += r.place().isPresent() ? 1 : 0;
        zoned += r.place().isEmpty() && r.zone().isPresent() ? 1 : 0;
      }
    }
    List<String> words = new ArrayList<>();
    actions.forEach((a, n) -> words.add(a.word() + " " + n));
    present.add("rows by action: " + String.join(", ", words));
    present.add(
        "rows with a place: "
            + placed
            + " of "
            + rows
            + (zoned > 0 ? "; with a zone instead: " + zoned : ""));
  }

  private static Map<String, String> playCosts() {
    Map<String, String> c = new LinkedHashMap<>();
    c.put(SheetForms.X, "without places no exit can be found; only rows are counted");
    c.put(
        SheetForms.TO_X,
        "where a pass was received is read from the next touch; more exits say \"moved, means unknown\"");
    c.put(SheetForms.PLAYER, "no player pages, and a carry cannot be told from a teammate's touch");
    c.put(
        SheetForms.OUTCOME,
        "whether a pass was received is read from the next touch; goals are not seen");
    c.put(SheetForms.SKATERS_FOR, NO_MANPOWER);
    c.put(SheetForms.SKATERS_AGAINST, NO_MANPOWER);
    c.put(SheetForms.NET_FOR, "an empty net is read from a sixth skater only");
    c.put(SheetForms.PRESSURE, "the order in which to look at icings knows less");
    c.put(
        SheetForms.OPPONENT_SKATERS,
        "icings are flagged only where tracking or places sheets say who was where; the others are"
            + " listed to be looked at");
    c.put(SheetForms.VIDEO, NO_VIDEO);
    c.put(SheetForms.DATE, "games are listed by id, not by date");
    return c;
  }

  private static Map<String, String> tagCosts() {
    Map<String, String> c = new LinkedHashMap<>();
    c.put(SheetForms.AT_CENTER, "carries over center cannot be told from carries released short");
    c.put(SheetForms.STRENGTH, "strength is unknown");
    c.put(SheetForms.X, "no release map, and how short of center is not known");
    c.put(SheetForms.ENDED, "restarts and icings are not known");
    c.put(SheetForms.END_X, "where the puck was touched next is not known");
    c.put(SheetForms.PLAYER, "no player pages");
    c.put(SheetForms.PRESSURE, "the order in which to look at icings knows less");
    c.put(SheetForms.VIDEO, NO_VIDEO);
    c.put(SheetForms.DATE, "games are listed by id, not by date");
    return c;
  }

  private static String periods(Game game) {
    long n = game.rows().stream().mapToInt(PlayRow::period).distinct().count();
    return n + (n == 1 ? " period" : " periods");
  }
}
