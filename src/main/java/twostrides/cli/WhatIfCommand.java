package twostrides.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import twostrides.book.chart.Picture;
import twostrides.output.OutputException;
import twostrides.output.WholeFile;
import twostrides.race.Assumptions;
import twostrides.race.Parameter;
import twostrides.race.Scene;
import twostrides.race.SeededRandom;
import twostrides.race.WaysOut;
import twostrides.race.WhatIf;
import twostrides.rulebook.Choice;
import twostrides.rulebook.Fact;
import twostrides.rulebook.FactKey;
import twostrides.rulebook.Facts;
import twostrides.rulebook.IcingBook;
import twostrides.rulebook.Judge;
import twostrides.rulebook.Ruling;

/** One release, set by hand: the ruling, the chances and the other ways out. */
@Command(
    name = "whatif",
    description = {
      "What if the puck is let go here? Answers for one place.",
      "First the cheapest way out and the chances, then how far before the red line, the ruling and what other",
      "ways out would bring (docs/whatif.md). For example:",
      "whatif --release -5,6 --pressure light --skater opponent:2,5,-3,0 --out release.svg"
    },
    mixinStandardHelpOptions = true)
final class WhatIfCommand implements Callable<Integer> {

  private static final int FEWEST_SIMULATIONS = 100;
  private static final int MOST_SIMULATIONS = 1_000_000;

  @Spec CommandSpec spec;

  @Mixin ReleaseOptions options;

  @Mixin Books books;

  @Option(
      names = "--simulations",
      paramLabel = "N",
      defaultValue = "2000",
      description = "Simulations, the same for every way out (${DEFAULT-VALUE}).")
  int simulations;

  @Option(
      names = "--seed",
      paramLabel = "N",
      defaultValue = "1",
      description = "Seed; the same seed gives the same answer (${DEFAULT-VALUE}).")
  long seed;

  @Option(
      names = "--out",
      paramLabel = "FILE.svg",
      description = "Also draws it, as SVG or, by the file's ending, as PNG. Replaces the file.")
  Path out;

  @Option(
      names = "--assumptions",
      description = "Lists the assumed numbers with their ranges, and stops.")
  boolean listAssumptions;

  @Override
  public Integer call() throws Exception {
    PrintWriter console = spec.commandLine().getOut();
    if (listAssumptions) {
      Assumptions.ALL.forEach(p -> console.println(line(p)));
      return Main.DONE;
    }
    if (simulations < FEWEST_SIMULATIONS || simulations > MOST_SIMULATIONS) {
      throw options.refused(
          "--simulations",
          String.valueOf(simulations),
          "100 to 1000000",
          "More simulations, smaller errors");
    }
    checkEnding();
    IcingBook book = books.book();
    Scene scene = options.scene(book);
    Facts facts = facts(book, scene);
    Ruling ruling = Judge.judge(book, facts);
    boolean never = ruling instanceof Ruling.NoIcing || ruling instanceof Ruling.WavedOff;
    WhatIf what =
        new WhatIf(
            scene,
            options.knownLoft(),
            book.raceQuestion(),
            !never,
            Assumptions.losses(options.pressure().orElse(""), 0, 0),
            options.netEmpty);
    WaysOut ways = WaysOut.of(what, new SeededRandom(seed, "whatif"), simulations);
    WhatIfWords words = new WhatIfWords(options, what, ways);
    words.answer(ruling).forEach(console::println);
    console.println();
    console.println(Books.title(book) + " (" + book.edition() + ")");
    words.before(book, facts, ruling).forEach(console::println);
    words
        .chances(simulations, seed, ruling instanceof Ruling.NotYetDecided)
        .forEach(console::println);
    words.ways().forEach(console::println);
    if (out != null) {
      write(WhatIfWords.diagram(what, ways).picture("whatif"));
      console.println("Diagram: " + out);
    }
    words.close().forEach(console::println);
    return Main.DONE;
  }

  private static String line(Parameter p) {
    return String.format(
        Locale.ROOT,
        "%s: %.3g %s, range %.3g to %.3g; %s (%s)",
        p.name(),
        p.value(),
        p.unit(),
        p.low(),
        p.high(),
        p.source(),
        p.grade().meaning());
  }

  /** What is known, and that the puck goes the length with a defender first to it. */
  private Facts facts(IcingBook book, Scene scene) {
    Fact strength =
        FactKey.STRENGTH
            .fact(options.strength)
            .filter(s -> !(options.netEmpty && s == Fact.STRENGTH_EVEN))
            .orElse(Fact.STRENGTH_EXTRA_ATTACKER_AGAINST);
    Facts facts =
        Facts.NONE.with(
            Facts.from(scene.rink(), scene.x()),
            strength,
            Fact.PUCK_CROSSED,
            Fact.COULD_PLAY_NO,
            options.netEmpty ? Fact.GOALKEEPER_LEFT_FOR_EXTRA_ATTACKER : Fact.GOALKEEPER_STAYED,
            passFact(book));
    return book.raceQuestion().isPresent() ? facts.with(Fact.RACE_DEFENDER) : facts;
  }

  /** Whether a teammate could have received a pass is not on the command line. */
  private Fact passFact(IcingBook book) {
    boolean matters = !book.says(Choice.RECEIVABLE_PASS_NO);
    return options.kind.equals("pass") && matters ? Fact.PASS_UNKNOWN : Fact.PASS_NONE;
  }

  private Optional<String> ending() {
    if (out == null || out.getFileName() == null) {
      return Optional.empty();
    }
    String name = out.getFileName().toString().toLowerCase(Locale.ROOT);
    int dot = name.lastIndexOf('.');
    return Optional.of(dot < 0 ? "" : name.substring(dot + 1));
  }

  private void checkEnding() {
    if (out != null && !ending().filter(e -> e.equals("svg") || e.equals("png")).isPresent()) {
      throw options.refused(
          "--out", "\"" + out + "\"", "a file that ends in .svg or .png", "Name it so");
    }
  }

  private void write(Picture picture) throws IOException, OutputException {
    byte[] bytes =
        ending().orElse("").equals("png")
            ? picture.png().get()
            : picture.svg().getBytes(StandardCharsets.UTF_8);
    Path folder = out.toAbsolutePath().normalize().getParent();
    if (folder == null || !Files.isDirectory(folder) || Files.isDirectory(out)) {
      throw new OutputException(
          "--out: found \""
              + out
              + "\", expected a file in a folder that exists. Make the folder first, or name another.");
    }
    WholeFile.write(out.toAbsolutePath(), bytes, StandardCopyOption.REPLACE_EXISTING);
  }
}
