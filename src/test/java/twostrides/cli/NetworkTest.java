package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.net.DatagramPacket;
import java.net.DatagramSocket;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Nothing outside this machine is ever asked, by any command: each runs in a process whose {@link
 * LoopbackGuard} refuses that and writes it down. The pages are watched by their browser.
 */
class NetworkTest {

  /** An address that is nobody's (RFC 5737), and a name that never is one (RFC 2606). */
  private static final String NOBODY = "192.0.2.1";

  private static final String NO_NAME = "two-strides.invalid";

  @TempDir Path dir;

  /** Each way out of a machine that Java knows, tried; and one that stays inside. */
  static final class Outsider {
    private Outsider() {}

    /** Says of each way whether it was let through. */
    public static void main(String[] args) throws IOException {
      attempt("name", () -> InetAddress.getAllByName(NO_NAME));
      attempt("socket", () -> new Socket(NOBODY, 80));
      attempt("channel", () -> SocketChannel.open(new InetSocketAddress(NOBODY, 80)));
      attempt("http", () -> ask(NOBODY));
      attempt("url", () -> URI.create("http://" + NOBODY).toURL().openStream());
      attempt("datagram", Outsider::send);
      attempt("program", () -> new ProcessBuilder("java", "-version").start());
      try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
        attempt("inside", () -> new Socket(server.getInetAddress(), server.getLocalPort()));
      }
    }

