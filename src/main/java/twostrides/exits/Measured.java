package twostrides.exits;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import twostrides.game.Strength;
import twostrides.race.Draws;
import twostrides.race.GainChance;
import twostrides.race.MeasuredGain;
import twostrides.race.Racer;
import twostrides.race.Sighting;
import twostrides.race.SkaterSettings;
import twostrides.rink.Rink;

/**
 * What the places of skaters say of a release.
 *
 * @param opponents opponents seen, the nearest to the puck first
 * @param racers everybody seen but the carrier, and the carrier
 * @param gain chance of gaining center, where enough opponents were seen to measure it
 * @param note how the places were found, a phrase, else empty
 */
record Measured(
    List<Sighting> opponents, List<Racer> racers, Optional<GainChance> gain, String note) {

  /** An opponent farther off than this has no say, metres. Assumed. */
  static final double NEAR = 20;

  /** Fewest opponents within that distance: a camera that shows one shows a part. Assumed. */
  static final int LEAST_NEAR = 2;

  /** So many opponents seen are all of them, or all but one, wherever they are. */
  static final int NEARLY_ALL = 4;

  /**
   * Looks at a release.
   *
   * @param rink the rink
   * @param around who was seen
   * @param skaters what a skater of this game can do
   * @param draws the chance of this release
   * @param n number of draws
   */
  static Measured of(Rink rink, Around around, SkaterSettings skaters, Draws draws, int n) {
    Racer carrier = around.carrier().racer();
    List<Sighting> opponents =
        around.others().stream()
            .filter(s -> !s.racer().chases())
            .sorted(Comparator.comparingDouble(s -> apart(carrier, s)))
            .toList();
    List<Racer> racers = new ArrayList<>(around.others().stream().map(Measured::taken).toList());
    racers.add(taken(around.carrier()));
    boolean enough =
        opponents.size() >= NEARLY_ALL
            || opponents.stream().filter(s -> apart(carrier, s) <= NEAR).count() >= LEAST_NEAR;
    return new Measured(
        opponents,
        List.copyOf(racers),
        enough
            ? Optional.of(
                new MeasuredGain(rink, around.carrier(), opponents, skaters).run(draws, n))
            : Optional.empty(),
        around.note());
  }

  /** A skater for the race of the puck: he stands where his speed is not known. */
  private static Racer taken(Sighting s) {
    Racer r = s.racer();
    return s.speedKnown() ? r : new Racer(r.chases(), r.x(), r.y(), 0, 0);
  }

  private static double apart(Racer puck, Sighting s) {
    return Math.hypot(s.racer().x() - puck.x(), s.racer().y() - puck.y());
  }

  /** The carrier stands last. */
  private Racer carrier() {
    return racers.get(racers.size() - 1);
  }

  /** Metres from the puck to the nearest opponent seen. */
  OptionalDouble nearest() {
    return opponents.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(apart(carrier(), opponents.get(0)));
  }

  /**
   * Skaters of a team that were on the ice and not seen. Assumed: five a side, four where the
   * strength says so.
   *
   * @param own whether the team that let the puck go
   * @param strength that team's strength
   */
  int unseen(boolean own, String strength) {
    Strength fewer = own ? Strength.SHORTHANDED : Strength.POWER_PLAY;
    long seen = racers.stream().filter(r -> r.chases() == own).count();
    return (int) Math.max(0, (strength.equals(fewer.label()) ? 4 : 5) - seen);
  }

  /** Everybody seen but the carrier, in the form of {@link Columns#SKATERS_SEEN}. */
  String skaters() {
    return racers.subList(0, racers.size() - 1).stream()
        .map(
            r ->
                String.format(
                    Locale.ROOT,
                    "%s %.1f %.1f %.1f %.1f",
                    r.chases() ? "own" : "opponent",
                    r.x(),
                    r.y(),
                    r.vx(),
                    r.vy()))
        .collect(Collectors.joining("; "));
  }

  /** Who was where, a phrase. */
  String words() {
    int n = opponents.size();
    String seen = n + (n == 1 ? " opponent seen" : " opponents seen");
    long fast = opponents.stream().filter(Sighting::speedKnown).count();
    String nearest =
        n == 0
            ? ""
            : String.format(
                Locale.ROOT,
                ", the nearest %.1f m from the puck and %s it%s%s",
                apart(carrier(), opponents.get(0)),
                side(opponents.get(0).racer()),
                n == 1
                    ? ""
                    : String.format(
                        Locale.ROOT, ", the next %.1f m", apart(carrier(), opponents.get(1))),
                fast == n ? "" : ", speeds known of " + fast);
    String why = gain.isPresent() ? "" : ", too few near the puck to measure";
    return seen + nearest + (note.isEmpty() ? "" : " (" + note + ")") + why;
  }

  private String side(Racer r) {
    double dx = r.x() - carrier().x();
    double dy = Math.abs(r.y() - carrier().y());
    return dx > dy ? "ahead of" : dx < -dy ? "behind" : "beside";
  }
}
