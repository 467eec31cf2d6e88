package twostrides.tag;

import java.io.Closeable;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import twostrides.serve.Answer;
import twostrides.serve.BookFiles;
import twostrides.serve.LocalServer;
import twostrides.serve.MediaFile;
import twostrides.serve.Reply;
import twostrides.serve.Request;

/** Serves the page that logs exits, its one video and the book made of it, to this machine only. */
public final class TagServer implements Closeable {

  private static final String VIDEO = "video";
  private static final String BOOK = "book/";

  private final LocalServer server;
  private final TagActions actions;
  private final Optional<MediaFile> video;
  private final BookFiles book;
  private final String page;
  private final CountDownLatch ended = new CountDownLatch(1);

  private TagServer(TagDesk desk, Optional<MediaFile> video, Path book, BookMaker maker)
      throws IOException {
    this.video = video;
    this.book = new BookFiles(book);
    this.actions = new TagActions(desk, maker, video.isPresent());
    this.page = resource("tag.html").replace("<!-- rink -->", RinkSvg.of(desk.rink()));
    this.server = LocalServer.start("two-strides tag", this::answer);
  }

  /**
   * Starts serving.
   *
   * @param desk the rows
   * @param video a video to stream, the only file of this machine that the page can read besides
   *     the book
   * @param book folder of the review book
   * @param maker makes the book
   * @throws IOException when no port is free
   */
  public static TagServer start(TagDesk desk, Optional<Path> video, Path book, BookMaker maker)
      throws IOException {
    return new TagServer(desk, video.map(MediaFile::new), book, maker);
  }

  /** The address of the page; whoever knows it can tag. */
  public URI address() {
    return server.address();
  }

  /** Waits until the page says that tagging has ended. */
  public void awaitEnd() throws InterruptedException {
    ended.await();
  }

  @Override
  public void close() {
    server.close();
  }

  private Answer answer(Request asked) {
    if (asked.reading()
        && asked.path().equals(VIDEO)
        && video.isPresent()
        && video.get().readable()) {
      return video.get();
    }
    Reply reply;
    try {
      if (asked.method().equals("POST")) {
        reply = actions.post(asked.path(), asked.type(), asked.body());
      } else {
        reply =
            asked.reading()
                ? read(asked.path())
                : Reply.plain(Reply.WRONG_METHOD, "Only GET, HEAD and POST.");
      }
    } catch (IOException | RuntimeException e) {
      String said = Objects.requireNonNullElse(e.getMessage(), e.getClass().getSimpleName());
      reply = TagActions.problem(Reply.BROKEN, "", said, "a disk that can be written");
    }
    boolean end =
        asked.method().equals("POST")
            && asked.path().equals(TagActions.END)
            && reply.status() == Reply.OK;
    return end ? last(reply) : reply;
  }

  /** The answer that ends the tagging once it is sent. */
  private Answer last(Reply reply) {
    return exchange -> {
      reply.send(exchange);
      ended.countDown();
    };
  }

  private Reply read(String path) throws IOException {
    if (path.startsWith(BOOK)) {
      return book.reply(path.substring(BOOK.length()));
    }
    return switch (path) {
      case "" -> Reply.of(Reply.OK, Reply.HTML, page);
      case "tag.js" -> Reply.of(Reply.OK, Reply.SCRIPT, resource("tag.js"));
      case "tag.css" -> Reply.of(Reply.OK, Reply.STYLE, resource("tag.css"));
      case "state" -> Reply.of(Reply.OK, Reply.JSON, actions.state(History.ANYBODY));
      default -> Reply.plain(Reply.NOT_FOUND, "No such page.");
    };
  }

  private static String resource(String name) {
    return LocalServer.resource(TagServer.class, name);
  }
}
