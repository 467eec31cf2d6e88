package twostrides.tag;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * Serves the page to this machine only: the loopback address, a port that is free, a token in the
 * address. It makes no request of its own, and the page none to anybody else.
 */
public final class TagServer implements Closeable {

  /** Requests answered at once; a player holds one or two for the video. Assumed. */
  private static final int THREADS = 8;

  /** 127.0.0.1: this machine and no other can reach it. */
  private static final byte[] LOOPBACK = {127, 0, 0, 1};

  private static final String VIDEO = "video";
  private static final String BOOK = "book/";

  private final HttpServer server;
  private final ExecutorService threads = Executors.newFixedThreadPool(THREADS, TagServer::thread);
  private final Gate gate;
  private final TagActions actions;
  private final Optional<VideoFile> video;
  private final BookFiles book;
  private final String page;
  private final CountDownLatch ended = new CountDownLatch(1);

  private TagServer(
      HttpServer server, TagDesk desk, Optional<VideoFile> video, Path book, BookMaker maker) {
    this.server = server;
    this.gate = new Gate(server.getAddress().getPort());
    this.video = video;
    this.book = new BookFiles(book);
    this.actions = new TagActions(desk, maker, video.isPresent());
    this.page = resource("tag.html").replace("<!-- rink -->", RinkSvg.of(desk.rink()));
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
    HttpServer http =
        HttpServer.create(new InetSocketAddress(InetAddress.getByAddress(LOOPBACK), 0), 0);
    TagServer server = new TagServer(http, desk, video.map(VideoFile::new), book, maker);
    http.createContext("/", server::answer);
    http.setExecutor(server.threads);
    http.start();
    return server;
  }

  /** The address of the page; whoever knows it can tag. */
  public URI address() {
    return URI.create(
        "http://127.0.0.1:" + server.getAddress().getPort() + "/" + gate.token() + "/");
  }

  /** Waits until the page says that tagging has ended. */
  public void awaitEnd() throws InterruptedException {
    ended.await();
  }

  @Override
  public void close() {
    server.stop(0);
    threads.shutdownNow();
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "tag");
    thread.setDaemon(true);
    return thread;
  }

  private void answer(HttpExchange exchange) throws IOException {
    try (exchange) {
      Optional<String> path =
          gate.admitted(exchange.getRequestURI().getPath(), exchange.getRequestHeaders());
      if (path.isEmpty()) {
        Reply.plain(Reply.FORBIDDEN, "Open the address that two-strides tag printed.")
            .send(exchange);
      } else {
        answer(exchange, path.get());
      }
    }
  }

  private void answer(HttpExchange exchange, String path) throws IOException {
    String method = exchange.getRequestMethod();
    boolean reading = method.equals("GET") || method.equals("HEAD");
    if (reading && path.equals(VIDEO) && video.isPresent() && video.get().readable()) {
      video.get().send(exchange);
      return;
    }
    Reply reply;
    try {
      if (method.equals("POST")) {
        reply = actions.post(path, exchange);
      } else {
        reply = reading ? read(path) : Reply.plain(Reply.WRONG_METHOD, "Only GET, HEAD and POST.");
      }
    } catch (IOException | RuntimeException e) {
      String said = Objects.requireNonNullElse(e.getMessage(), e.getClass().getSimpleName());
      reply = TagActions.problem(Reply.BROKEN, "", said, "a disk that can be written");
    }
    reply.send(exchange);
    if (method.equals("POST") && path.equals(TagActions.END) && reply.status() == Reply.OK) {
      ended.countDown();
    }
  }

  private Reply read(String path) throws IOException {
    if (path.startsWith(BOOK)) {
      return book.reply(path.substring(BOOK.length()));
    }
    return switch (path) {
      case "" -> Reply.of(Reply.OK, Reply.HTML, page);
      case "tag.js" -> Reply.of(Reply.OK, "text/javascript; charset=utf-8", resource("tag.js"));
      case "tag.css" -> Reply.of(Reply.OK, "text/css; charset=utf-8", resource("tag.css"));
      case "state" -> Reply.of(Reply.OK, Reply.JSON, actions.state());
      default -> Reply.plain(Reply.NOT_FOUND, "No such page.");
    };
  }

  private static String resource(String name) {
    try (InputStream in = TagServer.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(
            "the program's own file " + name + " is missing from the jar");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
