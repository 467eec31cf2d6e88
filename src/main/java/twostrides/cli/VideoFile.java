package twostrides.cli;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import twostrides.book.Format;
import twostrides.sheet.CsvOut;
import twostrides.tracking.ClockMatch;
import twostrides.tracking.VideoSeconds;

/** Writes how exact the video second of each row is that has none of its own: docs/tables.md. */
final class VideoFile {

  private VideoFile() {}

  static void write(Path file, List<VideoSeconds.Row> rows) throws IOException {
    try (CsvOut csv = new CsvOut(file)) {
      csv.row("game", "sheet", "line", "period", "clock", "video_s", "off_by_s", "how");
      for (VideoSeconds.Row r : rows) {
        OptionalDouble off =
            r.match() instanceof ClockMatch.At at
                ? OptionalDouble.of(at.plusMinus())
                : OptionalDouble.empty();
        csv.row(
            r.game(),
            r.sheet(),
            r.line(),
            r.period(),
            Format.clock(r.period(), r.clockLeft()),
            tenths(VideoSeconds.second(r.match())),
            tenths(off),
            how(r.match()));
      }
    }
  }

  private static String how(ClockMatch match) {
    if (match instanceof ClockMatch.Beyond b) {
      return "drifts, past " + Format.count(b.stoppages(), "stoppage");
    }
    return match instanceof ClockMatch.NotCovered n
        ? n.reason()
        : ((ClockMatch.At) match).clockRan() ? "sync" : "inferred";
  }

  private static String tenths(OptionalDouble seconds) {
    return seconds.isEmpty()
        ? ""
        : BigDecimal.valueOf(Math.round(seconds.getAsDouble() * 10), 1)
            .stripTrailingZeros()
            .toPlainString();
  }
}
