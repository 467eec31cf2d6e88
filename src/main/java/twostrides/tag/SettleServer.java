package twostrides.tag;

import java.io.Closeable;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.Function;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.serve.Answer;
import twostrides.serve.BookFiles;
import twostrides.serve.LocalServer;
import twostrides.serve.MediaFile;
import twostrides.serve.Reply;
import twostrides.serve.Request;

/**
 * Serves the book with the page that settles its icings by clicks on the video, to this machine
 * only.
 */
public final class SettleServer implements Closeable {

  private static final String BOOK = "book/";
  private static final String FLAGS = "book/flags.html";
  private static final String VIDEO = "video/";
  private static final String PICTURE = "picture-";
  private static final String END = "end";

  private final Settler settler;
  private final PlacesFile places;
  private final BookFiles book;
  private final Function<String, Optional<Path>> videos;
  private final String page;
  private final LocalServer server;
  private final CountDownLatch ended = new CountDownLatch(1);
  private volatile String picture = "";

  private SettleServer(
      Settler settler,
      PlacesFile places,
      Path book,
      Function<String, Optional<Path>> videos,
      Rink rink)
      throws IOException {
    this.settler = settler;
    this.places = places;
    this.book = new BookFiles(book);
    this.videos = videos;
    this.page = resource("settle.html").replace("<!-- rink -->", RinkSvg.of(rink));
    this.server = LocalServer.start("two-strides settle", this::answer);
  }

  /**
   * Starts serving.
   *
   * @param settler what weighs the icings
   * @param places the sheet that clicks go to
   * @param book folder of the review book
   * @param videos a game's video file, where there is one
   * @param rink the rink to click on
   * @throws IOException when no port is free
   */
  public static SettleServer start(
      Settler settler,
      PlacesFile places,
      Path book,
      Function<String, Optional<Path>> videos,
      Rink rink)
      throws IOException {
    return new SettleServer(settler, places, book, videos, rink);
  }

  /** The address of the page. */
  public URI address() {
    return server.address();
  }

  /** Waits until the page says that this is the end. */
  public void awaitEnd() throws InterruptedException {
    ended.await();
  }

  @Override
  public void close() {
    server.close();
  }

  private Answer answer(Request asked) {
    try {
      if (asked.reading()) {
        return read(asked.path());
      }
      return asked.method().equals("POST")
          ? post(asked)
          : Reply.plain(Reply.WRONG_METHOD, "Only GET, HEAD and POST.");
    } catch (IOException | RuntimeException e) {
      return TagActions.problem(
          Reply.BROKEN,
          "",
          Objects.requireNonNullElse(e.getMessage(), e.getClass().getSimpleName()),
          "a disk that can be written");
    }
  }

  private Answer read(String path) throws IOException {
    if (path.equals(FLAGS)) {
      String flags = Files.readString(book.folder().resolve("flags.html"));
      String linked =
          flags.replace("</body>", "<script src=\"../settle-link.js\"></script>\n</body>");
      return new Reply(
          Reply.OK, Reply.HTML, Reply.BOOK_POLICY, linked.getBytes(StandardCharsets.UTF_8));
    }
    if (path.startsWith(BOOK)) {
      return book.reply(path.substring(BOOK.length()));
    }
    if (path.startsWith(VIDEO) && path.substring(VIDEO.length()).matches("\\d{1,6}")) {
      int n = Integer.parseInt(path.substring(VIDEO.length()));
      Optional<Path> file =
          n < settler.icings().size()
              ? videos.apply(settler.icings().get(n).game())
              : Optional.empty();
      return file.isPresent()
          ? new MediaFile(file.get())
          : Reply.plain(Reply.NOT_FOUND, "No video of this game.");
    }
    if (path.startsWith(PICTURE)) {
      return new Reply(
          Reply.OK, "image/svg+xml", Reply.BOOK_POLICY, picture.getBytes(StandardCharsets.UTF_8));
    }
    return switch (path) {
      case "" -> Reply.of(Reply.OK, Reply.HTML, page);
      case "settle.js", "settle-link.js" -> Reply.of(Reply.OK, Reply.SCRIPT, resource(path));
      case "tag.css" -> Reply.of(Reply.OK, Reply.STYLE, resource(path));
      default -> Reply.plain(Reply.NOT_FOUND, "No such page.");
    };
  }

