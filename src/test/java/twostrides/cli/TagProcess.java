package twostrides.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A command that serves a page, in a process of its own, which can be killed. */
final class TagProcess implements AutoCloseable {

  private final Process process;
  private final BufferedReader out;
  private final List<String> said = new ArrayList<>();
  private final URI address;

  private TagProcess(Process process) throws IOException {
    this.process = process;
    this.out =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    String line = out.readLine();
    while (line != null && !line.startsWith("http://")) {
      said.add(line);
      line = out.readLine();
    }
    if (line == null) {
      throw new IOException("the program ended: " + said);
    }
    this.address = URI.create(line);
  }

  static TagProcess start(Path sheet, String... more) throws IOException {
    return of(
        Stream.concat(Stream.of("tag", "--no-open", "--sheet", sheet.toString()), Stream.of(more))
            .toArray(String[]::new));
  }

  /**
   * The program that settles the icings of a sheet.
   *
   * @param dir where the book goes
   * @param more further options
   */
  static TagProcess settle(Path sheet, Path dir, Path places, String... more) throws IOException {
    List<String> args = new ArrayList<>(List.of("settle", sheet.toString(), "--no-open"));
    args.addAll(List.of("--out", dir.resolve("book").toString(), "--places", places.toString()));
    args.addAll(List.of(more));
    return of(args.toArray(String[]::new));
  }

  /** Any command that serves a page. */
  static TagProcess of(String... args) throws IOException {
    return of(Child.program((Object[]) args));
  }

  /** Starts a command line that starts the program. */
  static TagProcess of(List<String> command) throws IOException {
    return new TagProcess(new ProcessBuilder(command).redirectErrorStream(true).start());
  }

  URI address() {
    return address;
  }

  /** The top of the disks as the program sees them. */
  Path root() {
    return Path.of("/proc", String.valueOf(process.pid()), "root");
  }

  /** What the program printed before the address. */
  String opening() {
    return String.join("\n", said);
  }

  /** Kills it as a crash would; nothing runs in it any more. */
  void kill() {
    process.destroyForcibly().onExit().join();
  }

  /** Ends it as the system does at Ctrl-C, and gives what it printed then. */
  String end() throws IOException, InterruptedException {
    process.toHandle().destroy();
    return rest();
  }

  /** What the program prints until it ends. */
  String rest() throws IOException, InterruptedException {
    String rest = String.join("\n", out.lines().toList());
    process.waitFor(5, TimeUnit.MINUTES);
    return rest;
  }

  /** Posts a form to the page's program. */
  HttpResponse<String> post(String action, String json) throws IOException, InterruptedException {
    return HttpClient.newHttpClient()
        .send(
            HttpRequest.newBuilder(address.resolve(action))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(json))
                .build(),
            HttpResponse.BodyHandlers.ofString());
  }

  String get(String path) throws IOException, InterruptedException {
    return HttpClient.newHttpClient()
        .send(
            HttpRequest.newBuilder(address.resolve(path)).build(),
            HttpResponse.BodyHandlers.ofString())
        .body();
  }

  @Override
  public void close() {
    kill();
  }
}
