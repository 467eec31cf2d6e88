package twostrides.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import twostrides.book.Format;
import twostrides.book.Links;
import twostrides.output.OutputFolder;
import twostrides.sheet.SheetException;

/** Cuts the clips of a list out of the games' videos, and joins them. */
@Command(
    name = "cut",
    description =
        "Cuts the clips of a list (CSV: game,start_s,end_s,title) out of the games' videos with ffmpeg,"
            + " and joins them to one reel with a title card a clip (docs/meeting.md).",
    mixinStandardHelpOptions = true)
final class CutCommand implements Callable<Integer> {

  /** Seconds that a card may stand. */
  private static final double LONGEST_CARD = 60;

  @Spec CommandSpec spec;

  @Parameters(
      paramLabel = "LIST.csv",
      description = "A clip list: of the folder clips, or saved by a page of the book.")
  Path list;

  @Option(
      names = "--video",
      paramLabel = "FOLDER",
      required = true,
      description = "Folder with the videos, or one video; as for show.")
  Path video;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "reel",
      description = "Folder for the clips and reel.mp4 (${DEFAULT-VALUE}).")
  Path out;

  @Option(
      names = "--card",
      paramLabel = "S",
      defaultValue = "3",
      description = "Seconds of a title card; 0 leaves the cards out (${DEFAULT-VALUE}).")
  double card;

  @Override
  public Integer call() throws Exception {
    if (!(card >= 0 && card <= LONGEST_CARD)) {
      throw new ParameterException(
          spec.commandLine(), "--card: found " + card + ", expected seconds from 0 to 60.");
    }
    Ffmpeg ffmpeg =
        Ffmpeg.on(Optional.ofNullable(System.getenv("PATH")).orElse(""))
            .orElseThrow(
                () ->
                    new ParameterException(
                        spec.commandLine(),
                        "cut: found no ffmpeg on the path, expected one. Install it (it is free), or play"
                            + " the playlists in the book's folder clips: those need none."));
    List<ListedClip> clips = ListedClip.read(list);
    LinkedHashSet<String> games = new LinkedHashSet<>();
    clips.forEach(c -> games.add(c.game()));
    GameVideos videos = GameVideos.in(video, games);
    List<String> missing = games.stream().filter(g -> videos.of(g).isEmpty()).toList();
    if (!missing.isEmpty()) {
      throw SheetException.ofFile(
          video.toString(),
          "no video of " + String.join("; ", missing),
          "a file with the game's id in its name, or a videos.csv (game,file) in the folder",
          "Rename the file, or write videos.csv.");
    }
    for (ListedClip c : clips) {
      double length = ffmpeg.seconds(videos.of(c.game()).orElseThrow());
      if (c.start() >= length) {
        throw SheetException.ofFile(
            list + ", line " + c.line(),
            String.format(Locale.ROOT, "a clip that starts at %.1f s", c.start()),
            String.format(
                Locale.ROOT,
                "a start within %s, which lasts %.1f s",
                videos.of(c.game()).orElseThrow().getFileName(),
                length),
            "Is it the video of " + c.game() + "?");
      }
    }
    Path reel;
    try (OutputFolder folder = OutputFolder.at(out, List.of(list))) {
      cut(ffmpeg, clips, videos, folder.writing());
      reel = folder.finish().resolve("reel.mp4");
    }
    PrintWriter console = spec.commandLine().getOut();
    console.println(
        Format.count(clips.size(), "clip")
            + String.format(
                Locale.ROOT, " cut; the reel lasts %.1f s: %s", ffmpeg.seconds(reel), reel));
    return Main.DONE;
  }

  private void cut(Ffmpeg ffmpeg, List<ListedClip> clips, GameVideos videos, Path to)
      throws IOException, InterruptedException {
    Progress progress = new Progress(spec.commandLine().getErr());
    Path work = Files.createTempDirectory("two-strides-cut");
    List<Path> parts = new ArrayList<>();
    try {
      for (int i = 0; i < clips.size(); i++) {
        progress.step("cutting clips", i + 1, clips.size());
        ListedClip c = clips.get(i);
        if (card > 0) {
          Path picture = work.resolve(i + ".png");
          TitleCard.write(picture, (i + 1) + " of " + clips.size(), c.title(), c.game());
          parts.add(ffmpeg.still(picture, card, work.resolve(i + "-card.mp4")));
        }
        String name =
            String.format(
                Locale.ROOT, "%02d-%s.mp4", i + 1, Links.slug(c.game() + " " + c.title()));
        Path file = videos.of(c.game()).orElseThrow();
        parts.add(ffmpeg.clip(file, c.start(), c.end() - c.start(), to.resolve(name)));
      }
      ffmpeg.join(parts, work.resolve("parts.txt"), to.resolve("reel.mp4"));
    } finally {
      progress.done();
      try (var all = Files.list(work)) {
        for (Path p : all.toList()) {
          Files.delete(p);
        }
      }
      Files.delete(work);
    }
  }
}
