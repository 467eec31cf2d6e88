package twostrides.serve;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;

/** What a request gets. */
public interface Answer {

  /** Sends status, headers and body. */
  void send(HttpExchange exchange) throws IOException;
}
