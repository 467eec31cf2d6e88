package twostrides.serve;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.BindException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Serves pages to this machine only: the loopback address, a port that is free, a token in the
 * address. It makes no request of its own, and the pages none to anybody else.
 */
public final class LocalServer implements Closeable {

  /**
   * Milliseconds in which a request has to be read to its end; on one machine it takes a few.
   * Assumed.
   */
  private static final long PATIENCE_MS = 10_000;

  /** 127.0.0.1: this machine and no other can reach it. */
  private static final byte[] LOOPBACK = {127, 0, 0, 1};

  private final HttpServer server;
  private final Workers workers = new Workers(PATIENCE_MS);
  private final Gate gate;
  private final String command;
  private final Site site;

  /** What is served. */
  public interface Site {
    /** The answer to a request that was admitted. */
    Answer answer(Request request) throws IOException;
  }

  private LocalServer(HttpServer server, String command, Site site) {
    this.server = server;
    this.gate = new Gate(server.getAddress().getPort());
    this.command = command;
    this.site = site;
  }

  /**
   * Starts serving.
   *
   * @param command the command that prints the address, for whoever comes without it
   * @param site what is served
   * @throws IOException when no port is free
   */
  public static LocalServer start(String command, Site site) throws IOException {
    return start(command, site, 0);
  }

  /**
   * Starts serving at a port, or at another where that is taken.
   *
   * @param command the command that prints the address, for whoever comes without it
   * @param site what is served
   * @param port the port; 0 for any
   * @throws IOException when no port is free
   */
  public static LocalServer start(String command, Site site, int port) throws IOException {
    HttpServer http;
    try {
      http = at(port);
    } catch (BindException e) {
      http = at(0);
    }
    LocalServer server = new LocalServer(http, command, site);
    http.createContext("/", server::answer);
    http.setExecutor(server.workers);
    http.start();
    return server;
  }

  private static HttpServer at(int port) throws IOException {
    return HttpServer.create(new InetSocketAddress(InetAddress.getByAddress(LOOPBACK), port), 0);
  }

  /** The address of the first page; whoever knows it can ask for everything. */
  public URI address() {
    return URI.create(
        "http://127.0.0.1:" + server.getAddress().getPort() + "/" + gate.token() + "/");
  }

  @Override
  public void close() {
    server.stop(0);
    workers.close();
  }

  private void answer(HttpExchange exchange) throws IOException {
    try (exchange) {
      Optional<String> path =
          gate.admitted(exchange.getRequestURI().getPath(), exchange.getRequestHeaders());
      if (path.isEmpty()) {
        Reply.plain(Reply.FORBIDDEN, "Open the address that " + command + " printed.")
            .send(exchange);
        return;
      }
      Request request = Request.read(exchange, path.get());
      workers.heard();
      site.answer(request).send(exchange);
    }
  }

  /**
   * The text of a file of the program.
   *
   * @param owner a class beside it
   * @param name its name
   */
  public static String resource(Class<?> owner, String name) {
    try (InputStream in = owner.getResourceAsStream(name)) {
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
