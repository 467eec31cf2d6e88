package twostrides.findings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;
import twostrides.exits.ExitTables;
import twostrides.exits.Pipeline;
import twostrides.exits.Settings;
import twostrides.season.Columns;

/**
 * Tables as the pipeline makes them, written by hand or drawn with a seed, so that reviews and
 * books can be tested without sheets. A cell that is not set is missing.
 */
public final class SeasonTables {

  /** Tables of no games: the pipeline's own columns and their types. */
  private static final ExitTables NONE = Pipeline.run(List.of(), List.of(), Settings.DEFAULT);

  private static final List<String> PLAYER_KEY =
      List.of(Columns.TEAM, Columns.PLAYER, Columns.WAY_OUT, Columns.AT_CENTER, Columns.STRENGTH);

  /** Marks of an exit as the seeded season draws them: way out, and mark at center or nothing. */
  private static final List<List<String>> MARKS =
      List.of(
          List.of("carry", "gained"),
          List.of("carry", "gained"),
          List.of("carry", "released short"),
          List.of("carry", "lost short"),
          List.of("pass", "gained"),
          List.of("pass", "released short"),
          List.of("chip", ""),
          List.of("long clearance", ""),
          List.of("missed pass", ""),
          List.of("moved, means unknown", ""),
          List.of("kept in", ""));

  private final List<Map<String, Object>> exits = new ArrayList<>();
  private final List<Map<String, Object>> releases = new ArrayList<>();
  private final List<Map<String, Object>> restarts = new ArrayList<>();
  private final List<Map<String, Object>> kills = new ArrayList<>();
  private final List<Map<String, Object>> flags = new ArrayList<>();

  /** A row from column and value in turn. */
  private static Map<String, Object> row(Object... cells) {
    Map<String, Object> row = new LinkedHashMap<>();
    for (int i = 0; i < cells.length; i += 2) {
      row.put((String) cells[i], cells[i + 1]);
    }
    return row;
  }

  /** Adds an exit: columns and values in turn. */
  public SeasonTables exit(Object... cells) {
    exits.add(row(cells));
    return this;
  }

  /** Adds a release short of center: columns and values in turn. */
  public SeasonTables release(Object... cells) {
    releases.add(row(cells));
    return this;
  }

  /** Adds a restart: columns and values in turn. */
  public SeasonTables restart(Object... cells) {
    restarts.add(row(cells));
    return this;
  }

  /** Adds a penalty kill: columns and values in turn. */
  public SeasonTables kill(Object... cells) {
    kills.add(row(cells));
    return this;
  }

  /** Adds a release that a restart followed, flagged or not: columns and values in turn. */
  public SeasonTables flag(Object... cells) {
    Map<String, Object> row =
        row(
            Columns.SECONDS_TO_CENTER, 0.9,
            Columns.KIND, "sent",
            Columns.ZONE, "neutral",
            Columns.KIND_ICED, 3,
            Columns.KIND_RELEASES, 40,
            Columns.P_GAIN_CENTER, 0.8,
            Columns.P_GAIN_LOW, 0.6,
            Columns.P_GAIN_HIGH, 0.9,
            Columns.P_AVOID, 0.78,
            Columns.P_AVOID_LOW, 0.58,
            Columns.P_AVOID_HIGH, 0.87,
            Columns.EVIDENCE, "measured",
            Columns.P_LENGTH, 0.5,
            Columns.PUCK_X_M, 26.7,
            Columns.PUCK_RIGHT_M, -8.0,
            Columns.PUCK_MIDDLE_M, 1.0,
            Columns.PUCK_LEFT_M, 9.0,
            Columns.COST_ICING, 0.5,
            Columns.COST_TRYING, 0.1,
            Columns.FLAGGED, true,
            Columns.REASON, "flagged",
            Columns.FLAG_SENTENCE, "Flagged.",
            Columns.RULING, "icing",
            Columns.CLAUSE, "common practice, no source");
    row.putAll(row(cells));
    flags.add(row);
    return this;
  }

  /** The tables as they stand. */
  public ExitTables tables() {
    return new ExitTables(
        table(NONE.exits(), exits),
        table(NONE.releases(), releases),
        table(NONE.restarts(), restarts),
        NONE.rulings(),
        table(NONE.flags(), flags),
        NONE.manpower(),
        0,
        table(NONE.kills(), kills),
        NONE.costs(),
        table(NONE.players(), players()));
  }

  private List<Map<String, Object>> players() {
    Map<List<Object>, int[]> counts = new LinkedHashMap<>();
    List<String> key = PLAYER_KEY;
    for (Map<String, Object> e : exits) {
      int[] c =
          counts.computeIfAbsent(
              new ArrayList<>(Arrays.asList(key.stream().map(e::get).toArray())), k -> new int[2]);
      c[0]++;
      c[1] += Boolean.TRUE.equals(e.get(Columns.OWN_ZONE_RESTART)) ? 1 : 0;
    }
    List<Map<String, Object>> rows = new ArrayList<>();
    counts.forEach(
        (k, c) -> {
          Map<String, Object> r = new LinkedHashMap<>();
          for (int i = 0; i < key.size(); i++) {
            r.put(key.get(i), k.get(i));
          }
          r.put(Columns.ATTEMPTS, c[0]);
          r.put(Columns.RESTARTS, c[1]);
          rows.add(r);
        });
    return rows;
  }

