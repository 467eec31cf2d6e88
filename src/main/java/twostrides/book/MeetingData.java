package twostrides.book;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import twostrides.exits.Exit;
import twostrides.exits.Release;
import twostrides.exits.Restart;
import twostrides.exits.Situation;
import twostrides.exits.WayOut;
import twostrides.exits.When;
import twostrides.findings.Moment;
import twostrides.findings.PlayerReview;
import twostrides.findings.SeasonReview;
import twostrides.game.Pressure;
import twostrides.game.Strength;
import twostrides.race.Sighting;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.season.Assessed;
import twostrides.season.Flag;

/**
 * Everything of a season that can be watched, as data of the meeting page's script: a row a clip,
 * with the lists that it stands in. A page from disk may not fetch a file, so it is a script; names
 * in it are JSON texts.
 */
final class MeetingData {

  private static final JsonFactory FACTORY = new JsonFactory();

  /** A ready-made list; the order is that of the page. */
  private enum Kind {
    FLAG("flags"),
    NEAR("near misses"),
    LOOK("icings to look at first"),
    ICING("icings"),
    FAILED("failed clears, shorthanded"),
    CLEAR("clears, shorthanded"),
    PRESSURE("exits under heavy pressure"),
    RELEASE("pucks sent before the red line"),
    EXIT("every exit");

    private final String title;

    Kind(String title) {
      this.title = title;
    }
  }

  private static final List<Kind> KINDS = List.of(Kind.values());

  /** What can be watched at one line of a sheet. */
  private static final class Row {
    private final Situation at;
    private final Set<Kind> kinds = EnumSet.noneOf(Kind.class);
    private Optional<String> player;
    private String sentence = "";
    private List<Sighting> skaters = List.of();

    private Row(Situation at) {
      this.at = at;
      this.player = at.player();
    }

    private double second() {
      return at.when().video().orElseThrow();
    }
  }

  private final SeasonReview review;
  private final MomentWords words;
  private final Map<String, Row> rows = new LinkedHashMap<>();
  private final Map<String, Integer> games = new LinkedHashMap<>();

  /**
   * Gathers what can be watched.
   *
   * @param review what the book shows
   */
  MeetingData(SeasonReview review) {
    this.review = review;
    this.words = new MomentWords(review.window());
    review.season().games().forEach(g -> games.putIfAbsent(g.game().id(), games.size()));
    review.season().games().stream().flatMap(g -> g.exits().stream()).forEach(this::exit);
    review.season().releaseRecords().stream().map(Assessed::release).forEach(this::release);
    review.restarts().stream().filter(r -> r.faceOff().cause().icing()).forEach(this::icing);
    review.flags().forEach(this::flag);
  }

  /**
   * What the script of all pages has to know: the book's key, the game of each file, and which
   * seconds are not exact.
   *
   * @param videos the games' videos
   */
  String games(Videos videos) {
    Map<String, List<Row>> byGame = new LinkedHashMap<>();
    games.keySet().forEach(g -> byGame.put(g, new ArrayList<>()));
    inOrder().forEach(r -> byGame.get(r.at.when().game().id()).add(r));
    return "var GAMES = "
        + text(
            json -> {
              json.writeStartObject();
              json.writeStringField("key", key());
              json.writeArrayFieldStart("games");
              for (Map.Entry<String, List<Row>> e : byGame.entrySet()) {
                json.writeStartArray();
                json.writeString(e.getKey());
                double last = e.getValue().stream().mapToDouble(Row::second).max().orElse(0);
                json.writeRawValue(tenths(last));
                json.writeStartArray();
                for (Row r : e.getValue()) {
                  unsure(json, r, videos);
                }
                json.writeEndArray();
                json.writeEndArray();
              }
              json.writeEndArray();
              json.writeEndObject();
            })
        + ";\n";
  }

  /** The second of a row that is not exact, how far off, and the words for that. */
  private static void unsure(JsonGenerator json, Row r, Videos videos) throws IOException {
    When when = r.at.when();
    if (!videos.doubt(when).isEmpty()) {
      json.writeStartArray();
      json.writeRawValue(tenths(r.second()));
      json.writeRawValue(tenths(videos.off(when)));
      json.writeString(videos.doubt(when));
      json.writeEndArray();
    }
  }

  /**
   * The clips of the meeting page.
   *
   * @param rink the rink of the diagrams
   */
  String clips(Rink rink) {
    return "var CLIPS = " + text(json -> write(json, rink)) + ";\n";
  }

  /**
   * The same for every book of these games and this team, whatever its folder: the meeting list of
   * a browser belongs to it.
   */
  private String key() {
    String first = games.isEmpty() ? "none" : games.keySet().iterator().next();
    return Links.slug(Show.about(review)) + "-" + Integer.toHexString(first.hashCode());
  }

  private Optional<Row> row(Situation at) {
    When when = at.when();
    return when.video().isEmpty()
        ? Optional.empty()
        : Optional.of(rows.computeIfAbsent(key(when), k -> new Row(at)));
  }

  private static String key(When when) {
    return when.game().id() + "\n" + Show.source(when);
  }

  private void exit(Exit e) {
    row(e.at())
        .ifPresent(
            r -> {
              r.kinds.add(Kind.EXIT);
              if (e.at().state().strength() == Strength.SHORTHANDED) {
                r.kinds.add(e.way() == WayOut.KEPT_IN ? Kind.FAILED : Kind.CLEAR);
              }
              if (e.at().state().pressure().equals(Optional.of(Pressure.HEAVY))) {
                r.kinds.add(Kind.PRESSURE);
              }
              r.player = e.player().or(() -> r.player);
              r.sentence = words.exit(e);
            });
  }

