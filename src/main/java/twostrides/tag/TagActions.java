package twostrides.tag;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import twostrides.serve.Reply;

/**
 * What the page asks for. Every request carries a flat JSON object of words, every answer the state
 * as it is then, or the problems field by field.
 */
final class TagActions {

  private static final String ID = "id";
  private static final String VERSION = "version";

  /** Which page asks: words that it made up, the same for every request of it. */
  private static final String PAGE = "page";

  private final TagDesk desk;
  private final BookMaker maker;
  private final boolean hasVideo;

  /**
   * The actions.
   *
   * @param desk the rows
   * @param maker makes the book
   * @param hasVideo whether the server streams a video
   */
  TagActions(TagDesk desk, BookMaker maker, boolean hasVideo) {
    this.desk = desk;
    this.maker = maker;
    this.hasVideo = hasVideo;
  }

  /**
   * Does what a page asks for.
   *
   * @param path the action
   * @param fields what the request carries
   */
  Reply post(String path, Map<String, String> fields) throws IOException {
    String page = fields.getOrDefault(PAGE, History.ANYBODY);
    fields.remove(PAGE);
    try {
      return act(path, fields, page);
    } catch (TagRefusedException e) {
      return FieldProblem.reply(e.stale() ? Reply.STALE : Reply.REFUSED, e.problems());
    }
  }

  private Reply act(String path, Map<String, String> fields, String page)
      throws TagRefusedException, IOException {
    String said = "";
    switch (path) {
      case "state" -> {
        return Reply.of(Reply.OK, Reply.JSON, state(page));
      }
      case "add" -> desk.add(fields, page);
      case "edit" -> {
        int id = number(ID, fields);
        int version = number(VERSION, fields);
        desk.edit(id, version, fields, page);
      }
      case "delete" -> desk.delete(number(ID, fields), number(VERSION, fields), page);
      case "undo" -> said = desk.undo(page);
      case "setup" -> desk.setUp(fields);
      case "book" -> {
        return book();
      }
      case PageServer.END -> {
        return end();
      }
      default -> {
        return Reply.plain(Reply.NOT_FOUND, "No such action.");
      }
    }
    return Reply.of(Reply.OK, Reply.JSON, state(page, said));
  }

  private Reply book() {
    BookMaker.Made made = desk.tagged() == 0 ? nothing() : maker.make();
    return Json.reply(
        json -> {
          json.writeBooleanField("made", made.made());
          json.writeStringField("words", made.words());
        });
  }

  private static BookMaker.Made nothing() {
    return new BookMaker.Made(false, "No exit is tagged yet: a book needs at least one.");
  }

  private Reply end() {
    String words = desk.closing();
    return Json.reply(
        json -> {
          json.writeStringField("words", words);
        });
  }

  /** A whole number of a request, which is then no field of the row. */
  private static int number(String field, Map<String, String> fields) throws TagRefusedException {
    String words = fields.getOrDefault(field, "");
    fields.remove(field);
    if (!words.matches("\\d{1,9}")) {
      throw new TagRefusedException(
          List.of(
              new FieldProblem(
                  "", words, "the " + field + " of an exit, a number", "Load the page again.")));
    }
    return Integer.parseInt(words);
  }

  /**
   * Everything that a page shows.
   *
   * @param page which page
   */
  String state(String page) {
    return state(page, "");
  }

  private String state(String page, String said) {
    synchronized (desk) {
      return Json.text(json -> state(json, page, said));
    }
  }

  private void state(JsonGenerator json, String page, String said) throws IOException {
    json.writeStartObject();
    json.writeStringField("sheet", String.valueOf(desk.sheet().getFileName()));
    json.writeStringField("opening", desk.opening());
    json.writeStringField("warning", desk.warning());
    json.writeStringField("said", said);
    json.writeBooleanField("video", hasVideo);
    json.writeBooleanField("canUndo", desk.canUndo(page));
    json.writeFieldName("setup");
    Json.fields(json, desk.setup());
    json.writeArrayFieldStart("rows");
    for (TagRow row : desk.rows()) {
      json.writeStartObject();
      json.writeNumberField(ID, row.id());
      json.writeNumberField(VERSION, row.version());
      json.writeFieldName("cells");
      Json.fields(json, row.cells());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("players");
    TreeSet<String> players = new TreeSet<>();
    desk.rows().forEach(r -> players.add(r.cells().getOrDefault("player", "")));
    players.remove("");
    for (String p : players) {
      json.writeString(p);
    }
    json.writeEndArray();
    json.writeEndObject();
  }
}
