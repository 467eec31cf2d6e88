package twostrides.tracking;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import twostrides.game.Frame;
import twostrides.game.RowReader;
import twostrides.rink.Place;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;
import twostrides.sheet.SheetRow;
import twostrides.sheet.SheetStream;

/** Puts the rows of tracking sheets into tracks, and sets aside those that cannot be used. */
final class TrackRows implements SheetStream.Taker {
  private static final int MOST_PERIODS = 20;

  /** Highest number on a jersey, all books read. */
  private static final int HIGHEST_NUMBER = 99;

  private static final String WHERE_FRAMES_BEGIN =
      "Add a row with this segment, frame and video_s to the sync sheet.";

  private final SheetMap map;
  private final TrackedGame game;
  private final Sync sync;
  private final Frame frame;

  /** Whether seconds of video begin anew with each period. */
  final boolean restarts;

  private final Set<Integer> unread;
  final OptionalDouble framesPerSecond;
  private final Map<String, Boolean> attacks = new LinkedHashMap<>();
  private final Map<Key, Track> tracks = new LinkedHashMap<>();
  private final Map<Key, Double> lastElapsed = new HashMap<>();
  private final TreeMap<Integer, TreeMap<Double, ClockPair>> clocks = new TreeMap<>();

  /** Rows set aside, in their own words; not all of many. */
  final List<DoubtfulRow> doubtful = new ArrayList<>();

  int setAside;
  int used;
  int ofOtherGames;
  private String file = "";

  /** What makes rows one track. */
  private record Key(
      String file, String segment, String id, boolean home, Optional<Integer> period) {}

  /** Second of the video of a row, its period and its frame where they are known. */
  private record When(Optional<Integer> period, double second, Optional<Integer> frame) {}

  TrackRows(SheetMap map, TrackedGame game, Sync sync) {
    this.map = map;
    this.game = game;
    this.sync = sync;
    this.frame = Frame.of(map, Frame.View.HOME_TEAM, game.usual());
    this.restarts = map.flag("video", "restarts_each_period").orElse(false);
    this.unread = Set.copyOf(map.wholeNumbers("track", "unread").orElse(List.of()));
    this.framesPerSecond = map.number("video", "frames_per_second");
    attacks.put("plus_x", true);
    attacks.put("minus_x", false);
  }

  /** Says which file comes next. */
  void begin(String nextFile) {
    file = nextFile;
  }

  @Override
  public void header(Set<String> present) throws SheetException {
    boolean frames = present.contains(TrackForm.FRAME);
    if (!frames && !present.contains(TrackForm.VIDEO)) {
      throw SheetException.ofFile(
          file,
          "neither a column \"frame\" nor a column \"video_s\"",
          "one of the two, which say when a row was seen",
          "Add the column, or write a sheet map that says where it comes from.");
    }
    double rate = framesPerSecond.orElse(0);
    if (!present.contains(TrackForm.VIDEO) && !(rate > 0)) {
      throw SheetException.ofFile(
          map.name(),
          framesPerSecond.isPresent() ? "frames_per_second = " + rate : "no frames_per_second",
          "how many frames the video has in a second, more than 0, for sheets that count frames",
          "Write frames_per_second = 30, or what it is, under [video].");
    }
  }

  @Override
  public void setAside(DoubtfulRow row) {
    setAside++;
    if (doubtful.size() < Tracks.MOST_KEPT) {
      doubtful.add(row);
    }
  }

  @Override
  public void row(SheetRow row) {
    RowReader in = new RowReader(row, frame);
    if (in.text(TrackForm.GAME).filter(g -> !g.equals(game.id())).isPresent()) {
      ofOtherGames++;
      return;
    }
    Optional<When> when = when(row, in);
    Optional<String> id = in.requiredText(TrackForm.TRACK, "a track's id");
    Optional<String> team = in.requiredText(TrackForm.TEAM, "a team's name");
    if (team.isPresent() && !game.plays(team.get())) {
      in.doubt(
          TrackForm.TEAM,
          "one of the two teams: \"" + game.home() + "\", \"" + game.away() + "\"",
          "Correct the name, or translate it in a sheet map, under [values.team].");
    }
    boolean home = team.filter(game.home()::equals).isPresent();
    short number = number(in);
    Optional<Place> place = place(row, in, home, when.flatMap(When::period));
    boolean hasClock = row.cell(TrackForm.CLOCK).isPresent();
    Optional<Double> elapsed = hasClock ? in.elapsed() : Optional.empty();
    if (in.problems().isEmpty() && when.isPresent() && place.isPresent()) {
      When w = when.get();
      String segment = in.text(TrackForm.SEGMENT).orElse("");
      Key key = new Key(row.file(), segment, id.orElseThrow(), home, w.period());
      Track track =
          tracks.computeIfAbsent(
              key,
              k ->
                  new Track(
                      k.id(),
                      k.file(),
                      k.home(),
                      k.period(),
                      Optional.of(k.segment()).filter(s -> !s.isEmpty())));
      if (inOrder(row, in, track, w.second(), elapsed, lastElapsed.getOrDefault(key, -1.0))) {
        track.add(
            w.second(), place.get(), number, row.line(), w.frame().orElse((int) Track.UNREAD));
        used++;
        elapsed.ifPresent(e -> lastElapsed.put(key, e));
        elapsed.ifPresent(e -> w.period().ifPresent(p -> pair(row, in, p, w.second(), e)));
        return;
      }
    }
    setAside(new DoubtfulRow(row, in.problems()));
  }

