package twostrides.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import twostrides.book.Format;
import twostrides.demo.DemoLeague;
import twostrides.output.OutputException;

/** Writes sheets of an invented league, with the truth beside them. */
@Command(
    name = "demo",
    description =
        "Writes sheets of an invented league, touch by touch, with the truth in a second file for each.",
    mixinStandardHelpOptions = true)
final class DemoCommand implements Callable<Integer> {

  @Spec CommandSpec spec;

  @Option(
      names = "--games",
      paramLabel = "N",
      defaultValue = "12",
      description =
          "Games to write (${DEFAULT-VALUE}): up to 82 are of one team, 1312 are all of the league.")
  int games;

  @Option(
      names = "--seed",
      paramLabel = "S",
      defaultValue = "1",
      description = "Seed; the same seed writes the same games (${DEFAULT-VALUE}).")
  long seed;

  @Option(names = "--out", paramLabel = "DIR", required = true, description = "Folder to write to.")
  Path out;

  @Override
  public Integer call() throws OutputException, IOException {
    if (games < 1 || games > DemoLeague.MOST_GAMES) {
      throw new ParameterException(
          spec.commandLine(),
          "--games: found "
              + games
              + ", expected a whole number from 1 to "
              + DemoLeague.MOST_GAMES
              + ", which is every game of the league's season.");
    }
    DemoLeague.write(out, games, seed);
    PrintWriter console = spec.commandLine().getOut();
    console.println(
        "Wrote "
            + Format.count(games, "game")
            + " of an invented league, seed "
            + seed
            + ", and the truth in "
            + out.resolve("truth")
            + ".");
    Path places = out.resolve("places");
    console.println(
        "Review them: two-strides review "
            + out
            + (games > DemoLeague.MOST_OF_A_TEAM ? " --team '" + DemoLeague.TEAM + "'" : "")
            + (Files.isDirectory(places) ? " --places " + places : ""));
    return Main.DONE;
  }
}
