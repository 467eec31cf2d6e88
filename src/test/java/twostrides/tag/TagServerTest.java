package twostrides.tag;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twostrides.game.Usual;

/** Who is answered and who is not, and what an answer may carry. */
class TagServerTest {

  private static final String ADD =
      "{\"period\":\"1\",\"clock\":\"13:07\",\"team\":\"Herons\",\"way_out\":\"chip\"}";

  /** How long a busy machine may take to answer, ms. */
  private static final int SLOW_MS = 120_000;

  @TempDir Path dir;

  private final HttpClient client = HttpClient.newHttpClient();
  private final byte[] film = new byte[700_001];
  private TagDesk desk;
  private PageServer server;
  private Path book;

  @BeforeEach
  void start() throws Exception {
    new Random(16).nextBytes(film);
    Path video = Files.write(dir.resolve("game.mp4"), film);
    book = Files.createDirectory(dir.resolve("book"));
    Files.writeString(book.resolve("index.html"), "<title>book</title>");
    Files.writeString(dir.resolve("secret.html"), "secret");
    desk = TagDesk.open(dir.resolve("tags.csv"), Usual.DEFAULT, Map.of());
    server =
        TagServer.start(desk, Optional.of(video), book, () -> new BookMaker.Made(true, "made"));
  }

