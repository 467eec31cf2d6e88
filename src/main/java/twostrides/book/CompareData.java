package twostrides.book;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import twostrides.findings.ComparedGroup;
import twostrides.findings.ComparedGroup.Apart;
import twostrides.findings.ComparedGroup.Cell;
import twostrides.findings.ComparedGroup.Measure;
import twostrides.findings.ComparedGroup.Tally;
import twostrides.findings.Comparison;
import twostrides.findings.ShownWay;
import twostrides.stats.Count;

/**
 * The counts and words that compare.js works with, as JSON inside the page: a page from disk may
 * not fetch a file. Names in it are untrusted text, so no {@code <} is left that could end the
 * element or open a comment; in JSON it only ever stands inside a text.
 */
final class CompareData {

  private static final JsonFactory FACTORY = new JsonFactory();

  /** One row of a table: its words and the measures that it sums up. */
  private record Row(String label, List<Integer> slots) {}

  private static final List<ShownWay> WAYS = List.of(ShownWay.values());
  private static final List<Measure> MEASURES = List.of(Measure.values());
  private static final List<Apart> STRENGTHS = List.of(Apart.values());

  private CompareData() {}

  /**
   * The data of the page.
   *
   * @param comparison what can be set side by side
   * @param opening the kind that the page opens with
   */
  static String json(Comparison comparison, Comparison.Kind opening) {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = FACTORY.createGenerator(out)) {
      json.writeStartObject();
      json.writeStringField("of", opening.word());
      json.writeNumberField("fewest", Count.FEWEST_TO_SAY);
      json.writeStringField("few", Format.FEW);
      json.writeArrayFieldStart("teams");
      for (Comparison.TeamGames t : comparison.teams()) {
        json.writeStartArray();
        for (String game : t.games()) {
          json.writeString(game);
        }
        json.writeEndArray();
      }
      json.writeEndArray();
      json.writeObjectFieldStart("sides");
      for (Map.Entry<Comparison.Kind, List<ComparedGroup>> e : comparison.groups().entrySet()) {
        json.writeArrayFieldStart(e.getKey().word());
        for (ComparedGroup g : e.getValue()) {
          group(json, g);
        }
        json.writeEndArray();
      }
      json.writeEndObject();
      json.writeArrayFieldStart("apart");
      json.writeString("even");
      json.writeString("shorthanded");
      json.writeEndArray();
      rows(json, "summary", summary());
      rows(
          json,
          "ways",
          WAYS.stream().map(w -> new Row(w.label(), List.of(WAYS.indexOf(w)))).toList());
      rows(json, "against", List.of(new Row("exit attempts", List.of(slot(Measure.AGAINST)))));
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory cannot fail", e);
    }
    return out.toString().replace("<", "\\u003c");
  }

  private static List<Row> summary() {
    return List.of(
        new Row("icing, of attempts", WAYS.stream().map(WAYS::indexOf).toList()),
        new Row(
            "sent before the red line, of carries and passes",
            List.of(slot(Measure.RELEASED_SHORT))),
        new Row("iced, of pucks sent before the red line", List.of(slot(Measure.ICED_RELEASES))),
        new Row("failed clears, of attempts", List.of(slot(Measure.KEPT_IN))));
  }

  /** The number under which the page's script knows a measure: first the ways out. */
  private static int slot(Measure measure) {
    return WAYS.size() + MEASURES.indexOf(measure) - 1;
  }

  private static int slot(Cell cell) {
    int slot =
        cell.measure() == Measure.ICED_BY_WAY ? WAYS.indexOf(cell.way()) : slot(cell.measure());
    return slot * STRENGTHS.size() + STRENGTHS.indexOf(cell.strength());
  }

  /** Label, team, then each game: cell, hits, cases, cell, ... */
  private static void group(JsonGenerator json, ComparedGroup g) throws IOException {
    json.writeStartArray();
    json.writeString(g.label());
    json.writeNumber(g.team());
    for (Map<Cell, Tally> game : g.games()) {
      List<Map.Entry<Cell, Tally>> cells =
          game.entrySet().stream()
              .sorted((a, b) -> Integer.compare(slot(a.getKey()), slot(b.getKey())))
              .toList();
      json.writeStartArray();
      for (Map.Entry<Cell, Tally> e : cells) {
        json.writeNumber(slot(e.getKey()));
        json.writeNumber(e.getValue().hits());
        json.writeNumber(e.getValue().cases());
      }
      json.writeEndArray();
    }
    json.writeEndArray();
  }

  private static void rows(JsonGenerator json, String table, List<Row> rows) throws IOException {
    json.writeArrayFieldStart(table);
    for (Row r : rows) {
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
