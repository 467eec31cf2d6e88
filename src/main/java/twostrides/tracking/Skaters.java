package twostrides.tracking;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.DoubleStream;
import twostrides.game.VideoFrame;
import twostrides.rink.Place;
import twostrides.sheet.Problem;

/**
 * The skaters seen at an instant. The camera shows a part of the ice: who is not in the list may
 * well be near. Goalkeepers are in it when the tracking has them.
 *
 * @param second second of the video
 * @param seen the skaters, in one team's frame, in the order of the sheet; a second sighting of the
 *     same skater (same team, same number read in both, closer than {@link #SAME}) is left out
 * @param doubts why skaters were left out, or stand twice
 * @param frame the frame nearest to it in the sheet of the first of them, where it counts frames
 */
public record Skaters(
    double second, List<SeenSkater> seen, List<Problem> doubts, Optional<VideoFrame> frame) {
  /** The longest time between two rows between which a place is taken, 0.2 s: assumed. */
  public static final double LONGEST_BETWEEN = 0.2;

  /**
   * Two sightings of one number closer than this are one skater, in metres: half the width of two
   * skaters side by side, assumed.
   */
  public static final double SAME = 0.5;

  /** Fewest skaters whose common motion says something. Assumed. */
  public static final int LEAST_TOGETHER = 5;

  /** Copies the lists. */
  public Skaters {
    seen = List.copyOf(seen);
    doubts = List.copyOf(doubts);
  }

  /**
   * The skaters of some tracks, home team's frame.
   *
   * @param tracks the tracks
   * @param second second of the video
   * @param tolerance farthest in time that a single row may be, in seconds
   * @param smoother what gives velocities
   */
  static Skaters of(List<Track> tracks, double second, double tolerance, Smoother smoother) {
    List<SeenSkater> seen = new ArrayList<>();
    List<Problem> doubts = new ArrayList<>();
    Optional<VideoFrame> frame = Optional.empty();
    for (Track track : tracks) {
      Optional<Sighting> there = sighting(track, second, tolerance);
      if (there.isEmpty()) {
        continue;
      }
      Sighting sighting = there.get();
      Motion motion = smoother.motion(track, second);
      if (motion instanceof Motion.TooFast fast) {
        doubts.add(fast.doubt());
        continue;
      }
      OptionalInt number = track.number(sighting.row());
      SeenSkater skater =
          new SeenSkater(track.home(), number, sighting.place(), motion, track.id());
      OptionalDouble apart =
          seen.stream()
              .filter(s -> s.home() == skater.home() && number.isPresent())
              .filter(s -> s.number().equals(number))
              .mapToDouble(s -> s.place().distanceTo(skater.place()))
              .min();
      if (apart.isPresent() && apart.getAsDouble() < SAME) {
        continue;
      }
      if (apart.isPresent()) {
        doubts.add(twice(track, sighting.row(), number.getAsInt(), apart.getAsDouble()));
      }
      seen.add(skater);
      frame = frame.isPresent() ? frame : track.frame(sighting.row());
    }
    return new Skaters(second, seen, doubts, frame);
  }

  /** Where a track is at an instant, and the row nearest to it. */
  private record Sighting(Place place, int row) {}

  private static Optional<Sighting> sighting(Track track, double second, double tolerance) {
    int before = track.rowAt(second);
    int after = before + 1;
    boolean both = before >= 0 && after < track.rows();
    if (both && track.second(after) - track.second(before) <= LONGEST_BETWEEN) {
      double between = track.second(after) - track.second(before);
      double part = (second - track.second(before)) / between;
      Place place =
          new Place(
              track.x(before) + part * (track.x(after) - track.x(before)),
              track.y(before) + part * (track.y(after) - track.y(before)));
      return Optional.of(new Sighting(place, part <= 0.5 ? before : after));
    }
    boolean nearBefore = before >= 0 && second - track.second(before) <= tolerance;
    boolean nearAfter = after < track.rows() && track.second(after) - second <= tolerance;
    if (!nearBefore && !nearAfter) {
      return Optional.empty();
    }
    int row = nearBefore ? before : after;
    return Optional.of(new Sighting(new Place(track.x(row), track.y(row)), row));
  }

  private static Problem twice(Track track, int row, int number, double apart) {
    return new Problem(
        track.file(),
        track.line(row),
        TrackForm.NUMBER_WORN,
        Integer.toString(number),
        String.format(
            Locale.ROOT,
            "a number that is not at another place at the same instant, %.1f m away",
            apart),
        "Look which of the two it is; both skaters are used, the number is not to be relied on.");
  }

  /**
   * How fast the skaters seen move as one: the length of the median velocity, in m/s; empty when
   * fewer than {@link #LEAST_TOGETHER} have one. In tracking from a broadcast camera a high value
   * is more often the camera's turn, taken for skating, than a rush: in the open sheets 1,123 of
   * 1,293 speeds above 7 m/s stand where this is above 5 m/s (OpenTrackingTest).
   */
  public OptionalDouble commonSpeed() {
    List<Motion.Moving> moving =
        seen.stream()
            .map(SeenSkater::motion)
            .filter(Motion.Moving.class::isInstance)
            .map(Motion.Moving.class::cast)
            .toList();
    if (moving.size() < LEAST_TOGETHER) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        Math.hypot(
            median(moving.stream().mapToDouble(Motion.Moving::vx)),
            median(moving.stream().mapToDouble(Motion.Moving::vy))));
  }

  private static double median(DoubleStream values) {
    double[] sorted = values.sorted().toArray();
    int half = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
  }

  /** The same skaters in the other team's frame. */
  public Skaters seenByOpponent() {
    return new Skaters(
        second, seen.stream().map(SeenSkater::seenByOpponent).toList(), doubts, frame);
  }

  /**
   * The skaters of one team.
   *
   * @param home whether the home team
   */
  public List<SeenSkater> of(boolean home) {
    return seen.stream().filter(s -> s.home() == home).toList();
  }
}
