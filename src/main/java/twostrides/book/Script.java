package twostrides.book;

/** The pages' own script: filter, sort, clip lists, units, colours, local video. */
public final class Script {

  private static final String TEXT = ReviewBook.resource("book.js");

  private Script() {}

  /** The text of the script; it holds no closing tag. */
  public static String text() {
    return TEXT;
  }
}
