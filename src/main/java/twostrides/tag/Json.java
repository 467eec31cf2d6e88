package twostrides.tag;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import twostrides.serve.Reply;

/** The two forms of JSON that are read here: a flat object of words, and a list of words. */
final class Json {
  private static final JsonFactory FACTORY = new JsonFactory();

  private Json() {}

  /** What is written. */
  interface Writing {
    void to(JsonGenerator json) throws IOException;
  }

  /** JSON on one line. */
  static String text(Writing writing) {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = FACTORY.createGenerator(out)) {
      writing.to(json);
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory cannot fail", e);
    }
    return out.toString();
  }

  /** An object of what is written, on one line. */
  static String object(Writing fields) {
    return text(
        json -> {
          json.writeStartObject();
          fields.to(json);
          json.writeEndObject();
        });
  }

  /** The answer to a request that went well: an object of what is written. */
  static Reply reply(Writing fields) {
    return Reply.of(Reply.OK, Reply.JSON, object(fields));
  }

  /** Writes a flat object. */
  static void fields(JsonGenerator json, Map<String, String> fields) throws IOException {
    json.writeStartObject();
    for (Map.Entry<String, String> f : fields.entrySet()) {
      json.writeStringField(f.getKey(), f.getValue());
    }
    json.writeEndObject();
  }

  /** Writes a list of words on one line. */
  static String line(List<String> words) {
    return text(
        json -> {
          json.writeStartArray();
          for (String w : words) {
            json.writeString(w);
          }
          json.writeEndArray();
        });
  }

  /**
   * Reads a flat object of words.
   *
   * @throws IOException when the text is anything else
   */
  static Map<String, String> fields(String text) throws IOException {
    try (JsonParser in = FACTORY.createParser(text)) {
      expect(in, JsonToken.START_OBJECT);
      Map<String, String> fields = new LinkedHashMap<>();
      while (in.nextToken() == JsonToken.FIELD_NAME) {
        String name = in.currentName();
        expect(in, JsonToken.VALUE_STRING);
        fields.put(name, in.getText());
      }
      if (in.currentToken() != JsonToken.END_OBJECT || in.nextToken() != null) {
        throw new IOException("no flat object of words");
      }
      return fields;
    }
  }

  /**
   * Reads a list of words.
   *
   * @throws IOException when the text is anything else
   */
  static List<String> words(String line) throws IOException {
    try (JsonParser in = FACTORY.createParser(line)) {
      expect(in, JsonToken.START_ARRAY);
      List<String> words = new ArrayList<>();
      while (in.nextToken() == JsonToken.VALUE_STRING) {
        words.add(in.getText());
      }
      if (in.currentToken() != JsonToken.END_ARRAY || in.nextToken() != null) {
        throw new IOException("no list of words");
      }
      return words;
    }
  }

  private static void expect(JsonParser in, JsonToken token) throws IOException {
    if (in.nextToken() != token) {
      throw new IOException("expected " + token + ", found " + in.currentToken());
    }
  }
}
