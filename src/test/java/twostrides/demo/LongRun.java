package twostrides.demo;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import twostrides.demo.SeasonTally.Player;
import twostrides.stats.CensoredTime;
import twostrides.stats.Count;

/** The league in the long run: many seasons added up stand for what is really so. */
final class LongRun {
  private final Map<ShownOut, Sum> team = new EnumMap<>(ShownOut.class);
  private final Map<ShownOut, Sum> even = new EnumMap<>(ShownOut.class);
  private final Map<Player, Map<ShownOut, Sum>> players = new TreeMap<>();
  private final Map<ShownOut, TreeMap<Integer, long[]>> relief = new EnumMap<>(ShownOut.class);
  private final String code;
  private int seasons;

  private static final class Sum {
    long successes;
    long trials;

    void add(Count count) {
      successes += count.successes();
      trials += count.trials();
    }

    void add(Sum other) {
      successes += other.successes;
      trials += other.trials;
    }

    double share() {
      return (double) successes / trials;
    }
  }

  /** Of nothing yet; the code is that of the team whose shares are wanted. */
  LongRun(String code) {
    this.code = code;
  }

  void add(SeasonTally season) {
    seasons++;
    for (ShownOut way : ShownOut.values()) {
      team.computeIfAbsent(way, w -> new Sum()).add(season.team(way).total());
      even.computeIfAbsent(way, w -> new Sum()).add(season.even(way).total());
      for (CensoredTime wait : season.relief.get(way)) {
        relief.computeIfAbsent(way, w -> new TreeMap<>())
            .computeIfAbsent((int) wait.seconds(), s -> new long[2])[wait.ended() ? 1 : 0]++;
      }
      for (Player player : season.players.keySet()) {
        players
            .computeIfAbsent(player, p -> new EnumMap<>(ShownOut.class))
            .computeIfAbsent(way, w -> new Sum())
            .add(season.player(player, way));
      }
    }
  }

  /** Trials of the team in a season, at any strength or at even strength; whole, on average. */
  int trials(ShownOut way, boolean anyStrength) {
    Sum sum = anyStrength ? team.get(way) : even.get(way);
    return (int) Math.round((double) sum.trials / seasons);
  }

  double team(ShownOut way) {
    return team.get(way).share();
  }

  double even(ShownOut way) {
    return even.get(way).share();
  }

  /** Even strength less every other, all ways out together. */
  double evenLessRest() {
    Sum all = new Sum();
    Sum at = new Sum();
    team.values().forEach(all::add);
    even.values().forEach(at::add);
    Sum rest = new Sum();
    rest.successes = all.successes - at.successes;
    rest.trials = all.trials - at.trials;
    return at.share() - rest.share();
  }

  double player(Player player, ShownOut way) {
    return players.get(player).get(way).share();
  }

  double shortOfCarries(Player player) {
    double sent = players.get(player).get(ShownOut.RELEASED_SHORT).trials;
    return sent / (sent + players.get(player).get(ShownOut.OVER_CENTER).trials);
  }

  /** The skaters of the team, in order. */
  List<Player> skaters() {
    return players.keySet().stream().filter(p -> p.team().equals(code) && !p.goalkeeper()).toList();
  }

  /** First second at which the product-limit curve of all seasons is at half or below. */
  int medianRelief(ShownOut way) {
    TreeMap<Integer, long[]> seconds = relief.get(way);
    double atRisk = seconds.values().stream().mapToLong(c -> c[0] + c[1]).sum();
    double left = 1;
    for (Map.Entry<Integer, long[]> second : seconds.entrySet()) {
      left *= 1 - second.getValue()[1] / atRisk;
      if (left <= 0.5) {
        return second.getKey();
      }
      atRisk -= second.getValue()[0] + second.getValue()[1];
    }
    throw new IllegalStateException("half never ended: " + way.word);
  }
}
