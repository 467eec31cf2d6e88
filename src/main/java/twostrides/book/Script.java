package twostrides.book;

/**
 * The script that the pages share: lists that pick rows, sort, clip lists, units, colours, local
 * video. What the headings mean is put before it, so that no page has to say it again in each
 * heading.
 */
final class Script {

  private Script() {}

  /** The text of the script; it holds no closing tag. */
  static String text() {
    StringBuilder meanings = new StringBuilder("var MEANINGS = {\n__proto__: null,\n");
    for (String term : Glossary.terms()) {
      meanings
          .append("'")
          .append(term)
          .append("': '")
          .append(Glossary.brief(term).replace("\\", "\\\\").replace("'", "\\'"))
          .append("',\n");
    }
    return meanings + "};\n" + ReviewBook.resource("picks.js") + ReviewBook.resource("book.js");
  }
}
