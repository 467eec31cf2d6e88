package twostrides.tag;

import java.io.Closeable;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.CountDownLatch;
import twostrides.serve.Answer;
import twostrides.serve.LocalServer;
import twostrides.serve.Reply;
import twostrides.serve.Request;

/** Serves a page that clicks and writes, to this machine only, until the page says that it ends. */
public final class PageServer implements Closeable {

  /** The action that ends the work, once its answer is sent. */
  static final String END = "end";

  private final Page page;
  private final Words words;
  private final LocalServer server;
  private final CountDownLatch ended = new CountDownLatch(1);

  /** What a page gives out and does. */
  interface Page {
    /** The answer to a request that only reads. */
    Answer read(String path) throws IOException;

    /**
     * Does what the page asks for.
     *
     * @param action the path
     * @param fields the flat object that the request carries
     */
    Reply act(String action, Map<String, String> fields) throws IOException;
  }

  /**
   * What is said of a page.
   *
   * @param command the command that prints the address
   * @param fits what fits into a request, a phrase
   * @param form what a request should be, a phrase
   */
  record Words(String command, String fits, String form) {}

  private PageServer(Words words, Page page) throws IOException {
    this.words = words;
    this.page = page;
    this.server = LocalServer.start(words.command(), this::answer);
  }

  /**
   * Starts serving.
   *
   * @throws IOException when no port is free
   */
  static PageServer start(Words words, Page page) throws IOException {
    return new PageServer(words, page);
  }

  /** The address of the page; whoever knows it can do all that the page can. */
  public URI address() {
    return server.address();
  }

  /**
   * Waits until the page says that this is the end.
   *
   * @throws InterruptedException when the thread that waits is interrupted
   */
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
        return page.read(asked.path());
      }
      if (!asked.method().equals("POST")) {
        return Reply.plain(Reply.WRONG_METHOD, "Only GET, HEAD and POST.");
      }
      Reply reply = post(words, page, asked.path(), asked.type(), asked.body());
      return asked.path().equals(END) && reply.status() == Reply.OK ? last(reply) : reply;
    } catch (IOException | RuntimeException e) {
      return FieldProblem.reply(
          Reply.BROKEN,
          Objects.requireNonNullElse(e.getMessage(), e.getClass().getSimpleName()),
          "a disk that can be written");
    }
  }

  /** The answer that ends the work once it is sent. */
  private Answer last(Reply reply) {
    return exchange -> {
      reply.send(exchange);
      ended.countDown();
    };
  }

  /**
   * Reads a form and does what it asks for.
   *
   * @param path the action
   * @param type the media type of what the request carries, null where it does not say
   * @param body what the request carries
   */
  static Reply post(Words words, Page page, String path, String type, byte[] body)
      throws IOException {
    if (type == null || !type.startsWith("application/json")) {
      return Reply.plain(Reply.WRONG_TYPE, "Expected application/json.");
    }
    if (body.length > Request.LONGEST) {
      return FieldProblem.reply(Reply.TOO_LONG, "a very long request", words.fits());
    }
    Map<String, String> fields;
    try {
      fields = new HashMap<>(Json.fields(new String(body, StandardCharsets.UTF_8)));
    } catch (IOException e) {
      return FieldProblem.reply(Reply.REFUSED, "a request that is no form", words.form());
    }
    return page.act(path, fields);
  }
}
