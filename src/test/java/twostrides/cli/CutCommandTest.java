package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twostrides.clips.CounterVideo;

/** What is cut: the right pictures of the right games, as long as the list says. */
class CutCommandTest {

  private static final double CARD = 3;

  private record Wanted(int mark, double start, double end) {}

  @TempDir Path dir;

  private Path list(String... rows) throws IOException {
    return Files.writeString(
        dir.resolve("list.csv"),
        "game,start_s,end_s,title\r\n" + String.join("\r\n", rows) + "\r\n");
  }

  @Test
  void theReelHasTheRightLengthAndPictures() throws Exception {
    Path films = Files.createDirectory(dir.resolve("films"));
    CounterVideo.write(films.resolve("first game.mp4"), 60, 1);
    CounterVideo.write(films.resolve("GX01.webm"), 60, 2);
    // As a spreadsheet saves it: a byte order mark, semicolons.
    Files.writeString(films.resolve("videos.csv"), "\uFEFFgame;file\r\nsecond;GX01.webm\r\n");
    Path list =
        list(
            "first,4.2,9.7,\"P1 12:00, a 'quoted' title, 100 %\"",
            "second,31,35,P2 3:10", "first,50.5,58,Größe: ungefähr 3 m");
    List<Wanted> wanted =
        List.of(new Wanted(1, 4.2, 9.7), new Wanted(2, 31, 35), new Wanted(1, 50.5, 58));
    Path out = dir.resolve("reel");
    Run run = Run.of("cut", list, "--video", films, "--out", out);
    assertEquals(0, run.code(), run.err());
    Ffmpeg ffmpeg = Ffmpeg.on(System.getenv("PATH")).orElseThrow();
    double at = 0;
    for (Wanted w : wanted) {
      at += CARD;
      for (double into : new double[] {0.2, (w.end - w.start) / 2, w.end - w.start - 0.2}) {
        var shown = CounterVideo.at(out.resolve("reel.mp4"), at + into);
        assertEquals(w.mark, shown.mark(), "game at " + at);
        assertEquals(w.start + into - 0.5, shown.second(), 0.75, "second at " + at);
      }
      at += w.end - w.start;
    }
    double length = ffmpeg.seconds(out.resolve("reel.mp4"));
    System.out.printf("cut: the reel lasts %.2f s, its list %.2f s%n", length, at);
    assertEquals(at, length, 0.5);
    try (Stream<Path> all = Files.list(out)) {
      List<Path> clips =
          all.filter(p -> p.getFileName().toString().matches("\\d\\d-.*")).sorted().toList();
      assertEquals(3, clips.size());
      for (int i = 0; i < 3; i++) {
        Wanted w = wanted.get(i);
        assertEquals(w.end - w.start, ffmpeg.seconds(clips.get(i)), 0.5, clips.get(i).toString());
      }
    }
  }

  @Test
  void withoutTheVideoOrTheSecondNothingIsWritten() throws Exception {
    Path films = Files.createDirectory(dir.resolve("films"));
    CounterVideo.write(films.resolve("first game.mp4"), 10, 1);
    Path out = dir.resolve("reel");
    Run missing = Run.of("cut", list("other,1,2,x"), "--video", films, "--out", out);
    assertEquals(Main.UNREADABLE, missing.code());
    assertTrue(missing.err().contains("no video of other"), missing.err());
    Run late = Run.of("cut", list("first,1,2,x", "first,30,40,y"), "--video", films, "--out", out);
    assertEquals(Main.UNREADABLE, late.code());
    assertTrue(
        late.err().contains("list.csv, line 3: found a clip that starts at 30.0 s"), late.err());
    Run word = Run.of("cut", list("first,one,2,x"), "--video", films, "--out", out);
    assertTrue(
        word.err().contains("column \"start_s\": found \"one\", expected a number, 0 or more"),
        word.err());
    assertTrue(Files.notExists(out.resolve("reel.mp4")));
  }

  @Test
  void oneVideoForOneGameIsThatGames() throws Exception {
    Path film = Files.createFile(dir.resolve("GX02.mp4"));
    assertEquals(Optional.of(film), GameVideos.in(film, List.of("first")).of("first"));
    assertEquals(Optional.empty(), GameVideos.in(film, List.of("first", "second")).of("first"));
    assertEquals(Optional.empty(), GameVideos.in(dir, List.of("first")).of("first"));
  }

  @Test
  void whereThereIsNoFfmpegThatIsKnown() {
    assertEquals(Optional.empty(), Ffmpeg.on(dir.toString()));
    assertEquals(Optional.empty(), Ffmpeg.on(""));
  }
}
