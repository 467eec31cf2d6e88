package twostrides.cli;

import java.io.File;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The ffmpeg of this machine. All parts are encoded anew in one form, so that a cut is exact to a
 * picture and parts can be joined without another loss.
 *
 * @param program the program
 */
record Ffmpeg(Path program) {

  /** Pixels of what is cut; assumed: what a projector shows. */
  static final int WIDTH = 1280;

  /** Pixels of what is cut. */
  static final int HEIGHT = 720;

  private static final Pattern DURATION =
      Pattern.compile("Duration: (\\d+):(\\d\\d):(\\d\\d(?:\\.\\d+)?)");
  private static final String SILENCE = "anullsrc=r=48000:cl=stereo";
  private static final String FORM =
      "scale=%d:%d:force_original_aspect_ratio=decrease,pad=%d:%d:(ow-iw)/2:(oh-ih)/2,setsar=1,fps=30,format=yuv420p"
          .formatted(WIDTH, HEIGHT, WIDTH, HEIGHT);

  /** The first ffmpeg on a path of folders. */
  static Optional<Ffmpeg> on(String path) {
    return Stream.of(path.split(Pattern.quote(File.pathSeparator), -1))
        .filter(d -> !d.isEmpty())
        .flatMap(d -> Stream.of(Path.of(d, "ffmpeg"), Path.of(d, "ffmpeg.exe")))
        .filter(Files::isExecutable)
        .findFirst()
        .map(Ffmpeg::new);
  }

  /** How long a video lasts. */
  double seconds(Path file) throws IOException, InterruptedException {
    Matcher m = DURATION.matcher(about(file));
    if (!m.find()) {
      throw new IOException("ffmpeg finds no video in " + file);
    }
    return 3600 * Double.parseDouble(m.group(1))
        + 60 * Double.parseDouble(m.group(2))
        + Double.parseDouble(m.group(3));
  }

  private String about(Path file) throws IOException, InterruptedException {
    return run(List.of("-i", file.toString()), false);
  }

  /** A piece of a video. */
  Path clip(Path file, double start, double length, Path out)
      throws IOException, InterruptedException {
    boolean sound = about(file).contains("Audio: ");
    return encode(
        List.of("-ss", number(start), "-i", file.toString(), "-f", "lavfi", "-i", SILENCE),
        sound ? "0:a:0" : "1:a:0",
        length,
        out);
  }

  /** A picture that stands. */
  Path still(Path picture, double length, Path out) throws IOException, InterruptedException {
    return encode(
        List.of("-loop", "1", "-i", picture.toString(), "-f", "lavfi", "-i", SILENCE),
        "1:a:0",
        length,
        out);
  }

  private Path encode(List<String> in, String sound, double length, Path out)
      throws IOException, InterruptedException {
    List<String> args = new ArrayList<>(in);
    args.addAll(List.of("-t", number(length), "-map", "0:v:0", "-map", sound, "-vf", FORM));
    args.addAll(List.of("-c:v", "libx264", "-preset", "veryfast", "-crf", "20"));
    args.addAll(List.of("-video_track_timescale", "30000"));
    args.addAll(List.of("-c:a", "aac", "-b:a", "128k", "-ar", "48000", "-ac", "2"));
    args.add(out.toString());
    run(args, true);
    return out;
  }

  /** Joins parts of one form. */
  void join(List<Path> parts, Path list, Path out) throws IOException, InterruptedException {
    Files.writeString(
        list,
        parts.stream()
            .map(p -> "file '" + p.toAbsolutePath().toString().replace("'", "'\\''") + "'\n")
            .collect(Collectors.joining()));
    run(
        List.of(
            "-f",
            "concat",
            "-safe",
            "0",
            "-i",
            list.toString(),
            "-c",
            "copy",
            "-movflags",
            "+faststart",
            out.toString()),
        true);
  }

  private static String number(double seconds) {
    return String.format(Locale.ROOT, "%.3f", seconds);
  }

  /** What it says; an end that is no success is an error where one must be. */
  private String run(List<String> args, boolean must) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of(program.toString(), "-hide_banner", "-nostdin"));
    command.addAll(must ? List.of("-y", "-v", "error") : List.of());
    command.addAll(args);
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    process.getOutputStream().close();
    String said = new String(process.getInputStream().readAllBytes(), Charset.defaultCharset());
    if (process.waitFor() != 0 && must) {
      throw new IOException("ffmpeg could not do it: " + said.strip());
    }
    return said;
  }
}