  private void release(Release release) {
    row(release.at())
        .ifPresent(
            r -> {
              r.kinds.add(Kind.RELEASE);
              r.sentence = words.release(release);
            });
  }

  private void icing(Restart restart) {
    row(restart.at())
        .ifPresent(
            r -> {
              r.kinds.add(Kind.ICING);
              r.sentence =
                  r.sentence.isEmpty()
                      ? "Defensive-zone face-off: " + Format.cause(restart.faceOff().cause()) + "."
                      : r.sentence;
            });
  }

  private void flag(Flag f) {
    Kind kind = f.flagged() ? Kind.FLAG : f.nearMiss() ? Kind.NEAR : Kind.LOOK;
    if (kind == Kind.LOOK && !f.toLookAt()) {
      return;
    }
    row(f.release().at())
        .ifPresent(
            r -> {
              r.kinds.add(kind);
              r.sentence =
                  kind == Kind.LOOK
                      ? r.sentence + " Was there time to gain center? Only the video can tell."
                      : f.sentence();
              r.skaters =
                  f.assessment().gain().seen().stream()
                      .flatMap(s -> s.around().others().stream())
                      .toList();
            });
  }

  private List<Row> inOrder() {
    return rows.values().stream()
        .sorted(
            Comparator.comparing((Row r) -> games.get(r.at.when().game().id()))
                .thenComparing(Row::second)
                .thenComparing(r -> key(r.at.when())))
        .toList();
  }

  /** Words that many rows share, each written once. */
  private static final class Shared {
    private final Map<String, Integer> numbers = new LinkedHashMap<>();

    private int of(String word) {
      return numbers.computeIfAbsent(word, w -> numbers.size());
    }

    private void write(JsonGenerator json, String field) throws IOException {
      json.writeArrayFieldStart(field);
      for (String w : numbers.keySet()) {
        json.writeString(w);
      }
      json.writeEndArray();
    }
  }

  private void write(JsonGenerator json, Rink rink) throws IOException {
    Shared shared = new Shared();
    json.writeStartObject();
    json.writeStringField("ours", review.ourTeam().orElse(""));
    json.writeArrayFieldStart("rink");
    json.writeNumber(rink.length());
    json.writeNumber(rink.width());
    json.writeEndArray();
    json.writeArrayFieldStart("kinds");
    for (Kind k : KINDS) {
      json.writeString(k.title);
    }
    json.writeEndArray();
    Map<String, Integer> numbers = new HashMap<>();
    json.writeArrayFieldStart("rows");
    for (Row r : inOrder()) {
      numbers.put(key(r.at.when()), numbers.size());
      row(json, shared, r);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("players");
    for (PlayerReview p : review.shown()) {
      moments(json, shared, p, numbers);
    }
    json.writeEndArray();
    shared.write(json, "words");
    json.writeEndObject();
  }

  /** Numbers of words, but for second, period, score, place and skaters. */
  private static void row(JsonGenerator json, Shared shared, Row r) throws IOException {
    When when = r.at.when();
    json.writeStartArray();
    json.writeNumber(shared.of(when.game().id()));
    json.writeRawValue(tenths(r.second()));
    json.writeNumber(shared.of(Show.clock(when)));
    json.writeNumber(shared.of(r.at.team()));
    json.writeNumber(shared.of(r.at.opponent().orElse("")));
    json.writeNumber(shared.of(r.player.orElse("")));
    json.writeNumber(shared.of(r.at.state().strength().label()));
    json.writeNumber(shared.of(Show.score(r.at).orElse("")));
    json.writeNumber(r.kinds.stream().mapToInt(k -> 1 << KINDS.indexOf(k)).sum());
    json.writeNumber(shared.of(r.sentence));
    json.writeNumber(shared.of(when.sheet()));
    json.writeNumber(when.line());
    if (r.at.where().place().isPresent()) {
      Place p = r.at.where().place().get();
      json.writeRawValue(tenths(p.x()));
      json.writeRawValue(tenths(p.y()));
      for (Sighting s : r.skaters) {
        json.writeStartArray();
        json.writeNumber(s.racer().chases() ? 1 : 0);
        json.writeRawValue(tenths(s.racer().x()));
        json.writeRawValue(tenths(s.racer().y()));
        json.writeRawValue(tenths(s.racer().vx()));
        json.writeRawValue(tenths(s.racer().vy()));
        json.writeEndArray();
      }
    }
    json.writeEndArray();
  }

  private static void moments(
      JsonGenerator json, Shared shared, PlayerReview p, Map<String, Integer> numbers)
      throws IOException {
    json.writeStartArray();
    json.writeNumber(shared.of(p.player()));
    json.writeNumber(shared.of(p.team()));
    for (List<Moment> few : List.of(p.worked(), p.talk())) {
      json.writeStartArray();
      for (Moment m : few) {
        Integer number = numbers.get(key(m.at().when()));
        if (number != null) {
          json.writeNumber(number);
        }
      }
      json.writeEndArray();
    }
    json.writeEndArray();
  }

  private static String tenths(double value) {
    return ClipLists.plain(value);
  }

  private interface Writing {
    void to(JsonGenerator json) throws IOException;
  }

  private static String text(Writing writing) {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = FACTORY.createGenerator(out)) {
      writing.to(json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }
}
