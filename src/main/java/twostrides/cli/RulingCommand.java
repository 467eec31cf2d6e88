package twostrides.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import twostrides.rulebook.FactKey;
import twostrides.rulebook.Facts;
import twostrides.rulebook.IcingBook;
import twostrides.rulebook.Judge;
import twostrides.rulebook.Ruling;
import twostrides.rulebook.RulingWords;

/** Answers one situation in plain words, or a whole file of them. */
@Command(
    name = "ruling",
    description = {
      "Was that icing? Answers by a rulebook, with the clause.",
      "Facts such as from=own-half strength=even puck=crossed race=defender say what is known. A fact",
      "left out is unknown, or taken not to have happened where that is the usual case; --facts lists",
      "them."
    },
    mixinStandardHelpOptions = true)
final class RulingCommand implements Callable<Integer> {

  @Spec CommandSpec spec;

  @Mixin Books books;

  @Parameters(arity = "0..*", paramLabel = "FACT=WORD", description = "What is known.")
  List<String> said = new ArrayList<>();

  @Option(names = "--facts", description = "Lists the facts and their words, and stops.")
  boolean listFacts;

  @Option(
      names = "--cases",
      paramLabel = "FILE.csv",
      description =
          "Answers every row of a file of situations (docs/rulings.md) and writes the answers"
              + " beside them.")
  Path cases;

  @Option(
      names = "--out",
      paramLabel = "FILE.csv",
      description = "Where the answers to --cases go; FILE-answers.csv by default.")
  Path out;

  @Override
  public Integer call() throws Exception {
    PrintWriter console = spec.commandLine().getOut();
    if (listFacts) {
      for (FactKey k : FactKey.values()) {
        console.println(k.option() + "=" + String.join("|", k.words()));
        console.println("    " + k.meaning() + "; left out: " + k.unsaid().word());
      }
      return Main.DONE;
    }
    if (cases != null) {
      if (!said.isEmpty()) {
        throw new ParameterException(
            spec.commandLine(),
            "--cases answers a file; leave out the facts on the command line: " + said.get(0));
      }
      return new CaseFile(books, cases, Optional.ofNullable(out)).answer(console);
    }
    Facts facts = facts();
    IcingBook book = books.book();
    Ruling ruling = Judge.judge(book, facts);
    console.println(Books.title(book) + " (" + book.edition() + ")");
    RulingWords.lines(ruling).forEach(console::println);
    RulingWords.assumptions(book, facts).forEach(console::println);
    console.println("The league's rulebook and its officials decide.");
    return Main.DONE;
  }

  private Facts facts() {
    Facts facts = Facts.NONE;
    for (String s : said) {
      int at = s.indexOf('=');
      String name = (at < 0 ? s : s.substring(0, at)).strip().replace('-', '_');
      FactKey key =
          FactKey.of(name)
              .orElseThrow(
                  () ->
                      new ParameterException(
                          spec.commandLine(),
                          s
                              + ": found an unknown fact, expected one of "
                              + String.join(", ", factNames())
                              + ", each with =WORD. --facts lists the words."));
      String word = at < 0 ? "" : s.substring(at + 1).strip();
      if (key.fact(word).isEmpty()) {
        throw new ParameterException(
            spec.commandLine(),
            key.option()
                + ": found \""
                + word
                + "\", expected "
                + String.join(", ", key.words())
                + ".");
      }
      facts = facts.with(key, word);
    }
    return facts;
  }

  private static List<String> factNames() {
    List<String> names = new ArrayList<>();
    for (FactKey k : FactKey.values()) {
      names.add(k.option());
    }
    return names;
  }
}
