package twostrides.tag;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import twostrides.picture.PictureFit;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.rink.RinkMark;
import twostrides.serve.Answer;
import twostrides.serve.BookFiles;
import twostrides.serve.LocalServer;
import twostrides.serve.MediaFile;
import twostrides.serve.Reply;

/** The book with the page that settles its icings by clicks on the video. */
public final class SettleServer implements PageServer.Page {

  private static final PageServer.Words WORDS =
      new PageServer.Words("two-strides settle", "a few clicks", "clicks of this page");

  private static final String BOOK = "book/";
  private static final String FLAGS = "book/flags.html";
  private static final String VIDEO = "video/";
  private static final String PICTURE = "picture-";

  private final Settler settler;
  private final PlacesFile places;
  private final BookFiles book;
  private final Function<String, Optional<Path>> videos;
  private final String page;
  private final PictureClicks clicks;
  private volatile String picture = "";

  private SettleServer(
      Settler settler,
      PlacesFile places,
      Path book,
      Function<String, Optional<Path>> videos,
      Rink rink) {
    this.settler = settler;
    this.places = places;
    this.book = new BookFiles(book);
    this.videos = videos;
    this.page = resource("settle.html").replace("<!-- rink -->", RinkSvg.of(rink));
    this.clicks = new PictureClicks(rink);
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
  public static PageServer start(
      Settler settler,
      PlacesFile places,
      Path book,
      Function<String, Optional<Path>> videos,
      Rink rink)
      throws IOException {
    return PageServer.start(WORDS, new SettleServer(settler, places, book, videos, rink));
  }

  @Override
  public Answer read(String path) throws IOException {
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
      case "settle.js", "settle-picture.js", "settle-link.js", "ice.js" ->
          Reply.of(Reply.OK, Reply.SCRIPT, resource(path));
      case "tag.css" -> Reply.of(Reply.OK, Reply.STYLE, resource(path));
      default -> Reply.plain(Reply.NOT_FOUND, "No such page.");
    };
  }

  @Override
  public Reply act(String action, Map<String, String> fields) throws IOException {
    int icing;
    List<Settler.Clicked> skaters;
    try {
      icing = Integer.parseInt(fields.getOrDefault("icing", "0"));
      skaters = skaters(fields.getOrDefault("skaters", ""));
      Objects.checkIndex(icing, Math.max(1, settler.icings().size()));
      if (action.equals("picture")) {
        return clicks.answer(fields, settler.icings().get(icing).place());
      }
    } catch (RuntimeException e) {
      return FieldProblem.reply(Reply.REFUSED, "a request that is no form", WORDS.form());
    }
    return switch (action) {
      case "state" -> Reply.of(Reply.OK, Reply.JSON, state());
      case "weigh" -> weigh(icing, skaters, false);
      case "save" -> weigh(icing, skaters, true);
      case "undo" -> said(places.undo() ? "Undone: the clicks saved last are out again." : "");
      case PageServer.END -> said("Ended.");
      default -> Reply.plain(Reply.NOT_FOUND, "No such action.");
    };
  }

  /** One skater a piece: "own,yes" and a click, then that of half a second later. */
  private static List<Settler.Clicked> skaters(String words) {
    List<Settler.Clicked> skaters = new ArrayList<>();
    for (String s : words.isEmpty() ? new String[0] : words.split(";", -1)) {
      String[] w = s.split(",", -1);
      skaters.add(
          new Settler.Clicked(
              w[0].equals("own"),
              w[1].equals("yes"),
              click(w, 2),
              w.length > 5 ? Optional.of(click(w, 5)) : Optional.empty()));
    }
    return skaters;
  }

  /** Three of the words from a number on: x, y, and the error, empty for a click on the rink. */
  private static Settler.Click click(String[] w, int from) {
    return new Settler.Click(
        new Place(Double.parseDouble(w[from]), Double.parseDouble(w[from + 1])),
        w[from + 2].isEmpty() ? Optional.empty() : Optional.of(Double.parseDouble(w[from + 2])));
  }

  private Reply weigh(int icing, List<Settler.Clicked> skaters, boolean save) throws IOException {
    Settler.Verdict verdict = settler.weigh(icing, skaters);
    picture = verdict.picture();
    boolean saved = save && !verdict.picture().isEmpty();
    if (saved) {
      places.add(settler.rows(icing, skaters));
    }
    return Json.reply(
        json -> {
          json.writeBooleanField("settled", verdict.settled());
          json.writeBooleanField("saved", saved);
          json.writeStringField("gain", verdict.gain());
          json.writeStringField("sentence", verdict.sentence());
          json.writeBooleanField("picture", !verdict.picture().isEmpty());
        });
  }

  private static Reply said(String words) {
    return Json.reply(
        json -> {
          json.writeStringField("said", words);
        });
  }

  private String state() {
    return Json.object(
        json -> {
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
          json.writeNumberField("fewest", PictureFit.FEWEST);
          json.writeArrayFieldStart("marks");
          for (RinkMark m : clicks.marks()) {
            json.writeStartObject();
            json.writeStringField("id", m.id());
            json.writeStringField("name", m.name());
            json.writeNumberField("x", m.place().x());
            json.writeNumberField("y", m.place().y());
            json.writeEndObject();
          }
          json.writeEndArray();
        });
  }

  private static String resource(String name) {
    return LocalServer.resource(SettleServer.class, name);
  }
}