  private static Table table(Table like, List<Map<String, Object>> rows) {
    return Table.create(
        like.name(), like.columns().stream().<Column<?>>map(c -> column(c, rows)).toList());
  }

  private static Column<?> column(Column<?> like, List<Map<String, Object>> rows) {
    Column<?> column = like.emptyCopy();
    for (Map<String, Object> r : rows) {
      Object value = r.get(like.name());
      if (value == null || value.equals("")) {
        column.appendMissing();
      } else {
        column.appendObj(value);
      }
    }
    return column;
  }

  /**
   * A season drawn with a seed.
   *
   * @param seed the seed
   * @param games number of games
   * @param home the team of every game
   * @param others opponents in turn
   * @param names names of a team's players
   * @param attempts exit attempts in all
   */
  public static SeasonTables drawn(
      long seed, int games, String home, List<String> others, List<String> names, int attempts) {
    Random dice = new Random(seed);
    SeasonTables t = new SeasonTables();
    for (int i = 0; i < attempts; i++) {
      int game = i * games / attempts;
      String other = others.get(game % others.size());
      boolean ours = dice.nextBoolean();
      Drawn d =
          new Drawn(
              String.format(java.util.Locale.ROOT, "game %02d", game + 1),
              ours ? home : other,
              ours ? other : home,
              names.get(dice.nextInt(names.size())),
              MARKS.get(dice.nextInt(MARKS.size())),
              dice.nextInt(100),
              i);
      d.into(t, dice);
    }
    return t;
  }

  private record Drawn(
      String game,
      String team,
      String opponent,
      String player,
      List<String> marks,
      int roll,
      int at) {

    void into(SeasonTables t, Random dice) {
      boolean sent =
          marks.get(1).equals("released short")
              || marks.get(0).equals("chip")
              || marks.get(0).equals("long clearance")
              || marks.get(0).equals("missed pass");
      boolean restart = roll < (sent ? 25 : 6);
      String cause = !restart ? "none" : sent && roll < 15 ? "icing_written" : "other";
      String strength = roll % 7 == 0 ? "shorthanded" : roll % 9 == 0 ? "power play" : "even";
      double x = sent ? -dice.nextInt(180) / 10.0 - 0.5 : -12.5;
      double y = dice.nextInt(240) / 10.0 - 12;
      double elapsed = at * 7 % 1200;
      Object[] shared = {
        Columns.GAME, game,
        Columns.PERIOD, 1 + at % 3,
        Columns.RELEASE_ELAPSED_S, elapsed,
        Columns.TEAM, team,
        Columns.OPPONENT, opponent,
        Columns.PLAYER, player,
        Columns.STRENGTH, strength,
        Columns.RELEASE_X_M, x,
        Columns.RELEASE_Y_M, y,
        Columns.RESTART_CAUSE, cause,
        Columns.SHEET, game + ".csv",
        Columns.LINE, at + 2
      };
      t.exit(
          with(
              shared,
              Columns.EXIT,
              at + 1,
              Columns.WAY_OUT,
              marks.get(0),
              Columns.AT_CENTER,
              marks.get(1),
              Columns.OWN_ZONE_RESTART,
              restart));
      if (sent) {
        t.release(
            with(
                shared,
                Columns.RELEASE,
                at + 1,
                Columns.KIND,
                marks.get(0).equals("missed pass") ? "missed_pass" : "sent",
                Columns.SHORT_OF_CENTER_M,
                -x - 0.19,
                Columns.NEXT_TOUCH,
                restart ? "none" : roll < 60 ? "opponent" : "own",
                Columns.OWN_ZONE_RESTART,
                restart));
      }
      if (restart) {
        t.restart(
            with(
                shared,
                Columns.RESTART_ELAPSED_S,
                elapsed + 6,
                Columns.OWN_LAST,
                true,
                Columns.REASON,
                cause.equals("other") ? "the goalkeeper held it" : "a stoppage row says icing",
                Columns.SHORT_OF_CENTER_M,
                sent ? (Object) (-x - 0.19) : "",
                Columns.WON_BY,
                roll % 2 == 0 ? "own" : "opponent",
                Columns.ATTEMPTS_AGAINST_20S,
                roll % 3,
                Columns.GOALS_AGAINST_20S,
                roll == 2 ? 1 : 0));
      }
    }

    private static Object[] with(Object[] shared, Object... more) {
      Object[] all = Arrays.copyOf(shared, shared.length + more.length);
      System.arraycopy(more, 0, all, shared.length, more.length);
      return all;
    }
  }
}