    private static HttpResponse<String> ask(String host) throws IOException, InterruptedException {
      HttpRequest request = HttpRequest.newBuilder(URI.create("http://" + host)).build();
      return HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString());
    }

    private static Object send() throws IOException {
      try (DatagramSocket socket = new DatagramSocket()) {
        socket.send(new DatagramPacket(new byte[1], 1, new InetSocketAddress(NOBODY, 53)));
        return socket;
      }
    }

    private static void attempt(String way, Callable<?> call) {
      String came;
      try {
        call.call();
        came = "through";
      } catch (Exception e) {
        came = e.getClass().getSimpleName();
      }
      System.out.println(way + ": " + came);
    }
  }

  /** Commands, one after the other, in a process of their own. */
  static final class Commands {
    private Commands() {}

    /** Runs command lines, a word an argument, with "then" between two of them. */
    public static void main(String[] args) {
      PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
      List<String> line = new ArrayList<>();
      for (String word : args) {
        if (word.equals("then")) {
          System.out.println(line.get(0) + ": " + Main.run(out, out, line.toArray(String[]::new)));
          line.clear();
        } else {
          line.add(word);
        }
      }
    }
  }

  @BeforeEach
  void guards() {
    if (Runtime.version().feature() > 23) {
      System.err.println("SKIPPED: Java 24 and newer let nobody watch what a program asks");
      Assumptions.abort();
    }
  }

  private List<String> guarded(List<String> java) {
    List<String> line = new ArrayList<>(java);
    line.add(1, "-Djava.security.manager=" + LoopbackGuard.class.getName());
    line.add(2, "-D" + LoopbackGuard.TRIED + "=" + dir.resolve("tried.txt"));
    line.add(3, "-Djava.awt.headless=true");
    return line;
  }

  private List<String> tried() throws IOException {
    Path tried = dir.resolve("tried.txt");
    return Files.exists(tried) ? Files.readAllLines(tried) : List.of();
  }

  @Test
  void theGuardRefusesEveryWayOut() throws Exception {
    Child run = Child.run(guarded(Child.java(Outsider.class.getName())));
    for (String way : List.of("name", "socket", "channel", "http", "url", "datagram", "program")) {
      assertTrue(run.said().contains("\n" + way + ": "), run.said());
      assertFalse(run.said().contains("\n" + way + ": through"), run.said());
    }
    assertTrue(run.said().contains("inside: through"), run.said());
    List<String> tried = tried();
    assertTrue(tried.contains("connect " + NO_NAME + " -1"), tried.toString());
    assertTrue(
        tried.stream().filter(t -> t.startsWith("connect " + NOBODY)).count() >= 5,
        tried.toString());
    assertTrue(tried.stream().anyMatch(t -> t.startsWith("start ")), tried.toString());
  }

  @Test
  void noCommandAsksAnybody() throws Exception {
    List<Path> games = SampleBook.games();
    String places = "sample-data/places/places.csv";
    Object[] words = {
      Commands.class.getName(),
      "check",
      games.get(0),
      "then",
      "review",
      games.get(0),
      games.get(1),
      "--places",
      places,
      "--png",
      "--out",
      dir.resolve("book"),
      "then",
      "map",
      games.get(0),
      "then",
      "whatif",
      "--release",
      "-5,6",
      "--pressure",
      "light",
      "--out",
      dir.resolve("r.svg"),
      "then",
      "ruling",
      "--rulebook",
      "nhl",
      "from=own-half",
      "strength=even",
      "puck=crossed",
      "then",
      "rulebooks",
      "nhl",
      "then",
      "demo",
      "--games",
      "1",
      "--out",
      dir.resolve("demo"),
      "then"
    };
    Child run = Child.run(guarded(Child.java(words)));
    for (String c : List.of("check", "review", "map", "whatif", "ruling", "rulebooks", "demo")) {
      assertTrue(run.said().contains("\n" + c + ": 0\n"), run.said());
    }
    assertEquals(List.of(), tried());
  }

  @Test
  void taggingAsksNobody() throws Exception {
    Path sheet = dir.resolve("tags.csv");
    Path book = dir.resolve("book");
    String exit =
        "{\"home\":\"Herons\",\"away\":\"Wolves\",\"period\":\"1\",\"clock\":\"10:00\",\"team\":\"Herons\","
            + "\"player\":\"4 Berg\",\"way_out\":\"chip\",\"x_m\":\"-9.5\",\"y_m\":\"3.2\",\"ended\":\"icing\"}";
    List<String> line = Child.program("tag", "--no-open", "--sheet", sheet, "--out", book);
    try (TagProcess tag = TagProcess.of(guarded(line))) {
      assertEquals(200, tag.post("add", exit).statusCode());
      assertTrue(tag.post("book", "{}").body().contains("\"made\":true"));
      assertTrue(tag.get("book/index.html").contains("Herons"));
      tag.end();
    }
    assertEquals(List.of(), tried());
  }

  @Test
  void mergingShowingAndSettlingAskNobody() throws Exception {
    String header = "period,clock,team,player,way_out\n";
    Path one = Files.writeString(dir.resolve("one.csv"), header + "1,19:00,Herons,4 Berg,chip\n");
    Path two = Files.writeString(dir.resolve("two.csv"), header + "2,12:00,Herons,4 Berg,pass\n");
    Path book = dir.resolve("book");
    Object[] words = {
      Commands.class.getName(),
      "merge",
      one,
      two,
      "--out",
      dir.resolve("both.csv"),
      "then",
      "review",
      SampleBook.games().get(0),
      "--out",
      book,
      "--simulations",
      "100",
      "then"
    };
    Child run = Child.run(guarded(Child.java(words)));
    assertTrue(run.said().contains("\nmerge: 0\n"), run.said());
    assertTrue(run.said().contains("\nreview: 0\n"), run.said());
    Path videos = Files.createDirectory(dir.resolve("videos"));
    Files.write(videos.resolve("2031-10-04 GLA-TAR.mp4"), new byte[1000]);
    try (TagProcess show =
        TagProcess.of(guarded(Child.program("show", "--no-open", "--video", videos, book)))) {
      assertTrue(show.get("index.html").contains("Both teams in three numbers"));
      show.end();
    }
    List<String> settle =
        Child.program(
            "settle",
            "--no-open",
            "--simulations",
            "100",
            "--video",
            videos,
            "--places",
            dir.resolve("places.csv"),
            "--out",
            dir.resolve("settled"),
            SampleBook.games().get(0));
    try (TagProcess page = TagProcess.of(guarded(settle))) {
      assertTrue(page.get("").contains("Click"), page.opening());
      page.end();
    }
    assertEquals(List.of(), tried());
  }
}
