package twostrides.clips;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A video of ten pictures a second with sound, made by ffmpeg, whose pictures say the same as those
 * of {@link TestVideo}; the ending of the name says the form: H.264 in MP4, or VP8 in WebM.
 */
public final class CounterVideo {

  private static final int SQUARE = 16;
  private static final int COLUMNS = 8;
  private static final int BITS = 16;
  private static final int SECOND_BITS = 13;

  /** Height of each bar of a picture of 16 to 9. */
  private static final int TOP = (COLUMNS * SQUARE * 9 / 16 - BITS / COLUMNS * SQUARE) / 2;

  private CounterVideo() {}

  /**
   * A program of this machine; a test that needs it is skipped aloud where it is not there.
   *
   * @param name its name
   */
  public static String needed(String name) {
    Optional<Path> found =
        Stream.of(System.getenv("PATH").split(File.pathSeparator, -1))
            .map(d -> Path.of(d, name))
            .filter(Files::isExecutable)
            .findFirst();
    if (found.isEmpty()) {
      System.err.println("SKIPPED: no " + name + " on the PATH");
      assumeTrue(false, "no " + name + " on the PATH");
    }
    return found.orElseThrow().toString();
  }

  /**
   * Runs a program to its end.
   *
   * @param command the program and what it is told
   * @return what it printed
   */
  public static byte[] run(List<String> command) throws IOException, InterruptedException {
    Path said = Files.createTempFile("two-strides", ".txt");
    try {
      Process p = new ProcessBuilder(command).redirectError(said.toFile()).start();
      p.getOutputStream().close();
      byte[] out;
      try (InputStream in = p.getInputStream()) {
        out = in.readAllBytes();
      }
      assertEquals(0, p.waitFor(), () -> read(said));
      return out;
    } finally {
      Files.deleteIfExists(said);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file, StandardCharsets.ISO_8859_1);
    } catch (IOException e) {
      return e.getMessage();
    }
  }

  /**
   * Writes a video.
   *
   * @param file where
   * @param seconds how long
   * @param mark a number from 0 to 7 that tells this file from others
   */
  public static Path write(Path file, int seconds, int mark)
      throws IOException, InterruptedException {
    return write(file, seconds, mark, "null");
  }

  /**
   * Writes a video of 16 to 9, as those of games are, with bars above and below the squares.
   *
   * @param file where
   * @param seconds how long
   * @param mark a number from 0 to 7 that tells this file from others
   */
  public static Path writeWide(Path file, int seconds, int mark)
      throws IOException, InterruptedException {
    int width = COLUMNS * SQUARE;
    return write(file, seconds, mark, "pad=" + width + ":" + width * 9 / 16 + ":0:" + TOP);
  }

  private static Path write(Path file, int seconds, int mark, String filter)
      throws IOException, InterruptedException {
    String number = "(floor(T)+" + (mark << SECOND_BITS) + ")";
    String squares =
        "color=s=%dx%d:r=10:d=%d,format=yuv420p,geq=lum='16+219*mod(floor(%s/pow(2,floor(X/%d)+%d*floor(Y/%d))),2)':cb=128:cr=128"
            .formatted(
                COLUMNS * SQUARE,
                BITS / COLUMNS * SQUARE,
                seconds,
                number,
                SQUARE,
                COLUMNS,
                SQUARE);
    List<String> command = new ArrayList<>(List.of(needed("ffmpeg"), "-v", "error", "-y"));
    command.addAll(List.of("-f", "lavfi", "-i", squares));
    command.addAll(List.of("-f", "lavfi", "-i", "sine=frequency=440:duration=" + seconds));
    boolean webm = file.toString().toLowerCase(Locale.ROOT).endsWith(".webm");
    command.addAll(
        webm
            ? List.of("-c:v", "libvpx", "-b:v", "200k", "-g", "50", "-c:a", "libvorbis")
            : List.of("-c:v", "libx264", "-g", "50", "-c:a", "aac"));
    command.addAll(List.of("-vf", filter));
    command.add(file.toString());
    run(command);
    return file;
  }

  /**
   * What the picture at a second of a file says, where the pictures stand in one of 16 to 9 with
   * bars above and below.
   *
   * @param file a video
   * @param second where to look
   */
  public static TestVideo.Shown at(Path file, double second)
      throws IOException, InterruptedException {
    int width = COLUMNS * SQUARE;
    int height = width * 9 / 16;
    byte[] gray =
        run(
            List.of(
                needed("ffmpeg"),
                "-v",
                "error",
                "-ss",
                String.format(Locale.ROOT, "%.3f", second),
                "-i",
                file.toString(),
                "-frames:v",
                "1",
                "-vf",
                "scale=" + width + ":" + height,
                "-pix_fmt",
                "gray",
                "-f",
                "rawvideo",
                "-"));
    assertEquals(width * height, gray.length);
    int number = 0;
    for (int b = 0; b < BITS; b++) {
      int row = TOP + b / COLUMNS * SQUARE + SQUARE / 2;
      int column = b % COLUMNS * SQUARE + SQUARE / 2;
      number |= (gray[row * width + column] & 0xFF) > 128 ? 1 << b : 0;
    }
    return new TestVideo.Shown(second, number & (1 << SECOND_BITS) - 1, number >> SECOND_BITS);
  }
}
