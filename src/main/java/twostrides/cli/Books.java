package twostrides.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import twostrides.book.BookNote;
import twostrides.book.Format;
import twostrides.exits.SeasonBooks;
import twostrides.rulebook.BookException;
import twostrides.rulebook.BookSeason;
import twostrides.rulebook.Bookshelf;
import twostrides.rulebook.IcingBook;
import twostrides.rulebook.Setting;
import twostrides.sheet.FilesRead;
import twostrides.sheet.SheetException;

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
      description =
          "Season of the book; without it each game's own by its date, else the newest that the book"
              + " covers.")
  String season;

  private final Map<Optional<BookSeason>, SeasonBooks> bySeason = new HashMap<>();

  /** The book. */
  IcingBook book() throws BookException {
    return Bookshelf.find(name, season());
  }

  /**
   * The books as the command line names them, and what is in those that are not shipped.
   *
   * @param compare names or files of other books
   * @throws SheetException when one changed since it was read
   */
  List<String> words(List<String> compare) throws SheetException {
    List<String> words = new ArrayList<>(List.of(name, String.valueOf(season)));
    words.addAll(compare);
    words.addAll(
        FilesRead.hashes(
            Stream.concat(Stream.of(name), compare.stream())
                .filter(b -> b.endsWith(".toml"))
                .map(Path::of)
                .toList()));
    return words;
  }

  /** The season, where the command line gives one. */
  Optional<BookSeason> season() {
    return season(season, spec.commandLine());
  }

  /**
   * A season as the command line writes it.
   *
   * @param written the text, null without one
   * @param line the command, for a message
   */
  static Optional<BookSeason> season(String written, CommandLine line) {
    if (written == null) {
      return Optional.empty();
    }
    Optional<BookSeason> read = BookSeason.of(written);
    if (read.isEmpty()) {
      throw new ParameterException(
          line, "--season: found \"" + written + "\", expected " + BookSeason.FORM + ".");
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

  /**
   * The books of a run, each game by the season in which its day lies.
   *
   * @param book the book of the newest of them, and of games without a date
   * @param others the books compared with it
   * @param seasons the books of the games of earlier seasons
   * @param used the seasons of the book that games were played in
   */
  record ByDate(
      IcingBook book,
      List<IcingBook> others,
      Map<BookSeason, SeasonBooks> seasons,
      SortedSet<BookSeason> used) {

    /** Name and season or seasons. */
    String title() {
      return used.size() < 2
          ? Books.title(book)
          : book.name()
              + ", seasons "
              + String.join(", ", used.stream().map(BookSeason::toString).toList());
    }
  }

  /**
   * The book in the season of a game, unless the command line gives one season for all; asked on
   * any thread.
   *
   * @param day the game's day
   * @param compare names or files of other books
   * @param played what a book becomes on the rink and with the periods of this run
   */
  synchronized SeasonBooks on(
      Optional<LocalDate> day, List<String> compare, UnaryOperator<IcingBook> played)
      throws BookException {
    Optional<BookSeason> on = day.flatMap(BookSeason::on);
    SeasonBooks books = bySeason.get(on);
    if (books == null) {
      IcingBook newest = book();
      books =
          on.isPresent()
              ? in(inBook(newest, on.get()), compare, played)
              : new SeasonBooks(played.apply(newest), others(compare));
      bySeason.put(on, books);
    }
    return books;
  }

  /**
   * The book in the season of each game, unless the command line gives one season for all.
   *
   * @param days the games' days
   * @param compare names or files of other books
   * @param played what a book becomes on the rink and with the periods of this run
   */
  ByDate byDate(
      Collection<Optional<LocalDate>> days, List<String> compare, UnaryOperator<IcingBook> played)
      throws BookException {
    IcingBook newest = book();
    SortedMap<BookSeason, SeasonBooks> books = new TreeMap<>();
    SortedSet<BookSeason> used = new TreeSet<>();
    boolean undated = false;
    for (Optional<LocalDate> day : days) {
      Optional<BookSeason> on = day.flatMap(BookSeason::on);
      BookSeason covered = on.map(s -> inBook(newest, s)).orElse(newest.season());
      used.add(covered);
      undated |= on.isEmpty();
      if (on.isPresent()) {
        books.put(on.get(), on(day, compare, played));
      }
    }
    if (books.isEmpty() || undated) {
      return new ByDate(played.apply(newest), others(compare), books, used);
    }
    SeasonBooks last = books.get(books.lastKey());
    return new ByDate(last.book(), last.others(), books, used);
  }

  private SeasonBooks in(BookSeason covered, List<String> compare, UnaryOperator<IcingBook> played)
      throws BookException {
    List<IcingBook> others = new ArrayList<>();
    for (String other : new LinkedHashSet<>(compare)) {
      BookSeason own = inBook(Bookshelf.find(other, season()), covered);
      others.add(Bookshelf.find(other, Optional.of(own)));
    }
    return new SeasonBooks(played.apply(Bookshelf.find(name, Optional.of(covered))), others);
  }

  /**
   * The season of a book for a game of a season: its own where the command line or the book's file
   * gives one, else the game's, or the nearest that the book covers.
   */
  private BookSeason inBook(IcingBook newest, BookSeason game) {
    boolean given =
        newest.seasons().covers(Bookshelf.NEWEST) && !newest.season().equals(Bookshelf.NEWEST);
    if (season != null || given || game.compareTo(newest.season()) > 0) {
      return newest.season();
    }
    return newest.seasons().first().filter(f -> f.compareTo(game) > 0).orElse(game);
  }

  /** Name and season, as pages and the console say it. */
  static String title(IcingBook book) {
    return book.name() + ", season " + book.season();
  }

  /** The books as a page shows them: of several seasons the newest. */
  static BookNote note(ByDate books) {
    IcingBook book = books.book();
    List<BookNote.Line> lines =
        book.settings().values().stream()
            .map(
                s ->
                    new BookNote.Line(
                        s.key().meaning(), s.value(), s.clause(), source(s), s.assumed()))
            .toList();
    return new BookNote(
        books.title(),
        book.edition(),
        lines,
        books.others().stream().map(o -> new BookNote.Other(o.id(), title(o))).toList());
  }

  /** Where a setting was read and how sure that is, a phrase. */
  static String source(Setting s) {
    return s.source().isEmpty()
        ? s.grade().meaning()
        : s.source() + " (" + s.grade().meaning() + ")";
  }

  /** The book, and how much of it is assumed; where nobody chose it, how to choose one. */
  String line(ByDate rules) {
    String title = "Rulebook: " + rules.title();
    if (!spec.commandLine().getParseResult().hasMatchedOption("--rulebook")) {
      return title
          + ", as none was chosen: --rulebook names your league's (two-strides rulebooks).";
    }
    int assumed = rules.book().assumed().size();
    return assumed == 0
        ? title + "."
        : title
            + "; "
            + Format.count(assumed, "setting")
            + " assumed, no source found (rulings.html).";
  }
}
