package twostrides.book;

import java.util.List;

/**
 * The script that the pages share: lists that pick rows, sort, clip lists, units, colours, local
 * video, the meeting list. What the headings mean is put before it, so that no page has to say it
 * again in each heading.
 */
final class Script {

  private Script() {}

  /**
   * The text of the script.
   *
   * @param games what it has to know of the games and their videos, a statement
   */
  static String text(String games) {
    StringBuilder meanings = new StringBuilder(games + "var MEANINGS = {\n__proto__: null,\n");
    for (String term : Glossary.terms()) {
      meanings
          .append("'")
          .append(term)
          .append("': '")
          .append(Glossary.brief(term).replace("\\", "\\\\").replace("'", "\\'"))
          .append("',\n");
    }
    meanings.append("};\n");
    for (String part :
        List.of("kit.js", "picks.js", "video.js", "list.js", "clips.js", "fit.js", "book.js")) {
      meanings.append(ReviewBook.resource(part));
    }
    return meanings.toString();
  }
}
