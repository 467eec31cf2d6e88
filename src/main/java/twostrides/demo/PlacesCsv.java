package twostrides.demo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import twostrides.demo.ExitTruth.Cause;
import twostrides.rink.Place;
import twostrides.rink.Rink;

/**
 * Clicked places: what somebody with the video sees of a few icings in games that were not tracked,
 * five clicks at the release and five half a second later. Clicks miss: all clicks of a picture
 * together, and each a little by itself.
 */
final class PlacesCsv {
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

  /**
   * One click after the other of the same skater, in the frame of the side that let the puck go.
   */
  private record Clicked(
      String game, ReleaseTruth release, Side side, boolean carrier, Place at, Place later) {
    Clicked ofCarrier() {
      return new Clicked(game, release, side, true, at, later);
    }
  }

  private final String team;
  private final long seed;
  private final List<Clicked> clicks = new ArrayList<>();

  /** The clicked icings of one team in a season. */
  PlacesCsv(String team, long seed) {
    this.team = team;
    this.seed = seed;
  }

  /** Looks at a game. */
  void add(DemoGame game) {
    Dice dice = Dice.beside(seed, game.number(), CLICKS);
    for (ReleaseTruth release : game.releases()) {
      boolean looked = dice.chance(LOOKED_AT);
      boolean ours = game.team(release.by.side()).name().equals(team);
      if (looked && ours && release.cause == Cause.ICING && !game.source().places()) {
        // A goalkeeper who let it go is not among the skaters: nobody to race.
        release.seen.own().stream()
            .filter(s -> s.skater().equals(release.by.skater()))
            .findFirst()
            .ifPresent(carrier -> click(game, release, carrier, dice));
      }
    }
  }

  /** Game by game, in order. */
  String text() {
    return new Csv<Clicked>()
        .column("game", click -> click.game())
        .column("period", click -> Integer.toString(click.release().period))
        .column("clock", click -> SheetCsv.clock(click.release().release))
        .column("let_go_by", click -> click.release().by.skater().label())
        .column("team", click -> click.side() == click.release().by.side() ? "own" : "opponent")
        .column("carrier", click -> click.carrier() ? "yes" : "")
        .column("x_m", click -> Csv.number(click.at().x(), 1))
        .column("y_m", click -> Csv.number(click.at().y(), 1))
        .column("later_x_m", click -> Csv.number(click.later().x(), 1))
        .column("later_y_m", click -> Csv.number(click.later().y(), 1))
        .text(clicks);
  }

  private void click(DemoGame game, ReleaseTruth release, Seen.Spot carrier, Dice dice) {
    Side side = release.by.side();
    clicks.add(clicked(game, release, side, carrier, dice).ofCarrier());
    nearest(release.seen.opponents(), carrier, OPPONENTS)
        .forEach(s -> clicks.add(clicked(game, release, side.other(), s, dice)));
    nearest(release.seen.own(), carrier, TEAMMATES + 1)
        .filter(s -> !s.equals(carrier))
        .forEach(s -> clicks.add(clicked(game, release, side, s, dice)));
  }

  private static Stream<Seen.Spot> nearest(List<Seen.Spot> skaters, Seen.Spot carrier, int most) {
    return skaters.stream()
        .sorted(
            Comparator.comparingDouble(s -> Math.hypot(s.x() - carrier.x(), s.y() - carrier.y())))
        .limit(most);
  }

  private static Clicked clicked(
      DemoGame game, ReleaseTruth release, Side side, Seen.Spot s, Dice dice) {
    double x = s.x() + dice.about(-OFF, OFF);
    double y = s.y() + dice.about(-OFF, OFF);
    Place at = SPOTS.inside(x, y);
    double laterX = x + s.vx() * LATER_S + dice.about(-OFF_LATER, OFF_LATER);
    double laterY = y + s.vy() * LATER_S + dice.about(-OFF_LATER, OFF_LATER);
    return new Clicked(game.id(), release, side, false, at, SPOTS.inside(laterX, laterY));
  }
}
