package twostrides.demo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import twostrides.demo.ExitTruth.Cause;
import twostrides.rink.Place;
import twostrides.rink.Rink;

/**
 * Clicked places: what somebody with the video sees of a few icings in games that were not tracked,
 * five clicks at the release and five half a second later. Clicks miss: all clicks of a picture
 * together, and each a little by itself.
 */
final class PlacesCsv {
  static final List<String> HEADER =
      List.of(
          "game",
          "period",
          "clock",
          "let_go_by",
          "team",
          "carrier",
          "x_m",
          "y_m",
          "later_x_m",
          "later_y_m");

  /** Seconds between the first five clicks and the second. */
  private static final double LATER_S = 0.5;

  /** Who is clicked besides the carrier: so many opponents and teammates, the nearest. */
  private static final int OPPONENTS = 3;

  private static final int TEAMMATES = 1;

  /** Share of the icings that somebody looks at, assumed. */
  private static final double LOOKED_AT = 0.4;

  /** How far a click is off at most, m, each way: the skater, and from picture to picture. */
  private static final double OFF = 1.2;

  private static final double OFF_LATER = 0.2;

  /** Which dice besides those of the game. */
  private static final int CLICKS = 2;

  private static final Spots SPOTS = new Spots(Rink.NORTH_AMERICAN);

  private PlacesCsv() {}

  /** The clicked icings of one team in a season; game by game, in order. */
  static String text(List<DemoGame> games, String team, long seed) {
    List<List<String>> lines = new ArrayList<>();
    for (DemoGame game : games) {
      Dice dice = Dice.beside(seed, game.number(), CLICKS);
      for (ReleaseTruth release : game.releases()) {
        boolean looked = dice.chance(LOOKED_AT);
        boolean ours = game.team(release.side()).name().equals(team);
        if (looked && ours && release.cause() == Cause.ICING && !game.source().places()) {
          click(game, release, dice, lines);
        }
      }
    }
    return Csv.text(HEADER, lines);
  }

  private static void click(
      DemoGame game, ReleaseTruth release, Dice dice, List<List<String>> lines) {
    Optional<Seen.Spot> carrier =
        release.seen().own().stream().filter(s -> s.skater().equals(release.skater())).findFirst();
    if (carrier.isEmpty()) {
      return; // A goalkeeper let it go: nobody to race.
    }
    lines.add(line(game, release, "own", carrier.get(), "yes", dice));
    for (Seen.Spot s : nearest(release.seen().opponents(), carrier.get(), OPPONENTS)) {
      lines.add(line(game, release, "opponent", s, "", dice));
    }
    for (Seen.Spot s : nearest(release.seen().own(), carrier.get(), TEAMMATES + 1)) {
      if (!s.equals(carrier.get())) {
        lines.add(line(game, release, "own", s, "", dice));
      }
    }
  }

  private static List<Seen.Spot> nearest(List<Seen.Spot> skaters, Seen.Spot carrier, int most) {
    return skaters.stream()
        .sorted(
            Comparator.comparingDouble(s -> Math.hypot(s.x() - carrier.x(), s.y() - carrier.y())))
        .limit(most)
        .toList();
  }

  private static List<String> line(
      DemoGame game, ReleaseTruth release, String team, Seen.Spot s, String carrier, Dice dice) {
    double x = s.x() + dice.about(-OFF, OFF);
    double y = s.y() + dice.about(-OFF, OFF);
    Place at = SPOTS.inside(x, y);
    Place later =
        SPOTS.inside(
            x + s.vx() * LATER_S + dice.about(-OFF_LATER, OFF_LATER),
            y + s.vy() * LATER_S + dice.about(-OFF_LATER, OFF_LATER));
    return List.of(
        game.id(),
        Integer.toString(release.period()),
        SheetCsv.clock(release.release()),
        release.skater().label(),
        team,
        carrier,
        Csv.number(at.x(), 1),
        Csv.number(at.y(), 1),
        Csv.number(later.x(), 1),
        Csv.number(later.y(), 1));
  }
}
