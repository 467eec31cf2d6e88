package twostrides.league;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Makes a tracking sheet for a play sheet of the demo: every player glides in straight lines from
 * one of his touches to the next, and is seen for a while before and after each. So he is where the
 * play sheet says when he lets the puck go, and nothing else of it is true.
 */
final class TrackingSheet {
  private static final double FRAMES_PER_SECOND = 30;

  /** Seconds before and after a touch; so 1.3 million rows come of a game. */
  private static final double SEEN = 36;

  private record Touch(double second, double x, double y) {}

  private TrackingSheet() {}

  /**
   * Writes it, unless it is there.
   *
   * @return rows of it
   */
  static long write(Path play, Path tracking) throws IOException {
    if (!Files.exists(tracking)) {
      CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
      Map<String, List<Touch>> tracks = new TreeMap<>();
      String game = "";
      try (CSVParser rows = CSVParser.parse(Files.newBufferedReader(play), format)) {
        for (CSVRecord row : rows) {
          game = row.get("game");
          if (!row.get("player").isEmpty() && !row.get("x_m").isEmpty()) {
            int turn = row.get("team").equals(row.get("home")) ? 1 : -1;
            tracks
                .computeIfAbsent(row.get("team") + "," + row.get("player"), t -> new ArrayList<>())
                .add(
                    new Touch(
                        Double.parseDouble(row.get("video_s")),
                        turn * Double.parseDouble(row.get("x_m")),
                        turn * Double.parseDouble(row.get("y_m"))));
          }
        }
      }
      Files.createDirectories(tracking.getParent());
      try (BufferedWriter out = Files.newBufferedWriter(tracking)) {
        out.write("game,video_s,track,team,number,x_m,y_m\n");
        for (Map.Entry<String, List<Touch>> track : tracks.entrySet()) {
          glide(out, game, track.getKey(), track.getValue());
        }
      }
    }
    try (var lines = Files.lines(tracking)) {
      return lines.count() - 1;
    }
  }

  private static void glide(BufferedWriter out, String game, String who, List<Touch> touches)
      throws IOException {
    String team = who.substring(0, who.indexOf(','));
    String number = who.substring(who.indexOf(',') + 1).split(" ", 2)[0];
    long next = 0;
    for (int i = 0; i < touches.size(); i++) {
      Touch from = touches.get(i);
      Touch to = touches.get(Math.min(i + 1, touches.size() - 1));
      double begins = i == 0 ? from.second() - SEEN : from.second();
      double ends = i == touches.size() - 1 ? from.second() + SEEN : to.second();
      for (long frame = Math.max(next, (long) Math.ceil(begins * FRAMES_PER_SECOND));
          frame <= ends * FRAMES_PER_SECOND;
          frame++) {
        double second = frame / FRAMES_PER_SECOND;
        next = frame + 1;
        if (second > from.second() + SEEN && second < to.second() - SEEN) {
          continue;
        }
        double gap = to.second() - from.second();
        double part = gap > 0 ? Math.max(0, Math.min(1, (second - from.second()) / gap)) : 0;
        out.write(
            String.format(
                Locale.ROOT,
                "%s,%.3f,%s-%s,%s,%s,%.2f,%.2f%n",
                game,
                second,
                team.charAt(0),
                number,
                team,
                number,
                from.x() + part * (to.x() - from.x()),
                from.y() + part * (to.y() - from.y())));
      }
    }
  }
}
