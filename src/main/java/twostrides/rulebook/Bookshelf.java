package twostrides.rulebook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;
import twostrides.toml.TomlText;

/**
 * The books of this program, and books of a user's own that start from one of them. Each is a TOML
 * file: ours lie beside this class and are read by the same reader.
 */
public final class Bookshelf {

  /** The newest season for which a book was read; without a season asked for, books stand in it. */
  public static final BookSeason NEWEST = new BookSeason(2026);

  private static final List<String> IDS = resource("books.txt").lines().toList();

  /** Read when first asked for: a run needs one or two of them. */
  private static final Map<String, BookFile> OURS = new ConcurrentHashMap<>();

  private Bookshelf() {}

  private static Optional<BookFile> ours(String id) {
    return IDS.contains(id)
        ? Optional.of(OURS.computeIfAbsent(id, Bookshelf::load))
        : Optional.empty();
  }

  private static BookFile load(String id) {
    try {
      return BookReader.read("book " + id, resource(id + ".toml"), id, true);
    } catch (BookException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String resource(String name) {
    try (InputStream in = Bookshelf.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The ids of the books of this program, in the order in which they are listed. */
  public static List<String> ids() {
    return IDS;
  }

  /**
   * One of the books of this program in its newest season.
   *
   * @param id a name of {@link #ids}
   */
  public static IcingBook book(String id) {
    try {
      return find(id, Optional.empty());
    } catch (BookException e) {
      throw new IllegalArgumentException(e.getMessage(), e);
    }
  }

  /**
   * A book by its name, or from a file of the user's own.
   *
   * @param nameOrFile a name of {@link #ids}, or a path that ends in .toml
   * @param season the season; without one the newest that the book covers
   * @throws BookException when there is no such book, it is broken, or it does not cover the season
   */
  public static IcingBook find(String nameOrFile, Optional<BookSeason> season)
      throws BookException {
    return find(nameOrFile, season, "--rulebook");
  }

  /**
   * A book by its name, or from a file of the user's own.
   *
   * @param nameOrFile a name of {@link #ids}, or a path that ends in .toml
   * @param season the season; without one the newest that the book covers
   * @param option the option that names the book, for messages
   * @throws BookException when there is no such book, it is broken, or it does not cover the season
   */
  public static IcingBook find(String nameOrFile, Optional<BookSeason> season, String option)
      throws BookException {
    BookFile file;
    if (nameOrFile.endsWith(".toml")) {
      file = read(nameOrFile, option);
    } else {
      file = ours(nameOrFile).orElseThrow(() -> noSuchBook(nameOrFile, option));
    }
    return inSeason(file, season);
  }

  private static BookException noSuchBook(String name, String option) {
    String expected = "one of " + String.join(", ", IDS) + ", or a file that ends in .toml";
    String toDo = "The command rulebooks says what each is.";
    return wrong(option, "", "\"" + name + "\"", expected, toDo);
  }

  private static BookFile read(String file, String option) throws BookException {
    try {
      Path path = Path.of(file);
      String stem = String.valueOf(path.getFileName()).replaceAll("\\.toml$", "");
      return BookReader.read(path.toString(), TomlText.of(path), stem, false);
    } catch (IOException | InvalidPathException e) {
      String found =
          e instanceof NoSuchFileException || e instanceof InvalidPathException
              ? "no such file"
              : e instanceof CharacterCodingException
                  ? "text that is not UTF-8"
                  : "a file that cannot be read";
      String toDo = "Check the path given to " + option + ".";
      throw wrong(file, "", found, "a rulebook in TOML", toDo);
    }
  }

  private static IcingBook inSeason(BookFile file, Optional<BookSeason> asked)
      throws BookException {
    List<BookFile> chain = chain(file);
    Seasons covered =
        chain.stream()
            .map(BookFile::seasons)
            .flatMap(Optional::stream)
            .findFirst()
            .orElse(Seasons.ALL);
    BookSeason season =
        asked
            .or(() -> chain.stream().map(BookFile::season).flatMap(Optional::stream).findFirst())
            .orElseGet(() -> covered.covers(NEWEST) ? NEWEST : covered.last().orElse(NEWEST));
    if (!covered.covers(season)) {
      throw notCovered(file, season, covered);
    }
    Map<SettingKey, Setting> settings = new EnumMap<>(SettingKey.class);
    Map<SettingKey, BookFile.Entry> own = new EnumMap<>(SettingKey.class);
    for (SettingKey key : SettingKey.values()) {
      file.entry(key, season).ifPresent(e -> own.put(key, e));
      Optional<BookFile.Entry> entry =
          chain.stream().map(b -> b.entry(key, season)).flatMap(Optional::stream).findFirst();
      settings.put(key, entry.orElseThrow(() -> notCovered(file, season, covered)).setting());
    }
    IcingBook book =
        new IcingBook(file.id(), file.name(), file.edition(), covered, season, settings);
    Optional<Contradiction> contradiction = Contradiction.in(book);
    if (contradiction.isPresent()) {
      throw contradicts(file, book, contradiction.get(), own);
    }
    return book;
  }

  private static BookException notCovered(BookFile file, BookSeason season, Seasons covered) {
    String expected = "a season that the book covers: " + covered;
    String toDo = "Choose another season, or another book.";
    return wrong(file.file(), "season", season.toString(), expected, toDo);
  }

  private static BookException wrong(
      String file, String key, String found, String expected, String toDo) {
    return new BookException(file, OptionalInt.empty(), key, found, expected, toDo);
  }

  private static BookException contradicts(
      BookFile file, IcingBook book, Contradiction c, Map<SettingKey, BookFile.Entry> own) {
    SettingKey blame = own.containsKey(c.second()) ? c.second() : c.first();
    SettingKey other = blame == c.second() ? c.first() : c.second();
    BookFile.Entry at = own.get(blame);
    OptionalInt line = at == null ? OptionalInt.empty() : OptionalInt.of(at.line());
    String found =
        "\"%s\" together with %s = \"%s\""
            .formatted(book.setting(blame).value(), other.word(), book.setting(other).value());
    String expected = "settings that can hold together: " + c.why();
    String toDo = "Change one of the two; " + blame.word() + " may be " + blame.allowed() + ".";
    return new BookException(file.file(), line, blame.word(), found, expected, toDo);
  }

  private static BookException noSuchStart(BookFile file, String name) {
    String expected = "one of " + String.join(", ", IDS);
    return wrong(file.file(), "starts-from", "\"" + name + "\"", expected, "Correct the name.");
  }

  /** A file and the books it starts from, the file first. */
  private static List<BookFile> chain(BookFile file) throws BookException {
    List<BookFile> chain = new ArrayList<>();
    chain.add(file);
    Optional<String> next = file.startsFrom();
    while (next.isPresent()) {
      String name = next.get();
      BookFile base = ours(name).orElseThrow(() -> noSuchStart(file, name));
      chain.add(base);
      next = base.startsFrom();
    }
    return chain;
  }
}
