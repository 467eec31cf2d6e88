package twostrides.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import twostrides.book.Format;
import twostrides.rulebook.BookException;
import twostrides.rulebook.Bookshelf;
import twostrides.rulebook.Grade;
import twostrides.rulebook.IcingBook;
import twostrides.rulebook.Setting;

/** Lists the rulebooks, or says what one of them holds and how sure that is. */
@Command(
    name = "rulebooks",
    description =
        "Lists the rulebooks; with a name, says what that book holds and how sure we are.",
    mixinStandardHelpOptions = true)
final class RulebooksCommand implements Callable<Integer> {

  @Spec CommandSpec spec;

  @Parameters(
      arity = "0..1",
      paramLabel = "BOOK",
      description = "A book by its name, or a TOML file of your own.")
  String name;

  @Option(
      names = "--season",
      paramLabel = "2025-26",
      description = "Season of the book; without it the newest that it covers.")
  String season;

  @Override
  public Integer call() throws BookException {
    PrintWriter out = spec.commandLine().getOut();
    if (name == null) {
      list(out);
    } else {
      one(out, Bookshelf.find(name, Books.season(season, spec.commandLine())));
    }
    out.println();
    out.println("How sure: " + grades() + ".");
    return Main.DONE;
  }

  private static void list(PrintWriter out) {
    int widest = Bookshelf.ids().stream().mapToInt(String::length).max().orElse(0);
    for (String id : Bookshelf.ids()) {
      IcingBook b = Bookshelf.book(id);
      out.println(
          id
              + " ".repeat(widest - id.length() + 2)
              + b.name()
              + "; "
              + b.edition()
              + "; seasons "
              + b.seasons()
              + "; "
              + b.grades());
    }
    out.println();
    out.println("What one of them holds: two-strides rulebooks BOOK");
    out.println("A book of your own starts from one of these: docs/rulings.md.");
  }

  private static void one(PrintWriter out, IcingBook b) {
    out.println(Books.title(b) + " (" + b.edition() + "; seasons " + b.seasons() + ")");
    for (Setting s : b.settings().values()) {
      out.println();
      out.println("  " + s.key().word() + " = " + s.value());
      out.println("    " + s.key().meaning());
      out.println("    " + (s.clause().isEmpty() ? "" : s.clause() + ": ") + Books.source(s));
    }
    List<Setting> assumed = b.assumed();
    out.println();
    out.println(
        assumed.isEmpty()
            ? "Nothing is assumed."
            : Format.count(assumed.size(), "setting")
                + " assumed, no source found: "
                + String.join(", ", assumed.stream().map(s -> s.key().word()).toList())
                + ".");
  }

  private static String grades() {
    List<String> all = new ArrayList<>();
    for (Grade g : Grade.values()) {
      all.add(g.letter() + " " + g.meaning());
    }
    return String.join("; ", all);
  }
}