  private Answer post(Request asked) throws IOException {
    if (asked.type() == null || !asked.type().startsWith("application/json")) {
      return Reply.plain(Reply.WRONG_TYPE, "Expected application/json.");
    }
    if (asked.body().length > Request.LONGEST) {
      return TagActions.problem(Reply.TOO_LONG, "", "a very long request", "a few clicks");
    }
    Map<String, String> fields;
    int icing;
    List<Settler.Clicked> skaters;
    try {
      fields = Json.fields(new String(asked.body(), StandardCharsets.UTF_8));
      icing = Integer.parseInt(fields.getOrDefault("icing", "0"));
      skaters = skaters(fields.getOrDefault("skaters", ""));
      Objects.checkIndex(icing, Math.max(1, settler.icings().size()));
    } catch (IOException | RuntimeException e) {
      return TagActions.problem(
          Reply.REFUSED, "", "a request that is no form", "clicks of this page");
    }
    return switch (asked.path()) {
      case "state" -> Reply.of(Reply.OK, Reply.JSON, state());
      case "weigh" -> weigh(icing, skaters, false);
      case "save" -> weigh(icing, skaters, true);
      case "undo" -> said(places.undo() ? "Undone: the clicks saved last are out again." : "");
      case END ->
          exchange -> {
            said("Ended.").send(exchange);
            ended.countDown();
          };
      default -> Reply.plain(Reply.NOT_FOUND, "No such action.");
    };
  }

  /** One skater a piece: "own,yes,x,y" or with ",x,y" half a second later; semicolons between. */
  private static List<Settler.Clicked> skaters(String words) {
    List<Settler.Clicked> skaters = new ArrayList<>();
    for (String s : words.isEmpty() ? new String[0] : words.split(";", -1)) {
      String[] w = s.split(",", -1);
      boolean later = w.length == 6;
      skaters.add(
          new Settler.Clicked(
              w[0].equals("own"),
              w[1].equals("yes"),
              new Place(Double.parseDouble(w[2]), Double.parseDouble(w[3])),
              later
                  ? Optional.of(new Place(Double.parseDouble(w[4]), Double.parseDouble(w[5])))
                  : Optional.empty()));
    }
    return skaters;
  }

  private Reply weigh(int icing, List<Settler.Clicked> skaters, boolean save) throws IOException {
    Settler.Verdict verdict = settler.weigh(icing, skaters);
    picture = verdict.picture();
    boolean saved = save && !verdict.picture().isEmpty();
    if (saved) {
      places.add(settler.rows(icing, skaters));
    }
    return Reply.of(
        Reply.OK,
        Reply.JSON,
        Json.text(
            json -> {
              json.writeStartObject();
              json.writeBooleanField("settled", verdict.settled());
              json.writeBooleanField("saved", saved);
              json.writeStringField("gain", verdict.gain());
              json.writeStringField("sentence", verdict.sentence());
              json.writeBooleanField("picture", !verdict.picture().isEmpty());
              json.writeEndObject();
            }));
  }

  private static Reply said(String words) {
    return Reply.of(
        Reply.OK,
        Reply.JSON,
        Json.text(
            json -> {
              json.writeStartObject();
              json.writeStringField("said", words);
              json.writeEndObject();
            }));
  }

  private String state() {
    return Json.text(
        json -> {
          json.writeStartObject();
          json.writeArrayFieldStart("icings");
          for (Settler.Icing i : settler.icings()) {
            json.writeStartObject();
            json.writeStringField("game", i.game());
            json.writeStringField("clock", i.clock());
            json.writeStringField("heading", i.heading());
            json.writeStringField("sentence", i.sentence());
            json.writeNumberField("x", i.place().x());
            json.writeNumberField("y", i.place().y());
            if (i.video().isPresent()) {
              json.writeNumberField("video", i.video().getAsDouble());
            }
            json.writeBooleanField("film", videos.apply(i.game()).isPresent());
            json.writeEndObject();
          }
          json.writeEndArray();
          json.writeEndObject();
        });
  }

  private static String resource(String name) {
    return LocalServer.resource(SettleServer.class, name);
  }
}
