package twostrides.tag;

import java.util.List;
import twostrides.serve.Reply;

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

  /** The answer to a request that failed as a whole: nothing was saved. */
  static Reply reply(int status, String found, String expected) {
    return reply(
        status, List.of(new FieldProblem("", found, expected, "Try again; nothing was saved.")));
  }

  /** The answer that names problems. */
  static Reply reply(int status, List<FieldProblem> problems) {
    return Reply.of(
        status,
        Reply.JSON,
        Json.object(
            json -> {
              json.writeArrayFieldStart("problems");
              for (FieldProblem p : problems) {
                json.writeStartObject();
                json.writeStringField("field", p.field());
                json.writeStringField("found", p.found());
                json.writeStringField("expected", p.expected());
                json.writeStringField("toDo", p.toDo());
                json.writeEndObject();
              }
              json.writeEndArray();
            }));
  }
}
