package twostrides.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.zip.CRC32;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import twostrides.serve.LocalServer;
import twostrides.serve.ShowSite;
import twostrides.sheet.SheetException;

/** A book and its videos on one address, for a meeting: no file is asked for. */
@Command(
    name = "show",
    description =
        "Shows a review book with the games' videos in the browser, on this machine only: every clip"
            + " plays at a click (docs/meeting.md).",
    mixinStandardHelpOptions = true)
final class ShowCommand implements Callable<Integer> {

  private static final int LOWEST_PORT = 20_000;
  private static final int PORTS = 20_000;

  @Spec CommandSpec spec;

  @Parameters(paramLabel = "BOOK", description = "Folder of the book, as review wrote it.")
  Path book;

  @Option(
      names = "--video",
      paramLabel = "FOLDER",
      required = true,
      description =
          "Folder with the videos, or one video. A file is the game whose id is in its name; a file"
              + " videos.csv (game,file) in the folder says it where names do not.")
  Path video;

  @Option(names = "--no-open", description = "Print the address only; open no browser.")
  boolean noOpen;

  @Override
  public Integer call() throws Exception {
    List<String> games = GameVideos.gamesOf(book);
    if (!Files.exists(video)) {
      throw SheetException.ofFile(
          video.toString(),
          "no such folder",
          "a folder with videos, or one video",
          "Check the spelling, and the folder that you are in.");
    }
    GameVideos videos = GameVideos.in(video, games);
    PrintWriter console = spec.commandLine().getOut();
    tell(console, games, videos);
    Path list = book.resolve("meeting.json");
    String kept = Files.isRegularFile(list) ? Files.readString(list, StandardCharsets.UTF_8) : "";
    ShowSite site = new ShowSite(book, videos.files(), videos.script(kept));
    LocalServer server = LocalServer.start("two-strides show", site, port());
    CountDownLatch ended = new CountDownLatch(1);
    Thread hook =
        new Thread(
            () -> {
              server.close();
              ended.countDown();
            },
            "closing");
    Runtime.getRuntime().addShutdownHook(hook);
    if (server.address().getPort() != port()) {
      console.println(
          "This book is being shown already, or another program has its port: this browser keeps a"
              + " meeting list for each port, so the list of last time is not here.");
    }
    console.println("Open this page in a browser on this machine, and end with Ctrl-C:");
    console.println(server.address() + "meeting.html");
    console.flush();
    if (!noOpen) {
      Desktop.open(server.address() + "meeting.html");
    }
    ended.await();
    return Main.DONE;
  }

  /** A browser keeps what a page remembers by its port, so a book has one of its own. */
  private int port() throws IOException {
    CRC32 sum = new CRC32();
    sum.update(book.toRealPath().toString().getBytes(StandardCharsets.UTF_8));
    return LOWEST_PORT + (int) (sum.getValue() % PORTS);
  }

  private static void tell(PrintWriter console, List<String> games, GameVideos videos) {
    for (String game : games) {
      console.println(
          game
              + ": "
              + videos
                  .of(game)
                  .map(f -> f.getFileName().toString())
                  .orElse("no file has it in its name"));
    }
    for (Path f : videos.files()) {
      if (videos.game(f).isEmpty()) {
        console.println(
            f.getFileName()
                + ": no game of the book is in its name; the page asks once, or say it in videos.csv.");
      }
    }
  }
}
