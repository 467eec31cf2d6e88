package twostrides.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import twostrides.exits.RaceSettings;
import twostrides.race.SkaterSet;

/** What a review may choose about the race and the flags. */
final class RaceOptions {

  @Spec(Spec.Target.MIXEE)
  CommandSpec spec;

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description =
          "Seed of the race model; the same seed writes the same book (${DEFAULT-VALUE}).")
  long seed;

  @Option(
      names = "--simulations",
      paramLabel = "N",
      defaultValue = "" + RaceSettings.DEFAULT_SIMULATIONS,
      description =
          "Simulations of the race for each release that a defensive-zone face-off followed (${DEFAULT-VALUE}).")
  int simulations;

  @Option(
      names = "--level",
      paramLabel = "LEVEL",
      defaultValue = "elite-men",
      description =
          "Level of play for the race model: elite-men, elite-women, junior, youth-u15, youth-u13,"
              + " or a TOML file of your own (docs/race.md; ${DEFAULT-VALUE}).")
  String level;

  @Option(
      names = "--flag-threshold",
      paramLabel = "P",
      defaultValue = "0.6",
      description =
          "Least chance that gaining center would have avoided the restart for a flag"
              + " (${DEFAULT-VALUE}).")
  double threshold;

  /**
   * The settings.
   *
   * @throws ParameterException when a value cannot be used
   */
  RaceSettings race() {
    SkaterSet skaters = Skaters.find(level, spec.commandLine());
    try {
      return new RaceSettings(seed, simulations, skaters, threshold);
    } catch (IllegalArgumentException e) {
      throw new ParameterException(
          spec.commandLine(), "--simulations, --flag-threshold: " + e.getMessage() + ".");
    }
  }
}
