package twostrides.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import twostrides.book.Format;
import twostrides.book.Show;
import twostrides.game.Game;
import twostrides.game.TaggedGame;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.Problem;
import twostrides.tracking.ClockMatch;
import twostrides.tracking.SyncSheets;
import twostrides.tracking.VideoSeconds;

/** What the sync sheets did: how many rows got a second of the video, and how exact it is. */
final class VideoReport {

  /** Games and periods named in one line. */
  private static final int MOST_NAMED = 5;

  /**
   * Own seconds that differ from the sync sheets by more than this come from another video or
   * another start of it, s. Assumed.
   */
  private static final double ANOTHER_VIDEO = 5;

  /** Seconds of play between pairs that say how fast a video runs. Assumed. */
  private static final double LEAST_PLAY = 300;

  /** Seconds of video for a second of play that no game takes: it is two or three. Assumed. */
  private static final double SLOWEST = 10;

  private final VideoSeconds seconds;
  private final SyncSheets sync;
  private final List<VideoSeconds.Row> open;

  private VideoReport(VideoSeconds seconds, SyncSheets sync) {
    this.seconds = seconds;
    this.sync = sync;
    this.open = seconds.rows().stream().filter(r -> r.own().isEmpty()).toList();
  }

  static VideoReport of(VideoSeconds seconds, SyncSheets sync) {
    return new VideoReport(seconds, sync);
  }

  private boolean given() {
    return sync.rowsRead() > 0;
  }

  private static boolean sure(VideoSeconds.Row row) {
    return row.match() instanceof ClockMatch.At at && at.clockRan();
  }

  private static boolean inferred(VideoSeconds.Row row) {
    return row.match() instanceof ClockMatch.At at && !at.clockRan();
  }

  private static boolean runsOn(VideoSeconds.Row row) {
    return row.match() instanceof ClockMatch.Beyond;
  }

  private static boolean none(VideoSeconds.Row row) {
    return row.match() instanceof ClockMatch.NotCovered;
  }

  private List<VideoSeconds.Row> rows(Predicate<VideoSeconds.Row> which) {
    return open.stream().filter(which).toList();
  }

  /** How far off the farthest of some rows may be. */
  private static String off(List<VideoSeconds.Row> rows) {
    double most =
        rows.stream().mapToDouble(r -> ((ClockMatch.At) r.match()).plusMinus()).max().orElse(0);
    return String.format(Locale.ROOT, "%.1f s", most);
  }

  /** A sentence for the foot of the pages; empty without sync sheets. */
  String foot() {
    List<VideoSeconds.Row> inferred = rows(VideoReport::inferred);
    List<VideoSeconds.Row> beyond = rows(VideoReport::runsOn);
    List<VideoSeconds.Row> sure = rows(VideoReport::sure);
    if (sure.size() + inferred.size() + beyond.size() == 0) {
      return "";
    }
    return " The video seconds of "
        + Format.count(sure.size() + inferred.size() + beyond.size(), "row")
        + " come from sync sheets; "
        + inferred.size()
        + " of them are inferred"
        + (inferred.isEmpty() ? "" : ", off by up to " + off(inferred))
        + ", and "
        + beyond.size()
        + " drift (data/video.csv).";
  }

  /** Rows whose second is inferred or drifts, and by how much, as {@code book.Videos} asks. */
  Map<String, OptionalDouble> unsure() {
    Map<String, OptionalDouble> unsure = new HashMap<>();
    for (VideoSeconds.Row r : open) {
      if (inferred(r)) {
        double off = ((ClockMatch.At) r.match()).plusMinus();
        unsure.put(Show.source(r.sheet(), r.line()), OptionalDouble.of(off));
      } else if (runsOn(r)) {
        unsure.put(Show.source(r.sheet(), r.line()), OptionalDouble.empty());
      }
    }
    return unsure;
  }

  /**
   * Prints what was set aside, the sum that must hold, and how exact the seconds are.
   *
   * @param out where to print
   * @param most most problems to print
   * @param kept folder with the rows set aside
   */
  void report(PrintWriter out, int most, Path kept) {
    if (!given()) {
      return;
    }
    List<Problem> problems = new ArrayList<>();
    for (DoubtfulRow row : sync.setAside()) {
      problems.addAll(row.problems());
    }
    problems.stream().limit(most).forEach(p -> out.println("Set aside: " + p.message()));
    if (problems.size() > most) {
      out.println("... and " + (problems.size() - most) + " more in sync sheets, in " + kept);
    }
    int setAside = sync.setAside().size();
    out.println(
        "Sync: "
            + Format.count(sync.rowsRead(), "row")
            + " read = "
            + (sync.rowsRead() - setAside)
            + " used + "
            + setAside
            + " set aside.");
    sync.doubts().forEach(d -> out.println("Look at this: " + d));
    tooLong(out);
    exactness(out);
  }

