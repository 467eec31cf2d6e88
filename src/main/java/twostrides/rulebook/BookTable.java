package twostrides.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The settings of several books as tables in Markdown, generated so that a document cannot differ
 * from what the program rules by.
 */
public final class BookTable {
  private BookTable() {}

  /**
   * One row a setting, one column a book: value, clause, grade.
   *
   * @param books the books
   */
  public static String comparison(List<IcingBook> books) {
    StringBuilder out = new StringBuilder("| setting |");
    books.forEach(b -> out.append(' ').append(b.id()).append(" |"));
    out.append("\n|---|").append("---|".repeat(books.size())).append('\n');
    for (SettingKey key : SettingKey.values()) {
      out.append("| `").append(key.word()).append("` |");
      for (IcingBook b : books) {
        out.append(' ').append(cell(b.setting(key))).append(" |");
      }
      out.append('\n');
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
  public static String sources(IcingBook book) {
    StringBuilder out =
        new StringBuilder("| setting | value | clause | source | grade |\n|---|---|---|---|---|\n");
    for (Setting s : book.settings().values()) {
      out.append("| `")
          .append(s.key().word())
          .append("` | ")
          .append(s.value())
          .append(" | ")
          .append(s.clause())
          .append(" | ")
          .append(s.source().isEmpty() ? s.grade().meaning() : s.source())
          .append(" | ")
          .append(s.grade().letter())
          .append(" |\n");
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
  public static String history(SettingKey key, List<String> ids, List<Season> seasons) {
    StringBuilder out = new StringBuilder("| book |");
    seasons.forEach(s -> out.append(' ').append(s).append(" |"));
    out.append("\n|---|").append("---|".repeat(seasons.size())).append('\n');
    for (String id : ids) {
      out.append("| `").append(id).append("` |");
      for (Season s : seasons) {
        try {
          Setting said = Bookshelf.find(id, Optional.of(s)).setting(key);
          out.append(' ')
              .append(said.value())
              .append(" (")
              .append(said.grade().letter())
              .append(") |");
        } catch (BookException e) {
          out.append(" not covered |");
        }
      }
      out.append('\n');
    }
    return out.toString();
  }

  /** One row a setting: its words and what it is. */
  public static String keys() {
    StringBuilder out =
        new StringBuilder("| setting | a book may say | what it is |\n|---|---|---|\n");
    for (SettingKey k : SettingKey.values()) {
      out.append("| `")
          .append(k.word())
          .append("` | ")
          .append(k.allowed())
          .append(" | ")
          .append(k.meaning())
          .append(" |\n");
    }
    return out.toString();
  }

  /** One row a fact: its words, what an unsaid one is taken for, and what it is. */
  public static String facts() {
    StringBuilder out =
        new StringBuilder("| column | words | left empty | what it is |\n|---|---|---|---|\n");
    for (FactKey k : FactKey.values()) {
      out.append("| `")
          .append(k.column())
          .append("` | ")
          .append(String.join(", ", k.words()))
          .append(" | ")
          .append(k.unsaid().word())
          .append(" | ")
          .append(k.meaning())
          .append(" |\n");
    }
    return out.toString();
  }

  /** One row a book: name, edition, seasons, settings by grade. */
  public static String list() {
    StringBuilder out =
        new StringBuilder(
            "| book | name | edition read | seasons | settings by how sure |\n|---|---|---|---|---|\n");
    for (String id : Bookshelf.ids()) {
      IcingBook b = Bookshelf.book(id);
      out.append("| `")
          .append(id)
          .append("` | ")
          .append(b.name())
          .append(" | ")
          .append(b.edition())
          .append(" | ")
          .append(b.seasons())
          .append(" | ")
          .append(grades(b))
          .append(" |\n");
    }
    return out.toString();
  }

  /**
   * How many settings of a book have each grade: "12 P, 3 S".
   *
   * @param book the book
   */
  public static String grades(IcingBook book) {
    List<String> parts = new ArrayList<>();
    for (Grade g : Grade.values()) {
      long n = book.settings().values().stream().filter(s -> s.grade() == g).count();
      if (n > 0) {
        parts.add(n + " " + g.letter());
      }
    }
    return String.join(", ", parts);
  }
}
