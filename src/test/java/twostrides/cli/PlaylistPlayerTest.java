package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twostrides.clips.CounterVideo;

/** A player that is not ours stops the clips of a written playlist where they end. */
class PlaylistPlayerTest {

  /** The player runs so many times as fast; the clips take 31.5 s, the film 120. */
  private static final int RATE = 4;

  private static final double CLIPS = 31.5;

  @TempDir Path dir;

  @Test
  void vlcStopsTheClips() throws Exception {
    String vlc = CounterVideo.needed("cvlc");
    String game = "game 1 #50 %";
    CounterVideo.write(dir.resolve(game + ".mp4"), 120, 1);
    Path book = SampleBook.ofGames(dir, List.of(game), "--video-name", "../../{game}.mp4");
    List<String> command = new ArrayList<>();
    if (System.getProperty("user.name").equals("root")) {
      // The player refuses to run as root.
      readable();
      command.addAll(
          List.of(
              CounterVideo.needed("setpriv"), "--reuid=65534", "--regid=65534", "--clear-groups"));
    }
    Path list;
    try (Stream<Path> all = Files.list(book.resolve("clips/players"))) {
      list = all.filter(f -> f.toString().endsWith(".m3u")).findFirst().orElseThrow();
    }
    command.addAll(List.of(vlc, "--intf", "dummy", "--vout", "dummy", "--aout", "dummy"));
    command.addAll(List.of("--rate", Integer.toString(RATE), "--play-and-exit", list.toString()));
    ProcessBuilder player = new ProcessBuilder(command);
    player.environment().put("HOME", Files.createDirectory(dir.resolve("home")).toString());
    player.redirectErrorStream(true).redirectOutput(dir.resolve("said.txt").toFile());
    long begin = System.nanoTime();
    Process process = player.start();
    boolean ended = process.waitFor(5, TimeUnit.MINUTES);
    process.destroy();
    double took = (System.nanoTime() - begin) / 1e9;
    System.out.printf(
        "VLC: %.1f s of clips at %d times the speed took %.1f s%n", CLIPS, RATE, took);
    assertTrue(ended, "the player goes on");
    // Played to its end from the first start on, the film alone takes 28 s, both clips 56.
    assertTrue(took > CLIPS / RATE * 0.9 && took < 25, took + " s, expected " + CLIPS / RATE);
  }

  private void readable() throws IOException {
    try (Stream<Path> all = Files.walk(dir)) {
      for (Path p : all.toList()) {
        Files.setPosixFilePermissions(p, PosixFilePermissions.fromString("rwxr-xr-x"));
      }
    }
  }
}
