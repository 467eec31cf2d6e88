package twostrides.serve;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.InputStream;

/** A request that was admitted and read to its end. */
public final class Request {

  /** Longest body of a request, in bytes: every field of a form at its longest. Assumed. */
  public static final int LONGEST = 64 * 1024;

  private final String method;
  private final String path;
  private final String type;
  private final byte[] body;

  private Request(String method, String path, String type, byte[] body) {
    this.method = method;
    this.path = path;
    this.type = type;
    this.body = body;
  }

  /** Reads a request; of its body one byte more than it may have. */
  static Request read(HttpExchange exchange, String path) throws IOException {
    try (InputStream in = exchange.getRequestBody()) {
      return new Request(
          exchange.getRequestMethod(),
          path,
          exchange.getRequestHeaders().getFirst("Content-Type"),
          exchange.getRequestMethod().equals("POST") ? in.readNBytes(LONGEST + 1) : new byte[0]);
    }
  }

  /** GET, HEAD, POST or what else was sent. */
  public String method() {
    return method;
  }

  /** The path behind the token, without its leading slash. */
  public String path() {
    return path;
  }

  /** The media type of what it carries, null where it does not say. */
  public String type() {
    return type;
  }

  /** What it carries, at most {@link #LONGEST} bytes and one more. */
  public byte[] body() {
    return body.clone();
  }

  /** Whether it only reads. */
  public boolean reading() {
    return method.equals("GET") || method.equals("HEAD");
  }
}
