package twostrides.demo;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Writes the truth of a game: one table of exit attempts, one of releases short of center. */
final class TruthCsv {
  private TruthCsv() {}

  static String exits(DemoGame game) {
    return new Csv<ExitTruth>()
        .column("game", exit -> game.id())
        .column("period", exit -> Integer.toString(exit.period))
        .column("start_elapsed_s", exit -> Integer.toString(exit.start))
        .column("release_elapsed_s", exit -> Integer.toString(exit.release))
        .column("team", exit -> game.team(exit.side).name())
        .column("player", exit -> exit.skater.label())
        .column("way_out", exit -> Words.spaced(exit.way))
        .column("at_center", exit -> exit.center, Words::spaced)
        .column("strength", exit -> Words.spaced(exit.manpower))
        .column("cause", exit -> Words.word(exit.cause))
        .column("restart_elapsed_s", exit -> second(exit.restart))
        .column("p_gain_center", exit -> chance(exit.chance))
        .text(game.exits());
  }

  static String releases(DemoGame game) {
    return new Csv<ReleaseTruth>()
        .column("game", release -> game.id())
        .column("period", release -> Integer.toString(release.period))
        .column("release_elapsed_s", release -> Integer.toString(release.release))
        .column("team", release -> game.team(release.by.side()).name())
        .column("player", release -> release.by.skater().label())
        .column("kind", release -> Words.word(release.kind))
        .column("cause", release -> Words.word(release.cause))
        .column("x_m", release -> Csv.number(release.by.at().x(), 1))
        .column("short_of_center_m", release -> Csv.number(release.shortOfCenter, 2))
        .column("p_gain_center", release -> Csv.number(release.chance, 4))
        .column("p_icing", release -> Csv.number(release.iced, 4))
        .text(game.releases());
  }

  private static String second(OptionalInt second) {
    return second.isPresent() ? Integer.toString(second.getAsInt()) : "";
  }

  private static String chance(OptionalDouble chance) {
    return chance.isPresent() ? Csv.number(chance.getAsDouble(), 4) : "";
  }
}
