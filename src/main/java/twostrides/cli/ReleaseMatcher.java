package twostrides.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import twostrides.exits.Around;
import twostrides.race.Racer;
import twostrides.race.Sighting;
import twostrides.rink.Place;
import twostrides.sheet.Problem;
import twostrides.tracking.ClockMatch;
import twostrides.tracking.GameOutline;
import twostrides.tracking.Motion;
import twostrides.tracking.SeenSkater;
import twostrides.tracking.Skaters;
import twostrides.tracking.Smoother;
import twostrides.tracking.Tracks;
import twostrides.tracking.VideoClock;

/**
 * Finds the skaters at a release in the tracks of its game.
 *
 * <p>The instant is the row's second of video, or that of its clock. Within the error of that
 * second the instant is taken at which the player, known by his number, is nearest to the place in
 * the sheet; everybody is then moved along so that he stands there. Without a number the second has
 * to be sure to {@link #SURE}.
 */
final class ReleaseMatcher {

  /** How far off a second of video written in a play sheet may be, s. Assumed. */
  private static final double VIDEO_ERROR = 0.5;

  /** Greatest error of the instant at which a number need not be seen, s. Assumed. */
  private static final double SURE = 1;

  /** Greatest error of the instant within which a number is looked for, s. Assumed. */
  private static final double LONGEST_SEARCH = 3;

  /** Step of that search, s. */
  private static final double STEP = 0.1;

  /** Farthest that the player may be from the place in the sheet, m. Assumed. */
  static final double SAME_PLACE = 3;

  /** Farthest that a skater without a number may be from the puck and be the player, m. Assumed. */
  private static final double HAS_IT = 2;

  /** Common speed above which the camera turns rather than the skaters rush, m/s. */
  private static final double CAMERA = 5;

  private static final Pattern NUMBER = Pattern.compile("(?<!\\d)(\\d{1,2})(?!\\d)");

  private final GameOutline game;
  private final Tracks tracks;
  private final VideoClock clock;
  private final BiConsumer<Place, Place> places;

  /**
   * For the releases of a game.
   *
   * @param places told where the play sheet has a puck and where its player was seen
   */
  ReleaseMatcher(
      GameOutline game, Tracks tracks, VideoClock clock, BiConsumer<Place, Place> places) {
    this.places = places;
    this.game = game;
    this.tracks = tracks;
    this.clock = clock;
  }

  /** Pairs of clock and video that were left out. */
  List<Problem> doubts() {
    return clock.doubts();
  }

  /**
   * The skaters at a release.
   *
   * @param row the release
   */
  ReleaseMatch match(GameOutline.LetGo row) {
    double second;
    double error;
    if (row.video().isPresent()) {
      second = row.video().getAsDouble();
      error = VIDEO_ERROR;
    } else if (clock.videoAt(row.period(), row.elapsed(), game.clockStep())
        instanceof ClockMatch.At at) {
      second = at.seconds();
      error = at.plusMinus();
    } else {
      return new ReleaseMatch.NotFound("at a clock that no video second belongs to");
    }
    if (error > LONGEST_SEARCH) {
      return new ReleaseMatch.NotFound("in a stretch in which the clock stood for an unknown time");
    }
    Place puck = row.place();
    boolean home = game.home().equals(Optional.of(row.team()));
    OptionalInt number = number(row);
    Skaters best = null;
    SeenSkater player = null;
    SeenSkater elsewhere = null;
    int steps = (int) Math.floor(error / STEP);
    for (int i = -steps; i <= steps && number.isPresent(); i++) {
      Skaters here = seen(row.period(), second + i * STEP, home);
      for (SeenSkater s : here.of(home)) {
        double apart = s.place().distanceTo(puck);
        if (!s.number().equals(number)) {
          continue;
        }
        if (elsewhere == null || apart < far(elsewhere, puck)) {
          elsewhere = s;
        }
        if (player == null ? apart <= SAME_PLACE : apart < far(player, puck)) {
          player = s;
          best = here;
        }
      }
    }
    if (elsewhere != null) {
      places.accept(puck, elsewhere.place());
    }
    if (player == null && elsewhere != null) {
      return new ReleaseMatch.NotFound("where the player's number was read far from the puck");
    }
    if (player != null) {
      String how =
          String.format(
              Locale.ROOT, "tracking, instant within %.1f s by the player's number", error);
      return found(best, player, puck, home, how);
    }
    Skaters here = seen(row.period(), second, home);
    if (here.seen().isEmpty()) {
      return new ReleaseMatch.NotFound("at an instant at which nobody was seen");
    }
    if (error > SURE) {
      return new ReleaseMatch.NotFound(
          "where the instant is not sure enough and the player's number was not seen near the puck");
    }
    for (SeenSkater s : here.of(home)) {
      double apart = s.place().distanceTo(puck);
      player = apart <= (player == null ? HAS_IT : far(player, puck)) ? s : player;
    }
    return found(
        here, player, puck, home, String.format(Locale.ROOT, "tracking, within %.1f s", error));
  }

  private static double far(SeenSkater s, Place puck) {
    return s.place().distanceTo(puck);
  }

  /** The skaters in the frame of the team that let the puck go. */
  private Skaters seen(int period, double second, boolean home) {
    Skaters here = tracks.at(period, second, Smoother.USUAL);
    return home ? here : here.seenByOpponent();
  }

  private static OptionalInt number(GameOutline.LetGo row) {
    Matcher m = NUMBER.matcher(row.player().orElse(""));
    return m.find() ? OptionalInt.of(Integer.parseInt(m.group(1))) : OptionalInt.empty();
  }

  /** Everybody moved along so that the player, where he is known, stands at the puck. */
  private static ReleaseMatch found(
      Skaters here, SeenSkater player, Place puck, boolean home, String how) {
    boolean camera = here.commonSpeed().orElse(0) > CAMERA;
    double dx = player == null ? 0 : puck.x() - player.place().x();
    double dy = player == null ? 0 : puck.y() - player.place().y();
    List<Sighting> others = new ArrayList<>();
    Sighting carrier = new Sighting(new Racer(true, puck.x(), puck.y(), 0, 0), false);
    for (SeenSkater s : here.seen()) {
      Sighting sighting = sighting(s, s.home() == home, dx, dy, camera);
      if (s.equals(player)) {
        carrier = sighting;
      } else {
        others.add(sighting);
      }
    }
    String speeds = camera ? "; speeds not used, the picture moved as one" : "";
    return new ReleaseMatch.Found(
        new Around(carrier, others, how + speeds, here.frame()), here.doubts());
  }

  private static Sighting sighting(
      SeenSkater s, boolean own, double dx, double dy, boolean camera) {
    double x = s.place().x() + dx;
    double y = s.place().y() + dy;
    return !camera && s.motion() instanceof Motion.Moving m && m.speed() <= Racer.FASTEST
        ? new Sighting(new Racer(own, x, y, m.vx(), m.vy()), true)
        : new Sighting(new Racer(own, x, y, 0, 0), false);
  }
}