  @AfterEach
  void end() throws IOException {
    server.close();
    desk.close();
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create(server.address() + path));
  }

  private HttpResponse<String> get(String path, String... headers) throws Exception {
    HttpRequest.Builder b = request(path);
    if (headers.length > 0) {
      b.headers(headers);
    }
    return client.send(b.build(), HttpResponse.BodyHandlers.ofString());
  }

  private HttpResponse<String> post(String path, String json, String... headers) throws Exception {
    HttpRequest.Builder b = request(path).header("Content-Type", "application/json");
    if (headers.length > 0) {
      b.headers(headers);
    }
    return client.send(
        b.POST(HttpRequest.BodyPublishers.ofString(json)).build(),
        HttpResponse.BodyHandlers.ofString());
  }

  /** A request in its own words, for headers that the client does not let through. */
  private String raw(String text) throws IOException {
    try (Socket socket = socket(text)) {
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private String rawGet(String path, String host) throws IOException {
    return raw("GET " + path + " HTTP/1.1\r\n" + host + "Connection: close\r\n\r\n");
  }

  @Test
  void onlyThisMachineIsServed() throws Exception {
    assertEquals("127.0.0.1", server.address().getHost());
    assertEquals(200, get("").statusCode());
    assertEquals(32 + 2, server.address().getPath().length());
  }

  @Test
  void withoutTheTokenNothingIsAnswered() throws Exception {
    URI address = server.address();
    for (String path :
        List.of("/", "", "/state", "/tag.js", "/favicon.ico", "/" + "0".repeat(32) + "/state")) {
      HttpResponse<String> r =
          client.send(
              HttpRequest.newBuilder(address.resolve("/" + path.replaceFirst("^/", ""))).build(),
              HttpResponse.BodyHandlers.ofString());
      assertEquals(403, r.statusCode(), path);
    }
    String almost = address.getPath().substring(0, 32) + "/state";
    assertTrue(rawGet(almost, "Host: 127.0.0.1:" + address.getPort() + "\r\n").contains(" 403 "));
  }

  @Test
  void aForeignHostIsRefused() throws Exception {
    int port = server.address().getPort();
    String path = server.address().getPath() + "state";
    assertTrue(rawGet(path, "Host: 127.0.0.1:" + port + "\r\n").startsWith("HTTP/1.1 200"));
    assertTrue(rawGet(path, "Host: localhost:" + port + "\r\n").startsWith("HTTP/1.1 200"));
    for (String host :
        List.of(
            "Host: rebound.example:" + port + "\r\n",
            "Host: 127.0.0.1\r\n",
            "Host: 127.0.0.1:" + (port + 1) + "\r\n",
            "Host: 127.0.0.1:" + port + ".example\r\n",
            "Host: 127.0.0.1:" + port + "\r\nHost: rebound.example\r\n")) {
      assertTrue(rawGet(path, host).startsWith("HTTP/1.1 403"), host);
    }
  }

  @Test
  void aForeignOriginIsRefused() throws Exception {
    String own = "http://127.0.0.1:" + server.address().getPort();
    assertEquals(200, post("add", ADD, "Origin", own).statusCode());
    for (String origin :
        List.of("https://elsewhere.example", "null", "http://127.0.0.1", own + ".example")) {
      assertEquals(403, post("add", ADD, "Origin", origin).statusCode(), origin);
      assertEquals(403, get("state", "Origin", origin).statusCode(), origin);
    }
    assertEquals(1, desk.tagged());
  }

  @Test
  void aFormOfAnotherPageCannotTag() throws Exception {
    HttpResponse<String> r =
        client.send(
            request("add")
                .header("Content-Type", "text/plain")
                .POST(HttpRequest.BodyPublishers.ofString(ADD))
                .build(),
            HttpResponse.BodyHandlers.ofString());
    assertEquals(415, r.statusCode());
    assertEquals(413, post("add", "{\"note\":\"" + "x".repeat(70_000) + "\"}").statusCode());
    for (String body : List.of("", "[]", "{\"a\":1}", "{\"a\":{\"b\":\"c\"}}", "{} {}")) {
      assertEquals(422, post("add", body).statusCode(), body);
    }
    assertEquals(404, post("format", "{}").statusCode());
    assertEquals(0, desk.tagged());
  }

  @Test
  void everyAnswerCarriesItsPolicy() throws Exception {
    for (String path : List.of("", "tag.js", "tag.css", "state", "book/index.html", "nothing")) {
      HttpResponse<String> r = get(path);
      String policy = r.headers().firstValue("Content-Security-Policy").orElse("");
      assertTrue(policy.startsWith("default-src 'none';"), path);
      assertFalse(policy.contains("script-src 'unsafe-inline'"), path);
      assertTrue(policy.contains("frame-ancestors 'none'"), path);
      assertEquals("nosniff", r.headers().firstValue("X-Content-Type-Options").orElse(""), path);
      assertEquals("no-store", r.headers().firstValue("Cache-Control").orElse(""), path);
    }
    assertEquals(
        405,
        client
            .send(
                request("state").method("DELETE", HttpRequest.BodyPublishers.noBody()).build(),
                HttpResponse.BodyHandlers.ofString())
            .statusCode());
  }

  @Test
  void theVideoIsStreamedInPieces() throws Exception {
    String[][] pieces = {
      {"bytes=0-99", "206", "0", "100"},
      {"bytes=300000-", "206", "300000", "700001"},
      {"bytes=-5", "206", "699996", "700001"},
      {"bytes=-9000000", "206", "0", "700001"},
      {"bytes=699999-9000000", "206", "699999", "700001"},
      {"bytes=0-1,5-6", "200", "0", "700001"},
      {"metres=0-1", "200", "0", "700001"},
    };
    for (String[] p : pieces) {
      HttpResponse<byte[]> r =
          client.send(
              request("video").header("Range", p[0]).build(),
              HttpResponse.BodyHandlers.ofByteArray());
      assertEquals(p[1], Integer.toString(r.statusCode()), p[0]);
      int from = Integer.parseInt(p[2]);
      int to = Integer.parseInt(p[3]);
      assertArrayEquals(Arrays.copyOfRange(film, from, to), r.body(), p[0]);
      if (r.statusCode() == 206) {
        assertEquals(
            "bytes " + from + "-" + (to - 1) + "/700001",
            r.headers().firstValue("Content-Range").orElse(""));
      }
    }
    for (String beyond : List.of("bytes=700001-", "bytes=9-3", "bytes=-0")) {
      HttpResponse<String> r = get("video", "Range", beyond);
      assertEquals(416, r.statusCode(), beyond);
      assertEquals("bytes */700001", r.headers().firstValue("Content-Range").orElse(""));
    }
    assertEquals("video/mp4", get("video").headers().firstValue("Content-Type").orElse(""));
  }

  @Test
  void noFileOutsideTheBookIsServed() throws Exception {
    assertEquals("<title>book</title>", get("book/index.html").body());
    Files.createSymbolicLink(book.resolve("link.html"), dir.resolve("secret.html"));
    Files.writeString(book.resolve("run.sh"), "x");
    String host = "Host: 127.0.0.1:" + server.address().getPort() + "\r\n";
    for (String path :
        List.of(
            "book/../secret.html",
            "book/%2e%2e/secret.html",
            "book/..%2fsecret.html",
            "book//etc/passwd",
            "book/" + dir.resolve("secret.html"),
            "book/link.html",
            "book/run.sh",
            "book/",
            "book/%00.html",
            "../secret.html")) {
      String r = rawGet(server.address().getPath() + path, host);
      assertFalse(r.contains("secret") || r.startsWith("HTTP/1.1 200"), path + ": " + r);
    }
  }

  @Test
  void problemsAreLocatedAndGivenInWords() throws Exception {
    HttpResponse<String> r =
        post("add", "{\"period\":\"0\",\"clock\":\"13:07\",\"team\":\"A\",\"way_out\":\"lob\"}");
    assertEquals(422, r.statusCode());
    assertTrue(
        r.body()
            .contains(
                "{\"field\":\"period\",\"found\":\"0\",\"expected\":\"a whole number from 1 to 20\","
                    + "\"toDo\":\"Correct it; nothing was saved.\"}"),
        r.body());
    assertTrue(r.body().contains("\"field\":\"way_out\",\"found\":\"lob\""), r.body());
    HttpResponse<String> gone = post("delete", "{\"id\":\"7\",\"version\":\"1\"}");
    assertEquals(409, gone.statusCode());
    assertTrue(gone.body().contains("an exit that was taken out"), gone.body());
    assertTrue(post("delete", "{\"id\":\"x\"}").body().contains("the id of an exit, a number"));
    assertTrue(
        post("delete", "{\"id\":\"7\"}").body().contains("the version of an exit, a number"));
    assertTrue(post("undo", "{}").body().contains("nothing to undo"));
  }

  /** Names travel as JSON text and are shown by textContent: the page itself holds none. */
  @Test
  void namesAreNeverPartOfThePage() throws Exception {
    String hostile = "<img src=x onerror=alert(1)>";
    assertEquals(
        200, post("add", ADD.replace("Herons", hostile.replace("\"", "\\\""))).statusCode());
    assertFalse(get("").body().contains("onerror"));
    HttpResponse<String> state = get("state");
    assertTrue(state.body().contains(hostile), state.body());
    assertEquals(
        "application/json; charset=utf-8", state.headers().firstValue("Content-Type").orElse(""));
  }

  @Test
  void editsDeletionsAndUndoGoByTheServer() throws Exception {
    post("add", ADD);
    String edited =
        post("edit", ADD.replace("13:07", "12:00").replace("{", "{\"id\":\"1\",\"version\":\"1\","))
            .body();
    assertTrue(edited.contains("\"clock\":\"12:00\""), edited);
    assertTrue(post("delete", "{\"id\":\"1\",\"version\":\"2\"}").body().contains("\"rows\":[]"));
    assertTrue(post("undo", "{}").body().contains("\"clock\":\"12:00\""));
    assertEquals(200, post("setup", "{\"home\":\"Herons\"}").statusCode());
    assertTrue(get("state").body().contains("\"setup\":{\"home\":\"Herons\"}"));
    assertTrue(post("book", "{}").body().contains("\"words\":\"made\""));
  }

  /** A page says which version of an exit it shows, and which page it is. */
  @Test
  void aStalePageIsRefusedAndUndoIsThePagesOwn() throws Exception {
    String mine = ADD.replace("{", "{\"page\":\"a\",");
    String other = ADD.replace("{", "{\"page\":\"b\",").replace("13:07", "12:00");
    assertTrue(post("add", mine).body().contains("\"canUndo\":true"));
    assertTrue(post("state", "{\"page\":\"b\"}").body().contains("\"canUndo\":false"));
    String edit = "{\"id\":\"1\",\"version\":\"1\",";
    assertEquals(200, post("edit", other.replace("{", edit)).statusCode());
    HttpResponse<String> stale = post("edit", mine.replace("{", edit).replace("chip", "pass"));
    assertEquals(409, stale.statusCode());
    assertTrue(stale.body().contains("\"found\":\"P1 12:00, Herons, chip\""), stale.body());
    assertEquals(409, post("delete", edit + "\"page\":\"a\"}").statusCode());
    assertEquals(409, post("undo", "{\"page\":\"a\"}").statusCode());
    assertTrue(get("state").body().contains("\"clock\":\"12:00\""));
    assertTrue(post("undo", "{\"page\":\"b\"}").body().contains("\"clock\":\"13:07\""));
    assertTrue(post("undo", "{\"page\":\"a\"}").body().contains("\"rows\":[]"));
  }

  /** What a held connection has sent so far: nothing of it needs the token. */
  private static final List<String> HELD =
      List.of(
          "GET /state HT",
          "GET / HTTP/1.1\r\nHost: 127.0.0.1\r\nX-",
          "POST /add HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Length: 1000\r\n\r\nhalf",
          "");

  /**
   * Connections that are held open with half a request, by anybody on this machine and without the
   * token, do not stop the page: of many the oldest are dropped.
   */
  @Test
  void heldConnectionsDoNotFreezeThePage() throws Exception {
    List<Socket> held = new ArrayList<>();
    try {
      for (int i = 0; i < 200; i++) {
        held.add(socket(HELD.get(i % HELD.size())));
      }
      for (int i = 0; i < 5; i++) {
        assertEquals(200, patiently("state"));
      }
      // Dropped means closed: what is left to read ends.
      for (int i : List.of(0, 1, 2)) {
        try {
          held.get(i).getInputStream().readAllBytes();
        } catch (SocketException e) {
          assertTrue(e.getMessage().contains("reset"), e.getMessage());
        }
      }
      assertEquals(200, post("add", ADD).statusCode());
    } finally {
      for (Socket s : held) {
        s.close();
      }
    }
  }

  /** Nor does a player that asked for the video many times and does not read it. */
  @Test
  void heldVideosDoNotFreezeThePage() throws Exception {
    // Longer than what the system keeps for a connection that nobody reads.
    try (RandomAccessFile longer = new RandomAccessFile(dir.resolve("game.mp4").toFile(), "rw")) {
      longer.setLength(64 << 20);
    }
    String asked =
        "GET %svideo HTTP/1.1\r\nHost: 127.0.0.1:%d\r\n\r\n"
            .formatted(server.address().getPath(), server.address().getPort());
    List<Socket> held = new ArrayList<>();
    try {
      for (int i = 0; i < 12; i++) {
        held.add(socket(asked));
        assertEquals('H', held.get(i).getInputStream().read());
      }
      assertEquals(200, patiently("state"));
    } finally {
      for (Socket s : held) {
        s.close();
      }
    }
  }

  private Socket socket(String sent) throws IOException {
    Socket socket =
        new Socket(InetAddress.getByAddress(new byte[] {127, 0, 0, 1}), server.address().getPort());
    socket.setSoTimeout(SLOW_MS);
    socket.getOutputStream().write(sent.getBytes(StandardCharsets.UTF_8));
    socket.getOutputStream().flush();
    return socket;
  }

  /** The status of an answer, or a failure when none comes. */
  private int patiently(String path) throws Exception {
    return client
        .send(
            request(path).timeout(Duration.ofMillis(SLOW_MS)).build(),
            HttpResponse.BodyHandlers.discarding())
        .statusCode();
  }

  /** Two pages at once: every exit that was answered is there, once. */
  @Test
  void manyAtOnceLoseNothing() throws Exception {
    List<Integer> codes =
        java.util.stream.IntStream.range(0, 40)
            .parallel()
            .map(
                i -> {
                  try {
                    return post("add", ADD.replace("13:07", "10:" + (10 + i))).statusCode();
                  } catch (Exception e) {
                    throw new IllegalStateException(e);
                  }
                })
            .boxed()
            .toList();
    assertEquals(40, codes.stream().filter(c -> c == 200).count());
    assertEquals(40, desk.tagged());
    assertEquals(40, TagSheet.read(desk.sheet(), Usual.DEFAULT).rows().size());
    assertEquals(40, desk.rows().stream().map(r -> r.cells().get("clock")).distinct().count());
  }
}
