package twostrides.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import twostrides.demo.ExitTruth.CenterMark;

/** Writes the truth of a game: one table of exit attempts, one of releases short of center. */
final class TruthCsv {
  static final List<String> EXIT_HEADER =
      List.of(
          "game",
          "period",
          "start_elapsed_s",
          "release_elapsed_s",
          "team",
          "player",
          "way_out",
          "at_center",
          "strength",
          "cause",
          "restart_elapsed_s",
          "p_gain_center");

  static final List<String> RELEASE_HEADER =
      List.of(
          "game",
          "period",
          "release_elapsed_s",
          "team",
          "player",
          "kind",
          "cause",
          "x_m",
          "short_of_center_m",
          "p_gain_center",
          "p_icing");

  private TruthCsv() {}

  static String exits(DemoGame game) {
    List<List<String>> lines = new ArrayList<>();
    for (ExitTruth exit : game.exits()) {
      lines.add(
          List.of(
              game.id(),
              Integer.toString(exit.period()),
              Integer.toString(exit.start()),
              Integer.toString(exit.release()),
              game.team(exit.side()).name(),
              exit.skater().label(),
              exit.way().word(),
              exit.center().map(CenterMark::word).orElse(""),
              exit.manpower().word(),
              exit.cause().word(),
              exit.restart().isPresent() ? Integer.toString(exit.restart().getAsInt()) : "",
              chance(exit.chance())));
    }
    return Csv.text(EXIT_HEADER, lines);
  }

  static String releases(DemoGame game) {
    List<List<String>> lines = new ArrayList<>();
    for (ReleaseTruth release : game.releases()) {
      lines.add(
          List.of(
              game.id(),
              Integer.toString(release.period()),
              Integer.toString(release.release()),
              game.team(release.side()).name(),
              release.skater().label(),
              Words.word(release.kind()),
              release.cause().word(),
              Csv.number(release.at().x(), 1),
              Csv.number(release.shortOfCenter(), 2),
              chance(OptionalDouble.of(release.chance())),
              chance(OptionalDouble.of(release.iced()))));
    }
    return Csv.text(RELEASE_HEADER, lines);
  }

  private static String chance(OptionalDouble chance) {
    return chance.isPresent() ? Csv.number(chance.getAsDouble(), 4) : "";
  }
}
