package twostrides.tag;

/**
 * Something that cannot be saved as it stands, and in which field.
 *
 * @param field the sheet's column, which the page's field is named after; empty when it is the row
 *     as a whole
 * @param found the field's own words, empty when it is
 * @param expected what should stand there, a phrase
 * @param toDo what the person at the page can do, a sentence
 */
record FieldProblem(String field, String found, String expected, String toDo) {

  /** What to do about an empty field that has to be filled in. */
  static final String FILL_IN = "Fill it in; nothing was saved.";

  /** What to do about a field that cannot be left empty. */
  static final String CORRECT = "Correct it; nothing was saved.";

  /** What to do about any other field. */
  static final String CORRECT_OR_EMPTY =
      "Correct it, or leave it empty when you do not know; nothing was saved.";
}
