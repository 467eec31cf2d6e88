package twostrides.book;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import twostrides.numbers.CompareRow;
import twostrides.numbers.Comparison;
import twostrides.numbers.Side;
import twostrides.numbers.SideBySide;
import twostrides.stats.Count;
import twostrides.stats.Difference;

/**
 * The counts and words that compare.js works with, as JSON inside the page: a page from disk may
 * not fetch a file. Names in it are untrusted text, so no {@code <} is left that could end the
 * element or open a comment; in JSON it only ever stands inside a text.
 */
final class CompareData {

  private static final JsonFactory FACTORY = new JsonFactory();

  private CompareData() {}

  /**
   * The data of a page.
   *
   * @param comparison what can be compared
   * @param opening the kind with which the page opens
   */
  static String json(Comparison comparison, Comparison.Kind opening) {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = FACTORY.createGenerator(out)) {
      json.writeStartObject();
      json.writeStringField("of", opening.word());
      json.writeNumberField("fewest", Count.FEWEST_TO_SAY);
      words(json);
      json.writeArrayFieldStart("teams");
      for (Comparison.TeamGames t : comparison.teams()) {
        json.writeStartArray();
        texts(json, t.games());
        json.writeEndArray();
      }
      json.writeEndArray();
      json.writeObjectFieldStart("sides");
      for (Comparison.Kind kind : comparison.sides().keySet()) {
        sides(json, kind, comparison);
      }
      json.writeEndObject();
      json.writeArrayFieldStart("apart");
      texts(json, CompareRow.APART);
      json.writeEndArray();
      rows(json, "summary", CompareRow.SUMMARY);
      rows(json, "ways", CompareRow.WAYS);
      rows(json, "against", CompareRow.AGAINST);
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory cannot fail", e);
    }
    return out.toString().replace("<", "\\u003c");
  }

  private static void words(JsonGenerator json) throws IOException {
    json.writeStringField("first", SideBySide.words(Difference.Verdict.FIRST_MORE));
    json.writeStringField("second", SideBySide.words(Difference.Verdict.SECOND_MORE));
    json.writeStringField("chance", SideBySide.words(Difference.Verdict.CHANCE));
    json.writeStringField("few", SideBySide.words(Difference.Verdict.TOO_FEW));
    json.writeStringField("nothing", SideBySide.NOTHING);
  }

  private static void texts(JsonGenerator json, List<String> texts) throws IOException {
    for (String t : texts) {
      json.writeString(t);
    }
  }

  /** Label, number of the team, and a list of whole numbers for each of its games. */
  private static void sides(JsonGenerator json, Comparison.Kind kind, Comparison comparison)
      throws IOException {
    json.writeArrayFieldStart(kind.word());
    for (Side s : comparison.sides().get(kind)) {
      json.writeStartArray();
      json.writeString(s.label());
      json.writeNumber(s.team());
      for (List<Integer> game : s.filled()) {
        json.writeStartArray();
        for (int n : game) {
          json.writeNumber(n);
        }
        json.writeEndArray();
      }
      json.writeEndArray();
    }
    json.writeEndArray();
  }

  private static void rows(JsonGenerator json, String table, List<CompareRow> rows)
      throws IOException {
    json.writeArrayFieldStart(table);
    for (CompareRow r : rows) {
      json.writeStartArray();
      json.writeString(r.label());
      for (int slot : r.slots()) {
        json.writeNumber(slot);
      }
      json.writeEndArray();
    }
    json.writeEndArray();
  }
}
