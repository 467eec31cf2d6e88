package twostrides.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
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

  private static final Set<String> FILMS = Set.of("mp4", "m4v", "mov", "webm", "mkv", "ogv");

  @Option(
      names = "--video",
      paramLabel = "FOLDER",
      description =
          "The games' videos: a folder with files named after the games, or one file; without it choose"
              + " the file on the page.")
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
    try (SettleServer server =
        SettleServer.start(settling, places, book.book(), this::film, book.read().rink())) {
      console.println(
          Sheets.count(settling.icings().size(), "icing")
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

  /** The video of a game: the file given, or the one of the folder that is named after the game. */
  private Optional<Path> film(String game) {
    if (video == null || Files.isRegularFile(video)) {
      return Optional.ofNullable(video);
    }
    try (Stream<Path> files = Files.list(video)) {
      return files
          .filter(f -> FILMS.contains(part(f, true)) && part(f, false).equalsIgnoreCase(game))
          .min(Comparator.naturalOrder());
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static String part(Path file, boolean ending) {
    String name = file.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return dot < 0
        ? ending ? "" : name
        : ending ? name.substring(dot + 1).toLowerCase(Locale.ROOT) : name.substring(0, dot);
  }
}
