package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command as a process: killed, begun again, ended; and the review of what it left. */
class TagCommandTest {

  @TempDir Path dir;

  private static String exit(int i) {
    return "{\"home\":\"Herons\",\"away\":\"Wolves\",\"period\":\"1\",\"clock\":\"1"
        + i
        + ":0"
        + i
        + "\",\"team\":\"Herons\",\"player\":\"4 Berg\",\"way_out\":\"chip\",\"x_m\":\"-9.5\","
        + "\"y_m\":\"3.2\",\"ended\":\"icing\",\"strength\":\"even\"}";
  }

  private static String run(String... args) {
    StringWriter out = new StringWriter();
    int code = Main.run(new PrintWriter(out, true), new PrintWriter(out, true), args);
    return code + ": " + out;
  }

  @Test
  void tenExitsOutliveAKilledProgram() throws Exception {
    Path sheet = dir.resolve("tags.csv");
    try (TagProcess first = TagProcess.start(sheet)) {
      for (int i = 0; i < 10; i++) {
        HttpResponse<String> r = first.post("add", exit(i));
        assertEquals(200, r.statusCode(), r.body());
      }
      first.kill();
    }
    // As if the power had failed before the sheet was moved: only the journal is left.
    Files.delete(sheet);
    try (TagProcess second = TagProcess.start(sheet)) {
      assertTrue(second.opening().contains("10 exits brought back"), second.opening());
      assertTrue(second.get("state").contains("\"id\":10"), second.get("state"));
      String end = second.end();
      assertTrue(end.contains("10 exits tagged, 10 in " + sheet), end);
    }
    String review = run("review", sheet.toString(), "--out", dir.resolve("book").toString());
    assertTrue(review.contains("10 rows read = 10 rows used + 0 rows set aside."), review);
  }

  /** Killed in the middle of saving, three times over: what was called saved is there, once. */
  @Test
  void whateverTheMomentNothingSavedIsLost() throws Exception {
    Path sheet = dir.resolve("tags.csv");
    Random moments = new Random(20311004);
    List<String> saved = new ArrayList<>();
    for (int round = 0; round < 3; round++) {
      try (TagProcess p = TagProcess.start(sheet)) {
        // The clock of the kill runs from the first answer on: a machine may be slow to give it.
        Optional<CompletableFuture<Void>> killed = Optional.empty();
        try {
          for (int i = 0; ; i++) {
            String note = "exit " + round + "/" + i + ".";
            String json = exit(1).replace("\"way_out\"", "\"note\":\"" + note + "\",\"way_out\"");
            if (p.post("add", json).statusCode() == 200) {
              saved.add(note);
            }
            if (killed.isEmpty()) {
              killed =
                  Optional.of(
                      CompletableFuture.runAsync(
                          p::kill,
                          CompletableFuture.delayedExecutor(
                              moments.nextInt(700), TimeUnit.MILLISECONDS)));
            }
          }
        } catch (IOException e) {
          killed.orElseThrow().join();
        }
      }
    }
    try (TagProcess p = TagProcess.start(sheet)) {
      List<String> there =
          Pattern.compile("exit \\d+/\\d+\\.")
              .matcher(p.get("state"))
              .results()
              .map(MatchResult::group)
              .toList();
      System.out.println(
          saved.size() + " exits called saved in 3 killed runs, " + there.size() + " there");
      assertTrue(saved.size() >= 3, saved.toString());
      assertTrue(there.containsAll(saved), there + " lacks some of " + saved);
      assertEquals(there.size(), there.stream().distinct().count());
      assertTrue(
          there.size() <= saved.size() + 3, "at most the one of each run that was being saved");
    }
  }

  @Test
  void theBookOfThePageIsTheBookOfTheReview() throws Exception {
    Path sheet = dir.resolve("tags.csv");
    Path book = dir.resolve("book");
    try (TagProcess p = TagProcess.start(sheet, "--out", book.toString())) {
      String empty = p.post("book", "{}").body();
      assertTrue(empty.contains("\"made\":false"), empty);
      for (int i = 0; i < 3; i++) {
        p.post("add", exit(i));
      }
      String made = p.post("book", "{}").body();
      assertTrue(made.contains("\"made\":true"), made);
      assertTrue(made.contains("3 rows read = 3 rows used + 0 rows set aside."), made);
      assertEquals(Files.readString(book.resolve("index.html")), p.get("book/index.html"));
      String ended = p.post("end", "{}").body();
      assertTrue(ended.contains("3 exits tagged, 3 in"), ended);
      assertTrue(p.rest().contains("3 exits tagged, 3 in " + sheet), ended);
    }
    Path again = dir.resolve("again");
    run("review", sheet.toString(), "--out", again.toString());
    assertEquals(
        Files.readString(again.resolve("data/exits.csv")),
        Files.readString(book.resolve("data/exits.csv")));
  }

  /** The book's playlists play the file that was tagged, whatever it is called. */
  @Test
  void playlistsNameTheTaggedFile() throws Exception {
    Path video = Files.writeString(dir.resolve("GX01 night.webm"), "stands for a video");
    Path book = dir.resolve("book");
    try (TagProcess p =
        TagProcess.start(
            dir.resolve("tags.csv"), "--out", book.toString(), "--video", video.toString())) {
      p.post("add", exit(1).replace("}", ",\"video_s\":\"61.5\"}"));
      String made = p.post("book", "{}").body();
      assertTrue(made.contains("\"made\":true"), made);
      p.end();
    }
    Path clips = book.resolve("clips");
    String list = Files.readString(clips.resolve("look.m3u"));
    String name = list.lines().toList().get(4).replace("%20", " ");
    assertEquals(video.toRealPath(), clips.resolve(name).toRealPath(), list);
    assertTrue(list.contains("#EXTVLCOPT:start-time=57.5"), list);
    assertTrue(Files.readString(book.resolve("meeting.js")).contains("[0,61.5,"), "every exit");
  }

  @Test
  void aBookThatCannotBeMadeSaysWhy() throws Exception {
    Path mine = Files.createDirectory(dir.resolve("mine"));
    Files.writeString(mine.resolve("thesis.txt"), "keep me");
    try (TagProcess p = TagProcess.start(dir.resolve("tags.csv"), "--out", mine.toString())) {
      p.post("add", exit(1));
      String said = p.post("book", "{}").body();
      assertTrue(said.contains("\"made\":false"), said);
      assertTrue(said.contains("holds files that are no review book"), said);
    }
    assertEquals("keep me", Files.readString(mine.resolve("thesis.txt")));
  }

  @Test
  void wrongOptionsAreRefused() throws IOException {
    String sheet = run("tag", "--sheet", dir.resolve("tags.xlsx").toString(), "--no-open");
    assertTrue(sheet.startsWith("2: "), sheet);
    assertTrue(sheet.contains("expected a file name that ends in .csv"), sheet);
    String video = run("tag", "--video", dir.resolve("none.mp4").toString(), "--no-open");
    assertTrue(video.startsWith("2: ") && video.contains("--video: found"), video);
    Path play = Files.writeString(dir.resolve("play.csv"), "period,clock,team,action\n");
    String wrong = run("tag", "--sheet", play.toString(), "--no-open");
    assertTrue(wrong.startsWith("3: ") && wrong.contains("without a way_out column"), wrong);
    assertEquals("period,clock,team,action\n", Files.readString(play));
  }
}
