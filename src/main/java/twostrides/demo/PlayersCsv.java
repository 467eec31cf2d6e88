package twostrides.demo;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import twostrides.demo.ExitTruth.Cause;

/**
 * The truth about the players of a season: their habits, their legs, and how often they are iced.
 */
final class PlayersCsv {
  private record Who(String team, Skater skater) {}

  /** So many releases, so many of them iced, and the sum of their chances. */
  private record Sum(int releases, int iced, double chance) {
    Sum with(ReleaseTruth release) {
      int more = release.cause == Cause.ICING ? 1 : 0;
      return new Sum(releases + 1, iced + more, chance + release.iced);
    }
  }

  private final Map<Who, Sum> sums =
      new TreeMap<>(Comparator.comparing(Who::team).thenComparing(who -> who.skater().number()));

  /** Counts a game in. */
  void add(DemoGame game) {
    for (ReleaseTruth release : game.releases()) {
      Who who = new Who(game.team(release.by.side()).name(), release.by.skater());
      sums.put(who, sums.getOrDefault(who, new Sum(0, 0, 0)).with(release));
    }
  }

  /** One row a player with a release short of center, by team and number. */
  String text() {
    return new Csv<Map.Entry<Who, Sum>>()
        .column("team", player -> player.getKey().team())
        .column("player", player -> skater(player).label())
        .column("role", player -> Words.word(skater(player).role()))
        .column("releases", player -> Integer.toString(player.getValue().releases()))
        .column("iced", player -> Integer.toString(player.getValue().iced()))
        .column("p_icing", player -> Csv.number(mean(player.getValue()), 4))
        .column("hurry", player -> Csv.number(skater(player).habits().hurry(), 2))
        .column("carry", player -> Csv.number(skater(player).habits().carry(), 2))
        .column("passing", player -> Csv.number(skater(player).habits().passing(), 3))
        .column("far", player -> Csv.number(skater(player).habits().far(), 2))
        .column("top_speed_m_s", player -> Csv.number(skater(player).legs().topSpeed(), 2))
        .text(List.copyOf(sums.entrySet()));
  }

  private static Skater skater(Map.Entry<Who, Sum> player) {
    return player.getKey().skater();
  }

  private static double mean(Sum sum) {
    return sum.chance() / sum.releases();
  }
}