  /** Says where the video is longer than any game: its seconds are frames, or thousandths. */
  private void tooLong(PrintWriter out) {
    Stream.concat(
            seconds.played().stream().map(Game::id), seconds.tagged().stream().map(TaggedGame::id))
        .distinct()
        .flatMap(id -> sync.of(id).spans().stream().map(s -> Map.entry(id, s)))
        .filter(s -> s.getValue().play() >= LEAST_PLAY)
        .filter(s -> s.getValue().video() > SLOWEST * s.getValue().play())
        .findFirst()
        .ifPresent(
            s ->
                out.println(
                    String.format(
                        Locale.ROOT,
                        "Look at this: in %s, period %d, found %.0f s of video for %.0f s of play,"
                            + " expected two or three times as many. What to do: Check in the sync map"
                            + " whether video_s counts frames, or thousandths of a second.",
                        s.getKey(),
                        s.getValue().period(),
                        s.getValue().video(),
                        s.getValue().play())));
  }

  private void exactness(PrintWriter out) {
    List<VideoSeconds.Row> sure = rows(VideoReport::sure);
    List<VideoSeconds.Row> inferred = rows(VideoReport::inferred);
    List<VideoSeconds.Row> beyond = rows(VideoReport::runsOn);
    List<VideoSeconds.Row> none = rows(VideoReport::none);
    int own = seconds.rows().size() - open.size();
    out.println(
        "Video: "
            + Format.count(sure.size(), "row")
            + " got a second from the sync sheets"
            + (sure.isEmpty() ? "" : ", off by at most " + off(sure))
            + (own > 0 ? "; " + own + " keep their own." : "."));
    if (!inferred.isEmpty()) {
      out.println(
          "Video: "
              + Format.count(inferred.size(), "further second")
              + " inferred, since the length of a stoppage is not known; off by at most "
              + off(inferred)
              + ": "
              + where(inferred));
    }
    if (!beyond.isEmpty()) {
      int stoppages =
          beyond.stream()
              .mapToInt(r -> ((ClockMatch.Beyond) r.match()).stoppages())
              .max()
              .orElse(0);
      out.println(
          "Video: "
              + Format.count(beyond.size(), "second")
              + " drift: outside the pairs of the period they run on at the clock's pace and are off by"
              + " the length of the stoppages in between"
              + (stoppages > 0 ? " (up to " + stoppages + " in the sheet)" : "")
              + "; a pair at each face-off mends that: "
              + where(beyond));
    }
    Map<String, List<VideoSeconds.Row>> reasons =
        none.stream()
            .collect(
                Collectors.groupingBy(
                    r -> ((ClockMatch.NotCovered) r.match()).reason(),
                    TreeMap::new,
                    Collectors.toList()));
    reasons.forEach(
        (reason, rows) ->
            out.println(
                "Video: "
                    + Format.count(rows.size(), "row")
                    + " without a second, "
                    + reason
                    + ": "
                    + where(rows)));
    another(out);
  }

  /** Games and periods of rows, the first few named. */
  private static String where(List<VideoSeconds.Row> rows) {
    List<String> places =
        rows.stream().map(r -> r.game() + ", period " + r.period()).distinct().toList();
    return places.stream().limit(MOST_NAMED).collect(Collectors.joining("; "))
        + (places.size() > MOST_NAMED
            ? "; and " + (places.size() - MOST_NAMED) + " more periods (data/video.csv)."
            : ".");
  }

  /** Says of which games the own seconds and the sync sheets speak of two videos. */
  private void another(PrintWriter out) {
    Map<String, List<Double>> apart = new TreeMap<>();
    for (VideoSeconds.Row r : seconds.rows()) {
      if (r.own().isPresent() && sure(r)) {
        double by = ((ClockMatch.At) r.match()).seconds() - r.own().getAsDouble();
        apart.computeIfAbsent(r.game(), g -> new ArrayList<>()).add(by);
      }
    }
    apart.forEach(
        (game, by) -> {
          double[] sorted = by.stream().mapToDouble(d -> d).sorted().toArray();
          double middle = sorted[sorted.length / 2];
          if (Math.abs(middle) > ANOTHER_VIDEO) {
            out.println(
                String.format(
                    Locale.ROOT,
                    "Doubtful: in %s the rows' own video seconds, which win, lie %.0f s %s those of"
                        + " the sync sheets (the middle of %s): two different videos?",
                    game,
                    Math.abs(middle),
                    middle > 0 ? "before" : "after",
                    Format.count(sorted.length, "row")));
          }
        });
  }

  /**
   * Writes data/video.csv; nothing without sync sheets.
   *
   * @param data the folder
   * @throws IOException when it cannot be written
   */
  void write(Path data) throws IOException {
    if (given()) {
      VideoFile.write(data.resolve("video.csv"), open);
    }
  }
}
