package twostrides.serve;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** An answer that fits in memory. */
public final class Reply implements Answer {

  public static final int OK = 200;
  public static final int FORBIDDEN = 403;
  public static final int NOT_FOUND = 404;
  public static final int WRONG_METHOD = 405;
  public static final int STALE = 409;
  public static final int TOO_LONG = 413;
  public static final int WRONG_TYPE = 415;
  public static final int REFUSED = 422;
  public static final int BROKEN = 500;

  public static final String HTML = "text/html; charset=utf-8";
  public static final String JSON = "application/json; charset=utf-8";
  public static final String STYLE = "text/css; charset=utf-8";
  public static final String SCRIPT = "text/javascript; charset=utf-8";
  public static final String PLAIN = "text/plain; charset=utf-8";

  /** Our page: its own script and style, nothing from elsewhere, in no frame. */
  public static final String PAGE_POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
          + " media-src 'self' blob:; connect-src 'self'; form-action 'none'; base-uri 'none';"
          + " frame-ancestors 'none'";

  /**
   * A page of the book: its own style, drawings with the colours written into them, its script, a
   * chosen local video. The pages say the same of themselves, for when they lie on a disk.
   */
  public static final String BOOK_POLICY =
      "default-src 'none'; style-src 'self' 'unsafe-inline'; img-src 'self';"
          + " media-src 'self' blob:; script-src 'self';"
          + " form-action 'none'; base-uri 'none'; frame-ancestors 'none'";

  private final int status;
  private final String type;
  private final String policy;
  private final byte[] body;

  /**
   * An answer.
   *
   * @param status the HTTP status
   * @param type the media type
   * @param policy the Content-Security-Policy
   * @param body the bytes
   */
  public Reply(int status, String type, String policy, byte[] body) {
    this.status = status;
    this.type = type;
    this.policy = policy;
    this.body = body.clone();
  }

  /** The HTTP status. */
  public int status() {
    return status;
  }

  public static Reply of(int status, String type, String text) {
    return new Reply(status, type, PAGE_POLICY, text.getBytes(StandardCharsets.UTF_8));
  }

  public static Reply plain(int status, String words) {
    return of(status, PLAIN, words + "\n");
  }

  /** Sends it; the body is left out for HEAD. */
  @Override
  public void send(HttpExchange exchange) throws IOException {
    guard(exchange.getResponseHeaders(), type, policy);
    if (exchange.getRequestMethod().equals("HEAD")) {
      exchange.getResponseHeaders().set("Content-Length", Integer.toString(body.length));
      exchange.sendResponseHeaders(status, -1);
      return;
    }
    exchange.sendResponseHeaders(status, body.length == 0 ? -1 : body.length);
    try (OutputStream out = exchange.getResponseBody()) {
      out.write(body);
    }
  }

  /** The headers that every answer carries. */
  static void guard(Headers headers, String type, String policy) {
    headers.set("Content-Type", type);
    headers.set("Content-Security-Policy", policy);
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("Referrer-Policy", "same-origin");
    headers.set("Cross-Origin-Resource-Policy", "same-origin");
    headers.set("Cross-Origin-Opener-Policy", "same-origin");
    headers.set("Cache-Control", "no-store");
  }
}
