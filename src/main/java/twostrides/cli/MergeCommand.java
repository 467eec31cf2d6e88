package twostrides.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import twostrides.sheet.SheetMaps;
import twostrides.tag.TagMerge;

/** Two people tagged one game: their sheets and journals become one. */
@Command(
    name = "merge",
    description = "Puts what several people tagged into one tag sheet (docs/tag.md).",
    mixinStandardHelpOptions = true)
final class MergeCommand implements Callable<Integer> {

  @Spec CommandSpec spec;

  @Parameters(
      paramLabel = "FILE.csv",
      arity = "2..*",
      description = "Tag sheets; the journal beside each is read as well.")
  List<Path> sheets;

  @Option(
      names = "--out",
      paramLabel = "FILE.csv",
      required = true,
      description = "The sheet to write; it must not exist yet.")
  Path out;

  @Mixin Books books;

  @Mixin Ice ice;

  @Override
  public Integer call() throws Exception {
    TagMerge merged = TagMerge.of(sheets, out, ice.of(books.book(), SheetMaps.NONE).usual());
    PrintWriter console = spec.commandLine().getOut();
    merged.doubles().forEach(d -> console.println("One of these twice? " + d));
    if (!merged.doubles().isEmpty()) {
      console.println(
          "Both of each pair are in the sheet. Delete one of them on the page: two-strides tag --sheet "
              + out);
    }
    console.println(
        merged.read()
            + " rows read = "
            + merged.written()
            + " rows written + "
            + (merged.read() - merged.written())
            + " that two sheets have word for word.");
    console.println("Written: " + merged.file());
    return Main.DONE;
  }
}