  private boolean inOrder(
      SheetRow row,
      RowReader in,
      Track track,
      double second,
      Optional<Double> elapsed,
      double last) {
    if (track.rows() > 0 && second <= track.second(track.rows() - 1)) {
      in.doubt(
          row.cell(TrackForm.VIDEO).isPresent() ? TrackForm.VIDEO : TrackForm.FRAME,
          "a later instant than the track's row in line " + track.line(track.rows() - 1),
          "Take the second of two rows out, or sort the sheet by time.");
    } else if (elapsed.isPresent() && elapsed.get() < last) {
      in.doubt(
          TrackForm.CLOCK,
          "a clock that does not run backward: the track's row in line "
              + track.line(track.rows() - 1)
              + " is later",
          "Correct the clock, or leave it empty when you do not know.");
    }
    return in.problems().isEmpty();
  }

  private void pair(SheetRow row, RowReader in, int period, double second, double elapsed) {
    double step = frame.clockStep(in.clockDecimals()) + 1 / framesPerSecond.orElse(30);
    clocks
        .computeIfAbsent(period, p -> new TreeMap<>())
        .merge(
            elapsed,
            new ClockPair(period, elapsed, second, step / 2, file, row.line()),
            (a, b) -> b.video() < a.video() ? b : a);
  }

  private Optional<When> when(SheetRow row, RowReader in) {
    Optional<Integer> period = in.wholeNumber(TrackForm.PERIOD, 1, MOST_PERIODS);
    OptionalDouble video = in.video();
    Optional<Integer> count = in.wholeNumber(TrackForm.FRAME, 0, TrackForm.LAST_FRAME);
    Optional<When> when = Optional.empty();
    if (video.isPresent()) {
      when = Optional.of(new When(period, video.getAsDouble(), count));
    } else if (count.isPresent() && framesPerSecond.isPresent()) {
      when = framed(row, in, count.get(), period);
    } else if (row.cell(TrackForm.VIDEO).isEmpty() && row.cell(TrackForm.FRAME).isEmpty()) {
      in.requiredText(TrackForm.VIDEO, "seconds of video, or a frame");
    } else if (count.isPresent()) {
      in.doubt(
          TrackForm.FRAME,
          "a video_s in the row, since no map says how many frames make a second",
          "Fill in video_s, or write frames_per_second in a sheet map, under [video].");
    }
    if (restarts && when.isPresent() && when.get().period().isEmpty()) {
      in.doubt(TrackForm.PERIOD, "the period, since video seconds restart", "Fill it in.");
    }
    return when;
  }

  private Optional<When> framed(SheetRow row, RowReader in, int count, Optional<Integer> period) {
    double rate = framesPerSecond.getAsDouble();
    if (!sync.placesFrames()) {
      double first = map.number("video", "first_frame_s").orElse(0);
      return Optional.of(new When(period, first + count / rate, Optional.of(count)));
    }
    Optional<Sync.Start> start = sync.startOf(in.text(TrackForm.SEGMENT).orElse(""), count);
    if (start.isEmpty()) {
      String column = row.cell(TrackForm.SEGMENT).isPresent() ? TrackForm.SEGMENT : TrackForm.FRAME;
      in.doubt(column, "a segment whose frames the sync sheet places", WHERE_FRAMES_BEGIN);
      return Optional.empty();
    }
    Sync.Start s = start.get();
    if (restarts && period.filter(p -> p != s.period()).isPresent()) {
      in.doubt(
          TrackForm.PERIOD,
          "period " + s.period() + ", in which the sync sheet begins this segment's frames",
          WHERE_FRAMES_BEGIN);
    }
    return Optional.of(
        new When(
            period.or(() -> Optional.of(s.period())),
            s.video() + (count - s.frame()) / rate,
            Optional.of(count)));
  }

  private short number(RowReader in) {
    Optional<Integer> worn = in.wholeNumber(TrackForm.NUMBER_WORN, 0, Short.MAX_VALUE);
    if (worn.isEmpty() || unread.contains(worn.get())) {
      return Track.UNREAD;
    }
    if (worn.get() > HIGHEST_NUMBER) {
      in.doubt(
          TrackForm.NUMBER_WORN,
          "a number from 0 to " + HIGHEST_NUMBER,
          "Correct it, or list it in a sheet map, unread = [" + worn.get() + "] under [track].");
    }
    return worn.get().shortValue();
  }

  /** The place in the home team's frame. */
  private Optional<Place> place(SheetRow row, RowReader in, boolean home, Optional<Integer> known) {
    Optional<Boolean> plusX = in.word(TrackForm.HOME_ATTACKS, attacks);
    boolean fixed = frame.view() == Frame.View.RINK_FIXED;
    if (fixed && known.isEmpty() && plusX.isEmpty()) {
      in.doubt(TrackForm.PERIOD, "the period, since the teams change ends", "Fill it in.");
    }
    if (row.cell(TrackForm.X).isEmpty() || row.cell(TrackForm.Y).isEmpty()) {
      in.missingOneOf(TrackForm.X, TrackForm.Y, "a place needs both its numbers");
      return Optional.empty();
    }
    // A period that is not known is in no list.
    int period = known.orElse(0);
    Optional<Place> seen = in.place(TrackForm.X, TrackForm.Y, home, period);
    boolean asSaid = plusX.isEmpty() || plusX.get() == frame.homePlusX().contains(period);
    // The frame turns by its own list of periods; the row's own word about the ends wins.
    boolean turned = fixed && !asSaid;
    return seen.map(p -> home != turned ? p : p.seenByOpponent());
  }

  List<Track> tracks() {
    return tracks.values().stream().filter(t -> t.rows() > 0).toList();
  }

  List<ClockPair> pairs() {
    return clocks.values().stream().flatMap(c -> c.values().stream()).toList();
  }
}
