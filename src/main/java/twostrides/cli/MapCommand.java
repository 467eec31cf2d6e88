package twostrides.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import twostrides.book.Format;
import twostrides.output.WholeFile;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetFiles;
import twostrides.sheet.ShippedMaps;
import twostrides.starter.StarterMap;

/** Looks at a sheet that nobody has described and writes a map to start from. */
@Command(
    name = "map",
    description = {
      "Looks at an unknown sheet and writes a map to start from.",
      "Columns, words, clock, places and direction are guessed, each with what the guess rests on; open",
      "questions are marked # ?. Then: two-strides check SHEET --map MAP.toml."
    },
    mixinStandardHelpOptions = true)
final class MapCommand implements Callable<Integer> {

  @Spec CommandSpec spec;

  @Parameters(arity = "0..1", paramLabel = "SHEET", description = "The sheet to look at.")
  String sheet;

  @Option(
      names = "--out",
      paramLabel = "MAP.toml",
      description = "File for the map, which must not be there yet; without it the console.")
  Path out;

  @Option(names = "--list", description = "Lists the maps that --map knows by name.")
  boolean list;

  @Override
  public Integer call() throws SheetException, IOException {
    PrintWriter console = spec.commandLine().getOut();
    if (list) {
      for (ShippedMaps.Entry entry : ShippedMaps.all()) {
        console.println(String.format("%-30s %s", entry.name(), entry.sheets()));
      }
      return Main.DONE;
    }
    if (sheet == null) {
      throw new ParameterException(
          spec.commandLine(), "found no sheet, expected one to look at, or --list.");
    }
    List<Path> files = SheetFiles.find(List.of(sheet));
    if (out != null && Files.exists(out)) {
      throw new ParameterException(
          spec.commandLine(), "--out: found " + out + ", expected a file that is not there yet.");
    }
    StarterMap map = StarterMap.of(files.get(0));
    if (out == null) {
      console.print(map.text());
      console.flush();
      return Main.DONE;
    }
    WholeFile.write(out.toAbsolutePath(), map.text().getBytes(StandardCharsets.UTF_8));
    console.println(
        "Written to "
            + out
            + " with "
            + Format.count(map.questions(), "open question")
            + " (# ?). Answer them in a text editor, then: two-strides check "
            + sheet
            + " --map "
            + out);
    return Main.DONE;
  }
}
