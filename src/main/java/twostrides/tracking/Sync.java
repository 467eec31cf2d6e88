package twostrides.tracking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What the sync sheets say of one game: pairs of game clock and second of the video, and where the
 * frames of each segment begin.
 */
public final class Sync {
  /** Nothing known: rows that count frames begin where the tracking sheet's map says. */
  public static final Sync NONE = new Sync(List.of(), Map.of());

  private final List<ClockPair> pairs;
  private final Map<String, List<Start>> starts = new LinkedHashMap<>();

  /**
   * From this frame on, a segment's frames count from this second.
   *
   * @param frame the frame
   * @param period period of the video at that frame, from 1
   * @param video second of the video
   */
  record Start(int frame, int period, double video) {}

  /**
   * What was read.
   *
   * @param pairs pairs of clock and video, in the order of the sheets
   * @param starts where frames begin, by segment
   */
  Sync(List<ClockPair> pairs, Map<String, List<Start>> starts) {
    this.pairs = List.copyOf(pairs);
    starts.forEach(
        (segment, list) -> {
          List<Start> sorted = new ArrayList<>(list);
          sorted.sort(Comparator.comparingInt(Start::frame));
          this.starts.put(segment, sorted);
        });
  }

  /** Everything they say, as one text. */
  public String words() {
    return pairs + " " + starts;
  }

  /** The pairs of clock and video, in the order of the sheets. */
  public List<ClockPair> pairs() {
    return pairs;
  }

  /**
   * How much video a period has from its first pair to its last.
   *
   * @param period period, from 1
   * @param play seconds of play between the two
   * @param video seconds of video
   */
  public record Span(int period, double play, double video) {}

  /** The span of each period. */
  public List<Span> spans() {
    Map<Integer, List<ClockPair>> periods = new TreeMap<>();
    pairs.forEach(p -> periods.computeIfAbsent(p.period(), k -> new ArrayList<>()).add(p));
    List<Span> spans = new ArrayList<>();
    periods.forEach(
        (period, list) -> {
          DoubleSummaryStatistics play =
              list.stream().mapToDouble(ClockPair::elapsed).summaryStatistics();
          DoubleSummaryStatistics video =
              list.stream().mapToDouble(ClockPair::video).summaryStatistics();
          spans.add(
              new Span(period, play.getMax() - play.getMin(), video.getMax() - video.getMin()));
        });
    return spans;
  }

  /** Whether any segment's frames are placed. */
  boolean placesFrames() {
    return !starts.isEmpty();
  }

  /**
   * Where a frame's count begins: the last start at or before it, or the segment's first.
   *
   * @param segment the segment, empty when the sheet has none
   * @param frame the frame
   */
  Optional<Start> startOf(String segment, int frame) {
    List<Start> list = starts.getOrDefault(segment, List.of());
    Optional<Start> found = list.stream().findFirst();
    for (Start start : list) {
      found = start.frame() <= frame ? Optional.of(start) : found;
    }
    return found;
  }
}
