package twostrides.rulebook;

import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The settings of several books as tables in Markdown, generated so that a document cannot differ
 * from what the program rules by.
 */
final class BookTable {
  private BookTable() {}

  /**
   * One row a setting, one column a book: value, clause, grade.
   *
   * @param books the books
   */
  static String comparison(List<IcingBook> books) {
    StringJoiner out = head("setting", books.stream().map(IcingBook::id));
    for (SettingKey key : SettingKey.values()) {
      out.add(row(code(key.word()), books.stream().map(b -> cell(b.setting(key)))));
    }
    return out.toString();
  }

  private static String cell(Setting s) {
    String clause = s.clause().isEmpty() ? "" : s.clause() + ", ";
    return s.value() + " (" + clause + s.grade().letter() + ")";
  }

  /**
   * One row a setting of one book with its source.
   *
   * @param book the book
   */
  static String sources(IcingBook book) {
    StringJoiner out = head("setting", Stream.of("value", "clause", "source", "grade"));
    for (Setting s : book.settings().values()) {
      String source = s.source().isEmpty() ? s.grade().meaning() : s.source();
      out.add(
          row(code(s.key().word()), Stream.of(s.value(), s.clause(), source, s.grade().letter())));
    }
    return out.toString();
  }

  /**
   * One row a book, one column a season: what it says on one point, with its grade.
   *
   * @param key the point
   * @param ids the books
   * @param seasons the seasons
   */
  static String history(SettingKey key, List<String> ids, List<BookSeason> seasons) {
    StringJoiner out = head("book", seasons.stream().map(BookSeason::toString));
    for (String id : ids) {
      out.add(row(code(id), seasons.stream().map(s -> said(key, id, s))));
    }
    return out.toString();
  }

  private static String said(SettingKey key, String id, BookSeason season) {
    try {
      Setting said = Bookshelf.find(id, Optional.of(season)).setting(key);
      return said.value() + " (" + said.grade().letter() + ")";
    } catch (BookException e) {
      return "not covered";
    }
  }

  /** One row a setting: its words and what it is. */
  static String keys() {
    StringJoiner out = head("setting", Stream.of("a book may say", "what it is"));
    for (SettingKey k : SettingKey.values()) {
      out.add(row(code(k.word()), Stream.of(k.allowed(), k.meaning())));
    }
    return out.toString();
  }

  /** One row a fact: its words, what an unsaid one is taken for, and what it is. */
  static String facts() {
    StringJoiner out = head("column", Stream.of("words", "left empty", "what it is"));
    for (FactKey k : FactKey.values()) {
      String words = String.join(", ", k.words());
      out.add(row(code(k.column()), Stream.of(words, k.unsaid().word(), k.meaning())));
    }
    return out.toString();
  }

  /** One row a book: name, edition, seasons, settings by grade. */
  static String list() {
    StringJoiner out =
        head("book", Stream.of("name", "edition read", "seasons", "settings by how sure"));
    for (String id : Bookshelf.ids()) {
      IcingBook b = Bookshelf.book(id);
      out.add(row(code(id), Stream.of(b.name(), b.edition(), b.seasons().toString(), b.grades())));
    }
    return out.toString();
  }

  private static StringJoiner head(String first, Stream<String> others) {
    String names = row(first, others);
    return new StringJoiner("\n", "", "\n").add(names).add(names.replaceAll(" [^|]* \\|", "---|"));
  }

  private static String row(String first, Stream<String> others) {
    return Stream.concat(Stream.of(first), others).collect(Collectors.joining(" | ", "| ", " |"));
  }

  private static String code(String word) {
    return "`" + word + "`";
  }
}
