package twostrides.serve;

import com.sun.net.httpserver.Headers;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/**
 * Who may ask. The address holds a token that nobody can guess; the Host has to be this machine by
 * its own name or number, since a foreign name that resolves to this machine is a trick (DNS
 * rebinding); an Origin, where there is one, has to be this page's own.
 */
final class Gate {

  /** Bytes of the token: 128 bits cannot be guessed. */
  private static final int TOKEN_BYTES = 16;

  private final String token;
  private final List<String> hosts;

  /**
   * A gate with a new token.
   *
   * @param port the port that the server listens on
   */
  Gate(int port) {
    byte[] random = new byte[TOKEN_BYTES];
    new SecureRandom().nextBytes(random);
    this.token = HexFormat.of().formatHex(random);
    this.hosts = List.of("127.0.0.1:" + port, "localhost:" + port, "[::1]:" + port);
  }

  String token() {
    return token;
  }

  /**
   * The path behind the token, without its leading slash.
   *
   * @param path the path that was asked for
   * @param headers the request's headers
   * @return empty when the request is refused
   */
  Optional<String> admitted(String path, Headers headers) {
    int end = path.indexOf('/', 1);
    boolean known = end > 0 && same(path.substring(1, end));
    return known && hostIsOurs(headers) && originIsOurs(headers)
        ? Optional.of(path.substring(end + 1))
        : Optional.empty();
  }

  private boolean same(String given) {
    return MessageDigest.isEqual(
        given.getBytes(StandardCharsets.UTF_8), token.getBytes(StandardCharsets.UTF_8));
  }

  private boolean hostIsOurs(Headers headers) {
    List<String> given = headers.getOrDefault("Host", List.of());
    return given.size() == 1 && hosts.contains(given.get(0));
  }

  private boolean originIsOurs(Headers headers) {
    List<String> given = headers.getOrDefault("Origin", List.of());
    return given.isEmpty()
        || (given.size() == 1 && given.get(0).equals("http://" + headers.getFirst("Host")));
  }
}
