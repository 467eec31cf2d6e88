package twostrides.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import twostrides.book.Format;
import twostrides.tag.PageServer;
import twostrides.tag.PlacesFile;
import twostrides.tag.SettleServer;

/** The review, then its icings without a verdict settled by clicks on the video, in the browser. */
@Command(
    name = "settle",
    description =
        "Writes the book as review does, and settles its icings by clicks on the video, in the"
            + " browser, on this machine only (docs/settle.md).",
    mixinStandardHelpOptions = true)
final class SettleCommand extends ReviewCommand {

  @Option(
      names = "--video",
      paramLabel = "FOLDER",
      description =
          "Folder with the videos, or one video; as for show. Without it choose the file on the"
              + " page.")
  Path video;

  @Option(names = "--no-open", description = "Print the address only; open no browser.")
  boolean noOpen;

  @Override
  public Integer call() throws Exception {
    if (clicked.names.isEmpty()) {
      clicked.names.add("places.csv");
    }
    if (clicked.map != null) {
      throw refused("--places-map", clicked.map, "a places sheet in our own columns");
    }
    if (tablesOnly) {
      throw new ParameterException(
          spec.commandLine(), "--tables-only: settle opens the pages; leave it out.");
    }
    if (video != null && !Files.exists(video)) {
      throw refused("--video", video, "a folder or a video file");
    }
    Path sheet = Path.of(clicked.names.get(clicked.names.size() - 1));
    PlacesFile places = PlacesFile.open(sheet);
    int code = super.call();
    Made book = made.orElseThrow();
    PrintWriter console = spec.commandLine().getOut();
    Settling settling = new Settling(book, clicked);
    Function<String, Optional<Path>> films =
        video == null
            ? game -> Optional.empty()
            : GameVideos.in(video, GameVideos.gamesOf(book.book()))::of;
    try (PageServer server =
        SettleServer.start(settling, places, book.book(), films, book.all().rink())) {
      console.println(
          Format.count(settling.icings().size(), "icing")
              + " to settle; clicks go to "
              + sheet.toAbsolutePath()
              + ".");
      console.println("Open this page in a browser on this machine, and end with Ctrl-C:");
      console.println(server.address());
      console.flush();
      if (!noOpen) {
        Desktop.open(server.address().toString());
      }
      server.awaitEnd();
    }
    return code;
  }

  private ParameterException refused(String option, Path found, String expected) {
    return new ParameterException(
        spec.commandLine(), option + ": found " + found + ", expected " + expected + ".");
  }
}
