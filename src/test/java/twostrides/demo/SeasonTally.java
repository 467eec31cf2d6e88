package twostrides.demo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import twostrides.demo.Chance.Telling;
import twostrides.demo.PenaltyBox.Manpower;
import twostrides.demo.Skater.Role;
import twostrides.demo.Words.Action;
import twostrides.rink.Rink;
import twostrides.stats.CensoredTime;
import twostrides.stats.Clustered;
import twostrides.stats.Count;

/**
 * A simulated season as counts of own-zone restarts by way out, straight from the truth: nothing is
 * written and nothing read back. Relief alone is told from the rows, which is where a touch stands.
 */
final class SeasonTally {
  /** As many games as the sample season has. */
  static final int GAMES = 12;

  /** A player of a team; ordered by team, then name. */
  record Player(String team, String label, boolean goalkeeper) implements Comparable<Player> {
    private static final Comparator<Player> ORDER =
        Comparator.comparing(Player::team).thenComparing(Player::label);

    @Override
    public int compareTo(Player other) {
      return ORDER.compare(this, other);
    }
  }

  /** Restarts and attempts of the team that plays every game, by game and way; any strength. */
  private final List<Map<ShownOut, int[]>> byGame = new ArrayList<>();

  /** The same at even strength. */
  private final List<Map<ShownOut, int[]>> evenByGame = new ArrayList<>();

  /** The same at even strength, of every player of every team. */
  final Map<Player, Map<ShownOut, int[]>> players = new TreeMap<>();

  /** Relief of that team's attempts, by way; whole seconds, as a sheet has them. */
  final Map<ShownOut, List<CensoredTime>> relief = new EnumMap<>(ShownOut.class);

  private SeasonTally() {
    for (ShownOut way : ShownOut.values()) {
      relief.put(way, new ArrayList<>());
    }
  }

  /** Seeds of a run of seasons. */
  static long[] seeds(int seasons, long from) {
    return new SplittableRandom(from).longs(seasons).toArray();
  }

  /** Plays a season. */
  static SeasonTally play(long seed) {
    return parts(seed, 1).get(0);
  }

  /** Plays a season and counts its parts, of equally many games, apart. */
  static List<SeasonTally> parts(long seed, int parts) {
    DemoSeason season = DemoLeague.simulate(GAMES, seed, Telling.NO_FUTURES);
    List<SeasonTally> tallies = new ArrayList<>();
    for (int part = 0; part < parts; part++) {
      SeasonTally tally = new SeasonTally();
      for (int g = part * GAMES / parts; g < (part + 1) * GAMES / parts; g++) {
        tally.add(season.games().get(g), season.team());
      }
      tallies.add(tally);
    }
    return List.copyOf(tallies);
  }

  private void add(DemoGame game, String own) {
    Map<ShownOut, int[]> counts = new EnumMap<>(ShownOut.class);
    byGame.add(counts);
    Map<ShownOut, int[]> even = new EnumMap<>(ShownOut.class);
    evenByGame.add(even);
    ReliefWalk walk = new ReliefWalk(game.rows());
    for (ExitTruth exit : game.exits()) {
      CensoredTime wait = walk.next(exit);
      Optional<ShownOut> way = ShownOut.of(exit);
      if (way.isEmpty()) {
        continue;
      }
      Team team = game.team(exit.side);
      if (team.name().equals(own)) {
        count(counts, way.get(), exit);
        relief.get(way.get()).add(wait);
        if (exit.manpower == Manpower.EVEN) {
          count(even, way.get(), exit);
        }
      }
      if (exit.manpower == Manpower.EVEN) {
        boolean keeper = exit.skater.role() == Role.GOALKEEPER;
        Player player = new Player(team.code(), exit.skater.label(), keeper);
        count(players.computeIfAbsent(player, p -> new EnumMap<>(ShownOut.class)), way.get(), exit);
      }
    }
  }

  private static void count(Map<ShownOut, int[]> counts, ShownOut way, ExitTruth exit) {
    int[] c = counts.computeIfAbsent(way, w -> new int[2]);
    c[0] += exit.restart.isPresent() ? 1 : 0;
    c[1]++;
  }

  private static Count read(Map<ShownOut, int[]> counts, ShownOut way) {
    int[] c = counts.get(way);
    return c == null ? new Count(0, 0) : new Count(c[0], c[1]);
  }

  /** The team's games, each a count, at any strength. */
  Clustered team(ShownOut way) {
    return new Clustered(byGame.stream().map(game -> read(game, way)).toList());
  }

  /** The same at even strength. */
  Clustered even(ShownOut way) {
    return new Clustered(evenByGame.stream().map(game -> read(game, way)).toList());
  }

  /** A player's season at even strength. */
  Count player(Player player, ShownOut way) {
    return read(players.getOrDefault(player, Map.of()), way);
  }

  /** How many of a player's carries that came to center or were sent on were sent on. */
  Count shortOfCarries(Player player) {
    int sent = player(player, ShownOut.RELEASED_SHORT).trials();
    return new Count(sent, sent + player(player, ShownOut.OVER_CENTER).trials());
  }

  /** Goes through the rows of a game along its attempts. */
  private static final class ReliefWalk {
    private static final Rink RINK = Rink.NORTH_AMERICAN;
    private final List<SheetRow> rows;
    private int from;

    ReliefWalk(List<SheetRow> rows) {
      this.rows = rows;
    }

    /** From the release to the opponent's next touch in that zone; a stoppage cuts it short. */
    CensoredTime next(ExitTruth exit) {
      while (!begins(rows.get(from), exit)) {
        from++;
      }
      int at = from + 1;
      while (!ends(rows.get(at), exit)) {
        at++;
      }
      from++;
      SheetRow end = rows.get(at);
      return new CensoredTime(end.elapsed - exit.release, end.action != Action.STOPPAGE);
    }

    private static boolean begins(SheetRow row, ExitTruth exit) {
      return row.period == exit.period
          && row.elapsed == exit.start
          && row.side.equals(Optional.of(exit.side))
          && row.pressure.isPresent()
          && RINK.inOwnZone(row.at.orElseThrow().x());
    }

    /** Only touches carry a pressure. */
    private static boolean ends(SheetRow row, ExitTruth exit) {
      if (row.elapsed < exit.release) {
        return false;
      }
      boolean theirs = row.pressure.isPresent() && row.side.equals(Optional.of(exit.side.other()));
      return row.action == Action.STOPPAGE
          || (theirs && RINK.pastFarBlueLine(row.at.orElseThrow().x()));
    }
  }
}
