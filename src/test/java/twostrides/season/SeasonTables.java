package twostrides.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;
import twostrides.exits.GameRecords;
import twostrides.exits.Release;
import twostrides.exits.Restart;
import twostrides.exits.Settings;
import twostrides.race.Chance;
import twostrides.stats.Count;

/**
 * Seasons written by hand, row by row as their tables show them, or drawn with a seed, so that
 * reviews and books can be tested without sheets. A cell that is not set is missing.
 */
public final class SeasonTables {

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

  private final List<Cells> exits = new ArrayList<>();
  private final List<Cells> releases = new ArrayList<>();
  private final List<Cells> restarts = new ArrayList<>();
  private final List<Cells> kills = new ArrayList<>();
  private final List<Cells> flags = new ArrayList<>();

  /** Adds an exit: columns and values in turn. */
  public SeasonTables exit(Object... cells) {
    exits.add(Cells.of(cells));
    return this;
  }

  /** Adds a release short of center: columns and values in turn. */
  public SeasonTables release(Object... cells) {
    releases.add(Cells.of(cells));
    return this;
  }

  /** Adds a restart: columns and values in turn; it holds the release of its number. */
  public SeasonTables restart(Object... cells) {
    restarts.add(Cells.of(cells));
    return this;
  }

  /** Adds a penalty kill: columns and values in turn; it holds the exits with its number. */
  public SeasonTables kill(Object... cells) {
    kills.add(Cells.of(cells));
    return this;
  }

  /**
   * Adds a release that a restart followed, flagged or not: columns and values in turn. Its release
   * is the one of the same number or line in its game; where there is none, one of its own.
   */
  public SeasonTables flag(Object... cells) {
    flags.add(
        Cells.of(
                Columns.OWN_ZONE_RESTART,
                true,
                Columns.RESTART_CAUSE,
                "icing_written",
                "seconds_to_center",
                0.9,
                "kind_iced",
                3,
                "kind_releases",
                40,
                Columns.P_GAIN_CENTER,
                0.8,
                Columns.P_GAIN_LOW,
                0.6,
                Columns.P_GAIN_HIGH,
                0.9,
                Columns.P_AVOID,
                0.78,
                "p_avoid_low",
                0.58,
                "p_avoid_high",
                0.87,
                Columns.EVIDENCE,
                "measured",
                "p_length",
                0.5,
                "puck_x_m",
                26.7,
                "puck_right_m",
                -8.0,
                "puck_middle_m",
                1.0,
                "puck_left_m",
                9.0,
                "cost_icing",
                0.5,
                "cost_trying",
                0.1,
                Columns.FLAGGED,
                true,
                Columns.REASON,
                "flagged",
                "sentence",
                "Flagged.",
                Columns.RULING,
                "icing")
            .with(Cells.of(cells)));
    return this;
  }

  /** The season as it stands. */
  public Season season() {
    List<Cells> all =
        Stream.of(exits, releases, restarts, kills, flags).flatMap(List::stream).toList();
    Map<String, GameRows> games = new LinkedHashMap<>();
    for (String id : Cells.distinct(Columns.GAME, all)) {
      games.put(id, new GameRows(id, of(id, all)));
    }
    exits.forEach(c -> game(games, c).exit(c));
    IdentityHashMap<Cells, Release> ofFlags = new IdentityHashMap<>();
    for (Cells c : releases) {
      Optional<Cells> flag = flags.stream().filter(f -> f.ofOneRelease(c)).findFirst();
      Release release = game(games, c).release(flag.map(f -> f.with(c)).orElse(c));
      flag.ifPresent(f -> ofFlags.putIfAbsent(f, release));
    }
    IdentityHashMap<Release, Restart> followed = new IdentityHashMap<>();
    List<GameRecords> records = new ArrayList<>();
    games.forEach(
        (id, rows) -> {
          List<Restart> faceOffs = of(id, restarts).stream().map(rows::restart).toList();
          for (Restart r : faceOffs) {
            r.behind().flatMap(Restart.Behind::release).ifPresent(x -> followed.putIfAbsent(x, r));
          }
          records.add(rows.records(faceOffs, of(id, kills).stream().map(rows::kill).toList()));
        });
    IdentityHashMap<Release, Assessment> assessed = new IdentityHashMap<>();
    List<Flag> said = new ArrayList<>();
    for (Cells c : flags) {
      Release release = ofFlags.computeIfAbsent(c, alone -> game(games, alone).releaseAside(alone));
      assessed.put(release, assessment(c));
      said.add(
          new Flag(
              release,
              assessment(c),
              new Count(c.count("kind_iced").orElseThrow(), c.count("kind_releases").orElseThrow()),
              c.number("cost_icing").orElseThrow(),
              c.needed("sentence"),
              Optional.ofNullable(followed.get(release))));
    }
    return new Season(
        records,
        records.stream()
            .flatMap(g -> g.releases().stream())
            .map(r -> new Assessed(r, assessed.getOrDefault(r, unweighed(r))))
            .toList(),
        said,
        new CarryRates(List.of()),
        Costs.of(List.of()),
        Settings.DEFAULT);
  }

  /** What came out for a flag: its chances where the row has them, and the verdict. */
  private static Assessment assessment(Cells c) {
    FlagVerdict verdict =
        c.one(Columns.REASON, FlagVerdict.class, FlagVerdict::words).orElseThrow();
    if (c.flag(Columns.FLAGGED).orElseThrow() != (verdict == FlagVerdict.FLAGGED)) {
      throw new IllegalArgumentException("flagged, or not: " + verdict);
    }
    return new Assessment(
        new GainEvidence(
            c.one(Columns.EVIDENCE, Evidence.class, Evidence::word).orElseThrow(),
            chance(c, Columns.P_GAIN_CENTER, Columns.P_GAIN_LOW, Columns.P_GAIN_HIGH),
            c.number("seconds_to_center").orElseThrow(),
            Optional.empty(),
            Optional.empty()),
        chance(c, Columns.P_AVOID, "p_avoid_low", "p_avoid_high"),
        c.number("cost_trying"),
        verdict);
  }

  /** An interval that the row leaves as it is reaches as far as its chance. */
  private static Optional<Chance> chance(Cells c, String p, String low, String high) {
    return c.has(p)
        ? Optional.of(
            new Chance(
                c.number(p).orElseThrow(),
                Math.min(c.number(p).orElseThrow(), c.number(low).orElseThrow()),
                Math.max(c.number(p).orElseThrow(), c.number(high).orElseThrow())))
        : Optional.empty();
  }

  /** Nobody knows anything of it. */
  private static Assessment unweighed(Release r) {
    return new Assessment(
        new GainEvidence(
            Evidence.UNKNOWN,
            Optional.empty(),
            r.shortOfCenter() / 5,
            Optional.empty(),
            Optional.empty()),
        Optional.empty(),
        OptionalDouble.empty(),
        !r.outcome().restarted().orElse(false)
            ? FlagVerdict.NO_RESTART
            : r.iced() ? FlagVerdict.LOOK : FlagVerdict.OTHER_CAUSE);
  }

  private static GameRows game(Map<String, GameRows> games, Cells c) {
    return games.get(c.needed(Columns.GAME));
  }

  private static List<Cells> of(String game, List<Cells> rows) {
    return rows.stream().filter(r -> r.needed(Columns.GAME).equals(game)).toList();
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
              String.format(Locale.ROOT, "game %02d", game + 1),
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
                "next_touch",
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
                "attempts_against_20s",
                roll % 3,
                "goals_against_20s",
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
