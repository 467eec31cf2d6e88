package twostrides.sanity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import twostrides.game.Action;
import twostrides.game.Frame;
import twostrides.game.Game;
import twostrides.game.PlayRow;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.rink.Units;

/**
 * Face-offs stand on nine spots: whether unit, center, axes and rink are right. Half of them lie
 * within 0.15 m of a spot in every open game, and 1.04 m off on the other rink.
 */
final class Spots {

  /** Face-offs that it takes to tell. Assumed. */
  private static final int LEAST = 10;

  /** Median distance from the spots that is as good as on them, m. Assumed. */
  private static final double ON_THEM = 0.5;

  /** Median distance that is off them, when another setting puts them on, m. Assumed. */
  private static final double OFF_THEM = 0.8;

  /** Median distance that is nowhere near, m: a place clicked roughly is nearer. Assumed. */
  private static final double NOWHERE = 2.5;

  /** Share nowhere near that is no slip, where the others are on their spots. Assumed. */
  private static final double STRAY = 0.1;

  /** Share on the spots that shows a sheet which writes places well. Assumed. */
  private static final double PRECISE = 0.3;

  private static final String EXPECTED = "face-offs on the rink's nine spots";

  /**
   * A face-off.
   *
   * @param place where, frame of the team that won it
   * @param asWritten where, as the sheet sees the rink
   */
  record FaceOff(Place place, Place asWritten) {}

  private final Frame frame;
  private final List<FaceOff> faceOffs = new ArrayList<>();

  private Spots(List<GameSigns> games, Frame frame) {
    this.frame = frame;
    games.forEach(g -> faceOffs.addAll(g.faceOffs()));
  }

  /** The face-offs of a game. */
  static List<FaceOff> faceOffs(Game game, Frame frame) {
    List<FaceOff> faceOffs = new ArrayList<>();
    for (PlayRow r : game.rows()) {
      if (r.action() == Action.FACEOFF && r.place().isPresent()) {
        Place p = r.place().get();
        faceOffs.add(new FaceOff(p, turned(r, game, frame) ? p.seenByOpponent() : p));
      }
    }
    return faceOffs;
  }

  static List<Doubt> of(List<GameSigns> games, Frame frame) {
    Spots spots = new Spots(games, frame);
    if (spots.faceOffs.size() < LEAST) {
      return List.of();
    }
    String where = games.get(0).sheet();
    return spots.doubt(where).stream().toList();
  }

  private static boolean turned(PlayRow r, Game g, Frame frame) {
    boolean home = r.team().equals(Optional.of(g.home()));
    return switch (frame.view()) {
      case ACTING_TEAM -> false;
      case HOME_TEAM -> !home;
      case RINK_FIXED -> home != frame.homePlusX().contains(r.period());
    };
  }

  private Optional<Doubt> doubt(String where) {
    Rink rink = frame.rink();
    double off = median(p -> p, rink);
    if (off <= OFF_THEM) {
      return stray(where, rink);
    }
    String found =
        String.format(
            Locale.ROOT,
            "%d face-offs, half of them %.1f m or more from the nearest spot",
            faceOffs.size(),
            off);
    Optional<String> remedy = remedy(rink);
    if (remedy.isPresent()) {
      return Optional.of(Doubt.stop(where, found, EXPECTED, remedy.get()));
    }
    return off > NOWHERE
        ? Optional.of(
            Doubt.stop(
                where,
                found,
                EXPECTED,
                "Check under [columns] of the sheet map that x_m and y_m are the right columns and that"
                    + " action calls a face-off what is one; under [place] unit, center_x and center_y."))
        : stray(where, rink);
  }

  /** Where many face-offs are on their spots, those that are nowhere near are something else. */
  private Optional<Doubt> stray(String where, Rink rink) {
    Share far = new Share();
    Share on = new Share();
    faceOffs.forEach(f -> far.add(distance(f.place(), rink) > NOWHERE));
    faceOffs.forEach(f -> on.add(distance(f.place(), rink) <= ON_THEM));
    return far.above(STRAY, LEAST) && on.above(PRECISE, LEAST)
        ? Optional.of(
            Doubt.warn(
                where,
                far + " face-offs nowhere near a spot",
                EXPECTED,
                "Check the words of action in the sheet map: other rows may be read as face-offs."))
        : Optional.empty();
  }

  private Optional<String> remedy(Rink rink) {
    for (Rink other : Rink.ALL) {
      if (median(p -> p, other) <= ON_THEM) {
        return Optional.of(
            "Write in the sheet map, under [rink]: name = \"" + other.name() + "\".");
      }
    }
    boolean feet = frame.unit() == Units.FOOT;
    double scale = feet ? Units.FOOT.fromMetres(1) : Units.FOOT.toMetres(1);
    if (median(p -> new Place(p.x() * scale, p.y() * scale), rink) <= ON_THEM) {
      return Optional.of(
          "Write in the sheet map, under [place]: unit = \"" + (feet ? "m" : "ft") + "\".");
    }
    if (median(p -> new Place(p.y(), p.x()), rink) <= ON_THEM) {
      return Optional.of("Exchange the columns of x_m and y_m in the sheet map.");
    }
    return shift(rink);
  }

  /** Whether all face-offs lie off their spots by one and the same step. */
  private Optional<String> shift(Rink rink) {
    List<Double> alongs = new ArrayList<>();
    List<Double> acrosses = new ArrayList<>();
    for (FaceOff f : faceOffs) {
      Place p = f.asWritten();
      Place spot = nearest(p, rink);
      alongs.add(p.x() - spot.x());
      acrosses.add(p.y() - spot.y());
    }
    double along = middle(alongs);
    double across = middle(acrosses);
    List<Double> rest =
        faceOffs.stream()
            .map(FaceOff::asWritten)
            .map(p -> distance(new Place(p.x() - along, p.y() - across), rink))
            .toList();
    if (middle(rest) > ON_THEM) {
      return Optional.empty();
    }
    double x = frame.centerX() + frame.unit().fromMetres(along);
    double y = frame.centerY() + frame.unit().fromMetres(across) * (frame.yLeft() ? 1 : -1);
    return Optional.of(
        String.format(
            Locale.ROOT,
            "Write in the sheet map, under [place]: center_x = %.1f and center_y = %.1f, or near it.",
            x,
            y));
  }

  private double median(UnaryOperator<Place> moved, Rink rink) {
    return middle(faceOffs.stream().map(f -> distance(moved.apply(f.place()), rink)).toList());
  }

  private static double middle(List<Double> numbers) {
    return numbers.stream().sorted().skip((numbers.size() - 1) / 2).findFirst().orElseThrow();
  }

  private static double distance(Place p, Rink rink) {
    Place spot = nearest(p, rink);
    return Math.hypot(p.x() - spot.x(), p.y() - spot.y());
  }

  private static Place nearest(Place p, Rink rink) {
    Place best = new Place(0, 0);
    for (double x : new double[] {rink.endSpotX(), rink.neutralSpotX()}) {
      Place spot = new Place(Math.copySign(x, p.x()), Math.copySign(rink.endSpotY(), p.y()));
      if (Math.hypot(p.x() - spot.x(), p.y() - spot.y())
          < Math.hypot(p.x() - best.x(), p.y() - best.y())) {
        best = spot;
      }
    }
    return best;
  }
}
