package twostrides.serve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a shown book gives out, and what it keeps to itself. */
class ShowSiteTest {

  private final HttpClient http = HttpClient.newHttpClient();
  private final byte[] film = new byte[300_000];

  @TempDir Path dir;
  private LocalServer server;

  @BeforeEach
  void start() throws IOException {
    new Random(1).nextBytes(film);
    Path book = Files.createDirectory(dir.resolve("book"));
    Files.writeString(book.resolve("index.html"), "<p>the book");
    Files.writeString(book.resolve("book.js"), "var B = 1;");
    Files.writeString(dir.resolve("secret.html"), "secret");
    Files.createSymbolicLink(book.resolve("link.html"), dir.resolve("secret.html"));
    Path video = Files.write(dir.resolve("a.webm"), film);
    server =
        LocalServer.start("two-strides show", new ShowSite(book, List.of(video), "var S = 2;\n"));
  }

  @AfterEach
  void stop() {
    server.close();
  }

  private HttpResponse<byte[]> get(String path, String... headers) throws Exception {
    HttpRequest.Builder asked = HttpRequest.newBuilder(URI.create(server.address() + path));
    if (headers.length > 0) {
      asked.headers(headers);
    }
    return http.send(asked.build(), HttpResponse.BodyHandlers.ofByteArray());
  }

  private static String text(HttpResponse<byte[]> r) {
    return new String(r.body(), StandardCharsets.UTF_8);
  }

  @Test
  void theBookAndItsVideosAreGivenOut() throws Exception {
    assertEquals("<p>the book", text(get("")));
    assertEquals("var S = 2;\nvar B = 1;", text(get("book.js")));
    assertArrayEquals(film, get("video/0").body());
    HttpResponse<byte[]> part = get("video/0", "Range", "bytes=1000-1999");
    assertEquals(206, part.statusCode());
    assertArrayEquals(Arrays.copyOfRange(film, 1000, 2000), part.body());
    assertEquals("bytes 1000-1999/300000", part.headers().firstValue("Content-Range").orElse(""));
    assertEquals(416, get("video/0", "Range", "bytes=300000-").statusCode());
    String policy = get("").headers().firstValue("Content-Security-Policy").orElse("");
    assertTrue(
        policy.contains("script-src 'self'") && policy.contains("default-src 'none'"), policy);
  }

  @Test
  void nothingElseIs() throws Exception {
    for (String path :
        List.of(
            "video/1",
            "video/-1",
            "video/0/",
            "secret.html",
            "../secret.html",
            "%2e%2e/secret.html",
            "..%2fsecret.html",
            "link.html",
            "a.webm")) {
      int status = get(path).statusCode();
      assertTrue(status == 404 || status == 403, path + ": " + status);
    }
    assertEquals(403, get("", "Origin", "http://example.org").statusCode());
    URI token =
        URI.create(
            server.address().toString().replaceFirst("/[0-9a-f]{32}/", "/" + "0".repeat(32) + "/"));
    assertEquals(
        403,
        http.send(HttpRequest.newBuilder(token).build(), HttpResponse.BodyHandlers.ofString())
            .statusCode());
    HttpRequest post =
        HttpRequest.newBuilder(URI.create(server.address() + "index.html"))
            .POST(HttpRequest.BodyPublishers.ofString("x"))
            .build();
    assertEquals(405, http.send(post, HttpResponse.BodyHandlers.ofString()).statusCode());
    assertEquals("<p>the book", text(get("index.html")));
  }

  @Test
  void aPortThatIsTakenIsNoEnd() throws Exception {
    int taken = server.address().getPort();
    try (LocalServer second = LocalServer.start("x", r -> Reply.plain(Reply.OK, "second"), taken)) {
      assertTrue(second.address().getPort() != taken);
    }
  }
}
