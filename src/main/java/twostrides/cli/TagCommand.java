package twostrides.cli;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import twostrides.game.Usual;
import twostrides.sheet.SheetMaps;
import twostrides.tag.BookMaker;
import twostrides.tag.PageServer;
import twostrides.tag.TagDesk;
import twostrides.tag.TagServer;

/** For a team without sheets: exits are logged from a video, in the browser. */
@Command(
    name = "tag",
    description =
        "Logs exits from a video in the browser, on this machine only, into a tag sheet (docs/tag.md).",
    mixinStandardHelpOptions = true)
final class TagCommand implements Callable<Integer> {

  private static final List<String> NOT_FOR_THE_PAGE =
      List.of("reading sheets", "writing pages", "Open this page");

  @Spec CommandSpec spec;

  @Option(
      names = "--sheet",
      paramLabel = "FILE.csv",
      defaultValue = "tags.csv",
      description = "Tag sheet to write, or to go on with (${DEFAULT-VALUE}).")
  Path sheet;

  @Option(names = "--home", paramLabel = "NAME", description = "The home team.")
  String home;

  @Option(names = "--away", paramLabel = "NAME", description = "The away team.")
  String away;

  @Option(
      names = "--video",
      paramLabel = "FILE",
      description = "Video of the game; without it choose one on the page.")
  Path video;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "review",
      description =
          "Folder for the book (${DEFAULT-VALUE}). An older book there is replaced; files of your own"
              + " beside it stay as they are.")
  Path out;

  @Option(names = "--no-open", description = "Print the address only; open no browser.")
  boolean noOpen;

  @Mixin Books books;

  @Mixin Ice ice;

  @Override
  public Integer call() throws Exception {
    if (!sheet.toString().toLowerCase(Locale.ROOT).endsWith(".csv")) {
      throw refused("--sheet", sheet.toString(), "a file name that ends in .csv");
    }
    if (video != null && !(Files.isRegularFile(video) && Files.isReadable(video))) {
      throw refused("--video", video.toString(), "a video file that can be read");
    }
    Usual usual = ice.of(books.book(), SheetMaps.NONE).usual();
    Map<String, String> setup = new LinkedHashMap<>();
    Optional.ofNullable(home).ifPresent(n -> setup.put("home", n));
    Optional.ofNullable(away).ifPresent(n -> setup.put("away", n));
    TagDesk desk = TagDesk.open(sheet, usual, setup);
    PageServer server;
    try {
      server = TagServer.start(desk, Optional.ofNullable(video), out.toAbsolutePath(), maker(desk));
    } catch (IOException e) {
      desk.close();
      throw e;
    }
    PrintWriter console = spec.commandLine().getOut();
    Closing closing = new Closing(desk, server, console);
    // Ctrl-C ends the program by way of this thread.
    Thread hook = new Thread(closing::close, "closing");
    Runtime.getRuntime().addShutdownHook(hook);
    if (!desk.opening().isEmpty()) {
      console.println(desk.opening());
    }
    console.println("Tagging into " + desk.sheet() + "; every exit is saved as it is tagged.");
    console.println("Open this page in a browser on this machine, and end with Ctrl-C:");
    console.println(server.address());
    if (!noOpen) {
      Desktop.open(server.address().toString());
    }
    server.awaitEnd();
    Runtime.getRuntime().removeShutdownHook(hook);
    closing.close();
    return Main.DONE;
  }

  /** The end of a session, by the page or by Ctrl-C. */
  private record Closing(TagDesk desk, PageServer server, PrintWriter console) {
    void close() {
      server.close();
      try {
        desk.close();
      } catch (IOException e) {
        console.println("The journal could not be closed: " + e.getMessage());
      }
      if (!desk.warning().isEmpty()) {
        console.println(desk.warning());
      }
      console.println(desk.closing() + ".");
      console.flush();
    }
  }

  /** The review, as the command of that name runs it, on the sheet as it stands. */
  private BookMaker maker(TagDesk desk) {
    return () -> {
      StringWriter results = new StringWriter();
      StringWriter messages = new StringWriter();
      List<String> args = new ArrayList<>(List.of("review", desk.sheet().toString()));
      args.addAll(List.of("--out", out.toString(), "--rulebook", books.name));
      if (books.season != null) {
        args.addAll(List.of("--season", books.season));
      }
      if (video != null) {
        args.addAll(List.of("--video-of", desk.game() + "=" + seenFromClips()));
      }
      args.addAll(ice.args());
      int code;
      synchronized (this) {
        code =
            Main.run(
                new PrintWriter(results, true),
                new PrintWriter(messages, true),
                args.toArray(String[]::new));
      }
      boolean made = code == Main.DONE;
      return new BookMaker.Made(made, said(made ? results.toString() : messages.toString()));
    };
  }

  /** The video as the playlists name it; on another drive of the machine by its whole address. */
  private String seenFromClips() {
    Path clips = out.toAbsolutePath().normalize().resolve("clips");
    Path file = video.toAbsolutePath().normalize();
    return clips.getRoot().equals(file.getRoot())
        ? clips.relativize(file).toString().replace(File.separatorChar, '/')
        : file.toUri().toString();
  }

  /** What a run said, without its progress and the place of the book, which the page leads to. */
  private static String said(String messages) {
    return messages
        .lines()
        .filter(l -> NOT_FOR_THE_PAGE.stream().noneMatch(l::startsWith))
        .collect(Collectors.joining("\n"));
  }

  private ParameterException refused(String option, String found, String expected) {
    return new ParameterException(
        spec.commandLine(), option + ": found " + found + ", expected " + expected + ".");
  }
}
