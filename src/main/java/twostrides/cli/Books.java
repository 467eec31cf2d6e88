package twostrides.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import twostrides.book.BookNote;
import twostrides.rulebook.BookException;
import twostrides.rulebook.Bookshelf;
import twostrides.rulebook.IcingBook;
import twostrides.rulebook.Season;
import twostrides.rulebook.Setting;

/** The rulebook of a command, and in which season. */
final class Books {

  @Spec(Spec.Target.MIXEE)
  CommandSpec spec;

  @Option(
      names = "--rulebook",
      paramLabel = "BOOK",
      defaultValue = "hybrid",
      description =
          "Rulebook by its name, or a TOML file of your own that starts from one (${DEFAULT-VALUE})."
              + " The command rulebooks lists them.")
  String name;

  @Option(
      names = "--season",
      paramLabel = "2025-26",
      description = "Season of the book; without it the newest that the book covers.")
  String season;

  /** The book. */
  IcingBook book() throws BookException {
    return Bookshelf.find(name, season());
  }

  /** The season, where the command line gives one. */
  Optional<Season> season() {
    return season(season, spec.commandLine());
  }

  /**
   * A season as the command line writes it.
   *
   * @param written the text, null without one
   * @param line the command, for a message
   */
  static Optional<Season> season(String written, CommandLine line) {
    if (written == null) {
      return Optional.empty();
    }
    Optional<Season> read = Season.of(written);
    if (read.isEmpty()) {
      throw new ParameterException(
          line, "--season: found \"" + written + "\", expected " + Season.FORM + ".");
    }
    return read;
  }

  /**
   * Other books by their names, each in the season asked for where it covers it, else in its
   * newest.
   *
   * @param names names or files
   */
  List<IcingBook> others(List<String> names) throws BookException {
    List<IcingBook> others = new ArrayList<>();
    for (String other : new LinkedHashSet<>(names)) {
      others.add(Bookshelf.find(other, season(), "--compare-rulebook"));
    }
    return others;
  }

  /** Name and season, as pages and the console say it. */
  static String title(IcingBook book) {
    return book.name() + ", season " + book.season();
  }

  /** The book as a page shows it. */
  static BookNote note(IcingBook book, List<IcingBook> others) {
    List<BookNote.Line> lines =
        book.settings().values().stream()
            .map(
                s ->
                    new BookNote.Line(
                        s.key().meaning(), s.value(), s.clause(), source(s), s.assumed()))
            .toList();
    return new BookNote(
        title(book),
        book.edition(),
        lines,
        others.stream().map(o -> new BookNote.Other(o.id(), title(o))).toList());
  }

  /** Where a setting was read and how sure that is, a phrase. */
  static String source(Setting s) {
    return s.source().isEmpty()
        ? s.grade().meaning()
        : s.source() + " (" + s.grade().meaning() + ")";
  }
}
