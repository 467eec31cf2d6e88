package twostrides.demo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import twostrides.demo.ExitTruth.Cause;
import twostrides.demo.Skater.Habits;

/**
 * The truth about the players of a season: their habits, their legs, and how often they are iced.
 */
final class PlayersCsv {
  static final List<String> HEADER =
      List.of(
          "team",
          "player",
          "role",
          "releases",
          "iced",
          "p_icing",
          "hurry",
          "carry",
          "passing",
          "far",
          "top_speed_m_s");

  private record Who(String team, Skater skater) {}

  private static final class Sum {
    int releases;
    int iced;
    double chance;
  }

  private PlayersCsv() {}

  /** One row a player with a release short of center, by team and number. */
  static String text(List<DemoGame> games) {
    Map<Who, Sum> sums =
        new TreeMap<>(Comparator.comparing(Who::team).thenComparing(who -> who.skater().number()));
    for (DemoGame game : games) {
      for (ReleaseTruth release : game.releases()) {
        Who who = new Who(game.team(release.side()).name(), release.skater());
        Sum sum = sums.computeIfAbsent(who, w -> new Sum());
        sum.releases++;
        sum.iced += release.cause() == Cause.ICING ? 1 : 0;
        sum.chance += release.iced();
      }
    }
    List<List<String>> lines = new ArrayList<>();
    sums.forEach((who, sum) -> lines.add(line(who, sum)));
    return Csv.text(HEADER, lines);
  }

  private static List<String> line(Who who, Sum sum) {
    Habits habits = who.skater().habits();
    return List.of(
        who.team(),
        who.skater().label(),
        Words.word(who.skater().role()),
        Integer.toString(sum.releases),
        Integer.toString(sum.iced),
        Csv.number(sum.chance / sum.releases, 4),
        Csv.number(habits.hurry(), 2),
        Csv.number(habits.carry(), 2),
        Csv.number(habits.passing(), 3),
        Csv.number(habits.far(), 2),
        Csv.number(who.skater().legs().topSpeed(), 2));
  }
}
